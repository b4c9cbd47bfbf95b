// grammar/read/pairs.ts: who is put to whom, from the matings told, or from the birds of both sexes that stand about.
import { readGenotype } from '../../core/genotype.ts'
import { isHybrid, isProduct, isSolid } from './common.ts'
import type { Bird } from '../bird.ts'
import type { Reading } from '../reading.ts'
import type { Mating } from '../mates.ts'
import type { Scene } from '../scene.ts'

export type Pair = { readonly sire: Bird; readonly dam: Bird; readonly by: Mating['by'] }

const usable = (bird: Bird): boolean =>
  bird.named || bird.ref.cross !== undefined || bird.ref.genotype !== undefined || isKin(bird)

/** "his daughters". */
const isKin = (bird: Bird): boolean => bird.saidOf.parts.some((part) => part.type === 'kin')

/** `olive eggers?` behind a mating, or "to make BSLs": what the mating is to make, not a bird of it. */
const isMade = (bird: Bird, others: readonly Bird[]): boolean =>
  isProduct(bird) && others.some((other) => other !== bird && !isHybrid(other))

const birdsOfSex = (scene: Scene, sex: 'M' | 'F'): readonly Bird[] =>
  scene.birds.filter((bird) => bird.sex === sex && isSolid(bird))

/** "Barred Rock cock, only one barring gene (B/b+), on ...": genes alone are those of the bird of that sex that was just named. */
function ofNamed([first, ...rest]: readonly Bird[], scene: Scene, sex: 'M' | 'F'): Bird | undefined {
  const [named, ...others] = birdsOfSex(scene, sex).filter(({ ref }) => ref.breed !== undefined)
  const parts = first?.saidOf.parts ?? []
  const bare = parts.length > 0 && parts.every(({ type }) => type === 'gene' || type === 'trait' || type === 'number')
  if (!first || !named || rest.length + others.length > 0 || !bare || named.ref.cross) return undefined
  return { ...named, ref: { ...named.ref, genotype: { ...named.ref.genotype, ...first.ref.genotype } } }
}

const looseParts: ReadonlySet<string> = new Set(['colour', 'gene', 'trait', 'single', 'pure', 'filler'])
/** A colour by itself behind birds that are named by breed: "..., lighter blue?", "(mum was gold)". */
const isLoose = ({ saidOf }: Bird): boolean =>
  saidOf.cross === undefined &&
  saidOf.carried.length === 0 &&
  !saidOf.split &&
  saidOf.lacks.length === 0 &&
  saidOf.parts.some(({ type }) => type === 'colour') &&
  saidOf.parts.every(({ type, word }) => looseParts.has(type) && !word.endsWith(' ones'))
const isByBreed = ({ saidOf }: Bird): boolean =>
  saidOf.parts.some(({ type }) => type === 'breed' || type === 'family' || type === 'gene')

/** Without the colours that trail behind them; genes told beside such a colour are of the bird before it. */
function withoutLoose(birds: readonly Bird[]): readonly Bird[] {
  const last = birds.findLastIndex((bird) => !isLoose(bird))
  const kept = birds.slice(0, last + 1)
  const end = kept.at(-1)
  if (!end || kept.length === birds.length || !kept.some(isByBreed)) return birds
  const genes = birds.slice(last + 1).find(({ saidOf }) => saidOf.parts.some(({ type }) => type === 'gene'))
  const genotype = { ...end.ref.genotype, ...genes?.ref.genotype }
  return genes ? [...kept.slice(0, -1), { ...end, ref: { ...end.ref, genotype } }] : kept
}

/** "(mum was gold) ... GLW hens": the named ones are told, and genes beside a colour are of the bird before it. */
const namedFirst = (birds: readonly Bird[]): readonly Bird[] => {
  const left = withoutLoose(birds)
  const named = left.filter((bird) => !isLoose(bird))
  return named.some(isByBreed) ? named : left
}

/** The birds of one side; where it names only what is to be made, the birds spoken of elsewhere. */
function side(birds: readonly Bird[], other: readonly Bird[], scene: Scene, sex: 'M' | 'F'): readonly Bird[] {
  const all = [...birds, ...other, ...scene.birds.filter(isSolid)]
  const lone = ofNamed(birds, scene, sex)
  if (lone) return [lone]
  const real = birds.filter(
    (bird) =>
      !isMade(bird, [...birds, ...scene.birds.filter(isSolid)]) ||
      (birds.length === 1 && !all.some((one) => one !== bird && !other.includes(one) && !isHybrid(one))),
  )
  if (real.length > 0) return withoutLoose(filled(real, birdsOfSex(scene, sex)))
  return scene.birds.filter((bird) => isSolid(bird) && !isHybrid(bird) && bird.sex !== (sex === 'M' ? 'F' : 'M'))
}

/** "F1 (A x B) x F1": the second is of the same cross. */
function sameCross(bird: Bird, others: readonly Bird[]): Bird {
  const only =
    bird.saidOf.parts.length > 0 &&
    bird.saidOf.parts.every(({ type }) => type === 'generation' || type === 'cock' || type === 'hen')
  const other = others.find(({ ref }) => ref.cross !== undefined)
  return only && other && !bird.ref.cross ? { ...bird, named: true, ref: { ...bird.ref, ...other.ref } } : bird
}

/** "now have olive pullets", behind a mating: what came of it. */
const isLaterHybrid = (bird: Bird): boolean =>
  isHybrid(bird) && bird.sex !== undefined && /-egg layer$|Egger$/u.test(bird.ref.breed ?? '')

/** "Crossed A over B. Now to mate those pullets to C": the young of the mating before go on. */
function withYoung(matings: readonly Mating[]): readonly Mating[] {
  const [first, ...later] = matings
  const [sire, dam] = [first?.sires[0], first?.dams[0]]
  if (!first || !sire || !dam || first.sires.length * first.dams.length !== 1 || !sire.named || !dam.named)
    return matings
  const cross = { sire: sire.ref, dam: dam.ref }
  const isYoung = ({ named, saidOf }: Bird): boolean =>
    !named &&
    (/^(?:those|these|their)$/u.test(saidOf.parts[0]?.word ?? '') ||
      saidOf.parts.some((part) => part.type === 'kin' && (part.kin === 'daughter' || part.kin === 'son'))) &&
    saidOf.parts.some(({ type }) => type === 'hen' || type === 'cock' || type === 'kin')
  const isChick = (bird: Bird): boolean => isYoung(bird) || isLaterHybrid(bird)
  const young = (bird: Bird): Bird => (isChick(bird) ? { ...bird, named: true, ref: { cross } } : bird)
  const bred = later.filter(
    ({ sires, dams }) => sires.some(isChick) !== dams.some(isChick) && [...sires, ...dams].some(({ named }) => named),
  )
  return bred.length === 0
    ? matings
    : bred.map(({ sires, dams, by }) => ({ sires: sires.map(young), dams: dams.map(young), by }))
}

function explicit(scene: Scene): readonly Pair[] {
  return withYoung(scene.matings).flatMap(({ sires, dams, by }) => {
    const males = side(
      sires.map((bird) => sameCross(bird, dams)),
      dams,
      scene,
      'M',
    )
    const females = side(
      dams.map((bird) => sameCross(bird, sires)),
      sires,
      scene,
      'F',
    )
    const both = [...males, ...females]
    if (both.length > 0 && both.every((bird) => isKin(bird) && !bird.named)) return []
    return males.flatMap((sire) => females.map((dam) => ({ sire, dam, by })))
  })
}

/** "over my girls": the girls that were named elsewhere. */
const filled = (birds: readonly Bird[], named: readonly Bird[]): readonly Bird[] =>
  birds.some(usable) ? birds.filter(usable) : named.length > 0 ? named : []

/** Genes behind a named bird are said of it. */
const isGenesOnly = ({ saidOf, sex }: Bird): boolean =>
  !saidOf.cross && saidOf.parts.every(({ type }) => type === 'gene') && (saidOf.parts.length > 0 || sex === undefined)

/** "F2 of A x B"; "(A x B)": the cross itself, or its chicks bred together. */
function ofCross(bird: Bird): readonly Pair[] {
  const { cross } = bird.ref
  if (!cross) return []
  const part = (ref: Bird['ref'], sex: 'M' | 'F'): Bird => ({ ...bird, ref, sex, others: [], named: true })
  const bredOn = bird.saidOf.parts.some((token) => token.type === 'generation' && token.generation === 2)
  return [
    bredOn
      ? { sire: part({ cross }, 'M'), dam: part({ cross }, 'F'), by: 'order' }
      : { sire: part(cross.sire, 'M'), dam: part(cross.dam, 'F'), by: 'order' },
  ]
}

/** Only what a hen does is asked: of a cross-bred hen that is what her parents give. */
const isOfLaying = ({ aspects, birds }: Scene): boolean =>
  aspects.length > 0 &&
  aspects.every((aspect) => /^(?:eggs|shell|size|temper|broody|hardiness|feed|maturity)$/u.test(aspect)) &&
  birds.every(({ sex }) => sex !== 'M')

/** "does she carry blue": no bird beside the one it points to. */
const isPronoun = ({ saidOf }: Bird): boolean =>
  saidOf.carried.length > 0 &&
  saidOf.parts.length > 0 &&
  saidOf.parts.every(({ type }) => type === 'their' || type === 'his' || type === 'her')

/** "two Wyandottes, will the chicks look like them": one to the other. */
const isTwo = ({ saidOf, sex }: Bird): boolean =>
  sex === undefined && saidOf.parts.some((part) => part.type === 'number' && part.value === 2)

/** "my Silkie x Cochin mixes are dark though the Cochin is not": a parent of a cross-bred bird, spoken of again. */
const isParentAgain = (bird: Bird, all: readonly Bird[]): boolean =>
  bird.sex === undefined &&
  bird.ref.cross === undefined &&
  all.some(
    ({ ref: { cross } }) =>
      cross !== undefined &&
      [cross.sire.breed, cross.dam.breed].includes(bird.ref.breed) &&
      bird.ref.breed !== undefined,
  )

/** "the Barred Rock/Leghorn girls": two breeds in one name are the two sides of a cross. */
const isOneName = ([one, other]: readonly Bird[], tokens: Reading['tokens']): boolean =>
  one !== undefined &&
  other !== undefined &&
  tokens.some(({ type, at }) => type === 'slash' && at >= one.saidOf.end && at < other.saidOf.at + 1) &&
  other.saidOf.at - one.saidOf.end <= 4

/** "our Silkie mix went broody", "the Silkie sits on anything": she hatches the eggs of others. */
function isSitting({ saidOf, sex }: Bird, tokens: Reading['tokens']): boolean {
  const at = tokens.findIndex((token) => token.at >= saidOf.end)
  const after = at < 0 || sex === 'M' ? [] : tokens.slice(at, at + 4)
  const end = after.findIndex(({ type }) => ['stop', 'comma', 'cock', 'breed', 'family'].includes(type))
  const words = after.slice(0, end < 0 ? undefined : end).map(({ word }) => word)
  return /^(?:mix |cross )?(?:(?:has |is |then |just |now )*(?:went|gone|turned|going) (?:\w+ )?brood|(?:is |has been |just )*(?:sits|sitting|sat) (?:on|tight)\b)/u.test(
    words.join(' '),
  )
}

/** "my buff hen had a blue grandad": kin of a bird, and no mate of it. */
export const isForebear = ({ saidOf }: Bird): boolean => {
  const last = saidOf.parts.at(-1)
  return last?.type === 'kin' && (last.kin === 'grandfather' || last.kin === 'grandmother')
}

/** "two Barred Rocks": beside a cock, and other hens. */
const isFlock = ({ saidOf, ref }: Bird): boolean =>
  ref.breed !== undefined && saidOf.parts.some((part) => part.type === 'number' && part.value > 1)

/** Birds outside a mating that are looked at; no keeper names more in one message. */
const mostBirds = 30

function implied(scene: Scene, words: readonly string[], tokens: Reading['tokens']): readonly Pair[] {
  const told = scene.birds.filter(isSolid).slice(0, mostBirds)
  const hens = told.filter((bird) => bird.sex !== 'M' && !isSitting(bird, tokens))
  const all = hens.length > 0 ? told.filter((bird) => bird.sex === 'M' || hens.includes(bird)) : told
  const solid = all.filter((bird) => !isParentAgain(bird, all))
  const breeds = solid.some(({ ref }) => ref.breed !== undefined)
  const birds = solid.filter(
    (bird) =>
      !isForebear(bird) &&
      (!isMade(bird, solid) || solid.length === 1) &&
      !(breeds && isGenesOnly(bird)) &&
      !(solid.length > 1 && isPronoun(bird)),
  )
  const of = (sex: 'M' | 'F' | undefined): readonly Bird[] => namedFirst(birds.filter((bird) => bird.sex === sex))
  const [males, females, open] = [of('M'), of('F'), of(undefined)]
  const pair = (sires: readonly Bird[], dams: readonly Bird[], by: Mating['by']): readonly Pair[] =>
    sires.flatMap((sire) => dams.map((dam) => ({ sire, dam, by })))
  const both = words.includes('both') || words.includes('each')
  if (both && birds.length === 1 && birds[0]!.saidOf.parts.some(({ type }) => type === 'gene'))
    return pair(birds, birds, 'order')
  if (birds.length === 1 && isTwo(birds[0]!) && scene.aspects.includes('chicks')) return pair(birds, birds, 'order')
  if (males.length > 0 && females.length > 0) return pair(males, [...females, ...open.filter(isFlock)], 'sex')
  if (males.length > 0 && open.length > 0) return pair(males, open, 'sex')
  if (males.length + open.length === 0 && females.length === 2 && isOneName(females, tokens))
    return pair(females.slice(0, 1), females.slice(1), 'nothing')
  if (females.length > 0 && open.length > 0 && open.every(({ ref }) => ref.breed === open[0]!.ref.breed))
    return pair(open, females, 'sex')
  const [only] = birds
  if (birds.length === 1 && only?.ref.cross && (only.sex === undefined || isOfLaying(scene))) return ofCross(only)
  if (
    males.length + females.length === 0 &&
    open.length === 2 &&
    open[1]!.saidOf.at - open[0]!.saidOf.end <= 12 &&
    open[0]!.ref.breed !== open[1]!.ref.breed
  )
    return pair(open.slice(0, 1), open.slice(1), 'nothing')
  return []
}

/** "barred hens, the sharp stripe kind": other words for the same bird. */
const plainRef = ({ asWritten, ...ref }: Bird['ref']): Bird['ref'] =>
  ref.breed === undefined ? { ...ref, ...(asWritten === undefined ? {} : { asWritten }) } : ref
const key = ({ sire, dam }: Pair): string => JSON.stringify([plainRef(sire.ref), plainRef(dam.ref)])

/** "both E/E", "on E/E ground": genes that either bird of a mating has. */
function genesOfBoth(tokens: Reading['tokens']): NonNullable<Bird['ref']['genotype']> {
  const said = tokens.filter(
    ({ type }, i) =>
      type === 'gene' &&
      (/^(?:both|all)$/u.test(tokens[i - 1]?.word ?? '') ||
        /^(?:ground|base|background)$/u.test(tokens[i + 1]?.word ?? '')),
  )
  const read = readGenotype(said.map(({ said: written }) => written).join(' '))
  return said.length > 0 && read.ok ? read.value : {}
}

function bothHave(pairs: readonly Pair[], { tokens }: Reading): readonly Pair[] {
  const genes = genesOfBoth(tokens)
  if (Object.keys(genes).length === 0) return pairs
  const isLoose = (bird: Bird): boolean =>
    isGenesOnly(bird) && Object.keys(bird.ref.genotype ?? {}).every((locus) => locus in genes)
  const having = (bird: Bird): Bird => ({ ...bird, ref: { ...bird.ref, genotype: { ...genes, ...bird.ref.genotype } } })
  const only = pairs.filter(({ dam }) => pairs.length === 1 || !isLoose(dam))
  return only.map(({ sire, dam, by }) => ({ sire: having(sire), dam: having(dam), by }))
}

/** "everybody has an A daddy and B mommas, all I got is a B roo and six As": his own birds stand the other way round. */
function withTurned(told: readonly Pair[], { scene, words, tokens }: Reading): readonly Pair[] {
  const [only, ...rest] = told
  if (!only || rest.length > 0) return told
  const turned = implied(scene, words, tokens).filter(
    ({ sire, dam, by }) =>
      by === 'sex' && sire.ref.breed === only.dam.ref.breed && dam.ref.breed === only.sire.ref.breed,
  )
  return sameBreed(only) ? told : [...turned.slice(0, 1), only]
}
const sameBreed = ({ sire, dam }: Pair): boolean => sire.ref.breed === dam.ref.breed

const known = new WeakMap<Reading, readonly Pair[]>()
/** Matings of the message, each once, at most twelve. Asked by every reader, reckoned once. */
export function pairsIn(reading: Reading): readonly Pair[] {
  const pairs = known.get(reading) ?? found(reading)
  known.set(reading, pairs)
  return pairs
}

function found(reading: Reading): readonly Pair[] {
  const matings = withTurned(explicit(reading.scene), reading)
  const pairs = bothHave(matings.length > 0 ? matings : implied(reading.scene, reading.words, reading.tokens), reading)
  return [...new Map(pairs.map((pair) => [key(pair), pair])).values()].slice(0, 12)
}

const told = new WeakMap<Scene, boolean>()
export function isToldPair({ scene }: Reading): boolean {
  const is = told.get(scene) ?? explicit(scene).length > 0
  told.set(scene, is)
  return is
}

// grammar/read/carrier.ts: does this bird carry it: a little flock made of the birds, parents and chicks that were told.
import { genesOf, breedNamed } from '../../core/breeds.ts'
import { traitsIn } from '../bird.ts'
import { traits } from '../words/traits.ts'
import { commonOf, type Reader } from './common.ts'
import { isToldPair, pairsIn } from './pairs.ts'
import type { Bird } from '../bird.ts'
import type { Reading } from '../reading.ts'
import type { Brood, CarrierQuestion, FlockBird, Tally } from '../../core/question.ts'
import type { Sex } from '../../core/vocabulary.ts'

type Trait = { readonly allele: string; readonly locus: string }

const partName = (sex: Sex | undefined): string => (sex === 'F' ? 'the hen' : 'the cock')

/** "hatched from a green egg, does she carry blue": the shell is meant. */
const isOfEggs = ({ scene, words }: Reading): boolean =>
  scene.goals.some((goal) => goal.endsWith('-eggs')) || words.some((word) => /^eggs?$/u.test(word))

/** The trait in question: what a bird is said to carry, else what the chicks show, else what is spoken of. */
function traitOf(reading: Reading, birds: readonly Bird[]): Trait | undefined {
  const carried = birds.flatMap(({ saidOf }) => saidOf.carried.flatMap(({ what }) => traitsIn(what)))
  const spoken = reading.tokens.flatMap((token, i) =>
    reading.tokens[i - 1]?.type === 'carries' || token.type === 'trait' || token.type === 'gene'
      ? traitsIn([token])
      : [],
  )
  const counted = reading.scene.tallies.flatMap(({ look }) => traitsIn(look))
  const shown = reading.tokens.flatMap((token) =>
    token.type === 'colour' &&
    ['lavender', 'chocolate', 'white', 'mottled', 'frizzle', 'splash', 'mille fleur'].includes(token.colour)
      ? traitsIn([token])
      : [],
  )
  const named = [...carried, ...spoken, ...counted, ...shown][0]
  const id = named === 'blue' && isOfEggs(reading) ? 'blue egg' : named
  const trait = id === undefined ? undefined : traits[id]
  if (!trait) return undefined
  return id === 'recessive white' &&
    !reading.words.includes('recessive') &&
    birds.some((bird) => carriesDominantWhite(bird))
    ? { allele: 'I', locus: 'I' }
    : { allele: trait.allele, locus: trait.locus }
}

function carriesDominantWhite({ ref }: Bird): boolean {
  const breed = ref.breed === undefined ? undefined : breedNamed(ref.breed)
  const gene = breed && genesOf(breed)['I']
  return gene?.kind === 'fixed' && gene.allele === 'I'
}

/** Does a bird show it, by the words said of it? */
function shows({ saidOf, ref }: Bird, { allele, locus }: Trait): boolean | undefined {
  const said = traitsIn(saidOf.parts.filter(({ type }) => type === 'colour' || type === 'trait'))
  if (said.some((id) => traits[id]?.allele === allele)) return true
  const breed = ref.breed === undefined ? undefined : breedNamed(ref.breed)
  const gene = breed && genesOf(breed)[locus]
  if (gene?.kind === 'fixed') return gene.allele === allele ? true : undefined
  const recessive = Object.values(traits).some((trait) => trait.allele === allele && !trait.seen)
  const coloured = saidOf.parts.some((part) => part.type === 'colour') || breed !== undefined
  return recessive && coloured && saidOf.carried.length === 0 ? false : undefined
}

const flockBird = (bird: Bird, name: string, trait: Trait): FlockBird => {
  const own = shows(bird, trait)
  const told = bird.ref.genotype?.[trait.locus]
  return {
    name,
    ...(bird.sex ? { sex: bird.sex } : {}),
    ...(Object.keys(bird.ref).length > 0 ? { bird: bird.ref } : {}),
    ...(own === undefined || told ? {} : { shows: { [trait.allele]: own } }),
  }
}

/** Chicks told, as showing the trait or clear of it. */
function talliesOf(reading: Reading, trait: Trait): readonly Tally[] {
  const showsIt = (look: readonly Token[]): boolean =>
    traitsIn(look).some(
      (id) => traits[id]?.allele === trait.allele || (trait.allele === 'I' && id === 'recessive white'),
    )
  const told = reading.scene.tallies.flatMap(({ count, of, look, not }): readonly Tally[] => {
    const is = look.length === 0 ? !not : showsIt(look) !== not
    const sex = sexOfYoung(look)
    const rest = of === undefined ? [] : [{ count: Math.max(0, Math.round(of - count)), ...sex, shows: !is }]
    return [{ count: Math.round(count), ...sex, shows: is }, ...rest]
  })
  const within = ({ at }: Token): boolean => reading.scene.tallies.some((tally) => at >= tally.at && at < tally.end)
  const loose = countsIn(reading, showsIt).filter(({ token }) => !within(token))
  const looks = loose.flatMap(({ count, sex, shows: is }): readonly Tally[] =>
    is === undefined ? [] : [{ count, ...(sex ? { sex } : {}), shows: is }],
  )
  const totals = loose.filter(({ shows: is }) => is === undefined)
  const seen = [...told, ...looks]
  const left = (totals[0]?.count ?? 0) - seen.reduce((sum, { count }) => sum + count, 0)
  const others: readonly Tally[] =
    totals.length === 1 && seen.length > 0 && seen.every(({ shows: is }) => is) && left > 0
      ? [{ count: left, shows: false }]
      : []
  const all = [...seen, ...others]
  const normal = all.length === 0 ? allClear(reading, trait, showsIt) : []
  return [...all, ...normal]
}

type Token = Reading['tokens'][number]
type Counted = { readonly token: Token; readonly count: number; readonly sex?: Sex; readonly shows?: boolean }

/** "8 pullets": only daughters were counted. */
function sexOfYoung(look: readonly Token[]): { readonly sex?: Sex } {
  const young = look.find(({ type }) => type === 'cock' || type === 'hen')
  return young ? { sex: young.type === 'cock' ? 'M' : 'F' } : {}
}

const isLook = ({ type }: Token): boolean => type === 'colour' || type === 'trait'
/** "with a lavender hen": the look of a mate, not of the chicks. */
const isOfMate = (tokens: readonly Token[], at: number): boolean => ['cock', 'hen'].includes(tokens[at + 1]?.type ?? '')

/** Numbers of chicks, each with what is said of them up to the next number: "12 chicks, none lavender", "8 black pullets". */
function countsIn({ tokens }: Reading, showsIt: (look: readonly Token[]) => boolean): readonly Counted[] {
  return tokens.flatMap((token, i): readonly Counted[] => {
    if (token.type !== 'number' || token.percent || token.value > 500) return []
    const end = tokens.findIndex(({ type }, k) => k > i && (type === 'stop' || type === 'number'))
    const said = tokens
      .slice(i + 1, end < 0 ? i + 12 : Math.min(end, i + 12))
      .filter(({ type }) => type !== 'filler' && type !== 'unknown')
    const [first, second] = said
    const count = Math.round(token.value)
    if (first === undefined || first.type === 'not') return []
    if (isLook(first)) return [{ token, count, ...sexOfYoung(second ? [second] : []), shows: showsIt([first]) }]
    if (!['chick', 'cock', 'hen'].includes(first.type)) return []
    const young = { token, count, ...sexOfYoung([first]) }
    const none = said.findIndex(({ type }) => type === 'not')
    if (none >= 0 && said.slice(none + 1, none + 5).some((one) => isLook(one) && showsIt([one])))
      return [{ ...young, shows: false }]
    const look = said.find((one, k) => isLook(one) && !isOfMate(said, k))
    if (look) return [{ ...young, shows: showsIt([look]) }]
    return first.type === 'chick' ? [young] : []
  })
}

/** "7 chicks, all black": as many clear of it. */
function allClear(
  reading: Reading,
  _trait: Trait,
  showsIt: (look: readonly Reading['tokens'][number][]) => boolean,
): readonly Tally[] {
  const at = reading.tokens.findIndex(
    (token, i) =>
      token.type === 'number' &&
      !token.percent &&
      reading.tokens.slice(i + 1, i + 4).some(({ type }) => type === 'chick'),
  )
  const number = reading.tokens[at]
  if (number?.type !== 'number' || number.value > 500) return []
  const colour = reading.tokens.find((token, i) => i > at && token.type === 'colour' && !isOfMate(reading.tokens, i))
  const none =
    reading.words.includes('no') ||
    reading.words.includes('none') ||
    reading.words.includes('all') ||
    reading.words.includes('normal')
  return none || colour
    ? [{ count: Math.round(number.value), shows: colour !== undefined && !none && showsIt([colour]) }]
    : []
}

/** Parents and kin of the bird in question. */
function kinOf(reading: Reading, of: string, trait: Trait): readonly FlockBird[] {
  const { tokens, words } = reading
  const said = (kin: string): boolean => tokens.some((token) => token.type === 'kin' && token.kin === kin)
  const showsKin = (index: number): boolean =>
    traitsIn(
      [...tokens.slice(Math.max(0, index - 1), index), ...tokens.slice(index + 1, index + 5)].filter(
        ({ type }) => type === 'colour' || type === 'trait',
      ),
    ).some((id) => traits[id]?.allele === trait.allele)
  const at = (test: (token: Reading['tokens'][number]) => boolean): number => tokens.findIndex(test)
  const found: FlockBird[] = []
  const grand = at((token) => token.type === 'kin' && (token.kin === 'grandfather' || token.kin === 'grandmother'))
  if (grand >= 0) {
    found.push({ name: 'the grandparent', sex: said('grandmother') ? 'F' : 'M', shows: { [trait.allele]: true } })
    found.push({
      name: 'the parent between',
      sex: 'M',
      ...(said('grandmother') ? { dam: 'the grandparent' } : { sire: 'the grandparent' }),
      shows: { [trait.allele]: false },
    })
    found.push({ name: of, sire: 'the parent between' })
  }
  const sib = at((token) => token.type === 'kin' && token.kin === 'sibling')
  const bothSplit =
    /both (?:parents |were |are |of them |sides )*(?:split|carr|het)|split (?:x|to|over|with|on) (?:a )?split/u.test(
      words.join(' '),
    )
  if (sib >= 0 || bothSplit) {
    found.push(
      { name: 'the sire', sex: 'M', ...(bothSplit ? { carries: { [trait.allele]: true } } : {}) },
      { name: 'the dam', sex: 'F', ...(bothSplit ? { carries: { [trait.allele]: true } } : {}) },
    )
    if (sib >= 0) found.push({ name: 'the sibling', sire: 'the sire', dam: 'the dam', shows: { [trait.allele]: true } })
    found.push({ name: of, sire: 'the sire', dam: 'the dam' })
  }
  for (const part of ['cock', 'hen'] as const) {
    const parent = at((token) => token.type === part && token.parent)
    if (parent < 0 || grand >= 0 || sib >= 0) continue
    const name = part === 'cock' ? 'his sire' : 'his dam'
    const carried =
      tokens[parent + 1]?.type === 'carries' ||
      tokens.slice(parent + 1, parent + 4).some(({ type }) => type === 'carries')
    found.push({
      name,
      sex: part === 'cock' ? 'M' : 'F',
      ...(carried
        ? { carries: { [trait.allele]: true } }
        : showsKin(parent)
          ? { shows: { [trait.allele]: true } }
          : {}),
    })
    found.push({ name: of, ...(part === 'cock' ? { sire: name } : { dam: name }) })
  }
  return found
}

/** Records of one bird made one. */
function joined(birds: readonly FlockBird[]): readonly FlockBird[] {
  const byName = new Map<string, FlockBird>()
  for (const bird of birds) byName.set(bird.name, { ...byName.get(bird.name), ...bird })
  return [...byName.values()]
}

/** The bird that is asked about: of the pair, the one called a carrier, or the one that does not show the trait. */
function subjectOf(reading: Reading, trait: Trait, pair: { readonly sire: Bird; readonly dam: Bird } | undefined): Sex {
  const birds = [...(pair ? [pair.sire, pair.dam] : []), ...reading.scene.birds]
  const i = reading.tokens.findIndex(({ type }) => type === 'carries')
  const near = reading.tokens
    .slice(Math.max(0, i - 5), i)
    .findLast(({ type, word }) => type === 'cock' || type === 'hen' || pronoun.test(word))
  if (i >= 0 && near && pronoun.test(near.word)) return herWord.test(near.word) ? 'F' : 'M'
  const called = birds.find(
    (bird) =>
      bird.sex !== undefined && shows(bird, trait) !== true && (bird.saidOf.carried.length > 0 || bird.saidOf.split),
  )
  if (called?.sex) return called.sex
  if (i >= 0 && near) return near.type === 'hen' ? 'F' : 'M'
  if (pair && shows(pair.sire, trait) === true && shows(pair.dam, trait) !== true) return 'F'
  const only = birds.find(({ sex }) => sex !== undefined)?.sex
  return pair ? 'M' : (only ?? 'M')
}
const pronoun = /^(?:he|hes|him|his|she|shes|her)$/u
const herWord = /^(?:she|shes|her)$/u

/** A particular bird is meant, not hens or splits in general. */
const isParticular = ({ tokens, words, scene, has }: Reading, told: boolean): boolean =>
  told ||
  scene.tallies.length > 0 ||
  (has('mine') && !has('claim')) ||
  words.some((word) => /^(?:he|hes|him|shes|she)$/u.test(word)) ||
  tokens.some(
    (token) =>
      token.type === 'kin' && (token.kin === 'grandfather' || token.kin === 'grandmother' || token.kin === 'sibling'),
  ) ||
  words.includes('both')

export const readCarrier: Reader = (reading): CarrierQuestion | undefined => {
  const pairs = pairsIn(reading)
  const told = isToldPair(reading)
  const birds = [...pairs.flatMap(({ sire, dam }) => [sire, dam]), ...reading.scene.birds]
  const asksCarry =
    reading.has('carry') &&
    (reading.has('test', 'odds', 'father', 'outcome', 'question') ||
      reading.scene.tallies.length > 0 ||
      reading.asks ||
      reading.words.includes('who') ||
      reading.words.includes('whos'))
  if (!asksCarry && !(told && reading.scene.tallies.some(({ not }) => not))) return undefined
  if (!isParticular(reading, told)) return undefined
  const trait = traitOf(reading, birds)
  if (!trait || traits[traitIdOf(trait)]?.seen === true) return undefined
  if (trait.locus === 'B' && birds.some(({ ref }) => /White/u.test(ref.breed ?? ''))) return undefined // white hides bars
  const counted = talliesOf(reading, trait).some(({ count }) => count > 1)
  if (told && !counted && !reading.has('test', 'outcome')) return undefined
  return carrierOf(reading, trait, pairs[0])
}

const traitIdOf = ({ allele, locus }: Trait): string =>
  Object.keys(traits).find((id) => traits[id]?.allele === allele && traits[id]?.locus === locus) ?? ''

function carrierOf(
  reading: Reading,
  trait: Trait,
  pair: { readonly sire: Bird; readonly dam: Bird } | undefined,
): CarrierQuestion {
  const sex = subjectOf(reading, trait, pair)
  const of = partName(sex)
  const own = pair
    ? [flockBird(pair.sire, 'the cock', trait), flockBird(pair.dam, 'the hen', trait)]
    : loneBirds(reading, trait)
  const chicks = talliesOf(reading, trait).filter(({ count }) => count > 0)
  const broods: readonly Brood[] = chicks.length > 0 ? [{ sire: 'the cock', dam: 'the hen', chicks }] : []
  const parents: readonly FlockBird[] =
    broods.length > 0
      ? [
          { name: 'the cock', sex: 'M' },
          { name: 'the hen', sex: 'F' },
        ]
      : []
  return {
    kind: 'carrier',
    of,
    allele: trait.allele,
    locus: trait.locus,
    flock: { birds: joined([{ name: of, sex }, ...parents, ...own, ...kinOf(reading, of, trait)]), broods },
    rivals: [],
    ...commonOf(reading, pair ? [pair.sire, pair.dam] : []),
  }
}

/** Birds told outside a mating: one for each sex. */
function loneBirds(reading: Reading, trait: Trait): readonly FlockBird[] {
  const { scene, words } = reading
  const mated = scene.matings.flatMap(({ sires, dams }) => [...sires, ...dams])
  const named = [...scene.birds, ...mated].filter((bird) => bird.named)
  const of = (sex: Sex): readonly FlockBird[] => {
    const bird = named.find((one) => one.sex === sex)
    return bird ? [flockBird(bird, partName(sex), trait)] : []
  }
  const both = words.includes('both') ? named.find(({ sex }) => sex === undefined) : undefined
  if (both) return (['M', 'F'] as const).map((sex) => ({ ...flockBird(both, partName(sex), trait), sex }))
  const lone = named.find(({ sex, saidOf }) => sex === undefined && saidOf.carried.length + Number(saidOf.split) === 0)
  const mates = [...of('M'), ...of('F')]
  return mates.length === 0 && lone ? [{ ...flockBird(lone, 'the cock', trait), sex: 'M' }] : mates
}

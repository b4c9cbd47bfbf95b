// grammar/read/pairs.ts: who is put to whom, from the matings told, or from the birds of both sexes that stand about.
import { isHybrid, isProduct, isSolid } from './common.ts'
import type { Bird } from '../bird.ts'
import type { Reading } from '../reading.ts'
import type { Mating, Scene } from '../scene.ts'

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

/** The birds of one side; where it names only what is to be made, the birds spoken of elsewhere. */
function side(birds: readonly Bird[], other: readonly Bird[], scene: Scene, sex: 'M' | 'F'): readonly Bird[] {
  const all = [...birds, ...other, ...scene.birds.filter(isSolid)]
  const real = birds.filter((bird) => !isMade(bird, [...birds, ...scene.birds.filter(isSolid)]) || (birds.length === 1 && !all.some((one) => one !== bird && !other.includes(one) && !isHybrid(one))))
  if (real.length > 0) return filled(real, birdsOfSex(scene, sex))
  return scene.birds.filter((bird) => isSolid(bird) && !isHybrid(bird) && bird.sex !== (sex === 'M' ? 'F' : 'M'))
}

/** "F1 (A x B) x F1": the second is of the same cross. */
function sameCross(bird: Bird, others: readonly Bird[]): Bird {
  const only = bird.saidOf.parts.length > 0 && bird.saidOf.parts.every(({ type }) => type === 'generation' || type === 'cock' || type === 'hen')
  const other = others.find(({ ref }) => ref.cross !== undefined)
  return only && other && !bird.ref.cross ? { ...bird, named: true, ref: { ...bird.ref, ...other.ref } } : bird
}

function explicit(scene: Scene): readonly Pair[] {
  return scene.matings.flatMap(({ sires, dams, by }) => {
    const males = side(sires.map((bird) => sameCross(bird, dams)), dams, scene, 'M')
    const females = side(dams.map((bird) => sameCross(bird, sires)), sires, scene, 'F')
    const both = [...males, ...females]
    if (both.length > 0 && both.every((bird) => isKin(bird) && !bird.named)) return []
    return males.flatMap((sire) => females.map((dam) => ({ sire, dam, by })))
  })
}

/** "over my girls": the girls that were named elsewhere. */
const filled = (birds: readonly Bird[], named: readonly Bird[]): readonly Bird[] =>
  birds.some(usable) ? birds.filter(usable) : named.length > 0 ? named : []

/** Genes behind a named bird are said of it. */
const isGenesOnly = ({ saidOf }: Bird): boolean => saidOf.parts.length > 0 && saidOf.parts.every(({ type }) => type === 'gene')

function implied(scene: Scene, words: readonly string[]): readonly Pair[] {
  const solid = scene.birds.filter(isSolid)
  const breeds = solid.some(({ ref }) => ref.breed !== undefined)
  const birds = solid.filter(
    (bird) => (!isMade(bird, solid) || solid.length === 1) && !(breeds && isGenesOnly(bird)),
  )
  const of = (sex: 'M' | 'F' | undefined): readonly Bird[] => birds.filter((bird) => bird.sex === sex)
  const [males, females, open] = [of('M'), of('F'), of(undefined)]
  const pair = (sires: readonly Bird[], dams: readonly Bird[], by: Mating['by']): readonly Pair[] =>
    sires.flatMap((sire) => dams.map((dam) => ({ sire, dam, by })))
  const both = words.includes('both') || words.includes('each')
  if (both && birds.length === 1 && birds[0]!.saidOf.parts.some(({ type }) => type === 'gene')) return pair(birds, birds, 'order')
  if (males.length > 0 && females.length > 0) return pair(males, females, 'sex')
  if (males.length > 0 && open.length > 0) return pair(males, open, 'sex')
  if (females.length > 0 && open.length > 0 && open.every(({ ref }) => ref.breed === open[0]!.ref.breed)) return pair(open, females, 'sex')
  if (males.length + females.length === 0 && open.length === 2 && open[0]!.ref.breed !== open[1]!.ref.breed)
    return pair(open.slice(0, 1), open.slice(1), 'nothing')
  return []
}

const key = ({ sire, dam }: Pair): string => JSON.stringify([sire.ref, dam.ref])

/** Matings of the message, each once, at most twelve. */
export function pairsIn({ scene, words }: Reading): readonly Pair[] {
  const told = explicit(scene)
  const pairs = told.length > 0 ? told : implied(scene, words)
  return [...new Map(pairs.map((pair) => [key(pair), pair])).values()].slice(0, 12)
}

export const isToldPair = ({ scene }: Reading): boolean => explicit(scene).length > 0

// grammar/read/carrierFlock.ts: the little flock of a debate: the pair, its chicks, relatives and own daughters.
import { commonOf } from './common.ts'
import { nameOf } from '../flock/names.ts'
import { kinOf, ownDaughters, type Trait } from './carrierKin.ts'
import type { Reading } from '../reading.ts'
import type { Brood, CarrierQuestion, FlockBird, Tally } from '../../core/question.ts'
import type { Sex } from '../../core/vocabulary.ts'
import { flockBird, isChick, isParent, partName } from './carrierShown.ts'
import { pronoun, subjectName, subjectOf, type Mates } from './carrierSubject.ts'

/** Records of one bird made one. */
function joined(birds: readonly FlockBird[]): readonly FlockBird[] {
  const byName = new Map<string, FlockBird>()
  for (const bird of birds) byName.set(bird.name, { ...byName.get(bird.name), ...bird })
  return [...byName.values()]
}

/** "my black cock Bert", "is Bert a carrier": the bird goes by its name. */
export function named(reading: Reading, question: CarrierQuestion): CarrierQuestion {
  const { tokens } = reading
  const name = subjectName(reading)
  if (!name) return question
  const call = (of: string): string => (of === question.of ? nameOf(name, { birds: [], broods: [] }) : of)
  const { birds, broods } = question.flock
  const sexed =
    reading.words.some((word) => pronoun.test(word)) || tokens.some(({ type }) => type === 'cock' || type === 'hen')
  return {
    ...question,
    of: call(question.of),
    flock: {
      birds: birds.map(({ name: one, sire, dam, sex, ...bird }) => ({
        ...bird,
        name: call(one),
        ...(sex === undefined || (one === question.of && !sexed) ? {} : { sex }),
        ...(sire === undefined ? {} : { sire: call(sire) }),
        ...(dam === undefined ? {} : { dam: call(dam) }),
      })),
      broods: broods.map((brood) => ({ ...brood, sire: call(brood.sire), dam: call(brood.dam) })),
    },
  }
}

export function carrierOf(
  reading: Reading,
  trait: Trait,
  pair: Mates | undefined,
  chicks: readonly Tally[],
): CarrierQuestion {
  const sex = subjectOf(reading, trait, pair)
  const of = partName(sex)
  const own = pair
    ? [flockBird(pair.sire, 'the cock', trait), flockBird(pair.dam, 'the hen', trait)]
    : loneBirds(reading, trait)
  const young = ownDaughters(reading)
  const bred = young && young.sex !== sex ? daughtersOf(of, young, chicks) : undefined
  const broods = bred?.broods ?? (chicks.length > 0 ? [{ sire: 'the cock', dam: 'the hen', chicks }] : [])
  const parents: readonly FlockBird[] =
    broods.length > 0 && !bred
      ? [
          { name: 'the cock', sex: 'M' },
          { name: 'the hen', sex: 'F' },
        ]
      : []
  const mates = bred ? [...own.filter(({ name }) => name === of), ...bred.birds] : own
  const kin = kinOf(reading, of, trait, broods.length > 0)
  const others = kin.length > 0 && !pair && broods.length === 0 ? mates.filter(({ name }) => name === of) : mates
  const birds = joined([{ name: of, sex }, ...parents, ...others, ...kin]).map((bird) =>
    bird.name === of ? unasked(bird) : bird,
  )
  return {
    kind: 'carrier',
    of,
    allele: trait.allele,
    locus: trait.locus,
    flock: { birds, broods },
    rivals: [],
    ...commonOf(
      reading,
      pair ? [pair.sire, pair.dam] : [],
      bred && young!.count === 0 && chicks.length > 0 ? [{ kind: 'daughters', count: bred.birds.length }] : [],
    ),
  }
}

/** That the bird carries it is the question, even where it is put as a fact. */
function unasked(bird: FlockBird): FlockBird {
  const { carries: _, ...rest } = bird
  return rest
}

/** Daughters of whom nobody said how many they are. */
const daughtersTaken = 3

/** His own daughters, each out of a hen of whom nothing is known, with the chicks shared out among them. */
function daughtersOf(
  of: string,
  young: { readonly sex: Sex; readonly count: number },
  chicks: readonly Tally[],
): { readonly birds: readonly FlockBird[]; readonly broods: readonly Brood[] } {
  const all = chicks.reduce((sum, { count }) => sum + count, 0)
  const many = Math.max(1, Math.min(young.count === 0 ? daughtersTaken : young.count, all || 1))
  const word = young.sex === 'F' ? 'daughter' : 'son'
  const names = Array.from({ length: many }, (_, i) => `${young.sex === 'F' ? 'his' : 'her'} ${word} ${i + 1}`)
  const part = young.sex === 'F' ? { sire: of } : { dam: of }
  return {
    birds: names.map((name) => ({ name, sex: young.sex, ...part })),
    broods: names.flatMap((name, i) => {
      const share = chicks
        .map((tally) => ({ ...tally, count: Math.floor(tally.count / many) + Number(i < tally.count % many) }))
        .filter(({ count }) => count > 0)
      const pair = young.sex === 'F' ? { sire: of, dam: name } : { sire: name, dam: of }
      return share.length > 0 ? [{ ...pair, chicks: share }] : []
    }),
  }
}

/** Birds told outside a mating: one for each sex. */
function loneBirds(reading: Reading, trait: Trait): readonly FlockBird[] {
  const { scene, words } = reading
  const mated = scene.matings.flatMap(({ sires, dams }) => [...sires, ...dams])
  const named = [...scene.birds, ...mated].filter((bird) => bird.named && !isParent(bird) && !isChick(bird, reading))
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

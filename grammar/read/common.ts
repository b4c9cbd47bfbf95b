// grammar/read/common.ts: what every reader hands on: what was taken for granted, and how the keeper writes.
import { breedNamed } from '../../core/breeds.ts'
import { isKnownWord } from '../lexicon.ts'
import { birdOf, type Bird } from '../bird.ts'
import type { Context } from '../context.ts'
import type { Reading } from '../reading.ts'
import type { Aspect, Assumed, BirdRef, Goal, Manner, Question } from '../../core/question.ts'

/** A reader claims a message by making a question of it, or leaves it to the next. */
export type Reader = (reading: Reading, context: Context) => Question | undefined

export type Common = { readonly assumed: readonly Assumed[]; readonly manner: Manner }

/** A slip is said when it decided which bird was meant. */
const spelt = ({ corrections, tokens }: Reading): readonly Assumed[] =>
  corrections
    .filter(
      ({ said, taken }) =>
        tokens.some(
          (token) =>
            (token.type === 'breed' || token.type === 'family') &&
            token.said.includes(said) &&
            !isKnownWord(taken.replaceAll(' ', '')),
        ) || taken.includes(' '),
    )
    .slice(0, 4)
    .map(({ said, taken }) => ({ kind: 'spelling', said, taken }))

/** A breed told without its colour was taken as its usual variety. */
function varietyTaken(bird: Bird): readonly Assumed[] {
  const part = bird.saidOf.parts.find(({ type }) => type === 'family')
  const colours = bird.saidOf.parts.some(({ type }) => type === 'colour')
  const taken = bird.ref.breed
  if (!part || colours || taken === undefined || taken.toLowerCase() === part.word) return []
  return [{ kind: 'variety', said: part.said, taken }]
}

/** Of these a breed has no line that differs in more than that. */
const isForm = /^(?:rose-comb|single-comb|large-fowl|fine-barred|open-barred)$/u
/** A line was told that the breed is not known to have. */
function lineTaken({ saidOf, ref }: Bird): readonly Assumed[] {
  const said = saidOf.parts.find((part) => part.type === 'line')
  if (said?.type !== 'line' || ref.line !== undefined || ref.breed === undefined || isForm.test(said.line)) return []
  const breed = breedNamed(ref.breed)
  const [own, taken] = [ref.breed.toLowerCase().includes(said.word), breed?.usualLine]
  return own ? [] : [{ kind: 'line', said: said.word, breed: ref.breed, ...(taken === undefined ? {} : { taken }) }]
}

const once = (assumed: readonly Assumed[]): readonly Assumed[] => [
  ...new Map(assumed.map((one) => [JSON.stringify(one), one])).values(),
]

/** @param birds those of the question, whose varieties may have been assumed */
export const commonOf = (reading: Reading, birds: readonly Bird[] = [], more: readonly Assumed[] = []): Common => ({
  assumed: once([
    ...(reading.language === undefined ? [] : [{ kind: 'language' as const, code: reading.language }]),
    ...spelt(reading),
    ...more,
    ...birds.flatMap(varietyTaken),
    ...birds.flatMap(lineTaken),
  ]).slice(0, 8),
  manner: reading.manner,
})

const goalOfAspect: Partial<Readonly<Record<Aspect, Goal>>> = {
  sexing: 'sexable',
  eggs: 'eggs',
  size: 'size',
  temper: 'calm',
  hardiness: 'cold',
  broody: 'broody',
}

/** "want olive eggers", "for red sexlinks": a named hybrid that is to be made. */
export const isProduct = (bird: Bird): boolean =>
  isHybrid(bird) &&
  !bird.saidOf.parts.some(
    ({ type, word }) => ['generation', 'cock', 'hen', 'number', 'my'].includes(type) && word !== 'me', // "give me olive layers"
  )
const goalOfName: Readonly<Record<string, Goal>> = {
  'Olive Egger': 'olive-eggs',
  'Blue-egg layer': 'blue-eggs',
  'Green-egg layer': 'green-eggs',
  'Olive-egg layer': 'olive-eggs',
  'White-egg layer': 'white-eggs',
  'Brown-egg layer': 'brown-eggs',
  'Dark-egg layer': 'dark-eggs',
}
/** "most economical blue egg layer": a wish, though it stands like a bird. */
export const goalsNamed = ({ birds }: Reading['scene']): readonly Goal[] =>
  birds.filter(isProduct).flatMap(({ ref }) => (ref.breed?.endsWith('-egg layer') ? (goalOfName[ref.breed] ?? []) : []))
const goalsOfProducts = ({ birds, matings, offspring }: Reading['scene']): readonly Goal[] => {
  const young = offspring.flatMap(({ who }) => (who ? [birdOf(who)] : [])) // "olive eggers from my hens"
  const all = [...birds, ...young, ...matings.flatMap(({ sires, dams }) => [...sires, ...dams])]
  if (all.every(isProduct)) return []
  const parents = new Set(
    matings
      .flatMap(({ sires, dams, by }) => (by === 'sex' ? [sires, dams].filter(({ length }) => length === 1) : []))
      .flat(),
  ) // told by its sex, and alone on its side, a hybrid is to be bred from
  const kept = new Set(all.filter((bird) => !isProduct(bird)).map(({ ref }) => ref.breed)) // spoken of again: it is there already
  return all
    .filter((bird) => isProduct(bird) && !parents.has(bird) && !kept.has(bird.ref.breed))
    .map(({ ref }) => goalOfName[ref.breed ?? ''] ?? 'sexable')
}

/** What is wanted of a choice: the goals told, and the aspects that are goals too. */
export function goalsOf({ scene }: Reading): readonly Goal[] {
  const shells = scene.goals.filter((goal) => goal.endsWith('-eggs'))
  const told = scene.aspects.flatMap((aspect) => goalOfAspect[aspect] ?? [])
  return [
    ...new Set([
      ...scene.goals,
      ...goalsOfProducts(scene),
      ...told.filter((goal) => goal !== 'eggs' || shells.length === 0),
    ]),
  ]
}

/** Aspects of a cross that goals stand for. */
export function aspectsOf({ scene }: Reading): readonly Aspect[] {
  const ofGoals = [...scene.goals, ...goalsOfProducts(scene)].flatMap((goal): readonly Aspect[] => {
    if (goal === 'sexable') return ['sexing']
    if (goal === 'cold' || goal === 'heat') return ['hardiness']
    if (goal === 'calm' || goal === 'family') return ['temper']
    if (goal === 'broody') return ['broody']
    if (goal === 'meat') return ['meat']
    if (goal === 'size') return ['size']
    if (goal === 'eggs') return ['eggs']
    return goal.endsWith('-eggs') ? ['shell'] : []
  })
  return [...new Set([...scene.aspects, ...ofGoals])]
}

/** A bird that is more than a colour or a sex: it can stand in a question by itself. */
export const isSolid = ({ saidOf, sex }: Bird): boolean =>
  saidOf.cross !== undefined ||
  saidOf.carried.length > 0 ||
  saidOf.parts.some(({ type }) => type === 'breed' || type === 'family' || type === 'gene') ||
  saidOf.parts.some((part) => part.type === 'goal' && part.goal.endsWith('-eggs')) ||
  (sex !== undefined && saidOf.parts.some(({ type }) => type === 'colour')) ||
  saidOf.parts.some((part) =>
    part.type === 'colour' &&
    part.word.endsWith('s') &&
    part.word !== 'stripes' &&
    part.word !== 'bars' &&
    part.word !== 'exchequers'
      ? /^(?:reds|buffs|barreds|blues|lavs|blacks)$/u.test(part.word)
      : false,
  )

const hybrid = /sex-link|Olive Egger|-egg layer$/u
/** A named hybrid: what a cross makes, unless it is said to be a parent. */
export const isHybrid = ({ ref }: Pick<Bird, 'ref'>): boolean => ref.breed !== undefined && hybrid.test(ref.breed)

export const refsOf = (birds: readonly Bird[]): readonly BirdRef[] => birds.map(({ ref }) => ref)

/** Numbers that stand right before a word of that kind, small words aside. */
export function numberBefore(
  reading: Reading,
  isThing: (token: Reading['tokens'][number]) => boolean,
  within = 3,
): number | undefined {
  const { tokens } = reading
  for (let i = 0; i < tokens.length; i += 1) {
    const token = tokens[i]!
    if (token.type !== 'number' || token.percent) continue
    for (let k = i + 1; k <= i + within && k < tokens.length; k += 1) {
      const next = tokens[k]!
      if (isThing(next)) return token.value * dozens(tokens[i + 1])
      if (
        next.type === 'stop' ||
        next.type === 'hen' ||
        next.type === 'cock' ||
        (next.type === 'number' && next.word !== 'dozen')
      )
        break
    }
  }
  return undefined
}
const dozens = (token: Reading['tokens'][number] | undefined): number =>
  token?.word === 'dozen' || token?.word === 'doz' || token?.word === 'dozens' ? 12 : 1

/** "does it matter which is the rooster": both ways round are wanted. */
export const asksWay = (reading: Reading): boolean =>
  reading.scene.aspects.includes('reverse') ||
  reading.words.some((word) => /^(?:matter|matters|direction|whichever|swap|swapping|swapped|sexes)$/u.test(word))

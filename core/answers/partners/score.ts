// core/answers/partners/score.ts: how well a mating that was played through serves a goal, 0 to 1.
import type { Case, Crossed, Hen, Sign } from '../../answer.ts'
import type { Goal } from '../../question.ts'

/** A wing must be read within two days and by a practised eye, and strains differ: such a sign counts for less. */
const signWorth: Partial<Record<Sign['sign'], number>> = { 'wing feathers': 0.6, 'skin colour': 0.9 }

/** 1 = every chick can be told; 0 = none better than by guessing. */
export function sexingWorth({ sexing }: Case): number {
  const [sign] = sexing.signs
  if (!sign || sexing.verdict === 'no' || sexing.accuracy === null) return 0
  return Math.max(0, 2 * sexing.accuracy - 1) * (signWorth[sign.sign] ?? 1) * (sign.pullet.includes(', or ') ? 0.8 : 1)
}

/** Mean over what the keeper could know of the parents and the bot does not. */
export const overCases = ({ cases }: Crossed, worth: (one: Case) => number): number =>
  cases.reduce((sum, one) => sum + one.weight * worth(one), 0)

const shellShare =
  (colours: RegExp) =>
  ({ shell }: Hen): number =>
    shell.reduce((sum, { colour, share }) => sum + (colours.test(colour) ? share : 0), 0)

const tempers: readonly (readonly [RegExp, number])[] = [
  [/^very calm/, 1],
  [/^calm/, 0.9],
  [/^fairly calm/, 0.7],
  [/^active/, 0.5],
  [/flighty/, 0.2],
]
const calmness = ({ temper }: Hen): number =>
  (tempers.find(([words]) => words.test(temper))?.[1] ?? 0.5) - (temper.includes('assertive') ? 0.15 : 0)
const grades = { good: 1, fair: 0.5, poor: 0.1 } as const
const grade = (words: string): number => Object.entries(grades).find(([word]) => words.startsWith(word))?.[1] ?? 0.5

type HenGoal = Exclude<Goal, 'sexable' | 'barred' | 'laced' | 'show'>
const byHen: Readonly<Record<HenGoal, (hen: Hen) => number>> = {
  eggs: (hen) => Math.min(1, hen.eggsFirstYear.likely / 300),
  'blue-eggs': shellShare(/^blue$/),
  'green-eggs': (hen) => shellShare(/green/)(hen) + 0.6 * shellShare(/olive/)(hen),
  // the darker the brown of the daughters without blue, the darker the olive of those with it
  'olive-eggs': (hen) => shellShare(/olive/)(hen) * (0.7 + 0.3 * shellShare(/olive|dark/)(hen)),
  'brown-eggs': shellShare(/^(light |dark )?brown/),
  'dark-eggs': shellShare(/dark/),
  'white-eggs': shellShare(/^(white|cream)$/),
  size: (hen) => Math.min(1, hen.bodyWeightKg.likely / 4),
  meat: (hen) => Math.min(1, hen.carcassKg.likely / 2.2),
  calm: calmness,
  family: calmness,
  cold: (hen) => grade(hen.hardiness.cold),
  heat: (hen) => grade(hen.hardiness.heat),
  broody: (hen) => hen.broody.rate.likely,
}

const pulletsThat =
  (shows: (look: Case['pullets'][number]['look']['plumage']) => boolean) =>
  ({ pullets }: Case): number =>
    pullets.reduce((sum, { share, look }) => sum + (shows(look.plumage) ? share : 0), 0)
const barred = pulletsThat(({ barring }) => barring !== 'none')
const laced = pulletsThat(({ pattern }) => /laced/.test(pattern))

/** Worth of one case for one goal. */
export function goalWorth(goal: Goal, one: Case): number {
  if (goal === 'sexable') return sexingWorth(one)
  if (goal === 'barred') return barred(one)
  if (goal === 'laced') return laced(one)
  if (goal === 'show') return 0.5
  return one.hen ? byHen[goal](one.hen) : 0
}

/** Below this a mating does not serve the goal at all. Goals of degree have no such line. */
export const leastWorth: Partial<Record<Goal, number>> = {
  sexable: 0.3,
  'blue-eggs': 0.3,
  'green-eggs': 0.3,
  'olive-eggs': 0.3,
  'brown-eggs': 0.3,
  'dark-eggs': 0.3,
  'white-eggs': 0.3,
  barred: 0.4,
  laced: 0.3,
}

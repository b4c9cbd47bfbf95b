// bot/render/picture/card/card.ts: what the picture of a cross shows, as plain data: drawing and caption are both made from it.
import type { Case, CrossAnswer, Crossed, Hen, Sexing } from '../../../../core/answer.ts'
import { birdName } from '../../birds.ts'
import { belief, share } from '../../numbers.ts'
import { sure } from '../../signs.ts'
import { chickKinds, grownKinds, half, saidOnce, type Most } from './kinds.ts'
import type { Half } from './shown.ts'

export type SignShown = {
  readonly name: Sexing['signs'][number]['sign']
  readonly window: string
  readonly cockerel: string
  readonly pullet: string
}
export type Row = {
  readonly given: string // '' where nothing hangs on the parents
  readonly verdict: Sexing['verdict']
  readonly verdictWords: string
  readonly sure: string
  readonly sign?: SignShown
  readonly cockerels: Half
  readonly pullets: Half
  readonly chicksAlike: boolean // nothing drawn tells the chicks of the sexes apart
  readonly allGrown: readonly string[] // comb, legs and the like of all grown birds of both sexes
  readonly grownAlike: boolean // cocks and hens come in the same kinds, in the same shares
  readonly asAbove: boolean // the chicks are those of the row above
  readonly remarks: readonly string[]
}
export type CrossShown = {
  readonly sire: string
  readonly dam: string
  readonly rows: readonly Row[]
  readonly moreCases: string
  readonly hen?: Hen
}
export type Card = {
  readonly crosses: readonly CrossShown[]
  readonly remarks: readonly string[] // what holds of every cross where there are several: said once, at the end
  readonly moreCrosses: string
}

const mostCrosses = 4
const roomy: Most = { chicks: 4, grown: 2, pairs: 2 }
const roomyAlike: Most = { ...roomy, grown: 3 }
const crowded: Most = { ...roomy, pairs: 1 }

export function cardOf(answer: CrossAnswer): Card | undefined {
  const shown = answer.crosses.filter(({ cases }) => cases.length > 0)
  if (shown.length === 0) return undefined
  const left = shown.length - mostCrosses
  const crosses = shown.slice(0, mostCrosses).map(shown.length > 1 ? brief : full)
  const remarks = crosses.length > 1 ? ofEvery(crosses) : []
  return {
    crosses: crosses.map((one) => withoutRemarks(one, remarks)),
    remarks,
    moreCrosses: left > 0 ? `And ${left} more in the text` : '',
  }
}

const remarksIn = ({ rows }: CrossShown): readonly string[] => rows.flatMap(({ remarks }) => remarks)
const ofEvery = ([first, ...others]: readonly CrossShown[]): readonly string[] =>
  first ? remarksIn(first).filter((words) => others.every((one) => remarksIn(one).includes(words))) : []
const withoutRemarks = (one: CrossShown, said: readonly string[]): CrossShown => ({
  ...one,
  rows: one.rows.map((row) => ({ ...row, remarks: row.remarks.filter((words) => !said.includes(words)) })),
})

/** A mating that has the picture to itself: one row, or two where that hangs on the parents. */
function full({ sire, dam, cases }: Crossed): CrossShown {
  const [first, second] = twoOf(cases)
  const rows = [
    ...(first ? [rowOf(first, second ? roomy : undefined)] : []),
    ...(second ? [rowOf(second, crowded, first)] : []),
  ]
  return { ...named(sire, dam, cases, rows), ...(first?.hen && { hen: first.hen }) }
}

const brief = ({ sire, dam, cases: [first, ...others] }: Crossed): CrossShown =>
  named(sire, dam, first ? [first, ...others] : [], first ? [rowOf(alone(first), crowded)] : [])

const named = (
  sire: Crossed['sire'],
  dam: Crossed['dam'],
  cases: readonly Case[],
  rows: readonly Row[],
): CrossShown => ({
  sire: birdName(sire),
  dam: birdName(dam),
  rows,
  moreCases: cases.length > rows.length ? 'Other cases are in the text' : '',
})

/** The likeliest case, and the likeliest that would make a keeper do otherwise; what is told as "otherwise" comes second. */
function twoOf(cases: readonly Case[]): readonly Case[] {
  const [first, ...others] = cases
  if (!first) return []
  const second = others.find((one) => one.weight >= worthARow && unlike(first, one))
  if (!second) return [alone(first)]
  return isRest(first) ? [second, first] : [first, second]
}
/** Of the rest by itself it says nothing to call it so. */
const alone = (one: Case): Case => (isRest(one) ? { ...one, given: '' } : one)
const worthARow = 0.05
const surelyWorthARow = 0.3

function unlike(first: Case, other: Case): boolean {
  const [a, b] = [first.sexing, other.sexing]
  if (a.verdict !== b.verdict || a.signs[0]?.sign !== b.signs[0]?.sign) return true
  return !sameChicks(first, other) && other.weight >= surelyWorthARow
}

const sameChicks = (one: Case, other: Case): boolean =>
  (['cockerels', 'pullets'] as const).every(
    (sex) => chickKinds(one[sex], isTold(one)) === chickKinds(other[sex], isTold(other)),
  )

/** Alike at hatch and grown. */
const sameBirds = (one: Case, other: Case): boolean =>
  sameChicks(one, other) &&
  (['cockerels', 'pullets'] as const).every(
    (sex) => grownKinds(one[sex], isTold(one)) === grownKinds(other[sex], isTold(other)),
  )

const isTold = ({ colourKnown }: Case): boolean => colourKnown !== false

const verdicts = {
  yes: 'Can be sexed at hatch',
  partly: 'Some can be sexed at hatch',
  no: 'Cannot be sexed at hatch',
} as const

/** `most` undefined: the row stands alone. */
function rowOf(one: Case, most?: Most, above?: Case): Row {
  const { sexing, cockerels, pullets } = one
  const [best] = sexing.signs
  const told = isTold(one)
  const grownAlike = pullets.length > 1 && grownKinds(cockerels, told) === grownKinds(pullets, told)
  const room = most ?? (grownAlike ? roomyAlike : roomy)
  const { both, halves } = saidOnce(
    half('M', cockerels, told, best?.sign, room),
    half('F', pullets, told, best?.sign, room),
  )
  return {
    given: givenWords(one),
    verdict: sexing.verdict,
    verdictWords: verdicts[sexing.verdict],
    sure: sexing.verdict === 'no' ? '' : sure(sexing).replace(/\.$/, ''),
    ...(best && { sign: { name: best.sign, window: best.window, cockerel: best.cockerel, pullet: best.pullet } }),
    cockerels: halves[0],
    pullets: halves[1],
    allGrown: both,
    chicksAlike: best === undefined && chickKinds(cockerels, told) === chickKinds(pullets, told),
    grownAlike,
    asAbove: above !== undefined && sameBirds(one, above),
    remarks: remarksOf(one),
  }
}

function remarksOf({ sexing: { signs, laterSign }, diesInEgg }: Case): readonly string[] {
  const later =
    signs.length > 0 || !laterSign
      ? []
      : [`Later (${laterSign.window}): cockerels ${laterSign.cockerel}; pullets ${laterSign.pullet}`]
  return diesInEgg > 1e-9 ? [...later, `Before hatching, ${share(diesInEgg)} of the embryos die`] : later
}

/** What is left when the other cases are told apart is called so by the core. */
const isRest = ({ given }: Case): boolean => given === 'otherwise'

function givenWords(one: Case): string {
  if (one.given === '') return ''
  return `${isRest(one) ? 'Otherwise' : `If ${one.given}`} (${belief(one.weight)})`
}

// bot/render/picture/card/card.ts: what the picture of a cross shows, as plain data: drawing and caption are both made from it.
import type { Case, CrossAnswer, Crossed, Hen, LookShare, Sexing } from '../../../../core/answer.ts'
import type { Sex } from '../../../../core/vocabulary.ts'
import type { Look } from '../../../../core/looks/look.ts'
import { birdName } from '../../birds.ts'
import { belief, inHundred, share as shareWords } from '../../numbers.ts'

/** One look as drawn, with its share of that sex and its words. */
export type Shown = { readonly look: Look; readonly share: string; readonly words: string; readonly lesser: string }
export type Half = {
  readonly sex: Sex
  readonly chicks: readonly Shown[]
  readonly rarerChicks: string // '' when all are drawn
  readonly grown: readonly Shown[]
  readonly rarerGrown: string
  /** Chick and grown bird of one look together, for rows with little room. */
  readonly pairs: readonly Shown[]
  readonly rarerPairs: string
}
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
  /** Nothing drawn tells the chicks of the sexes apart. */
  readonly chicksAlike: boolean
  readonly later: string
  readonly dies: string
  readonly cockerels: Half
  readonly pullets: Half
}
export type CrossShown = {
  readonly sire: string
  readonly dam: string
  readonly rows: readonly Row[]
  readonly moreCases: string
  readonly hen?: Hen
}
export type Card = { readonly crosses: readonly CrossShown[]; readonly moreCrosses: string }

const most = { crosses: 4, cases: 2, looks: 4, pairs: 2 } as const
const tooUnlikely = 0.02

export function cardOf(answer: CrossAnswer): Card | undefined {
  const shown = answer.crosses.filter(({ cases }) => cases.length > 0)
  if (shown.length === 0) return undefined
  const left = shown.length - most.crosses
  return {
    crosses: shown.slice(0, most.crosses).map((crossed) => crossShown(crossed, shown.length > 1)),
    moreCrosses: left > 0 ? `and ${left} more in the text` : '',
  }
}

function crossShown({ sire, dam, cases }: Crossed, oneOfSeveral: boolean): CrossShown {
  const likely = cases.filter(({ weight }, at) => at === 0 || weight > tooUnlikely)
  const drawn = unlike(likely).slice(0, oneOfSeveral ? 1 : most.cases)
  const hen = drawn[0]?.hen
  return {
    sire: birdName(sire),
    dam: birdName(dam),
    rows: drawn.map(rowOf),
    moreCases: likely.length > drawn.length ? 'other cases are in the text' : '',
    ...(hen && !oneOfSeveral && { hen }),
  }
}

/** Of cases that end in the same verdict on chicks that look the same, the likeliest. */
function unlike(cases: readonly Case[]): readonly Case[] {
  const kind = ({ sexing, cockerels, pullets }: Case): string =>
    `${sexing.verdict} ${kinds(cockerels)} ${kinds(pullets)}`
  return [...new Map(cases.toReversed().map((one) => [kind(one), one])).values()].toReversed()
}

const verdicts = {
  yes: 'Can be sexed at hatch',
  partly: 'Some can be sexed at hatch',
  no: 'Cannot be sexed at hatch',
} as const

function rowOf(one: Case): Row {
  const { sexing } = one
  const [best] = sexing.signs
  return {
    given: one.given === '' ? '' : `If ${one.given} (${belief(one.weight)})`,
    verdict: sexing.verdict,
    verdictWords: verdicts[sexing.verdict],
    sure: sureness(sexing),
    ...(best && { sign: { name: best.sign, window: best.window, cockerel: best.cockerel, pullet: best.pullet } }),
    later:
      best || !sexing.laterSign
        ? ''
        : `Later (${sexing.laterSign.window}): cockerels ${sexing.laterSign.cockerel}; pullets ${sexing.laterSign.pullet}`,
    dies: one.diesInEgg > 1e-9 ? `Before hatching, ${shareWords(one.diesInEgg)} of the embryos die` : '',
    chicksAlike: kinds(one.cockerels) === kinds(one.pullets),
    cockerels: half('M', one.cockerels, best?.sign, most.looks),
    pullets: half('F', one.pullets, best?.sign, most.looks),
  }
}

/** The kinds of chick drawn for one sex and their shares, to compare the sexes by. */
const kinds = (looks: readonly LookShare[]): string =>
  JSON.stringify(
    alike(
      looks,
      ({ chick }) => seenChick(chick),
      downAndSpot,
      () => '',
    ).map(({ look, share }) => [seenChick(look.chick), share]),
  )

/** A figure only where it does not rest on memory alone. */
function sureness({ accuracy, signs: [best], verdict }: Sexing): string {
  if (!best || verdict === 'no') return ''
  if (accuracy === null || best.status === 'from memory') return 'known from memory only: try it on a few first'
  return `${inHundred(accuracy)} in the right pen`
}

function half(sex: Sex, looks: readonly LookShare[], sign: SignShown['name'] | undefined, mostLooks: number): Half {
  const young = (look: LookShare): string => (sign === 'head spot' ? look.down : downAndSpot(look))
  const chicks = alike(
    looks,
    ({ chick }) => seenChick(chick),
    young,
    () => '',
  )
  const grown = alike(looks, seenGrown, ({ adult }) => adult, legs)
  const pairs = alike(
    looks,
    (look) => [seenChick(look.chick), seenGrown(look)],
    young,
    ({ adult }) => adult,
  )
  return {
    sex,
    chicks: chicks.slice(0, mostLooks),
    rarerChicks: rarer(chicks.length - mostLooks),
    grown: grown.slice(0, mostLooks),
    rarerGrown: rarer(grown.length - mostLooks),
    pairs: pairs.slice(0, most.pairs),
    rarerPairs: rarer(pairs.length - most.pairs),
  }
}

/** What of a look is drawn; the rest makes no other picture. */
const seenChick = ({ colour, pattern, belly, extraWhite, headSpot, headSpotClear, skin }: Look['chick']) => [
  colour,
  pattern,
  belly,
  extraWhite,
  headSpot === 'hidden' ? 'none' : headSpot,
  headSpotClear === 'clear',
  skin,
]
const seenGrown = ({ plumage, form, shank, skin }: Look) => [{ ...plumage, words: '' }, form, shank, skin]

const downAndSpot = ({ down, headSpot, look }: LookShare): string =>
  look.chick.headSpot === 'none' || look.chick.headSpot === 'hidden' ? down : `${down}; ${headSpot} on the head`
const legs = ({ comb, shank, form }: LookShare): string => [`${comb} comb`, `${shank} shanks`, ...form].join(', ')
const rarer = (left: number): string => (left <= 0 ? '' : left === 1 ? 'and one other look' : `and ${left} other looks`)

/** Looks that are drawn alike taken together, commonest first. */
function alike(
  looks: readonly LookShare[],
  drawn: (look: Look) => unknown,
  words: (look: LookShare) => string,
  lesser: (look: LookShare) => string,
): readonly Shown[] {
  const kinds = new Map<string, { readonly first: LookShare; readonly share: number }>()
  for (const look of looks) {
    const key = JSON.stringify(drawn(look.look))
    const known = kinds.get(key)
    kinds.set(key, { first: known?.first ?? look, share: (known?.share ?? 0) + look.share })
  }
  const sorted = [...kinds.values()].toSorted((a, b) => b.share - a.share)
  return sorted.map(({ first, share }) => ({
    look: first.look,
    share: sorted.length === 1 ? '' : shareWords(share),
    words: words(first),
    lesser: lesser(first),
  }))
}

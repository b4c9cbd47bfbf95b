// core/answers/crossSeveral.ts: several matings in one line: their verdicts, or where two lines of a breed differ and where not.
import type { Crossed, Hen } from '../answer.ts'
import type { Aspect, BirdRef } from '../question.ts'
import { asksOfHenOnly, henBrief, henPhrase } from './henSummary.ts'
import { fitting } from './parts.ts'
import { shownSummary } from './shownSummary.ts'
import type { ShownId } from '../looks/shown.ts'

type Mating = { readonly sire: BirdRef; readonly dam: BirdRef }

const verdicts = { yes: 'sexable', partly: 'partly sexable', no: 'not sexable' } as const
const verdictOf = ({ cases }: Crossed): string => {
  const all = [...new Set(cases.map(({ sexing }) => verdicts[sexing.verdict]))]
  return all.length === 1 ? all[0]! : 'depends'
}

const sameChicks = (crossed: readonly Crossed[]): boolean =>
  new Set(
    crossed.map(({ cases }) =>
      JSON.stringify(
        cases.map(({ cockerels, pullets }) =>
          [cockerels, pullets].map((kinds) => kinds.map(({ down, adult }) => down + adult)),
        ),
      ),
    ),
  ).size === 1

const eggsOf = ({ cases }: Crossed): string => String(cases[0]!.hen?.eggsFirstYear.likely ?? 'not known')

/** Two lines of one breed: the chicks are one and the same, and only the hens differ. */
const linesDiffer = (matings: readonly Mating[], crossed: readonly Crossed[]): boolean =>
  new Set(matings.map(({ sire, dam }) => `${sire.breed} ${dam.breed}`)).size === 1 && sameChicks(crossed)

/** 'exhibition', 'fryer': the one line in which matings of the same breeds differ; none where they differ otherwise. */
function lineNames(matings: readonly Mating[]): readonly string[] {
  const ways = (part: 'sire' | 'dam') => matings.flatMap((one) => one[part].line ?? [])
  const one = new Set(matings.map(({ sire, dam }) => `${sire.breed} ${dam.breed}`)).size === 1
  const named = [ways('sire'), ways('dam')].find((lines) => new Set(lines).size === matings.length)
  return one ? (named ?? []) : []
}

/** 'Daughters: exhibition, perhaps 165 to 220 eggs; fryer, perhaps 180 to 230 eggs.' */
function linesSummary(lines: readonly string[], hens: readonly Hen[], aspects: readonly Aspect[]): string {
  const each = (words: (hen: Hen) => string): string =>
    new Set(hens.map(words)).size === 1
      ? `No difference between the lines: ${words(hens[0]!)}.`
      : `${aspects[0] === 'meat' ? 'By line' : 'Daughters'}: ${lines.map((line, i) => `${line}, ${words(hens[i]!)}`).join('; ')}.`
  return fitting(
    each((hen) => henPhrase(hen, aspects)),
    each((hen) => henBrief(hen, aspects)),
    each((hen) => henBrief(hen, aspects.slice(0, 1))),
  )
}

/** 'Rhode Island Red on Light Sussex: sexable. …', shorter where it must be. */
export function severalSummary(
  matings: readonly Mating[],
  crossed: readonly Crossed[],
  named: readonly string[],
  aspects: readonly Aspect[] = [],
  asked: readonly ShownId[] = [],
): string {
  const shown = crossed.map((one) => (asked.length > 0 ? shownSummary(one, asked) : undefined))
  if (shown.every((told) => told !== undefined)) {
    const [first, ...others] = shown
    return others.every((told) => told === first)
      ? fitting(`${first!.replace(/\.$/u, '')}, in each of these matings.`, first!)
      : fitting(
          shown.map((told, i) => `${named[i]}: ${told.charAt(0).toLowerCase()}${told.slice(1)}`).join(' '),
          shown.map((told, i) => `${i + 1}: ${told.charAt(0).toLowerCase()}${told.slice(1)}`).join(' '),
          'It differs from mating to mating, as told below.',
        )
  }
  const hens = crossed.map(({ cases }) => cases[0]?.hen)
  if (asksOfHenOnly(aspects) && hens.every((hen) => hen != null)) {
    const lines = lineNames(matings)
    if (lines.length > 0) return linesSummary(lines, hens, aspects)
    const told = crossed.map((_, i) => `${named[i]}: ${henPhrase(hens[i]!, aspects)}`)
    return fitting(
      `Daughters of ${told.join('. Of ')}.`,
      `Daughters: ${hens.map((hen, i) => `${i + 1} ${henPhrase(hen, aspects.slice(0, 1))}`).join('; ')}.`,
      'The daughters, mating by mating:',
    )
  }
  if (linesDiffer(matings, crossed)) {
    const eggs = crossed.map(eggsOf)
    const hens =
      new Set(eggs).size === 1
        ? `the hens lay alike: perhaps ${eggs[0]} eggs in the first year`
        : `the hens differ: perhaps ${eggs.join(' against ')} eggs in the first year`
    return fitting(
      `Same chicks, ${verdictOf(crossed[0]!)}, whichever line; ${hens}.`,
      `Same chicks whichever line; ${hens}.`,
    )
  }
  const verdicts = new Set(crossed.map(verdictOf))
  if (verdicts.size === 1 && crossed.length > 2 && verdicts.has('not sexable'))
    return `None of these ${crossed.length} matings can be sexed at hatch.`
  const [sires, dams] = [0, 1].map((part) => named.map((pair) => pair.split(' on ')[part] ?? ''))
  const oneSire = new Set(sires).size === 1 ? `${sires![0]} on ` : undefined
  return fitting(
    `${crossed.map((one, i) => `${named[i]}: ${verdictOf(one)}`).join('. ')}.`,
    ...(oneSire === undefined
      ? []
      : [`${oneSire}${crossed.map((one, i) => `${dams![i]}: ${verdictOf(one)}`).join('; ')}.`]),
    `${crossed.length} matings: ${crossed.map((one, i) => `${i + 1} ${verdictOf(one)}`).join(', ')}.`,
  )
}

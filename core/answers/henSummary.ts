// core/answers/henSummary.ts: what was asked of the daughters, in a line of at most 160 characters.
import type { Case, Hen } from '../answer.ts'
import type { Aspect } from '../question.ts'
import { shareWords } from './fraction.ts'
import { fitting } from './parts.ts'

const poundsPerKg = 2.204_62
const gramsPerOunce = 28.349_5
const toFive = (n: number): number => Math.round(n / 5) * 5
const kg = (n: number): string => `${n.toFixed(1)} kg (${(n * poundsPerKg).toFixed(1)} lb)`
const weeks = (days: number): number => Math.round(days / 7)

/** A share that is one of inheritance, not of shade: a half, a quarter, three quarters, to within a hundredth. */
const plainShare = (share: number): number | undefined => [1 / 2, 1 / 4, 3 / 4].find((p) => Math.abs(p - share) < 0.01)

/** 'half green or olive, half tinted or light brown', where one gene parts them; undefined where it does not, or each is one shade. */
function blueAndNot(shell: Hen['shell']): string | undefined {
  const [blue, plain] = [shell.filter(({ colour }) => isBlue(colour)), shell.filter(({ colour }) => !isBlue(colour))]
  const share = plainShare(blue.reduce((sum, one) => sum + one.share, 0))
  if (share === undefined || plain.length === 0 || shell.length < 3) return undefined
  const names = (some: Hen['shell']): string =>
    some
      .filter((one) => one.share > 0.04)
      .map(({ colour }) => colour)
      .join(' or ')
  return `${shareWords(share)} ${names(blue)}, ${shareWords(1 - share)} ${names(plain)}`
}

/** 'brown', 'half olive, the rest dark brown or brown', 'mostly cream, some white', 'brown or light brown'. */
export function shellWords({ shell }: Hen): string {
  const [first, ...others] = shell.filter(({ share }) => share > 0.04)
  if (!first) return ''
  const rest = others.map(({ colour }) => colour).join(' or ')
  if (others.length === 0) return first.colour
  const halves = blueAndNot(shell)
  if (halves !== undefined) return halves
  const plain = plainShare(first.share)
  if (plain !== undefined) return `${shareWords(plain)} ${first.colour}, the rest ${rest}`
  return first.share > 0.6 ? `mostly ${first.colour}, some ${rest}` : `${first.colour} or ${rest}`
}

const eggsWords = ({ eggsFirstYear: { low, high } }: Hen): string =>
  `perhaps ${toFive(low)} to ${toFive(high)} eggs in their first year`

/** One phrase an aspect, to stand after "Daughters:". */
const phrases: Partial<Record<Aspect, (hen: Hen, asked: readonly Aspect[]) => string>> = {
  eggs: (hen, asked) => (asked.includes('shell') ? eggsWords(hen) : `${eggsWords(hen)}, ${shellWords(hen)}`),
  shell: (hen) => `${shellWords(hen)} eggs`,
  size: (hen) => `about ${kg(hen.bodyWeightKg.likely)} grown, their brothers ${kg(hen.cockWeightKg.likely)}`,
  'egg-size': ({ eggWeightGrams: { low, likely, high } }) =>
    `eggs of perhaps ${Math.round(low)} to ${Math.round(high)} g (about ${(likely / gramsPerOunce).toFixed(1)} oz)`,
  vigour: ({ vigour }) => vigour?.replace(/^.*: /, '') ?? 'crossing adds nothing, both sides being of one line',
  meat: ({ carcassKg }) => `cockerels dress about ${kg(carcassKg.likely)} at sixteen weeks`,
  temper: (hen) => hen.temper,
  broody: (hen) => hen.broody.words,
  hardiness: ({ hardiness }) => `cold ${hardiness.cold}, heat ${hardiness.heat}`,
  feed: (hen) =>
    `about ${toFive(hen.feedGramsPerDay.likely)} g of feed a day, ${kg(hen.feedKgPerDozen.likely)} a dozen eggs`,
  maturity: ({ ageFirstEggDays: { low, high } }) => `first egg at ${weeks(low)} to ${weeks(high)} weeks`,
}

/** True where nothing but the daughters is asked about. */
export const asksOfHenOnly = (aspects: readonly Aspect[]): boolean =>
  aspects.length > 0 && aspects.every((aspect) => aspect in phrases)

/** What was asked of one kind of daughters among several, in a few words. */
export const henPhrase = (hen: Hen, aspects: readonly Aspect[]): string =>
  aspects
    .slice(0, 2)
    .flatMap((aspect) => phrases[aspect]?.(hen, aspects) ?? [])
    .join('; ')

/** The same in fewer words, to be set beside another: 'perhaps 195 to 250 eggs, cockerels 1.6 kg (3.5 lb)'. */
export const henBrief = (hen: Hen, aspects: readonly Aspect[]): string =>
  aspects
    .slice(0, 2)
    .map((aspect) =>
      henPhrase(hen, [aspect])
        .replace(/ in their first year, .*$/, '')
        .replace(/^cockerels dress about (.*) at sixteen weeks$/, 'cockerels about $1'),
    )
    .join(', ')

/** 'Daughters: perhaps 210 to 300 eggs in their first year, brown; calm.' Fewer phrases where all do not fit. */
export function henSummary(hen: Hen, aspects: readonly Aspect[]): string {
  const told = aspects.flatMap((aspect) => phrases[aspect]?.(hen, aspects) ?? [])
  const ofAll = aspects[0] === 'meat' || aspects[0] === 'vigour'
  const upTo = (n: number): string => {
    const words = told.slice(0, n).join('; ')
    return ofAll ? `${words.charAt(0).toUpperCase()}${words.slice(1)}.` : `Daughters: ${words}.`
  }
  return fitting(upTo(4), upTo(3), upTo(2), upTo(1))
}

const isBlue = (colour: string): boolean => /blue|green|olive/.test(colour)
const blueShare = ({ hen }: Case): number =>
  (hen?.shell ?? []).filter(({ colour }) => isBlue(colour)).reduce((sum, { share }) => sum + share, 0)

/** Shades that a keeper will see over the cases, those of a blue shell or those of none, commonest first. */
function coloursOf(cases: readonly Case[], blue: boolean): readonly string[] {
  const shares = new Map<string, number>()
  for (const { hen, weight } of cases)
    for (const { colour, share } of hen?.shell ?? [])
      if (isBlue(colour) === blue) shares.set(colour, (shares.get(colour) ?? 0) + weight * share)
  const all = [...shares.values()].reduce((sum, share) => sum + share, 0)
  return [...shares]
    .filter(([, share]) => share > all / 10)
    .toSorted((a, b) => b[1] - a[1])
    .map(([colour]) => colour)
}

/** After the first, a condition without its bird and its gene: 'carrying two copies', 'without'. */
const shortened = (given: string, at: number): string =>
  at === 0 ? given : given.replace(/^the (?:cock is|hens are) /, '').replace(/(?: of)? blue egg/g, '')

/**
 * Where the shell hangs on what a parent carries: how many daughters lay blue, green or olive in each case, likeliest first.
 * Undefined where it does not hang on it, or is not asked.
 */
export function shellSummary(cases: readonly Case[], aspects: readonly Aspect[]): string | undefined {
  if (!aspects.includes('shell')) return undefined
  const weights = new Map<string, number>()
  for (const { eggsGiven = '', weight } of cases) weights.set(eggsGiven, (weights.get(eggsGiven) ?? 0) + weight)
  const told = [...new Map(cases.map((one) => [one.eggsGiven ?? '', one])).entries()].toSorted(
    ([a], [b]) => weights.get(b)! - weights.get(a)!,
  )
  if (told.length < 2 || told.some(([given]) => given === '')) return undefined
  const many = (share: number): string =>
    share < 0.005 ? 'none' : shareWords(plainShare(share) ?? (share > 0.99 ? 1 : share))
  const shares = new Set(told.map(([, one]) => many(blueShare(one))))
  const [blue, plain] = [coloursOf(cases, true).join(' or '), coloursOf(cases, false).join(' or ')]
  const shade = blue.charAt(0).toUpperCase() + blue.slice(1)
  const rest = plain === '' ? '' : `; the rest ${plain}`
  if (shares.size === 1)
    return fitting(
      `${shade} shells: ${many(blueShare(told[0]![1]))} of the daughters, whatever ${told[0]![0].startsWith('the cock') ? 'he carries' : 'the hens carry'}.`,
    )
  const clauses = told.map(([given, one], at) => `${many(blueShare(one))} if ${shortened(given, at)}`)
  return fitting(
    `${shade} shells: ${clauses.join(', ')}${rest}.`,
    `${shade} shells: ${clauses.join(', ')}.`,
    `${shade} shells: ${clauses[0]!}; else otherwise.`,
  )
}

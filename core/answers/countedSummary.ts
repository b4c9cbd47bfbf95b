// core/answers/countedSummary.ts: chicks that were counted, held against what the mating gives: as it should be, luck, or another bird.
import type { Case, Crossed, LookShare } from '../answer.ts'
import { chanceOfAtLeast, chanceOfAtMost } from '../hen/hatchChance.ts'
import { nameOfBird } from '../cross/seen.ts'
import type { BirdRef, Tally } from '../question.ts'
import type { Sex } from '../vocabulary.ts'
import { shareWords } from './fraction.ts'
import { fitting } from './parts.ts'
import { fitOf, seenChicks, type SeenChicks } from './parents/evidence.ts'

/** Chicks alike: how many of how many, the share that should be so, and the chance of so many or more, or so few or fewer. */
type Phrase = { readonly be: string; readonly are: string; readonly chick: string; readonly word: string }
type Class = {
  readonly phrase: Phrase
  readonly look: string
  readonly count: number
  readonly of: number
  readonly share: number
  readonly chance: number
}

/** What a keeper's word says of a chick: it is black, it has a head spot. */
const having: Readonly<Record<string, string>> = { spot: 'head spot', bigspot: 'large head spot' }
function phraseOf({ look = '', shows = true }: Tally): Phrase {
  const thing = having[look] ?? (look.endsWith(' comb') ? look : undefined)
  if (thing === undefined) {
    const word = shows ? look : `not ${look}`
    return { be: `be ${word}`, are: `are ${word}`, chick: `${word} chick`, word }
  }
  const part = shows ? `a ${thing}` : `no ${thing}`
  return { be: `have ${part}`, are: `have ${part}`, chick: `chick with ${part}`, word: `with ${part}` }
}

const both: readonly Sex[] = ['M', 'F']

/** How much of one kind of chick fits a tally. */
function fits(one: Case, sex: Sex, kind: LookShare, tally: Tally, { wanted }: SeenChicks): number {
  if (tally.sex !== undefined && tally.sex !== sex) return 0
  const fit = wanted.length === 0 ? 0 : fitOf(one, sex, kind, wanted)
  return tally.shows === false ? 1 - fit : fit
}

const seenOf = (tallies: readonly Tally[]): readonly SeenChicks[] =>
  seenChicks(
    tallies.map((tally) => ({ tally, form: [], ...(tally.look?.endsWith(' comb') ? { comb: tally.look } : {}) })),
  )

/** The share of each tally among the chicks. A kind that fits two words is counted under the narrower: barred, and not black. */
function sharesIn(one: Case, tallies: readonly Tally[]): readonly number[] {
  const seen = seenOf(tallies)
  const kinds = both.flatMap((sex) => (sex === 'M' ? one.cockerels : one.pullets).map((kind) => ({ sex, kind })))
  const rows = kinds.map(({ sex, kind }) =>
    tallies.map((tally, i) => kind.share * fits(one, sex, kind, tally, seen[i]!)),
  )
  const whole = tallies.map((_, i) => rows.reduce((sum, row) => sum + row[i]!, 0))
  const own = rows.map((row) => {
    const least = Math.min(...row.flatMap((share, i) => (share > 0 ? [whole[i]!] : [])))
    return row.map((share, i) => (whole[i]! <= least + 1e-9 ? share : 0))
  })
  return tallies.map(({ sex }, i) => own.reduce((sum, row) => sum + row[i]!, 0) / (sex === undefined ? 2 : 1))
}

function classesIn(one: Case, tallies: readonly Tally[]): readonly Class[] {
  const shares = sharesIn(one, tallies)
  return tallies.map((tally, i) => {
    const alike = tallies.filter(({ sex }) => sex === tally.sex)
    const of = alike.reduce((sum, { count }) => sum + count, 0)
    const share = Math.min(1, shares[i]!)
    const chance =
      tally.count >= of * share ? chanceOfAtLeast(tally.count, of, share) : chanceOfAtMost(tally.count, of, share)
    return {
      phrase: phraseOf(tally),
      look: tally.shows === false ? '' : (tally.look ?? ''),
      count: tally.count,
      of,
      share,
      chance,
    }
  })
}

const never = ({ count, share }: Class): boolean => count > 0 && share < 1e-6
const oddest = (classes: readonly Class[]): Class => classes.toSorted((a, b) => a.chance - b.chance)[0]!
/** How well a case accounts for the chicks, by its oddest class. */
const fitOfCase = (classes: readonly Class[]): number => (classes.some(never) ? -1 : oddest(classes).chance)

/** The case that the chicks fit best: what is not known of the parents is never held against them. */
const best = ({ cases }: Crossed, tallies: readonly Tally[]): readonly Class[] =>
  cases.map((one) => classesIn(one, tallies)).toSorted((a, b) => fitOfCase(b) - fitOfCase(a))[0]!

/** 'once in about 8200', '1 in 100' and '36 in 100'. */
function oftenWords(chance: number): string {
  if (chance >= 0.095) return `${Math.round(chance * 100)} times in 100`
  const times = 1 / chance
  const unit = 10 ** Math.max(0, Math.floor(Math.log10(times)) - 1)
  return `once in about ${Math.round(times / unit) * unit}`
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
const soMany = ({ count, of, share }: Class): string => {
  if (count === of || count === 0) return `${count} of ${of}`
  return `${count} of ${of} or ${count > of * share ? 'more' : 'fewer'}`
}
const isMark = ({ phrase }: Class): boolean => /head|barred/u.test(phrase.word)

/** Above this nobody need look for a cause; below the other, luck alone is a poor one. */
const usual = 0.05
const rare = 0.01

/** Looks that a chick has only with a copy from each parent, who may both hide theirs. */
const fromBoth: ReadonlySet<string> = new Set([
  'lavender',
  'mottled',
  'white',
  'silkie',
  'silkie feather',
  'single comb',
])

function impossible({ phrase, look }: Class, named: string): string {
  if (fromBoth.has(look))
    return `A ${phrase.chick} has a copy from each parent: one that does not show it carries it unseen. Else another cock did it.`
  if (look === 'chocolate')
    return 'A chocolate pullet has it from her father, who then carries it unseen; a chocolate cockerel has it from both parents.'
  const gives = (verb: 'gives' | 'give'): string =>
    phrase.chick.startsWith('not ') ? `${verb} only ${phrase.chick.slice(4)}s` : `${verb} no ${phrase.chick}`
  return fitting(
    `Not from these two: ${named} ${gives('gives')}. Another cock, a strange egg, or a parent that is not what it is called.`,
    `Not from these two: they ${gives('give')}. Another cock, a strange egg, or a parent that is not what it is called.`,
  )
}

function verdict(classes: readonly Class[], named: string): string {
  const odd = classes.find(never)
  if (odd) return impossible(odd, named)
  const told = oddest(classes)
  const should = `${shareWords(told.share)} should ${told.phrase.be}`
  if (told.share > 1 - 1e-6) return fitting(`As it should be: all chicks of ${named} ${told.phrase.are}.`)
  if (told.of === 1) return `Normal: ${should}.`
  if (told.chance >= usual)
    return Math.abs(told.count - told.of * told.share) <= 0.5
      ? `Normal: ${should}, and ${told.count} of ${told.of} is just about that.`
      : `Normal: ${should}, and ${soMany(told)} comes ${oftenWords(told.chance)} by luck alone.`
  const cause = isMark(told)
    ? 'another cock, or marks misread'
    : 'another cock, or a parent that is not what it is called'
  const start = told.chance >= rare ? 'Unlikely, though luck can do it' : 'Hardly luck'
  return fitting(
    `${start}: ${should}, and ${soMany(told)} comes ${oftenWords(told.chance)}. Else ${cause}.`,
    `${start}: ${should}, and ${soMany(told)} comes ${oftenWords(told.chance)}.`,
  )
}

/** Several cocks of whom one is asked for: the one that can give these chicks. */
function whichOf(crossed: readonly Crossed[], cocks: readonly string[], tallies: readonly Tally[]): string {
  const all = crossed.map((one, i) => ({ cock: cocks[i]!, classes: best(one, tallies) }))
  const [only, second] = all
    .filter(({ classes }) => !classes.some(never))
    .toSorted((a, b) => fitOfCase(b.classes) - fitOfCase(a.classes))
  const out = all.find(({ classes }) => classes.some(never))
  if (!only) return `Neither ${cocks.join(' nor ')}: with these hens none of them gives all of these chicks.`
  if (second || !out) return `${capital(only.cock)} fits better than ${second?.cock}, but both can give such chicks.`
  const start = `${capital(only.cock)}: a ${out.cock} cock gives no ${out.classes.find(never)!.phrase.chick} with these hens.`
  const odd = oddest(only.classes)
  if (odd.chance >= usual) return fitting(start)
  return fitting(
    `${start} Yet ${soMany(odd)} ${odd.phrase.word} comes ${oftenWords(odd.chance)} from a ${only.cock} one: be sure whose chicks they are.`,
    start,
  )
}

/** 'Light Sussex', and 'splash' for a bird that is told by its colour alone. */
const shortName = (name: string): string =>
  name.endsWith(' bird') ? name.slice(0, -' bird'.length).toLowerCase() : name

/**
 * What the chicks counted say of the mating they are told of.
 *
 * @param tallies with the words of a look; of each sex apart, the tallies make up all chicks
 * @returns undefined where nothing was counted, or a look is not known for want of the parents' colours
 */
export function countedSummary(
  crossed: readonly Crossed[],
  tallies: readonly Tally[],
  matings: readonly { readonly sire: BirdRef; readonly dam: BirdRef }[],
): string | undefined {
  if (tallies.length === 0 || seenOf(tallies).some(({ wanted }) => wanted.length === 0)) return undefined
  if (crossed.some(({ cases }) => cases.some(({ colourKnown }) => colourKnown === false))) return undefined
  const name = (bird: BirdRef): string => shortName(nameOfBird(bird))
  const cocks = matings.map(({ sire }) => name(sire))
  if (crossed.length > 1) return new Set(cocks).size === crossed.length ? whichOf(crossed, cocks, tallies) : undefined
  return verdict(best(crossed[0]!, tallies), `${cocks[0]} on ${name(matings[0]!.dam)}`)
}

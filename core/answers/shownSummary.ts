// core/answers/shownSummary.ts: how many of the chicks show what was asked about, in a line of at most 160 characters.
import type { Case, Crossed } from '../answer.ts'
import { shownOf, type Shown, type ShownId } from '../looks/shown.ts'
import { shareWords } from './fraction.ts'
import { fitting } from './parts.ts'

type Part = 'cockerels' | 'pullets'
const sexes = { cockerels: 'M', pullets: 'F' } as const

/** What of it a value of its trait leaves open: 'four or five' toes. */
const isOpen = (value: string): boolean => value.includes(' or ')

type Count = { readonly share: number; readonly open: boolean }

/** Of the chicks of one sex, the share that shows it. A trait of form that varies by itself is counted by itself. */
function countOf(one: Case, part: Part, shown: Shown): Count {
  if (!('trait' in shown)) {
    return { share: sum(one[part].filter(({ look }) => shown.holds(look))), open: false }
  }
  const { trait, holds } = shown
  const apart = one.traits?.find((own) => own.sex === sexes[part] && own.trait === trait)?.values
  const values = (apart ??
    one[part].map(({ look, share }) => ({
      value: trait === 'skin' ? look.skin : look.form[trait],
      share,
    }))) satisfies readonly { readonly value: string; readonly share: number }[]
  const held = values.filter(({ value }) => holds(value))
  return { share: sum(held), open: held.some(({ value }) => isOpen(value)) }
}
const sum = (kinds: readonly { readonly share: number }[]): number => kinds.reduce((all, { share }) => all + share, 0)

const words = ({ share, open }: Count): string =>
  share < 1e-9 ? 'none' : share > 1 - 1e-9 ? (open ? 'most' : 'all') : `${open ? 'up to ' : ''}${shareWords(share)}`

/** 'all cockerels', 'no pullets', 'half of the cockerels'. */
function wordsOf(count: Count, part: Part): string {
  const told = words(count)
  return told === 'none'
    ? `no ${part}`
    : told === 'all' || told === 'most'
      ? `${told} ${part}`
      : `${told} of the ${part}`
}

/** What those that do not show it carry, where none shows it: 'all carry it unseen'. */
function carriedWords({ carried }: Case, { allele }: Shown): string {
  const own = carried?.find((one) => one.allele === allele)
  if (!own || own.cockerels + own.pullets < 1e-9) return ''
  const [cocks, hens] = [shareWords(own.cockerels), shareWords(own.pullets)]
  if (cocks === hens) return `, ${cocks} carry it unseen`
  return own.pullets < 1e-9 ? `, ${cocks} of the cockerels carry it unseen` : ''
}

const same = (a: Count, b: Count): boolean => Math.abs(a.share - b.share) < 1e-6

/** What chicks carry unseen, of every recessive that is there. */
function splitWords({ carried = [] }: Case): string {
  const told = carried.map(({ name, cockerels, pullets }) => {
    const [cocks, hens] = [cockerels, pullets].map((share): Count => ({ share, open: false }))
    return same(cocks!, hens!)
      ? `${words(cocks!)} split to ${name}`
      : `split to ${name}: ${wordsOf(cocks!, 'cockerels')}, ${wordsOf(hens!, 'pullets')}`
  })
  return told.length > 0 ? told.slice(0, 2).join('; ') : 'none is split to anything that I know of'
}

function clauseOf(one: Case, id: ShownId): string {
  if (id === 'split') return splitWords(one)
  const shown = shownOf(id)
  const [cocks, hens] = [countOf(one, 'cockerels', shown), countOf(one, 'pullets', shown)]
  if (!same(cocks, hens)) return `${shown.words}: ${wordsOf(cocks, 'cockerels')}, ${wordsOf(hens, 'pullets')}`
  const unseen = cocks.share < 1e-9 ? carriedWords(one, shown) : ''
  return `${words(cocks)} ${shown.words}${unseen}`
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

const isKnown = (one: Case, id: ShownId): boolean =>
  one.colourKnown !== false || (id !== 'split' && 'trait' in shownOf(id))

/** ': about 5 of 20', of one thing that was asked, where the sexes are alike in it. */
function manyWords(one: Case, [id, ...others]: readonly ShownId[], outOf: number | undefined): string {
  if (outOf === undefined || id === undefined || id === 'split' || others.length > 0) return ''
  const [cocks, hens] = [countOf(one, 'cockerels', shownOf(id)), countOf(one, 'pullets', shownOf(id))]
  const some = same(cocks, hens) && !cocks.open && cocks.share > 1e-9 && cocks.share < 1 - 1e-9
  return some ? `: about ${Math.round(cocks.share * outOf)} of ${outOf}` : ''
}

/**
 * How many show it, in each case that tells another number.
 *
 * @returns undefined where nothing of it is known
 */
export function shownSummary({ cases }: Crossed, ids: readonly ShownId[], outOf?: number): string | undefined {
  const known = ids.filter((id) => cases.every((one) => isKnown(one, id)))
  if (known.length === 0 || cases.length === 0) return undefined
  const told = cases.map((one) => known.map((id) => clauseOf(one, id)).join('; '))
  const belief = (way: string): number =>
    sum(cases.filter((_, i) => told[i] === way).map(({ weight }) => ({ share: weight })))
  const ways = [...new Set(told)].toSorted((a, b) => belief(b) - belief(a))
  const [likeliest, ...others] = ways
  if (likeliest === undefined || others.length === 0)
    return likeliest && fitting(`${capital(likeliest)}${manyWords(cases[0]!, known, outOf)}.`)
  const clause = (way: string): string => {
    const { given } = cases[told.indexOf(way)]!
    return given === 'otherwise' ? `otherwise ${way}` : `${way} if ${given}`
  }
  return fitting(
    ...(ways.length === cases.length ? [`It depends: ${ways.map(clause).join('; ')}.`] : []),
    `${capital(likeliest)}, most likely; ${others.length === 1 ? `else ${others[0]}` : 'it hangs on the parents'}.`,
    `${capital(likeliest)}, most likely.`,
  )
}

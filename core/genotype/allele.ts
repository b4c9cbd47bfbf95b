// core/genotype/allele.ts: one allele as a keeper may write it, matched to the catalogue of loci.
import { loci, locusIds, type AlleleId, type LocusId } from '../data/loci.ts'

export type NamedAllele = { readonly locus: LocusId; readonly allele: AlleleId }

const named: readonly NamedAllele[] = locusIds.flatMap((locus) =>
  loci[locus].alleles.map((allele) => ({ locus, allele })),
)

/** Other symbols in use for the same allele. */
const also: Readonly<Record<string, AlleleId>> = {
  D: 'D^V',
  Dv: 'D^V',
  Dc: 'D^C',
  Pti: 'Pti-1^B',
  'Pti-1': 'Pti-1^B',
  'pti+': 'pti-1+',
  pti: 'pti-1+',
  Ab: 'Pg',
  Lg: 'Pg',
  B1: 'B',
  B2: 'B^Sd',
}

const plain = (symbol: string) => symbol.replaceAll('^', '')
const fold = (symbol: string) => plain(symbol).toLowerCase()
const table = (key: (allele: string) => string) => Map.groupBy(named, ({ allele }) => key(allele))
const exact = table((allele) => allele)
const bare = table((allele) => plain(allele).replace('+', ''))
const folded = table(fold)
const foldedBare = table((allele) => fold(allele).replace('+', ''))

const only = (found: readonly NamedAllele[] | undefined) => (found?.length === 1 ? found[0] : undefined)
const oneLocus = (found: readonly NamedAllele[]) => found.every(({ locus }) => locus === found[0]?.locus)

/** `Lav+` is the capital form of a wild type, `s+` the small one; a capital before `s+` could mean either allele. */
function withPlus(text: string): NamedAllele | undefined {
  const match = only(folded.get(fold(text)))
  const capital = text[0] !== text[0]?.toLowerCase()
  return match && capital && match.allele[0] !== text[0] ? undefined : match
}

/** Without plus or caret; capitals count only as far as they tell two alleles apart. */
function withoutPlus(text: string): NamedAllele | undefined {
  const alike = foldedBare.get(fold(text)) ?? []
  const short = only(bare.get(plain(text)))
  if (short && (oneLocus(alike) || plain(short.allele) === short.allele)) return short
  if (alike.length <= 1) return alike[0]
  const mutants = alike.filter(({ allele }) => allele[0] === text[0] && !allele.endsWith('+'))
  return oneLocus(alike) ? only(mutants) : undefined
}

/**
 * The allele that a keeper's symbol stands for: `s+`, `s`, `e^Wh`, `eWh`, `ewh`, `choc+`.
 * Undefined where the catalogue has none, or where the letters fit two (`LAV`, `ID`, `S+`).
 */
export function alleleNamed(text: string): NamedAllele | undefined {
  const symbol = Object.hasOwn(also, text) ? also[text]! : text
  const match = only(exact.get(symbol)) ?? (symbol.includes('+') ? withPlus(symbol) : withoutPlus(symbol))
  return match ?? zForm(symbol)
}

/** `Z^B` and `ZB` are textbook writing for B on the Z. */
function zForm(text: string): NamedAllele | undefined {
  const inner = /^Z\^?(.+)$/u.exec(text)?.[1]
  const match = inner === undefined ? undefined : (only(exact.get(inner)) ?? only(bare.get(plain(inner))))
  return match && loci[match.locus].on === 'Z' ? match : undefined
}

const isCapital = (symbol: string): boolean => symbol[0] !== symbol[0]?.toLowerCase()

/**
 * Two halves that are one symbol in capitals and in small letters, as `LAV/lav` or `ID/id`: beside each other the
 * case tells them apart, though alone it would not.
 */
export function contrasted(one: string, other: string): readonly NamedAllele[] | undefined {
  const key = fold(one).replace('+', '')
  if (one === other || key !== fold(other).replace('+', '') || isCapital(one) === isCapital(other)) return undefined
  const alike = foldedBare.get(key) ?? []
  const small = alike.filter(({ allele }) => !isCapital(allele))
  const pairs = small.flatMap((low) => {
    const high = alike.find(({ locus, allele }) => locus === low.locus && isCapital(allele))
    return high ? [isCapital(one) ? [high, low] : [low, high]] : []
  })
  return pairs.length === 1 ? pairs[0] : undefined
}

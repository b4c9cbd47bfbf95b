// core/cross/together.ts: linked traits that a keeper can see, and whether most chicks have both or neither of them, or one of the two.
import { parting } from '../data/parting.ts'
import { loci as book } from '../data/loci.ts'
import { carriedName } from '../flock/carriedName.ts'
import type { Look } from '../looks/look.ts'
import type { Genotype, Locus } from '../vocabulary.ts'

type Block = readonly { readonly genotype: Genotype; readonly p: number }[]
/** `both`: most chicks have both or neither; else most have one of the two. */
export type Together = { readonly one: string; readonly other: string; readonly both: boolean }

/** Where the trait of a locus is seen; shells are told apart by the egg alone. */
const seenAt: Readonly<Record<string, (look: Look) => string>> = {
  S: ({ chick, plumage }) => (plumage.white ? 'hidden' : chick.ground),
  K: ({ chick }) => chick.wing,
  B: ({ plumage }) => (plumage.barring === 'none' ? 'none' : 'barred'),
  Id: ({ shank }) => shank,
  P: ({ form }) => form.comb,
  R: ({ form }) => form.comb,
  Cr: ({ form }) => form.crest,
  I: ({ plumage }) => String(plumage.white),
  F: ({ form }) => form.feather,
  Ml: ({ plumage }) => plumage.pattern,
  Pg: ({ plumage }) => plumage.pattern,
}

/** Share of chicks that agree in both traits from which, or below whose rest, they are said to go together or apart. */
const most = 0.75

/**
 * @param blocks of the chicks of each sex: genotypes of the loci of one linkage group
 * @param looks of the chicks, so that nothing is told of what none of them shows
 */
export function linkedTogether(sexes: readonly (readonly Block[])[], looks: readonly Look[]): readonly Together[] {
  const shows = (locus: string): boolean =>
    locus === 'O' || new Set(looks.map((look) => seenAt[locus]?.(look) ?? '')).size > 1
  return Object.keys(parting).flatMap((pair) => {
    const [one = '', other = ''] = pair.split(' ')
    if (!shows(one) || !shows(other)) return []
    const rows = sexes.flatMap((blocks) =>
      blocks.filter((block) => block[0]?.genotype[one] && block[0].genotype[other]).flatMap((block) => [...block]),
    )
    const [first, second] = [one, other].map((locus) => markOf(locus, rows))
    const all = rows.reduce((sum, { p }) => sum + p, 0)
    if (first === undefined || second === undefined || all === 0) return []
    const share = (test: (a: boolean, b: boolean) => boolean): number =>
      rows.reduce(
        (sum, { genotype, p }) =>
          test(genotype[one]!.includes(first), genotype[other]!.includes(second)) ? sum + p / all : sum,
        0,
      )
    const varies = [share((a) => a), share((_, b) => b)].every((p) => p > 0.1 && p < 0.9)
    const agree = share((a, b) => a === b)
    if (!varies || (agree < most && agree > 1 - most)) return []
    return [{ one: carriedName(first), other: carriedName(second), both: agree >= most }]
  })
}

/** The dominant allele that the chicks have at a locus. */
function markOf(locus: string, rows: Block): string | undefined {
  const { alleles } = (book as Readonly<Record<string, Locus>>)[locus]!
  return alleles.find((allele) => rows.some(({ genotype }) => genotype[locus]!.includes(allele)))
}

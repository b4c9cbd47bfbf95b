// core/cross/case.ts: one way of settling the doubts, as a case of the answer: given, chicks of both sexes, sexing, daughters.
import type { Case } from '../answer.ts'
import { expectHen } from '../hen/expect.ts'
import { givenWords, howToTell } from './given.ts'
import type { Outcome } from './outcome.ts'
import { parentsIn, type Mating, type Pair } from './pair.ts'
import type { Played } from './play.ts'
import { lookShares } from './share.ts'

/** Loci that set chicks apart: not one and the same pure wild type in all of them. */
function telling({ M, F }: Outcome): readonly string[] {
  const all = [...M.kinds, ...F.kinds].flatMap(({ genotypes }) => genotypes)
  const found = new Map<string, Set<string>>()
  for (const genotype of all)
    for (const [locus, pair] of Object.entries(genotype)) {
      const alleles = found.get(locus) ?? new Set()
      found.set(locus, alleles)
      for (const allele of pair) alleles.add(allele)
    }
  return [...found].filter(([, alleles]) => alleles.size > 1).map(([locus]) => locus)
}

const blueCopies = ['no', 'one copy', 'two copies'] as const

/** Shares of pullets by their copies of blue egg. */
function shellsOf({ F }: Outcome): readonly { readonly blue: (typeof blueCopies)[number]; readonly share: number }[] {
  const values = F.traits.find(({ trait }) => trait === 'shellBlue')?.values ?? []
  return blueCopies.flatMap((blue) =>
    values.filter(({ value }) => value === blue).map(({ share }) => ({ blue, share })),
  )
}

/** @param hen whether the daughters' profile is wanted */
export function toCase(
  mating: Mating,
  { cases, doubts, founders, told }: Played,
  at: number,
  pair: Pair,
  hen: boolean,
): Case {
  const { weight, ways, result } = cases[at]!
  const { outcome: out, sexing } = result
  const loci = telling(out)
  return {
    weight: weight * pair.weight,
    given: [pair.as, givenWords(doubts, founders, ways, parentsIn(pair))].filter(Boolean).join(', and '),
    howToTell:
      cases.length > 1
        ? howToTell(
            doubts,
            founders,
            cases.map((one) => one.ways),
          )
        : '',
    eggsGiven: givenWords(
      doubts.filter((doubt) => doubt.loci.includes('O')),
      founders,
      ways,
      parentsIn(pair),
    ),
    cockerels: lookShares(out.M, loci, told),
    pullets: lookShares(out.F, loci, told),
    diesInEgg: out.dies,
    traits: [
      ...out.M.traits.map((t) => ({ sex: 'M' as const, ...t })),
      ...out.F.traits.map((t) => ({ sex: 'F' as const, ...t })),
    ].filter(({ values }) => values.length > 1),
    carried: out.carried,
    together: out.together,
    leftOut: out.leftOut,
    colourKnown: told.colour,
    sexing,
    hen: hen ? expectHen(mating, shellsOf(out)) : null,
  }
}

// test/madeStatement.ts: flock statements made up from a seed: few birds, every feature of the format, true or impossible.
import type { PlainStatement } from './bruteForce.ts'
import { random } from './closedFlock.ts'

type Sex = 'M' | 'F'
type Locus = PlainStatement['loci'][number]

/** Kinds of genome, smallest first: chromosome of each group with the number of alleles of each locus in it. */
const small: readonly (readonly { on: 'A' | 'Z'; alleles: readonly number[] }[])[] = [
  [{ on: 'A', alleles: [2] }],
  [{ on: 'Z', alleles: [2] }],
  [{ on: 'A', alleles: [3] }],
  [{ on: 'Z', alleles: [3] }],
]
const large: typeof small = [
  ...small,
  [
    { on: 'A', alleles: [2] },
    { on: 'A', alleles: [2] },
  ],
  [
    { on: 'A', alleles: [2] },
    { on: 'Z', alleles: [2] },
  ],
  [
    { on: 'Z', alleles: [2] },
    { on: 'Z', alleles: [2] },
  ],
  [{ on: 'A', alleles: [2, 2] }],
  [{ on: 'Z', alleles: [2, 2] }],
]
const widest: typeof small = [...large, [{ on: 'Z', alleles: [2, 2, 2] }], [{ on: 'A', alleles: [2, 3] }]]

/** @param birds 3 to 8: the more birds, the smaller the genome, so that all of it can be played through */
export function madeStatement(seed: number, birds: number): PlainStatement {
  const draw = random(seed)
  const below = (n: number): number => Math.floor(draw() * n)
  const pick = <T>(from: readonly T[]): T => from[below(from.length)]!
  const chance = (p: number): boolean => draw() < p
  /** n fractions that add to 1, in twelfths; zeros may occur. */
  const shares = (n: number): readonly string[] => {
    const parts = Array.from({ length: n }, () => 0)
    for (let i = 0; i < 12; i += 1) parts[below(n)]! += 1
    return parts.map((part) => `${part}/12`)
  }

  const layout = pick(birds <= 4 ? widest : birds <= 5 ? large : small)
  const loci: Locus[] = []
  const groups = layout.map(({ on, alleles }) => {
    const symbols = alleles.map((n) => {
      const symbol = `L${loci.length}`
      loci.push({ symbol, on, alleles: ['A', 'B', 'C'].slice(0, n).map((a) => `${a}${loci.length}`), freqs: shares(n) })
      return symbol
    })
    return { loci: symbols, on, r: symbols.slice(1).map(() => pick(['0', '1/10', '1/4', '1/2'])) }
  })

  const genotypes = ({ on, alleles }: Locus, sex: Sex): readonly string[] =>
    on === 'Z' && sex === 'F'
      ? alleles.map((a) => `${a}/-`)
      : alleles.flatMap((a, i) => alleles.slice(i).map((b) => `${a}/${b}`))
  const onZ = (symbols: readonly string[]): boolean =>
    symbols.some((symbol) => loci.find((l) => l.symbol === symbol)!.on === 'Z')

  const traits = Array.from({ length: 1 + below(2) }, (_, t) => {
    const start = below(loci.length)
    const own = loci.slice(start, start + 1 + below(Math.min(2, loci.length - start))).map(({ symbol }) => symbol)
    const states = ['x', 'y', 'z'].slice(0, 2 + below(2))
    const uncertain = chance(0.35)
    const rows = (sex: Sex | '*') =>
      own
        .map((symbol) =>
          genotypes(
            loci.find((l) => l.symbol === symbol)!,
            sex === 'F' ? 'F' : 'M',
          ),
        )
        .reduce<string[][]>((made, list) => made.flatMap((one) => list.map((g) => [...one, g])), [[]])
        .map((g) => ({
          sex,
          g,
          p: uncertain ? shares(states.length) : states.map((_, i, all) => (i === below(all.length) ? 1 : 0)),
        }))
        .map((row) => (uncertain ? row : { ...row, p: certain(states.length, below(states.length)) }))
    const table = onZ(own) || chance(0.3) ? [...rows('M'), ...rows('F')] : rows('*')
    return { name: `T${t}`, loci: own, states, table }
  })

  const individuals: PlainStatement['individuals'][number][] = []
  for (let i = 0; i < birds; i += 1) {
    const cocks = individuals.filter(({ sex }) => sex === 'M')
    const hens = individuals.filter(({ sex }) => sex === 'F')
    const bred = i >= 2 && chance(0.75)
    const sex = i === 0 ? 'M' : i === 1 ? 'F' : chance(0.12) ? 'U' : pick(['M', 'F'] as const)
    const prior =
      !bred && sex !== 'U' && chance(0.35) ? groups.map((_, group) => ({ group, dist: dist(group, sex) })) : undefined
    individuals.push({
      id: `b${i}`,
      sex,
      sire: bred ? pick(cocks).id : null,
      dam: bred ? pick(hens).id : null,
      ...(prior ? { prior } : {}),
      ...(chance(0.12) ? { genotype: told(sex) } : {}),
      ...(chance(0.55)
        ? { phenotype: Object.fromEntries([pick(traits)].map(({ name, states }) => [name, pick(states)])) }
        : {}),
    })
  }
  return { loci, groups, traits, individuals, query: query() }

  function told(sex: Sex | 'U'): Record<string, string> {
    const locus = pick(loci)
    return { [locus.symbol]: pick(genotypes(locus, sex === 'U' ? pick(['M', 'F'] as const) : sex)) }
  }

  function dist(group: number, sex: Sex) {
    const strand = (): readonly string[] =>
      groups[group]!.loci.map((symbol) => pick(loci.find((l) => l.symbol === symbol)!.alleles))
    const copies = groups[group]!.on === 'Z' && sex === 'F' ? 1 : 2
    return shares(1 + below(3)).map((p) => ({ dip: Array.from({ length: copies }, strand), p }))
  }

  function query(): PlainStatement['query'] {
    const of = pick(individuals).id
    const locus = pick(loci)
    const allele = pick(locus.alleles)
    switch (below(6)) {
      case 0:
        return { kind: 'phenotype', of, traits: traits.map(({ name }) => name) }
      case 1:
        return { kind: 'genotype', of, locus: locus.symbol }
      case 2:
        return { kind: 'genotypes', of, loci: loci.map(({ symbol }) => symbol) }
      case 3:
        return { kind: 'phase', of, group: below(groups.length) }
      case 4:
        return { kind: 'carries', of, locus: locus.symbol, allele }
      default:
        return { kind: 'carries-all', locus: locus.symbol, allele }
    }
  }
}

const certain = (states: number, at: number): readonly number[] =>
  Array.from({ length: states }, (_, i) => (i === at ? 1 : 0))

// test/bruteForce.ts: the slow second opinion: a flock statement answered by playing through every bird, gamete by gamete.
// It shares no code with the engine and reads the JSON by itself.

type Rational = string | number
type Sex = 'M' | 'F'
export type PlainStatement = {
  readonly loci: readonly { symbol: string; on: 'A' | 'Z'; alleles: readonly string[]; freqs?: readonly Rational[] }[]
  readonly groups: readonly { loci: readonly string[]; on: 'A' | 'Z'; r: readonly Rational[] }[]
  readonly traits: readonly {
    name: string
    loci: readonly string[]
    states: readonly string[]
    table: readonly { sex: Sex | '*'; g: readonly string[]; p: readonly Rational[] }[]
  }[]
  readonly individuals: readonly {
    id: string
    sex: Sex | 'U'
    sire: string | null
    dam: string | null
    prior?: readonly { group: number; dist: readonly { dip: readonly (readonly string[])[]; p: Rational }[] }[]
    genotype?: Readonly<Record<string, string>>
    phenotype?: Readonly<Record<string, string>>
  }[]
  readonly query:
    | { readonly kind: 'phenotype'; readonly of: string; readonly traits: readonly string[] }
    | { readonly kind: 'genotype'; readonly of: string; readonly locus: string }
    | { readonly kind: 'genotypes'; readonly of: string; readonly loci: readonly string[] }
    | { readonly kind: 'carries'; readonly of: string; readonly locus: string; readonly allele: string }
    | { readonly kind: 'phase'; readonly of: string; readonly group: number }
    | { readonly kind: 'carries-all'; readonly locus: string; readonly allele: string }
}

const number = (x: Rational): number => {
  const [n, d = '1'] = String(x).split('/')
  return Number(n) / Number(d)
}

type Strand = readonly string[]
/** One strand or two for each group. */
type Genes = readonly (readonly Strand[])[]
type Way = { readonly genes: Genes; readonly sex: Sex; readonly p: number }

/** Every path along the two strands, crossing over or not between each locus and the next. */
function gametes([one, other]: readonly Strand[], r: readonly number[]): readonly { strand: Strand; p: number }[] {
  if (other === undefined) return [{ strand: one!, p: 1 }]
  let paths = [
    { on: 0, strand: [one![0]!], p: 1 / 2 },
    { on: 1, strand: [other[0]!], p: 1 / 2 },
  ]
  r.forEach((between, i) => {
    paths = paths.flatMap(({ on, strand, p }) =>
      [on, 1 - on].map((next) => ({
        on: next,
        strand: [...strand, (next === 0 ? one! : other)[i + 1]!],
        p: p * (next === on ? 1 - between : between),
      })),
    )
  })
  return paths
}

/** Ways alike but for the order of the strands, put together. */
function gathered(ways: readonly Way[]): readonly Way[] {
  const found = new Map<string, { genes: Genes; sex: Sex; p: number }>()
  for (const { genes, sex, p } of ways) {
    const key = sex + JSON.stringify(genes.map((strands) => strands.map((strand) => strand.join(' ')).sort()))
    const before = found.get(key)
    if (before) before.p += p
    else found.set(key, { genes, sex, p })
  }
  return [...found.values()].filter(({ p }) => p > 0)
}

export function bruteForce(statement: PlainStatement): { answer: Record<string, number>; evidence: number } {
  const { loci, groups, traits, individuals, query } = statement
  const locusOf = (symbol: string) => loci.find((locus) => locus.symbol === symbol)!
  const fractions = groups.map(({ r }) => r.map(number))

  const founderStrands = (group: number): readonly { strand: Strand; p: number }[] =>
    groups[group]!.loci.reduce<{ strand: string[]; p: number }[]>(
      (made, symbol) =>
        made.flatMap(({ strand, p }) =>
          locusOf(symbol).alleles.map((allele, i) => ({
            strand: [...strand, allele],
            p: p * number(locusOf(symbol).freqs![i]!),
          })),
        ),
      [{ strand: [], p: 1 }],
    )

  const ofGroup = (
    bird: PlainStatement['individuals'][number],
    sex: Sex,
    group: number,
    parents: readonly [Genes, Genes] | undefined,
  ) => {
    const single = groups[group]!.on === 'Z' && sex === 'F'
    const prior = bird.prior?.find((one) => one.group === group)
    if (prior) return prior.dist.map(({ dip, p }) => ({ strands: dip, p: number(p) }))
    const [sperm, eggs] = parents
      ? [gametes(parents[0][group]!, fractions[group]!), gametes(parents[1][group]!, fractions[group]!)]
      : [founderStrands(group), founderStrands(group)]
    if (single) return sperm.map(({ strand, p }) => ({ strands: [strand], p }))
    return sperm.flatMap((a) => eggs.map((b) => ({ strands: [a.strand, b.strand], p: a.p * b.p })))
  }

  const ways = (
    bird: PlainStatement['individuals'][number],
    parents: readonly [Genes, Genes] | undefined,
  ): readonly Way[] =>
    gathered(
      (bird.sex === 'U' ? (['M', 'F'] as const) : [bird.sex]).flatMap((sex) =>
        groups.reduce<Way[]>(
          (made, _, group) =>
            made.flatMap(({ genes, p }) =>
              ofGroup(bird, sex, group, parents).map((one) => ({ genes: [...genes, one.strands], sex, p: p * one.p })),
            ),
          [{ genes: [], sex, p: bird.sex === 'U' ? 1 / 2 : 1 }],
        ),
      ),
    )

  /** 'S/s' with the alleles in the order of the locus, 'S/-' where there is one. */
  const genotype = (genes: Genes, symbol: string): string => {
    const group = groups.findIndex((one) => one.loci.includes(symbol))
    const at = groups[group]!.loci.indexOf(symbol)
    const { alleles } = locusOf(symbol)
    const [a, b] = genes[group]!.map((strand) => strand[at]!).sort((x, y) => alleles.indexOf(x) - alleles.indexOf(y))
    return `${a}/${b ?? '-'}`
  }

  const chances = (name: string, { genes, sex }: Way): readonly number[] => {
    const trait = traits.find((one) => one.name === name)!
    const wanted = trait.loci.map((symbol) => genotype(genes, symbol)).join()
    return trait.table.find((row) => (row.sex === '*' || row.sex === sex) && row.g.join() === wanted)!.p.map(number)
  }

  const read = (bird: PlainStatement['individuals'][number], way: Way): number => {
    const seen = Object.entries(bird.genotype ?? {}).every(([symbol, told]) => genotype(way.genes, symbol) === told)
      ? 1
      : 0
    return Object.entries(bird.phenotype ?? {}).reduce((p, [name, state]) => {
      const { states } = traits.find((one) => one.name === name)!
      return p * chances(name, way)[states.indexOf(state)]!
    }, seen)
  }

  const phase = (genes: Genes, group: number): string => {
    const order = (strand: Strand): number =>
      strand.reduce((sum, allele, i) => {
        const { alleles } = locusOf(groups[group]!.loci[i]!)
        return sum * alleles.length + alleles.indexOf(allele)
      }, 0)
    return [...genes[group]!]
      .sort((a, b) => order(a) - order(b))
      .map((strand) => strand.join(' '))
      .join('|')
  }

  const carries = ({ genes }: Way, locus: string, allele: string): boolean =>
    genotype(genes, locus).split('/').includes(allele)

  /** What a bird answers to the query, with the chance of each answer. */
  const answers = (way: Way): readonly (readonly [string, number])[] => {
    switch (query.kind) {
      case 'phenotype':
        return query.traits.reduce<[string, number][]>(
          (made, name) =>
            made.flatMap(([key, p]) =>
              chances(name, way).map((q, i): [string, number] => [
                [key, traits.find((one) => one.name === name)!.states[i]!].filter(Boolean).join('|'),
                p * q,
              ]),
            ),
          [['', 1]],
        )
      case 'genotype':
        return [[genotype(way.genes, query.locus), 1]]
      case 'genotypes':
        return [[query.loci.map((symbol) => genotype(way.genes, symbol)).join('|'), 1]]
      case 'phase':
        return [[phase(way.genes, query.group), 1]]
      default:
        return [[carries(way, query.locus, query.allele) ? 'yes' : 'no', 1]]
    }
  }

  const totals: Record<string, number> = {}
  let evidence = 0
  const settled = new Map<string, Way>()
  const order = [...individuals].sort((a, b) => depth(individuals, a.id) - depth(individuals, b.id))

  const play = (i: number, p: number): void => {
    const bird = order[i]
    if (bird === undefined) {
      evidence += p
      if (query.kind === 'carries-all')
        for (const [id, way] of settled)
          totals[id] = (totals[id] ?? 0) + (carries(way, query.locus, query.allele) ? p : 0)
      else {
        const { of } = query
        const way = settled.get(of)!
        const sexed = individuals.find(({ id }) => id === of)!.sex === 'U' ? `${way.sex}|` : ''
        for (const [key, q] of answers(way)) if (q > 0) totals[sexed + key] = (totals[sexed + key] ?? 0) + p * q
      }
      return
    }
    const parents =
      bird.sire && bird.dam ? ([settled.get(bird.sire)!.genes, settled.get(bird.dam)!.genes] as const) : undefined
    for (const way of ways(bird, parents)) {
      const q = p * way.p * read(bird, way)
      if (q === 0) continue
      settled.set(bird.id, way)
      play(i + 1, q)
    }
    settled.delete(bird.id)
  }
  play(0, 1)
  const answer = Object.fromEntries(
    Object.entries(totals)
      .filter(([, p]) => p > 0 || query.kind === 'carries-all')
      .map(([key, p]) => [key, p / evidence]),
  )
  return { answer, evidence }
}

function depth(individuals: PlainStatement['individuals'], id: string): number {
  const { sire, dam } = individuals.find((bird) => bird.id === id)!
  return sire && dam ? 1 + Math.max(depth(individuals, sire), depth(individuals, dam)) : 0
}

// test/core/statement.test.ts: the door for flock statements: what it reads, what it leaves out, and the fault and path where it cannot read.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { answerStatement, type StatementAnswer } from '../../core/statement.ts'
import { madeStatement } from '../madeStatement.ts'
import { runs } from '../runs.ts'

const gold = {
  loci: [
    { symbol: 'S', on: 'Z', alleles: ['S', 's'], freqs: ['1/2', 0.5] },
    { symbol: 'C', on: 'A', alleles: ['C', 'c'], freqs: ['3/4', '1/4'] },
  ],
  groups: [
    { on: 'Z', loci: ['S'], r: [] },
    { on: 'A', loci: ['C'], r: [] },
  ],
  traits: [
    {
      name: 'ground',
      loci: ['S'],
      states: ['silver', 'gold'],
      table: [
        { sex: 'M', g: ['S/S'], p: [1, 0] },
        { sex: 'M', g: ['S/s'], p: [1, 0] },
        { sex: 'M', g: ['s/s'], p: [0, 1] },
        { sex: 'F', g: ['S/-'], p: [1, 0] },
        { sex: 'F', g: ['s/-'], p: [0, 1] },
      ],
    },
    {
      name: 'white',
      loci: ['C'],
      states: ['coloured', 'white'],
      table: [
        { sex: '*', g: ['C/C'], p: ['1', '0'] },
        { sex: '*', g: ['c/C'], p: ['1', '0'] },
        { sex: '*', g: ['c/c'], p: ['0', '1'] },
      ],
    },
  ],
  individuals: [
    { id: 'cock', sex: 'M', sire: null, dam: null, genotype: { S: 's/s' } },
    { id: 'hen', sex: 'F', sire: null, dam: null, phenotype: { ground: 'silver' } },
    { id: 'X', sex: 'U', sire: 'cock', dam: 'hen' },
  ],
  query: { kind: 'phenotype', of: 'X', traits: ['ground'] },
} as const

type Path = readonly (string | number)[]
/** A value with one thing put in at a path; undefined takes it out. */
const put = (into: unknown, [step, ...rest]: Path, value: unknown): unknown => {
  if (step === undefined) return value
  if (Array.isArray(into)) return into.map((item: unknown, i) => (i === step ? put(item, rest, value) : item))
  const entries = new Map<string, unknown>(Object.entries(Object(into)))
  return Object.fromEntries([...entries, [step, put(entries.get(String(step)), rest, value)]])
}
const withAt = (path: Path, value: unknown): unknown => put(gold, path, value)
const answerOf = (found: StatementAnswer) => ('answer' in found ? found.answer : found)
const errorOf = (json: unknown): string => {
  const found = answerStatement(json)
  return 'error' in found ? found.error : JSON.stringify(found)
}

describe('what it answers', () => {
  test('a class, its fraction, and the chance of all readings', () => {
    expect(answerStatement(gold)).toEqual({
      answer: { 'M|silver': 0.5, 'F|gold': 0.5 },
      exact: { 'M|silver': '1/2', 'F|gold': '1/2' },
      evidence: 0.125,
      evidenceExact: '1/8',
    })
  })
  test('keys it does not know are passed over, null is as good as absent', () => {
    const odd = {
      ...gold,
      id: 7,
      remark: 'x',
      individuals: gold.individuals.map((bird) => ({
        prior: null,
        genotype: null,
        phenotype: null,
        ...bird,
        colour: 'red',
      })),
    }
    expect(answerOf(answerStatement(odd))).toEqual({ 'M|silver': 0.5, 'F|gold': 0.5 })
  })
  test('groups, traits and parents may be missing', () => {
    const short = {
      loci: gold.loci,
      individuals: [{ id: 'a', sex: 'F' }],
      query: { kind: 'genotypes', of: 'a', loci: ['S', 'C'] },
    }
    expect(answerOf(answerStatement(short))).toEqual({
      'S/-|C/C': 9 / 32,
      'S/-|C/c': 6 / 32,
      'S/-|c/c': 1 / 32,
      's/-|C/C': 9 / 32,
      's/-|C/c': 6 / 32,
      's/-|c/c': 1 / 32,
    })
  })
  test('a bird of which only one parent is told has an unknown bird for the other', () => {
    const half = {
      ...gold,
      individuals: [
        { id: 'dam', sex: 'F', genotype: { C: 'c/c' } },
        { id: 'X', sex: 'M', dam: 'dam' },
      ],
      query: { kind: 'genotype', of: 'X', locus: 'C' },
    }
    expect(answerOf(answerStatement(half))).toEqual({ 'C/c': 0.75, 'c/c': 0.25 })
    const other = {
      ...half,
      individuals: [
        { id: 'sire', sex: 'M', genotype: { C: 'c/c' } },
        { id: 'X', sex: 'M', sire: 'sire' },
      ],
    }
    expect(answerOf(answerStatement(other))).toEqual({ 'C/c': 0.75, 'c/c': 0.25 })
  })
  test('of all birds, those it made up are not told', () => {
    const half = {
      ...gold,
      individuals: [
        { id: 'dam', sex: 'F', genotype: { C: 'c/c' } },
        { id: 'X', sex: 'M', dam: 'dam' },
      ],
      query: { kind: 'carries-all', locus: 'C', allele: 'c' },
    }
    expect(answerOf(answerStatement(half))).toEqual({ dam: 1, X: 1 })
  })
  test('a parent of unknown sex has the sex of its part', () => {
    const unknown = { ...gold, individuals: gold.individuals.map((bird) => ({ ...bird, sex: 'U' })) }
    expect(answerOf(answerStatement(unknown))).toEqual({ 'M|silver': 0.5, 'F|gold': 0.5 })
  })
  test('chicks may be told before their parents', () => {
    expect(answerOf(answerStatement({ ...gold, individuals: gold.individuals.toReversed() }))).toEqual({
      'M|silver': 0.5,
      'F|gold': 0.5,
    })
  })
  test('a genotype may be told either way round, and tells the sex of a bird on the Z', () => {
    expect(answerOf(answerStatement(withAt(['individuals', 2, 'genotype'], { S: 's/S' })))).toEqual({ 'M|silver': 1 })
    expect(answerOf(answerStatement(withAt(['individuals', 2, 'genotype'], { S: 's/-' })))).toEqual({ 'F|gold': 1 })
  })
  test('a row for one sex goes before one for both', () => {
    const rows = [...gold.traits[1].table, { sex: 'F', g: ['c/c'], p: ['1/4', '3/4'] }]
    const hen = {
      ...gold,
      traits: [gold.traits[0], { ...gold.traits[1], table: rows }],
      individuals: [{ id: 'h', sex: 'F', genotype: { C: 'c/c' } }],
      query: { kind: 'phenotype', of: 'h', traits: ['white'] },
    }
    expect(answerOf(answerStatement(hen))).toEqual({ coloured: 0.25, white: 0.75 })
  })
  test('a trait of one sex alone needs no rows for the other, unless it is read there', () => {
    const spurs = {
      name: 'spurs',
      loci: ['C'],
      states: ['long', 'short'],
      table: ['C/C', 'C/c', 'c/c'].map((g) => ({ sex: 'M', g: [g], p: [1, 0] })),
    }
    expect(answerOf(answerStatement({ ...gold, traits: [...gold.traits, spurs] }))).toEqual({
      'M|silver': 0.5,
      'F|gold': 0.5,
    })
    const read = {
      ...gold,
      traits: [...gold.traits, spurs],
      query: { kind: 'phenotype', of: 'hen', traits: ['spurs'] },
    }
    expect(errorOf(read)).toBe('traits[2].table: no row for a hen of C/C')
  })
  test('a phase of a group whose loci have one allele each is told all the same', () => {
    const dull = {
      loci: [{ symbol: 'S', on: 'Z', alleles: ['S'], freqs: [1] }],
      individuals: [
        { id: 'a', sex: 'M' },
        { id: 'b', sex: 'F' },
      ],
    }
    expect(answerOf(answerStatement({ ...dull, query: { kind: 'phase', of: 'a', group: 0 } }))).toEqual({ 'S|S': 1 })
    expect(answerOf(answerStatement({ ...dull, query: { kind: 'phase', of: 'b', group: 0 } }))).toEqual({ S: 1 })
  })
  test('very many clear chicks leave a chance that doubles cannot hold, and no conflict', () => {
    const chicks = Array.from({ length: 1200 }, (_, i) => ({
      id: `k${i}`,
      sex: 'M',
      sire: 'cock',
      dam: 'hen',
      phenotype: { white: 'coloured' },
    }))
    const individuals = [
      { id: 'cock', sex: 'M', genotype: { C: 'C/c' } },
      { id: 'hen', sex: 'F', genotype: { C: 'c/c' } },
      ...chicks,
      { id: 'last', sex: 'F', sire: 'cock', dam: 'hen', phenotype: { white: 'white' } },
    ]
    const found = answerStatement({
      ...gold,
      individuals,
      query: { kind: 'carries', of: 'cock', locus: 'C', allele: 'c' },
    })
    expect(answerOf(found)).toEqual({ yes: 1 })
  })
  test('readings that cannot all be true are named, and no others', () => {
    const individuals = [
      ...gold.individuals.slice(0, 2),
      { id: 'k', sex: 'F', sire: 'cock', dam: 'hen', phenotype: { ground: 'silver', white: 'white' } },
    ]
    expect(answerStatement({ ...gold, individuals, query: { kind: 'genotype', of: 'k', locus: 'C' } })).toEqual({
      conflict: [
        { bird: 'cock', reading: 'S: s/s' },
        { bird: 'k', reading: 'ground: silver' },
      ],
    })
  })
})

describe('a fault is told with its path', () => {
  const cases: readonly (readonly [path: readonly (string | number)[], value: unknown, says: RegExp | string])[] = [
    [['loci'], undefined, /^loci: /],
    [['loci'], [], 'loci: want at least one'],
    [['loci', 0, 'on'], 'X', 'loci[0].on: want "A" (autosome) or "Z"'],
    [['loci', 1, 'symbol'], 'S', 'loci[1].symbol: "S" stands twice'],
    [['loci', 0, 'alleles'], ['S', 'S'], 'loci[0].alleles: an allele stands twice'],
    [['loci', 0, 'alleles', 1], 's/x', /^loci\[0\]\.alleles\[1\]: an allele is a word/],
    [['loci', 0, 'alleles', 1], '-', /^loci\[0\]\.alleles\[1\]: an allele is a word/],
    [['loci', 0, 'freqs'], ['1/2', '1/3'], 'loci[0].freqs: the chances must add to 1'],
    [['loci', 0, 'freqs'], ['3/2', '-1/2'], 'loci[0].freqs: a chance lies between 0 and 1'],
    [['loci', 0, 'freqs'], [1], 'loci[0].freqs: want one frequency for each of 2 alleles'],
    [['loci', 0, 'freqs', 1], 'half', 'loci[0].freqs[1]: "half" is no fraction; write "1/4" or 0.25'],
    [['loci', 0, 'freqs', 1], true, /^loci\[0\]\.freqs\[1\]: want a fraction/],
    [['groups', 0, 'loci', 0], 'Q', 'groups[0].loci[0]: no locus "Q"; there are S, C'],
    [
      ['groups', 0, 'loci'],
      ['S', 'C'],
      'groups[0]: the loci of a group lie on one chromosome, and its "on" says which',
    ],
    [['groups', 1, 'on'], 'Z', 'groups[1]: the loci of a group lie on one chromosome, and its "on" says which'],
    [['groups', 1], { on: 'Z', loci: ['S'], r: [] }, 'groups: locus "S" stands in two places'],
    [['groups', 0, 'r'], ['1/4'], 'groups[0].r: want 0 fractions, one between each locus and the next'],
    [['traits', 1, 'name'], 'ground', 'traits[1].name: "ground" stands twice'],
    [['traits', 0, 'loci', 0], 'Q', 'traits[0].loci[0]: no locus "Q"; there are S, C'],
    [['traits', 0, 'states'], ['gold', 'gold'], 'traits[0].states: a state stands twice'],
    [['traits', 0, 'table', 4], undefined, 'traits[0].table[4]: '],
    [['traits', 0, 'table'], gold.traits[0].table.slice(0, 4), 'traits[0].table: no row for a hen of s/-'],
    [
      ['traits', 0, 'table', 0, 'g'],
      ['S'],
      'traits[0].table[0].g: "S" cannot be: write two alleles out of S, s: "S/s"',
    ],
    [
      ['traits', 0, 'table', 3, 'g'],
      ['S/s'],
      'traits[0].table[3].g: "S/s" cannot be: a hen has one copy of "S": write "S/-"',
    ],
    [
      ['traits', 0, 'table', 0, 'g'],
      ['S/S', 'C/C'],
      'traits[0].table[0].g: want 1 genotypes, one for each locus of the trait',
    ],
    [['traits', 0, 'table', 0, 'p'], [1], 'traits[0].table[0].p: want 2 chances, one for each state'],
    [['traits', 0, 'table', 0, 'p'], ['1/2', '1/4'], 'traits[0].table[0].p: the chances must add to 1'],
    [['traits', 0, 'table', 1, 'g'], ['S/S'], 'traits[0].table[1]: this genotype has a row already'],
    [['traits', 0, 'table', 0, 'sex'], 'cock', 'traits[0].table[0].sex: want "M", "F" or "*"'],
    [['individuals'], [], 'individuals: want at least one'],
    [['individuals', 1, 'id'], 'cock', 'individuals[1].id: "cock" stands twice'],
    [['individuals', 0, 'sex'], 'X', 'individuals[0].sex: want "M" (cock), "F" (hen) or "U" (not known)'],
    [['individuals', 2, 'sire'], 'Bert', 'individuals[2].sire: no individual "Bert"'],
    [['individuals', 2, 'sire'], 'hen', 'individuals[2].sire: "hen" is a hen (F) and cannot be a sire'],
    [['individuals', 2, 'dam'], 'cock', 'individuals[2].dam: "cock" is a cock (M) and cannot be a dam'],
    [['individuals', 0, 'sire'], 'cock', 'individuals[0]: "cock" stands among its own ancestors'],
    [
      ['individuals', 0, 'prior'],
      [{ group: 5, dist: [] }],
      'individuals[0].prior[0].group: no group 5; there are 2, counted from 0',
    ],
    [
      ['individuals', 0, 'prior'],
      [{ group: 0, dist: [{ dip: [['s'], ['s']], p: '1/2' }] }],
      'individuals[0].prior[0].dist: the chances must add to 1',
    ],
    [
      ['individuals', 0, 'prior'],
      [{ group: 0, dist: [{ dip: [['s']], p: 1 }] }],
      'individuals[0].prior[0].dist[0].dip: want two haplotypes',
    ],
    [
      ['individuals', 1, 'prior'],
      [{ group: 0, dist: [{ dip: [['s'], ['s']], p: 1 }] }],
      'individuals[1].prior[0].dist[0].dip: a hen has one haplotype on the Z',
    ],
    [
      ['individuals', 0, 'prior'],
      [{ group: 0, dist: [{ dip: [['q'], ['s']], p: 1 }] }],
      'individuals[0].prior[0].dist[0].dip[0][0]: "q" is no allele of "S"',
    ],
    [
      ['individuals', 0, 'prior'],
      [{ group: 0, dist: [{ dip: [['s', 's'], ['s']], p: 1 }] }],
      'individuals[0].prior[0].dist[0].dip[0]: want 1 alleles, one for each locus of the group',
    ],
    [
      ['individuals', 2, 'prior'],
      [{ group: 1, dist: [{ dip: [['c'], ['c']], p: 1 }] }],
      'individuals[2].prior: only a founder has a prior, and "X" has parents',
    ],
    [
      ['loci', 1, 'freqs'],
      undefined,
      'individuals[0]: "cock" has no parents and no prior for group 1, and locus "C" has no freqs to go by',
    ],
    [['individuals', 0, 'genotype'], { Q: 'q/q' }, 'individuals[0].genotype.Q: no locus "Q"; there are S, C'],
    [
      ['individuals', 1, 'genotype'],
      { S: 'S/s' },
      'individuals[1].genotype.S: "S/s" cannot be: a hen has one copy of "S": write "S/-"',
    ],
    [
      ['individuals', 0, 'genotype'],
      { S: 'S/-' },
      'individuals[0].genotype.S: "S/-" cannot be: write two alleles out of S, s: "S/s"',
    ],
    [
      ['individuals', 0, 'genotype'],
      { C: 'C/c/c' },
      'individuals[0].genotype.C: "C/c/c" cannot be: write two alleles out of C, c: "C/c"',
    ],
    [['individuals', 0, 'phenotype'], { size: 'big' }, 'individuals[0].phenotype.size: no trait "size"'],
    [
      ['individuals', 0, 'phenotype'],
      { ground: 'blue' },
      'individuals[0].phenotype.ground: "blue" is no state of "ground"; there are silver, gold',
    ],
    [['query'], undefined, /^query: /],
    [['query', 'kind'], 'guess', /^query\.kind: want "phenotype", "genotype"/],
    [['query', 'of'], 'Bert', 'query.of: no individual "Bert"'],
    [['query', 'traits', 0], 'size', 'query.traits[0]: no trait "size"'],
    [['query'], { kind: 'genotype', of: 'X', locus: 'Q' }, 'query.locus: no locus "Q"; there are S, C'],
    [['query'], { kind: 'genotypes', of: 'X', loci: ['C', 'Q'] }, 'query.loci[1]: no locus "Q"; there are S, C'],
    [['query'], { kind: 'carries', of: 'X', locus: 'C', allele: 'x' }, 'query.allele: "x" is no allele of "C"'],
    [['query'], { kind: 'phase', of: 'X', group: 9 }, 'query.group: no group 9; there are 2, counted from 0'],
    [['query'], { kind: 'carries-all', locus: 'C', allele: 'x' }, 'query.allele: "x" is no allele of "C"'],
  ]
  test.each(cases)('%j set to %j', (path, value, says) => {
    if (typeof says === 'string') expect(errorOf(withAt(path, value)).startsWith(says)).toBe(true)
    else expect(errorOf(withAt(path, value))).toMatch(says)
  })

  test.each([[null], ['text'], [42], [[]], [{}], [undefined]])('%j is no statement', (json) => {
    expect(errorOf(json).length).toBeGreaterThan(10)
  })
  test('a fraction of recombination above one half, or below none', () => {
    const linked = (r: unknown) => ({
      ...gold,
      loci: [gold.loci[0], { ...gold.loci[0], symbol: 'K' }],
      groups: [{ on: 'Z', loci: ['S', 'K'], r: [r] }],
      traits: [],
      individuals: [{ id: 'a', sex: 'M' }],
      query: { kind: 'phase', of: 'a', group: 0 },
    })
    expect(errorOf(linked('0.6'))).toBe('groups[0].r[0]: a recombination fraction lies between 0 and 1/2')
    expect(errorOf(linked('-0.1'))).toBe('groups[0].r[0]: a recombination fraction lies between 0 and 1/2')
    expect(errorOf(linked('1/2'))).toMatch(/"answer"/)
    expect(errorOf(linked(0))).toMatch(/"answer"/)
  })
  test('a bird of unknown sex that is a sire here and a dam there', () => {
    const individuals = [
      { id: 'a', sex: 'U' },
      { id: 'b', sex: 'U' },
      { id: 'c', sex: 'M', sire: 'a', dam: 'b' },
      { id: 'd', sex: 'M', sire: 'b', dam: 'a' },
    ]
    expect(errorOf({ ...gold, individuals })).toMatch(/^individuals\[2\]\.sire: "a" stands as a sire in one place/)
  })
  test('a loop through several birds', () => {
    const individuals = [
      { id: 'a', sex: 'M', sire: 'c', dam: 'h' },
      { id: 'h', sex: 'F' },
      { id: 'c', sex: 'M', sire: 'a', dam: 'h' },
    ]
    expect(errorOf({ ...gold, individuals, query: { kind: 'genotype', of: 'a', locus: 'C' } })).toMatch(
      /among its own ancestors/,
    )
  })
  test('a prior told twice for a group, or on the Z for a bird of unknown sex', () => {
    const prior = { group: 0, dist: [{ dip: [['s'], ['s']], p: 1 }] }
    expect(errorOf(withAt(['individuals', 0, 'prior'], [prior, prior]))).toBe(
      'individuals[0].prior[1].group: this group has a prior already',
    )
    const founder = { ...gold, individuals: [...gold.individuals, { id: 'f', sex: 'U', prior: [prior] }] }
    expect(errorOf(founder)).toBe('individuals[3].prior[0]: on the Z a prior needs a bird of known sex')
  })
  test.each([
    [['loci'], undefined, 'loci: missing; want a list, [ ]'],
    [['individuals', 0], 'cock', 'individuals[0]: want an object, { }'],
    [['individuals', 0, 'id'], 7, 'individuals[0].id: want a text, " "'],
    [['individuals', 0, 'phenotype'], [], 'individuals[0].phenotype: want an object, { }'],
    [['individuals', 0, 'prior'], [{ group: 'S', dist: [] }], 'individuals[0].prior[0].group: want a number'],
  ])('%j set to %j is told in plain words', (path, value, says) => expect(errorOf(withAt(path, value))).toBe(says))
})

describe('too much', () => {
  const many = (n: number, on = 'A') =>
    Array.from({ length: n }, (_, i) => ({ symbol: `L${i}`, on, alleles: ['A', 'a'], freqs: ['1/2', '1/2'] }))
  const names = (n: number): string[] => many(n).map(({ symbol }) => symbol)
  const pair = [
    { id: 'cock', sex: 'M' },
    { id: 'hen', sex: 'F' },
    { id: 'chick', sex: 'M', sire: 'cock', dam: 'hen' },
  ]
  const genotypes = (n: number) => ({
    loci: many(n),
    individuals: pair,
    query: { kind: 'genotypes', of: 'chick', loci: names(n) },
  })

  test('more classes than anybody reads are not written out: 3 to the eleventh', () => {
    expect(Object.keys(answerOf(answerStatement(genotypes(6))))).toHaveLength(3 ** 6)
    expect(errorOf(genotypes(11))).toBe(
      'query: the answer would have more than 1.0e+5 classes; ask of fewer loci or traits at once',
    )
  })
  test('nor are those of a sign of chance asked over and over', () => {
    const table = ['C/C', 'C/c', 'c/c'].map((g) => ({ sex: '*', g: [g], p: ['1/2', '1/2'] }))
    const traits = [{ ...gold.traits[1], table }]
    const query = { kind: 'phenotype', of: 'X', traits: Array.from({ length: 17 }, () => 'white') }
    expect(errorOf({ ...gold, individuals: [{ id: 'X', sex: 'F' }], traits, query })).toMatch(
      /^query: the answer would have more than/,
    )
  })
  test('a group with more haplotypes than can be paired off', () => {
    const r = Array.from({ length: 7 }, () => '1/10')
    const query = { kind: 'phase', of: 'chick', group: 0 }
    expect(errorOf({ loci: many(8), groups: [{ loci: names(8), r }], individuals: pair, query })).toMatch(
      /^loci: the alleles of L0, L1, .*, L7 make 256 haplotypes in one group, more than 150; leave out/,
    )
  })
  test('a locus of very many alleles, by its table for three birds', () => {
    const alleles = (n: number) => Array.from({ length: n }, (_, i) => `a${i}`)
    const flock = (n: number) => ({
      loci: [{ symbol: 'S', on: 'A', alleles: alleles(n), freqs: alleles(n).map(() => `1/${n}`) }],
      individuals: pair,
      query: { kind: 'genotype', of: 'chick', locus: 'S' },
    })
    expect(errorOf(flock(40))).toMatch(/^individuals: this would take .* cells, .* leave out 1 bird: hen$/)
    expect(errorOf(flock(101))).toBe('loci[0].alleles: want at most 100 alleles')
  })
  test('a trait of sixteen loci lacks a row, and says so before all of its genotypes are gone through', () => {
    const g = names(16).map(() => 'A/A')
    const traits = [{ name: 't', loci: names(16), states: ['x'], table: [{ sex: '*', g, p: [1] }] }]
    const individuals = [{ id: 'cock', sex: 'M', phenotype: { t: 'x' } }]
    const query = { kind: 'genotype', of: 'cock', locus: 'L0' }
    expect(errorOf({ loci: many(16), traits, individuals, query })).toMatch(
      /^traits\[0\]\.table: no row for a cock of A/,
    )
  })
  test('a line of four thousand generations is no trouble where only its end is asked, nor is a circle of them', () => {
    const line = Array.from({ length: 4000 }, (_, i) => ({ id: `b${i}`, sex: 'M', sire: `b${i + 1}` }))
    const query = { kind: 'genotype', of: 'b3999', locus: 'L0' }
    expect(
      answerOf(answerStatement({ loci: many(1), individuals: [...line, { id: 'b4000', sex: 'M' }], query })),
    ).toEqual({ 'A/A': 0.25, 'A/a': 0.5, 'a/a': 0.25 })
    expect(errorOf({ loci: many(1), individuals: [...line.slice(0, -1), { ...line[0], id: 'b3999' }], query })).toBe(
      'individuals[1]: "b1" stands among its own ancestors',
    )
  })
})

test('whatever is broken in a statement: an answer that adds up, a conflict, or one line that starts with the place', () => {
  const leaf = fc.oneof(
    fc.constantFrom<unknown>(null, '', '-', 0, -1, 1e308, 'x', 'b0', 'M', 'U', 'Z', '1/2', '1/0', '-1/2', 0.6, true),
    fc.jsonValue({ maxDepth: 1 }),
  )
  const edit = fc.record({
    path: fc.array(fc.nat(), { minLength: 1, maxLength: 7 }),
    how: fc.constantFrom('drop', 'double', 'set'),
    value: leaf,
  })
  fc.assert(
    fc.property(fc.nat(1e6), fc.array(edit, { minLength: 1, maxLength: 3 }), (seed, edits) => {
      const broken = edits.reduce(broke, madeStatement(seed, 3 + (seed % 4)) as unknown)
      const found = answerStatement(broken)
      if ('error' in found)
        expect(found.error).toMatch(/^(loci|groups|traits|individuals|query)[^\n]*: |^want an object/)
      else if ('conflict' in found) expect(found.conflict.length).toBeGreaterThan(0)
      else for (const p of [...Object.values(found.answer), found.evidence]) expect(p > 0 || p === 0).toBe(true)
    }),
    { numRuns: runs(600), seed: 1 },
  )
})

type Edit = { readonly path: readonly number[]; readonly how: string; readonly value: unknown }
/** Something taken out, told twice or put in the place of something, as deep as the path goes; each step is counted round. */
function broke(json: unknown, { path: [step = 0, ...rest], how, value }: Edit): unknown {
  if (json === null || typeof json !== 'object') return value
  const entries = Object.entries(json)
  if (entries.length === 0) return value
  const at = step % entries.length
  const [key, old] = entries[at]!
  const put =
    rest.length > 0 && old !== null && typeof old === 'object' ? broke(old, { path: rest, how, value }) : value
  const same = rest.length > 0 && old !== null && typeof old === 'object'
  if (Array.isArray(json)) {
    if (same || how === 'set') return json.with(at, put)
    return how === 'drop' ? json.toSpliced(at, 1) : json.toSpliced(at, 0, old)
  }
  return Object.fromEntries(same || how !== 'drop' ? entries.with(at, [key, put]) : entries.toSpliced(at, 1))
}

// test/core/engine/lump.test.ts: alleles that nobody can tell apart become one, and nothing else does.
import { describe, expect, test } from 'vitest'
import { doubles } from '../../../core/engine/doubles.ts'
import { askBird } from '../../../core/engine/ask.ts'
import type { Genome } from '../../../core/engine/genome.ts'
import { genotypeName, askCarries, askGenotype, type Item } from '../../../core/engine/item.ts'
import { classesOf, genotypesOf, haplotypeOf, lump, type Use } from '../../../core/engine/lump.ts'
import { formatRatio, ratio } from '../../../core/engine/num.ts'
import type { Pedigree } from '../../../core/engine/pedigree.ts'

const locus = (id: string, alleles: string, on: 'A' | 'Z' = 'A') => ({
  id,
  on,
  alleles: alleles.split(''),
  freqs: alleles.split('').map((_, i) => ratio(i === 0 ? BigInt(alleles.length) : 1n, BigInt(2 * alleles.length - 1))),
})
/** Three loci in one group, the second with a series of five. */
const genome: Genome = {
  loci: [locus('P', 'Pp'), locus('E', 'EBWRb'), locus('Q', 'Qq')],
  groups: [{ on: 'A', loci: [0, 1, 2], r: [ratio(1n, 10n), ratio(1n, 4n)] }],
}
const carries = (at: number, allele: number): Use => askCarries(genome, at, allele).uses[0]!

describe('a series asked about one dominant allele', () => {
  const lumpedOnce = () => lump(genome, [carries(1, 0)])
  test('becomes two classes, and the other loci go', () => {
    const [lumped] = lumpedOnce()
    expect(lumped).toMatchObject({
      from: 0,
      loci: [1],
      classOf: [[0, 1, 1, 1, 1]],
      standIn: [[0, 1]],
      r: [],
      haplotypes: 2,
    })
  })
  test('a strand of the whole group is known by its class', () => {
    const [lumped] = lumpedOnce()
    expect([0, 1, 4].map((allele) => haplotypeOf(lumped!, genome, [1, allele, 0]))).toEqual([0, 1, 1])
  })
  test('a diplotype stands for genotypes with an allele of each class', () => {
    const [lumped] = lumpedOnce()
    expect([0, 1, 2].map((code) => genotypeName(genome.loci[1]!, genotypesOf(lumped!, genome, code)[0]!))).toEqual([
      'E/E',
      'E/B',
      'B/B',
    ])
  })
})

test('two questions keep apart what either tells apart', () => {
  const [lumped] = lump(genome, [carries(1, 0), carries(1, 3)])
  expect(lumped!.classOf).toEqual([[0, 1, 1, 2, 1]])
})

test('what is asked of nobody vanishes with its group', () => expect(lump(genome, [])).toEqual([]))

test('a locus that goes from the middle leaves the joined interval: 1/10 + 1/4 - 2/40 = 3/10', () => {
  const [lumped] = lump(genome, [carries(0, 0), carries(2, 0)])
  expect([lumped!.loci, lumped!.r.map(formatRatio), lumped!.haplotypes]).toEqual([[0, 2], ['3/10'], 4])
})

test('haplotypes are numbered first locus slowest', () => {
  const [lumped] = lump(genome, [carries(0, 0), carries(1, 0), carries(1, 1), carries(2, 0)])
  expect(lumped!.haplotypes).toBe(2 * 3 * 2)
  expect(classesOf(lumped!, 11)).toEqual([1, 2, 1])
  expect(classesOf(lumped!, 6)).toEqual([1, 0, 0])
  expect(haplotypeOf(lumped!, genome, [1, 4, 1])).toBe(11)
})

test('alleles told apart in one company only, or in one sex only, stay apart', () => {
  const inCompany: Use = { loci: [1, 0], tell: (_sex, [e, p]) => (p === 2 ? String(e === 14) : '') }
  expect(lump(genome, [inCompany])[0]!.classOf).toEqual([
    [0, 1],
    [0, 0, 0, 0, 1],
  ])
  const onZ: Genome = { loci: [locus('S', 'Sab', 'Z')], groups: [{ on: 'Z', loci: [0], r: [] }] }
  const inHens: Use = { loci: [0], tell: (sex, [code]) => (sex === 'F' ? String(code === 8) : '') }
  expect(lump(onZ, [inHens])[0]!.classOf).toEqual([[0, 0, 1]])
})

test('lumped and unlumped give the same answer', () => {
  const birds: Pedigree['birds'] = [
    { id: 'a', sex: 'M', readings: [] },
    { id: 'b', sex: 'F', readings: [] },
    { id: 'c', sex: 'M', parents: { sire: 0, dam: 1 }, readings: [] },
    { id: 'd', sex: 'F', parents: { sire: 2, dam: 1 }, readings: [] },
  ]
  const ask = (items: readonly Item[]): Map<string, number> => {
    const outcome = askBird({ genome, birds }, 3, items, doubles)
    if (outcome.kind !== 'answer') throw new Error(outcome.kind)
    const summed = new Map<string, number>()
    for (const [name, p] of outcome.answer.classes)
      summed.set(name.split('|')[0]!, (summed.get(name.split('|')[0]!) ?? 0) + p)
    return summed
  }
  const short = ask([askCarries(genome, 1, 2)])
  const long = ask([askCarries(genome, 1, 2), askGenotype(genome, 1), askGenotype(genome, 0)])
  for (const name of ['yes', 'no']) expect(long.get(name)).toBeCloseTo(short.get(name)!, 12)
})

// test/core/engine/domain.test.ts: what parents and chicks leave each other: genotype elimination.
import { expect, test } from 'vitest'
import { domains, type Domains } from '../../../core/engine/domain.ts'
import { kindsOf } from '../../../core/engine/genome.ts'
import type { Lumped } from '../../../core/engine/lump.ts'

const group = (on: 'A' | 'Z', haplotypes: number): Lumped => ({
  on,
  from: 0,
  loci: [0],
  classOf: [],
  standIn: [],
  r: [],
  haplotypes,
})
const unlinked = (lumped: Lumped): Domains =>
  domains(lumped, (code) =>
    Array.from({ length: lumped.haplotypes }, (_, h) => kindsOf(code, lumped.haplotypes).some((kind) => kind === h)),
  )
const cut = (on: 'A' | 'Z', ...codes: readonly (readonly number[])[]): readonly (readonly number[])[] => {
  const { of, cut } = unlinked(group(on, 2))
  const [chick, sire, dam] = codes.map((list) => of(list))
  return cut(chick!, sire!, dam!).map((domain) => domain.codes)
}
// two alleles, C and c: pairs C/C 0, C/c 1, c/c 2; singles C 3, c 4

test('a white chick leaves both coloured parents one genotype', () => {
  expect(cut('A', [2], [0, 1], [0, 1])).toEqual([[2], [1], [1]])
})
test('a chick of two known parents has what these can give', () => {
  expect(cut('A', [0, 1, 2], [0], [2])).toEqual([[1], [0], [2]])
  expect(cut('A', [0, 1, 2], [1], [2])).toEqual([[1, 2], [1], [2]])
})
test('a carrier chick of an unknown sire and a clear dam shows that the sire has it', () => {
  expect(cut('A', [1], [0, 1, 2], [0])).toEqual([[1], [1, 2], [0]])
})
test('a daughter has her one Z from her sire, and says nothing of her dam', () => {
  expect(cut('Z', [3, 4], [0], [3, 4])).toEqual([[3], [0], [3, 4]])
  expect(cut('Z', [4], [0, 1, 2], [3, 4])).toEqual([[4], [1, 2], [3, 4]])
})
test('a son has one Z of each', () => {
  expect(cut('Z', [0, 1, 2], [0, 1, 2], [4])).toEqual([[1, 2], [0, 1, 2], [4]])
  expect(cut('Z', [0], [0, 1, 2], [3, 4])).toEqual([[0], [0, 1], [3]])
})
test('a chick of unknown sex counts as either', () => {
  expect(cut('Z', [0, 1, 2, 3, 4], [0], [4])).toEqual([[1, 3], [0], [4]])
})
test('what cannot be leaves nothing', () => {
  expect(cut('A', [2], [0], [1])).toEqual([[], [], []])
  expect(cut('Z', [4], [0], [3])).toEqual([[], [], []])
})
test('equal sets are one object, and a trio is worked once', () => {
  const { of, cut } = unlinked(group('A', 2))
  expect(of([0, 1])).toBe(of([0, 1]))
  expect(of([0, 1])).not.toBe(of([1]))
  expect(cut(of([2]), of([0, 1]), of([0, 1]))).toBe(cut(of([2]), of([0, 1]), of([0, 1])))
})

// test/core/flock/lookWord.test.ts: what a keeper's word for a chick tells of a debated allele.
import { expect, test } from 'vitest'
import { debated } from '../../../core/flock/debated.ts'
import { lookTells } from '../../../core/flock/lookWord.ts'

test.each([
  ['lav', 'lav', 'lavender', true],
  ['lav', 'lav', 'grey', true],
  ['lav', 'lav', 'dark', false],
  ['lav', 'lav', 'Black', false],
  ['lav', 'lav', 'white', undefined],
  ['lav', 'lav', 'pea comb', undefined],
  ['c', 'c', 'white', true],
  ['c', 'c', 'yellow', true],
  ['c', 'c', 'coloured', false],
  ['s+', 'S', 'red', true],
  ['s+', 'S', 'silver', false],
  ['s+', 'S', 'black', undefined],
  ['B', 'B', 'cuckoo', true],
  ['B', 'B', 'black', false],
  ['I', 'I', 'white', true],
  ['P', 'P', 'pea combed', true],
  ['P', 'P', 'single comb', false],
  ['P', 'P', 'black', undefined],
  ['P', 'P', 'muffs', undefined],
  ['Mb', 'Mb', 'muffed', true],
  ['Cr', 'Cr', 'no crest', false],
  ['h', 'h', 'silkie', true],
])('%s at %s: "%s" tells %s', (allele, locus, look, tells) => {
  expect(lookTells(debated(allele, locus), look)).toBe(tells)
})

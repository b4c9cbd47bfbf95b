// test/core/breeds/read.test.ts: a bad row stops the start, and says where it is and what would be right.
import { expect, test } from 'vitest'
import { faultsBetween, plain, readBreeds } from '../../../core/breeds/read.ts'

const known = { confidence: 'low', status: 'from memory' }
const row = {
  name: 'Pearl Rock',
  family: 'Plymouth Rock',
  class: 'American',
  type: 'heavy',
  alsoCalled: ['pearlie'],
  misspelt: [],
  genes: { S: { kind: 'fixed', allele: 's+', ...known } },
  comb: 'single',
  shank: 'yellow',
  shell: { colour: 'brown', brownScore: 5, status: 'from memory' },
  weights: { cockKg: 4, henKg: 3, status: 'from memory' },
  eggGrams: { likely: 57, status: 'from memory' },
  eggsFirstYear: { low: 150, likely: 180, high: 220, status: 'from memory' },
  broody: { rate: 0.3, status: 'from memory' },
  temper: 'calm',
  hardiness: { cold: 'high', heat: 'medium', status: 'from memory' },
  lines: [],
  note: '',
  sources: { genes: [], weights: [], eggs: [], shell: [], behaviour: [] },
}
const faultsOf = (change: object): readonly string[] => {
  const read = readBreeds('rocks.json', [{ ...row, ...change }])
  return read.ok ? [] : read.fault.map(({ where, why }) => `${where}: ${why}`)
}

test('a sound row is read', () => {
  expect(faultsOf({})).toEqual([])
})

test.each([
  ['an allele nobody has', { genes: { S: { kind: 'fixed', allele: 's', ...known } } }, 'genes.S', 'known: S, s+'],
  ['a locus nobody has', { genes: { Q: { kind: 'fixed', allele: 'q', ...known } } }, 'genes.Q', 'no locus Q'],
  [
    'shares that do not add up',
    { genes: { E: { kind: 'segregates', freq: { E: 0.5, 'e+': 0.4 }, ...known } } },
    'genes.E',
    'want 1',
  ],
  [
    'a hen told apart off the Z',
    { genes: { Bl: { kind: 'genotype', alleles: ['Bl', 'bl+'], hen: ['Bl'], ...known } } },
    'genes.Bl',
    'not on the Z',
  ],
  [
    'a range turned round',
    { eggsFirstYear: { low: 200, likely: 180, high: 220, status: 'read' } },
    'eggsFirstYear',
    'low <= likely',
  ],
  ['a status nobody uses', { broody: { rate: 0.3, status: 'rumour' } }, 'broody.status', 'Invalid option'],
  ['a word too many', { feathers: 'many' }, 'Pearl Rock', 'feathers'],
  ['a usual line that is not there', { usualLine: 'show' }, 'usualLine', 'no line show'],
  ['a colour nobody has described', { colour: 'plaid' }, 'colour', 'no such colour'],
  ['what it shows without the gene', { shows: [['B']] }, 'shows.0', 'B'],
  ['parents that do not add up', { madeFrom: [{ sire: 'A', dam: 'B', weight: 0.5 }] }, 'madeFrom', 'want 1'],
])('%s is told by its path', (_fault, change, path, why) => {
  const [first] = faultsOf(change)
  expect(first).toContain('rocks.json[0] Pearl Rock')
  expect(first).toContain(path)
  expect(first).toContain(why)
})

test('all faults of a file are told, not only the first', () => {
  expect(faultsOf({ comb: 3, shank: 4 })).toHaveLength(2)
})

test('a line that stands twice is told', () => {
  const line = { id: 'show', covers: [], alsoCalled: [], status: 'from memory' }
  expect(faultsOf({ lines: [line, line] })[0]).toContain('lines.1.id')
})

const parsed = (change: object) => {
  const read = readBreeds('rocks.json', [{ ...row, ...change }])
  if (!read.ok) throw new Error(read.fault[0]!.why)
  return read.value[0]!
}

test('two birds of one name, and a parent that is not in the catalogue, are told', () => {
  const other = parsed({ name: 'Other Rock', alsoCalled: ['Pearl-Rock'] })
  expect(faultsBetween([parsed({}), other])[0]?.why).toContain('Pearl Rock')
  const hybrid = parsed({ madeFrom: [{ sire: 'Nobody', dam: 'Pearl Rock', weight: 1 }] })
  expect(faultsBetween([hybrid])[0]?.why).toContain('Nobody')
  expect(faultsBetween([parsed({})])).toEqual([])
})

test('names are compared without case, accents, hyphens and doubled spaces', () => {
  expect(plain(' Marans  Noir-Cuivré. ')).toBe('marans noir cuivre')
})

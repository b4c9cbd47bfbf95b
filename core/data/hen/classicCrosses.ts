// core/data/hen/classicCrosses.ts: first crosses worth naming to a keeper who asks what to breed and names no birds. Data only.
import type { BirdRef } from '../../question.ts'

type Pair = { readonly sire: BirdRef; readonly dam: BirdRef }

/** Sexed at hatch: gold cocks on silver hens, unbarred cocks on barred ones; for eggs, for table and eggs, for coloured eggs. */
export const sexedCrosses: readonly Pair[] = [
  { sire: { breed: 'Rhode Island Red', line: 'production' }, dam: { breed: 'Rhode Island White', line: 'production' } },
  { sire: { breed: 'Rhode Island Red', line: 'production' }, dam: { breed: 'Barred Plymouth Rock', line: 'production' } },
  { sire: { breed: 'Rhode Island Red', line: 'production' }, dam: { breed: 'Light Sussex', line: 'utility' } },
  { sire: { breed: 'Rhode Island Red', line: 'heritage' }, dam: { breed: 'Light Sussex', line: 'utility' } },
  { sire: { breed: 'Rhode Island Red', line: 'heritage' }, dam: { breed: 'Barred Plymouth Rock', line: 'production' } },
  { sire: { breed: 'Rhode Island Red', line: 'heritage' }, dam: { breed: 'Delaware', line: 'heritage' } },
  { sire: { breed: 'New Hampshire', line: 'production' }, dam: { breed: 'Delaware', line: 'hatchery' } },
  { sire: { breed: 'New Hampshire', line: 'production' }, dam: { breed: 'Barred Plymouth Rock', line: 'production' } },
  { sire: { breed: 'New Hampshire', line: 'production' }, dam: { breed: 'Light Sussex', line: 'utility' } },
  { sire: { breed: 'Black Australorp', line: 'utility' }, dam: { breed: 'Barred Plymouth Rock', line: 'production' } },
  { sire: { breed: 'Dark Cornish' }, dam: { breed: 'Barred Plymouth Rock', line: 'production' } },
  { sire: { breed: 'Black Copper Marans' }, dam: { breed: 'Cream Legbar' } },
  { sire: { breed: 'Black Copper Marans' }, dam: { breed: 'Cuckoo Marans' } },
  { sire: { breed: 'Black Ameraucana' }, dam: { breed: 'Barred Plymouth Rock', line: 'production' } },
  { sire: { breed: 'Welsummer' }, dam: { breed: 'Cream Legbar' } },
]

/** Not sexed at hatch, named for their eggs. */
export const eggCrosses: readonly Pair[] = [
  { sire: { breed: 'Black Copper Marans' }, dam: { breed: 'Black Ameraucana' } },
  { sire: { breed: 'Black Ameraucana' }, dam: { breed: 'White Leghorn', line: 'production' } },
  { sire: { breed: 'White Leghorn', line: 'production' }, dam: { breed: 'Black Ameraucana' } },
]

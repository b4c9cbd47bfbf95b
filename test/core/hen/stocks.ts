// test/core/hen/stocks.ts: lines entered from their sources for the tests of the crossing formula, apart from the catalogue.
import { crossbred, type Crossbred } from '../../../core/hen/crossbred.ts'
import { offspring, pureGenome, type Genome } from '../../../core/hen/genome.ts'
import type { Stock } from '../../../core/hen/stock.ts'

const exactly = (x: number) => ({ low: x, likely: x, high: x })

/** A plain heavy line; a test names what differs. */
export const stock = (id: string, differs: Partial<Stock> = {}): Stock => ({
  id,
  name: id,
  family: id,
  type: 'heavy',
  purpose: 'hatchery',
  eggsFirstYear: exactly(200),
  ageFirstEggDays: exactly(160),
  eggWeightGrams: exactly(58),
  henKg: exactly(2.8),
  cockKg: exactly(3.8),
  brownScore: 5,
  paleZ: false,
  broodyRate: 0.2,
  calm: 1,
  sharp: false,
  cold: 2,
  heat: 1,
  barred: false,
  comb: 'single',
  status: 'from memory',
  ...differs,
})

export const laying = (id: string, eggs: number, differs: Partial<Stock> = {}): Stock =>
  stock(id, { eggsFirstYear: exactly(eggs), ...differs })

export type Bird = { readonly genome: Genome; readonly stocks: readonly Stock[] }

export const cock = (line: Stock): Bird => ({ genome: pureGenome(line.id, 'M'), stocks: [line] })
export const hen = (line: Stock): Bird => ({ genome: pureGenome(line.id, 'F'), stocks: [line] })

const young =
  (sex: 'M' | 'F') =>
  (sire: Bird, dam: Bird): Crossbred =>
    crossbred(offspring(sire.genome, dam.genome, sex), [
      ...new Map([...sire.stocks, ...dam.stocks].map((s) => [s.id, s])).values(),
    ])
export const daughter = young('F')
export const son = young('M')

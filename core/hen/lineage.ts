// core/hen/lineage.ts: from the two birds of a mating to the make-up of their daughters and sons.
import type { BirdRef } from '../question.ts'
import { crossbred, type Crossbred } from './crossbred.ts'
import { offspring, pureGenome, type Genome } from './genome.ts'
import type { Stock } from './stock.ts'
import { stockOf } from './stockOf.ts'

export type Mating = { readonly sire: BirdRef; readonly dam: BirdRef }
type Bred = { readonly genome: Genome; readonly stocks: readonly Stock[] }

/** A bird of a known cross is made of its parents' lines; a named hybrid of its two lines; any other is one line. */
function bred(bird: BirdRef, sex: 'M' | 'F'): Bred {
  if (bird.cross) return young(bird.cross, sex)
  const founder = stockOf(bird)
  if (founder.kind === 'pure') return { genome: pureGenome(founder.stock.id, sex), stocks: [founder.stock] }
  const { sire, dam } = founder
  return {
    genome: offspring(pureGenome(sire.id, 'M'), pureGenome(dam.id, 'F'), sex),
    stocks: [sire, dam],
  }
}

function young(mating: Mating, sex: 'M' | 'F'): Bred {
  const [sire, dam] = [bred(mating.sire, 'M'), bred(mating.dam, 'F')]
  const stocks = new Map([...sire.stocks, ...dam.stocks].map((stock) => [stock.id, stock]))
  return { genome: offspring(sire.genome, dam.genome, sex), stocks: [...stocks.values()] }
}

/** The young of a mating, of one sex, as the hen model takes them. */
export function youngOf(mating: Mating, sex: 'M' | 'F'): Crossbred {
  const { genome, stocks } = young(mating, sex)
  return crossbred(genome, stocks)
}

/** One bird as it stands, for comparing lines: a line bred pure, or the cross it is. */
export function birdAsBred(bird: BirdRef, sex: 'M' | 'F'): Crossbred {
  const { genome, stocks } = bred(bird, sex)
  return crossbred(genome, stocks)
}

// core/hen/lineWords.ts: one clause on what the lines of a mating do to the daughters, beyond the breed names.
import { disagreements } from '../data/hen/practice.ts'
import type { BirdRef } from '../question.ts'
import { lineMean, type Crossbred } from './crossbred.ts'
import { birdAsBred, type Mating } from './lineage.ts'
import type { Purpose } from './stock.ts'

type Side = { readonly purpose: Purpose; readonly eggs: number; readonly barred: boolean }

/** A parent as its daughters feel it: what its lines lay, and the one purpose they were bred for, if it is one. */
function side(bird: Crossbred): Side {
  const eggs = lineMean(bird, (stock) => stock.eggsFirstYear.likely)
  const purposes = new Set(bird.stocks.map((stock) => stock.purpose))
  return {
    purpose: purposes.size === 1 ? bird.stocks[0]!.purpose : 'hatchery',
    eggs: Math.round(eggs / 10) * 10,
    barred: bird.stocks.length === 1 && bird.stocks[0]!.barred,
  }
}

const alike: Readonly<Record<Purpose, string>> = {
  production: 'both lines bred for eggs: they lay hard, drop after two years and leave a light carcass',
  hatchery: '',
  'kept for use': 'both lines kept for use: fewer eggs than a production line, more body, and lay that lasts',
  exhibition: 'both lines bred for show: fewer eggs, more broodiness, more body',
  landrace: 'both are landraces: they vary widely from flock to flock',
}

/** Genetics against a common belief: a hen’s Z, and the barring and slow feather on it, goes to her sons alone. */
const finelyBarred =
  'her fine bars and slow feather reach her sons only; her lower lay and broodiness reach the daughters too, at half strength'

const isBodied = (side: Side): boolean => side.purpose === 'kept for use' || side.purpose === 'exhibition'

/** What each side brings, where they differ enough to matter. */
function between(sire: Side, dam: Side): string {
  if (sire.purpose === 'production' && isBodied(dam))
    return `eggs from the sire’s laying line (about ${sire.eggs}), body from the dam’s (about ${dam.eggs}); the daughters come between`
  if (dam.purpose === 'production' && isBodied(sire))
    return `eggs from the dam’s laying line (about ${dam.eggs}), body from the sire’s (about ${sire.eggs}); the daughters come between`
  return `the sire’s side lays about ${sire.eggs}, the dam’s about ${dam.eggs}; the daughters come between`
}

/** Where keepers and print differ on a line the keeper named: whose figure is which. */
function practiceWords({ breed, line }: BirdRef): readonly string[] {
  const found = disagreements.find((d) => d.breed === breed && d.line === line)
  if (!found) return []
  const { practice, published, publishedOf } = found
  return [
    `keepers put the ${line} ${breed} at ${practice.low} to ${practice.high}, figures for ${publishedOf} are ${published.low} to ${published.high}`,
  ]
}

/** Empty where the lines set nothing apart. */
export function lineWords(mating: Mating): string {
  const [sire, dam] = [side(birdAsBred(mating.sire, 'M')), side(birdAsBred(mating.dam, 'F'))]
  const parts = Math.abs(sire.eggs - dam.eggs) >= 30 ? [between(sire, dam)] : []
  if (parts.length === 0 && sire.purpose === dam.purpose && alike[sire.purpose] !== '') parts.push(alike[sire.purpose])
  if (dam.barred && dam.purpose === 'exhibition' && !sire.barred) parts.push(finelyBarred)
  const disputed = parts.length < 2 ? [mating.sire, mating.dam].flatMap(practiceWords).slice(0, 1) : []
  return [...parts, ...disputed].join('; ')
}

// core/hen/vigour.ts: what crossing adds to the eggs of a bird, with the distance class it was reckoned at, in words.
import { crossing } from '../data/hen/crossing.ts'
import { distanceOf } from '../data/hen/distance.ts'
import type { Crossbred } from './crossbred.ts'
import { crossbredTrait } from './trait.ts'

const classes = [
  { upTo: distanceOf.sameFamily, words: 'strains of one breed' },
  { upTo: distanceOf.kindred, words: 'kindred breeds' },
  { upTo: distanceOf.mixed, words: 'partly kindred breeds' },
  { upTo: distanceOf.sameWeight, words: 'unrelated breeds' },
  { upTo: Infinity, words: 'breeds far apart' },
] as const

const nothing = { low: 0, likely: 0, high: 0 }

/** Eggs over the mean of the lines, as a share of that mean. */
function gained(bird: Crossbred): number {
  const plain = { ...crossing.eggsFirstYear, heterosis: nothing, heterosisFromClosed: nothing }
  const eggs = (p: typeof plain | typeof crossing.eggsFirstYear): number =>
    crossbredTrait(bird, p, (stock) => stock.eggsFirstYear).likely
  return eggs(crossing.eggsFirstYear) / eggs(plain) - 1
}

/** 'kindred breeds (distance 0.5): crossing adds about 3 eggs in 100'; nothing where no lines meet in the bird. */
export function vigourOf(bird: Crossbred): { readonly vigour?: string } {
  const crossed = bird.meetings.reduce((sum, pair) => sum + pair.crossed, 0)
  if (crossed === 0) return {}
  const mean = bird.meetings.reduce((sum, pair) => sum + (pair.crossed * pair.distance) / crossed, 0)
  const distance = Math.round(mean * 10) / 10
  const { words } = classes.find(({ upTo }) => mean <= upTo + 1e-9)!
  return {
    vigour: `${words} (distance ${distance}): crossing adds about ${Math.round(gained(bird) * 100)} eggs in 100`,
  }
}

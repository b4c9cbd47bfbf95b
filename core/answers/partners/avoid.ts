// core/answers/partners/avoid.ts: mates that do not serve: those the keeper named, or those often tried, each with its reason.
import { nameOfBird, seenBird } from '../../cross/seen.ts'
import type { PartnersAnswer } from '../../answer.ts'
import { harmful, oftenTried } from '../../data/partners.ts'
import type { BirdRef } from '../../question.ts'
import { harmTogether, playThrough, type Hunt } from './search.ts'
import { carriesOf } from './quick.ts'

type Avoid = PartnersAnswer['avoid']

const black = 'black hides gold and silver, and no bars are left to tell the sexes by'
/** A black mate for a bird that is not: what the other has of gold or silver is lost to sight. */
const blackHides = ({ own, wanted }: Hunt, bird: BirdRef): boolean => {
  const [kept, mate] = [carriesOf(own), carriesOf(bird)]
  const bars = wanted === 'F' ? mate('B', 'B') : Math.max(kept('B', 'B'), mate('B', 'B'))
  return mate('E', 'E') > 0.8 && kept('E', 'E') < 0.2 && kept('I', 'I') + kept('c', 'c') < 0.2 && bars < 0.5
}

function why(hunt: Hunt, bird: BirdRef, named: boolean): Avoid {
  const harm = harmTogether(hunt.own, bird)
  if (harm) return [{ bird: seenBird(bird), why: harm.why }]
  const { crossed, serves } = playThrough(hunt, bird, named)
  const { sexing } = crossed.cases[0]!
  if (hunt.goals.includes('sexable') && sexing.verdict === 'no')
    return [{ bird: seenBird(bird), why: blackHides(hunt, bird) ? black : sexing.why }]
  return named && !serves
    ? [{ bird: seenBird(bird), why: `does not give what you want with ${nameOfBird(hunt.own)}` }]
    : []
}

/** @param named the keeper's own candidates; empty = the birds that are often tried in vain */
export function failing(hunt: Hunt, named: readonly BirdRef[]): Avoid {
  const own = carriesOf(hunt.own)
  const harms = Object.entries(harmful)
    .filter(([locus, { allele }]) => own(locus, allele) >= 0.2)
    .map(([, { never }]): BirdRef => ({ breed: never }))
  const tried = hunt.goals.includes('sexable') ? oftenTried[hunt.wanted].map((breed): BirdRef => ({ breed })) : []
  const birds = named.length > 0 ? named : [...harms, ...tried.filter(({ breed }) => breed !== hunt.own.breed)]
  return birds.flatMap((bird) => why(hunt, bird, named.length > 0))
}

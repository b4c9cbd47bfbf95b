// core/hen/living.ts: share of hens alive after a laying year.
import type { Span } from '../vocabulary.ts'
import { crossing } from '../data/hen/crossing.ts'
import { liveability } from '../data/hen/laying.ts'
import type { Crossbred } from './crossbred.ts'
import { boundedSpan } from './span.ts'
import { crossbredTrait } from './trait.ts'

/** By what the lines were bred for; trials saw no gain from crossing in the laying house. */
export const livingOf = (bird: Crossbred): Span =>
  boundedSpan(
    crossbredTrait(bird, crossing.liveability, (stock) => liveability.byPurpose[stock.purpose]),
    0,
    0.99,
  )

// core/hen/sources.ts: who stands behind the figures of the expected hen, by what was asked of her.
import { broodiness } from '../data/hen/broody.ts'
import { crossing } from '../data/hen/crossing.ts'
import { distanceSources } from '../data/hen/distance.ts'
import { energyNeed, yard } from '../data/hen/feed.ts'
import { carcass, firstEgg, persistency } from '../data/hen/laying.ts'
import { brown } from '../data/hen/shell.ts'
import type { Aspect } from '../question.ts'
import type { Citation } from '../vocabulary.ts'

const byAspect: Partial<Record<Aspect, readonly Citation[]>> = {
  eggs: [...crossing.eggsFirstYear.sources, ...distanceSources, ...persistency.sources],
  shell: brown.sources,
  size: crossing.bodyWeight.sources,
  'egg-size': crossing.eggWeight.sources,
  vigour: [...crossing.eggsFirstYear.sources, ...distanceSources],
  meat: [...crossing.bodyWeight.sources, ...carcass.sources],
  broody: broodiness.sources,
  feed: [...energyNeed.sources, ...yard.sources],
  maturity: [...crossing.ageFirstEgg.sources, ...firstEgg.sources],
}

/** Where nothing is asked in particular, the eggs are what a reply tells of the hen. */
export const henSources = (asked: readonly Aspect[]): readonly Citation[] =>
  (asked.length > 0 ? asked : (['eggs'] as const)).flatMap((aspect) => byAspect[aspect] ?? [])

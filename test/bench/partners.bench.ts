// test/bench/partners.bench.ts: time of one search for mates, and of finding the topic of a question. Run: npm run bench -- partners.
import { bench, do_not_optimize, run, summary } from 'mitata'
import { answerPartners } from '../../core/answers/partners.ts'
import type { PartnersQuestion } from '../../core/question.ts'
import { topicsIn } from '../../core/topics.ts'

const question = (breed: string, wanted: 'M' | 'F', goals: PartnersQuestion['goals']): PartnersQuestion => ({
  kind: 'partners',
  for: [{ breed, name: undefined }],
  wanted,
  goals,
  among: [],
  assumed: [],
  manner: { symbols: false, units: 'both' },
})

let asked = 0
/** A new name each time, so that no mating is remembered from the call before. */
const anew = (one: PartnersQuestion): PartnersQuestion => ({
  ...one,
  for: one.for.map((bird) => ({ ...bird, name: `bird ${(asked += 1)}` })),
})

summary(() => {
  const red = question('Rhode Island Red', 'F', ['sexable'])
  bench('hens for a red cock, nothing remembered', () => do_not_optimize(answerPartners(anew(red))))
  bench('the same, matings remembered', () => do_not_optimize(answerPartners(red)))
})
summary(() => {
  const legbar = question('Cream Legbar', 'M', ['sexable', 'olive-eggs'])
  const egger = question('Easter Egger', 'F', ['sexable', 'green-eggs'])
  bench('cock for Legbar hens, olive eggs', () => do_not_optimize(answerPartners(anew(legbar))))
  bench('hens for an Easter Egger cock, green eggs', () => do_not_optimize(answerPartners(anew(egger))))
})
summary(() => {
  bench('topic of a question', () =>
    do_not_optimize(topicsIn('can a hen be split to chocolate or does she always show it')))
})
await run()

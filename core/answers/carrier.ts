// core/answers/carrier.ts: the `carrier` answer: does this bird carry an allele unseen, what moved the odds, what would settle it.
import type { CarrierAnswer } from '../answer.ts'
import { loci } from '../data/loci.ts'
import { debated as debatedAllele } from '../flock/debated.ts'
import { members } from '../flock/member.ts'
import type { BirdRef, CarrierQuestion, Flock } from '../question.ts'
import type { Locus } from '../vocabulary.ts'
import { find } from './carrier/find.ts'
import { rivalOdds } from './carrier/rivals.ts'
import { fatherVerdict } from './carrier/verdict.ts'
import { assumptionWords, birdsOf, nothingElse, uniqueSources } from './parts.ts'

export function answerCarrier(question: CarrierQuestion): CarrierAnswer {
  const debated = debatedAllele(question.allele, question.locus)
  const flock = withBird(question.flock, question.of)
  const told = members(flock, debated)
  const bird = told.find(({ name }) => name === question.of)!
  const { taken, ...found } = find(debated, told, bird)
  const rivals = rivalOdds(debated, flock, question.of, question.rivals)
  const asked: BirdRef = { ...bird.bird, name: question.of }
  return {
    kind: 'carrier',
    ...nothingElse,
    ...found,
    ...(rivals.length > 1 ? { summary: fatherVerdict(rivals) } : {}),
    assumptions: [...assumptionWords(question.assumed), ...taken],
    assumed: question.assumed,
    sources: uniqueSources((loci as Readonly<Record<string, Locus>>)[question.locus]?.sources ?? []),
    ...birdsOf({ birds: [asked] }),
    bird: birdsOf({ birds: [asked] }).birds[0]!,
    allele: question.allele,
    trait: debated.shows,
    rivals,
  }
}

const withBird = (flock: Flock, name: string): Flock =>
  flock.birds.some((bird) => bird.name === name) ? flock : { ...flock, birds: [...flock.birds, { name }] }

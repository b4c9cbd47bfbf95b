// core/answers/carrier.ts: the `carrier` answer: does this bird carry an allele unseen, what moved the odds, what would settle it.
import type { CarrierAnswer } from '../answer.ts'
import { loci } from '../data/loci.ts'
import { debated as debatedAllele, type Debated, mostCopies, readShows } from '../flock/debated.ts'
import { carriedName } from '../flock/carriedName.ts'
import { copiesLeft, type Member, members } from '../flock/member.ts'
import type { BirdRef, CarrierQuestion, Flock } from '../question.ts'
import type { Locus } from '../vocabulary.ts'
import { find } from './carrier/find.ts'
import { rivalOdds } from './carrier/rivals.ts'
import { testOf } from './carrier/matings.ts'
import { fatherTest, fatherVerdict } from './carrier/verdict.ts'
import { assumptionWords, birdsOf, nothingElse, uniqueSources } from './parts.ts'

export function answerCarrier(question: CarrierQuestion): CarrierAnswer {
  const debated = debatedAllele(question.allele, question.locus)
  const named = withBird(question.flock, question.of, question.allele, question.locus)
  const unsexed =
    debated.on === 'Z' && members(named, debated).some(({ name, sex }) => name === question.of && sex === 'U')
  const flock = unsexed ? asCock(named, question.of) : named
  const told = members(flock, debated).map((one) => (one.name === question.of ? unseenIn(debated, one) : one))
  const bird = told.find(({ name }) => name === question.of)!
  const { taken, ...found } = find(debated, told, bird)
  const rivals = rivalOdds(debated, flock, question.of, question.rivals)
  const asked: BirdRef = { ...bird.bird, name: question.of }
  return {
    kind: 'carrier',
    ...nothingElse,
    ...found,
    ...(rivals.length > 1 ? ofRivals(debated, rivals) : {}),
    assumptions: [
      ...assumptionWords(question.assumed),
      ...(rivals.length > 1 ? ['before the chicks each of the cocks was as likely to be the father'] : []),
      ...(unsexed
        ? [`${question.of} is a cock: a hen has one Z, shows what is on it and carries nothing there unseen`]
        : []),
      ...saidSplit(debated, told),
      ...(rivals.length > 1 ? [] : taken),
    ],
    assumed: question.assumed,
    sources: uniqueSources((loci as Readonly<Record<string, Locus>>)[question.locus]?.sources ?? []),
    ...birdsOf(partsIn(question.flock, asked)),
    bird: birdsOf({ birds: [asked] }).birds[0]!,
    allele: question.allele,
    trait: debated.shows,
    rivals,
  }
}

/** The birds spoken of by their part in the matings: the one asked about, and mates of whom something was told. */
function partsIn({ birds, broods }: Flock, asked: BirdRef): { readonly [P in 'sire' | 'dam' | 'birds']: BirdRef[] } {
  const parts: { readonly [P in 'sire' | 'dam' | 'birds']: BirdRef[] } = { sire: [], dam: [], birds: [] }
  const paired = ['the cock', 'the hen'].every((name) => birds.some((bird) => bird.name === name))
  const partOf = (name: string): 'sire' | 'dam' | 'birds' => {
    if (broods.some(({ sire }) => sire === name) || (paired && name === 'the cock')) return 'sire'
    return broods.some(({ dam }) => dam === name) || (paired && name === 'the hen') ? 'dam' : 'birds'
  }
  parts[partOf(asked.name ?? '')].push(asked)
  for (const { name, bird } of birds)
    if (bird && name !== asked.name && partOf(name) !== 'birds') parts[partOf(name)].push(bird)
  return parts
}

/** Asked who is the father, the verdict is of the cocks: what settles it is a test of one of them. */
const ofRivals = (debated: Debated, rivals: CarrierAnswer['rivals']): Partial<CarrierAnswer> => ({
  summary: fatherVerdict(rivals),
  why: fatherTest(debated, rivals, testOf(debated, 'M')),
  moved: [],
  moreChicks: [],
  oneContraryChick: '',
  sensitivity: null,
})

/** A hen called a carrier of what is on the Z can only be one that shows it. */
const saidSplit = (debated: Debated, told: readonly Member[]): readonly string[] =>
  debated.on === 'Z' && debated.acts === 'recessive'
    ? told
        .filter(({ sex, readings }) => sex === 'F' && readings.some(({ id }) => id === 'carries true'))
        .map(
          ({ name }) =>
            `${name} is ${debated.shows} herself: a hen has one Z and cannot be split for ${carriedName(debated.allele)}`,
        )
    : []

/** What nobody told of a bird's sex is no chance among chicks: only of a cock is there anything to ask on the Z. */
const asCock = (flock: Flock, name: string): Flock => ({
  ...flock,
  birds: flock.birds.map((bird) => (bird.name === name ? { ...bird, sex: 'M' as const } : bird)),
})

/** The flock with the bird asked about in it. That it carries the allele is the question, even where it is put as a fact. */
function withBird(flock: Flock, name: string, allele: string, locus: string): Flock {
  const asked = flock.birds.find((bird) => bird.name === name) ?? { name }
  const { [locus]: pair, ...others } = asked.bird?.genotype ?? {}
  const isTheQuestion = pair?.includes(allele) && pair.some((one) => one !== allele || pair.length === 1)
  const bird = isTheQuestion ? { ...asked, bird: { ...asked.bird, genotype: others } } : asked
  return { ...flock, birds: [...flock.birds.filter((one) => one.name !== name), bird] }
}

/** Whoever asks whether a bird carries a recessive means one that does not show it. */
function unseenIn(debated: Debated, bird: Member): Member {
  const left = copiesLeft(debated, bird)
  const mayShow = left.includes(mostCopies(debated, bird.sex)) && left.length > 1
  return debated.acts === 'recessive' && mostCopies(debated, bird.sex) === 2 && mayShow
    ? { ...bird, readings: [...bird.readings, readShows(debated, false)] }
    : bird
}

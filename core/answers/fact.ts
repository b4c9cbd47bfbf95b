// core/answers/fact.ts: the `fact` answer: one sign, rule or belief from the records, one bird or gene of the catalogue, or the flock told so far.
import type { FactAnswer, Source } from '../answer.ts'
import { loci } from '../data/loci.ts'
import type { FactQuestion } from '../question.ts'
import { topicNamed, type Topic } from '../topics.ts'
import { askedOf } from './fact/asked.ts'
import { entriesOf, ofBird } from './fact/bird.ts'
import { featureOf, locusOfFeature } from './fact/feature.ts'
import { flockCount, flockLines } from './fact/flock.ts'
import { isBarred } from './fact/youngSex.ts'
import { linked } from './fact/linked.ts'
import { askedOfLocus, isLocus, ofLocus, topicOfLocus } from './fact/locus.ts'
import { assumptionWords, birdsOf, fitting, longest, uniqueSources } from './parts.ts'

type Found = Pick<FactAnswer, 'about' | 'certainty' | 'verdict'> & {
  readonly summary?: string
  readonly says: readonly string[]
  readonly sources: readonly Source[]
}

const fromTopic = ({ title, certainty, verdict, says, sources }: Topic): Found => ({
  about: title,
  certainty,
  verdict,
  says,
  sources,
})

/** After a sentence about the bird the rule stands without its own yes or no. */
const plainly = (says: readonly string[]): readonly string[] =>
  says.map((words) => words.replace(/^(?:No|Yes|Partly): (.)/, (_, first: string) => first.toUpperCase()))

/** 'Do White Wyandottes carry dominant or recessive white?': the bird first, then the rule. */
function withBird(topic: Topic, { birds }: FactQuestion): Found {
  const entry = entriesOf(birds).find(({ breed }) => breed.type !== 'described')
  const [locus] = topic.loci
  if (!topic.birdFirst || !entry || locus === undefined) return fromTopic(topic)
  const { says, sources, certainty } = ofBird(entry.breed, entry.bird, locus)
  const own = says.slice(0, 1)
  return {
    ...fromTopic(topic),
    verdict: 'not asked',
    certainty,
    says: [...own, ...plainly(topic.says)],
    sources: [...sources, ...topic.sources],
  }
}

function fromBirds(question: FactQuestion): Found | undefined {
  const entries = entriesOf(question.birds).slice(0, 4)
  const said = entries.map(({ breed, bird }) => ofBird(breed, bird, question.locus, question.aspects))
  const [first] = said
  if (!first) return undefined
  const certainties = ['doubtful', 'usual', 'sure'] as const
  return {
    about: entries.map(({ breed }) => breed.name).join(', '),
    certainty: certainties.find((one) => said.some(({ certainty }) => certainty === one)) ?? 'usual',
    verdict: 'not asked',
    says:
      said.length === 1 ? first.says : said.flatMap(({ says }) => says.slice(0, question.locus === undefined ? 4 : 1)),
    sources: said.flatMap(({ sources }) => sources),
  }
}

/** The rule of the form that was asked about; else the record that the words pointed to. */
function topicBehind({ topic, features = [] }: FactQuestion, entries: ReturnType<typeof entriesOf>): Topic | undefined {
  const isDose = features.includes('sex-signs') && entries.some(({ breed, bird: { line } }) => isBarred(breed, line))
  if (isDose) return topicNamed('barring-dose')
  const [behind] = entries.flatMap(({ breed, bird: { line } }) =>
    features.flatMap((feature) => locusOfFeature(breed, line, feature) ?? []),
  )
  return (behind === undefined ? undefined : topicOfLocus(behind)) ?? topicNamed(topic)
}

/** What was asked of each bird, or that it is not known; then the rule behind it. */
function fromFeatures(question: FactQuestion): Found | undefined {
  const { features = [], aspects = [], locus } = question
  const entries = entriesOf(question.birds).slice(0, 4)
  const isAsked = features.length > 0 || (question.topic !== 'bird' && aspects.length > 0)
  if (!isAsked || entries.length === 0) return undefined
  const own = entries.flatMap(({ breed, bird: { line } }) => [
    ...features.map((feature) => featureOf(breed, line, feature, locus)),
    ...askedOf(breed, line, aspects),
  ])
  const topic = features.includes('lethal') ? topicNamed(question.topic) : topicBehind(question, entries)
  const isOfPicture = features.some((feature) => feature === 'sex-signs' || feature === 'marks')
  const notes = isOfPicture ? [] : entries.map(({ breed }) => breed.note)
  return {
    about: entries.map(({ breed }) => breed.name).join(', '),
    certainty: 'usual',
    verdict: 'not asked',
    says: [...new Set([...own, ...plainly(topic?.says ?? []).slice(0, 3), ...notes])].filter(Boolean),
    sources: [...entries.flatMap(({ breed }) => breed.sources.genes), ...(topic?.sources ?? [])],
  }
}

function fromLocus(question: FactQuestion): Found | undefined {
  if (!isLocus(question.locus)) return undefined
  const record = topicOfLocus(question.locus)
  const own = ofLocus(question.locus)
  const asked = askedOfLocus(question.locus, question.features ?? [])
  const entry = entriesOf(question.birds).find(({ breed }) => breed.type !== 'described')
  const ofIt = entry ? ofBird(entry.breed, entry.bird, question.locus).says.slice(0, 1) : []
  return {
    ...(record ? fromTopic(record) : { certainty: 'usual', verdict: 'not asked' }),
    about: loci[question.locus].name,
    says: [
      ...asked,
      ...ofIt,
      ...(asked.length + ofIt.length > 0 ? plainly(record?.says ?? []) : (record?.says ?? [])),
      ...own,
    ],
    sources: [...(record?.sources ?? []), ...loci[question.locus].sources],
  }
}

function fromLoci({ locus, otherLocus }: FactQuestion): Found {
  return isLocus(locus) && isLocus(otherLocus) && locus !== otherLocus ? linked(locus, otherLocus) : nothing
}

function fromFlock({ flock }: FactQuestion): Found {
  const lines = flock ? flockLines(flock) : []
  const none =
    'You have told me of no birds yet. Tell me one, like “Bert is a black Orpington cock out of Ada and Tom”.'
  return {
    about: 'the birds told so far',
    certainty: 'sure',
    verdict: 'not asked',
    says: lines.length > 0 ? lines : [none],
    sources: [],
    ...(lines.length > 0 ? { summary: `So far you have told me of ${flock ? flockCount(flock) : ''}.` } : {}),
  }
}

const nothing: Found = {
  about: 'nothing known',
  certainty: 'doubtful',
  verdict: 'not asked',
  says: [
    'I have nothing on that. Name a breed, a gene or a sign: “is a Buff Orpington gold?”, “what does barring do?”.',
  ],
  sources: [],
}

function find(question: FactQuestion): Found {
  switch (question.topic) {
    case 'bird':
      return fromFeatures(question) ?? fromBirds(question) ?? fromLocus(question) ?? nothing
    case 'locus':
      return fromLocus(question) ?? fromBirds(question) ?? nothing
    case 'linked':
      return fromLoci(question)
    case 'flock':
      return fromFlock(question)
    default: {
      const topic = topicNamed(question.topic)
      return fromFeatures(question) ?? (topic ? withBird(topic, question) : (fromBirds(question) ?? nothing))
    }
  }
}

const unseen = 'I see no pictures.'
/** Before the verdict where both fit into its line, else behind it. */
const withUnseen = ([first = '', ...rest]: readonly string[]): readonly string[] =>
  `${unseen} ${first}`.length <= longest ? [`${unseen} ${first}`, ...rest] : [first, unseen, ...rest]

/** The first sentence is the verdict and the summary; the others stand alone, the weightier first. */
export function answerFact(question: FactQuestion): FactAnswer {
  const { summary, says: told, sources, ...found } = find(question)
  const says = question.unseen === true ? withUnseen(told) : told
  const first = summary ?? says[0] ?? ''
  return {
    kind: 'fact',
    summary: fitting(first),
    assumptions: assumptionWords(question.assumed),
    assumed: question.assumed,
    cautions: [],
    sources: uniqueSources(sources),
    ...(question.mating
      ? birdsOf({ sire: [question.mating.sire], dam: [question.mating.dam] })
      : birdsOf({ birds: question.birds })),
    ...found,
    says,
  }
}

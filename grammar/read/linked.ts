// grammar/read/linked.ts: "are silver and slow linked": two genes, and whether they travel together.
import { traitsIn } from '../bird.ts'
import { traits } from '../words/traits.ts'
import { commonOf, type Reader } from './common.ts'
import { readTopic } from './topic.ts'
import { isToldPair } from './pairs.ts'
import { lociOfAllele } from '../../core/genotype.ts'
import { topicNamed } from '../../core/topics.ts'
import type { LocusId } from '../../core/data/loci.ts'
import type { FactQuestion } from '../../core/question.ts'
import type { Token } from '../token.ts'

const asksLinkage =
  /\b(?:(?<!sex )linked|linkage|unlinked|(?:travel|inherited|passed|go|stay) (?:on )?together|same chromosome|close together|near|next to|independent|independently)\b/u

/** Genes that keepers call by a word of their own. */
const called: Readonly<Record<string, LocusId>> = {
  slow: 'K',
  fast: 'K',
  feathering: 'K',
  slate: 'Id',
  gold: 'S',
  rumpless: 'Rp',
}

/** The gene that a word names. A single letter names one only as it is written: S, K. */
function locusOf(token: Token): LocusId | undefined {
  const [trait] = traitsIn([token])
  if (trait !== undefined) return traits[trait]?.locus
  const own = called[token.word]
  if (own) return own
  return token.type === 'gene' || /^\p{Lu}[a-z]?$/u.test(token.said) ? lociOfAllele(token.said)?.locus : undefined
}

/** A cock, a hen, or a breed that is not called by one of these genes. */
const isOfBirds = (token: Token): boolean =>
  token.type === 'cock' ||
  token.type === 'hen' ||
  ((token.type === 'breed' || token.type === 'family') && traitsIn([token]).length === 0)

/** A record that is about both genes says more than their places do. */
function hasRecord(topic: string, found: readonly LocusId[]): boolean {
  const record = topicNamed(topic)
  return record !== undefined && record.verdict !== 'not asked' && found.every((locus) => record.loci.includes(locus))
}

export const readLinked: Reader = (reading, context): FactQuestion | undefined => {
  const words = reading.words.slice(0, 40).join(' ')
  if (reading.tokens.length > 24 || !asksLinkage.test(words) || isToldPair(reading)) return undefined
  if (reading.tokens.some(isOfBirds)) return undefined
  if (!reading.asks && !reading.has('question')) return undefined
  const found = [...new Set(reading.tokens.flatMap((token) => locusOf(token) ?? []))]
  const [locus, otherLocus] = found
  if (locus === undefined || otherLocus === undefined || found.length > 2) return undefined
  const told = readTopic(reading, context)
  if (told?.kind === 'fact' && hasRecord(told.topic, found)) return undefined
  return { kind: 'fact', topic: 'linked', birds: [], locus, otherLocus, ...commonOf(reading) }
}

// grammar/read/fact.ts: one bird, gene, sign, rule or belief: the record of core/topics.ts that the words point to.
import { topicsIn } from '../../core/topics.ts'
import { lociOfAllele } from '../../core/genotype.ts'
import { traitsIn } from '../bird.ts'
import { traits } from '../words/traits.ts'
import { commonOf, isSolid, refsOf, type Reader } from './common.ts'
import { isToldPair } from './pairs.ts'
import type { Bird } from '../bird.ts'
import type { Reading } from '../reading.ts'
import type { FactQuestion } from '../../core/question.ts'

/** A record is meant when its cues weigh this much; less will do where genes or a belief are plainly spoken of. */
const surely = 16
const perhaps = 8

/** Letters looked through for cues. */
const mostLetters = 1200

const factOf = (reading: Reading, topic: string, birds: readonly Bird[], locus?: string): FactQuestion => ({
  kind: 'fact',
  topic,
  birds: refsOf(birds).slice(0, 6),
  ...(locus === undefined ? {} : { locus }),
  ...commonOf(reading, birds),
})

const birdsIn = ({ scene }: Reading): readonly Bird[] =>
  [...scene.matings.flatMap(({ sires, dams }) => [...sires, ...dams]), ...scene.birds].filter(
    (bird) => isSolid(bird) && bird.ref.breed !== undefined,
  )

/** Spellings that the cues do not know. */
const plainly = (text: string): string =>
  text
    .replace(/\b(wing|feather|vent|dna|colou?r)[ -]sex\b(?!ing)/giu, '$1 sexing')
    .replace(/\bsex ?lynx|sex ?sinks?|sex ?linx\b/giu, 'sex link')

/** The strongest topic; `least` is how much its cues must weigh. */
function topicOf(reading: Reading, least: number): string | undefined {
  const written = topicsIn(plainly(reading.text.slice(0, mostLetters)))[0]
  if (written && written.weight >= least) return written.id
  const mended = reading.corrections.length > 0 ? topicsIn(reading.words.slice(0, 200).join(' '))[0] : undefined
  return mended && mended.weight >= least ? mended.id : undefined
}

/** The locus of symbols or traits that are spoken of by themselves. */
function locusIn({ tokens }: Reading): string | undefined {
  for (const token of tokens) {
    const written = token.type === 'gene' ? lociOfAllele(token.said.split('/')[0] ?? '') : symbol(token.said)
    if (written) return written.locus
    const [id] = token.type === 'trait' ? traitsIn([token]) : []
    if (id !== undefined) return traits[id]?.locus
  }
  return undefined
}
/** `Id`, `Co`, `Ml`: a symbol of a gene that is no word. */
const symbol = (said: string): ReturnType<typeof lociOfAllele> =>
  /^(?:Id|Co|Db|Ml|Pg|Mh|Bl|Fm|Na|Mb|Cr|Po|Et|Rp|Cp|Pti|lav|choc|eWh|ER|eb)$/u.test(said)
    ? lociOfAllele(said)
    : undefined

/** Genes, signs or beliefs are plainly spoken of. */
const isKnowledge = ({ has, scene, tokens }: Reading): boolean =>
  has('genetics', 'claim', 'define', 'carry', 'trueBreeding', 'inbreeding', 'vigour') ||
  scene.aspects.some((aspect) => aspect === 'sexing' || aspect === 'shell' || aspect === 'why') ||
  tokens.some(({ type }) => type === 'gene' || type === 'trait')

/** "11 roos out of 14": luck, and nobody's doing. */
export const readSexLuck: Reader = (reading) => {
  const counted = reading.scene.tallies.some(({ look }) => look.length > 0 && look.every(({ type }) => type === 'cock' || type === 'hen' || type === 'chick'))
  return (reading.has('sexRatio') || counted) && !reading.has('father', 'carry') && !isToldPair(reading) ? factOf(reading, 'sex-ratio-luck', birdsIn(reading)) : undefined
}

/** A belief or a rule that the words plainly point to. */
export const readTopic: Reader = (reading) => {
  const topic = topicOf(reading, surely)
  return topic === undefined ? undefined : factOf(reading, topic, birdsIn(reading))
}

/** The same where the words point less plainly, but knowledge is asked for. */
export const readFaintTopic: Reader = (reading) => {
  const topic = isKnowledge(reading) ? topicOf(reading, perhaps) : undefined
  return topic === undefined ? undefined : factOf(reading, topic, birdsIn(reading))
}

/** Something is asked of the bird itself, not of what to put it to, nor of "that". */
const isAboutBird = (reading: Reading, locus: string | undefined): boolean => {
  const { has, scene, tokens, words } = reading
  if (tokens.some(({ type }) => type === 'cross' || type === 'over') && locus === undefined && !has('define', 'claim')) return false
  if (words.at(-1) === 'that' || words.includes('that') && words.length <= 6) return false
  return locus !== undefined || has('define', 'claim', 'genetics', 'carry', 'question') || scene.aspects.length > 0 || scene.goals.length > 0 || reading.asks
}

/** "buff orp.. s+/s+ ?", "do White Wyandottes carry recessive white": one bird, and a gene of it. */
export const readBirdFact: Reader = (reading) => {
  const birds = birdsIn(reading)
  const locus = locusIn(reading)
  if (birds.length > 0 && isAboutBird(reading, locus)) return factOf(reading, 'bird', birds, locus ?? colourLocus(reading))
  if (birds.length > 0) return undefined
  if (locus !== undefined) return factOf(reading, 'locus', [], locus)
  const described = reading.scene.birds.filter((bird) => bird.named && bird.ref.breed !== undefined)
  const spoken = colourLocus(reading)
  return described.length > 0 && reading.has('define', 'genetics', 'claim', 'carry')
    ? factOf(reading, spoken === undefined ? 'bird' : 'locus', described, spoken)
    : undefined
}

/** "is a Buff Orpington silver or gold": a locus named by its colours. */
function colourLocus({ tokens }: Reading): string | undefined {
  const loose = tokens.filter(
    (token) =>
      token.type === 'colour' &&
      ['gold', 'silver', 'barred', 'lavender', 'chocolate', 'mottled', 'blue', 'frizzle', 'white'].includes(
        token.colour,
      ),
  )
  const said = traitsIn(loose)
  return said.includes('silver') || said.includes('gold') ? 'S' : undefined
}

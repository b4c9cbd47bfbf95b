// grammar/read/decline.ts: spoken to, but not this bot's work: illness, law, pictures, thanks, and what has nothing to do with chicks.
import { commonOf, isSolid, type Reader } from './common.ts'
import { isAdvert } from './lineTopic.ts'
import { isToldPair, pairsIn } from './pairs.ts'
import type { Reading } from '../reading.ts'
import type { DeclineQuestion } from '../../core/question.ts'

const declineOf = (reading: Reading, why: DeclineQuestion['why']): DeclineQuestion => ({
  kind: 'decline',
  why,
  ...commonOf(reading),
})

/** Words of breeding stand in it: then a sick chick may be a lethal gene. */
const isOfBreeding = (reading: Reading): boolean =>
  isToldPair(reading) ||
  reading.has('genetics', 'carry', 'trueBreeding', 'inbreeding') ||
  reading.tokens.some(({ type }) => type === 'gene' || type === 'sexlink' || type === 'carries')

/** A bird of his own is named: with "which chooks do I buy" a mate is sought, whatever the council says. */
const isOwned = ({ scene }: Reading): boolean =>
  scene.birds.some((bird) => isSolid(bird) && bird.ref.breed !== undefined)

/** Illness and law come first: nobody is to wait for a vet because of a breed name. */
export const readIllnessOrLaw: Reader = (reading) => {
  if (
    pairsIn(reading).length > 0 ||
    isOfBreeding(reading) ||
    reading.scene.wanted.some(({ firm, sex, for: birds }) => firm && (birds.length > 0 || (sex && isOwned(reading))))
  )
    return undefined
  if (reading.has('law')) return declineOf(reading, 'law')
  const lethal = reading.tokens.some(
    (token) =>
      token.type === 'trait' ||
      (token.type === 'colour' && ['frizzle', 'tufted', 'short legged', 'rumpless'].includes(token.colour)),
  )
  return reading.has('health') && !lethal ? declineOf(reading, 'health') : undefined
}

/** Illness beside words of breeding, where nothing else was to be said of it. */
export const readIllnessLast: Reader = (reading) => (reading.has('health') ? declineOf(reading, 'health') : undefined)

/** Thanks, or a call for help, and no more. */
export const readCourtesy: Reader = (reading) => {
  const short = reading.words.length <= 8 && !reading.scene.birds.some(isSolid) && !isToldPair(reading)
  if (!short) return undefined
  if (reading.has('help') && reading.scene.aspects.length === 0 && !isCry(reading)) return declineOf(reading, 'help')
  const bare =
    reading.words.length <= 2 &&
    reading.words.every((word) => /^(?:hi|hello|hey|yo|hiya|hallo|hola|bonjour|hej|morning|henwife|there)$/u.test(word))
  if (bare && reading.words.length > 0) return declineOf(reading, 'help')
  return reading.has('thanks') &&
    !reading.asks &&
    reading.scene.aspects.length === 0 &&
    !reading.words.some((word) => word === 'other' || word === 'more')
    ? declineOf(reading, 'thanks')
    : undefined
}

/** "my chick has pasty butt help": not how the bot works is asked. */
const isCry = ({ words, tokens, has }: Reading): boolean =>
  words.includes('help') &&
  words.length > 2 &&
  (has('health') || tokens.some(({ type }) => type === 'chick' || type === 'hen' || type === 'cock'))

/** "selling five pullets, collect only". */
export const readAdvert: Reader = (reading) =>
  isAdvert(reading) && !isToldPair(reading) && reading.scene.wanted.every(({ firm }) => !firm)
    ? declineOf(reading, 'off-topic')
    : undefined

/** Nothing of matings, genes or chicks in it. */
export const readOffTopic: Reader = (reading) => declineOf(reading, 'off-topic')

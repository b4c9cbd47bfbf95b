// grammar/read/sexingFact.ts: how chicks are sexed in general, what a sign is worth, how many come of each sex.
import { breedNamed } from '../../core/breeds.ts'
import { commonOf, isHybrid } from './common.ts'
import { isToldPair, pairsIn } from './pairs.ts'
import { birdsIn, factOf, mostLetters } from './topic.ts'
import type { CrossQuestion, Question } from '../../core/question.ts'
import type { Bird } from '../bird.ts'
import type { Reading } from '../reading.ts'
import type { Reader } from './common.ts'

/** "BSL pen, 5 weeks, boy or girl": the chicks of a first cross are those of its usual parents. */
export const readFirstCross: Reader = (reading): CrossQuestion | undefined => {
  const [bird, ...others] = birdsIn(reading)
  const made = bird?.ref.breed === undefined ? undefined : breedNamed(bird.ref.breed)?.madeFrom?.[0]
  const coloured = reading.tokens.some(({ type }) => type === 'colour') // what a chick of that colour is, is a rule by itself
  const sexing = (reading.scene.aspects.includes('sexing') && !coloured) || reading.has('photo')
  if (
    !bird ||
    !made ||
    !sexing ||
    others.length > 0 ||
    isToldPair(reading) ||
    reading.scene.wanted.length > 0 ||
    bird.ref.cross ||
    reading.has('trueBreeding', 'define')
  )
    return undefined
  const hybrid = bird.ref.breed ?? ''
  return {
    kind: 'cross',
    matings: [{ sire: { breed: made.sire }, dam: { breed: made.dam } }],
    aspects: reading.has('photo') ? ['sexing', 'adults'] : ['sexing'],
    ...commonOf(reading, [], [{ kind: 'variety', said: hybrid, taken: `${made.sire} x ${made.dam}` }]),
  }
}

/** "all my chicks are boys", "hatched 15 and only 3 pullets". */
const isLopsided = ({ tokens, words, has }: Reading): boolean => {
  const chicks = tokens.some(({ type }) => type === 'chick') || has('hatch')
  const sexes = tokens.some((token) => (token.type === 'cock' || token.type === 'hen') && token.many && !token.parent)
  return (
    chicks &&
    sexes &&
    tokens.every(({ type }) => type !== 'over' && type !== 'breed' && type !== 'family' && type !== 'colour') &&
    (words.includes('all') || (words.includes('only') && has('outcome'))) &&
    !has('set', 'shipped', 'define')
  )
}

/** "11 roos out of 14": luck, and nobody's doing. */
export const readSexLuck: Reader = (reading) => {
  const counted = reading.scene.tallies.some(
    ({ look }) => look.length > 0 && look.every(({ type }) => type === 'cock' || type === 'hen' || type === 'chick'),
  )
  const which = /\bwhich (?:one |ones )?(?:of |is |are )/u.test(reading.words.slice(0, 60).join(' ')) // "which of these 6 is the roo"
  return (reading.has('sexRatio') || counted || isLopsided(reading)) &&
    !which &&
    !reading.scene.wanted.some(({ firm, sex }) => firm && sex !== undefined) &&
    !reading.has('father', 'carry') &&
    !isToldPair(reading) &&
    !(reading.scene.aspects.includes('sexing') && pairsIn(reading).some(({ by }) => by === 'sex'))
    ? factOf(reading, 'sex-ratio-luck', birdsIn(reading))
    : undefined
}

/** "RIR over barred hens, and 2 of the spotted ones turned out hens": why a sign failed. */
export const readMisread: Reader = (reading) => {
  const said =
    /\b(?:dot|dots|dotted|spot|spots|spotted|headspots?|marked|sexed)\b.*\b(?:turned (?:out|into)|ended up|became|grew (?:up )?(?:into|to be)|are now|is now|were really)\b(?: \w+){0,3} (?:hens?|pullets?|girls?|roos?|roosters?|cockerels?|boys?|cocks?)\b/u
  const asked = reading.asks || reading.words.some((word) => /^(?:how|why|wrong|possible)$/u.test(word))
  return asked && said.test(reading.words.join(' ')) ? factOf(reading, 'mis-sexed', birdsIn(reading)) : undefined
}

/** "is 50/50 boys and girls true": the share of each sex. */
export const readHalves: Reader = (reading) => {
  const halves = /\b(?:50 ?[/:-] ?50|fifty ?fifty|half (?:and|n|&) half|half boys|half girls)\b/iu.test(
    reading.text.slice(0, mostLetters),
  )
  const sexes =
    reading.tokens.some(({ type }) => type === 'cock' || type === 'hen') || reading.scene.aspects.includes('sexing')
  return halves && sexes && birdsIn(reading).length === 0 ? factOf(reading, 'hatch-rate-ratio', []) : undefined
}

/** Sexing in general: of barred chicks, by wings, by a spot, or by age. */
export const readSexing: Reader = (reading) => {
  const { scene, tokens, words } = reading
  const both = tokens.some(({ type }) => type === 'cock') && tokens.some(({ type }) => type === 'hen')
  const when =
    words.some((word) => /^(?:when|age|weeks?|wks?|old)$/u.test(word)) &&
    !/^(?:what|whats) happens? when\b/u.test(words.join(' '))
  if (both && when && !isToldPair(reading) && scene.aspects.length === 0)
    return factOf(reading, 'later-signs', birdsIn(reading))
  const combs =
    scene.aspects.includes('comb') && tokens.some(({ type }) => type === 'cock' || type === 'hen' || type === 'chick')
  const laying = scene.aspects.includes('eggs') || scene.goals.includes('eggs') // "floppy combs lay more"
  if (combs && !laying && words.length >= 4 && !isToldPair(reading))
    return factOf(reading, 'later-signs', birdsIn(reading))
  const sign = words.some((word) => /^(?:head|comb|stance|legs?|posture|shape|tail|wing|wings|beak|eyes?)$/u.test(word))
  const sexed = tokens.some(({ type }) => type === 'cock' || type === 'hen')
  if (sign && sexed && reading.has('claim') && birdsIn(reading).length === 0 && !isToldPair(reading))
    return factOf(reading, 'best-sexing-marks', [])
  if (!scene.aspects.includes('sexing') && !scene.goals.includes('sexable')) return undefined
  if (
    isToldPair(reading) ||
    words.length < 4 ||
    (!reading.has('wing') && words.some((word) => /^(?:it|them|that|these|those|this|he|she|him|her)$/u.test(word)))
  )
    return undefined
  if (!(reading.asks || reading.has('define', 'question', 'claim')) || scene.matings.length > 0) return undefined
  if (tokens.filter(({ type }) => type === 'sexlink').length > 1) return factOf(reading, 'sex-links-breed-true', [])
  const barred = tokens.some(
    (token) => token.type === 'colour' && (token.colour === 'barred' || token.colour === 'cuckoo'),
  )
  if (barred) return factOf(reading, 'barred-rock-spot', birdsIn(reading))
  if (reading.has('wing')) return factOf(reading, 'wing-any-chick', [])
  const subject = tokens.some(({ type }) => type === 'chick' || type === 'hen' || type === 'cock' || type === 'colour')
  return (subject || words.length >= 7) && !reading.has('photo', 'mine')
    ? factOf(reading, 'best-sexing-marks', birdsIn(reading))
    : undefined
}

/** "by the spot like Barred Rocks": a breed named for a likeness. */
const isLikened = ({ saidOf }: Bird, { tokens }: Reading): boolean =>
  /^(?:like|as|same as)$/u.test(tokens.findLast(({ at }) => at < nameAt(saidOf))?.word ?? '')

const nameAt = ({ parts, at }: Bird['saidOf']): number =>
  parts.find(({ type }) => type === 'breed' || type === 'family')?.at ?? at

/** "can you sex Barnevelder chicks", "are Legbars autosexing": the breed mated to itself. */
export const readPureSexing: Reader = (reading): Question | undefined => {
  const { scene, words } = reading
  const [bird, ...others] = birdsIn(reading).filter((one, at) => at === 0 || !isLikened(one, reading))
  const autosexing = words.some((word) => word.startsWith('autosex'))
  const young = /\b(?:hatch|hatched|hatching|shell|born|day old|day olds|one day|1 day|dry)\b/u.test(words.join(' '))
  const older = words.some(
    (word) =>
      /^(?:weeks?|wks?|months?|age|when|comb|combs|crow|crowing|crows)$/u.test(word) && !(young && word === 'when'),
  )
  if (
    !bird ||
    others.length > 0 ||
    bird.sex !== undefined ||
    isHybrid(bird) ||
    bird.ref.cross !== undefined ||
    breedNamed(bird.ref.breed ?? '')?.family === 'described' ||
    !(scene.aspects.includes('sexing') || autosexing) ||
    isToldPair(reading) ||
    scene.wanted.length > 0 ||
    (reading.has('photo') && !young) ||
    reading.has('trueBreeding') ||
    !(reading.asks || reading.has('question', 'claim') || words.length <= 8)
  )
    return undefined
  const { asWritten: _, ...ref } = bird.ref
  if (older)
    return { kind: 'fact', topic: 'later-signs', birds: [ref], features: ['sex-signs'], ...commonOf(reading, [bird]) }
  return {
    kind: 'cross',
    matings: [{ sire: ref, dam: ref }],
    aspects: ['sexing'],
    ...commonOf(reading, [bird]),
  }
}

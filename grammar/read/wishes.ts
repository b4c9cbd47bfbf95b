// grammar/read/wishes.ts: a kind of bird is wished for by what it is for, and none is named.
import { goalsOf, isSolid } from './common.ts'
import { isAdvert, isExcluded, wantsOneBreed } from './lineTopic.ts'
import { linesQuestion } from './linesCompared.ts'
import { isToldPair } from './pairs.ts'
import { isPlainTopic } from './topic.ts'
import type { Reading } from '../reading.ts'
import type { Reader } from './common.ts'

/** "dual purpose with 2 kg boys by 16 weeks, which", "meat bird I can breed myself": a kind of bird by what it is for. */
const seeksKind = ({ words, tokens }: Reading): boolean => {
  const text = words.slice(0, 60).join(' ')
  const kind =
    /^(?:(?:a|an|any|some|looking for|want|need|after|good|best|recommend|suggest) )*(?:a |an )?(?:good |nice |decent |slow |proper |heritage )*(?:dual purpose|dual|dp|meat|table|laying|layer|broody|family|calm|quiet|friendly)(?: (?:and|or|purpose|eggs?))* (?:bird|birds|breed|breeds|chicken|chickens|hen|hens)\b/u
  const kindThat =
    /^(?:(?:a|any|the|is there a|need a|want a|whats a) )*(?:breeds?|hens?|chickens?|birds?|layers?|chooks?|something) (?:that|which|who|to) /u
  if (kindThat.test(text)) return true
  const asked =
    tokens.slice(-2).some(({ word }) => word === 'which') || /\bwhich (?:one|ones|breeds?|is best)?$/u.test(text)
  return (kind.test(text) && !/\b(?:is|are|my)\b/u.test(text.slice(0, 30))) || asked
}

/** "best dual purpose breed for the cold": the catalogue by goals. */
export const readBestBreed: Reader = (reading) => {
  const { scene, words } = reading
  const birds = scene.birds.filter((bird) => isSolid(bird) && !isExcluded(bird, reading))
  if (isAdvert(reading) || goalsOf(reading).length === 0 || birds.length > 0 || isToldPair(reading)) return undefined
  if (isPlainTopic(reading) && birds.length === scene.birds.filter(isSolid).length) return undefined
  const seeking =
    scene.wanted.some(({ firm }) => firm) && !words.some((word) => /^(?:my|his|her|these|those)$/u.test(word))
  return reading.has('bestBreed') ||
    seeking ||
    seeksKind(reading) ||
    wantsOneBreed(reading) ||
    words[0] === 'best' ||
    (goalsOf(reading).filter((goal) => goal !== 'sexable').length > 1 &&
      !/^(?:is|are|do|does|did)$/u.test(words[0] ?? '') &&
      reading.has('question') &&
      !reading.has('hatch'))
    ? linesQuestion(reading, 'compare')
    : undefined
}

/** "calm hens for kids that still lay ok": two wishes, and nobody named. */
export const readWishes: Reader = (reading, context) => {
  const { scene, tokens, words, has } = reading
  const wishes = goalsOf(reading).filter((goal) => goal !== 'sexable')
  const birds = [...scene.birds, ...scene.matings.flatMap(({ sires, dams }) => [...sires, ...dams])]
  return context.addressed &&
    wishes.length > 1 &&
    birds.every((bird) => bird.ref.breed === undefined) &&
    !tokens.some(({ type }) => ['cock', 'chick', 'over', 'under', 'my', 'his'].includes(type)) &&
    words.some((word) => /^(?:hens?|chickens?|breeds?|layers?|birds?|flock|lay|lays)$/u.test(word)) &&
    !isPlainTopic(reading) &&
    !has('health', 'law', 'hatch', 'set', 'photo') &&
    !isAdvert(reading)
    ? linesQuestion(reading, 'compare')
    : undefined
}

/** No birds, but a goal and a wish for a plan: the best of the catalogue. */
export const readStrategy: Reader = (reading) => {
  const goals = goalsOf(reading)
  if (reading.has('offTopic') && !reading.asks && !reading.has('question')) return undefined
  if (reading.has('test', 'carry') && goals.length === 0) return undefined
  if (
    isAdvert(reading) ||
    isToldPair(reading) ||
    !reading.has('strategy', 'money') ||
    (goals.length === 0 && !reading.has('money'))
  )
    return undefined
  if (reading.scene.birds.some(isSolid) && !reading.has('money', 'strategy')) return undefined
  return linesQuestion(reading, 'compare')
}

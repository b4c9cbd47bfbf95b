// grammar/read/lines.ts: which line or breed for a goal, feed and money, how long to keep hens, what cockerels cost.
import { comparedIn, isAdvert, linesNamed, renews, seeksOneForBoth, tellsColoursApart, topicOf } from './lineTopic.ts'
import { linesQuestion } from './linesCompared.ts'
import { isPlainTopic } from './topic.ts'
import type { Reader } from './common.ts'

export const readLines: Reader = (reading) => {
  const topic = isAdvert(reading) ? undefined : topicOf(reading)
  if (topic === undefined) return undefined
  const several = comparedIn(reading).length > 1 || reading.tokens.some(({ type }) => type === 'money')
  if (tellsColoursApart(reading)) return undefined
  const plainly = renews(reading) || seeksOneForBoth(reading)
  if (topic === 'compare' && !plainly && !several && linesNamed(reading).length === 0 && isPlainTopic(reading, 26))
    return undefined
  return linesQuestion(reading, topic)
}

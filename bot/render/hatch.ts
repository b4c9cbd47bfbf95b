// bot/render/hatch.ts: eggs to set, pullets to expect, and the days to mark in the calendar.
import { line, strong } from './document.ts'
import { count, date, inHundred, plural } from './numbers.ts'
import { wants, type Asked } from './asked.ts'
import { capital } from './tame.ts'
import type { Document } from './document.ts'
import type { HatchAnswer } from '../../core/answer.ts'

/** The verdict gives the sure number; this the smaller one that will do every other time. */
const onAverage = ({ eggsToSetOnAverage, eggsToSet }: HatchAnswer): Document =>
  eggsToSetOnAverage === null || eggsToSet === null
    ? []
    : [line(`An average hatch needs ${plural(eggsToSetOnAverage, 'egg')}; the rest is for bad luck.`)]

function expected(answer: HatchAnswer): Document {
  const { pulletsExpected, cockerelsExpected } = answer
  if (pulletsExpected === null || cockerelsExpected === null) return []
  return [
    line(
      `Expect about ${plural(Math.round(pulletsExpected), 'pullet')} and ${plural(Math.round(cockerelsExpected), 'cockerel')}.`,
    ),
  ]
}

function given(answer: HatchAnswer): Document {
  const { fertility, hatchOfFertile, survival, shipped, sexingAccuracy, status } = answer.given
  if (!['eggs-to-set', 'pullets-from'].includes(answer.topic)) return []
  const whose = status === 'told' ? 'your figures' : status === 'read' ? 'published figures' : 'usual figures'
  const rate = fertility * hatchOfFertile
  const post = shipped ? 'shipped eggs, ' : ''
  const sexed = sexingAccuracy === null ? '' : `, chicks sexed right ${inHundred(sexingAccuracy)}`
  return [
    line(
      `Taken (${whose}): ${post}${inHundred(rate)} of the eggs hatch, ${inHundred(survival)} of the chicks grow up, half are pullets${sexed}. Tell me your own hatch rate and I reckon again.`,
    ),
  ]
}

function dates({ dates }: HatchAnswer): Document {
  if (!dates) return []
  return [
    line(
      `Candle ${date(dates.candle)} and ${date(dates.secondCandle)}; stop turning ${date(dates.lockdown)}; hatch ${date(dates.hatch)}; off heat about ${date(dates.feathered)}; first eggs about ${date(dates.pointOfLay)}.`,
    ),
  ]
}

const spread = (answer: HatchAnswer, asked: Asked): Document =>
  wants(asked, 'more', 'shares') && answer.distribution.length > 0
    ? [
        line(
          `Chance of enough, by eggs set: ${answer.distribution.map((d) => `${count(d.eggs)}: ${inHundred(d.chance)}`).join('; ')}.`,
        ),
      ]
    : []

export function hatchBlocks(answer: HatchAnswer, asked: Asked): Document {
  return [
    line(strong(capital(answer.summary))),
    ...onAverage(answer),
    ...expected(answer),
    ...answer.says.map((words) => line(words)),
    ...given(answer),
    ...spread(answer, asked),
    ...dates(answer),
  ]
}

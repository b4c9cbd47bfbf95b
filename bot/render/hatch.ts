// bot/render/hatch.ts: eggs to set, pullets to expect, and the days to mark in the calendar.
import { line, strong } from './document.ts'
import { count, date, inHundred, number, plural } from './numbers.ts'
import { wants, type Asked } from './asked.ts'
import type { Document } from './document.ts'
import type { HatchAnswer } from '../../core/answer.ts'

function eggs(answer: HatchAnswer): Document {
  const { eggsToSet, eggsToSetOnAverage, pulletsWanted } = answer
  if (eggsToSet === null || pulletsWanted === null) return []
  const average = eggsToSetOnAverage === null ? '' : `, or ${count(eggsToSetOnAverage)} if an average hatch will do`
  return [
    line(
      `For ${plural(pulletsWanted, 'pullet')}, set ${plural(eggsToSet, 'egg')} to be ${inHundred(answer.certainty)} sure${average}.`,
    ),
  ]
}

function expected(answer: HatchAnswer): Document {
  const { pulletsExpected, cockerelsExpected } = answer
  if (pulletsExpected === null || cockerelsExpected === null) return []
  return [line(`On average: about ${number(pulletsExpected)} pullets and ${number(cockerelsExpected)} cockerels.`)]
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
      `Set ${date(dates.set)}; candle ${date(dates.candle)} and ${date(dates.secondCandle)}; stop turning ${date(dates.lockdown)}; hatch ${date(dates.hatch)}; off heat about ${date(dates.feathered)}; first eggs about ${date(dates.pointOfLay)}.`,
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
  const chance =
    answer.chance === null || answer.eggsToSet !== null
      ? []
      : [line(`The chance of that: ${inHundred(answer.chance)}.`)]
  return [
    line(strong(answer.summary)),
    ...eggs(answer),
    ...chance,
    ...expected(answer),
    ...answer.says.map((words) => line(words)),
    ...given(answer),
    ...spread(answer, asked),
    ...dates(answer),
  ]
}

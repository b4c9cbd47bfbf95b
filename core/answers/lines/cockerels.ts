// core/answers/lines/cockerels.ts: what the males of a hatch cost, and what a pullet costs hatched or bought.
import { cockerelWeeks } from '../../data/hen/growing.ts'
import { hatching } from '../../data/hen/hatching.ts'
import { carcassKg } from '../../hen/expect.ts'
import { feedPerKgGain, feedToAge, weightAt } from '../../hen/growth.ts'
import { brotherFeedKg, rearingFeedKg, straightRunFeedKg } from '../../hen/money.ts'
import { broilerSays, isBroiler, usualCockKg } from './broiler.ts'
import { askPrice, feedPrice, type Says } from './says.ts'
import { kilos, money } from './words.ts'

export const cockerelCost: Says = (question, shown) => {
  if (shown.some(isBroiler)) return broilerSays(question, shown)
  const { manner } = question
  const cockKg = shown[0]?.figures.cockKg.likely ?? usualCockKg
  const weeks = question.weeks ?? cockerelWeeks.toldApart
  const eaten = feedToAge(weeks, cockKg)
  const whose = shown[0] ? `A ${shown[0].name} cockerel` : 'A cockerel of a heavy breed'
  const table = carcassKg({ low: cockKg * 0.92, likely: cockKg, high: cockKg * 1.08 })
  const gain = (from: number, to: number): string => feedPerKgGain(from, to, cockKg).toFixed(1)
  const toTable = feedToAge(cockerelWeeks.table, cockKg).likely
  return [
    `${whose} eats about ${kilos(eaten.likely, manner.units)} to ${weeks} weeks${feedPrice(question, eaten.likely)}, give or take a seventh; he then weighs about ${kilos(weightAt(weeks, cockKg), manner.units)}.`,
    weeks === cockerelWeeks.table
      ? `Dressed he gives about ${kilos(table.likely, manner.units)}.`
      : `To ${cockerelWeeks.table} weeks: ${kilos(toTable, manner.units)}${feedPrice(question, toTable)}, for about ${kilos(table.likely, manner.units)} dressed.`,
    `From 8 to 12 weeks he eats ${gain(8, 12)} times what he puts on, to 16 weeks ${gain(12, 16)} times, to 20 ${gain(16, 20)} times: past 16 he mostly just eats.`,
    'Sexed at hatch, every male you do not keep saves you this.',
    ...askPrice(question),
  ]
}

export const buyOrHatch: Says = (question, shown) => {
  const hen = shown[0]?.figures
  if (!hen) return []
  const { units } = question.manner
  const { feedPerKg, chick } = question.prices
  const rearing = rearingFeedKg(hen)
  const both = straightRunFeedKg(hen, cockerelWeeks.toldApart)
  const eggs = 1 / (hatching.own.fertility * hatching.own.hatchOfFertile * hatching.femaleShare * hatching.survival)
  const sums =
    feedPerKg === undefined || chick === undefined
      ? chick !== undefined
        ? [
            `Her brother eats ${kilos(brotherFeedKg(hen), units)} until he shows: that feed, and eggs and warmth, stand against the ${money(chick, question.manner)}. If that buys a pullet near lay, hatching is cheaper while feed is under ${money(chick / both, question.manner)} a kg. Tell me your feed price and I put a sum to it.`,
          ]
        : ['Tell me your feed price and what a sexed pullet chick costs, and I set the two side by side.']
      : [
          `At your prices a pullet in lay stands at ${money(chick + rearing * feedPerKg, question.manner)} from a bought sexed chick, ${money(both * feedPerKg, question.manner)} hatched at home, eggs and warmth not counted, ${money(rearing * feedPerKg, question.manner)} if you sex at hatch and part with the males at once.`,
        ]
  return [
    `Hatched from your own eggs, a pullet in lay takes about ${eggs.toFixed(1)} eggs and comes with a brother.`,
    `Feed to her first egg: ${kilos(rearing, units)}; with the brother fed until he shows, at ${cockerelWeeks.toldApart} weeks, ${kilos(both, units)}.`,
    ...sums,
    'Bought pullets come sexed, with no cockerels to place; hatching gives you your own line.',
  ]
}

// bot/render/lines.ts: lines and crosses against a goal, side by side, and the trade-off in one sentence.
import { line, numbered, strong } from './document.ts'
import { kilograms, range } from './measures.ts'
import { count, money } from './numbers.ts'
import type { Asked } from './asked.ts'
import { capital } from './tame.ts'
import type { Document, Line } from './document.ts'
import type { LinesAnswer } from '../../core/answer.ts'

type Option = LinesAnswer['options'][number]
/** As many as a phone shows. */
const mostOptions = 4

function moneyWords(option: Option, currency: string | undefined): readonly string[] {
  if (!option.money) return []
  const { costPerDozen, keepUntilYear } = option.money
  const until = keepUntilYear === null ? '' : `, pays for her feed ${yearsWords(keepUntilYear)}`
  return [`${money(costPerDozen, currency)} a dozen, rearing and three years counted${until}`]
}

const yearsWords = (until: number): string =>
  until === 0 ? 'in no year' : until >= 10 ? 'as long as she lays' : `to year ${count(until)}`

/** Nobody counts days of a hen that hardly sits. */
const broodyWords = ({ likely }: Option['broodyDays']): string =>
  likely < 2 ? 'hardly ever broody' : `broody about ${count(likely)} days a year`

/** Eggs, feed, meat, broody days and weather side by side; the years by custom only where no money decides them. */
function option(one: Option, asked: Asked, goal: readonly string[]): Line {
  const { units, currency } = asked.manner
  const told = [
    `perhaps ${range(one.eggsThreeYears)} eggs in three years`,
    `${kilograms(one.feedKgPerDozen.likely, units)} feed a dozen`,
    ...moneyWords(one, currency),
    `cockerel ${kilograms(one.carcassKg.likely, units)} dressed`,
    broodyWords(one.broodyDays),
    one.hardiness,
    ...(goal.some((wish) => wish === 'calm' || wish === 'family') ? [one.temper] : []),
  ]
  return [strong(`${one.name}: `), `${told.join('; ')}.${one.money ? '' : ` ${one.keep || one.why}`}`]
}

/** Costs are told in the sentences; only where lines are set against each other do they stand in a row. */
export function linesBlocks(answer: LinesAnswer, asked: Asked): Document {
  const options = answer.topic === 'compare' ? answer.options.slice(0, mostOptions) : []
  return [
    line(strong(capital(answer.summary))),
    ...(options.length > 0 ? [numbered(options.map((one) => option(one, asked, answer.goal)))] : []),
    ...answer.says.map((words) => line(words)),
    ...(answer.tradeOff ? [line(answer.tradeOff)] : []),
  ]
}

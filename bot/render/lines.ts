// bot/render/lines.ts: lines and crosses against a goal, side by side, and the trade-off in one sentence.
import { line, numbered, strong } from './document.ts'
import { kilograms, range } from './measures.ts'
import { count, money } from './numbers.ts'
import { wants, type Asked } from './asked.ts'
import { capital } from './tame.ts'
import type { Document, Line } from './document.ts'
import type { LinesAnswer } from '../../core/answer.ts'

type Option = LinesAnswer['options'][number]
const usualOptions = 4

function moneyWords(option: Option, currency: string | undefined): string {
  if (!option.money) return ''
  const { costPerDozen, keepUntilYear } = option.money
  const until = keepUntilYear === null ? '' : `, pays her way to year ${count(keepUntilYear)}`
  return `; ${money(costPerDozen, currency)} a dozen, rearing and three years counted${until}`
}

function option(one: Option, asked: Asked): Line {
  const { units, currency } = asked.manner
  const main = `about ${range(one.eggsThreeYears)} eggs in three years; ${kilograms(one.feedKgPerDozen.likely, units)} feed a dozen${moneyWords(one, currency)}`
  const rest = wants(asked, 'more')
    ? `; dressed cockerel ${kilograms(one.carcassKg.likely, units)}; broody ${range(one.broodyDays)} days a year; ${one.hardiness}; ${one.temper}`
    : ''
  return [strong(`${one.name}: `), `${main}${rest}. ${one.keep || one.why}`]
}

export function linesBlocks(answer: LinesAnswer, asked: Asked): Document {
  const options = answer.options.slice(0, wants(asked, 'more') ? 8 : usualOptions)
  return [
    line(strong(capital(answer.summary))),
    ...(options.length > 0 ? [numbered(options.map((one) => option(one, asked)))] : []),
    ...answer.says.map((words) => line(words)),
    ...(answer.tradeOff ? [line(answer.tradeOff)] : []),
  ]
}

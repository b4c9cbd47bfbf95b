// grammar/read/dates.ts: the date in a message, as an ISO date, or --MM-DD where nobody can tell the year. Relative days need the date of the message.

const months = [
  'january',
  'february',
  'march',
  'april',
  'may',
  'june',
  'july',
  'august',
  'september',
  'october',
  'november',
  'december',
]
const weekdays = ['sunday', 'monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday']
const dayMilliseconds = 86_400_000

const iso = (time: number): string => new Date(time).toISOString().slice(0, 10)
const monthOf = (word: string | undefined): number =>
  word === undefined || word.length < 3
    ? -1
    : months.findIndex(
        (month) => month === word || month.slice(0, 3) === word || (word === 'sept' && month === 'september'),
      )
const dayOf = (word: string | undefined): number | undefined => {
  const day = Number(/^(\d{1,2})(?:st|nd|rd|th)?$/u.exec(word ?? '')?.[1])
  return day >= 1 && day <= 31 ? day : undefined
}

/** Stands in where no year is told: one without a 29 February. */
const commonYear = 2001
const withoutYear = (time: number): string => `-${iso(time).slice(4)}`

/** So many days before a date, which may be without its year. */
export function daysBefore(date: string, days: number): string {
  return date.startsWith('--')
    ? withoutYear(Date.parse(`${commonYear}${date.slice(1)}`) - days * dayMilliseconds)
    : iso(Date.parse(date) - days * dayMilliseconds)
}

/** A day of that month: this year's, or next year's where that is more than half a year gone. */
function dated(month: number, day: number, today: string | undefined, year?: number): string | undefined {
  const own = year ?? (today === undefined ? commonYear : Number(today.slice(0, 4)))
  const time = Date.UTC(own, month, day)
  if (new Date(time).getUTCMonth() !== month) return undefined
  if (year === undefined && today === undefined) return withoutYear(time)
  const gone = today === undefined ? 0 : Date.parse(today) - time
  return iso(year === undefined && gone > 183 * dayMilliseconds ? Date.UTC(own + 1, month, day) : time)
}

function relative(words: readonly string[], today: string | undefined): string | undefined {
  if (today === undefined) return undefined
  const now = Date.parse(today)
  if (Number.isNaN(now)) return undefined
  if (words.includes('yesterday')) return iso(now - dayMilliseconds)
  if (words.includes('tomorrow')) return iso(now + dayMilliseconds)
  if (words.includes('today') || words.includes('tonight') || words.includes('now')) return iso(now)
  const at = words.findIndex((word) => weekdays.includes(word))
  if (at < 0) return undefined
  const away = (weekdays.indexOf(words[at]!) - new Date(now).getUTCDay() + 7) % 7
  const next =
    /^(?:next|this|coming)$/u.test(words[at - 1] ?? '') || words.includes('will') || words.includes('setting')
  return iso(now + (next ? away || 7 : away === 0 ? 0 : away - 7) * dayMilliseconds)
}

/** @param today ISO date of the message; without it a day of a month comes without its year */
export function dateIn(words: readonly string[], text: string, today: string | undefined): string | undefined {
  const whole = /(?<!\d)(20\d\d)-(\d\d?)-(\d\d?)(?!\d)/u.exec(text)
  if (whole) return dated(Number(whole[2]) - 1, Number(whole[3]), today, Number(whole[1]))
  for (let i = 0; i < words.length; i += 1) {
    const month = monthOf(words[i])
    if (month < 0) continue
    const last = words[i - 1] === 'of' ? i - 2 : i - 1
    const before = /^(?:st|nd|rd|th)$/u.test(words[last] ?? '') ? words[last - 1] : words[last]
    const day = dayOf(words[i + 1]) ?? dayOf(before)
    const by = /^(?:by|before)$/u.test(words[i - 1] ?? '') ? 1 : undefined // "by April"
    const year = Number(/^20\d\d$/u.exec(words[i + 2] ?? words[i + 1] ?? '')?.[0])
    const found = (day ?? by) === undefined ? undefined : dated(month, day ?? by!, today, year || undefined)
    if (found !== undefined) return found
  }
  return relative(words, today)
}

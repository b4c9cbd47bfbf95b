// bot/render/numbers.ts: numbers as keepers say them. Only Intl forms digits and lists.

const whole = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 0 })
const oneDecimal = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 1 })
const twoDecimals = new Intl.NumberFormat('en-GB', { minimumFractionDigits: 2, maximumFractionDigits: 2 })
const all = new Intl.ListFormat('en-GB', { type: 'conjunction' })
const either = new Intl.ListFormat('en-GB', { type: 'disjunction' })
const plurals = new Intl.PluralRules('en-GB')

export const number = (n: number): string => (Math.abs(n) < 10 ? oneDecimal : whole).format(n)
export const count = (n: number): string => whole.format(n)
export const and = (words: readonly string[]): string => all.format(words)
export const or = (words: readonly string[]): string => either.format(words)

/** 1 egg, 2 eggs. */
export const plural = (n: number, one: string, many = `${one}s`): string =>
  `${count(n)} ${plurals.select(n) === 'one' ? one : many}`

/** 'about 95 in 100'; never 0 or 100 for what is not certain. */
export function inHundred(share: number): string {
  if (share >= 1) return 'all'
  if (share <= 0) return 'none'
  if (share < 0.01) return 'under 1 in 100'
  if (share > 0.99) return 'over 99 in 100'
  return `about ${whole.format(share * 100)} in 100`
}

const named: readonly (readonly [number, string])[] = [
  [1 / 2, 'half'],
  [1 / 4, 'a quarter'],
  [3 / 4, 'three quarters'],
  [1 / 3, 'a third'],
  [2 / 3, 'two thirds'],
]

/** A chance among chicks: 'half', '3 in 8', 'about 47 in 100'. */
export function share(of: number): string {
  if (of > 1 - 1e-9) return 'all'
  const word = named.find(([n]) => Math.abs(n - of) < 1e-6)
  if (word) return word[1]
  const parts = [8, 16, 32].find((n) => Math.abs(of * n - Math.round(of * n)) < 1e-6)
  return parts ? `${Math.round(of * parts)} in ${parts}` : inHundred(of)
}

/** For those who ask for percents: '50 %', '37.5 %'. */
export const percent = (of: number): string => `${oneDecimal.format(of * 100)} %`

/** How shares are said: as keepers say them, or in percent. */
export type Say = (share: number) => string

/** How strongly the bot believes a thing about a bird it does not know. Never a figure: it is no chance among chicks. */
export function belief(weight: number): string {
  if (weight > 0.85) return 'very likely'
  if (weight > 0.6) return 'likely'
  if (weight > 0.4) return 'as likely as not'
  if (weight > 0.15) return 'less likely'
  return 'unlikely'
}

const dayForm = { weekday: 'short', day: 'numeric', month: 'long', timeZone: 'UTC' } as const
/** '12 March' of an ISO date, with its weekday where the year is told. */
export function date(iso: string): string {
  const { weekday: _, ...dayOfMonth } = dayForm
  const [form, day] = iso.startsWith('--') ? [dayOfMonth, `2001${iso.slice(1)}`] : [dayForm, iso.slice(0, 10)]
  return new Intl.DateTimeFormat('en-GB', form).format(new Date(`${day}T00:00:00Z`))
}

/** Money in the keeper's own sign: '£3.20'. */
export const money = (amount: number, currency = ''): string =>
  `${amount < 0 ? '-' : ''}${currency}${twoDecimals.format(Math.abs(amount))}`

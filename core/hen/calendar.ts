// core/hen/calendar.ts: the dates of a hatch, counted from the day the eggs are set. No clock: the day comes in.
import type { HatchAnswer } from '../answer.ts'
import { hatchDays } from '../data/hen/hatching.ts'

const dayLength = 24 * 60 * 60 * 1000 // ms

/** Where the year is not told, '--09-03', days are counted in one without a 29 February. */
const commonYear = '2001'
const isYearless = (date: string): boolean => date.startsWith('--')

/** Midnight of an ISO date in UTC, or null where there is no such day, or none a keeper would live to see. */
function dayOf(iso: string): number | null {
  const ms = Date.parse(`${iso}T00:00:00Z`)
  if (Number.isNaN(ms) || iso >= '9000') return null
  return new Date(ms).toISOString().slice(0, 10) === iso ? ms : null
}

/** Such as '3 September'. Made when asked for: few hatch questions name a day, and every start would pay for it. */
export const dayAndMonth = (date: string): string =>
  new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', timeZone: 'UTC' }).format(
    new Date(`${isYearless(date) ? `${commonYear}${date.slice(1)}` : date}T00:00:00Z`),
  )

/**
 * @param setOn ISO date, '2027-03-01', or '--03-01' where the year is not told: then all dates are without it
 * @param firstEggDays age at first egg, days from hatch
 * @returns null where the date is none
 */
export function hatchDates(setOn: string, firstEggDays: number): HatchAnswer['dates'] {
  const yearless = isYearless(setOn)
  const start = dayOf(yearless ? `${commonYear}${setOn.slice(1)}` : setOn)
  if (start === null) return null
  const after = (days: number): string => {
    const iso = new Date(start + days * dayLength).toISOString().slice(0, 10)
    return yearless ? `-${iso.slice(4)}` : iso
  }
  return {
    set: after(0),
    candle: after(hatchDays.candle),
    secondCandle: after(hatchDays.secondCandle),
    lockdown: after(hatchDays.lockdown),
    hatch: after(hatchDays.hatch),
    feathered: after(hatchDays.feathered),
    pointOfLay: after(hatchDays.hatch + Math.round(firstEggDays)),
  }
}

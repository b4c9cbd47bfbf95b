// core/hen/calendar.ts: the dates of a hatch, counted from the day the eggs are set. No clock: the day comes in.
import type { HatchAnswer } from '../answer.ts'
import { hatchDays } from '../data/hen/hatching.ts'

const dayLength = 24 * 60 * 60 * 1000 // ms

/** Midnight of an ISO date in UTC, or null where there is no such day, or none a keeper would live to see. */
function dayOf(iso: string): number | null {
  const ms = Date.parse(`${iso}T00:00:00Z`)
  if (Number.isNaN(ms) || iso >= '9000') return null
  return new Date(ms).toISOString().slice(0, 10) === iso ? ms : null
}

/**
 * @param setOn ISO date, '2027-03-01'
 * @param firstEggDays age at first egg, days from hatch
 * @returns null where the date is none
 */
export function hatchDates(setOn: string, firstEggDays: number): HatchAnswer['dates'] {
  const start = dayOf(setOn)
  if (start === null) return null
  const after = (days: number): string => new Date(start + days * dayLength).toISOString().slice(0, 10)
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

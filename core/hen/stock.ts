// core/hen/stock.ts: a line of fowl as the hen model sees it: what it lays, weighs and does when bred pure. Types only.
import type { Span, Status } from '../vocabulary.ts'

/** What the line has been bred for. 'kept for use' = an old line kept for eggs and table; 'exhibition' = bred to the standard. */
export type Purpose = 'production' | 'hatchery' | 'kept for use' | 'exhibition' | 'landrace'

export type Stock = {
  readonly id: string // one for each breed and line
  readonly name: string // e.g. 'production Rhode Island Red'
  readonly family: string // varieties of one breed share it
  readonly type: 'heavy' | 'light' | 'bantam' | 'landrace'
  readonly purpose: Purpose
  readonly eggsFirstYear: Span
  readonly ageFirstEggDays: Span
  readonly eggWeightGrams: Span
  readonly henKg: Span
  readonly cockKg: Span
  readonly brownScore: number // 0 white, 3 tinted, 5 brown, 7 dark, 9 very dark
  readonly paleZ: boolean // its Z is thought to hold back brown pigment, as in white-egg Leghorns
  readonly broodyRate: number // share of hens that go broody in a year, if let
  readonly calm: number // 0 very calm, 1 calm, 2 active, 3 flighty, 4 wild
  readonly sharp: boolean // cocks or hens of it are often called assertive
  readonly cold: number // 0 poor, 1 fair, 2 good
  readonly heat: number
  readonly barred: boolean // carries sex-linked barring
  readonly comb: string
  readonly status: Status
}

// core/sexing/hatch.ts: one hatch as looks and shares of each sex. Types only.
import type { Look } from '../looks/look.ts'

export type LookClass = { readonly share: number; readonly look: Look }

/** Shares sum to 1 within each sex. */
export type Hatch = { readonly M: readonly LookClass[]; readonly F: readonly LookClass[] }

// bot/render/picture/card/shown.ts: the birds of one sex as a card shows them. Types only.
import type { Look } from '../../../../core/looks/look.ts'
import type { Sex } from '../../../../core/vocabulary.ts'

/** One look as drawn. */
export type Shown = {
  readonly look: Look
  readonly told: boolean // false: nothing is known of its colours
  readonly wingRead: boolean // its wing feathers are shown
  readonly share: string // of its sex; '' for all of it
  readonly words: string
  readonly lesser: readonly string[] // comb, legs and the like, as far as this kind differs in them from the others shown
}
/** One sex. What is rarer is '' when all kinds are drawn. */
export type Half = {
  readonly sex: Sex
  readonly chicks: readonly Shown[]
  readonly rarerChicks: string
  readonly grown: readonly Shown[]
  readonly allGrown: readonly string[] // comb, legs and the like of all grown birds of this sex, not of both
  readonly rarerGrown: string
  /** A kind of chick and the commonest grown bird it becomes, for rows with little room. */
  readonly pairs: readonly Shown[]
  readonly rarerPairs: string
}

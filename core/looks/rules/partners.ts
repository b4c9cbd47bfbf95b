// core/looks/rules/partners.ts: conditions that the rules of pattern and of lacing share.
import { has, pure, type Bird } from '../carries.ts'
import type { Draft, Patch } from '../rule.ts'

/** Grounds on which the pattern gene rings and laces: brown, wheaten, and wheaten over either. */
export const brownish = ({ base }: Draft): boolean => base === 'e^b' || base === 'e^Wh' || base === 'e^Wh/e'

/** Two copies of each. */
export const patternAndMelanotic = (bird: Bird): boolean => pure(bird, 'Pg') && pure(bird, 'Ml')

export const anyRestrainer = (bird: Bird): boolean => has(bird, 'Co') || has(bird, 'Db')

/** Patterns that a cock shows on breast and thighs only, unless he is hen-feathered. */
export const onHens =
  (pattern: Draft['pattern']) =>
  (bird: Bird): Patch => ({ pattern: bird.sex === 'F' || has(bird, 'Hf') ? pattern : 'black-breasted' })

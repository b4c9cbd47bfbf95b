// core/looks/rules.ts: every rule of looks in the order in which it is applied, and the record of a rule for "why?".
import { barring } from './rules/barring.ts'
import { comb } from './rules/comb.ts'
import { diluters } from './rules/diluters.ts'
import { dominantWhite } from './rules/dominantWhite.ts'
import { extenders } from './rules/extenders.ts'
import { feather } from './rules/feather.ts'
import { ground } from './rules/ground.ts'
import { head } from './rules/head.ts'
import { lacing } from './rules/lacing.ts'
import { limbs } from './rules/limbs.ts'
import { maskers } from './rules/maskers.ts'
import { mottling } from './rules/mottling.ts'
import { patterning } from './rules/patterns.ts'
import { reds } from './rules/reds.ts'
import { restrictors } from './rules/restrictors.ts'
import { shankAndSkin } from './rules/shank.ts'
import { shell } from './rules/shell.ts'
import { silver } from './rules/silver.ts'
import type { Rule } from './rule.ts'

/** Whites that hide all colour: asked first. Where one holds, `colourRules` are not asked. */
export const maskingRules: readonly Rule[] = maskers

export const colourRules: readonly Rule[] = [
  ...ground,
  ...extenders,
  ...restrictors,
  ...patterning,
  ...lacing,
  ...reds,
  ...silver,
  ...dominantWhite,
  ...barring,
  ...diluters,
  ...mottling,
]

/** Form, skin and shell: never hidden by colour. */
export const formRules: readonly Rule[] = [...shankAndSkin, ...comb, ...head, ...feather, ...limbs, ...shell]

export const rules: readonly Rule[] = [...maskingRules, ...colourRules, ...formRules]

const byId: ReadonlyMap<string, Rule> = new Map(rules.map((rule) => [rule.id, rule]))

/** The records behind `Look.rules`, in the same order; ids that no rule has are left out. */
export const whyRules = (ids: readonly string[]): readonly Rule[] => ids.flatMap((id) => byId.get(id) ?? [])

// core/looks/express.ts: genotype -> what the bird looks like: the rules in order over a draft, then the words.
import type { Genotype, Sex } from '../vocabulary.ts'
import type { Bird } from './carries.ts'
import type { Look } from './look.ts'
import { blank, type Draft, type Rule } from './rule.ts'
import { colourRules, formRules, maskingRules } from './rules.ts'
import { downWords } from './words/down.ts'
import { grownWords } from './words/grown.ts'

type Drawing = { draft: Draft; readonly applied: string[]; readonly hedges: string[] }

/** Applies, in order, each rule whose condition holds. The drawing is changed in place: it lives in `express` alone. */
function draw(drawing: Drawing, bird: Bird, rules: readonly Rule[]): void {
  for (const rule of rules) {
    if (!rule.when(bird, drawing.draft)) continue
    Object.assign(drawing.draft, typeof rule.look === 'function' ? rule.look(bird, drawing.draft) : rule.look)
    drawing.applied.push(rule.id)
    if (rule.hedge !== undefined && !drawing.hedges.includes(rule.hedge)) drawing.hedges.push(rule.hedge)
  }
}

const lookOf = (sex: Sex, d: Draft, rules: readonly string[], hedges: readonly string[]): Look => ({
  chick: {
    colour: d.down,
    pattern: d.downPattern,
    belly: d.belly,
    extraWhite: d.extraWhite,
    headSpot: d.headSpot,
    headSpotClear: d.headSpotClear,
    ground: d.tone,
    groundClear: d.toneClear,
    wing: d.wing,
    skin: d.chickSkin,
    words: downWords(d),
  },
  plumage: {
    pattern: d.pattern,
    black: d.black,
    red: d.red,
    barring: d.barring,
    mottled: d.mottled,
    white: d.white,
    words: grownWords(sex, d),
  },
  form: {
    comb: d.comb,
    crest: d.crest,
    muffs: d.muffs,
    feet: d.feet,
    feather: d.feather,
    neck: d.neck,
    toes: d.toes,
    tail: d.tail,
    legs: d.legs,
    tufts: d.tufts,
    henFeathered: d.henFeathered,
  },
  shank: d.shank,
  skin: d.skin,
  shellBlue: d.shellBlue,
  dies: d.dies,
  rules,
  hedges,
})

/**
 * What a bird of this sex and genotype looks like, from the egg to the grown bird.
 *
 * @param genotype two alleles a locus, one for a hen at a Z locus; a locus that is not listed is wild type
 * @returns looks that differ only in what nobody sees are alike in all but `rules` and `hedges`
 */
export function express(sex: Sex, genotype: Genotype): Look {
  const bird: Bird = { sex, genotype }
  const drawing: Drawing = { draft: { ...blank }, applied: [], hedges: [] }
  draw(drawing, bird, maskingRules)
  if (!drawing.draft.white) draw(drawing, bird, colourRules)
  draw(drawing, bird, formRules)
  return lookOf(sex, drawing.draft, drawing.applied, drawing.hedges)
}

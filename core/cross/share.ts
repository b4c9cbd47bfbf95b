// core/cross/share.ts: the kinds of chick of one sex as an answer shows them: share, looks in words, alleles that set them apart.
import type { LookShare } from '../answer.ts'
import { formatGenotype } from '../genotype.ts'
import type { Form, Look } from '../looks/look.ts'
import type { Genotype } from '../vocabulary.ts'
import type { Brood, ChickKind } from './outcome.ts'

const spotWords = {
  none: 'none',
  small: 'small pale spot',
  large: 'large pale spot',
  blurred: 'blurred pale patch',
  hidden: 'hidden',
} as const

/** What else shows beside colour and comb. */
export const formWords = (form: Form): readonly string[] =>
  [
    form.crest === 'none' ? '' : form.crest === 'small' ? 'small crest' : 'crest',
    form.muffs === 'none' ? '' : 'muffs and beard',
    form.feet === 'clean' ? '' : form.feet === 'feathered' ? 'feathered shanks' : 'lightly feathered shanks',
    form.feather === 'normal' ? '' : `${form.feather} feather`,
    form.neck === 'feathered' ? '' : `${form.neck} neck`,
    form.toes === 'four' ? '' : `${form.toes} toes`,
    form.tail === 'tailed' ? '' : form.tail,
    form.legs === 'normal' ? '' : form.legs === 'short' ? 'short legs' : 'dwarf',
    form.tufts === 'none' ? '' : form.tufts === 'tufted' ? 'ear tufts' : 'ear tufts, though a few show none',
    form.henFeathered ? 'hen-feathered' : '',
  ].filter(Boolean)

/** Loci at which all genotypes of a kind agree, out of those that tell kinds apart. */
function common(genotypes: readonly Genotype[], loci: readonly string[]): Genotype {
  const [first = {}] = genotypes
  const same = (locus: string): boolean => genotypes.every((g) => g[locus]?.join() === first[locus]?.join())
  return Object.fromEntries(loci.filter((locus) => first[locus] && same(locus)).map((locus) => [locus, first[locus]!]))
}

/** Values of a trait that vary by themselves, commonest first, as 'pea or single'. */
function varied({ traits, whole }: Brood, trait: string, own: string): string {
  if (whole) return own
  const values = traits.find((t) => t.trait === trait)?.values ?? []
  return values.length > 1
    ? values
        .slice(0, 4)
        .map(({ value }) => value)
        .join(' or ')
    : own
}

const withoutRules = (look: Look): Look => ({ ...look, rules: [...new Set(look.rules)] })

/** The shank without what black plumage does to it. */
const shankBelow = (shank: string): string => shank.replaceAll(/\b(?:dark|dusky) (?=\w)/g, '')

/** Kinds that differ in feathering speed alone are one where it is not known. */
function shownKinds(kinds: readonly ChickKind[], wingTold: boolean): readonly ChickKind[] {
  if (wingTold) return kinds
  const merged = new Map<string, ChickKind>()
  for (const kind of kinds) {
    const { chick, ...rest } = kind.look
    const key = JSON.stringify([
      { ...chick, wing: '' },
      { ...rest, rules: [], hedges: [] },
    ])
    const same = merged.get(key)
    merged.set(key, same ? together(same, kind) : kind)
  }
  return [...merged.values()].toSorted((a, b) => b.share - a.share)
}
const together = (a: ChickKind, b: ChickKind): ChickKind => ({
  share: a.share + b.share,
  look: a.look,
  genotypes: [...a.genotypes, ...b.genotypes],
})

type Told = { readonly wing: boolean; readonly colour: boolean }
const colourOpen = 'depends on the parents’ colours, which are not told'

/** @param told whether the parents' feathering speed and colours are known: what is not known is not shown */
export function lookShares(brood: Brood, loci: readonly string[], told: Told): readonly LookShare[] {
  return shownKinds(brood.kinds, told.wing).map(({ share, look, genotypes }) => ({
    share,
    down: told.colour ? look.chick.words : colourOpen,
    headSpot:
      look.chick.headSpotClear === 'no' && look.chick.headSpot !== 'none' ? 'hidden' : spotWords[look.chick.headSpot],
    adult: told.colour ? look.plumage.words : colourOpen,
    shank: told.colour ? varied(brood, 'shank', look.shank) : shankBelow(varied(brood, 'shank', look.shank)),
    comb: varied(brood, 'comb', look.form.comb),
    feathering: told.wing ? look.chick.wing : 'unknown',
    form: formWords(look.form),
    alleles: formatGenotype(common(genotypes, loci)),
    look: withoutRules(look),
  }))
}

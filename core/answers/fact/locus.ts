// core/answers/fact/locus.ts: one gene: where it sits, which form wins, what it shows and what hides it.
import { loci, type LocusId } from '../../data/loci.ts'
import { masks } from '../../looks/masks.ts'
import { traits, type AlleleTrait } from '../../looks/traits.ts'
import { topics, type Topic } from '../../topics.ts'
import type { Locus } from '../../vocabulary.ts'

export const isLocus = (id: string | undefined): id is LocusId => id !== undefined && id in loci

/** The record that is about this gene before all others. */
export const topicOfLocus = (locus: LocusId): Topic | undefined =>
  topics.find(({ loci: [first], verdict }) => first === locus && verdict === 'not asked')

const placeOf = (locus: LocusId): string =>
  loci[locus].on === 'Z'
    ? 'It sits on the Z: a cock has two copies, a hen one, so she cannot carry it unseen.'
    : 'It is not on the Z: cocks and hens have two copies and pass it on alike.'

function order(locus: LocusId): string {
  const { alleles, name } = loci[locus]
  return `The forms of ${name}, the winning one first: ${alleles.join(', ')}; the plus marks the wild type.`
}

const acting = {
  recessive: 'shows only when every copy is that form',
  dominant: 'shows with one copy',
  dose: 'shows with one copy and more with two',
} as const

function shown(locus: LocusId): readonly string[] {
  return Object.entries(traits as Readonly<Record<string, AlleleTrait>>)
    .filter(([, trait]) => trait.locus === locus)
    .map(([allele, { shows, acts, hiddenBy }]) => {
      const hidden = hiddenBy.map((mask) => masks[mask].words)
      return `${allele} (${shows}) ${acting[acts]}${hidden.length > 0 ? `; hidden ${hidden.join(', or ')}` : ''}.`
    })
}

/** What it does stands first; where a record tells that, nothing is said of it here. */
export const ofLocus = (locus: LocusId): readonly string[] => {
  const { does }: Locus = loci[locus]
  return [...(does === undefined ? [] : [does]), order(locus), placeOf(locus), ...shown(locus)]
}

/** Loci of which two copies do harm, and what they do. */
const twoCopies: Partial<Readonly<Record<LocusId, string>>> = {
  Cp: 'Yes: two copies of the short-leg gene kill the chick in the shell; one copy gives short legs.',
  Et: 'Yes: two copies of ear tufts kill the chick in the shell, and even one costs some chicks.',
  F: 'No: frizzle kills no chick, but two copies make bare, brittle feather that leaves the bird cold.',
  Rp: 'No: rumplessness is no killer in what was read, but fewer eggs are fertile and some chicks die late.',
  Cr: 'No: in fowl the crest kills no chick, as far as is known; a big one may go with an open skull.',
}

/** Asked of the gene itself: whether it kills, or whether it sits on the Z. */
export function askedOfLocus(locus: LocusId, features: readonly string[]): readonly string[] {
  const { name, on } = loci[locus]
  const plainName = name.replace(/^sex-linked /u, '')
  const place =
    on === 'Z'
      ? `Sex-linked: ${plainName} sits on the Z, so a cock has two copies and a hen one.`
      : `Not sex-linked: ${plainName} is autosomal, so cocks and hens have two copies and pass it on alike.`
  return [
    ...(features.includes('lethal')
      ? [twoCopies[locus] ?? `No: as far as is known two copies of ${name} kill no chick.`]
      : []),
    ...(features.includes('sex-linked') ? [place] : []),
  ]
}

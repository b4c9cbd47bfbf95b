// core/flock/debated.ts: the allele a debate is about, as two sorts at one locus: that allele, and any other.
import { carriedName } from './carriedName.ts'
import { loci } from '../data/loci.ts'
import { type Genome, isSingle, kindsOf } from '../engine/genome.ts'
import { type Ratio, ratio, rational, readRatio } from '../engine/num.ts'
import type { Reading } from '../engine/trait.ts'
import type { MaskId } from '../looks/masks.ts'
import { traitOf } from '../looks/traits.ts'
import type { Chromosome, Locus, Sex } from '../vocabulary.ts'

export type Debated = {
  readonly allele: string
  readonly locus: string
  readonly on: Chromosome
  readonly acts: 'recessive' | 'dominant' | 'dose'
  /** What a bird that shows it is: 'lavender'. */
  readonly shows: string
  /** What a bird that does not show it is: 'clear', or for the lack of a dominant what has that: 'rose-combed'. */
  readonly clear: string
  /** The dominant that a bird free of it is pure for: 'rose comb'. */
  readonly pureFor: string | undefined
  readonly hiddenBy: readonly MaskId[]
  /** The share of birds with one copy that show a dominant; 1 where every one does, midway where the works differ. */
  readonly penetrance: Ratio
  readonly genome: Genome
}

const book: Readonly<Record<string, Locus>> = loci

/** An allele that nobody debates is taken as recessive where it stands below the wild type, else as dominant. */
export function debated(allele: string, locus: string): Debated {
  const trait = traitOf(allele)
  const { on = 'A', alleles = [], wild = '' } = book[locus] ?? {}
  const below = alleles.indexOf(allele) > alleles.indexOf(wild)
  const dominant = trait?.insteadOf
  const { low, high } = trait?.penetrance ?? { low: 1, high: 1 }
  return {
    allele,
    locus,
    on,
    acts: trait?.acts ?? (below ? 'recessive' : 'dominant'),
    shows: trait?.shows ?? allele,
    clear: dominant === undefined ? 'clear' : (traitOf(dominant)?.shows ?? 'clear'),
    pureFor: dominant === undefined ? undefined : carriedName(dominant),
    hiddenBy: trait?.hiddenBy ?? [],
    penetrance: rational.over(rational.plus(exactly(low), exactly(high)), ratio(2n)),
    genome: { loci: [{ id: locus, on, alleles: ['other', allele] }], groups: [{ on, loci: [0], r: [] }] },
  }
}

const exactly = (x: number): Ratio => readRatio(x) ?? rational.one

/** Copies of the debated allele in a genotype, and of how many. */
function copiesIn(code: number): { readonly copies: number; readonly of: 1 | 2 } {
  const [a, b] = kindsOf(code, 2)
  return b === undefined ? { copies: a, of: 1 } : { copies: a + b, of: 2 }
}

/** How many copies a bird of this sex may have. */
export const mostCopies = ({ on }: Debated, sex: Sex | 'U'): 1 | 2 => (sex !== 'U' && isSingle(on, sex) ? 1 : 2)

/** The chance that a bird shows the allele. */
function chanceToShow({ acts, penetrance }: Debated, copies: number, of: 1 | 2): Ratio {
  if (copies === 0) return rational.zero
  if (copies === of) return rational.one
  return acts === 'recessive' ? rational.zero : penetrance
}

const sure = (holds: boolean): Ratio => (holds ? rational.one : rational.zero)

function reading(id: string, says: string, weight: (copies: number, of: 1 | 2) => Ratio): Reading {
  return {
    id,
    says,
    loci: [0],
    weight: (_sex, [code]) => {
      const { copies, of } = copiesIn(code!)
      return weight(copies, of)
    },
  }
}

export const readShows = (debated: Debated, shows: boolean): Reading =>
  reading(`shows ${shows}`, shows ? debated.shows : `not ${debated.shows}`, (copies, of) => {
    const chance = chanceToShow(debated, copies, of)
    return shows ? chance : rational.minus(rational.one, chance)
  })

export const readCarries = (debated: Debated, carries: boolean): Reading =>
  reading(`carries ${carries}`, `${carries ? 'carries' : 'is free of'} ${debated.allele}`, (copies) =>
    sure(copies > 0 === carries),
  )

/** A genotype told or listed: at least, or exactly, so many copies. */
export const readCopies = (says: string, least: number, most: number): Reading =>
  reading(`copies ${least} ${most} ${says}`, says, (copies) => sure(copies >= least && copies <= most))

// core/answers/parents/evidence.ts: how well a pair of parents accounts for the chicks that were seen.
import type { Case, LookShare } from '../../answer.ts'
import { breedNamed, genesOf } from '../../breeds.ts'
import { mate } from '../../cross/mate.ts'
import type { BirdRef, ParentsQuestion } from '../../question.ts'
import type { Sex } from '../../vocabulary.ts'
import { colourWords, formWanted, type Wanted } from './match.ts'

export type Pair = { readonly sire: BirdRef; readonly dam: BirdRef }
/** Chicks alike: how many, of which sex if known, and what was said of them. */
export type SeenChicks = { readonly count: number; readonly sex: Sex | undefined; readonly wanted: readonly Wanted[] }

export const seenChicks = (chicks: ParentsQuestion['chicks']): readonly SeenChicks[] =>
  chicks.map(({ tally, comb, form }) => ({
    count: Math.max(1, tally.count),
    sex: tally.sex,
    wanted: [...colourWords(tally.look ?? ''), ...formWanted([...form, tally.look ?? ''], comb)],
  }))

/** A word used wrongly, a chick under the wrong hen: so much stays possible. */
const slip = 0.002
/** And so much where no bird of known colour accounts for the chicks: then the look itself may well be read otherwise. */
export const misread = 0.02
/** So much for any colour where a breed has none of its own, and the cases are but the commonest of many. */
const anyColourShare = 0.05

export type Weighed = {
  readonly pair: Pair
  readonly weight: number
  readonly shares: readonly number[]
  readonly cases: readonly Case[]
  /** One of the parents may be of any colour, so that no look of a chick rules it out. */
  readonly loose: boolean
}

/** A bird of no told breed, or of one whose ground varies from bird to bird. */
function anyColour({ breed, cross, line }: BirdRef): boolean {
  if (cross !== undefined) return anyColour(cross.sire) || anyColour(cross.dam)
  const known = breed === undefined ? undefined : breedNamed(breed)
  const ground = known && genesOf(known, line)['E']
  return (
    known?.madeFrom === undefined &&
    (known === undefined || (ground?.kind === 'segregates' && Math.max(...Object.values(ground.freq)) < 0.8))
  )
}

/**
 * The chance of chicks such as these from a pair, averaged over what is not known of the parents.
 * `shares`: for each kind of chick seen, the share of the pair's chicks that look so.
 */
export function weighPair(pair: Pair, chicks: readonly SeenChicks[], slipped = slip): Weighed {
  const { cases } = mate(pair.sire, pair.dam, { hen: false, reverse: false })
  const loose = anyColour(pair.sire) || anyColour(pair.dam)
  const chance = (one: Case, { wanted, sex }: SeenChicks): number => {
    const looks = shareIn(one, wanted, sex)
    const form = loose
      ? shareIn(
          one,
          wanted.filter(({ kind }) => kind === 'form'),
          sex,
        )
      : looks
    return slipped + (1 - slipped) * ((1 - anyColourShare) * looks + anyColourShare * form)
  }
  const all = (one: Case): number => chicks.reduce((p, seen) => p * chance(one, seen) ** seen.count, 1)
  const weight = cases.reduce((sum, one) => sum + one.weight * all(one), 0)
  const shares = chicks.map(({ wanted, sex }) => shareOf(cases, wanted, sex))
  return { pair, weight, shares, cases, loose }
}

/** Nothing speaks for this pair but that one of them may be of any colour. */
export const isByDefault = ({ loose, shares }: Weighed): boolean => loose && Math.min(...shares) < 0.1

/** The share of a pair's chicks that look so. */
export const shareOf = (cases: readonly Case[], wanted: readonly Wanted[], sex: Sex | undefined): number =>
  cases.reduce((sum, one) => sum + one.weight * shareIn(one, wanted, sex), 0)

function shareIn(one: Case, wanted: readonly Wanted[], sex: Sex | undefined): number {
  const of = (which: Sex): number => {
    const kinds = which === 'M' ? one.cockerels : one.pullets
    return kinds.reduce((sum, kind) => sum + kind.share * fitOf(one, which, kind, wanted), 0)
  }
  return sex === undefined ? (of('M') + of('F')) / 2 : of(sex)
}

/** How much of one kind of chick fits: traits of form that vary by themselves are told as shares. */
export function fitOf(one: Case, sex: Sex, { look }: LookShare, wanted: readonly Wanted[]): number {
  return wanted.reduce((product, want) => {
    if (want.kind === 'colour') return one.colourKnown === false || want.fits(look) ? product : 0
    const varied = one.traits?.find(({ trait, sex: of }) => trait === want.trait && of === sex)
    if (varied === undefined) return want.fits(String(look.form[want.trait])) ? product : 0
    return product * varied.values.reduce((sum, { value, share }) => sum + (want.fits(value) ? share : 0), 0)
  }, 1)
}

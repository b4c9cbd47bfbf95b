// core/cross/phase.ts: how linked genes lie in a bird that has two unlike alleles at several: from one parent together, or apart.
import { linkageGroups } from '../data/linkage.ts'
import { loci as book } from '../data/loci.ts'
import type { Phase } from '../engine/mating.ts'
import { carriedName } from '../flock/carriedName.ts'
import type { Genotype, LinkageGroup, Locus } from '../vocabulary.ts'
import type { Outcome } from './outcome.ts'

/** Which way round, as a doubt about a founder with its two choices. */
type PhaseDoubt = {
  readonly id: string
  readonly founder: string
  readonly loci: readonly string[]
  readonly choices: readonly {
    readonly genotype: Genotype
    readonly p: number
    readonly phase: Readonly<Record<string, Phase>>
    readonly words: string
  }[]
  readonly tell: string
}

/** Beyond this two loci part so often that it hardly matters how they lie. */
const loose = 0.25

/** What nobody tells of a bird of known genotype: a doubt for each group in which it matters, either way equally likely. */
export const phaseDoubts = (founder: string, known: Genotype): readonly PhaseDoubt[] =>
  linkageGroups.flatMap((group) => {
    const unlike = unlikeLoci(group, known)
    const [first, second] = unlike
    if (first === undefined || second === undefined) return []
    const choice = (phase: Phase) => ({
      genotype: {},
      p: 1 / 2,
      phase: { [first]: phase },
      words: phaseWords([first, second], known, phase),
    })
    return [
      {
        id: `${founder} ${unlike.join('-')} phase`,
        founder,
        loci: unlike,
        choices: [choice('coupling'), choice('repulsion')],
        tell: 'Think back which of the parents had which, or count ten chicks: the two commonest kinds are the two ways the genes came.',
      },
    ]
  })

/** Loci of the group at which the bird has two unlike alleles, if the first of them keep together. */
function unlikeLoci({ loci, r }: LinkageGroup, known: Genotype): readonly string[] {
  const unlike = loci.filter((locus) => known[locus]?.length === 2 && known[locus][0] !== known[locus][1])
  const [first, second] = unlike.map((locus) => loci.indexOf(locus))
  if (first === undefined || second === undefined) return []
  return r.slice(first, second).reduce((a, b) => a + b, 0) < loose ? unlike : []
}

/** 'carrying slow feathering and silver from one parent', 'carrying slow feathering from one parent and silver from the other'. */
function phaseWords(loci: readonly [string, string], known: Genotype, phase: Phase): string {
  const [one, other] = loci.map((locus) => markOf(locus, known[locus]!))
  const together = (one!.strand === other!.strand) === (phase === 'coupling')
  const [first, second] = [carriedName(one!.allele), carriedName(other!.allele)]
  return together
    ? `carrying ${first} and ${second} from one parent`
    : `carrying ${first} from one parent and ${second} from the other`
}

/** The allele of the pair that is not wild, and the strand it lies on if the dominant ones lie together. */
function markOf(locus: string, pair: readonly string[]): { readonly allele: string; readonly strand: number } {
  const { wild } = (book as Readonly<Record<string, Locus>>)[locus]!
  const strand = pair[0] === wild ? 1 : 0
  return { allele: pair[strand]!, strand }
}

/**
 * What a keeper sees of linked traits together, as a key: two ways round give the same kinds of chick in other
 * shares, which the families of looks do not tell apart.
 */
export function linkedLooks({ M, F }: Outcome): string {
  const shares = new Map<string, number>()
  for (const [sex, { kinds }] of [
    ['M', M],
    ['F', F],
  ] as const)
    for (const { share, look } of kinds) {
      const { chick, plumage, form, shank } = look
      const seen = [
        chick.wing,
        chick.ground,
        plumage.barring,
        plumage.white,
        shank,
        form.comb,
        form.crest,
        form.feather,
        form.legs,
        look.shellBlue,
      ]
      const key = [sex, ...seen].join()
      shares.set(key, (shares.get(key) ?? 0) + share)
    }
  return [...shares]
    .map(([key, share]) => `${key}=${share.toFixed(1)}`)
    .filter((one) => !one.endsWith('=0.0'))
    .toSorted()
    .join(' ')
}

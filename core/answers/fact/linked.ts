// core/answers/fact/linked.ts: do two genes travel together: on one chromosome or not, and how often they part.
import type { FactAnswer, Source } from '../../answer.ts'
import { linkageGroups } from '../../data/linkage.ts'
import { loci, type LocusId } from '../../data/loci.ts'
import { parting } from '../../data/parting.ts'
import { joinIntervals } from '../../engine/meiosis.ts'
import { f64 } from '../../engine/num.ts'
import { carriedName } from '../../flock/carriedName.ts'
import type { LinkageGroup } from '../../vocabulary.ts'

type Parting = (typeof parting)[string]

type Linked = Pick<FactAnswer, 'about' | 'certainty' | 'verdict'> & {
  readonly says: readonly string[]
  readonly sources: readonly Source[]
}

/** In the keepers' word for the form that is not wild: 'silver', 'slow feathering'. */
function nameOf(locus: LocusId): string {
  const { alleles, wild, name } = loci[locus]
  const called = alleles.find((allele) => allele !== wild && carriedName(allele) !== allele)
  return called === undefined ? name : carriedName(called)
}

/** What "they" do, for two of one group. Neighbours as they were measured; others reckoned over the genes between. */
function partingWords({ loci: order, r }: LinkageGroup, one: LocusId, other: LocusId): Parting {
  const [from = 0, to = 0] = [order.indexOf(one), order.indexOf(other)].toSorted((a, b) => a - b)
  const known = parting[`${order[from]} ${order[to]}`]
  if (known) return known
  const steps = order.slice(from, to).map((locus, i) => parting[`${locus} ${order[from + i + 1]}`])
  const reckoned = r.slice(from, to).reduce((a, b) => joinIntervals(a, b, f64))
  return steps.every((step) => step?.status === 'read')
    ? {
        words: `part in roughly ${Math.round(reckoned * 100)} of 100 chicks, reckoned over the gene between`,
        status: 'read',
      }
    : { words: 'part now and then; how often was not measured', status: 'from memory' }
}

/**
 * @param one, other two loci, not the same
 * @returns the verdict first; a figure from memory carries its hedge
 */
export function linked(one: LocusId, other: LocusId): Linked {
  const both = `${nameOf(one)} and ${nameOf(other)}`
  const about = `linkage of ${both}`
  const sources = [...loci[one].sources, ...loci[other].sources]
  const group = linkageGroups.find(({ loci: members }) => members.includes(one) && members.includes(other))
  const onZ = loci[one].on === 'Z' && loci[other].on === 'Z'
  const reshuffles = onZ
    ? 'Only a cock with two different Zs reshuffles them; a hen hands her one Z to her sons whole.'
    : 'Cocks and hens reshuffle them alike.'
  if (group) {
    const { words, status } = partingWords(group, one, other)
    return {
      about,
      certainty: status === 'read' ? 'sure' : 'usual',
      verdict: 'true',
      says: [
        `Yes: ${both} are on one chromosome and linked; they ${words}.`,
        'Which forms travel together depends on how the bird got them: both from one parent, or one from each.',
        reshuffles,
      ],
      sources: group.sources,
    }
  }
  if (onZ)
    return {
      about,
      certainty: 'usual',
      verdict: 'partly',
      says: [
        `Partly: ${both} both sit on the Z, but so far apart that they part almost as by chance.`,
        reshuffles,
        'Both are sex-linked all the same: a hen hands them to her sons alone.',
      ],
      sources,
    }
  const zOne = [one, other].find((locus) => loci[locus].on === 'Z')
  return {
    about,
    certainty: 'usual',
    verdict: 'false',
    says: [
      zOne === undefined
        ? `No: ${both} are handed on independently, as far as is known.`
        : `No: ${nameOf(zOne)} sits on the Z and ${nameOf(zOne === one ? other : one)} does not, so they are handed on independently.`,
      'A bird that has two forms of each hands on all four combinations alike.',
    ],
    sources,
  }
}

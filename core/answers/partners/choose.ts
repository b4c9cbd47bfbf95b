// core/answers/partners/choose.ts: three to five names out of all candidates: varied ones, plain signs before rare ones.
import { breedNamed } from '../../breeds.ts'
import { nameOfBird } from '../../cross/seen.ts'
import { harmful } from '../../data/partners.ts'
import type { BirdRef, PartnersQuestion } from '../../question.ts'
import { carriesOf } from './quick.ts'
import { playThrough, type Candidate } from './search.ts'
import { workingCase } from './condition.ts'
import { isUncommon } from './why.ts'

/** plain: they serve. uncommon: only by a colour few keepers have. nearest: none serves, these come closest. none: nothing. */
export type How = 'plain' | 'uncommon' | 'nearest' | 'none'
/** `safe`: mates that keep chicks alive, named before any other. */
export type Chosen = {
  readonly safe: readonly Candidate[]
  readonly candidates: readonly Candidate[]
  readonly how: How
}

const mostNames = 5
const mostOfOneSign = 3

const signOf = ({ crossed }: Candidate): string => workingCase(crossed, ['sexable']).sexing.signs[0]?.sign ?? ''
const familyOf = ({ bird }: Candidate): string => breedNamed(bird.breed ?? '')?.family ?? nameOfBird(bird)

/** One of each family, in order of worth. */
const oneOfAFamily = (candidates: readonly Candidate[]): readonly Candidate[] =>
  candidates.filter((one, at) => candidates.findIndex((other) => familyOf(other) === familyOf(one)) === at)

/** No sign more than three times while another one has birds to offer. */
function varied(candidates: readonly Candidate[]): readonly Candidate[] {
  const one = oneOfAFamily(candidates)
  const first = one.filter(
    (candidate, at) => one.slice(0, at).filter((other) => signOf(other) === signOf(candidate)).length < mostOfOneSign,
  )
  const kept = [...first.slice(0, mostNames), ...one.filter((candidate) => !first.includes(candidate))]
  return kept.slice(0, mostNames).toSorted((a, b) => b.worth - a.worth)
}

/** The same mate may serve several of the keeper's birds: it stands once, with the bird it serves best. */
function onceEach(lists: readonly (readonly Candidate[])[]): readonly Candidate[] {
  const byMate = new Map<string, Candidate[]>()
  for (const one of lists.flat()) {
    const key = nameOfBird(one.bird)
    byMate.set(key, [...(byMate.get(key) ?? []), one])
  }
  const total = (all: readonly Candidate[]): number => all.reduce((sum, { worth }) => sum + worth, 0)
  return [...byMate.values()]
    .toSorted((a, b) => total(b) - total(a))
    .map((all) => all.toSorted((a, b) => b.worth - a.worth)[0]!)
}

const has = (own: BirdRef, locus: string, allele: string): boolean => carriesOf(own)(locus, allele) >= 0.2

/** With a bird that carries what kills in two copies, and no other wish told, the safe mate comes first. */
function safeMates({ for: own, wanted, goals, among }: PartnersQuestion): readonly Candidate[] {
  if (goals.length > 0 || among.length > 0) return []
  return own.flatMap((bird) =>
    Object.entries(harmful)
      .filter(([locus, { allele, safe }]) => safe !== '' && has(bird, locus, allele))
      .map(([, { safe }]) => playThrough({ own: bird, wanted, goals: ['sexable'] }, { breed: safe }, false)),
  )
}

export function choose(lists: readonly (readonly Candidate[])[], question: PartnersQuestion): Chosen {
  const all = onceEach(lists.map((list) => list.filter(({ serves }) => serves)))
  const sexed = (question.goals.length === 0 && question.chicks === undefined) || question.goals.includes('sexable')
  const plain = sexed ? all.filter(({ crossed }) => !isUncommon(workingCase(crossed, ['sexable']))) : all
  const ownRarity =
    question.among.length > 0 || question.for.some((own) => has(own, 'choc', 'choc') || has(own, 'Fm', 'Fm'))
  const safe = safeMates(question)
  const serving = ownRarity || plain.length === 0 ? all : plain
  if (serving.length > 0)
    return { safe, candidates: varied(serving), how: ownRarity || plain.length > 0 ? 'plain' : 'uncommon' }
  if (sexed) return { safe, candidates: [], how: 'none' }
  const near = varied(onceEach(lists)).slice(0, 3)
  return { safe, candidates: near, how: near.length > 0 ? 'nearest' : 'none' }
}

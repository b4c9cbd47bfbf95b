// core/flock/names.ts: birds, chicks and alleles of a debate in words.
import type { Tally } from '../question.ts'
import { type Debated, mostCopies } from './debated.ts'
import { copiesLeft, type Member } from './member.ts'

/** A name of the keeper's own, and not one made for the debate ('the cock', 'a hen'). */
export const isOwnName = (name: string): boolean => !/^(the|a|an|my|his|her) /iu.test(name)

export type Pronouns = { readonly he: string; readonly his: string; readonly kind: string; readonly mate: string }
export const pronouns = (sex: 'M' | 'F' | 'U'): Pronouns => {
  if (sex === 'M') return { he: 'he', his: 'his', kind: 'cock', mate: 'hen' }
  if (sex === 'F') return { he: 'she', his: 'her', kind: 'hen', mate: 'cock' }
  return { he: 'it', his: 'its', kind: 'bird', mate: 'mate' }
}

/** '7 dark chicks', '1 lavender daughter', '3 clear sons'. */
export function tallyWords({ shows, clear }: Debated, tally: Tally, showing: boolean): string {
  const young = { M: 'son', F: 'daughter', U: 'chick' }[tally.sex ?? 'U']
  const look = tally.look ?? (showing ? shows : clear)
  return `${tally.count} ${look} ${young}${tally.count === 1 ? '' : 's'}`
}

/** 'a lavender hen', 'Daisy (lavender)', 'a hen known to carry it', 'a Lavender Orpington hen', 'the hen'. */
export function mateWords(debated: Debated, { name, sex, bird, ...member }: Member): string {
  const kind = pronouns(sex).kind
  const left = copiesLeft(debated, { name, sex, bird, ...member })
  const showing = left.length > 0 && left.every((copies) => copies === mostCopies(debated, sex))
  const split = left.length > 0 && !left.includes(0) && !showing
  if (isOwnName(name)) return showing ? `${name} (${debated.shows})` : split ? `${name} (a known carrier)` : name
  if (split) return `a ${kind} known to carry it`
  if (bird?.breed !== undefined)
    return `${article(breedWords(bird.breed).toLowerCase())} ${breedWords(bird.breed)} ${kind}`
  return showing ? `${article(debated.shows)} ${debated.shows} ${kind}` : name
}

/** 'Light Sussex', and 'lavender' for a Lavender bird of no told breed. */
const breedWords = (breed: string): string => (breed.endsWith(' bird') ? breed.slice(0, -5).toLowerCase() : breed)

/** 'an unbarred hen', 'a lavender hen'. */
export const article = (word: string): 'a' | 'an' => (/^[aeiou]/u.test(word) ? 'an' : 'a')

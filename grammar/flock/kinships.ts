// grammar/flock/kinships.ts: all that one clause tells of birds by name: whole, or piece by piece, "he" and "both" standing for names before.
import { readKinship } from '../parse.ts'
import type { Kinship } from '../build/kinship.ts'
import type { Token } from '../token.ts'
import type { Sex } from '../../core/vocabulary.ts'

type Tokens = readonly Token[]
/** Birds named before, the last one last, with their sex where it is known. */
export type Before = { readonly names: Tokens; readonly sexOf: (name: Token) => Sex | undefined }

const isJoint = ({ type }: Token): boolean => type === 'comma' || type === 'and' || type === 'plus'

/** Pieces between commas and ands, with the joints kept. */
function piecesOf(clause: Tokens): readonly Tokens[] {
  const pieces: Token[][] = [[]]
  for (const token of clause) {
    if (isJoint(token)) pieces.push([token], [])
    else pieces.at(-1)!.push(token)
  }
  return pieces.filter(({ length }) => length > 0)
}

/** The names that "he", "she's", "his" or "both" at the head of a piece stand for, and what is said of them. */
function pointed(piece: Tokens, { names, sexOf }: Before): readonly Tokens[] {
  const [first, ...rest] = piece
  if (!first) return []
  const word = first.word
  const group = names.slice(-lastGroup(names))
  if (/^(?:both|they|theyre|all)$/u.test(word)) return group.length > 1 ? group.map((name) => [name, ...rest]) : []
  const sex = /^(?:he|hes|his|him)$/u.test(word) ? 'M' : /^(?:she|shes|her|hers)$/u.test(word) ? 'F' : undefined
  if (sex === undefined) return [piece]
  const name = names.findLast((one) => (sexOf(one) ?? sex) === sex)
  if (!name) return []
  const is: Token = { ...first, type: 'is' }
  return [/^(?:hes|shes)$/u.test(word) && rest[0]?.type !== 'is' ? [name, is, ...rest] : [name, ...rest]]
}
/** "Dot and Flo, both black": the names told together last. */
function lastGroup(names: Tokens): number {
  let many = 1
  while (many < names.length && names.at(-many)!.at - names.at(-many - 1)!.end < 8) many += 1
  return many
}

/** "Dot and Flo are black hens" as one clause for each name. */
function oneByOne(clause: Tokens): readonly Tokens[] {
  const from = clause.findIndex(
    ({ type }, i) =>
      type === 'name' && clause[i + 1] !== undefined && isJoint(clause[i + 1]!) && clause[i + 2]?.type === 'name',
  )
  if (from < 0) return []
  let to = from
  while (clause[to + 1] && isJoint(clause[to + 1]!) && clause[to + 2]?.type === 'name') to += 2
  const names = clause.slice(from, to + 1).filter(({ type }) => type === 'name')
  return names.map((name) => [...clause.slice(0, from), name, ...clause.slice(to + 1)])
}

const isParents = (token: Token | undefined): boolean => token?.word === 'parents'
const made = (name: Token, part: 'sire' | 'dam'): Token => ({
  ...name,
  type: 'name',
  said: `the ${part} of ${name.said.replace(/['’]s$/u, '')}`,
})

/** "Bert's parents are Sid and Daisy"; "his parents are both black". */
function ofParents(clause: Tokens): readonly Kinship[] {
  const [of, parents, ...rest] = clause
  if (of?.type !== 'name' || !isParents(parents)) return []
  const said = rest.filter(({ type, word }) => type !== 'is' && type !== 'and' && type !== 'comma' && word !== 'both')
  const [one, other] = said
  if (one?.type === 'name' && other?.type === 'name' && said.length === 2)
    return [{ kind: 'parents', of, either: [one, other] }]
  const [sire, dam] = [made(of, 'sire'), made(of, 'dam')]
  const is = [sire, dam].flatMap((name) => readKinship([name, ...said]).slice(0, 1))
  return is.length === 2 ? [{ kind: 'parents', of, sire, dam }, ...is] : []
}

function readWhole(clause: Tokens): readonly Kinship[] {
  const parents = ofParents(clause)
  if (parents.length > 0) return parents
  const [whole] = readKinship(clause)
  return whole ? [whole] : []
}

function readPiece(clause: Tokens, before: Before): readonly Kinship[] {
  const own = readWhole(clause)
  if (own.length > 0) return own
  const several = oneByOne(clause).map((one) => readWhole(one))
  if (several.length > 0 && several.every((told) => told.length > 0)) return several.flat()
  const said = pointed(clause, before).filter((piece) => piece !== clause)
  return said.flatMap((piece) => readWhole(piece))
}

const questionWord =
  /^(?:is|are|was|does|do|did|can|could|has|have|will|would|might|may|who|whos|which|what|whats|how|so|if|is he|is she)\b/iu
/** A piece that asks tells nothing. */
export const isAskingPiece = (clause: Tokens): boolean => questionWord.test(clause[0]?.said ?? '')

/** Longest pieces first, from the left; what tells nothing is passed over. */
export function kinshipsOf(clause: Tokens, before: Before): readonly Kinship[] {
  const pieces = piecesOf(clause)
  const found: Kinship[] = []
  let names = before.names
  for (let from = 0; from < pieces.length;) {
    let read = 0
    for (let to = Math.min(pieces.length, from + 9); to > from && read === 0; to -= 1) {
      const piece = pieces.slice(from, to).flat()
      if (isJoint(piece[0]!) || isJoint(piece.at(-1)!) || isAskingPiece(piece)) continue
      const told = readPiece(piece, { ...before, names })
      if (told.length === 0) continue
      found.push(...told)
      names = [...names, ...piece.filter(({ type }) => type === 'name')]
      read = to - from
    }
    if (read === 0) names = [...names, ...pieces[from]!.filter(({ type }) => type === 'name')]
    from += Math.max(read, 1)
  }
  return found
}

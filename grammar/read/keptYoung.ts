// grammar/read/keptYoung.ts: "kept two sons from A x B, put them back over B": a bird is kept of one mating, and put to another.
import { breedNamed } from '../../core/breeds.ts'
import { chicksCounted } from './chicks.ts'
import { crossOf } from './crossOf.ts'
import { isHybrid, type Reader } from './common.ts'
import { pairsIn, type Pair } from './pairs.ts'
import { readingOf, type Reading } from '../reading.ts'
import type { Bird } from '../bird.ts'
import type { Token } from '../token.ts'
import type { Sex } from '../../core/vocabulary.ts'

/** The young bird, the words that tell its parents, and those that tell to whom it is put. */
type Kept = { readonly sex: Sex; readonly origin: readonly Token[]; readonly rest: readonly Token[] }

const isName = ({ type }: Token): boolean => type === 'breed' || type === 'family'
const isLink = ({ type }: Token): boolean => type === 'over' || type === 'under'
const isParent = (token: Token): boolean => (token.type === 'cock' || token.type === 'hen') && token.parent
const isBreak = ({ type, word }: Token): boolean =>
  type === 'stop' || type === 'comma' || type === 'and' || type === 'cross' || /\bback\b/u.test(word)

function sexOf(token: Token | undefined): Sex | undefined {
  if (!token || isParent(token)) return undefined
  if (token.type === 'cock' || token.type === 'hen') return token.type === 'cock' ? 'M' : 'F'
  if (token.type === 'kin') return token.kin === 'son' ? 'M' : token.kin === 'daughter' ? 'F' : undefined
  return token.type === 'outOf' && /\b(?:son|daughter)s? of$/u.test(token.word)
    ? token.word.startsWith('s')
      ? 'M'
      : 'F'
    : undefined
}

/** "a pullet from A on B. put her back to ...": the parents behind the bird, up to the next break or a second link. */
function bredFrom(tokens: readonly Token[]): Kept | undefined {
  const at = tokens.findIndex(
    (token, i) => token.type === 'outOf' && (sexOf(tokens[i - 1]) ?? sexOf(token)) !== undefined,
  )
  const sex = sexOf(tokens[at - 1]) ?? sexOf(tokens[at])
  const behind = tokens.slice(at + 1)
  const links = behind.flatMap((token, i) => (isLink(token) ? [i] : []))
  const end = behind.findIndex((token, i) => isBreak(token) || i === links[1])
  return at < 0 || sex === undefined || end < 0
    ? undefined
    : { sex, origin: behind.slice(0, end), rest: behind.slice(end) }
}

/** "a crossbred cockerel - dad A, mum B - over ...": each parent is told by itself. */
function partedFrom(tokens: readonly Token[]): Kept | undefined {
  const from = tokens.findIndex(isParent)
  const second = tokens.findIndex((token, i) => i > from && isParent(token) && token.type !== tokens[from]?.type)
  const mixed = tokens.findIndex(({ type, word }) => type === 'cross' || type === 'half' || /^mix|mongrel/u.test(word))
  const sex = tokens.slice(0, Math.max(from, 0)).map(sexOf).findLast(Boolean)
  const end = tokens.findIndex((token, i) => i > second && isBreak(token) && tokens.slice(second, i).some(isName))
  return from < 0 || second < 0 || mixed < 0 || mixed > from || sex === undefined || end < 0
    ? undefined
    : { sex, origin: tokens.slice(from, end), rest: tokens.slice(end) }
}

/** "A x B pullets, put to B again": the parents before the bird. */
function crossedFrom(tokens: readonly Token[]): Kept | undefined {
  const over = tokens.findIndex(({ word, type }) => type === 'over' && word === 'x')
  const at = tokens.findIndex((token, i) => i > over && sexOf(token) !== undefined)
  const between = tokens.slice(over + 1, Math.max(at, 0))
  const [next] = tokens.slice(at + 1)
  if (over < 1 || at < 0 || !between.some(isName) || between.some(isBreak) || !next || !isBreak(next)) return undefined
  let from = over
  while (from > 0 && (isName(tokens[from - 1]!) || tokens[from - 1]!.type === 'colour')) from -= 1
  const put = tokens.slice(at + 1, at + 5).some((token) => isLink(token) && !/^(?:x|on|to|with|w)$/u.test(token.word))
  return put ? { sex: sexOf(tokens[at])!, origin: tokens.slice(from, at), rest: tokens.slice(at + 1) } : undefined
}

const read = (tokens: readonly Token[], { text }: Reading): Reading =>
  readingOf(text.slice(tokens[0]?.at ?? 0, tokens.at(-1)?.end ?? 0))

const familyOf = ({ ref }: Bird): string | undefined => breedNamed(ref.breed ?? '')?.family

/** The bird that is named there, a sibling, or the parent of the other sex: "to her father", "over the same hens". */
function mateIn(rest: Reading, young: Bird, parent: Bird): Bird | undefined {
  const { scene, tokens } = rest
  const all = [...scene.matings.flatMap(({ sires, dams }) => [...sires, ...dams]), ...scene.birds]
  const named = all.filter((bird) => bird.ref.breed !== undefined && !isHybrid(bird))
  const [mate] = named
  if (new Set(named.map(({ ref }) => ref.breed)).size > 1) return undefined
  if (mate) {
    const bare = mate.saidOf.parts.some(({ type }) => type === 'family') && familyOf(mate) === familyOf(parent)
    return bare ? parent : mate
  }
  if (tokens.some((token) => token.type === 'kin' && token.kin === 'sibling')) return young
  const part = parent.sex === 'M' ? 'cock' : 'hen'
  const told = tokens.some((token) => token.type === part)
  return told ? parent : undefined
}

export const readKeptYoung: Reader = (reading) => {
  const { tokens } = reading
  const kept = bredFrom(tokens) ?? partedFrom(tokens) ?? crossedFrom(tokens)
  if (!kept || reading.has('carry', 'test', 'father') || chicksCounted(tokens).some(({ look }) => look.length > 0))
    return undefined
  const link = kept.rest.findIndex(isLink)
  const [pair, ...others] = pairsIn(read(kept.origin, reading))
  if (link < 0 || !pair || others.length > 0) return undefined
  const cross = { sire: pair.sire.ref, dam: pair.dam.ref }
  const own = kept.sex === 'M' ? pair.sire : pair.dam
  const young: Bird = { ...own, named: true, ref: { cross }, others: [] }
  const parent: Bird = kept.sex === 'M' ? { ...pair.dam, sex: 'F' } : { ...pair.sire, sex: 'M' }
  const mate = mateIn(read(kept.rest.slice(link), reading), young, parent)
  if (!mate) return undefined
  const next: Pair = kept.sex === 'M' ? { sire: young, dam: mate, by: 'sex' } : { sire: mate, dam: young, by: 'sex' }
  return crossOf([next], reading)
}

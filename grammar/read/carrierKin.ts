// grammar/read/carrierKin.ts: what a debate is told of the parents, brothers, sisters and grandparents of the bird in question.
import { breedNamed, genesOf } from '../../core/breeds.ts'
import { traitsIn } from '../bird.ts'
import { traits } from '../words/traits.ts'
import type { Reading } from '../reading.ts'
import type { Token } from '../token.ts'
import type { FlockBird } from '../../core/question.ts'
import type { Sex } from '../../core/vocabulary.ts'

export type Trait = { readonly allele: string; readonly locus: string }

/** What is said of a relative as far as the trait goes. */
type Status = Pick<FlockBird, 'shows' | 'carries'>

export const isOf = (tokens: readonly Token[], { allele }: Trait): boolean =>
  traitsIn(tokens).some((id) => traits[id]?.allele === allele || (allele === 'I' && id === 'recessive white'))

const isLook = ({ type }: Token): boolean => type === 'colour' || type === 'trait'
const threw = /^(?:threw|throws|thrown|gave|gives|given|produced|produces|had|made|sired|hatched|bred)$/u
const isSmall = ({ type, word }: Token): boolean =>
  type === 'filler' || (type === 'unknown' && !threw.test(word)) || type === 'is' || type === 'my'

const isKinWord = (token: Token): boolean =>
  token.type === 'kin' ||
  ((token.type === 'cock' || token.type === 'hen') && token.parent) ||
  /^parents?$/u.test(token.word)

/** "a White Rock mother", "his dad was a Lavender Orpington": a breed that has two copies of it shows it. */
const isBreedOf = (token: Token | undefined, { allele, locus }: Trait): boolean => {
  const breed = token?.type === 'breed' ? breedNamed(token.names[0]!) : undefined
  const gene = breed && genesOf(breed)[locus]
  return gene?.kind === 'fixed' && gene.allele === allele
}

/** Words about the relative at `at`: right before it, and behind it up to the next one or the end of the sentence. */
function statusOf(tokens: readonly Token[], at: number, trait: Trait): Status {
  const before = tokens.slice(Math.max(0, at - 3), at).filter((token) => !isSmall(token))
  const near = before.at(-1)
  if (near && isLook(near) && isOf([near], trait)) {
    const split = before.at(-2)
    return split?.type === 'carries' || split?.type === 'split' ? carries(trait, true) : shows(trait, true)
  }
  if (near?.type === 'carries' || near?.type === 'split') return carries(trait, true)
  if (isBreedOf(near, trait)) return shows(trait, true)
  const end = tokens.findIndex(
    (token, i) => i > at && (token.type === 'stop' || isKinWord(token) || isAsking(tokens, i)),
  )
  const after = tokens.slice(at + 1, Math.min(end < 0 ? tokens.length : end, at + 9)).filter((token) => !isSmall(token))
  const stop = after.findIndex(({ type }) => type === 'comma' || type === 'cock' || type === 'hen')
  const said = stop < 0 ? after : after.slice(0, stop)
  const look = said.find(isLook)
  const not = said.some(({ type }) => type === 'not')
  if (!not && isBreedOf(said[0], trait)) return shows(trait, true)
  if (said.some(({ type }) => type === 'carries' || type === 'split'))
    return look && !isOf([look], trait) ? {} : carries(trait, !not)
  if (!look) return near && isLook(near) ? shows(trait, false) : {}
  if (said.some(({ word }) => threw.test(word))) return isOf([look], trait) && !not ? carries(trait, true) : {}
  return shows(trait, isOf([look], trait) !== not)
}
const shows = ({ allele }: Trait, yes: boolean): Status => ({ shows: { [allele]: yes } })
const carries = ({ allele }: Trait, yes: boolean): Status => ({ carries: { [allele]: yes } })

/** "..., is he split": here the question begins. */
const isAsking = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]?.type === 'comma' &&
  /^(?:is|does|do|could|can|what|whats|how|so|odds|chance)\b/u.test(tokens[at + 1]?.word ?? '')

/** Words looked back over for the relative whose chicks are counted. */
const farKin = 40

/** "his brother threw a white chick": the chicks counted at this place of the text are a relative's. */
export function isOfKin(tokens: readonly Token[], place: number): boolean {
  const at = tokens.findIndex((token) => token.at >= place)
  const near = Math.max(0, at - farKin)
  const start = near + tokens.slice(near, at).findLastIndex(({ type }) => type === 'stop') + 1
  const verb = tokens.slice(start, at).findLastIndex(({ word }) => threw.test(word))
  if (verb < 0) return false
  const subject = tokens
    .slice(start, start + verb)
    .findLast(
      (token) => isKinWord(token) || token.type === 'cock' || token.type === 'hen' || /^(?:he|she)$/u.test(token.word),
    )
  return subject !== undefined && isKinWord(subject)
}

/** "both parents split", "split x split", "out of two splits". */
const bothSplit =
  /both (?:of )?(?:his |her |its |the |my )*(?:parents )?(?:of (?:\w+ ){1,5})?(?:were |are |r |of them |sides |birds |being |a |all )*(?:split|carr|het)|parents (?:are |were |both |is |all |known |to be )*(?:split|carr|het)|split (?:x|to|over|with|on) (?:a )?split|(?:two|2|pair of|of) splits/u

/** "odds my pair are both carrying": that is asked, not told. */
function isBothSplit(text: string): boolean {
  const found = bothSplit.exec(text)
  if (!found) return false
  const asked = /\b(?:are|is|do|does|could|can|if|whether|odds|chance|chances)\b/u.test(
    text.slice(Math.max(0, found.index - 60), found.index),
  )
  return !(asked && /^both (?:carr|split|het|of (?:them|my|the))/u.test(found[0]) && !/parents/u.test(found[0]))
}

const sexOf = (token: Token): Sex | undefined => {
  if (token.type === 'cock') return 'M'
  if (token.type === 'hen') return 'F'
  if (/^(?:half |full )?(?:sis|sister)/u.test(token.word)) return 'F'
  return /^(?:half |full )?bro/u.test(token.word) ? 'M' : undefined
}

/** "he's out of a lavender hen": birds behind those words are his parents; "chicks out of …" are another matter. */
function outOf(tokens: readonly Token[], trait: Trait): readonly { readonly sex: Sex; readonly status: Status }[] {
  const at = tokens.findIndex(({ type }, i) => {
    if (type !== 'outOf' && type !== 'between') return false
    const before = tokens.slice(0, i).findLast((token) => !isSmall(token) && token.type !== 'not')
    return (
      before !== undefined && (['his', 'her', 'their', 'cock', 'hen'].includes(before.type) || before.type === 'breed')
    )
  })
  if (at < 0) return []
  const end = tokens.findIndex(({ type }, i) => i > at && (type === 'stop' || type === 'comma'))
  return tokens.slice(at + 1, end < 0 ? undefined : end).flatMap((token, i, all) => {
    if ((token.type !== 'cock' && token.type !== 'hen') || token.parent) return []
    return [
      {
        sex: token.type === 'cock' ? ('M' as const) : ('F' as const),
        status: statusOf(all.slice(0, i + 1), i, trait),
      },
    ]
  })
}

const sire = 'the sire'
const dam = 'the dam'
const nameOfParent = (sex: Sex): string => (sex === 'M' ? sire : dam)

/**
 * The relatives told of, and the bird itself with its parents.
 *
 * @param chicks whether chicks are told of: birds they are out of are mates then, not parents
 */
export function kinOf({ tokens, words }: Reading, of: string, trait: Trait, chicks: boolean): readonly FlockBird[] {
  const found: FlockBird[] = []
  const add = (bird: FlockBird): unknown => found.push(bird)
  const both = isBothSplit(words.join(' '))
  for (const [i, token] of tokens.entries()) {
    if (token.type === 'kin' && (token.kin === 'grandfather' || token.kin === 'grandmother')) {
      const female = token.kin === 'grandmother'
      add({ name: 'the grandparent', sex: female ? 'F' : 'M', ...statusOf(tokens, i, trait) })
      add({
        name: 'the parent between',
        sex: 'M',
        ...(female ? { dam: 'the grandparent' } : { sire: 'the grandparent' }),
        ...shows(trait, false),
      })
      add({ name: of, sire: 'the parent between' })
    } else if (token.type === 'kin' && token.kin === 'sibling') {
      const half = token.word.startsWith('half')
      const sex = sexOf(token)
      const status = statusOf(tokens, i, trait)
      add({ name: sire, sex: 'M' })
      add({
        name: half ? 'the half sibling' : 'the sibling',
        ...(sex ? { sex } : {}),
        sire: sire,
        ...(half ? {} : { dam: dam }),
        ...status,
      })
      add({ name: of, sire: sire, ...(half ? {} : { dam: dam }) })
    } else if ((token.type === 'cock' || token.type === 'hen') && token.parent) {
      const name = nameOfParent(token.type === 'cock' ? 'M' : 'F')
      add({ name, sex: token.type === 'cock' ? 'M' : 'F', ...statusOf(tokens, i, trait) })
      add({ name: of, ...(token.type === 'cock' ? { sire: name } : { dam: name }) })
    } else if (token.word === 'parents' && !both) {
      const { carries: thrown, ...look } = statusOf(tokens, i, trait)
      add({ name: sire, sex: 'M', ...look })
      add({ name: dam, sex: 'F', ...look })
      if (thrown?.[trait.allele]) add({ name: 'a sibling', sire: sire, dam: dam, ...shows(trait, true) })
      add({ name: of, sire: sire, dam: dam })
    }
  }
  if (both) {
    add({ name: sire, sex: 'M', ...carries(trait, true) })
    add({ name: dam, sex: 'F', ...carries(trait, true) })
    add({ name: of, sire: sire, dam: dam })
  }
  if (!chicks && found.length === 0)
    for (const { sex, status } of outOf(tokens, trait)) {
      add({ name: nameOfParent(sex), sex, ...status })
      add({ name: of, ...(sex === 'M' ? { sire: sire } : { dam: dam }) })
    }
  return found
}

/** "over his own daughters", "back to 4 of his daughters": how many, 0 where that is not told; undefined where it is not so. */
export function ownDaughters({ tokens }: Reading): { readonly sex: Sex; readonly count: number } | undefined {
  const at = tokens.findIndex((token) => token.type === 'kin' && (token.kin === 'daughter' || token.kin === 'son'))
  const kin = tokens[at]
  if (kin?.type !== 'kin') return undefined
  const before = tokens.slice(Math.max(0, at - 6), at).filter(({ type }) => type !== 'filler' && type !== 'unknown')
  const joint = before.findLastIndex(
    ({ type }) => type === 'over' || type === 'under' || type === 'cross' || type === 'by',
  )
  const between = before.slice(joint + 1)
  const mated =
    joint >= 0 &&
    between.every(({ type }) => ['his', 'her', 'their', 'number', 'of', 'my', 'colour', 'split'].includes(type))
  if (!mated) return undefined
  const number = between.find(({ type }) => type === 'number')
  const one = /[^s]$/u.test(kin.word)
  return {
    sex: kin.kin === 'daughter' ? 'F' : 'M',
    count: number?.type === 'number' ? Math.min(30, Math.max(1, Math.round(number.value))) : one ? 1 : 0,
  }
}

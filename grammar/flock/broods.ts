// grammar/flock/broods.ts: chicks told of a pair of birds by name, or of a hen and several cocks of which one is the sire.
import { chicksCounted, isClear, saidOfAll } from '../read/chicks.ts'
import { isNewName, isTold, nameOf } from './names.ts'
import type { Brood, Flock, Tally } from '../../core/question.ts'
import type { Sex } from '../../core/vocabulary.ts'
import type { Token } from '../token.ts'

type Tokens = readonly Token[]

const lookOf = (look: Tokens, not: boolean): string =>
  not || look.every(isClear)
    ? 'clear'
    : look
        .filter((token) => !isClear(token))
        .map(({ word }) => word)
        .join(' ')

/** Chicks counted, as tallies by their look; those left over of all are clear. */
export function talliesIn(tokens: Tokens): readonly Tally[] {
  const counted = chicksCounted(tokens)
  const seen = counted.filter(({ look }) => look.length > 0)
  const total = counted.find(({ look, of }) => look.length === 0 && of === undefined)
  const tallies = seen.flatMap(({ count, of, sex, look, not }): readonly Tally[] => {
    const own = sex ? { sex } : {}
    const rest = of !== undefined && of > count ? [{ count: of - count, ...own, look: 'clear' }] : []
    return [...(count > 0 ? [{ count, ...own, look: lookOf(look, not) }] : []), ...rest]
  })
  if (!total) return tallies
  const own = total.sex ? { sex: total.sex } : {}
  if (seen.length === 0) {
    const all = saidOfAll(tokens)
    return [{ count: total.count, ...own, ...(all ? { look: lookOf(all.look, all.not) } : {}) }]
  }
  const left = total.count - tallies.reduce((sum, { count }) => sum + count, 0)
  return left > 0 ? [...tallies, { count: left, ...own, look: 'clear' }] : tallies
}

export type Pair = { readonly sires: readonly string[]; readonly dam: string }

const isMating = ({ type }: Token): boolean => ['over', 'under', 'cross', 'plus'].includes(type)

/** The birds by name that a sentence puts together; several cocks where it puts them to one hen. */
export function pairIn(clause: Tokens, flock: Flock): Pair | undefined {
  const named = clause.filter(
    (token) => isTold(token, flock) || (token.type === 'name' && isNewName(token, flock)) || isLowerPair(token, clause),
  )
  const names = [...new Set(named.map((token) => nameOf(token, flock)))]
  const sexOf = (name: string): Sex | undefined => flock.birds.find((bird) => bird.name === name)?.sex
  const at = clause.findIndex(isMating)
  const by = clause.findIndex(({ type }, i) => type === 'by' || (type === 'outOf' && i > 0))
  if (names.length < 2 || names.length > 5 || clause.some(({ type }) => type === 'or' || type === 'which'))
    return undefined
  if (clause.some((token) => (token.type === 'cock' || token.type === 'hen') && token.parent)) return undefined
  if (names.length === 2) {
    const [one, other] = [names[0]!, names[1]!]
    if (at < 0 && by < 0 && !clause.some(({ type }) => type === 'and')) return undefined
    const turned = sexOf(one) === 'F' || sexOf(other) === 'M' || (clause[by]?.type === 'by' && sexOf(one) !== 'M')
    return turned ? { sires: [other], dam: one } : { sires: [one], dam: other }
  }
  const dams = names.filter((name) => sexOf(name) === 'F')
  const dam = dams.length === 1 ? dams[0]! : at >= 0 ? nameOf(named.at(-1)!, flock) : undefined
  const sires = names.filter((name) => name !== dam && sexOf(name) !== 'F')
  return dam === undefined || sires.length !== names.length - 1 ? undefined : { sires, dam }
}
/** "bert x daisy gave …": two unknown words with a sign of mating between them. */
const isLowerPair = (token: Token, clause: Tokens): boolean => {
  const i = clause.indexOf(token)
  const near = (k: number): boolean =>
    clause[k] !== undefined && clause[k].type === 'over' && /^(?:x|×|\*|over)$/u.test(clause[k].said)
  return (
    token.type === 'name' &&
    ((near(i + 1) && clause[i + 2]?.type === 'name') || (near(i - 1) && clause[i - 2]?.type === 'name'))
  )
}

export const broodOf = ({ sires, dam }: Pair, chicks: readonly Tally[]): Brood => ({
  sire: sires[0]!,
  dam,
  chicks,
  ...(sires.length > 1 ? { rivals: sires.slice(1) } : {}),
})

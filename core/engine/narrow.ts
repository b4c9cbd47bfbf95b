// core/engine/narrow.ts: the diplotypes left to every bird once its readings, parents and chicks have had their say.
import type { Sex } from '../vocabulary.ts'
import type { Domain } from './domain.ts'
import type { Frame } from './frame.ts'
import { pairCount } from './genome.ts'
import { diplotypesOf } from './inherit.ts'
import type { Lumped } from './lump.ts'
import { memo } from './memo.ts'
import type { Bird } from './pedigree.ts'
import type { Reading } from './trait.ts'

/** By bird, then by lumped group. Birds that do not matter have none. */
export type Narrowed = readonly (readonly Domain[])[]

/** The sexes a bird may have, and so those a diplotype of it may belong to. */
export const sexesOf = ({ sex }: Bird): readonly Sex[] => (sex === 'U' ? ['M', 'F'] : [sex])

export const fitsSex = ({ on, haplotypes }: Lumped, diplotype: number, sex: Sex): boolean =>
  on === 'A' || diplotype >= pairCount(haplotypes) === (sex === 'F')

/**
 * Cuts until nothing more can go: every trio of parents and chick, and every reading across groups, as
 * long as something near it changed. Exact: nothing possible is dropped, though where birds are related
 * by more than one way something impossible may stay.
 *
 * @param matters the birds to look at, parents included
 * @returns undefined where some bird has nothing left: what was read cannot all be true
 */
export function narrow<T>(frame: Frame<T>, matters: readonly number[]): Narrowed | undefined {
  const { birds } = frame.pedigree
  if (matters.some((bird) => !canBeAtAll(frame, birds[bird]!))) return undefined
  const left: Domain[][] = birds.map(() => [])
  const starting = startingDomains(frame)
  for (const bird of matters) left[bird] = frame.lumped.map((_, group) => starting(birds[bird]!, group))
  const rules = rulesOf(frame, matters)
  const waiting = new Set(rules)
  const near: Rule[][] = birds.map(() => [])
  for (const rule of rules) for (const bird of rule.birds) near[bird]!.push(rule)
  for (const rule of waiting) {
    waiting.delete(rule)
    for (const bird of rule.apply(left)) for (const other of near[bird]!) waiting.add(other)
  }
  return matters.every((bird) => left[bird]!.every(({ codes }) => codes.length > 0)) ? left : undefined
}

/** Readings that are the same whatever the bird is, but for its sex. */
const canBeAtAll = <T>(frame: Frame<T>, bird: Bird): boolean =>
  sexesOf(bird).some((sex) =>
    frame.across(bird).every((reading) => {
      const { groups, at } = frame.seen(reading)
      return groups.length > 0 || !frame.ring.isZero(at(sex, []))
    }),
  )

/** What a bird's own readings leave of each group; worked once for birds alike. */
const startingDomains = <T>(frame: Frame<T>): ((bird: Bird, group: number) => Domain) =>
  memo(
    (bird: Bird, group: number) =>
      sexesOf(bird)
        .map((sex) => frame.ownName(bird, sex, group))
        .join('\n'),
    (bird: Bird, group: number) => {
      const lumped = frame.lumped[group]!
      const possible = (code: number): boolean =>
        sexesOf(bird).some((sex) => fitsSex(lumped, code, sex) && !frame.ring.isZero(frame.own(bird, sex, group, code)))
      return frame.domains[group]!.of(diplotypesOf(lumped, bird.sex).filter(possible))
    },
  )

/** Something that ties the domains of some birds together; applied, it cuts them and names the birds it cut. */
type Rule = { readonly birds: readonly number[]; readonly apply: (left: Domain[][]) => readonly number[] }

function rulesOf<T>(frame: Frame<T>, matters: readonly number[]): readonly Rule[] {
  const rules: Rule[] = []
  for (const bird of matters) {
    const { parents } = frame.pedigree.birds[bird]!
    if (parents !== undefined) frame.lumped.forEach((_, group) => rules.push(trioRule(frame, bird, parents, group)))
    for (const reading of frame.across(frame.pedigree.birds[bird]!)) rules.push(readingRule(frame, bird, reading))
  }
  return rules
}

const trioRule = <T>(frame: Frame<T>, chick: number, parents: { sire: number; dam: number }, group: number): Rule => {
  const trio = [chick, parents.sire, parents.dam] as const
  return {
    birds: trio,
    apply: (left) => {
      const [own, sire, dam] = [left[chick]![group]!, left[parents.sire]![group]!, left[parents.dam]![group]!]
      const cut = frame.domains[group]!.cut(own, sire, dam)
      return trio.filter((bird, i) => {
        const changed = cut[i] !== left[bird]![group]
        left[bird]![group] = cut[i]!
        return changed
      })
    },
  }
}

function readingRule<T>(frame: Frame<T>, bird: number, reading: Reading): Rule {
  const { groups, at } = frame.seen(reading)
  const sexes = sexesOf(frame.pedigree.birds[bird]!)
  const canBe = (codes: readonly number[]): boolean =>
    sexes.some(
      (sex) =>
        codes.every((code, i) => fitsSex(frame.lumped[groups[i]!]!, code, sex)) && !frame.ring.isZero(at(sex, codes)),
    )
  const apply = (left: Domain[][]): readonly number[] => {
    const possible = combinations(groups.map((group) => left[bird]![group]!.codes)).filter(canBe)
    const cut = groups.map((group, i) => {
      const kept = new Set(possible.map((codes) => codes[i]))
      return frame.domains[group]!.of(left[bird]![group]!.codes.filter((code) => kept.has(code)))
    })
    const changed = groups.some((group, i) => left[bird]![group] !== cut[i])
    groups.forEach((group, i) => (left[bird]![group] = cut[i]!))
    return changed ? [bird] : []
  }
  return { birds: [bird], apply }
}

/** Every way to take one of each list. */
export const combinations = (lists: readonly (readonly number[])[]): number[][] =>
  lists.reduce<number[][]>((made, list) => made.flatMap((one) => list.map((item) => [...one, item])), [[]])

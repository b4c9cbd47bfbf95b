// core/engine/prepare.ts: from a pedigree and what is asked of it to tables: lumped, narrowed, leaves summed out.
import type { Tables } from './factor.ts'
import { type Frame, frame } from './frame.ts'
import { lump, type Use } from './lump.ts'
import { compile, type Model } from './model.ts'
import { narrow, type Narrowed } from './narrow.ts'
import { formatRatio, type Ring } from './num.ts'
import type { Outcome } from './outcome.ts'
import type { Pedigree } from './pedigree.ts'
import type { Reading } from './trait.ts'

export type Prepared<T, W, S> = {
  readonly frame: Frame<T>
  readonly narrowed: Narrowed
  readonly model: Model<T, W, S>
}

export type Asked = {
  readonly uses: readonly Use[]
  /** Birds asked about: they and their ancestors count in, read or not. */
  readonly birds: readonly number[]
  /** Birds of which several groups are asked about at once. */
  readonly together: readonly number[]
}

/** Haplotypes of one group beyond which nothing is worked out: what each pair of them hands on would fill a table of millions. */
const mostHaplotypes = 150

/** Impossible where narrowing shows that the readings cannot all be true; no table is made beyond the budget. */
export function prepare<T, W, S>(
  pedigree: Pedigree,
  asked: Asked,
  tables: Tables<T, W, S>,
  budget: number,
): Outcome<Prepared<T, W, S>> {
  const fitted = fit(pedigree, asked, tables.ring)
  if (fitted.kind !== 'answer') return fitted
  const { frame, narrowed, matters } = fitted.answer
  const compiled = compile(frame, narrowed, tables, { matters, together: asked.together, budget })
  if (compiled.kind !== 'answer') return compiled
  return { kind: 'answer', answer: { frame, narrowed, model: compiled.answer } }
}

type Fitted<T> = Pick<Prepared<T, unknown, unknown>, 'frame' | 'narrowed'> & { readonly matters: readonly number[] }

/** Lumped and narrowed, without a table. */
export function fit<T>(pedigree: Pedigree, { uses, birds }: Asked, ring: Ring<T>): Outcome<Fitted<T>> {
  const matters = whatMatters(pedigree, birds)
  const readings = new Map(
    matters.flatMap((bird) => pedigree.birds[bird]!.readings.map((reading) => [reading.id, reading])),
  )
  const lumped = lump(pedigree.genome, [...[...readings.values()].map(useOf), ...uses])
  const wide = lumped.find(({ haplotypes }) => haplotypes > mostHaplotypes)
  if (wide) return { kind: 'too-wide', group: wide.from, haplotypes: wide.haplotypes, most: mostHaplotypes }
  const seen = frame(pedigree, lumped, ring)
  const narrowed = narrow(seen, matters)
  return narrowed === undefined
    ? { kind: 'impossible' }
    : { kind: 'answer', answer: { frame: seen, narrowed, matters } }
}

export const useOf = ({ loci, weight }: Reading): Use => ({
  loci,
  tell: (sex, genotypes) => formatRatio(weight(sex, genotypes)),
})

/** Birds asked about or read, and all their ancestors; whoever is left sums to 1. */
function whatMatters({ birds }: Pedigree, asked: readonly number[]): readonly number[] {
  const found = new Set([...asked, ...birds.flatMap(({ readings }, bird) => (readings.length > 0 ? [bird] : []))])
  for (const bird of found) for (const parent of Object.values(birds[bird]!.parents ?? {})) found.add(parent)
  return [...found].toSorted((a, b) => a - b)
}

// core/engine/prepare.ts: from a pedigree and what is asked of it to tables: lumped, narrowed, leaves summed out.
import type { Tables } from './factor.ts'
import { type Frame, frame } from './frame.ts'
import { lump, type Use } from './lump.ts'
import { compile, type Model } from './model.ts'
import { narrow, type Narrowed } from './narrow.ts'
import { formatRatio } from './num.ts'
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

/** @returns undefined where narrowing alone shows that the readings cannot all be true */
export function prepare<T, W, S>(
  pedigree: Pedigree,
  asked: Asked,
  tables: Tables<T, W, S>,
): Prepared<T, W, S> | undefined {
  const matters = whatMatters(pedigree, asked.birds)
  const readings = new Map(
    matters.flatMap((bird) => pedigree.birds[bird]!.readings.map((reading) => [reading.id, reading])),
  )
  const uses = [...[...readings.values()].map(useOf), ...asked.uses]
  const seen = frame(pedigree, lump(pedigree.genome, uses), tables.ring)
  const narrowed = narrow(seen, matters)
  if (narrowed === undefined) return undefined
  return { frame: seen, narrowed, model: compile(seen, narrowed, tables, matters, asked.together) }
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

// core/engine/further.ts: one more reading, worked only where it makes a difference.
import { revise } from './eliminate.ts'
import { cellsOver, indexOf, type Placed, type Scaled, type Scope } from './factor.ts'
import { litter } from './leaf.ts'
import { lump } from './lump.ts'
import type { Leaf } from './model.ts'
import { partsOf } from './part.ts'
import { useOf } from './prepare.ts'
import type { Outcome } from './outcome.ts'
import { settled, stand, type Standing } from './stand.ts'
import type { Reading } from './trait.ts'

/**
 * How things stand after a further reading on one bird. Where the reading tells apart what was lumped, or
 * lies on more groups than one, everything is worked again; else only the messages that it changes.
 */
export function further<T, W, S>(
  before: Standing<T, W, S>,
  bird: number,
  reading: Reading,
): Outcome<Standing<T, W, S>> {
  const { pedigree, item, tables, prepared } = before
  const read = pedigree.birds[bird]!
  const birds = pedigree.birds.with(bird, { ...read, readings: [...read.readings, reading] })
  const after = { ...pedigree, birds }
  const { groups } = prepared.frame.seen(reading)
  const edited =
    groups.length === 1 && read.sex !== 'U' && isLumpedSo(before, reading)
      ? edit(before, after, bird, reading)
      : undefined
  if (edited === undefined) return stand(after, item, tables)
  return settled(after, item, tables, edited.prepared, edited.collected)
}

/** Does the reading leave the lumping as it is? */
function isLumpedSo<T, W, S>({ pedigree, item, prepared }: Standing<T, W, S>, reading: Reading): boolean {
  const readings = new Map(pedigree.birds.flatMap(({ readings }) => readings.map((one) => [one.id, one])))
  if (readings.has(reading.id)) return true
  const uses = [...[...readings.values(), reading].map(useOf), ...item.uses]
  const shape = (lumped: ReturnType<typeof lump>): string =>
    JSON.stringify(lumped.map(({ loci, classOf }) => [loci, classOf]))
  return shape(lump(pedigree.genome, uses)) === shape(prepared.frame.lumped)
}

type Edited<T, W, S> = Pick<Standing<T, W, S>, 'prepared' | 'collected'>

function edit<T, W, S>(
  before: Standing<T, W, S>,
  after: Standing<T, W, S>['pedigree'],
  bird: number,
  reading: Reading,
): Edited<T, W, S> | undefined {
  const { prepared, collected, tables } = before
  const { model, narrowed } = prepared
  const frame = { ...prepared.frame, pedigree: after }
  const [group] = frame.seen(reading).groups
  const variable = model.variable(bird, group!)
  if (variable !== undefined) {
    const sex = after.birds[bird]!.sex === 'F' ? 'F' : 'M'
    const cells = narrowed[bird]![group!]!.codes.map((code) => frame.seen(reading).at(sex, [code]))
    return withTimes({ prepared: { ...prepared, frame }, collected }, [variable], tables.table(cells))
  }
  const leaves = model.leaves.get(bird)
  const at = leaves?.findIndex(({ part }) => part.groups.includes(group!)) ?? -1
  if (leaves === undefined || at < 0) return undefined
  const old = leaves[at]!
  const part = partsOf(frame, narrowed, bird).find(({ groups }) => groups.includes(group!))!
  const made: Leaf<T, W, S> = { part, litter: litter(frame, tables, part), scope: old.scope, alike: {} }
  const { weights, scale } = tables.over(made.litter.message, old.litter.message)
  const taken = tables.join(made.litter.scale, tables.raise(old.litter.scale, -1))
  const changed = { ...model, leaves: new Map(model.leaves).set(bird, leaves.with(at, made)) }
  return withTimes({ prepared: { ...prepared, frame, model: changed }, collected }, old.scope, {
    weights,
    scale: tables.join(scale, taken),
  })
}

/** Multiplies a table over these variables into one that has them. */
function withTimes<T, W, S>(
  { prepared, collected }: Edited<T, W, S>,
  scope: Scope,
  { weights, scale }: Scaled<W, S>,
): Edited<T, W, S> {
  const { plan, tables, given } = collected
  const { constant } = prepared.model
  const times = (of: Scope, a: W): W => {
    const placed = (part: Scope, weights: W): Placed<W> => ({ weights, at: indexOf(part, of, [], plan.sizes) })
    return tables.sum([placed(of, a), placed(scope, weights)], cellsOver(of, plan.sizes))
  }
  const taken = tables.join(constant.scale, scale)
  const model = {
    ...prepared.model,
    constant: { weights: scope.length > 0 ? constant.weights : times([], constant.weights), scale: taken },
  }
  if (scope.length === 0) return { prepared: { ...prepared, model }, collected }
  const factor = given.findIndex((_, f) => scope.every((variable) => plan.scopes[f]!.includes(variable)))
  return {
    prepared: { ...prepared, model },
    collected: revise(collected, factor, times(plan.scopes[factor]!, given[factor]!)),
  }
}

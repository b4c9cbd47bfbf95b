// bot/render/picture/worker.ts: runs in a thread of its own: answer in, picture out. The same drawing is not made twice.
import { hash } from 'node:crypto'
import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import { LRUCache } from 'lru-cache'
import type { Answer } from '../../../core/answer.ts'
import type { Room } from './palette.ts'
import { planOf } from './plan.ts'
import { rasterise, type Raster } from './raster.ts'

export type Task = { readonly answer: Answer; readonly room: Room }
export type Drawn = Raster & { readonly caption: string; readonly fileName: string }

/** By the drawing's content; some hundred pictures of 60 KB. */
const made = new LRUCache<string, Raster>({ maxSize: 8 * 1024 * 1024, sizeCalculation: ({ png }) => png.byteLength })

setFlagsFromString('--expose-gc')
const collect: () => void = runInNewContext('gc')

/**
 * What a drawing takes, some 8 MB of them, lies outside the heap, where the garbage collector does not see it: it is
 * called by hand, once the picture is on its way. Without that the process grows to many hundred MB.
 */
const clearAway = (): void => void setImmediate(collect)

export async function draw({ answer, room }: Task): Promise<Drawn | undefined> {
  const plan = await planOf(answer, room)
  if (!plan) return undefined
  const key = hash('sha256', plan.markup)
  let raster = made.get(key)
  if (!raster) {
    raster = rasterise(plan.markup, plan.height)
    made.set(key, raster)
    clearAway()
  }
  return { ...raster, caption: plan.caption, fileName: plan.fileName }
}

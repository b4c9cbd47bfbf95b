// bot/render/picture/worker.ts: runs in a thread of its own: answer in, picture out. The same drawing is not made twice.
import { hash } from 'node:crypto'
import { LRUCache } from 'lru-cache'
import type { Answer } from '../../../core/answer.ts'
import type { Room } from './palette.ts'
import { planOf } from './plan.ts'
import { rasterise, type Raster } from './raster.ts'

export type Task = { readonly answer: Answer; readonly room: Room }
export type Drawn = Raster & { readonly caption: string; readonly fileName: string }

/** By the drawing's content; some hundred pictures of 60 KB. */
const made = new LRUCache<string, Raster>({ maxSize: 8 * 1024 * 1024, sizeCalculation: ({ png }) => png.byteLength })

export async function draw({ answer, room }: Task): Promise<Drawn | undefined> {
  const plan = await planOf(answer, room)
  if (!plan) return undefined
  const key = hash('sha256', plan.markup)
  const raster = made.get(key) ?? rasterise(plan.markup, plan.height)
  made.set(key, raster)
  return { ...raster, caption: plan.caption, fileName: plan.fileName }
}

// bot/render/picture.ts: the door to the pictures: an answer in, a PNG with its words out, drawn in a thread of its own.
import { Piscina } from 'piscina'
import type { Answer } from '../../core/answer.ts'
import type { Picture } from '../transport.ts'
import type { Room } from './picture/palette.ts'
import { mayHavePicture } from './picture/plan.ts'
import type { Drawn, Task } from './picture/worker.ts'

type Options = {
  readonly room?: Room // light unless told otherwise; both are readable by day and by night
  readonly patienceMs?: number // after which a picture is given up
}

let threads: Piscina<Task, Drawn | undefined> | undefined
const pool = (): Piscina<Task, Drawn | undefined> =>
  (threads ??= new Piscina({
    filename: new URL('picture/worker.ts', import.meta.url).href,
    name: 'draw',
    maxThreads: 1,
    minThreads: 0,
    atomics: 'disabled', // while it waits for work, what is no longer used must be able to go
    idleTimeout: Infinity, // it keeps the fonts and the pictures already made; it does not keep the process alive
  }))

/**
 * The picture of an answer; undefined where the kind of answer has none.
 * Rejects when it cannot be drawn or not in time: that costs the picture only, the text has gone out.
 */
export async function picture(
  answer: Answer,
  { room = 'light', patienceMs = 10_000 }: Options = {},
): Promise<Picture | undefined> {
  if (!mayHavePicture(answer)) return undefined
  return pool().run({ answer, room }, { signal: AbortSignal.timeout(patienceMs) })
}

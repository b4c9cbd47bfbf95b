// bot/render/picture.ts: the door to the pictures: an answer in, a PNG with its words out, drawn in a thread of its own.
import type { Piscina } from 'piscina'
import type { Answer } from '../../core/answer.ts'
import type { Picture } from '../transport.ts'
import type { Room } from './picture/palette.ts'
import { mayHavePicture } from './picture/pictured.ts'
import type { Drawn, Task } from './picture/worker.ts'

type Options = {
  readonly room?: Room // light unless told otherwise; both are readable by day and by night
  readonly patienceMs?: number // after which a picture is given up
}

let threads: Promise<Piscina<Task, Drawn | undefined>> | undefined
const pool = (): Promise<Piscina<Task, Drawn | undefined>> => (threads ??= open())

const restsAfter = 60_000 // ms without a picture, after which the thread and all that it holds goes

/** Loaded with the first picture: a bot that draws none does without. */
async function open(): Promise<Piscina<Task, Drawn | undefined>> {
  const { Piscina } = await import('piscina')
  return new Piscina({
    filename: new URL('picture/thread.js', import.meta.url).href,
    name: 'draw',
    maxThreads: 1,
    minThreads: 0,
    atomics: 'disabled', // while it waits for work, what is no longer used must be able to go
    idleTimeout: restsAfter, // until then it keeps the fonts and the pictures made; it does not keep the process alive
    resourceLimits: { maxYoungGenerationSizeMb: 2 }, // what is soon thrown away is kept small
  })
}

/**
 * The picture of an answer; undefined where the kind of answer has none.
 * Rejects when it cannot be drawn or not in time: that costs the picture only, the text has gone out.
 */
export async function picture(
  answer: Answer,
  { room = 'light', patienceMs = 10_000 }: Options = {},
): Promise<Picture | undefined> {
  if (!mayHavePicture(answer)) return undefined
  const signal = AbortSignal.timeout(patienceMs)
  return (await pool()).run({ answer, room }, { signal })
}

// bot/memory.ts: what the bot keeps of one person in one thread (or one room's main timeline), and for how long.
import * as z from 'zod'
import { Context } from '../grammar/context.ts'
import type { Place } from './transport.ts'

/** A conversation is kept this long after its last message, then it is as if it had never been. */
export const keptMilliseconds = 24 * 60 * 60 * 1000
/** Questions that an edit or a withdrawal can still reach. */
export const mostTurns = 8

const Turn = z.strictObject({
  question: z.string(), // message id
  before: Context, // what was known when it was asked, so that an edit is read as the question was
})
export type Turn = z.infer<typeof Turn>

/** Plain data: whoever stores it needs to know nothing of it but `at`. */
export const Memory = z.strictObject({
  context: Context,
  turns: z.array(Turn).readonly(), // oldest first
  rest: z.array(z.strictObject({ text: z.string(), html: z.string() })).readonly(), // pages not yet sent
  at: z.number(), // of the last message, ms since 1970
})
export type Memory = z.infer<typeof Memory>

/** One row of memory: rooms, threads and people do not mix. */
export const memoryKey = ({ room, thread, person }: Place): string => JSON.stringify([room, thread ?? null, person])

/** True when it is to be dropped unread. */
export const stale = (memory: Memory, now: number): boolean => now - memory.at > keptMilliseconds

// grammar/context.ts: what is remembered between messages of one keeper, as plain data handed in and out.
import * as z from 'zod'
import { Flock, Question } from '../core/question.ts'

export const Context = z.strictObject({
  addressed: z.boolean(), // the message was meant for the bot
  listen: z.boolean(), // plain questions for this bot are read though nobody called it
  last: Question.optional(), // the question answered last, to which "and the other way?" refers
  pending: z
    .array(z.strictObject({ label: z.string(), question: Question }))
    .readonly()
    .optional(), // choices offered
  flock: Flock, // birds told by name
  today: z.string().optional(), // ISO date of the message, for "set them today"
})
export type Context = z.infer<typeof Context>

/** Nothing said yet, and spoken to. */
export const emptyContext = (): Context => ({ addressed: true, listen: false, flock: { birds: [], broods: [] } })

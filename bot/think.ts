// bot/think.ts: one message all the way: read, answered, worded. The only place where the three parts meet.
import { resolve } from '../core/resolve.ts'
import { understand } from '../grammar/understand.ts'
import { replyDocument } from './render/reply.ts'
import { broken } from './render/sentences.ts'
import type { Answer } from '../core/answer.ts'
import type { Question } from '../core/question.ts'
import type { Context } from '../grammar/context.ts'
import type { Document } from './render/document.ts'

export type Thought = {
  readonly question: Question
  readonly answer: Answer
  /** What the next message may refer to. */
  readonly context: Context
  /** What a person reads; empty for silence. */
  readonly document: Document
  /** A fault of our own, for the log: the person got a sentence instead of an answer. */
  readonly crash?: unknown
}

const malfunction: Question = {
  kind: 'error',
  fault: { kind: 'malformed', detail: 'Something went wrong on my side.' },
}

/** Never throws: a fault of ours costs one answer, not the run. */
export function think(text: string, context: Context): Thought {
  try {
    const read = understand(text, context)
    const answer = resolve(read.question)
    return { ...read, answer, document: replyDocument(answer, read.question) }
  } catch (crash) {
    const answer: Answer = { kind: 'error', fault: 'malfunction', message: 'Something went wrong on my side.' }
    return { question: malfunction, answer, context, document: broken, crash }
  }
}

/** What is known after an earlier message, its answer left out. */
export function recall(text: string, context: Context): Context {
  try {
    return understand(text, context).context
  } catch {
    return context
  }
}

// bot/desk.ts: what is kept between messages: memory rows, and which reply answers which question. The terminal's is in memory.
import { memoryKey, type Memory } from './memory.ts'
import type { MessageId, PersonId, Place } from './transport.ts'

/** The reply to a question, and its picture where one was sent. */
export type Answered = { readonly text: MessageId; readonly picture?: MessageId }

export type Desk = {
  readonly memoryOf: (at: Place) => Memory | undefined
  /** undefined deletes the row. */
  readonly remember: (at: Place, memory: Memory | undefined) => void
  /** Deletes every row of this person, in all rooms and threads. */
  readonly forget: (person: PersonId) => void
  readonly answerTo: (question: MessageId) => Answered | undefined
  readonly noteAnswer: (question: MessageId, answered: Answered) => void
  readonly dropAnswer: (question: MessageId) => void
}

/** A desk that is wiped when the program ends. */
export function deskInMemory(): Desk {
  const rows = new Map<string, { readonly person: PersonId; readonly memory: Memory }>()
  const answers = new Map<MessageId, Answered>()
  return {
    memoryOf: (at) => rows.get(memoryKey(at))?.memory,
    remember: (at, memory) =>
      void (memory ? rows.set(memoryKey(at), { person: at.person, memory }) : rows.delete(memoryKey(at))),
    forget: (person) => {
      for (const [key, row] of rows) if (row.person === person) rows.delete(key)
    },
    answerTo: (question) => answers.get(question),
    noteAnswer: (question, answered) => void answers.set(question, answered),
    dropAnswer: (question) => void answers.delete(question),
  }
}

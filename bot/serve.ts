// bot/serve.ts: carries out a conversation over any transport: handles one message, sends what came of it, keeps the desk.
import { converse, type Outgoing } from './conversation.ts'
import type { Desk } from './desk.ts'
import type { RoomSettings } from './spokenTo.ts'
import type { Answer } from '../core/answer.ts'
import type { Incoming, MessageId, Picture, Place, Reply, RoomId, Transport } from './transport.ts'

export type Service = {
  readonly transport: Omit<Transport, 'listen'>
  readonly desk: Desk
  readonly settingsOf: (room: RoomId) => RoomSettings
  /** A picture of an answer; undefined where none is wanted or the answer has none. */
  readonly draw: (answer: Answer, room: RoomId) => Promise<Picture | undefined>
  /** Told of each answer, for the figures. */
  readonly count?: (kind: Answer['kind']) => void
  /** Faults that cost a picture, or an answer: never message text. */
  readonly log: (fault: unknown, what: 'answer' | 'picture') => void
}

/** Keys are made of ids alone, so that a repeat after a crash is the same sending. */
const keyOf = (incoming: Incoming, part: string): string =>
  `${incoming.kind === 'edited' ? incoming.editId : incoming.id}.${part}`

async function answer(service: Service, incoming: Incoming, out: Extract<Outgoing, { kind: 'answer' }>): Promise<void> {
  const { transport, desk, count } = service
  const before = desk.answerTo(out.question)
  if (before) await transport.amend(before.text, incoming, out.reply, keyOf(incoming, 'text'))
  const text = before?.text ?? (await transport.reply(out.question, incoming, out.reply, keyOf(incoming, 'text')))
  if (before?.picture) await transport.withdraw(before.picture, incoming, keyOf(incoming, 'gone'))
  desk.noteAnswer(out.question, { text })
  count?.(out.of)
  if (out.drawn) await show(service, incoming, out.question, text, out.drawn)
}

/** A failed drawing or upload costs the picture only. */
async function show(
  service: Service,
  incoming: Incoming,
  question: MessageId,
  text: MessageId,
  of: Answer,
): Promise<void> {
  const { transport, desk, draw, log } = service
  try {
    const drawn = await draw(of, incoming.room)
    if (!drawn) return
    const picture = await transport.show(question, incoming, drawn, keyOf(incoming, 'picture'))
    desk.noteAnswer(question, { text, picture })
  } catch (fault) {
    log(fault, 'picture')
  }
}

async function withdraw({ transport, desk }: Service, incoming: Incoming, question: MessageId): Promise<void> {
  const sent = desk.answerTo(question)
  if (!sent) return
  for (const [part, id] of Object.entries(sent)) await transport.withdraw(id, incoming, keyOf(incoming, `no-${part}`))
  desk.dropAnswer(question)
}

async function send(service: Service, incoming: Incoming, out: Outgoing): Promise<void> {
  switch (out.kind) {
    case 'answer':
      return answer(service, incoming, out)
    case 'greet':
      return greet(service, incoming, incoming, out.reply)
    case 'withdraw':
      return withdraw(service, incoming, out.question)
    case 'forget':
      return service.desk.forget(incoming.person)
  }
}

async function greet({ transport }: Service, incoming: Incoming, at: Place, reply: Reply): Promise<void> {
  await transport.reply(incoming.id, at, reply, keyOf(incoming, 'greeting'))
}

/** One message from arrival to answer. Throws only what the transport throws. */
export async function serve(service: Service, incoming: Incoming): Promise<void> {
  const { transport, desk, settingsOf, log } = service
  const { memory, out, ...fault } = converse(desk.memoryOf(incoming), incoming, settingsOf(incoming.room))
  if ('crash' in fault) log(fault.crash, 'answer')
  desk.remember(incoming, memory)
  for (const one of out) await send(service, incoming, one)
  if (incoming.kind === 'said') await transport.seen(incoming.id, incoming.room)
}

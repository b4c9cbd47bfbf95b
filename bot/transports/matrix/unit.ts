// bot/transports/matrix/unit.ts: the handling of one message: what is sent goes out at once, what is to be remembered goes to disk as one commit at its end.
import type { Desk } from '../../desk.ts'
import type { SentMessage } from '../../store/sent.ts'
import type { Store } from '../../store.ts'
import type { Incoming, Place, Reply, Transport } from '../../transport.ts'
import { pagesOf } from './pages.ts'
import { mayPass, type Wire } from './wire.ts'
import { amendmentContent, answerContent, noticeContent, pictureContent, type Content } from './write.ts'

export type Unit = {
  readonly transport: Omit<Transport, 'listen'>
  readonly desk: Desk
  /** Everything remembered, and the message done: all of it is on disk when this returns. */
  readonly commit: () => void
  /** How many messages went out. */
  readonly sends: () => number
}

export type Surface = {
  readonly store: Store
  readonly wire: Wire
  readonly isDirect: (room: string) => boolean
  readonly now: () => number
  /** Marks the message as read, some time soon; never throws. */
  readonly markSeen: (room: string, event: string) => void
}

const pageKey = (key: string, page: number | string): string => `${key}.page-${page}`
const isPicture = ({ key }: SentMessage): boolean => key.endsWith('.picture')

/** @param event the row of the inbox that is done with the commit */
export function openUnit(surface: Surface, event: string, incoming: Incoming): Unit {
  const { store, wire } = surface
  const steps: (() => void)[] = []
  let sends = 0
  let isForgotten = false
  const later = (step: () => void): void => void steps.push(step)

  /** Nothing goes out twice: what a crash kept us from noting came back from the server as an echo. */
  const send = async (at: Place, content: Content, key: string, question: string | undefined): Promise<string> => {
    const sent = store.sent.byKey(key)?.event ?? (await wire.send(at.room, content, key))
    sends += 1
    later(() => {
      const { room, thread, person } = at
      store.sent.note({ key, event: sent, room, question, ...(isForgotten ? {} : { thread, person }) }, surface.now())
    })
    return sent
  }
  const call = (at: Place): string | undefined => (surface.isDirect(at.room) ? undefined : at.person)

  /** Pages after the first: as messages of their own under the key of the first. */
  const sendRest = async (to: string, at: Place, rest: readonly Reply[], key: string): Promise<void> => {
    for (const [index, page] of rest.entries())
      await send(at, answerContent(page, to, at, undefined), pageKey(key, index + 2), to)
  }
  const redact = async (room: string, event: string, key: string): Promise<void> => {
    await wire.redact(room, event, key).catch((error: unknown) => {
      if (mayPass(error)) throw error // otherwise it is gone already
    })
    later(() => store.sent.drop(event))
  }
  const pagesAfter = (sent: string): readonly SentMessage[] => {
    const first = store.sent.byEvent(sent)
    if (first?.question === undefined) return []
    return store.sent.answersTo(first.question).filter(({ key }) => key.startsWith(pageKey(first.key, '')))
  }
  /** The new words of edits stand in messages of their own: taken back with what they amend, lest they stay. */
  const amendmentsOf = (sent: string): readonly SentMessage[] => {
    const first = store.sent.byEvent(sent)
    if (first?.question === undefined || isPicture(first)) return []
    return store.sent.answersTo(first.question).filter(({ event, key }) => event !== sent && key.endsWith('.text'))
  }

  const transport: Unit['transport'] = {
    reply: async (to, at, reply, key) => {
      const [first, ...rest] = pagesOf(reply)
      const content = incoming.kind === 'joined' ? noticeContent(first) : answerContent(first, to, at, call(at))
      const sent = await send(at, content, key, to)
      await sendRest(to, at, rest, key)
      return sent
    },
    amend: async (sent, at, reply, key) => {
      const [first, ...rest] = pagesOf(reply)
      for (const page of pagesAfter(sent)) await redact(at.room, page.event, `${key}.no-${page.key}`)
      await send(at, amendmentContent(first, sent), key, incoming.id)
      await sendRest(incoming.id, at, rest, key)
    },
    show: async (to, at, picture, key) => {
      const earlier = store.sent.byKey(key)
      if (earlier) return earlier.event
      return send(at, pictureContent(await wire.upload(at.room, picture), to, at), key, to)
    },
    withdraw: async (sent, at, key) => {
      for (const more of [...pagesAfter(sent), ...amendmentsOf(sent)])
        await redact(at.room, more.event, `${key}.no-${more.key}`)
      await redact(at.room, sent, key)
    },
    seen: async (message, room) => {
      if (sends > 0) surface.markSeen(room, message)
    },
    typing: async (room, on) => {
      await wire.typing(room, on).catch(() => undefined)
    },
  }

  const desk: Desk = {
    memoryOf: store.memories.of,
    remember: (at, memory) => later(() => store.memories.set(at, memory)),
    forget: (person) => {
      isForgotten = true
      later(() => store.forgetPerson(person))
    },
    answerTo: (question) => {
      const sent = store.sent.answersTo(question)
      const text = sent.find((one) => !isPicture(one) && !one.key.includes('.page-'))
      const picture = sent.find(isPicture)
      return text && { text: text.event, ...(picture ? { picture: picture.event } : {}) }
    },
    // What was sent is noted as it is sent, and what was taken back is dropped as it is taken back.
    noteAnswer: () => undefined,
    dropAnswer: (question) =>
      later(() => {
        for (const { event } of store.sent.answersTo(question)) store.sent.drop(event)
      }),
  }

  const commit = (): void =>
    store.atOnce(() => {
      for (const step of steps) step()
      if (incoming.kind === 'joined') store.rooms.set(incoming.room, { greeted: true })
      store.inbox.done(event)
    })
  return { transport, desk, commit, sends: () => sends }
}

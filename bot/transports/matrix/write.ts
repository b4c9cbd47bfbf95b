// bot/transports/matrix/write.ts: replies as message contents: notices that name the asker and nobody else, within the size of an event. Pure.
import type { MessageId, Place, Reply } from '../../transport.ts'

export type Content = Readonly<Record<string, unknown>>

/** The server takes 65,536 bytes an event; encryption makes four bytes of three, and the envelope needs room. */
const contentLimitBytes = 44_000
const sizeOf = (content: Content): number => Buffer.byteLength(JSON.stringify(content))
const fitting = (...ways: readonly [Content, ...Content[]]): Content =>
  ways.find((content) => sizeOf(content) <= contentLimitBytes) ?? ways.at(-1) ?? ways[0]

const plain = ({ text }: Reply): Content => ({ msgtype: 'm.notice', body: text })
const rich = ({ text, html }: Reply): Content => ({
  ...plain({ text, html }),
  ...(html === '' ? {} : { format: 'org.matrix.custom.html', formatted_body: html }),
})

/** Where an answer hangs: on the question, and in its thread where it has one. */
const hanging = (to: MessageId, thread: MessageId | undefined): Content => {
  const reply = { 'm.in_reply_to': { event_id: to } }
  return thread === undefined ? reply : { rel_type: 'm.thread', event_id: thread, is_falling_back: false, ...reply }
}

/** In a room of two nobody needs to be called. */
const calling = (person: string | undefined): Content => ({ 'm.mentions': person ? { user_ids: [person] } : {} })

/** @param call whom the message calls; undefined in a room of two */
export function answerContent(reply: Reply, to: MessageId, { thread }: Place, call: string | undefined): Content {
  const rest = { ...calling(call), 'm.relates_to': hanging(to, thread) }
  return fitting({ ...rich(reply), ...rest }, { ...plain(reply), ...rest })
}

/** A picture hangs where its text hangs, and calls nobody: the text has done so. */
export const pictureContent = (shown: Content, to: MessageId, { thread }: Place): Content => ({
  ...shown,
  ...calling(undefined),
  'm.relates_to': hanging(to, thread),
})

/** What is said to a room and answers nobody. */
export const noticeContent = (reply: Reply): Content =>
  fitting({ ...rich(reply), ...calling(undefined) }, { ...plain(reply), ...calling(undefined) })

const firstLine = (text: string): string => text.split('\n')[0] ?? ''

/** Clients that know no edits show the fallback: the new words behind a star, the first line where all is too much. */
export function amendmentContent(reply: Reply, sent: MessageId): Content {
  const rest = { ...calling(undefined), 'm.relates_to': { rel_type: 'm.replace', event_id: sent } }
  const starred = { text: `* ${reply.text}`, html: reply.html === '' ? '' : `* ${reply.html}` }
  const short = { msgtype: 'm.notice', body: `* ${firstLine(reply.text)}` }
  return fitting(
    { ...rich(starred), ...rest, 'm.new_content': { ...rich(reply), ...calling(undefined) } },
    { ...short, ...rest, 'm.new_content': { ...rich(reply), ...calling(undefined) } },
    { ...short, ...rest, 'm.new_content': { ...plain(reply), ...calling(undefined) } },
  )
}

// bot/conversation.ts: the conversation with one person in one place: (memory, message) -> (memory, what to send). Pure.
import { emptyContext } from '../grammar/context.ts'
import { mostTurns, stale, type Memory, type Turn } from './memory.ts'
import { asReply } from './render/reply.ts'
import { pages, withMore } from './render/pages.ts'
import { swatches } from './render/swatches.ts'
import { greeting, nothingMore, pictureUnread } from './render/sentences.ts'
import { spokenTo, type RoomSettings, type Spoken } from './spokenTo.ts'
import { think, type Thought } from './think.ts'
import type { Answer } from '../core/answer.ts'
import type { Context } from '../grammar/context.ts'
import type { Document } from './render/document.ts'
import type { Edited, Incoming, MessageId, Reply, Said, Withdrawn } from './transport.ts'

export type Outgoing =
  /**
   * Answer to `question`. Where the question has an answer already (it was edited), that one is amended instead.
   * `drawn`: the answer a picture may be made of, after the text has gone out. `kind` is for counting.
   */
  | {
      readonly kind: 'answer'
      readonly question: MessageId
      readonly reply: Reply
      readonly of: Answer['kind']
      readonly drawn?: Answer
    }
  /** One line on coming into a room. */
  | { readonly kind: 'greet'; readonly reply: Reply }
  /** Take back the answer to `question`, text and picture, if there is one. */
  | { readonly kind: 'withdraw'; readonly question: MessageId }
  /** Wipe every row of memory of this person, in all rooms and threads. Comes before the answer that confirms it. */
  | { readonly kind: 'forget' }

export type Turned = {
  /** To be stored under `memoryKey`; undefined: delete the row. */
  readonly memory: Memory | undefined
  readonly out: readonly Outgoing[]
  /** A fault of ours, for the log. */
  readonly crash?: unknown
}

/** One message, in order of arrival. `memory` is the row of `memoryKey(incoming)`, undefined where there is none. */
export function converse(memory: Memory | undefined, incoming: Incoming, settings: RoomSettings): Turned {
  switch (incoming.kind) {
    case 'joined':
      return { memory, out: [{ kind: 'greet', reply: asReply(greeting) }] }
    case 'withdrawn':
      return withdrawn(memory, incoming)
    case 'said':
      return said(memory && !stale(memory, incoming.sentAt) ? memory : undefined, incoming, settings)
    case 'edited':
      return edited(memory, incoming, settings)
  }
}

/** Its answer goes. What was learnt from it goes too: the context falls back, or is dropped where later ones build on it. */
function withdrawn(memory: Memory | undefined, { id }: Withdrawn): Turned {
  const out: readonly Outgoing[] = [{ kind: 'withdraw', question: id }]
  const turn = memory?.turns.find((t) => t.question === id)
  if (!memory || !turn) return { memory, out }
  const last = memory.turns.at(-1) === turn
  if (!last) return { memory: undefined, out }
  return { memory: { ...memory, context: turn.before, turns: memory.turns.slice(0, -1), rest: [] }, out }
}

function said(memory: Memory | undefined, incoming: Said, settings: RoomSettings): Turned {
  const spoken = spokenTo(incoming, settings)
  if (spoken.to === 'others') return { memory, out: [] }
  if (memory && memory.rest.length > 0 && asksForMore(spoken.text)) return nextPage(memory, incoming)
  const before = memory?.context ?? emptyContext()
  const thought = read(spoken, incoming, before)
  if (!isWorthSaying(thought, spoken)) return { memory, out: [] }
  return answered(memory, incoming, thought, before)
}

const asksForMore = (text: string): boolean => /^\W*(more|next|go on|continue)\W*$/iu.test(text)

const dayOf = (ms: number): string => new Date(ms).toISOString().slice(0, 10)

/** A call without words is a greeting; a picture without words is asked about in words. */
function read(spoken: Spoken, { attachment, sentAt }: Said | Edited, context: Context): Thought {
  const text = spoken.text.trim()
  const heard = { addressed: spoken.to === 'us', listen: spoken.to === 'perhaps us', today: dayOf(sentAt) }
  if (text !== '' || spoken.to !== 'us') return think(text, { ...context, ...heard })
  const document = attachment ? pictureUnread : greeting
  const why = attachment ? 'photo' : 'help'
  const question = { kind: 'decline', why, assumed: [], manner: { symbols: false, units: 'both' } } as const
  return { question, answer: { kind: 'decline', why, summary: '' }, context, document }
}

const answersProper = new Set<Answer['kind']>(['cross', 'partners', 'carrier', 'parents', 'hatch', 'lines'])

/** Called by name, everything gets a line. Not called, only what is plainly a question for this bot. */
function isWorthSaying({ answer, document }: Thought, { to, text }: Spoken): boolean {
  if (document.length === 0) return false
  if (to === 'us') return true
  return answersProper.has(answer.kind) || (answer.kind === 'fact' && text.includes('?'))
}

const forgets = ({ question }: Thought): boolean => question.kind === 'decline' && question.why === 'forgotten'

function answered(memory: Memory | undefined, { id, sentAt }: Said, thought: Thought, before: Context): Turned {
  const { first, rest } = paged(thought.document)
  const out: readonly Outgoing[] = first ? [toSend(id, first, thought.answer)] : []
  if (forgets(thought)) return { memory: undefined, out: [{ kind: 'forget' }, ...out] }
  const turns: readonly Turn[] = [...(memory?.turns ?? []), { question: id, before }].slice(-mostTurns)
  return { memory: { context: thought.context, turns, rest, at: sentAt }, out, ...crashOf(thought) }
}

const crashOf = (thought: Thought): Pick<Turned, 'crash'> => ('crash' in thought ? { crash: thought.crash } : {})

/** The first page goes out, the others wait for "more". */
function paged(document: Document): { readonly first: Document | undefined; readonly rest: readonly Reply[] } {
  const [first, ...rest] = pages(document)
  return { first: first && rest.length > 0 ? withMore(first) : first, rest: rest.map(asReply) }
}

function withSwatches(page: Document, of: Answer): Reply {
  const colours = swatches(of)
  return { ...asReply(page), ...(colours.length > 0 ? { swatches: colours } : {}) }
}

const toSend = (question: MessageId, page: Document, of: Answer): Outgoing => ({
  kind: 'answer',
  question,
  reply: withSwatches(page, of),
  of: of.kind,
  drawn: of,
})

function nextPage(memory: Memory, { id, sentAt }: Said): Turned {
  const [page, ...rest] = memory.rest
  const end = asReply(nothingMore)
  return {
    memory: { ...memory, rest, at: sentAt },
    out: [{ kind: 'answer', question: id, reply: page ?? end, of: 'fact' }],
  }
}

/** Read again as it was read the first time; an answer that no longer fits is taken back. */
function edited(memory: Memory | undefined, incoming: Edited, settings: RoomSettings): Turned {
  const turn = memory?.turns.find((t) => t.question === incoming.id)
  if (!memory || !turn)
    return said(memory && !stale(memory, incoming.sentAt) ? memory : undefined, { ...incoming, kind: 'said' }, settings)
  const spoken = spokenTo(incoming, settings)
  const thought = read(spoken.to === 'others' ? { ...spoken, text: incoming.text } : spoken, incoming, turn.before)
  const { first, rest } = paged(thought.document)
  if (!first) return withdrawn(memory, { ...incoming, kind: 'withdrawn' })
  const out = [toSend(incoming.id, first, thought.answer)]
  const isLast = memory.turns.at(-1) === turn
  return { memory: isLast ? { ...memory, context: thought.context, rest } : memory, out, ...crashOf(thought) }
}

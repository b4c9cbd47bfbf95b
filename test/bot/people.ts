// test/bot/people.ts: messages of the members of the invented Marlpit Lane Poultry Circle, for the tests of conversations.
import { converse, type Outgoing, type Turned } from '../../bot/conversation.ts'
import type { Memory } from '../../bot/memory.ts'
import type { RoomSettings } from '../../bot/spokenTo.ts'
import type { Cues, Edited, Said, Withdrawn } from '../../bot/transport.ts'

export const room: RoomSettings = { prefix: '!hen', listens: false }
export const noon = Date.UTC(2027, 2, 1, 12)
const place = { room: '!coop:marlpit.example', person: '@wren:marlpit.example' } as const
const direct: Cues = { direct: true, mentioned: false, repliesTo: 'nobody', inOurThread: false }

export const said = (text: string, rest: Partial<Said> = {}): Said => ({
  ...place,
  kind: 'said',
  id: `$${text}`,
  text,
  sentAt: noon,
  cues: direct,
  ...rest,
})
export const edited = (before: Said, text: string, rest: Partial<Edited> = {}): Edited => ({
  ...before,
  kind: 'edited',
  editId: `$edit of ${before.id}`,
  text,
  ...rest,
})
export const withdrawn = ({ room, person, id }: Said): Withdrawn => ({ room, person, id, kind: 'withdrawn' })

/** Not called by any cue. */
export const chatter: Cues = { direct: false, mentioned: false, repliesTo: 'nobody', inOurThread: false }

/** One message after the other; what came of the last one. */
export function talk(
  messages: readonly (Said | Edited | Withdrawn)[],
  settings: RoomSettings = room,
  start?: Memory,
): Turned {
  let turned: Turned = { memory: start, out: [] }
  for (const message of messages) turned = converse(turned.memory, message, settings)
  return turned
}

export const textOf = ({ out }: { readonly out: readonly Outgoing[] }): string =>
  out.flatMap((one) => ('reply' in one ? [one.reply.text] : [])).join('\n')
export const kindsOf = ({ out }: Turned): readonly string[] =>
  out.map((one) => (one.kind === 'answer' ? one.of : one.kind))

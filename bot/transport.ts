// bot/transport.ts: what the bot needs of any chat network. Matrix, the terminal and the test
// doubles each fill it in; nothing outside bot/transports/ imports a network library.

/** The network's own id of a message: never reused, the same however often the message is delivered. */
export type MessageId = string
export type RoomId = string
/** The network's own id of a member, e.g. '@wren:marlpit.example'. Kept only as long as the store's rules say. */
export type PersonId = string

/** Where a message stands: all that is needed to answer it in its place. */
export type Place = {
  readonly room: RoomId
  /** Id of the message that opened the thread; absent in the main timeline. An answer stays in the thread. */
  readonly thread?: MessageId
  readonly person: PersonId
}

/** Why a message may be meant for the bot, as far as the network can tell. `spokenTo.ts` decides from these. */
export type Cues = {
  /** A room of two: the person and the bot. Everything said there is said to the bot. */
  readonly direct: boolean
  /**
   * The message names the bot: its id stands in the network's list of mentions, or, where the message has no such
   * list, its name, id or a link to it stands in the text. In a reply to another person the list alone does not
   * count (clients copy it down a chain of replies): there the text itself must name the bot.
   */
  readonly mentioned: boolean
  /** Whom the message replies to by hand. A client's filling-in inside a thread is 'nobody'. */
  readonly repliesTo: 'nobody' | 'the bot' | 'another'
  /** In a thread in which the bot has answered this or another person. */
  readonly inOurThread: boolean
}

export type Said = Place & {
  readonly kind: 'said'
  readonly id: MessageId
  /** Plain words: mentions of the bot cut off, quoted fallbacks of replies cut off, no markup. Any length. */
  readonly text: string
  /** Milliseconds since 1970, by the network's clock. */
  readonly sentAt: number
  readonly cues: Cues
  /** Pictures or files came with it; their content is never read. */
  readonly attachment?: boolean
}

/** The same message in new words. All of `Place` is that of the message first written, also where the edit lacks it. */
export type Edited = Omit<Said, 'kind'> & {
  readonly kind: 'edited'
  /** `id` is the message first written, not the edit; `editId` is the edit itself, for keys that must differ. */
  readonly editId: MessageId
}

/** The person took the message back: the bot's answer to it goes too. */
export type Withdrawn = Place & { readonly kind: 'withdrawn'; readonly id: MessageId }

/** The bot has come into a room. Reported once a room, not at every start. `person` is who invited it. */
export type Joined = Place & { readonly kind: 'joined'; readonly id: MessageId; readonly direct: boolean }

export type Incoming = Said | Edited | Withdrawn | Joined

/** A drawing of an answer. It never holds a fact that the text lacks. */
export type Picture = {
  readonly png: Uint8Array
  readonly width: number // pixels
  readonly height: number
  readonly caption: string // says all that the picture says
  readonly fileName: string // differs from the caption
  readonly blurHash?: string // what a client shows until the picture is there; blurha.sh
}

/** Patches of colour with their words, for a screen that can show them; a network without them leaves them out. */
export type Swatch = { readonly colours: readonly string[] /* '#rrggbb' */; readonly words: string }

export type Reply = {
  /** Complete by itself: screen readers, bridges, old phones. Lines end in '\n', the last line does not. */
  readonly text: string
  /** The same in the tags of render/html.ts; no tables, no mentions, no links but our own. */
  readonly html: string
  readonly swatches?: readonly Swatch[]
}

/** The most that one reply's text may weigh, in UTF-8 bytes; its html weighs at most three times that. */
export const replyLimitBytes = 16 * 1024

export type Transport = {
  /**
   * Calls `handle` once per message, in order within a room, however often the network delivers it; rooms run side by
   * side. Own messages, notices of other bots and history from before the bot came are not handed over.
   * A throw of `handle` is logged and costs that message only. Resolves when `stop` fires and running work has ended.
   */
  readonly listen: (handle: (message: Incoming) => Promise<void>, stop: AbortSignal) => Promise<void>
  /**
   * Sends a reply to the message `to`, in its thread, naming its person and nobody else.
   * The same `key` twice sends once: it becomes the network's transaction id. A key is made of the question's id
   * alone, so it is the same after a crash. Resolves with the id of what was sent.
   */
  readonly reply: (to: MessageId, at: Place, reply: Reply, key: string) => Promise<MessageId>
  /** Replaces the words of an earlier reply; `key` as above, made of the edit's id. */
  readonly amend: (sent: MessageId, at: Place, reply: Reply, key: string) => Promise<void>
  /** Takes an earlier reply back (text or picture). Already gone counts as done. */
  readonly withdraw: (sent: MessageId, at: Place, key: string) => Promise<void>
  /** Sends a picture after its text, in the same place. A refusal is the caller's to log: the text stands. */
  readonly show: (to: MessageId, at: Place, picture: Picture, key: string) => Promise<MessageId>
  /** Marks a message as read, once it is handled. Never throws; does nothing where the network has no such mark. */
  readonly seen: (message: MessageId, room: RoomId) => Promise<void>
  /** "is writing" on or off. On only when an answer takes longer than a second; always switched off. Never throws. */
  readonly typing: (room: RoomId, on: boolean) => Promise<void>
}

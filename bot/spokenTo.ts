// bot/spokenTo.ts: is a message meant for the bot? Surely, perhaps (then only a real answer is given), or not at all.
import type { Said } from './transport.ts'

/** What an operator chose for a room. */
export type RoomSettings = {
  /** Word that calls the bot at the head of a message, e.g. '!hen'. Never one beginning with '/': clients take those. */
  readonly prefix: string
  /** True: questions plainly for this bot are answered though nobody called it. */
  readonly listens: boolean
}

export type Spoken = { readonly to: 'us' | 'perhaps us' | 'others'; readonly text: string }

/** The message without the calling word; undefined where it does not begin with that word. */
function withoutPrefix(text: string, prefix: string): string | undefined {
  const head = text.trimStart()
  if (prefix === '' || !head.toLowerCase().startsWith(prefix.toLowerCase())) return undefined
  const rest = head.slice(prefix.length)
  return rest === '' || /^[\s,:]/.test(rest) ? rest.replace(/^[\s,:]+/, '') : undefined
}

/** A thread in which the bot speaks is a conversation with it, unless a reply turns to somebody else. */
export function spokenTo(said: Pick<Said, 'text' | 'cues'>, settings: RoomSettings): Spoken {
  const { direct, mentioned, repliesTo, inOurThread } = said.cues
  const called = withoutPrefix(said.text, settings.prefix)
  if (called !== undefined) return { to: 'us', text: called }
  if (direct || mentioned || repliesTo === 'the bot') return { to: 'us', text: said.text }
  const perhaps = repliesTo === 'nobody' && (inOurThread || settings.listens)
  return { to: perhaps ? 'perhaps us' : 'others', text: said.text }
}

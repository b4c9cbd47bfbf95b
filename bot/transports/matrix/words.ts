// bot/transports/matrix/words.ts: the words of a message as a person meant them, and whether they name the bot. Pure.
import * as z from 'zod'

/** The bot as others may write it. */
export type Self = {
  /** '@hen:marlpit.example' */
  readonly id: string
  /** As shown in the room; undefined where it shows none. */
  readonly displayName: string | undefined
}

const Text = z.string().catch('')
const Spoken = z.object({
  msgtype: Text,
  body: Text,
  filename: z.string().optional().catch(undefined),
  formatted_body: z.string().optional().catch(undefined),
  'm.mentions': z
    .object({ user_ids: z.array(z.string()).catch([]) })
    .optional()
    .catch({ user_ids: [] }),
})
export type Spoken = z.infer<typeof Spoken>
export const spokenIn = (content: unknown): Spoken => Spoken.safeParse(content).data ?? Spoken.parse({})

const attachments = new Set(['m.image', 'm.file', 'm.video', 'm.audio'])
export const isAttachment = ({ msgtype }: Spoken): boolean => attachments.has(msgtype)
/** m.notice is how bots speak, and bots are not answered. */
export const isForReading = (spoken: Spoken): boolean => spoken.msgtype === 'm.text' || isAttachment(spoken)

/** Lines with '>' at the head and the blank line after them: an older client's quotation of what it replies to. */
const withoutQuotation = (body: string): string => body.replace(/^(?:> ?[^\n]*\n)+\n?/u, '')

const escaped = (words: string): string => words.replaceAll(/[$()*+.?[\\\]^{|}]/gu, String.raw`\$&`)

const namesOf = ({ id, displayName }: Self): readonly string[] =>
  [displayName ?? '', id.slice(1).split(':')[0] ?? ''].filter((name) => name !== '').map(escaped)

/** The full id or '@name' anywhere, or the name at the head with a colon or comma. "hen" alone is a bird. */
const naming = (self: Self): RegExp => {
  const id = String.raw`${escaped(self.id)}(?![\w-]|\.\w|:\d)`
  const names = namesOf(self).join('|')
  const anywhere = String.raw`(?<![\w@])(?:${id}|@(?:${names})(?![\w:]))[:,]?\s?`
  return new RegExp(String.raw`^\s*${id}\s*[:,]?\s*|^\s*@?(?:${names})\s*(?:,|:(?!\S))\s*|${anywhere}`, 'giu')
}

const linkTo = ({ id }: Self): RegExp =>
  new RegExp(
    String.raw`<a\s[^>]*href=["']https://matrix\.to/#/(?:${escaped(id)}|${escaped(encodeURIComponent(id))})["'][^>]*>([^<]*)</a>`,
    'giu',
  )

/** The words of a link to the bot, as they stand in the plain text. */
const linkWords = (spoken: Spoken, self: Self): readonly string[] =>
  [...(spoken.formatted_body ?? '').matchAll(linkTo(self))]
    .map((match) => match[1] ?? '')
    .filter((words) => words !== '')

/** The text itself names the bot, whatever the list of mentions says. */
export const textNames = (spoken: Spoken, self: Self): boolean =>
  naming(self).test(withoutQuotation(spoken.body)) || linkWords(spoken, self).length > 0

/**
 * @param isReplyToAnother clients copy mentions down a chain of replies, so there the list alone does not count
 */
export function mentions(spoken: Spoken, self: Self, isReplyToAnother: boolean): boolean {
  const listed = spoken['m.mentions']
  if (listed === undefined || isReplyToAnother) return textNames(spoken, self)
  return listed.user_ids.includes(self.id)
}

/** Plain words: quotation and mentions of the bot cut off. A picture's words are its caption, where it has one. */
export function wordsOf(spoken: Spoken, self: Self): string {
  if (isAttachment(spoken) && (spoken.filename === undefined || spoken.filename === spoken.body)) return ''
  const told = withoutQuotation(spoken.body).replace(naming(self), '')
  const leading = new RegExp(String.raw`^\s*@?(?:${linkWords(spoken, self).map(escaped).join('|')})\s*[:,]?\s*`, 'iu')
  return (linkWords(spoken, self).length > 0 ? told.replace(leading, '') : told).trim()
}

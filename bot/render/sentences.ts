// bot/render/sentences.ts: what the bot says of itself: greeting, help, thanks, what it leaves to others. English.
import { bullets, line, strong } from './document.ts'
import type { Document } from './document.ts'

export const examples = [
  'Rhode Island Red cock over Light Sussex hens',
  'which hens for my Welsummer cock so I can sex the chicks?',
  '12 dark chicks from a lavender hen, does he carry lavender?',
  'how many eggs to set for 6 pullets?',
] as const

export const greeting: Document = [
  line(
    'Hello, I am Henwife. Tell me a cock and a hen and I say what hatches, whether you can sex the chicks, and what hens they make.',
  ),
  line(`Try: ${examples[0]}. Say “help” for more.`),
]

export const help: Document = [
  line(strong('Ask me in your own words. For instance:')),
  bullets(examples.map((example) => [example])),
  line('Afterwards: “and the other way round?”, “eggs?”, “why?”, “more”, “what if she is the heritage line?”'),
  line('I remember a conversation for a day. “Forget me” wipes it at once.'),
]

export const forgotten: Document = [line('Done: I have forgotten what you told me.')]

export const nothingMore: Document = [
  line('That was all of it. Ask “why?” or “more” about a cross, or name the next one.'),
]

export const pictureUnread: Document = [
  line('I cannot see pictures. Tell me the parents, the age, and what you see: down colour, a spot on the head, comb.'),
]

/** When something of ours broke: the keeper is not to blame and can go on. */
export const broken: Document = [
  line('Something went wrong on my side with that one. Please write it another way, or ask something else.'),
]

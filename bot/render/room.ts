// bot/render/room.ts: what the bot says of itself in rooms: that it was asked too much, cannot read, may not speak or come. English.
import { line, type Document } from './document.ts'

export const askedTooMuch: Document = [
  line('That is more than I can answer at once. Give me a minute, then ask again.'),
]

/** Said once a room and day, where a message stays closed. */
export const cannotRead: Document = [
  line('I was not sent the key to this message, so I cannot read it.'),
  line(
    'If it was for me, please write it again. If that fails too, your app may hold back keys from devices it does not trust: allow it to send to mine.',
  ),
]

export const mayNotSpeakIn = (roomName: string): Document => [
  line(
    `I was asked something in “${roomName}”, but I may not write there. Somebody who may change its rights can mend that.`,
  ),
]

/** Reasons that go with a refused invitation: one line each. */
export const invitedByStranger = (who: readonly string[]): string =>
  who.length === 0
    ? 'This bot takes no invitations. Please ask whoever runs it.'
    : `This bot takes invitations from ${new Intl.ListFormat('en-GB', { type: 'disjunction' }).format(who)} only. Please ask one of them, or whoever runs it.`
export const invitedToEncrypted = 'This bot answers in rooms without encryption only.'
export const leftEmpty = 'Nobody is left here to answer.'
export const strayRoom = 'This room does not follow from the one that sent me here.'

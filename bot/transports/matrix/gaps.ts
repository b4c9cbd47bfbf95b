// bot/transports/matrix/gaps.ts: history that a sync left out, read backwards page by page, within bounds, and put in its place.
import type { Gap, Inbox } from '../../store/inbox.ts'
import type { Store } from '../../store.ts'
import { comingIn, echoesIn, messagesIn } from './intake.ts'
import { rawEvents, type RawEvent } from './raw.ts'
import type { Wire } from './wire.ts'

export type Bounds = { readonly messages: number; /** ms since 1970 */ readonly after: number }

/** Newest first, up to where the bot knows the room again, came in, or has read enough. */
async function stretch(
  gap: Gap,
  wire: Pick<Wire, 'history'>,
  me: string,
  inbox: Pick<Inbox, 'knows'>,
  bounds: Bounds,
): Promise<readonly RawEvent[]> {
  const found: RawEvent[] = []
  for (let from: string | undefined = gap.newest; from !== undefined;) {
    const page = await wire.history(gap.room, from, gap.oldest)
    for (const event of rawEvents(page.events)) {
      const isOver =
        inbox.knows(event.event_id) || event.origin_server_ts < bounds.after || found.length >= bounds.messages
      if (isOver || comingIn([event], me) === 0) return found
      found.push(event)
    }
    from = page.events.length === 0 ? undefined : page.end
  }
  return found
}

/** Reads the stretch and puts it before what came after it; only then are the room's messages worked off again. */
export async function fillGap(
  store: Store,
  gap: Gap,
  wire: Pick<Wire, 'history'>,
  me: string,
  bounds: Bounds,
  now: number,
): Promise<number> {
  const events = (await stretch(gap, wire, me, store.inbox, bounds)).toReversed()
  const messages = messagesIn(gap.room, events, me)
  store.atOnce(() => {
    store.inbox.take(messages, { batch: gap.batch, firstPlace: -messages.length - 1, now })
    for (const echo of echoesIn(gap.room, events, me)) store.sent.echo(echo, now)
    store.inbox.closeGap(gap)
  })
  return messages.length
}

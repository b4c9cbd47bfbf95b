// test/homeserver/sync.ts: /sync and /messages of the small homeserver: the stream since a token, short where the filter says so.
import type { Request, Response } from '../homeserver.ts'
import type { Content, Event, World } from './world.ts'

export const tokenAt = (place: number): string => `s${place}`
export const placeOf = (token: string | null): number => Number(token?.slice(1) ?? 0)

const limitOf = (filter: unknown): number => {
  const limit = Number(/"limit":(\d+)/u.exec(JSON.stringify(filter))?.[1])
  return Number.isFinite(limit) ? limit : 10
}

const eventsOf = (world: World, room: string, after: number): readonly { at: number; event: Event }[] =>
  world.entries.filter((entry) => entry.room === room && entry.at > after)

const stateOf = (world: World, room: string, before: number): readonly Event[] => {
  const state = new Map<string, Event>()
  for (const { at, room: where, event } of world.entries)
    if (where === room && at <= before && event.state_key !== undefined)
      state.set(`${event.type} ${event.state_key}`, event)
  return [...state.values()]
}

/** Own events carry their transaction id, as only the sending device sees it. */
const shown = (world: World, event: Event): Event => {
  const key = world.sent.find(({ id }) => id === event.event_id)?.key
  return key !== undefined && world.rules.showTransactions ? { ...event, unsigned: { transaction_id: key } } : event
}

const joinedCount = (world: World, room: string): number =>
  stateOf(world, room, Infinity).filter(
    ({ type, content }) => type === 'm.room.member' && content['membership'] === 'join',
  ).length

function roomSince(world: World, room: string, since: number, limit: number): Content | undefined {
  const isNew = (world.standing.get(room)?.since ?? 0) > since
  const fresh = eventsOf(world, room, isNew ? 0 : since)
  if (fresh.length === 0) return undefined
  const part = fresh.slice(-limit)
  const first = part[0]?.at ?? 0
  return {
    summary: { 'm.joined_member_count': joinedCount(world, room), 'm.invited_member_count': 0 },
    state: { events: isNew || part.length < fresh.length ? stateOf(world, room, first - 1) : [] },
    timeline: {
      events: part.map(({ event }) => shown(world, event)),
      limited: part.length < fresh.length,
      prev_batch: tokenAt(first - 1),
    },
  }
}

const inviteState = (world: World, room: string): Content => ({
  invite_state: {
    events: stateOf(world, room, Infinity).map(({ type, sender, state_key, content }) => ({
      type,
      sender,
      state_key,
      content,
    })),
  },
})

function since(world: World, after: number, limit: number): { readonly isEmpty: boolean; readonly body: Content } {
  const [join, invite, leave]: [Record<string, Content>, Record<string, Content>, Record<string, Content>] = [
    {},
    {},
    {},
  ]
  for (const [room, { how, since: changed }] of world.standing) {
    const part = how === 'join' ? roomSince(world, room, after, limit) : undefined
    if (part) join[room] = part
    if (how === 'invite' && changed > after) invite[room] = inviteState(world, room)
    if (how === 'leave' && changed > after) leave[room] = { timeline: { events: [] } }
  }
  const isEmpty = [join, invite, leave].every((part) => Object.keys(part).length === 0)
  return {
    isEmpty,
    body: {
      next_batch: tokenAt(world.now()),
      rooms: { join, invite, leave },
      device_one_time_keys_count: { signed_curve25519: 50 },
    },
  }
}

const longestPoll = 2000 // ms; a real server waits for thirty seconds

export async function sync(world: World, { query }: Request, filter: unknown): Promise<Response> {
  const after = placeOf(query.get('since'))
  const limit = limitOf(filter)
  const end = Date.now() + Math.min(Number(query.get('timeout') ?? 0), longestPoll)
  let found = since(world, after, limit)
  while (found.isEmpty && Date.now() < end) {
    await Promise.race([
      world.somethingHappens(),
      new Promise((resolve) => {
        setTimeout(resolve, end - Date.now())
      }),
    ])
    found = since(world, after, limit)
  }
  return { status: 200, body: found.body }
}

/** Backwards from a token, newest first, to another where one is named. */
export function messages(world: World, room: string, { query }: Request): Response {
  const [from, to] = [placeOf(query.get('from')), placeOf(query.get('to'))]
  const limit = Number(query.get('limit') ?? 10)
  const older = world.entries.filter((entry) => entry.room === room && entry.at <= from && entry.at > to).reverse()
  const page = older.slice(0, limit)
  const last = page.at(-1)
  const end = last && older.length > limit ? { end: tokenAt(last.at - 1) } : {}
  return { status: 200, body: { start: tokenAt(from), ...end, chunk: page.map(({ event }) => shown(world, event)) } }
}

// test/homeserver/routes.ts: what the small homeserver answers to whom: as much of Matrix as the bot asks for.
import type { Request, Response } from '../homeserver.ts'
import { messages, sync } from './sync.ts'
import type { World } from './world.ts'

const ok = (body: object = {}): Response => ({ status: 200, body })
export const refusal = (status: number, errcode: string, more: object = {}): Response => ({
  status,
  body: { errcode, error: errcode, ...more },
})

type Route = (world: World, request: Request, ...found: readonly string[]) => Response | Promise<Response>

const filters: unknown[] = []

const login: Route = (world, { body }) => {
  if (body['password'] !== 'sesame') return refusal(403, 'M_FORBIDDEN')
  const device = typeof body['device_id'] === 'string' ? body['device_id'] : 'MADE'
  const token = `token-${device}-${world.tokens.size}`
  world.tokens.set(token, device)
  return ok({ user_id: world.me, access_token: token, device_id: device })
}

const whoami: Route = (world, { token }) => {
  const device = world.tokens.get(token ?? '')
  return device === undefined ? refusal(401, 'M_UNKNOWN_TOKEN') : ok({ user_id: world.me, device_id: device })
}

/** The same transaction id again is the same event. */
const once = (world: World, room: string, key: string, make: () => string): Response => {
  const id = world.transactions.get(`${room} ${key}`) ?? make()
  world.transactions.set(`${room} ${key}`, id)
  return ok({ event_id: id })
}

const send: Route = (world, { body }, room = '', type = '', key = '') =>
  once(world, room, key, () => {
    if (world.standing.get(room)?.how !== 'join') return ''
    const id = `$own-${world.sent.length + 1}`
    world.sent.push({ room, type, content: body, key, id })
    return world.add(room, { type, sender: world.me, content: body, event_id: id })
  })

const redact: Route = (world, _request, room = '', target = '', key = '') =>
  once(world, room, key, () => {
    const id = `$own-${world.sent.length + 1}`
    world.sent.push({ room, type: 'm.room.redaction', content: { redacts: target }, key, id })
    return world.add(room, { type: 'm.room.redaction', sender: world.me, content: { redacts: target }, event_id: id })
  })

const join: Route = (world, _request, room = '') => {
  if (world.standing.get(room)?.how !== 'join') world.join(room)
  return ok({ room_id: room })
}
const leave: Route = (world, _request, room = '') => {
  world.leave(room)
  return ok()
}

const event: Route = (world, _request, room = '', id = '') => {
  const found = world.entries.find((entry) => entry.room === room && entry.event.event_id === id)
  return found ? ok({ ...found.event, room_id: room }) : refusal(404, 'M_NOT_FOUND')
}

const creation: Route = (world, _request, room = '') => {
  const made = world.entries.find((entry) => entry.room === room && entry.event.type === 'm.room.create')
  return made ? ok(made.event.content) : refusal(404, 'M_NOT_FOUND')
}

/** Told to those who are in the room. */
const joinedMembers: Route = (world, _request, room = '') => {
  if (world.standing.get(room)?.how !== 'join') return refusal(403, 'M_FORBIDDEN')
  const members = world.entries.filter((entry) => entry.room === room && entry.event.type === 'm.room.member')
  const last = new Map(members.map(({ event }) => [event.state_key, event.content['membership']]))
  const joined = [...last].filter(([, membership]) => membership === 'join').map(([user]) => [user, {}])
  return ok({ joined: Object.fromEntries(joined) })
}

const syncFiltered: Route = (world, request) => {
  const told = request.query.get('filter') ?? ''
  return sync(world, request, told.startsWith('{') ? JSON.parse(told) : filters[Number(told)])
}

const routes: readonly (readonly [method: string, path: RegExp, route: Route])[] = [
  ['GET', /^\/versions$/u, () => ok({ versions: ['v1.11'] })],
  ['POST', /^\/login$/u, login],
  ['GET', /^\/account\/whoami$/u, whoami],
  ['GET', /^\/sync$/u, syncFiltered],
  ['GET', /^\/pushrules\/$/u, () => ok({ global: {} })],
  ['POST', /^\/user\/[^/]+\/filter$/u, (_world, { body }) => ok({ filter_id: String(filters.push(body) - 1) })],
  ['GET', /^\/user\/[^/]+\/filter\/(.+)$/u, (_world, _request, id = '') => ok(Object(filters[Number(id)]))],
  ['PUT', /^\/rooms\/([^/]+)\/send\/([^/]+)\/(.+)$/u, send],
  ['PUT', /^\/rooms\/([^/]+)\/redact\/([^/]+)\/(.+)$/u, redact],
  ['POST', /^\/join\/(.+)$/u, join],
  ['POST', /^\/rooms\/([^/]+)\/leave$/u, leave],
  ['GET', /^\/rooms\/([^/]+)\/messages$/u, (world, request, room = '') => messages(world, room, request)],
  ['GET', /^\/rooms\/([^/]+)\/event\/(.+)$/u, event],
  ['GET', /^\/rooms\/([^/]+)\/state\/m\.room\.create/u, creation],
  ['GET', /^\/rooms\/([^/]+)\/joined_members$/u, joinedMembers],
  ['POST', /^\/upload$/u, () => ok({ content_uri: 'mxc://marlpit.test/picture' })],
  [
    'POST',
    /^\/keys\/(?:upload|query|claim)$/u,
    () => ok({ one_time_key_counts: {}, device_keys: {}, one_time_keys: {} }),
  ],
  ['PUT', /^\/rooms\/[^/]+\/typing\//u, () => ok()],
  ['POST', /^\/rooms\/[^/]+\/(?:receipt\/|forget$)/u, () => ok()],
]

const open = new Set(['/versions', '/login'])

export async function answerTo(world: World, request: Request): Promise<Response> {
  if (!open.has(request.path) && !world.tokens.has(request.token ?? '')) return refusal(401, 'M_UNKNOWN_TOKEN')
  for (const [method, path, route] of routes) {
    const found = method === request.method ? path.exec(request.path) : null
    if (found) return route(world, request, ...found.slice(1))
  }
  return refusal(404, 'M_UNRECOGNIZED')
}

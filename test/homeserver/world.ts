// test/homeserver/world.ts: what the small homeserver knows: accounts, rooms and one stream of events, as a test arranges them.

export type Content = Readonly<Record<string, unknown>>
export type Event = {
  readonly event_id: string
  readonly type: string
  readonly sender: string
  readonly origin_server_ts: number
  content: Content
  readonly state_key?: string
  readonly unsigned?: Content
}
/** An event, or a change of who is where, at its place in the stream. */
type Entry = { readonly at: number; readonly room: string; readonly event: Event }
export type Sent = {
  readonly room: string
  readonly type: string
  readonly content: Content
  readonly key: string
  readonly id: string
}

export type World = {
  readonly me: string
  readonly entries: Entry[]
  /** Rooms the bot is in, invited to, or has left, since which place in the stream. */
  readonly standing: Map<string, { readonly how: 'join' | 'invite' | 'leave'; readonly since: number }>
  /** Messages and redactions of the bot. */
  readonly sent: Sent[]
  /** Transaction ids and what they led to. */
  readonly transactions: Map<string, string>
  /** Access tokens in force, with their devices. */
  readonly tokens: Map<string, string>
  /** Whether own events carry their transaction id: only the device that sent them sees it. */
  rules: { readonly showTransactions: boolean }
  readonly now: () => number
  readonly add: (room: string, event: Partial<Event> & Pick<Event, 'type' | 'sender' | 'content'>) => string
  readonly say: (room: string, sender: string, body: string, more?: Content) => string
  readonly makeRoom: (members: readonly string[]) => string
  readonly invite: (room: string, by: string) => void
  readonly join: (room: string) => void
  readonly leave: (room: string) => void
  /** Resolves at the next thing that happens. */
  readonly somethingHappens: () => Promise<void>
  readonly stir: () => void
}

export const me = '@hen:marlpit.test'

export function newWorld(): World {
  const entries: Entry[] = []
  const standing: World['standing'] = new Map()
  let [place, rooms, ids] = [1, 0, 0]
  let waiting: (() => void)[] = []
  const stir = (): void => {
    const woken = waiting
    waiting = []
    for (const wake of woken) wake()
  }
  const add: World['add'] = (room, told) => {
    const event: Event = { event_id: `$${(ids += 1)}`, origin_server_ts: Date.now(), ...told }
    entries.push({ at: (place += 1), room, event })
    stir()
    return event.event_id
  }
  const member = (room: string, user: string, membership: string, by = user): string =>
    add(room, { type: 'm.room.member', sender: by, state_key: user, content: { membership } })
  const stand = (room: string, how: 'join' | 'invite' | 'leave'): void => {
    standing.set(room, { how, since: place })
    stir()
  }
  const world: World = {
    me,
    entries,
    standing,
    sent: [],
    transactions: new Map(),
    tokens: new Map(),
    rules: { showTransactions: true },
    now: () => place,
    add,
    say: (room, sender, body, more = {}) =>
      add(room, { type: 'm.room.message', sender, content: { msgtype: 'm.text', body, ...more } }),
    makeRoom: (members) => {
      const room = `!room${(rooms += 1)}:marlpit.test`
      const [maker = me] = members
      add(room, { type: 'm.room.create', sender: maker, state_key: '', content: { room_version: '11' } })
      for (const user of members) member(room, user, 'join')
      if (members.includes(me)) stand(room, 'join')
      return room
    },
    invite: (room, by) => {
      member(room, me, 'invite', by)
      stand(room, 'invite')
    },
    join: (room) => {
      member(room, me, 'join')
      stand(room, 'join')
    },
    leave: (room) => {
      member(room, me, 'leave')
      stand(room, 'leave')
    },
    somethingHappens: () =>
      new Promise((resolve) => {
        waiting.push(resolve)
      }),
    stir,
  }
  return world
}

// bot/transports/matrix/doors.ts: which rooms the bot enters and leaves: invitations, moved rooms, empty rooms.
import { hashed, type Log } from '../../log.ts'
import { invitedByStranger, invitedToEncrypted, leftEmpty, strayRoom } from '../../render/room.ts'
import type { MatrixConfig } from '../../settings.ts'
import { lineage } from '../../store/rooms.ts'
import type { Store } from '../../store.ts'
import * as z from 'zod'

/** What is asked of the server about rooms. */
export type DoorWire = {
  readonly join: (room: string, via: readonly string[]) => Promise<void>
  /** Leaves and forgets it. Already out counts as done. */
  readonly leave: (room: string, reason: string) => Promise<void>
  /** The event that made the room, as far as the bot may see it. */
  readonly creation: (room: string) => Promise<unknown>
  /** Who is in a room or space that the bot is in. */
  readonly members: (room: string) => Promise<readonly string[]>
}

export type Invitation = {
  readonly room: string
  readonly from: string
  readonly isEncrypted: boolean
  /** The room that this one follows, as its maker says. */
  readonly follows: string | undefined
}

const Stripped = z.object({
  type: z.string(),
  sender: z.string().catch(''),
  state_key: z.string().catch(''),
  content: z.record(z.string(), z.unknown()).catch({}),
})
const InviteState = z.object({
  invite_state: z.object({ events: z.array(z.unknown()).catch([]) }).catch({ events: [] }),
})

const Creation = z.object({ predecessor: z.object({ room_id: z.string() }) })

/** @param data the room's part of the invitations in a /sync answer */
export function invitationIn(room: string, data: unknown, me: string): Invitation | undefined {
  const events = (InviteState.safeParse(data).data?.invite_state.events ?? []).flatMap(
    (event) => Stripped.safeParse(event).data ?? [],
  )
  const invited = events.find(
    (event) => event.type === 'm.room.member' && event.state_key === me && event.content['membership'] === 'invite',
  )
  if (!invited) return undefined
  const made = Creation.safeParse(events.find(({ type }) => type === 'm.room.create')?.content)
  const isEncrypted = events.some(({ type }) => type === 'm.room.encryption')
  return { room, from: invited.sender, isEncrypted, follows: made.data?.predecessor.room_id }
}

const serverOf = (id: string): string => id.slice(id.indexOf(':') + 1)

const isNamed = (config: MatrixConfig, person: string): boolean =>
  config.invitesFromUsers.includes(person) || config.invitesFromServers.includes(serverOf(person))

const whoMay = (config: MatrixConfig): readonly string[] => [
  ...config.invitesFromUsers,
  ...config.invitesFromServers.map((server) => `members of ${server}`),
  ...config.invitesFromSpaces.map((space) => `members of ${space}`),
]

export type Doors = {
  readonly answer: (invitation: Invitation) => Promise<void>
  /** The room has moved, says somebody in it. */
  readonly follow: (from: string, to: string, saidBy: string) => Promise<void>
  readonly leaveEmpty: (room: string) => Promise<void>
}

export function doorsOf(config: MatrixConfig, store: Store, wire: DoorWire, log: Log): Doors {
  const survived = async (what: string, room: string, work: () => Promise<void>): Promise<boolean> => {
    try {
      await work()
      log.info({ room: hashed(room) }, what)
      return true
    } catch (error) {
      log.warn({ room: hashed(room), error }, `could not: ${what}`)
      return false
    }
  }
  const isMember = async (space: string, person: string): Promise<boolean> => {
    try {
      return (await wire.members(space)).includes(person)
    } catch (error) {
      log.warn({ room: hashed(space), error }, 'could not see who is in a space: invite the bot there')
      return false
    }
  }
  const mayInvite = async (person: string): Promise<boolean> => {
    if (isNamed(config, person)) return true
    const found = await Promise.all(config.invitesFromSpaces.map((space) => isMember(space, person)))
    return found.includes(true)
  }
  const open: readonly string[] = [...config.invitesToRooms, ...config.invitesFromSpaces]
  return {
    answer: async ({ room, from, isEncrypted, follows }) => {
      const isAllowed = open.includes(room) || (await mayInvite(from))
      if (!isAllowed || (isEncrypted && !config.encryption)) {
        const reason = isAllowed ? invitedToEncrypted : invitedByStranger(whoMay(config))
        await survived('refused an invitation', room, () => wire.leave(room, reason))
        return
      }
      const isMove = follows !== undefined && store.rooms.of(follows) !== undefined
      const isSpace = config.invitesFromSpaces.includes(room) // nobody talks there
      store.rooms.set(room, {
        inviter: from,
        ...(isSpace || isMove ? { greeted: true } : {}),
        ...(isMove ? { was: lineage(store.rooms, follows) } : {}),
      })
      const isIn = await survived('came into a room', room, () => wire.join(room, [serverOf(from)]))
      if (!isIn) store.rooms.forgetRoom(room)
    },
    follow: async (from, to, saidBy) => {
      const line = lineage(store.rooms, from)
      const isAllowed = line.some((room) => open.includes(room)) || (await mayInvite(saidBy))
      if (!isAllowed) return log.warn({ room: hashed(from) }, 'room moved on the word of somebody who may not invite')
      const before = store.rooms.of(from)
      store.rooms.set(to, { inviter: before?.inviter, greeted: true, was: line })
      const isIn = await survived('followed a moved room', to, () => wire.join(to, [serverOf(saidBy)]))
      if (!isIn) return store.rooms.forgetRoom(to)
      const made = Creation.safeParse(await wire.creation(to).catch(() => undefined))
      const isRight = made.data?.predecessor.room_id === from
      if (isRight) await survived('left the old room', from, () => wire.leave(from, ''))
      else await survived('left a room that was not the new one', to, () => wire.leave(to, strayRoom))
    },
    leaveEmpty: async (room) => {
      await survived('left an empty room', room, () => wire.leave(room, leftEmpty))
    },
  }
}

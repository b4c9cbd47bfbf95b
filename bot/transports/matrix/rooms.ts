// bot/transports/matrix/rooms.ts: what the bot asks about its rooms: of the SDK what it has synced, of the server the rest.
import { setTimeout as sleep } from 'node:timers/promises'
import { Direction, EventType, Method, type MatrixClient, type Room } from 'matrix-js-sdk'
import type { DoorWire } from './doors.ts'
import { refusalOf } from './wire.ts'
import type { Self } from './words.ts'

const part = encodeURIComponent

export const isDirect = (client: MatrixClient, room: string): boolean =>
  client.getRoom(room)?.getInvitedAndJoinedMemberCount() === 2

export const isEmpty = (client: MatrixClient, room: string): boolean => {
  const known = client.getRoom(room)
  return known?.getMyMembership() === 'join' && known.getInvitedAndJoinedMemberCount() === 1
}

export function selfIn(client: MatrixClient, room: string): Self {
  const id = client.getUserId() ?? ''
  const displayName = client.getRoom(room)?.getMember(id)?.rawDisplayName
  return { id, displayName: displayName === id ? undefined : displayName }
}

const joined = (client: MatrixClient): readonly Room[] =>
  client.getRooms().filter((room) => room.getMyMembership() === 'join')

/** Where a room has moved, on whose word. */
export function moved(
  client: MatrixClient,
): readonly { readonly from: string; readonly to: string; readonly saidBy: string }[] {
  return joined(client).flatMap((room) => {
    const event = room.getLiveTimeline().getState(Direction.Forward)?.getStateEvents(EventType.RoomTombstone, '')
    const to: unknown = event?.getContent()['replacement_room']
    return event && typeof to === 'string' ? [{ from: room.roomId, to, saidBy: event.getSender() ?? '' }] : []
  })
}

/** A room of the bot and this person alone, where the bot can tell them something. */
export const roomWith = (client: MatrixClient, person: string): string | undefined =>
  joined(client).find((room) => isDirect(client, room.roomId) && room.getMember(person)?.membership === 'join')?.roomId

const joinPauses = [1000, 2000, 4000, 8000] // ms; an invitation may reach the bot before its server knows of it

async function join(client: MatrixClient, room: string, via: readonly string[]): Promise<void> {
  for (const pause of joinPauses) {
    try {
      await client.joinRoom(room, { viaServers: [...via] })
      return
    } catch (error) {
      if (refusalOf(error) === 'refused') throw error
      await sleep(pause)
    }
  }
  await client.joinRoom(room, { viaServers: [...via] })
}

export function doorWireOf(client: MatrixClient): DoorWire {
  const post = (room: string, what: string, body: object): Promise<unknown> =>
    client.http.authedRequest(Method.Post, `/rooms/${part(room)}/${what}`, undefined, { ...body })
  return {
    join: (room, via) => join(client, room, via),
    leave: async (room, reason) => {
      await post(room, 'leave', reason === '' ? {} : { reason })
      await post(room, 'forget', {})
    },
    creation: (room) => client.http.authedRequest(Method.Get, `/rooms/${part(room)}/state/m.room.create`),
    members: async (room) => Object.keys((await client.getJoinedRoomMembers(room)).joined),
  }
}

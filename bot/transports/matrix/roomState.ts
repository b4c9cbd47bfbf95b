// bot/transports/matrix/roomState.ts: what a room is like now, put together from many syncs: state, no messages. Pure.

type StateEvent = { readonly type?: unknown; readonly state_key?: unknown; readonly content?: unknown }
type Events = { readonly events?: readonly StateEvent[] }
export type JoinedPart = {
  readonly state?: Events
  readonly timeline?: Events
  readonly summary?: Readonly<Record<string, unknown>>
  /** The state after the timeline, where the server tells that instead of the state before it. */
  readonly 'org.matrix.msc4222.state_after'?: Events
}
export type RoomState = { readonly state: readonly StateEvent[]; readonly summary: Readonly<Record<string, unknown>> }

export const emptyRoom: RoomState = { state: [], summary: {} }

const isState = (event: StateEvent): boolean => typeof event.state_key === 'string'
const keyOf = (event: StateEvent): string => JSON.stringify([event.type, event.state_key])

/** Of people only those who are there, invited or shut out are kept. */
const isGone = ({ type, content }: StateEvent): boolean =>
  type === 'm.room.member' &&
  typeof content === 'object' &&
  content !== null &&
  'membership' in content &&
  content.membership === 'leave'

const changesIn = (part: JoinedPart): readonly StateEvent[] => {
  const after = part['org.matrix.msc4222.state_after']
  const events = after ? (after.events ?? []) : [...(part.state?.events ?? []), ...(part.timeline?.events ?? [])]
  return events.filter(isState)
}

/** @returns undefined where this sync changes nothing of the room */
export function merged(before: RoomState, part: JoinedPart): RoomState | undefined {
  const changes = changesIn(part)
  const summary = part.summary ?? {}
  if (changes.length === 0 && Object.keys(summary).length === 0) return undefined
  const state = new Map(before.state.map((event) => [keyOf(event), event]))
  for (const event of changes)
    if (isGone(event)) state.delete(keyOf(event))
    else state.set(keyOf(event), event)
  return { state: [...state.values()], summary: { ...before.summary, ...summary } }
}

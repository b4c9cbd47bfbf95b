// bot/limits.ts: how many answers one person and one room may have in a minute. Pure but for what it counts.
import { LRUCache } from 'lru-cache'

export type Judgement =
  | 'answer'
  /** Too many: say so, once. */
  | 'say so'
  /** Too many, and it has been said. */
  | 'silent'

export type Limits = {
  /** May this question be answered? Asking does not count. */
  readonly judge: (person: string, room: string, at: number) => Judgement
  /** An answer was given. */
  readonly count: (person: string, room: string, at: number) => void
}

const minute = 60_000 // ms
const mostRemembered = 10_000 // people and rooms

/** @param at times are those of the questions, so that a backlog worked off at once is not taken for a flood */
export function limitsOf(perMinute: { readonly person: number; readonly room: number }): Limits {
  const answered = new LRUCache<string, readonly number[]>({ max: mostRemembered })
  const told = new LRUCache<string, number>({ max: mostRemembered })
  const recent = (who: string, at: number): readonly number[] =>
    (answered.get(who) ?? []).filter((time) => Math.abs(at - time) < minute)
  return {
    judge: (person, room, at) => {
      const over = [
        { who: `${room} ${person}`, most: perMinute.person },
        { who: room, most: perMinute.room },
      ].find(({ who, most }) => recent(who, at).length >= most)
      if (!over) return 'answer'
      if (Math.abs(at - (told.get(over.who) ?? -Infinity)) < minute) return 'silent'
      told.set(over.who, at)
      return 'say so'
    },
    count: (person, room, at) => {
      for (const who of [`${room} ${person}`, room]) answered.set(who, [...recent(who, at), at])
    },
  }
}

// test/bot/limits.test.ts: so many answers a minute to one person and to one room; then one notice; then silence.
import { expect, test } from 'vitest'
import { limitsOf } from '../../bot/limits.ts'

const second = 1000
/** Asks at these times; an answer that is allowed is given. */
const asking = (perMinute: { person: number; room: number }) => {
  const limits = limitsOf(perMinute)
  return (person: string, at: number, room = '!a') => {
    const judged = limits.judge(person, room, at)
    if (judged === 'answer') limits.count(person, room, at)
    return judged
  }
}

test('six a minute, then one notice, then silence, and after a minute again', () => {
  const ask = asking({ person: 6, room: 100 })
  const judged = Array.from({ length: 9 }, (_, i) => ask('wren', i * second))
  expect(judged).toEqual([...Array.from({ length: 6 }, () => 'answer'), 'say so', 'silent', 'silent'])
  expect(ask('wren', 60 * second)).toBe('answer') // the first of the six is a minute old
  expect(ask('wren', 60 * second)).toBe('silent')
})

test('one person over the limit takes nothing from another, nor from other rooms', () => {
  const ask = asking({ person: 1, room: 100 })
  expect([ask('wren', 0), ask('wren', 1), ask('finch', 2), ask('wren', 3, '!b')]).toEqual([
    'answer',
    'say so',
    'answer',
    'answer',
  ])
})

test('many people together can be too much for a room', () => {
  const ask = asking({ person: 6, room: 3 })
  const judged = ['a', 'b', 'c', 'd', 'e'].map((person, i) => ask(person, i))
  expect(judged).toEqual(['answer', 'answer', 'answer', 'say so', 'silent'])
})

test('what was not answered does not count', () => {
  const ask = asking({ person: 1, room: 100 })
  ask('wren', 0)
  for (let i = 1; i < 50; i += 1) ask('wren', i * second)
  expect(ask('wren', 60 * second)).toBe('answer')
})

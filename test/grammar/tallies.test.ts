// test/grammar/tallies.test.ts: chicks counted in a debate, in the many ways in which keepers say what they are and are not.
import { describe, expect, test } from 'vitest'
import { emptyContext } from '../../grammar/context.ts'
import { understand } from '../../grammar/understand.ts'
import type { Context } from '../../grammar/understand.ts'
import type { Flock, Question } from '../../core/question.ts'

const ask = (text: string): Question => understand(text, emptyContext()).question
const broodsOf = (question: Question): Flock['broods'] => (question.kind === 'carrier' ? question.flock.broods : [])
const counted = (text: string): unknown => broodsOf(ask(text)).flatMap(({ chicks }) => chicks)
const tell = (...messages: readonly string[]): Context =>
  messages.reduce<Context>((context, message) => understand(message, context).context, emptyContext())

describe('what is not among the chicks is no chick that shows it', () => {
  test.each([
    'my cock x a lavender hen: 12 chicks, no lavender. is he a carrier?',
    'black cock x lavender hen, 12 chicks, none of them lavender. is he a carrier?',
    'black cock x lavender hen, 12 chicks all black, is he split to lavender?',
    'black cock, is he a carrier of lavender? 12 chicks with a lavender hen all black',
  ])('%s', (text) => {
    expect(counted(text)).toEqual([{ count: 12, shows: false }])
  })
  test('those that show it, and the rest of all', () => {
    expect(counted('black cock x lavender hen, 12 chicks, 3 lavender. is he a carrier?')).toEqual([
      { count: 3, shows: true },
      { count: 9, shows: false },
    ])
  })
  test('daughters and sons apart, since only daughters tell of what is on the Z', () => {
    expect(
      counted('black cock over black hens gave 8 black pullets and 5 black cockerels. is he split to chocolate?'),
    ).toEqual([
      { count: 8, sex: 'F', shows: false },
      { count: 5, sex: 'M', shows: false },
    ])
  })
  test('the look of the mate is read beside a cock of whom nothing is told', () => {
    const question = ask('my cock x a lavender hen: 12 chicks, no lavender. is he a carrier?')
    expect(question.kind === 'carrier' && question.flock.birds.find(({ name }) => name === 'the hen')).toMatchObject({
      shows: { lav: true },
    })
  })
})

describe('broods of birds by name', () => {
  test.each([
    [
      'Bert x Molly gave 3 white of 11',
      [
        { count: 3, look: 'white' },
        { count: 8, look: 'clear' },
      ],
    ],
    [
      'Bert x Molly: 3 of 11 white',
      [
        { count: 3, look: 'white' },
        { count: 8, look: 'clear' },
      ],
    ],
    [
      'Bert x Molly gave 11 chicks, 3 white',
      [
        { count: 3, look: 'white' },
        { count: 8, look: 'clear' },
      ],
    ],
    ['Bert x Molly gave 8 chicks, no white', [{ count: 8, look: 'clear' }]],
    ['Bert x Molly gave 7 chicks, none of them lavender', [{ count: 7, look: 'clear' }]],
    ['Bert x Molly gave 7 chicks, all black', [{ count: 7, look: 'black' }]],
  ])('%s', (text, chicks) => {
    expect(tell(text).flock.broods).toEqual([{ sire: 'Bert', dam: 'Molly', chicks }])
  })
  test('what is asked of a bird is not told of it', () => {
    const { flock } = tell(
      'Bert x Molly gave 8 chicks, no white',
      'does Molly carry recessive white?',
      'is Bert lavender',
    )
    expect(flock.birds).toEqual([
      { name: 'Bert', sex: 'M' },
      { name: 'Molly', sex: 'F' },
    ])
  })
})

describe('parts of a chick are not its colour', () => {
  test.each([
    ['What did i hatch? grey chick yellow belly, mom buff orp, dad could be splash orp or black orp', 'grey'],
    ['what did i hatch? chick yellow w couple black specks, dads could be RIR or black orp, mom delaware', 'yellow'],
  ])('%s', (text, look) => {
    const question = ask(text)
    expect(question.kind === 'parents' && question.chicks.map(({ tally }) => tally.look)).toEqual([look])
  })
})

describe('names that are English words, or short', () => {
  test.each([
    ['Bert x Daisy gave 3 white of 11', ['Bert', 'Daisy']],
    ['Sid x Daisy: 12 chicks, 3 lavender', ['Sid', 'Daisy']],
    ['Rex x Ada gave 9 black chicks', ['Rex', 'Ada']],
  ])('%s', (text, names) => {
    expect(tell(text).flock.birds.map(({ name }) => name)).toEqual(names)
  })
  test('a seller is nobody’s bird', () => {
    expect(tell('Seller says pullet is split for barred').flock.birds).toEqual([])
  })
})

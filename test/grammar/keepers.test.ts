// test/grammar/keepers.test.ts: 149 rewritten messages of keepers: the right kind of answer about the right birds.
import { describe, expect, test } from 'vitest'
import { resolve } from '../../core/resolve.ts'
import rows from '../data/keepers.json' with { type: 'json' }
import { kindCounts, missingFrom, type Keeper } from './keepers.ts'
import { asked } from './print.ts'

const keepers: readonly Keeper[] = rows

/** Birds that the table names in its own words, or that are not told, by message, each with the reason. */
const otherwise: Readonly<Record<number, string>> = {
  43: 'the gene is written in its normal form, Choc+',
  59: 'a Silkie whose colour is not told stands as the White Silkie, its usual variety',
  117: 'breeds whose colour is not told stand as their usual variety: Silver Laced Wyandotte, Barred Plymouth Rock, White Crested Black Polish',
  163: 'birds of which only the colour is told are called Black bird',
  171: 'the bird is the coloured cock of the debate; no breed is told',
  201: 'a cock of which only the egg he came from is told is called Bird from a blue egg',
  213: 'breeds whose colour is not told stand as their usual variety',
  276: 'breeds whose colour is not told stand as their varieties in the choices',
  279: 'a Sussex whose colour is not told stands as the Light Sussex',
  288: 'a Brahma whose colour is not told stands as the Light Brahma',
  331: 'eight names in a row: asked which birds are meant; the mutt at the end is not told apart',
  364: 'the hens are in a picture and not told',
}

const answered = (keeper: Keeper) => resolve(asked(keeper.text, keeper.before))

describe('the kind of answer counts', () => {
  test.each(keepers.map((keeper) => [keeper.id, keeper.kind, keeper.text.slice(0, 80), keeper] as const))(
    '%i %s: %s',
    (_id, _kind, _text, keeper) => {
      const answer = answered(keeper)
      expect(kindCounts(keeper, answer) ? keeper.kind : answer).toEqual(keeper.kind)
    },
  )
})

describe('the birds are those that were meant', () => {
  test.each(
    keepers.filter(({ id }) => !otherwise[id]).map((keeper) => [keeper.id, keeper.text.slice(0, 80), keeper] as const),
  )('%i %s', (_id, _text, keeper) => {
    expect(missingFrom(answered(keeper), keeper)).toEqual([])
  })

  test.each(Object.entries(otherwise))('%s is met otherwise: %s', (id) => {
    const keeper = keepers.find((one) => one.id === Number(id))!
    expect(missingFrom(answered(keeper), keeper)).not.toEqual([])
  })
})

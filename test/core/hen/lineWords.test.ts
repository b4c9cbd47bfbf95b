// test/core/hen/lineWords.test.ts: what is said of the lines of a mating, and when nothing is.
import { describe, expect, test } from 'vitest'
import { lineWords } from '../../../core/hen/lineWords.ts'
import type { BirdRef } from '../../../core/question.ts'

const red = (line: string): BirdRef => ({ breed: 'Rhode Island Red', line })
const rock = (line: string): BirdRef => ({ breed: 'Barred Plymouth Rock', line })
const said = (sire: BirdRef, dam: BirdRef): string => lineWords({ sire, dam })

describe('lines of one purpose', () => {
  test('for eggs: they lay hard and drop', () =>
    expect(said({ breed: 'Rhode Island White', line: 'production' }, rock('production'))).toMatch(
      /^both lines bred for eggs: they lay hard, drop after two years/,
    ))
  test('for show: fewer eggs', () =>
    expect(
      said({ breed: 'Buff Orpington', line: 'exhibition' }, { breed: 'Blue Orpington', line: 'exhibition' }),
    ).toMatch(/^both lines bred for show: fewer eggs/))
  test('landraces: they vary', () =>
    expect(said({ breed: 'Icelandic landrace' }, { breed: 'Icelandic landrace' })).toMatch(/^both are landraces/))
  test('hatchery stock: nothing sets it apart', () => {
    expect(said({ breed: 'Speckled Sussex', line: 'hatchery' }, { breed: 'Speckled Sussex', line: 'hatchery' })).toBe(
      '',
    )
  })
})

describe('lines that lay 30 eggs apart or more', () => {
  test('a laying sire and a dam of body: each gives its own, whose figures are told', () =>
    expect(said({ breed: 'White Leghorn', line: 'production' }, rock('exhibition'))).toMatch(
      /^eggs from the sire’s laying line \(about 300\), body from the dam’s \(about 150\); the daughters come between/,
    ))
  test('and the other way round', () =>
    expect(said(rock('exhibition'), { breed: 'White Leghorn', line: 'production' })).toMatch(
      /^eggs from the dam’s laying line \(about 300\), body from the sire’s \(about 150\); the daughters come between/,
    ))
  test('neither of body, or neither for eggs: the two figures alone', () => {
    expect(said({ breed: 'White Leghorn', line: 'production' }, rock('production'))).toMatch(
      /^the sire’s side lays about 300, the dam’s about 250; the daughters come between/,
    )
    expect(said(red('exhibition'), rock('exhibition'))).toMatch(/^the sire’s side lays about 190, the dam’s about 150/)
  })
  test('less than that is not worth a word', () =>
    expect(said({ breed: 'Light Sussex', line: 'utility' }, rock('production'))).not.toMatch(/lays about/))
})

describe('a fine-barred dam', () => {
  test('gives her bars and slow feather to sons only, her lay to all', () =>
    expect(said({ breed: 'Black Australorp', line: 'utility' }, rock('exhibition'))).toMatch(
      /reach her sons only; her lower lay/,
    ))
  test('not so under a barred cock, nor as the sire', () => {
    expect(said(rock('production'), rock('exhibition'))).not.toMatch(/sons only/)
    expect(said(rock('exhibition'), { breed: 'Black Australorp', line: 'utility' })).not.toMatch(/sons only/)
  })
  test('nor out of a dam that is only half of it', () =>
    expect(
      said(
        { breed: 'Black Australorp', line: 'utility' },
        { cross: { sire: red('exhibition'), dam: rock('exhibition') } },
      ),
    ).not.toMatch(/sons only/))
})

test('a cross of a laying line and a show line counts as neither', () => {
  const mixed: BirdRef = { cross: { sire: { breed: 'White Leghorn', line: 'production' }, dam: rock('exhibition') } }
  expect(said(mixed, rock('production'))).not.toMatch(/both lines/)
  expect(said({ breed: 'White Leghorn', line: 'production' }, mixed)).toMatch(/^the sire’s side lays about 300/)
})

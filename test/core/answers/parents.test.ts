// test/core/answers/parents.test.ts: from the looks of chicks to their parents, on cases that breeders settle at a glance.
import { describe, expect, test } from 'vitest'
import { ParentsAnswer } from '../../../core/answer.ts'
import { answerParents } from '../../../core/answers/parents.ts'
import type { ParentsQuestion } from '../../../core/question.ts'

type Chick = {
  readonly look?: string
  readonly comb?: string
  readonly form?: readonly string[]
  readonly count?: number
  readonly sex?: 'M' | 'F'
}
const ask = (
  chicks: readonly Chick[],
  sires: readonly string[],
  dams: readonly string[],
  egg?: string,
): ParentsAnswer => {
  const question: ParentsQuestion = {
    kind: 'parents',
    chicks: chicks.map(({ look, comb, form = [], count = 1, sex }) => ({ tally: { count, look, sex }, comb, form })),
    sires: sires.map((breed) => ({ breed })),
    dams: dams.map((breed) => ({ breed })),
    egg,
    assumed: [],
    manner: { symbols: false, units: 'metric' },
  }
  return ParentsAnswer.parse(answerParents(question))
}
const best = ({ candidates: [first] }: ParentsAnswer): string => `${first?.sire.breed} x ${first?.dam.breed}`
const out = ({ ruledOut }: ParentsAnswer): string[] => ruledOut.map(({ bird, by }) => `${bird.breed}: ${by}`)

describe('one glance is enough', () => {
  test('a blue chick of a buff hen: the splash cock, not the black one', () => {
    const answer = ask([{ look: 'grey, yellow belly' }], ['Splash Orpington', 'Black Orpington'], ['Buff Orpington'])
    expect(best(answer)).toBe('Splash Orpington x Buff Orpington')
    expect(out(answer)).toEqual(['Black Orpington: no chick of his is grey'])
    expect(answer.summary).toBe(
      'Splash Orpington is the father, as far as looks tell; Buff Orpington can be the mother.',
    )
    expect(answer.assumptions).toContain('every pair of the birds named was as likely as any other before')
  })
  test('a barred chick of a red cock: the barred hen', () => {
    const answer = ask([{ look: 'barred' }], ['Rhode Island Red'], ['Barred Plymouth Rock', 'Black Australorp'])
    expect(best(answer)).toBe('Rhode Island Red x Barred Plymouth Rock')
    expect(out(answer)).toEqual(['Black Australorp: no chick of hers is barred'])
  })
  test('muffs and blue out of a brown egg: the muffed cock, whoever laid it', () => {
    const answer = ask([{ look: 'blue', form: ['muffs'] }], ['Blue Ameraucana', 'Rhode Island Red'], [], 'brown')
    expect(best(answer)).toBe('Blue Ameraucana x Brown-egg layer')
    expect(answer.candidates[0]!.odds).toBeGreaterThan(0.95)
    expect(answer.assumptions).toContain('nothing is known of the hen but what the egg tells')
  })
  test('a yellow chick of a red cock: the silver hen, though a hen of any colour may be', () => {
    const answer = ask(
      [{ look: 'yellow with a couple of black specks' }],
      ['Rhode Island Red'],
      ['Rhode Island Red', 'Delaware', 'Easter Egger'],
    )
    expect(best(answer)).toBe('Rhode Island Red x Delaware')
    expect(out(answer)).toEqual(['Rhode Island Red: no chick of hers is yellow'])
    expect(answer.candidates.map(({ dam }) => dam.breed)).toContain('Easter Egger')
  })
  test('a look that no bird of known colour gives: one of any colour does not win by default', () => {
    const answer = ask(
      [{ look: 'lavender' }],
      ['Rhode Island Red'],
      ['Rhode Island Red', 'Easter Egger', 'Black Australorp'],
    )
    expect(answer.summary).toContain(
      'only Easter Egger, of any colour, is not ruled out as mother; nothing speaks for it',
    )
    expect(answer.candidates[0]!.odds).toBeLessThan(0.75)
  })
  test('a comb tells what colour does not', () => {
    const answer = ask([{ comb: 'rose' }], ['Black Orpington'], ['Black Wyandotte', 'Black Australorp'])
    expect(best(answer)).toBe('Black Orpington x Black Wyandotte')
    expect(out(answer)).toEqual(['Black Australorp: no chick of hers has a rose comb'])
  })
})

describe('eggs', () => {
  test('a hen of a breed that does not lay such an egg is out', () => {
    const answer = ask([{ look: 'black' }], ['Black Orpington'], ['Black Minorca', 'Black Australorp'], 'brown')
    expect(best(answer)).toBe('Black Orpington x Black Australorp')
    expect(out(answer)).toEqual(['Black Minorca: she does not lay a brown egg'])
  })
  test('an egg of no known colour rules nobody out', () => {
    expect(
      out(ask([{ look: 'black' }], ['Black Orpington'], ['Black Minorca', 'Black Australorp'], 'speckled')),
    ).toEqual([])
  })
})

describe('what the looks do not settle', () => {
  test('two cocks that give the same are not told apart, and the odds are even', () => {
    const answer = ask([{ look: 'black' }], ['Black Orpington', 'Black Australorp'], ['Black Minorca'])
    expect(answer.candidates.map(({ odds }) => odds)).toEqual([expect.closeTo(1 / 2, 2), expect.closeTo(1 / 2, 2)])
    expect(answer.summary).toMatch(
      /^The looks do not tell Black (?:Orpington|Australorp) from Black (?:Orpington|Australorp) as father/u,
    )
  })
  test('none of the birds named can be: another bird is behind it', () => {
    const answer = ask([{ look: 'black', form: ['crest'] }], ['Black Orpington'], ['Black Australorp'])
    expect(answer.summary).toMatch(/^None of Black Orpington, Black Australorp should give such a chick/u)
    expect([answer.ruledOut, answer.ruledOutBy]).toEqual([[], ''])
    expect(answer.candidates[0]!.why).toBe('None of their chicks should look so.')
  })
  test('words that tell nothing leave all pairs as they were', () => {
    const answer = ask([{ look: 'fluffy and very cute' }], ['Rhode Island Red', 'Black Australorp'], ['Light Sussex'])
    expect(answer.candidates.map(({ odds }) => odds)).toEqual([1 / 2, 1 / 2])
  })
})

describe('odds', () => {
  test('of all pairs add to one', () => {
    const answer = ask(
      [{ look: 'yellow' }],
      ['Rhode Island Red', 'Black Australorp'],
      ['Light Sussex', 'Delaware', 'Barred Plymouth Rock'],
    )
    expect(answer.candidates.reduce((sum, { odds }) => sum + odds, 0)).toBeCloseTo(1, 1)
    const ranked = answer.candidates.map(({ odds }) => odds)
    expect(ranked).toEqual(ranked.toSorted((a, b) => b - a))
  })
  test('four chicks alike say more than one: all chicks of the one pair are yellow, half of the other', () => {
    const odds = (count: number): number =>
      ask([{ look: 'yellow', count }], ['Rhode Island Red'], ['Delaware', 'Buff Orpington']).candidates.find(
        ({ dam }) => dam.breed === 'Buff Orpington',
      )?.odds ?? 0
    expect(odds(1)).toBeCloseTo(2 / 3, 2)
    expect(odds(4)).toBeCloseTo(16 / 17, 2)
  })
  test('a sex that is told counts: a yellow pullet of a red cock is no Delaware daughter', () => {
    const son = ask([{ look: 'yellow', sex: 'M' }], ['Rhode Island Red'], ['Delaware'])
    const daughter = ask([{ look: 'yellow', sex: 'F' }], ['Rhode Island Red'], ['Delaware'])
    expect(son.candidates[0]!.why).toBe('All their chicks look so.')
    expect(daughter.candidates[0]!.why).toBe('None of their chicks should look so.')
  })
})

test('what would rule the likeliest pair out is a look it never gives and the next one does', () => {
  const answer = ask([{ look: 'black' }], ['Black Orpington'], ['Black Australorp', 'Blue Orpington'])
  expect(best(answer)).toBe('Black Orpington x Black Australorp')
  expect(answer.ruledOutBy).toBe('A chick that is blue would rule out Black Orpington over Black Australorp.')
})

test('where no bird is named, looks alone name no parents', () => {
  const answer = ask([{ look: 'yellow grey' }], [], [])
  expect(answer.candidates).toEqual([])
  expect(answer.summary).toContain('which cocks and hens')
})

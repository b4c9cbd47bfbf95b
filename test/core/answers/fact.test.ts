// test/core/answers/fact.test.ts: one sign, belief, bird, gene or flock: the verdict first, nothing surer than the catalogue.
import { describe, expect, test } from 'vitest'
import { FactAnswer } from '../../../core/answer.ts'
import { answerFact } from '../../../core/answers/fact.ts'
import { breeds } from '../../../core/breeds.ts'
import { locusIds } from '../../../core/data/loci.ts'
import type { Flock, FactQuestion } from '../../../core/question.ts'
import { topics } from '../../../core/topics.ts'

const ask = (topic: string, more: Partial<FactQuestion> = {}): FactAnswer =>
  answerFact({ kind: 'fact', topic, birds: [], assumed: [], manner: { symbols: false, units: 'both' }, ...more })
const bird = (breed: string, locus?: string): FactAnswer => ask('bird', { birds: [{ breed }], locus })

test('every record, bird and locus gives an answer of the contract', () => {
  for (const { id } of topics) expect(FactAnswer.safeParse(ask(id)).success).toBe(true)
  for (const { name } of breeds) expect([name, FactAnswer.safeParse(bird(name)).success]).toEqual([name, true])
  for (const locus of locusIds) expect(FactAnswer.safeParse(ask('locus', { locus })).success).toBe(true)
})

test('a belief is answered with its verdict first and its sources', () => {
  const answer = ask('any-white-hen')
  expect(answer.verdict).toBe('false')
  expect(answer.summary).toMatch(/^No: the hen must be silver/)
  expect(answer.says[0]).toBe(answer.summary)
  expect(answer.sources.some(({ status }) => status === 'read')).toBe(true)
})

describe('a bird', () => {
  test('of gold is said to be gold, with what cock and hen carry', () => {
    expect(bird('Buff Orpington', 'S').summary).toBe('Buff Orpington is gold: cocks s+/s+, hens s+/-.')
  })
  test('of silver is said to be silver', () => {
    expect(bird('Light Sussex').says.join(' ')).toContain('Light Sussex is silver: cocks S/S, hens S/-.')
  })
  test('that is black or white hides it, and the answer is in doubt', () => {
    for (const name of ['Black Australorp', 'White Wyandotte', 'White Leghorn']) {
      const answer = bird(name, 'S')
      expect(answer.summary).toMatch(/nobody can see it/)
      expect(answer.certainty).not.toBe('sure')
    }
  })
  test('that is white tells its white first', () => {
    expect(bird('White Wyandotte').summary).toBe(
      'White Wyandotte is recessive white (c/c): it hides every colour below.',
    )
    expect(bird('White Leghorn').summary).toContain('dominant white')
    expect(bird('Rhode Island White').summary).toContain('differs by strain')
    expect(bird('White Wyandotte', 'c').certainty).toBe('sure')
  })
  test('that is barred tells where the bars go', () => {
    expect(bird('Barred Plymouth Rock', 'B').summary).toContain('to their sons only')
    expect(bird('Rhode Island Red', 'B').summary).toBe('Rhode Island Red is not barred.')
  })
  test('of unknown feathering speed is told to be looked at', () => {
    expect(bird('Rhode Island Red', 'K').summary).toContain('differs by strain')
    expect(bird('New Hampshire', 'K').summary).toContain('fast-feathering')
  })
  test('of a mixture may have two, one or no copies', () => {
    expect(bird('Easter Egger', 'O').summary).toContain('two, one or no copies of O')
    expect(bird('Easter Egger', 'O').certainty).toBe('doubtful')
  })
  test('that is a hybrid is said not to breed true', () => {
    expect(bird('Red sex-link').says.join(' ')).toMatch(/first cross.*does not breed true/)
    expect(bird('Red sex-link').summary).toContain('hens are gold')
  })
  test('in a line lays what that line lays', () => {
    const of = (line: string): string => ask('bird', { birds: [{ breed: 'Rhode Island Red', line }] }).says.join(' ')
    expect(of('production')).toContain('250 to 290')
    expect(of('exhibition')).toContain('150 to 220')
  })
  test('beside another is answered bird by bird', () => {
    const { says, about } = ask('bird', { birds: [{ breed: 'Buff Orpington' }, { breed: 'Light Brahma' }], locus: 'S' })
    expect(about).toBe('Buff Orpington, Light Brahma')
    expect(says).toEqual([
      'Buff Orpington is gold: cocks s+/s+, hens s+/-.',
      'Light Brahma is silver: cocks S/S, hens S/-.',
    ])
  })
})

test('figures that nobody read are worded as keepers’ reckoning', () => {
  for (const { name } of breeds)
    for (const words of bird(name).says)
      if (/\d{2}0/.test(words)) expect([name, words, /reckoning|conditions/.test(words)]).toEqual([name, words, true])
})

test('a locus tells whether a hen can carry it unseen', () => {
  expect(ask('locus', { locus: 'choc' }).says.join(' ')).toContain('she cannot carry it unseen')
  expect(ask('locus', { locus: 'lav' }).says.join(' ')).toContain('It is not on the Z')
})

test('the flock told so far is listed bird by bird', () => {
  const flock: Flock = {
    birds: [
      { name: 'Bert', sex: 'M', bird: { breed: 'Black Orpington' }, shows: { lav: false } },
      { name: 'Ada', sex: 'F', bird: { breed: 'Lavender Orpington' } },
    ],
    broods: [{ sire: 'Bert', dam: 'Ada', chicks: [{ count: 7, look: 'black' }] }],
  }
  const { says, summary } = ask('flock', { flock })
  expect(summary).toBe('So far you have told me of 2 birds and 1 brood.')
  expect(says).toEqual([
    'Bert: Black Orpington cock, not lavender.',
    'Ada: Lavender Orpington hen.',
    'Chicks of Bert and Ada: 7 black.',
  ])
  expect(ask('flock').says).toHaveLength(1)
})

test('what nobody wrote a record for is said to be unknown, with examples', () => {
  expect(ask('phrenology').summary).toMatch(/^I have nothing on that/)
  expect(ask('bird').certainty).toBe('doubtful')
})

describe('what was asked of a bird is said first, and its genes are left out', () => {
  const asked = (breed: string, aspect: 'eggs' | 'shell' | 'comb' | 'legs' | 'size' | 'feed') =>
    answerFact({
      kind: 'fact',
      topic: 'bird',
      birds: [{ breed }],
      aspects: [aspect],
      assumed: [],
      manner: { symbols: false, units: 'both' },
    })
  test.each([
    ['Cream Legbar', 'shell', /blue/],
    ['Cream Legbar', 'eggs', /\d+ to \d+ in the first year/],
    ['Light Brahma', 'comb', /pea/],
    ['Welsummer', 'legs', /yellow/],
    ['Black Jersey Giant', 'size', /13\.0 lb/], // the standard: cocks 13 lb
    ['Black sex-link', 'feed', /perhaps \d+ to \d+ g a day/],
  ] as const)('%s: %s', (breed, aspect, says) => {
    const answer = asked(breed, aspect)
    expect(answer.summary).toMatch(says)
    expect(answer.says.join(' ')).not.toMatch(/s\+\/s\+|ground is/)
  })
})

describe('two genes: do they travel together', () => {
  const of = (locus: string, otherLocus: string): FactAnswer => ask('linked', { locus, otherLocus })
  test.each([
    ['S', 'K', 'true', /silver and slow feathering .* linked; they part in 2 or 3 of 100/],
    ['K', 'S', 'true', /slow feathering and silver/],
    ['Cr', 'F', 'true', /25 to 30 of 100/],
    ['B', 'Id', 'true', /disputed/],
    ['K', 'choc', 'true', /not measured/],
    ['S', 'B', 'partly', /both sit on the Z, but so far apart/],
    ['lav', 'mo', 'false', /independently, as far as is known/],
    ['B', 'lav', 'false', /barring sits on the Z and lavender does not/],
    ['lav', 'B', 'false', /barring sits on the Z and lavender does not/],
  ])('%s and %s', (locus, other, verdict, words) => {
    const answer = of(locus, other)
    expect(FactAnswer.safeParse(answer).success).toBe(true)
    expect(answer.verdict).toBe(verdict)
    expect(answer.summary).toMatch(words)
  })
  test('every two genes have an answer, the same whichever comes first', () => {
    for (const one of locusIds)
      for (const other of locusIds) {
        if (one === other) continue
        expect(of(one, other).verdict).toBe(of(other, one).verdict)
        expect(of(one, other).summary.length).toBeLessThan(161)
      }
  })
  test('one gene alone is no question of linkage', () => expect(of('S', 'S').about).toBe('nothing known'))
})

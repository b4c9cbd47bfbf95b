// test/grammar/carriers.test.ts: debates as keepers type them on a phone: chicks counted, kin told, and the odds that follow, by hand.
import { describe, expect, test } from 'vitest'
import { resolve } from '../../core/resolve.ts'
import { emptyContext } from '../../grammar/context.ts'
import { chicksCounted } from '../../grammar/read/chicks.ts'
import { readingOf } from '../../grammar/reading.ts'
import { understand } from '../../grammar/understand.ts'

const answer = (text: string) => resolve(understand(text, emptyContext()).question)
const odds = (text: string) => {
  const said = answer(text)
  return said.kind === 'carrier'
    ? [said.allele, said.now, said.nowFraction ?? said.summary]
    : [said.kind, said.kind === 'silent' ? '' : 'summary' in said ? said.summary : '']
}

describe('chicks counted: how many, of how many, and what they are or are not', () => {
  const counted = (text: string) =>
    chicksCounted(readingOf(text).tokens).map(
      ({ count, of, sex, look, not }) =>
        `${count}${of === undefined ? '' : `/${of}`}${sex ?? ''}${not ? ' not' : ''} ${look.map(({ word }) => word).join(' ')}`,
    )
  test.each([
    ['got 0 lav out of 12', ['0/12 lav']],
    ['20 chicks not one white', ['20 not white']],
    ['no whites in 14 chicks off my roo and a white hen', ['0/14 whites']],
    ['none of the 12 were lavender', ['0/12 lavender']],
    ['all 9 came black from black cock x lavender hen', ['9 black']],
    ['3/11 white', ['3/11 white']],
    ['half of 12 chicks were lav', ['6/12 lav']],
    ['one white chick out of 10 from 2 black birds', ['1/10 white']],
    ['put him on 4 of his own daughters, 24 chicks no lavs', ['24 not lavs']],
    ['put my black cock on 3 lav hens, 10 chicks all black', ['10 black']],
    ['16 clear chicks over a hen known to carry lavender', ['16 clear']],
    ['1 chocolate pullet of 6', ['1/6F chocolate']],
    ['we got a chocolate pullet from two black birds', ['1F chocolate']],
    ['set 24 eggs 15 hatched all black', ['15 black']],
    ['my cock is 2 years old and gave 12 black chicks', ['12 black']],
    ['6 chicks so far', ['6 ']],
    ['8 of 8 chicks from a lav hen are black', ['8/8 black']],
    ['9 chicks off a lavender hen came out black', ['9 black']],
    ['5 chicks from a hen that is lavender, all black', ['5 black']],
    ['1 chick in 12 was chocolate', ['1/12 chocolate']],
    ['One chick out of 9 came out with a single comb', ['1/9 single comb']],
    ['white chick popped up from my black pair', ['1 white']],
    ['white chick with a black spot, boy or girl', []],
    ['would one lavender chick prove it', []],
    ['which one carries white', []],
  ])('%s', (text, wanted) => {
    expect(counted(text)).toEqual(wanted)
  })
})

describe('chicks so far', () => {
  test.each([
    ['got 0 lav out of 12 from my black cock n a lavender hen does he carry it', 'lav', 1 / (1 + 2 ** 12)],
    ['all 9 came black from black cock x lavender hen so hes clear right?', 'lav', 1 / (1 + 2 ** 9)],
    ['roo is black hen is lav, seven black chicks so far. carrier?', 'lav', 1 / (1 + 2 ** 7)],
    ['7 dark chicks from a lavender hen. is the cock split for lav?', 'lav', 1 / (1 + 2 ** 7)],
    [
      '16 clear chicks over a hen known to carry lavender. does my black cock carry it?',
      'lav',
      1 / (1 + (4 / 3) ** 16),
    ],
    ['5 black chicks from a split hen, is roo carrying lav?', 'lav', 1 / (1 + (4 / 3) ** 5)],
    ['is my silver cock split to gold? he gave 6 silver pullets and no gold', 's+', 1 / (1 + 2 ** 6)],
    ['black roo x lav hen = 3 lav 4 black, so he carries?', 'lav', 1],
    ['Black cock over black hens, 6 chicks, 1 chocolate pullet', 'choc', 1],
    ['one white chick out of 10 from 2 black birds, which one carries white', 'c', 1],
    ['the breeder swears he is split to lavender but 8 of 8 chicks from a lav hen are black. true?', 'lav', 1 / 257],
    ['only 3 chicks hatched from my test mating with a lav hen, all black. whats the odds now', 'lav', 1 / 9],
    ['Rooster x lavender hen: 1 lav, 9 black. Rooster pure black?', 'lav', 1],
    ['12 chicks out of my lav hen, none lav. carrier?', 'lav', 1 / 4097],
    ['One chick out of 9 came out with a single comb from my wyandotte pair. what does that prove', 'r+', 1],
    ["white chick popped up out of my black pair, who's to blame", 'c', 1],
  ])('%s', (text, allele, now) => {
    const [of, chance] = odds(text)
    expect(of).toBe(allele)
    expect(chance).toBeCloseTo(now, 12)
  })
  /** A carrier's daughter out of a free hen carries it half the time; then a quarter of her chicks by him show it. */
  const daughters = (...broods: readonly number[]): number => {
    const factor = broods.reduce((product, n) => product * (1 / 2 + (3 / 4) ** n / 2), 1)
    return factor / (1 + factor)
  }
  test.each([
    ['put him on 4 of his own daughters, 24 chicks no lavs, can i trust hes not split lavender', daughters(6, 6, 6, 6)],
    ['bred my black cock to his daughter, 10 chicks none white. does he carry recessive white?', daughters(10)],
    ['My black cock over his own daughters, 15 chicks, none white. Does he carry recessive white?', daughters(5, 5, 5)],
  ])('%s', (text, now) => {
    expect(odds(text)[1]).toBeCloseTo(now, 12)
  })
  test('how many daughters they were is said where it was taken', () => {
    const said = answer('black cock over his own daughters, 15 chicks, none white. does he carry recessive white?')
    expect(said).toMatchObject({
      summary: 'After 15 clear chicks from 3 of his own daughters: about 19 in 100 that he carries recessive white.',
    })
    expect('assumed' in said && said.assumed).toContainEqual({ kind: 'daughters', count: 3 })
  })
  test('chicks of which no look is told are asked about', () => {
    const said = answer('My cock is black over a lavender hen. 6 chicks. does he carry lavender?')
    expect(said).toMatchObject({ kind: 'ask-back', missing: 'look', provisional: { kind: 'carrier' } })
  })
})

describe('what the family tells', () => {
  test.each([
    ['Is my black cock Bert split to lavender? His parents are both split', 2 / 3],
    ['his brother is lavender, he is black. whats the chance he carries lav', 2 / 3],
    ['her sister threw lav chicks, is my black hen likely split to lavender?', 1 / 2],
    ['grandad was lavender. odds my black cockerel carries lav?', 1 / 2],
    ['his grandad was split to lav, chance my black cockerel carries it?', 1 / 4],
    ['sire is split to lav, dam is black. is my black pullet carrying lavender', 1 / 2],
    ['her mum was lavender, is she split?', 1],
    ['hes out of a lavender hen, is he split?', 1],
    ['cock from a chocolate father and black mum, is he split choc', 1],
    ['his sister gave 2 lavender chicks. is he a carrier', 1 / 2],
    ["Rooster's half brother made 3 lavender chicks last year, odds mine carries lav?", 1 / 4],
  ])('%s', (text, now) => {
    expect(odds(text)[1]).toBeCloseTo(now, 12)
  })
  test('of whom it is asked: the pullet, and not her sire', () => {
    const said = understand('sire is split to lav, dam is black. is my black pullet carrying lavender', emptyContext())
    expect(said.question).toMatchObject({ kind: 'carrier', of: 'the hen' })
  })
  test('a hen told to be split on the Z is one that shows it, and that is said', () => {
    const said = answer("my cock's mum was split to chocolate, is he carrying chocolate")
    expect('assumptions' in said && said.assumptions.join()).toContain(
      'a hen has one Z and cannot be split for chocolate',
    )
  })
})

describe('chicks that were counted tell of the parent that is asked about, not of themselves', () => {
  test.each([
    ['9 black chicks from my lavender hen, is the black cock split?', 'the cock', 1 / 513],
    ['12 chicks from my black cock and a lavender hen and no lavender one, is he split?', 'the cock', 1 / 4097],
    ['7 black pullets from a chocolate hen by my black cock, is he split to choc', 'the cock', 1 / 129],
  ])('%s', (text, of, now) => {
    const { question } = understand(text, emptyContext())
    expect(question).toMatchObject({ kind: 'carrier', of })
    expect(odds(text)[1]).toBeCloseTo(now, 12)
  })
})

describe('a chick of two told parents', () => {
  test.each([
    ['black chick out of two lav splits. 2/3 chance its split right?', 'the chick', 2 / 3],
    ['chance a coloured pullet from two split recessive white birds carries white', 'the daughter', 2 / 3],
    ['what are the odds a black chick from lav x black carries lav', 'the chick', 1],
    ['are all the black chicks from my lavender roo and black hen split?', 'the chick', 1],
    ['are chicks from a lavender orpington cock over black orpington hens all split?', 'the chick', 1],
    ['do the sons of a choc hen and a black cock carry chocolate', 'the son', 1],
    ['is a cockerel from a black cock split to lav and a black hen carrying lav', 'the son', 1 / 2],
  ])('%s', (text, of, now) => {
    const { question } = understand(text, emptyContext())
    expect(question).toMatchObject({ kind: 'carrier', of })
    expect(odds(text)[1]).toBeCloseTo(now, 12)
  })
  test('a daughter shows what is on her Z', () => {
    const said = answer('will daughters out of a chocolate cock and black hen be split for chocolate?')
    expect(said).toMatchObject({ kind: 'carrier', possible: false })
  })
})

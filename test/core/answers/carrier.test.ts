// test/core/answers/carrier.test.ts: the carrier debate as it is answered: verdict first, odds, what settles it, what cannot be.
import { describe, expect, test } from 'vitest'
import { CarrierAnswer } from '../../../core/answer.ts'
import { answerCarrier } from '../../../core/answers/carrier.ts'
import type { Brood, CarrierQuestion, FlockBird } from '../../../core/question.ts'
import { published } from '../../published.ts'

const ask = (
  of: string,
  allele: string,
  birds: readonly FlockBird[],
  broods: readonly Brood[] = [],
  more: Partial<CarrierQuestion> = {},
): CarrierAnswer => {
  const loci: Readonly<Record<string, string>> = { 's+': 'S', 'b+': 'B', 'r+': 'R', 'o+': 'O' }
  const answer = answerCarrier({
    kind: 'carrier',
    of,
    allele,
    locus: loci[allele] ?? allele,
    flock: { birds, broods },
    rivals: [],
    assumed: [],
    manner: { symbols: false, units: 'metric' },
    ...more,
  })
  return CarrierAnswer.parse(answer)
}
const dark = { lav: false }
const ada: FlockBird = { name: 'Ada', shows: { lav: true } }
const bert: FlockBird = { name: 'Bert', sex: 'M', shows: dark }
const brood = (sire: string, dam: string, ...chicks: Brood['chicks']): Brood => ({ sire, dam, chicks })

describe('after seven dark chicks from a lavender hen', () => {
  const birds: readonly FlockBird[] = [
    { name: 'the cock', sex: 'M' },
    { name: 'the hen', sex: 'F', shows: { lav: true } },
  ]
  const answer = ask('the cock', 'lav', birds, [brood('the cock', 'the hen', { count: 7, shows: false, look: 'dark' })])

  test('the verdict stands first, in plain words', () => {
    expect(answer.summary).toBe('After 7 dark chicks from a lavender hen: under 1 in 100 that he carries lavender.')
  })
  test('before, now, the exact fraction, and by how much the chicks moved it', () => {
    expect([answer.possible, answer.before, answer.nowFraction]).toEqual([true, 1 / 2, '1/129'])
    expect(answer.now).toBeCloseTo(1 / 129, 15)
    expect(answer.moved).toEqual([{ reading: '7 dark chicks from a lavender hen', factor: 1 / 128 }])
  })
  test('the even chance beforehand is told as taken, and what other chances would have come to', () => {
    expect(answer.assumptions).toEqual(['before the chicks the cock was as likely to carry it as not'])
    expect(answer.sensitivity).toBe(
      'That takes an even chance before the chicks. Had it been 1 in 4, it would now be 3 in 1000; had it been 3 in 4, 2 in 100.',
    )
  })
  test('no more chicks are needed, and one lavender one would overthrow it', () => {
    expect(answer.moreChicks[0]).toEqual({
      mating: 'with a lavender hen',
      for95: 0,
      for99: 0,
      to5: 0,
      to1: 0,
      clear: 0.5,
    })
    expect(answer.oneContraryChick).toMatch(/^One chick that is lavender proves it at once/u)
  })
  test('it says whose work stands behind the gene', () => expect(answer.sources.length).toBeGreaterThan(0))
})

describe('pure for a dominant: the lack of it is what a bird may carry unseen', () => {
  const rose: FlockBird = { name: 'the cock', sex: 'M', bird: { breed: 'Silver Laced Wyandotte' } }
  const single: FlockBird = { name: 'the hen', sex: 'F', bird: { breed: 'Rhode Island Red' } }
  const of = (shows: boolean, count: number): Brood => brood('the cock', 'the hen', { count, shows })

  test('a breed whose record lists no rose comb is single-combed, so that nine rose-combed chicks of it halve nine times', () => {
    const answer = ask('the cock', 'r+', [rose, single], [of(false, 9)])
    expect(answer.nowFraction).toBe('1/513') // even before; 1/2 to the ninth
    expect(answer.summary).toBe(
      'Almost surely pure for rose comb: after 9 rose-combed chicks from a Rhode Island Red hen, under 1 in 100 that he carries single comb.',
    )
  })
  test('one single-combed chick settles it', () => {
    const answer = ask('the cock', 'r+', [rose, single], [of(true, 1), of(false, 8)])
    expect([answer.now, answer.summary]).toEqual([
      1,
      'Certain: the cock carries single comb and is not pure for rose comb.',
    ])
  })
  test('a bird known by its look alone may be anything at the comb', () => {
    const black: FlockBird = { name: 'the hen', sex: 'F', bird: { breed: 'Black bird' } }
    expect(ask('the cock', 'r+', [rose, black], [of(false, 9)]).now).toBeNull()
  })
  test('blue shells are read on daughters', () => {
    const cock: FlockBird = { name: 'the cock', sex: 'M', bird: { breed: 'Easter Egger' } }
    const hen: FlockBird = { name: 'the hen', sex: 'F', bird: { breed: 'White Leghorn' } }
    const daughters = brood('the cock', 'the hen', { count: 3, sex: 'F', shows: false })
    expect(ask('the cock', 'o+', [cock, hen], [daughters]).nowFraction).toBe('1/9')
  })
})

const bourdon = { ref: 'Bourdon, Understanding Animal Breeding, on test matings', status: 'from memory' } as const

published('with a known carrier 11 clear chicks for 95 in 100, and 17, not 16, for 99', bourdon, () => {
  const { moreChicks } = ask('Bert', 'lav', [bert])
  expect(moreChicks.map(({ mating, for95, for99 }) => [mating, for95, for99])).toEqual([
    ['with a lavender hen', 5, 7],
    ['with a hen known to carry it', 11, 17],
    ['with his own daughters out of hens free of it, one chick from each', 23, 35],
  ])
})

describe('what the family tells', () => {
  const family: readonly FlockBird[] = [
    { ...bert, sire: 'Sid', dam: 'Daisy' },
    { name: 'Ghost', sire: 'Sid', dam: 'Daisy', shows: { lav: true } },
    { name: 'Sid', shows: dark },
    { name: 'Daisy', shows: dark },
  ]
  const answer = ask('Bert', 'lav', family)
  test('the clear brother of a lavender bird: 2 in 3, and that is no guess', () => {
    expect(answer.summary).toBe('2 in 3 that Bert carries lavender.')
    expect([answer.before, answer.now, answer.nowFraction, answer.sensitivity]).toEqual([2 / 3, 2 / 3, '2/3', null])
    expect(answer.assumptions).not.toContainEqual(expect.stringContaining('as likely'))
  })
  test('power does not ask how likely it was, the odds do: 5 and 6 chicks', () => {
    expect(answer.moreChicks[0]).toMatchObject({ for95: 5, for99: 7, to5: 6, to1: 8 })
  })
  test('chicks then move it from there', () => {
    const after = ask('Bert', 'lav', [...family, ada], [brood('Bert', 'Ada', { count: 3, shows: false })])
    expect([after.before, after.nowFraction]).toEqual([2 / 3, '1/5'])
    expect(after.summary).toBe('After 3 clear chicks from Ada (lavender): 1 in 5 that he carries lavender.')
    expect(after.moreChicks[0]).toMatchObject({ for95: 2, for99: 4 })
  })
  test('several matings are told one by one, and multiply', () => {
    const after = ask(
      'Bert',
      'lav',
      [...family, ada, { name: 'Eve', carries: { lav: true }, shows: dark }],
      [brood('Bert', 'Ada', { count: 2, shows: false }), brood('Bert', 'Eve', { count: 1, shows: false })],
    )
    expect(after.moved.map(({ reading }) => reading)).toEqual([
      '2 clear chicks from Ada (lavender)',
      '1 clear chick from Eve (a known carrier)',
    ])
    expect(after.moved[0]!.factor).toBeCloseTo(1 / 4, 15)
    expect(after.moved[1]!.factor).toBeCloseTo(3 / 4, 15)
    expect(after.nowFraction).toBe('3/11')
  })
  test('a named chick counts as the others do', () => {
    const after = ask('Bert', 'lav', [...family, ada, { name: 'Kit', sire: 'Bert', dam: 'Ada', shows: dark }])
    expect(after.moved).toEqual([{ reading: 'Kit: not lavender', factor: expect.closeTo(1 / 2, 12) }])
    expect(after.nowFraction).toBe('1/2')
  })
})

describe('a chick that proves it', () => {
  const answer = ask(
    'Bert',
    'lav',
    [bert, { name: 'Daisy', shows: dark }],
    [brood('Bert', 'Daisy', { count: 1, shows: true }, { count: 8, shows: false })],
  )
  test('proves it of both parents', () => {
    expect(answer.summary).toBe('Certain: Bert carries lavender, and so does Daisy.')
    expect([answer.now, answer.moved[0]!.factor, answer.why]).toEqual([
      1,
      null,
      'A bird free of lavender cannot give such a chick.',
    ])
    expect([answer.moreChicks, answer.oneContraryChick, answer.sensitivity, answer.assumptions]).toEqual([
      [],
      '',
      null,
      [],
    ])
  })
  test('of the lavender hen nothing new is said', () => {
    const after = ask('Bert', 'lav', [bert, ada], [brood('Bert', 'Ada', { count: 1, shows: true })])
    expect(after.summary).toBe('Certain: Bert carries lavender.')
  })
})

describe('nothing that bears on it', () => {
  test('nothing told: no figure, and what would tell', () => {
    const answer = ask('Bert', 'lav', [{ ...bert, bird: { breed: 'Black Orpington' } }])
    expect([answer.before, answer.now, answer.nowFraction]).toEqual([null, null, null])
    expect(answer.summary).toBe(
      'Nothing told so far says whether Bert carries lavender. A test mating does: 5 clear chicks with a lavender hen, 7 to be sure.',
    )
    expect(answer.why).toMatch(/looks like a bird with none/u)
  })
  test('a bird the flock does not know is asked about all the same', () => {
    expect(ask('Max', 'lav', []).now).toBeNull()
  })
  test('clear chicks from a mate that may hide it: no figure, and what they would say if she carried it', () => {
    const answer = ask('Bert', 'lav', [bert], [brood('Bert', 'Daisy', { count: 9, shows: false })])
    expect(answer.summary).toBe(
      '9 clear chicks from Daisy say nothing of Bert: a mate free of lavender hides it in all of them.',
    )
    expect([answer.before, answer.now]).toEqual([null, null])
    expect(answer.why).toBe('If Daisy carries it too, they bring Bert from an even chance to about 7 in 100.')
    expect(answer.assumptions).toEqual([
      'birds of whom nothing was told are free of lavender, as far as the chicks allow',
    ])
  })
})

describe('what cannot be', () => {
  test('a hen is not split at a locus of the Z', () => {
    const answer = ask('Daisy', 'choc', [{ name: 'Daisy', sex: 'F' }])
    expect([answer.possible, answer.now]).toEqual([false, null])
    expect(answer.summary).toBe('No: a hen cannot be split for chocolate. It is on the Z, and she has only one.')
    expect(answer.why).toMatch(/^A hen has one Z, from her father: she is chocolate or she is not\./u)
  })
  test('nor for barring, and gold hens do not carry silver, but black may hide it', () => {
    expect(ask('the pullet', 'B', [{ name: 'the pullet', sex: 'F' }]).possible).toBe(false)
    const gold = ask('the hen', 'S', [{ name: 'the hen', sex: 'F', shows: { S: false } }])
    expect([gold.possible, gold.now]).toEqual([false, 0])
    expect(gold.why).toContain('hidden by white plumage, or by black plumage')
  })
  test('a smooth bird has no frizzle to pass on, and a frizzled one has it', () => {
    const smooth = ask('Max', 'F', [{ name: 'Max', shows: { F: false } }])
    expect([smooth.possible, smooth.now, smooth.summary]).toEqual([
      false,
      0,
      'No: frizzle is dominant, so a bird that does not show it has none to pass on.',
    ])
    expect(ask('Max', 'F', [{ name: 'Max', shows: { F: true } }]).summary).toBe(
      'Max shows it: a bird that is frizzled has frizzle and passes it on.',
    )
  })
  test('silver below black plumage is another matter', () => {
    const answer = ask('Bert', 'S', [{ name: 'Bert', sex: 'M', bird: { breed: 'Black Australorp' } }])
    expect([answer.possible, answer.now, answer.summary]).toEqual([
      true,
      null,
      'Bert may have silver unseen: it is hidden by black plumage.',
    ])
  })
  test('a dominant that may fail to show can be carried unseen', () => {
    const answer = ask('Max', 'Po', [{ name: 'Max', sex: 'M', shows: { Po: false } }])
    expect(answer.possible).toBe(true)
    expect(answer.moreChicks[0]!.mating).toBe('with any hen free of it')
    expect(answer.oneContraryChick).toBe(
      'One chick of his that is five-toed, from a mate free of it, proves that Max has it.',
    )
  })
  test('readings that contradict each other are named', () => {
    const answer = ask(
      'Bert',
      'lav',
      [{ name: 'Bert', carries: { lav: false } }, ada],
      [brood('Bert', 'Ada', { count: 1, shows: true })],
    )
    expect(answer.summary).toBe('What was told of Bert and the chicks cannot all be true.')
    expect(answer.conflict).toEqual([
      { bird: 'Bert', reading: 'is free of lav' },
      { bird: 'chicks 1 of Bert and Ada', reading: 'lavender' },
    ])
    expect([answer.now, answer.moved]).toEqual([null, []])
  })
})

describe('a mate that was spoken of', () => {
  const hen = { name: 'the hen', sex: 'F' as const, bird: { genotype: { lav: ['Lav+', 'lav'] } } }
  test('a known carrier: her mating stands first, and 17 clear chicks make sure', () => {
    const answer = ask('the cock', 'lav', [{ name: 'the cock', sex: 'M' }, hen])
    expect(answer.summary).toBe(
      'Nothing told so far says whether the cock carries lavender. A test mating does: 11 clear chicks with a hen known to carry it, 17 to be sure.',
    )
    expect(answer.moreChicks.map(({ for99 }) => for99)).toEqual([17, 7, 35])
  })
  test('one that shows it', () => {
    expect(
      ask('the cock', 'lav', [
        { name: 'the cock', sex: 'M' },
        { ...ada, sex: 'F' },
      ]).moreChicks[0]!.for99,
    ).toBe(7)
  })
  test('his own dam is none', () => {
    const kin = [{ name: 'the cock', sex: 'M' as const, dam: 'the hen' }, hen]
    expect(ask('the cock', 'lav', kin).moreChicks[0]!.for99).toBe(7)
  })
})

describe('what the question itself says', () => {
  const kin: readonly FlockBird[] = [
    { name: 'the sire', sex: 'M' },
    { name: 'the dam', sex: 'F' },
    { name: 'the sibling', sire: 'the sire', dam: 'the dam', shows: { c: true } },
  ]
  test('a bird asked about does not show it, or nobody would ask', () => {
    const answer = ask('the cock', 'c', [{ name: 'the cock', sex: 'M', sire: 'the sire', dam: 'the dam' }, ...kin])
    expect(answer.nowFraction).toBe('2/3')
  })
  test('that it is split is asked and not told', () => {
    const split = { genotype: { lav: ['Lav+', 'lav'] } }
    expect(ask('Bert', 'lav', [{ name: 'Bert', sex: 'M', bird: split }]).now).toBeNull()
    expect(ask('Bert', 'lav', [{ name: 'Bert', sex: 'M', bird: { genotype: { lav: ['lav'] } } }]).now).toBeNull()
    expect(ask('Bert', 'lav', [{ name: 'Bert', sex: 'M', bird: { genotype: { lav: ['Lav+', 'Lav+'] } } }]).now).toBe(0)
  })
  test('of a bird that shows it, by its breed or by a word, there is no doubt', () => {
    expect(ask('Bert', 'lav', [{ name: 'Bert', sex: 'M', bird: { breed: 'Lavender Orpington' } }]).now).toBe(1)
    expect(ask('Bert', 'lav', [{ name: 'Bert', sex: 'M', shows: { lav: true } }]).now).toBe(1)
  })
  test('a mate of no told breed is called by its look', () => {
    const hen = { name: 'the hen', sex: 'F' as const, bird: { breed: 'Lavender bird' } }
    const answer = ask(
      'the cock',
      'lav',
      [{ name: 'the cock', sex: 'M' }, hen],
      [brood('the cock', 'the hen', { count: 2, shows: false })],
    )
    expect(answer.summary).toBe('After 2 clear chicks from a lavender hen: 1 in 5 that he carries lavender.')
  })
})

describe('a cock split on the Z', () => {
  test('is told by his daughters, whoever the hen', () => {
    const answer = ask('Bert', 'choc', [bert], [brood('Bert', 'Daisy', { count: 5, sex: 'F', shows: false })])
    expect([answer.summary, answer.nowFraction]).toEqual([
      'After 5 clear daughters from Daisy: about 3 in 100 that he carries chocolate.',
      '1/33',
    ])
    expect(answer.moreChicks[0]).toMatchObject({ mating: 'with any hen, counting daughters only', for95: 0, for99: 2 })
    expect(answer.oneContraryChick).toMatch(/^One chocolate daughter proves it at once: her one Z is her father's\./u)
  })
})

describe('two rivals for the father', () => {
  const birds = [bert, { name: 'Sid', sex: 'M' as const, shows: { lav: true } }, ada]
  test('a dark chick of two lavender birds cannot be: the other one is the father', () => {
    const answer = ask(
      'Bert',
      'lav',
      birds,
      [brood('Bert', 'Ada', { count: 1, shows: true }, { count: 2, shows: false })],
      { rivals: ['Sid'] },
    )
    expect(answer.rivals).toEqual([
      { sire: 'Bert', odds: 1, why: 'nothing told says whether he carries lavender' },
      { sire: 'Sid', odds: 0, why: 'lavender himself' },
    ])
    expect(answer.summary).toBe('Bert is the father: the others cannot have given these chicks.')
  })
  test('three lavender chicks speak for the lavender cock 16 to 1: an even chance times 1/8 against 1', () => {
    const answer = ask('Bert', 'lav', birds, [brood('Bert', 'Ada', { count: 3, shows: true })], { rivals: ['Sid'] })
    expect(answer.rivals.map(({ sire }) => sire)).toEqual(['Sid', 'Bert'])
    expect(answer.rivals[0]!.odds).toBeCloseTo(16 / 17, 12)
    expect(answer.summary).toBe('Sid is the likelier father, 94 in 100; Bert 6 in 100.')
  })
  test('cocks of whom the same is known are not told apart', () => {
    const answer = ask(
      'Bert',
      'lav',
      [bert, { name: 'Max', sex: 'M', shows: dark }, ada],
      [brood('Bert', 'Ada', { count: 3, shows: false })],
      { rivals: ['Max'] },
    )
    expect(answer.summary).toBe('The chicks do not tell Bert from Max.')
  })
})

describe('a bird of no told sex, for what is on the Z', () => {
  const tom: FlockBird = { name: 'Tom', sex: 'M', carries: { choc: true }, shows: { choc: false } }
  const ivy: FlockBird = { name: 'Ivy', sex: 'F', shows: { choc: false } }
  test('is taken for a cock, and that is said: its sex is no chance among chicks', () => {
    const answer = ask('Rex', 'choc', [tom, ivy, { name: 'Rex', sire: 'Tom', dam: 'Ivy' }])
    expect(answer.nowFraction).toBe('1/2')
    expect(answer.assumptions[0]).toMatch(/^Rex is a cock: a hen has one Z/u)
  })
})

test('the birds understood stand by their part: the one asked about and its mate', () => {
  const cock: FlockBird = { name: 'the cock', sex: 'M', bird: { breed: 'Light Sussex' } }
  const hen: FlockBird = { name: 'the hen', sex: 'F', bird: { breed: 'Rhode Island Red' } }
  const { sire, dam, birds } = ask(
    'the cock',
    's+',
    [cock, hen],
    [brood('the cock', 'the hen', { count: 4, shows: true })],
  )
  expect([sire[0]?.breed, dam[0]?.breed, birds]).toEqual(['Light Sussex', 'Rhode Island Red', []])
})

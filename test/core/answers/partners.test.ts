// test/core/answers/partners.test.ts: mates for a goal: the direction right, the reasons true, no white without its condition.
import { describe, expect, test } from 'vitest'
import { PartnersAnswer } from '../../../core/answer.ts'
import { answerPartners } from '../../../core/answers/partners.ts'
import { breedNamed, breeds } from '../../../core/breeds.ts'
import { mate } from '../../../core/cross/mate.ts'
import type { BirdRef, PartnersQuestion } from '../../../core/question.ts'
import { published } from '../../published.ts'

type More = Partial<PartnersQuestion>
const ask = (own: readonly string[], wanted: 'M' | 'F', more: More = {}): PartnersAnswer =>
  answerPartners({
    kind: 'partners',
    for: own.map((breed): BirdRef => ({ breed })),
    wanted,
    goals: ['sexable'],
    among: [],
    assumed: [],
    manner: { symbols: false, units: 'both' },
    ...more,
  })
const hensFor = (cock: string, more?: More): PartnersAnswer => ask([cock], 'F', more)
const cocksFor = (hens: string, more?: More): PartnersAnswer => ask([hens], 'M', more)
const names = ({ best }: PartnersAnswer): readonly string[] => best.map(({ bird }) => bird.breed ?? '')

const has = (name: string, locus: string, allele: string): boolean => {
  const gene = breedNamed(name)?.genes[locus]
  return gene?.kind === 'fixed'
    ? gene.allele === allele
    : gene?.kind === 'segregates' && (gene.freq[allele] ?? 0) >= 0.8
}
const barred = (name: string): boolean => has(name, 'B', 'B')
const silver = (name: string): boolean => has(name, 'S', 'S')

const kentucky = {
  ref: 'University of Kentucky / eXtension, Sexing day-old chicks on small and backyard flocks',
  status: 'read',
} as const
const cambridge = { ref: 'Papers Past 1939, Sexing of chicks: colour cross-breeding', status: 'read' } as const
const edinburgh = { ref: 'Papers Past 1928, on gold and silver: black hides both', status: 'read' } as const

published('a Rhode Island Red cock wants barred hens or silver hens', kentucky, () => {
  const answer = hensFor('Rhode Island Red')
  expect(answer.best.length).toBeGreaterThanOrEqual(3)
  for (const { bird, sexing, part } of answer.best) {
    expect([bird.breed, barred(bird.breed!) || silver(bird.breed!)]).toEqual([bird.breed, true])
    expect([sexing?.verdict, part]).toEqual(['yes', 'dam'])
  }
  expect(names(answer).some(barred)).toBe(true)
  expect(names(answer).some((name) => silver(name) && !barred(name))).toBe(true)
})

published('silver hens want a gold cock that is not black', cambridge, () => {
  const answer = cocksFor('Light Sussex')
  for (const name of names(answer)) {
    expect([name, has(name, 'S', 's+'), has(name, 'E', 'E')]).toEqual([name, true, false])
    expect([name, barred(name)]).toEqual([name, false])
  }
  expect(names(answer)).toContain('Rhode Island Red')
})

published('a black cock wants barred hens only: silver is hidden', edinburgh, () => {
  const answer = hensFor('Black Australorp')
  expect(names(answer).every(barred)).toBe(true)
  expect(names(answer)).toContain('Barred Plymouth Rock')
  expect(names(answer)).not.toContain('Light Sussex')
})

test('a chocolate cock is offered black hens, whose daughters come chocolate', () => {
  const answer = hensFor('Chocolate Orpington')
  const black = answer.best.filter(({ bird }) => has(bird.breed!, 'E', 'E') && !barred(bird.breed!))
  expect(black.length).toBeGreaterThan(0)
  for (const { why } of black) expect(why).toContain('chocolate shows in the daughters alone')
})

test('no cock sexes the chicks of black sex-link hens by gold, silver or bars', () => {
  const answer = cocksFor('Black sex-link')
  expect(answer.summary).toMatch(/^No\b/)
  for (const { sexing } of answer.best)
    expect(['chocolate', 'skin']).toContainEqual(
      sexing?.signs[0]?.sign === 'skin colour'
        ? 'skin'
        : /chocolate/.test(sexing?.signs[0]?.pullet ?? '')
          ? 'chocolate'
          : 'other',
    )
})

test('for Legbar hens and dark olive eggs the dark-egg cock that is not barred comes first', () => {
  const answer = cocksFor('Cream Legbar', { goals: ['sexable', 'olive-eggs'] })
  expect(names(answer)[0]).toBe('Black Copper Marans')
  expect(names(answer).some(barred)).toBe(false)
})

test('what the answer says of a mate is what the mating gives, and on a condition where that is not sure', () => {
  for (const own of ['Rhode Island Red', 'Buff Orpington', 'Welsummer', 'Black Copper Marans'])
    for (const { bird, with: kept, sexing, condition } of hensFor(own).best) {
      const { cases } = mate({ breed: kept.breed }, { breed: bird.breed, line: bird.line })
      const sign = sexing?.signs[0]?.sign
      const agreeing = cases.filter((one) => one.sexing.signs[0]?.sign === sign)
      expect([own, bird.breed, agreeing.length > 0]).toEqual([own, bird.breed, true])
      if (agreeing.length < cases.length)
        expect([own, bird.breed, condition !== undefined]).toEqual([own, bird.breed, true])
    }
})

test('a white mate never comes without its condition', () => {
  const whites = breeds.filter(({ shows }) => shows?.some((any) => any.includes('c') || any.includes('I')))
  for (const own of ['Rhode Island Red', 'New Hampshire', 'Buff Orpington']) {
    const among = whites.map(({ name }): BirdRef => ({ breed: name }))
    for (const { bird, condition, sexing } of hensFor(own, { among }).best)
      if (sexing?.verdict !== 'no') expect([bird.breed, condition !== undefined]).toEqual([bird.breed, true])
  }
})

describe('what to leave alone', () => {
  const why = (answer: PartnersAnswer, name: string): string | undefined =>
    answer.avoid.find(({ bird }) => bird.breed === name)?.why
  test('White Leghorn hens, since white hides every sign', () => {
    expect(why(hensFor('Rhode Island Red'), 'White Leghorn')).toContain('white')
  })
  test('black hens under a red cock, since black hides gold and silver', () => {
    expect(why(hensFor('Rhode Island Red'), 'Black Australorp')).toContain('black')
  })
  test('a barred cock, who bars sons and daughters alike', () => {
    expect(why(cocksFor('Rhode Island Red'), 'Barred Plymouth Rock')).toContain('bars')
  })
  test('a silver cock on silver hens', () => {
    expect(why(cocksFor('Silver Laced Wyandotte'), 'Light Sussex')).toContain('silver')
  })
  test('no bird is both offered and warned of', () => {
    for (const own of ['Rhode Island Red', 'Black Australorp', 'Welsummer', 'Chocolate Orpington']) {
      const answer = hensFor(own)
      expect(answer.avoid.filter(({ bird }) => names(answer).includes(bird.breed ?? ''))).toEqual([])
    }
  })
})

describe('the keeper’s own candidates', () => {
  const among = ['Barred Plymouth Rock', 'Black Australorp', 'Light Brahma'].map((breed): BirdRef => ({ breed }))
  test('are the only ones named, the best first', () => {
    const answer = hensFor('Buff Orpington', { among })
    expect(names(answer).toSorted()).toEqual(['Barred Plymouth Rock', 'Light Brahma'])
  })
  test('that fail are told with the reason', () => {
    expect(hensFor('Buff Orpington', { among }).avoid.map(({ bird }) => bird.breed)).toEqual(['Black Australorp'])
  })
})

describe('eggs', () => {
  test('a wished number that no mating is likely to reach is said so, with the nearest', () => {
    const answer = ask(['Dominique', 'Barred Plymouth Rock'], 'M', { minimumEggs: 280 })
    expect(answer.summary).toMatch(/^None is likely to reach 280 eggs a year; nearest: Rhode Island Red \(production\)/)
  })
  test('a number that can be reached is reached by every mate named', () => {
    const answer = ask(['Barred Plymouth Rock'], 'M', { minimumEggs: 240 })
    expect(answer.best.length).toBeGreaterThan(0)
    for (const { hen } of answer.best) expect(hen!.eggsFirstYear.likely).toBeGreaterThanOrEqual(240)
  })
  test('for blue or green eggs the daughters lay them', () => {
    for (const { hen } of hensFor('Black Ameraucana', { goals: ['green-eggs', 'sexable'] }).best)
      expect(hen!.shell.every(({ colour }) => /green|blue|olive/.test(colour))).toBe(true)
  })
  test('a shell that no mate can give is said so', () => {
    expect(hensFor('Black Copper Marans', { goals: ['blue-eggs'] }).summary).toMatch(/^No hen gives just that/)
  })
})

test('size, calm and cold are met by birds that have them', () => {
  const big = cocksFor('Light Sussex', { goals: ['size'] })
  for (const name of names(big)) expect([name, breedNamed(name)!.weights.henKg >= 2.7]).toEqual([name, true])
  for (const { hen } of hensFor('Rhode Island Red', { goals: ['calm'] }).best) expect(hen!.temper).toMatch(/calm/)
  for (const { hen } of hensFor('Rhode Island Red', { goals: ['cold'] }).best)
    expect(hen!.hardiness.cold).toMatch(/^good/)
})

test('barred daughters come from a barred cock', () => {
  expect(names(cocksFor('Black Australorp', { goals: ['barred'] })).every(barred)).toBe(true)
})

describe('genes that kill or maim in two copies', () => {
  test('a tufted bird is offered a clean-faced mate first, and warned of a tufted one', () => {
    const answer = cocksFor('Tufted Araucana', { goals: [] })
    expect(answer.summary).toContain('Clean-faced Araucana')
    expect(names(answer)[0]).toBe('Clean-faced Araucana')
    expect(answer.avoid.map(({ bird }) => bird.breed)).toContain('Tufted Araucana')
  })
  test('a short-legged bird is offered a long-legged mate', () => {
    expect(names(cocksFor('Japanese bantam (short leg)', { goals: [] }))[0]).toBe('Japanese bantam (long leg)')
  })
  test('a frizzle is never offered a frizzle', () => {
    const answer = hensFor('Frizzle')
    expect(names(answer)).not.toContain('Frizzle')
    expect(answer.avoid[0]).toMatchObject({ bird: { breed: 'Frizzle' } })
  })
})

test('three to five names, one of a family', () => {
  for (const own of ['Rhode Island Red', 'Black Australorp', 'Welsummer', 'Buff Orpington', 'Red bird']) {
    const found = names(hensFor(own))
    expect([own, found.length >= 3 && found.length <= 5]).toEqual([own, true])
    const families = found.map((name) => breedNamed(name)!.family)
    expect([own, new Set(families).size]).toEqual([own, found.length])
  }
})

test('bantams are offered bantams, and large fowl large fowl', () => {
  for (const name of names(hensFor('Black Pekin bantam')))
    expect([name, breedNamed(name)!.type === 'bantam' || breedNamed(name)!.family === 'Silkie']).toEqual([name, true])
  for (const name of names(hensFor('Rhode Island Red'))) expect(breedNamed(name)!.type).not.toBe('bantam')
})

test('several of the keeper’s birds are served together, each mate with the bird it suits best', () => {
  const answer = ask(['Silver Laced Wyandotte', 'Barred Plymouth Rock', 'White Crested Black Polish'], 'M', {
    goals: [],
  })
  expect(names(answer)[0]).toBe('Rhode Island Red')
  for (const { with: kept } of answer.best)
    expect(['Silver Laced Wyandotte', 'Barred Plymouth Rock', 'White Crested Black Polish']).toContain(kept.breed)
})

test('a told genotype stands over the catalogue', () => {
  const barredCock = ask([], 'F', { for: [{ breed: 'Rhode Island Red', genotype: { B: ['B', 'B'] } }] })
  expect(
    barredCock.best.filter(({ sexing }) => sexing?.signs[0]?.sign === 'head spot').map(({ bird }) => bird.breed),
  ).not.toContain('Dominique')
})

test('every cock and hen of the catalogue gets an answer of the contract', () => {
  for (const { name } of breeds.filter((_, at) => at % 29 === 0))
    for (const wanted of ['M', 'F'] as const) {
      const read = PartnersAnswer.safeParse(ask([name], wanted, { goals: [] }))
      expect([name, wanted, read.success]).toEqual([name, wanted, true])
    }
})

describe('one colour is wanted of all chicks', () => {
  test('only splash makes every chick of a black bird blue, and only black every chick of a splash one', () => {
    const [hen] = hensFor('Black Orpington', { goals: [], chicks: 'blue' }).best
    expect([hen?.bird.breed, hen?.why]).toEqual(['Splash Orpington', 'all chicks blue'])
    const [cock] = cocksFor('Splash Orpington', { goals: [], chicks: 'blue' }).best
    expect([cock?.bird.breed, cock?.why]).toEqual(['Black Orpington', 'all chicks blue'])
  })
  test('a black bird that carries no lavender has no mate that makes lavender chicks', () => {
    expect(hensFor('Black Orpington', { goals: [], chicks: 'lavender' }).best).toEqual([])
  })
})

test('where heritage birds are wanted, none is of a production line', () => {
  const { best } = hensFor('Rhode Island Red', { goals: ['eggs', 'sexable'], line: 'heritage' })
  expect(best.length).toBeGreaterThan(1)
  expect(best.map(({ bird }) => bird.line)).not.toContain('production')
})

test('asked goal by goal, each hen is told for each: barred ones sex, all may lay green', () => {
  const { summary, avoid } = hensFor('Easter Egger', {
    goals: ['sexable', 'green-eggs'],
    among: ['Rhode Island Red', 'Barred Plymouth Rock'].map((breed) => ({ breed })),
    each: true,
  })
  expect(summary).toMatch(/sexable at hatch: Barred Plymouth Rock;/)
  expect(summary).toMatch(/green eggs: all of them/)
  expect(avoid).toEqual([])
})

test('where only the wings of proven strains could tell, the first line does not promise sexable chicks', () => {
  const { summary } = hensFor('Cuckoo Marans')
  expect(summary).toMatch(/^No hen sexes .*by colour; only wing feathers may/)
})

test('for the table a broad-breasted breed comes before one that is only heavy', () => {
  const answer = cocksFor('Speckled Sussex', { goals: ['meat'] })
  expect(names(answer)[0]).toBe('Dark Cornish')
})

test('broody daughters: several breeds are offered, not one breed in all its colours', () => {
  expect(names(cocksFor('Buff Orpington', { goals: ['broody'] })).slice(0, 2)).toEqual(['White Silkie', 'Black Cochin'])
})

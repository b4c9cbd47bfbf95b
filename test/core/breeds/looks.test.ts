// test/core/breeds/looks.test.ts: the likeliest bird of each record looks as its colour and comb are told.
import { expect, test } from 'vitest'
import { breeds, type Breed } from '../../../core/breeds.ts'
import { colourFaults } from '../../../core/catalogue/colour.ts'
import { founder } from '../../../core/cross/founder.ts'
import { express } from '../../../core/looks/express.ts'
import type { Genotype, Sex } from '../../../core/vocabulary.ts'

/** The likeliest bird of a variety or line. */
function likeliest(breed: Breed, sex: Sex, line?: string): Genotype {
  const { known, doubts } = founder(breed.name, sex, breed, line, {})
  return doubts.reduce<Genotype>((all, { choices: [first] }) => ({ ...all, ...first?.genotype }), known)
}

test('cock, hen and chick of each variety look as its colour is known, in every line', () => {
  const coloured = breeds.filter(({ colour }) => colour !== undefined)
  expect(coloured.length).toBeGreaterThan(220)
  for (const breed of coloured)
    for (const line of [undefined, ...breed.lines.map(({ id }) => id)]) {
      if (line === 'silver' || line === 'red') continue // colour sisters kept as lines of one record
      const [cock, hen] = [express('M', likeliest(breed, 'M', line)), express('F', likeliest(breed, 'F', line))]
      expect([breed.name, line, colourFaults(breed, cock, hen)]).toEqual([breed.name, line, []])
    }
})

/** Told apart by the first word: 'single, large' is single. A cushion is what rose and pea make on a small comb. */
const combs: Readonly<Record<string, readonly string[]>> = {
  cushion: ['walnut'],
  cup: ['buttercup'],
  carnation: ['single'],
}

test('the comb that a record tells is the comb its genes give', () => {
  for (const breed of breeds) {
    if (/any|mixed|unless told|or/.test(breed.comb)) continue
    const [first = ''] = breed.comb.split(/[ ,(]/)
    const { comb } = express('F', likeliest(breed, 'F')).form
    expect([breed.name, [first, ...(combs[first] ?? [])].some((word) => comb.startsWith(word))]).toEqual([
      breed.name,
      true,
    ])
  }
})

// test/core/looks/rules.test.ts: laws of the rules of looks, over any genotype.
import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { locusIds } from '../../../core/data/loci.ts'
import { express } from '../../../core/looks/express.ts'
import { Look } from '../../../core/looks/look.ts'
import { blank, type Draft } from '../../../core/looks/rule.ts'
import { colourRules, formRules, maskingRules, rules, whyRules } from '../../../core/looks/rules.ts'
import { ground } from '../../../core/looks/rules/ground.ts'
import type { Genotype, Sex } from '../../../core/vocabulary.ts'
import { birds, genotypeOf, partBirds } from '../../genotypes.ts'

/** The same genotype, noting which loci are asked for. */
function watched(genotype: Genotype): { readonly genotype: Genotype; readonly asked: Set<string> } {
  const asked = new Set<string>()
  const proxy = new Proxy(genotype, {
    get(target, key) {
      asked.add(String(key))
      return Reflect.get(target, key) as unknown
    },
  })
  return { genotype: proxy, asked }
}

test('a rule asks for no locus that it does not declare', () => {
  fc.assert(
    fc.property(birds, ({ sex, genotype }) => {
      let draft: Draft = blank
      for (const rule of rules) {
        const { genotype: seen, asked } = watched(genotype)
        const holds = rule.when({ sex, genotype: seen }, draft)
        if (typeof rule.look === 'function') rule.look({ sex, genotype: seen }, draft)
        const strange = [...asked].filter((locus) => !rule.loci.some((declared) => declared === locus))
        expect({ rule: rule.id, strange }).toEqual({ rule: rule.id, strange: [] })
        const patch = typeof rule.look === 'function' ? rule.look({ sex, genotype }, draft) : rule.look
        if (holds) draft = { ...draft, ...patch }
      }
    }),
    { numRuns: 300 },
  )
})

test('every rule can hold', () => {
  const seen = new Set<string>()
  const note = (sex: Sex, genotype: Genotype) => express(sex, genotype).rules.forEach((id) => seen.add(id))
  const pure: Genotype = { c: ['C+', 'C+'], mo: ['Mo+', 'Mo+'] }
  fc.assert(
    fc.property(birds, ({ sex, genotype }) => note(sex, { ...genotype, ...pure })),
    { numRuns: 4000, seed: 1 },
  )
  fc.assert(
    fc.property(partBirds, ({ sex, genotype }) => note(sex, genotype)),
    { numRuns: 6000, seed: 2 },
  )
  expect(rules.map(({ id }) => id).filter((id) => !seen.has(id))).toEqual([])
})

test('rules have ids of their own, and "why?" finds them in the order in which they were applied', () => {
  expect(new Set(rules.map(({ id }) => id)).size).toBe(rules.length)
  const look = express('M', { S: ['S', 's+'], E: ['e^Wh', 'e^Wh'], Co: ['Co', 'Co'] })
  expect(whyRules(look.rules).map(({ id }) => id)).toEqual(look.rules)
  expect(look.rules).toEqual(['wheaten ground', 'columbian', 'silver over gold', 'dark shanks'])
  expect(whyRules(['no such rule'])).toEqual([])
})

test('every locus of the catalogue shows in some rule', () => {
  const used = new Set(rules.flatMap(({ loci }) => loci))
  expect(locusIds.filter((id) => !used.has(id))).toEqual([])
})

test('every bird has exactly one ground', () => {
  fc.assert(
    fc.property(birds, (bird) => {
      expect(ground.filter(({ when }) => when(bird, blank))).toHaveLength(1)
    }),
  )
})

test('every look is a whole look, with words for down and plumage that name no gene', () => {
  fc.assert(
    fc.property(birds, ({ sex, genotype }) => {
      const look = Look.parse(express(sex, genotype))
      expect(look.chick.words).not.toMatch(/\^|undefined|\+|\s{2}|^$/u)
      expect(look.plumage.words).not.toMatch(/\^|undefined|\+|\s{2}|^$|^[, ]|[, ]$|none/u)
    }),
    { numRuns: 2000 },
  )
})

test('a wild-type locus may be left out', () => {
  fc.assert(
    fc.property(birds, ({ sex, genotype }) => {
      const listed = Object.entries(genotype).filter(([, alleles]) => !alleles.every((allele) => allele.endsWith('+')))
      expect(express(sex, Object.fromEntries(listed))).toEqual(express(sex, genotype))
    }),
  )
})

/** What can be seen of a bird, without the names of rules. */
const seen = (look: Look) => ({ ...look, rules: [], hedges: [] })

describe('what is hidden is not told', () => {
  test('two birds that are recessive white look alike in all their colours', () => {
    fc.assert(
      fc.property(birds, ({ sex, genotype }) => {
        const white = express(sex, { ...genotype, c: ['c', 'c'] })
        expect(white.plumage.words).toBe('white')
        expect([white.plumage, white.chick.colour, white.chick.headSpot, white.chick.ground]).toEqual([
          express('M', { c: ['c', 'c'] }).plumage,
          'white',
          'hidden',
          'hidden',
        ])
      }),
    )
  })
  test('a pure black bird looks the same in silver and in gold', () => {
    fc.assert(
      fc.property(genotypeOf('M'), (genotype) => {
        const black = { ...genotype, E: ['E', 'E'] }
        const [silver, gold] = [express('M', { ...black, S: ['S', 'S'] }), express('M', { ...black, S: ['s+', 's+'] })]
        expect(seen(silver)).toEqual(seen(gold))
      }),
    )
  })
  test('dominant white on black hides barring and blue', () => {
    const white = { I: ['I', 'I'], E: ['E', 'E'], Id: ['Id'] }
    const plain = seen(express('F', white))
    expect(seen(express('F', { ...white, B: ['B'] }))).toEqual(plain)
    expect(seen(express('F', { ...white, Bl: ['Bl', 'bl+'] }))).toEqual(plain)
  })
  test('no white bird is said to be barred, mottled, silver or gold', () => {
    fc.assert(
      fc.property(birds, ({ sex, genotype }) => {
        const { plumage } = express(sex, genotype)
        fc.pre(plumage.white)
        expect([plumage.barring, plumage.mottled, plumage.pattern]).toEqual(['none', false, 'white'])
      }),
      { numRuns: 2000 },
    )
  })
})

describe('doses', () => {
  test('two doses of barring are for cocks alone', () => {
    fc.assert(
      fc.property(genotypeOf('F'), (genotype) => {
        const look = express('F', genotype)
        expect(look.plumage.barring).not.toBe('double dose')
        expect(look.chick.headSpot).not.toBe('large')
      }),
    )
  })
  test('feathering speed is read on any down', () => {
    fc.assert(
      fc.property(birds, ({ sex, genotype }) => {
        expect(express(sex, { ...genotype, K: ['k+'] }).chick.wing).toBe('fast')
        expect(express(sex, { ...genotype, K: ['K'] }).chick.wing).toBe('slow')
      }),
    )
  })
  test('form does not hang on colour', () => {
    fc.assert(
      fc.property(birds, ({ sex, genotype }) => {
        const white = express(sex, { ...genotype, c: ['c', 'c'] })
        const coloured = express(sex, { ...genotype, c: ['C+', 'C+'] })
        expect(white.form).toEqual(coloured.form)
      }),
    )
  })
})

describe('what can be told apart is worded apart', () => {
  test('gold and silver down', () => {
    fc.assert(
      fc.property(genotypeOf('M'), (genotype) => {
        const [silver, gold] = [
          express('M', { ...genotype, S: ['S', 'S'] }),
          express('M', { ...genotype, S: ['s+', 's+'] }),
        ]
        fc.pre(silver.chick.ground !== gold.chick.ground)
        expect(silver.chick.words).not.toBe(gold.chick.words)
      }),
      { numRuns: 1000 },
    )
  })
  test('one and two doses of barring, and none', () => {
    fc.assert(
      fc.property(genotypeOf('M'), (genotype) => {
        const doses = [
          ['b+', 'b+'],
          ['B', 'b+'],
          ['B', 'B'],
        ].map((B) => express('M', { ...genotype, B }).plumage)
        fc.pre(doses[2]!.barring === 'double dose' && doses[2]!.black !== 'splash' && doses[2]!.black !== 'none')
        const pale = ['silver', 'brassy silver', 'white', 'none'].includes(doses[2]!.red)
        expect(new Set(doses.map(({ words }) => words)).size).toBeGreaterThanOrEqual(pale ? 2 : 3)
      }),
      { numRuns: 1000 },
    )
  })
})

test('masking rules come first, colour next, form last', () => {
  expect(rules).toEqual([...maskingRules, ...colourRules, ...formRules])
})

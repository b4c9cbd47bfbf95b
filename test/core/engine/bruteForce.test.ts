// test/core/engine/bruteForce.test.ts: made-up flocks of up to eight birds, each answer held against playing every gamete through.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type Answered, answerStatement } from '../../../core/statement.ts'
import { bruteForce, type PlainStatement } from '../../bruteForce.ts'
import { madeStatement } from '../../madeStatement.ts'
import { runs } from '../../runs.ts'

const anyStatement = fc
  .tuple(fc.nat(1_000_000), fc.integer({ min: 3, max: 8 }))
  .map(([seed, birds]) => madeStatement(seed, birds))

const answered = (statement: PlainStatement): Answered | undefined => {
  const found = answerStatement(statement)
  return 'answer' in found ? found : undefined
}

test('answers, fractions and the chance of the readings are those of plain enumeration', () => {
  fc.assert(
    fc.property(anyStatement, (statement) => {
      const slow = bruteForce(statement)
      const found = answered(statement)
      if (slow.evidence === 0) return found === undefined
      expect(Object.keys(found!.answer).toSorted()).toEqual(Object.keys(slow.answer).toSorted())
      expect(found!.evidence).toBeCloseTo(slow.evidence, 12)
      for (const [name, p] of Object.entries(slow.answer)) {
        expect(found!.answer[name]).toBeCloseTo(p, 11)
        const [n, d = '1'] = found!.exact![name]!.split('/')
        expect(Number(n) / Number(d)).toBeCloseTo(p, 11)
      }
      return true
    }),
    { numRuns: runs(500), seed: 1 },
  )
})

/** Three birds: all that can hang together in one of them, its groups, its sex and what is read across both. */
const dense = Array.from({ length: 320 }, (_, seed) => madeStatement(7 * seed + 1, 3)).filter(
  ({ groups, individuals }) => groups.length > 1 || individuals.some(({ sex }) => sex === 'U'),
)
test('of three birds every one is asked for all its loci at once, however they hang together', () => {
  expect(dense.length).toBeGreaterThan(90)
  for (const statement of dense) {
    const of = statement.individuals[statement.groups.length % 3]!.id
    const asked = { ...statement, query: { kind: 'genotypes' as const, of, loci: statement.loci.map((l) => l.symbol) } }
    const slow = bruteForce(asked)
    const found = answered(asked)
    expect(found === undefined).toBe(slow.evidence === 0)
    if (found === undefined) continue
    expect(found.evidence).toBeCloseTo(slow.evidence, 12)
    expect(Object.keys(found.answer).toSorted()).toEqual(Object.keys(slow.answer).toSorted())
    for (const [name, p] of Object.entries(slow.answer)) expect(found.answer[name]).toBeCloseTo(p, 11)
  }
})

test('readings named as a conflict cannot all be true, and can without any one of them', () => {
  const only = (statement: PlainStatement, kept: readonly string[]): PlainStatement => ({
    ...statement,
    individuals: statement.individuals.map(({ genotype = {}, phenotype = {}, ...bird }) => ({
      ...bird,
      genotype: filtered(genotype, (key, value) => kept.includes(`${bird.id} ${key}: ${value}`)),
      phenotype: filtered(phenotype, (key, value) => kept.includes(`${bird.id} ${key}: ${value}`)),
    })),
  })
  let conflicts = 0
  for (let seed = 1; seed <= runs(250); seed += 1) {
    const statement = madeStatement(seed, 3 + (seed % 6))
    const found = answerStatement(statement)
    if (!('conflict' in found)) continue
    conflicts += 1
    const named = found.conflict.map(({ bird, reading }) => `${bird} ${reading}`)
    expect(bruteForce(only(statement, named)).evidence, `seed ${seed}`).toBe(0)
    for (const left of named)
      expect(
        bruteForce(
          only(
            statement,
            named.filter((one) => one !== left),
          ),
        ).evidence,
        `seed ${seed}`,
      ).toBeGreaterThan(0)
  }
  expect(conflicts).toBeGreaterThan(runs(50))
})

const filtered = (of: Readonly<Record<string, string>>, keep: (key: string, value: string) => boolean) =>
  Object.fromEntries(Object.entries(of).filter(([key, value]) => keep(key, value)))

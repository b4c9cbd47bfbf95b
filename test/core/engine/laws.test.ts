// test/core/engine/laws.test.ts: what holds of every flock, whatever is in it.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { answerStatement, type StatementAnswer } from '../../../core/statement.ts'
import type { PlainStatement } from '../../bruteForce.ts'
import { random } from '../../closedFlock.ts'
import { madeStatement } from '../../madeStatement.ts'
import { runs } from '../../runs.ts'

const anyStatement = fc
  .tuple(fc.nat(1_000_000), fc.integer({ min: 3, max: 8 }))
  .map(([seed, birds]) => madeStatement(seed, birds))

const law =
  (holds: (statement: PlainStatement, found: StatementAnswer) => void): (() => void) =>
  () => {
    fc.assert(
      fc.property(anyStatement, (statement) => holds(statement, answerStatement(statement))),
      { numRuns: runs(80), seed: 7 },
    )
  }

/** The same answer: classes, chance of the readings, or both impossible. */
function expectSame(
  found: StatementAnswer,
  wanted: StatementAnswer,
  rename: (name: string) => string = (name) => name,
): void {
  if (!('answer' in wanted) || !('answer' in found)) {
    expect(Object.keys(found)).toEqual(Object.keys(wanted))
    return
  }
  expect(found.evidence).toBeCloseTo(wanted.evidence, 12)
  expect(Object.keys(found.answer).toSorted()).toEqual(Object.keys(wanted.answer).map(rename).toSorted())
  for (const [name, p] of Object.entries(wanted.answer)) expect(found.answer[rename(name)]).toBeCloseTo(p, 11)
}

test(
  'the classes of a bird share the whole',
  law((statement, found) => {
    if ('answer' in found && statement.query.kind !== 'carries-all')
      expect(Object.values(found.answer).reduce((sum, p) => sum + p, 0)).toBeCloseTo(1, 12)
  }),
)

test(
  'birds may be told in any order',
  law((statement, found) => {
    const draw = random(statement.individuals.length)
    const individuals = statement.individuals
      .map((bird) => [draw(), bird] as const)
      .toSorted(([a], [b]) => a - b)
      .map(([, bird]) => bird)
    expectSame(answerStatement({ ...statement, individuals }), found)
  }),
)

test(
  'alleles may go by other names',
  law((statement, found) => {
    const rename = (text: string): string => text.replaceAll(/\b([ABC]\d)\b/gu, 'x$1y')
    const renamed: PlainStatement = JSON.parse(
      JSON.stringify(statement, (_key, value: unknown) => (typeof value === 'string' ? rename(value) : value)),
    )
    expect(renamed.loci[0]!.alleles[0]).toMatch(/^x/u)
    expectSame(answerStatement(renamed), found, rename)
  }),
)

test(
  'the strands of a prior may be told in either order',
  law((statement, found) => {
    const individuals = statement.individuals.map((bird) => ({
      ...bird,
      ...(bird.prior
        ? {
            prior: bird.prior.map(({ group, dist }) => ({
              group,
              dist: dist.map(({ dip, p }) => ({ dip: dip.toReversed(), p })),
            })),
          }
        : {}),
    }))
    expectSame(answerStatement({ ...statement, individuals }), found)
  }),
)

test(
  'groups with a fraction of one half are as good as two groups',
  law((statement, found) => {
    if (statement.query.kind === 'phase' || statement.individuals.some(({ prior }) => prior)) return
    const half = statement.groups.map((group) => ({ ...group, r: group.r.map(() => '1/2') }))
    const apart = statement.groups.flatMap(({ loci, on }) => loci.map((locus) => ({ loci: [locus], on, r: [] })))
    expectSame(answerStatement({ ...statement, groups: apart }), answerStatement({ ...statement, groups: half }))
    expect(found).toBeDefined()
  }),
)

test(
  'a further chick of which nothing is read changes nothing',
  law((statement, found) => {
    const sire = statement.individuals.find(({ sex }) => sex === 'M')!.id
    const dam = statement.individuals.find(({ sex }) => sex === 'F')!.id
    const extra = answerStatement({
      ...statement,
      individuals: [...statement.individuals, { id: 'extra', sex: 'U', sire, dam }],
    })
    if (statement.query.kind !== 'carries-all' || !('answer' in extra)) return expectSame(extra, found)
    const { extra: _, ...others } = extra.answer
    expectSame({ ...extra, answer: others }, found)
  }),
)

test(
  'the chance of all readings is the chance of the first ones times what the last adds',
  law((statement, found) => {
    const last = statement.individuals.findLast(
      ({ phenotype }) => phenotype !== undefined && Object.keys(phenotype).length === 1,
    )
    const [read] = Object.entries(last?.phenotype ?? {})
    if (last === undefined || read === undefined || last.sex === 'U' || !('answer' in found)) return
    const [trait, state] = read
    const individuals = statement.individuals.map((bird) => (bird === last ? { ...bird, phenotype: {} } : bird))
    const before = answerStatement({
      ...statement,
      individuals,
      query: { kind: 'phenotype', of: last.id, traits: [trait] },
    })
    if (!('answer' in before)) throw new Error('the readings without one of them cannot be, yet with it they can')
    expect(found.evidence).toBeCloseTo(before.evidence * before.answer[state]!, 12)
  }),
)

test(
  'a bird of unknown sex is one half each cock and hen, before anything is read',
  law((statement) => {
    const { genotype: _g, phenotype: _p, ...bird } = statement.individuals[2]!
    const others = statement.individuals
      .filter(({ sire, dam }) => sire === null && dam === null)
      .map(({ id, sex, prior }) => ({ id, sex, sire: null, dam: null, ...(prior ? { prior } : {}) }))
    const founder = others.slice(0, 2)
    const query = { kind: 'genotype', of: 'X', locus: statement.loci[0]!.symbol }
    const found = answerStatement({
      ...statement,
      individuals: [...founder, { id: 'X', sex: 'U', sire: founder[0]!.id, dam: founder[1]!.id }],
      query,
    })
    if (!('answer' in found)) return
    expect(bird.id).toBe('b2')
    const sons = Object.entries(found.answer).filter(([name]) => name.startsWith('M|'))
    expect(sons.reduce((sum, [, p]) => sum + p, 0)).toBeCloseTo(1 / 2, 12)
  }),
)

// test/core/engine/oracle.test.ts: every stored statement answered as independent programs answered it.
import { expect, test } from 'vitest'
import * as z from 'zod'
import { type Answered, answerStatement, type StatementAnswer } from '../../../core/statement.ts'
import stored from '../../data/statements.json' with { type: 'json' }

const Problem = z.looseObject({
  id: z.string(),
  title: z.string(),
  oracle: z.string(),
  answer: z.record(z.string(), z.union([z.number(), z.boolean()])),
  exact: z.record(z.string(), z.string()).optional(),
  evidenceProbability: z.number().optional(),
  evidenceExact: z.string().optional(),
})
const problems = z.array(Problem).parse([...stored.problems, ...stored.largePedigrees])
const possible = problems.filter(({ answer }) => answer['impossible'] === undefined)
const found = new Map<string, StatementAnswer>()
const answerTo = (id: string): StatementAnswer => {
  const answer = found.get(id) ?? answerStatement(problems.find((problem) => problem.id === id))
  found.set(id, answer)
  return answer
}

const answered = (id: string): Answered => {
  const answer = answerTo(id)
  if (!('answer' in answer)) throw new Error(JSON.stringify(answer))
  return answer
}

test('all of them were read: 33 problems and 4 large flocks', () => expect(problems).toHaveLength(37))

test.each(possible)('$id, $title: each class to 1e-12 [$oracle]', ({ id, answer }) => {
  expect(Object.keys(answered(id).answer).toSorted()).toEqual(Object.keys(answer).toSorted())
  for (const [name, p] of Object.entries(answer))
    expect(Math.abs(answered(id).answer[name]! - Number(p))).toBeLessThanOrEqual(1e-12)
})

test.each(possible.filter(({ evidenceProbability }) => evidenceProbability !== undefined))(
  '$id, $title: the chance of all readings to 1e-12 [$oracle]',
  ({ id, evidenceProbability }) =>
    expect(Math.abs(answered(id).evidence - evidenceProbability!)).toBeLessThanOrEqual(1e-12),
)

test.each(possible.filter(({ exact }) => exact !== undefined))(
  '$id, $title: the same fractions [an elimination in exact fractions, another language]',
  ({ id, exact, evidenceExact }) => {
    expect(answered(id).exact).toEqual(exact)
    if (evidenceExact !== undefined) expect(answered(id).evidenceExact).toBe(evidenceExact)
  },
)

test.each(problems.filter(({ answer }) => answer['impossible'] !== undefined))(
  '$id, $title, is a conflict of readings [$oracle]',
  ({ id }) =>
    expect(answerTo(id)).toEqual({
      conflict: [
        { bird: 'c', reading: 'S: S/S' },
        { bird: 'k', reading: 'ground: gold' },
      ],
    }),
)

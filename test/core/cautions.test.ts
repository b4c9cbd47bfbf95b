// test/core/cautions.test.ts: cautions: one a reply, the weightiest, short, and only where the mating calls for it.
import { describe, expect, test } from 'vitest'
import { cautionFor, cautionsFor, cautions, cautionSources, matingCautions } from '../../core/data/cautions.ts'

describe('a mating of two carriers', () => {
  const lethal = [
    ['short legs', 'Cp', 'cp+', 'creeper'],
    ['tufts', 'Et', 'et+', 'tufts'],
    ['frizzle', 'F', 'f+', 'frizzle'],
    ['no tail', 'Rp', 'rp+', 'rumpless'],
    ['crest', 'Cr', 'cr+', 'crest'],
  ] as const
  test.each(lethal)('%s on %s is cautioned', (_what, allele, wild, want) => {
    const carrier = { [allele]: [allele, wild] }
    expect(matingCautions(carrier, carrier)).toEqual([want])
    expect(matingCautions(carrier, { [allele]: [wild, wild] })).toEqual([])
    expect(matingCautions({}, carrier)).toEqual([])
  })
})

describe('of several cautions', () => {
  test('one is shown, the one that spares most harm', () => {
    expect(cautionFor(['surplusMales', 'frizzle', 'creeper', 'hygiene']).map((c) => c.topic)).toEqual(['lethal'])
    expect(cautionFor(['hygiene', 'surplusMales']).map((c) => c.topic)).toEqual(['surplus-males'])
    expect(cautionFor([])).toEqual([])
  })
  test('who asks sees all of them, weightiest first, each once', () => {
    expect(cautionsFor(['hygiene', 'creeper', 'hygiene', 'newStock']).map((c) => c.topic)).toEqual([
      'lethal',
      'disease',
      'hygiene',
    ])
  })
})

test('each is one short sentence and says who says so', () => {
  for (const { text, sources } of Object.values(cautions)) {
    expect(text.length).toBeLessThan(140)
    expect(text.match(/[.!?](\s|$)/g)).toHaveLength(1)
    expect(sources.length).toBeGreaterThan(0)
  }
  expect(cautionSources(['creeper'])[0]).toMatchObject({ status: 'read' })
})
test('what the law or a vet decides is left to them', () => {
  expect(cautions.surplusMales.text).toMatch(/local law/)
  expect(cautions.byLaws.text).toMatch(/local rules/)
  expect(cautions.health.text).toMatch(/vet/)
})

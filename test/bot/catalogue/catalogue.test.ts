// test/bot/catalogue/catalogue.test.ts: the catalogue command: what an operator types, what comes back, and the exit code.
import { execFile } from 'node:child_process'
import { mkdtemp, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import sussex from '../../../core/data/breeds/sussex.json' with { type: 'json' }
import { usage } from '../../../bot/catalogue/perform.ts'

type Ran = { readonly code: number; readonly out: string; readonly err: string }
const run = (...words: readonly string[]): Promise<Ran> =>
  new Promise((done) => {
    execFile(process.execPath, ['bot/catalogue.ts', ...words], (error, out, err) =>
      done({ code: typeof error?.code === 'number' ? error.code : 0, out, err }),
    )
  })

describe('bad usage says what is wrong and ends with 2', () => {
  test.each([
    ['no command', [], 'say what to do'],
    ['a command nobody has', ['dance'], 'no command “dance”'],
    ['a bird nobody has', ['show', 'phoenix', 'of', 'fire'], 'no bird'],
    ['a bare name', ['show', 'sussex'], 'Light Sussex, Speckled Sussex'],
    ['no bird', ['show'], 'show which bird?'],
    ['no file', ['check'], 'check which file?'],
    ['a file that is not there', ['check', 'nowhere.json'], 'cannot read nowhere.json'],
  ])('%s', async (_case, words, said) => {
    const { code, out, err } = await run(...words)
    expect([code, out]).toEqual([2, ''])
    expect(err).toContain(said)
  })
})

test('the usage names each command', () => {
  expect(usage.map((line) => /-- (\w+)/.exec(line)?.[1])).toEqual(['list', 'show', 'coverage', 'check'])
})

test('list finds birds by a part of their name', async () => {
  const { code, out } = await run('list', 'sussex')
  expect(code).toBe(0)
  expect(out).toContain('Coronation Sussex')
  expect(out).not.toContain('Welsummer')
})

test('show lays a bird open in a line of it: genes, looks, lines, sources, what the bot says', async () => {
  const { code, out } = await run('show', 'rir', 'production')
  expect(code).toBe(0)
  for (const words of [
    'Rhode Island Red, production line',
    /S +s\+ +high +read/,
    'cock: deep red',
    'the looks agree with it',
    'heritage: kept for use',
    'Rhode Island Red is gold: cocks s+/s+, hens s+/-.',
    'Rhode Island Red cock on Barred Plymouth Rock hens: Yes',
    'Papers Past 1939',
  ])
    expect(out).toMatch(words)
})

test('coverage counts add up', async () => {
  const { out } = await run('coverage')
  const rows = [...out.matchAll(/^[a-z ]+? {2,}(\d+) +(\d+) \(.*?\) +(\d+) \(.*?\) +(\d+) \(/gm)]
  expect(rows.length).toBe(4)
  for (const [, all, read, practice, memory] of rows)
    expect(Number(read) + Number(practice) + Number(memory)).toBe(Number(all))
})

describe('a contributor’s file', () => {
  /** The Light Sussex under another name, changed. */
  async function file(change: object): Promise<string> {
    const path = join(await mkdtemp(join(tmpdir(), 'birds-')), 'new.json')
    await writeFile(
      path,
      JSON.stringify([{ ...sussex[0], name: 'Pearl Sussex', alsoCalled: ['Pearls'], misspelt: [], ...change }]),
    )
    return path
  }
  test('that is sound is read, and shows what the bot will say of the bird', async () => {
    const { code, out } = await run('check', await file({}))
    expect(code).toBe(0)
    expect(out).toContain('Pearl Sussex is silver: cocks S/S, hens S/-.')
    expect(out).toContain('Rhode Island Red cock on Pearl Sussex hens: Yes, at hatch by down colour')
    expect(out).toContain('1 birds read, no fault.')
  })
  test('whose genes do not give the colour it names is told where they depart', async () => {
    const { out } = await run('check', await file({ colour: 'black' }))
    expect(out).toContain('cock: pattern columbian, wanted solid')
  })
  test.each([
    [
      'a wrong allele',
      { genes: { S: { kind: 'fixed', allele: 's', confidence: 'low', status: 'read' } } },
      'new.json[0] Pearl Sussex: genes.S: no allele s at S',
    ],
    ['another bird’s name', { alsoCalled: ['Barred Rock'] }, 'already means Barred Plymouth Rock'],
    ['a word of several birds', { alsoCalled: ['Marans'] }, 'means several birds'],
    ['a key nobody reads', { plumes: 3 }, 'plumes'],
  ])('with %s is refused, naming the place', async (_case, change, said) => {
    const { code, out, err } = await run('check', await file(change))
    expect([code, out]).toEqual([1, ''])
    expect(err).toContain(said)
  })
  test('that is not JSON is refused', async () => {
    const path = join(await mkdtemp(join(tmpdir(), 'birds-')), 'new.json')
    await writeFile(path, '[{')
    expect(await run('check', path)).toMatchObject({ code: 1, out: '' })
  })
})

test('the catalogue’s own files hold', async () => {
  const { code, out } = await run('check', 'core/data/breeds/hybrids.json')
  expect([code, out.includes('no fault')]).toEqual([0, true])
})

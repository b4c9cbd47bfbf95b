// test/bot/ask/ask.test.ts: the command line as a script meets it: what stands on stdout, exit codes, and input of every bad kind.
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, test } from 'vitest'
import { Answer } from '../../../core/answer.ts'

const folder = mkdtempSync(join(tmpdir(), 'ask-'))
afterAll(() => rmSync(folder, { recursive: true }))
const file = (name: string, text: string): string => {
  const path = join(folder, name)
  writeFileSync(path, text)
  return path
}

function ask(argv: readonly string[], input = '') {
  const { stdout, stderr, status } = spawnSync(process.execPath, ['bot/ask.ts', ...argv], { input, encoding: 'utf8' })
  return { stdout, stderr, status }
}
type Row = { readonly id: unknown; readonly ms?: number; readonly answer: unknown }
const rows = (stdout: string): readonly Row[] =>
  stdout
    .trimEnd()
    .split('\n')
    .map((line): Row => JSON.parse(line))
const batch = (lines: readonly string[]): readonly Row[] =>
  rows(ask(['--json', '--batch', '-'], `${lines.join('\n')}\n`).stdout)
const line = (id: unknown, text: string, rest = {}): string => JSON.stringify({ id, text, ...rest })
const kindOf = ({ answer }: Row): string => Answer.parse(answer).kind

const message = 'Rhode Island Red cock over Light Sussex hens'

test('a message is answered as text, with exit code 0 and nothing on stderr', () => {
  const { stdout, stderr, status } = ask([message])
  expect(stdout.split('\n')[0]).toMatch(/^Yes/)
  expect({ stderr, status }).toEqual({ stderr: '', status: 0 })
})

test('--json is the same answer as one line that keeps to the schema', () => {
  const { stdout, status } = ask(['--json', message])
  expect(stdout.trimEnd()).not.toContain('\n')
  expect(Answer.parse(JSON.parse(stdout)).kind).toBe('cross')
  expect(status).toBe(0)
})

test('a wrong call is one line on stderr, nothing on stdout, exit code 2', () => {
  for (const argv of [
    [],
    ['--nope'],
    ['--batch', 'x'],
    ['--json', '--batch', join(folder, 'none')],
    ['--statement', folder],
  ]) {
    const { stdout, stderr, status } = ask(argv)
    expect({ stdout, status, lines: stderr.trimEnd().split('\n').length }).toEqual({ stdout: '', status: 2, lines: 1 })
    expect(stderr).not.toMatch(/at .*\.ts:\d/)
  }
})

test('a batch answers line by line in order, ids with their type, from a file or from standard input', () => {
  const lines = [line(1, message), line('two', message), line(3.5, 'RIR and BR')].join('\n')
  const fromFile = rows(ask(['--json', '--batch', file('in.jsonl', lines)]).stdout)
  const fromInput = rows(ask(['--json', '--batch', '-'], lines).stdout)
  expect(fromFile.map(({ id }) => id)).toEqual([1, 'two', 3.5])
  expect(fromInput.map(({ answer }) => answer)).toEqual(fromFile.map(({ answer }) => answer))
  expect(fromFile.every(({ ms }) => typeof ms === 'number' && ms >= 0)).toBe(true)
})

test('a line that is no message is answered with an error of id null, and the run goes on', () => {
  const answered = batch(['not json', '', '{"id": 7}', '[]', '"x"', line(8, message)])
  expect(answered.slice(0, 5).every((row) => row.id === null && kindOf(row) === 'error')).toBe(true)
  expect(answered[5]?.id).toBe(8)
})

test('an earlier message is read first, and a message that nobody addressed gets silence', () => {
  const [follow, unspoken] = batch([
    line(1, 'and the other way round?', { context: message }),
    line(2, 'lovely weather', { addressed: false }),
  ])
  expect(follow?.answer).toMatchObject({ kind: 'cross', sire: [{ breed: 'Light Sussex' }] })
  expect(unspoken?.answer).toEqual({ kind: 'silent' })
})

const kilobyte = 1024
const odd: readonly (readonly [string, string, RegExp])[] = [
  ['nothing', '', /ask-back|decline/],
  ['blanks', ' \n\t ', /ask-back|decline/],
  ['only emoji', '🐓🐔🥚🎉', /ask-back|decline/],
  ['html', '<b>RIR</b> x <script>alert(1)</script> Barred Rock', /cross|ask-back/],
  ['control signs', 'RIR\u0000 \u001B[31mx\u0007 Barred Rock\u202E', /cross|ask-back/],
  ['half a surrogate pair', 'RIR \uD800 x Barred Rock', /cross|ask-back/],
  ['64 KB', `RIR x Barred Rock. ${'la '.repeat(30_000)}`.slice(0, 64 * kilobyte), /cross|ask-back|decline/],
  ['64 KB of one letter', 'x'.repeat(64 * kilobyte), /ask-back|decline/],
  ['more than 64 KB', 'x'.repeat(64 * kilobyte + 1), /error/],
  ['a hen with two copies', 'RIR cock over B/b hen', /error/],
  ['an unknown allele', 'q^z/q^z cock over B/- hen', /error/],
  ['alleles of two genes', 's+/B cock over RIR hen', /error/],
]
test('input of every bad kind gets one clear answer, never a stack trace, and later lines are answered', () => {
  const answered = batch([...odd.map(([name, text]) => line(name, text)), line('last', message)])
  expect(answered).toHaveLength(odd.length + 1)
  const wrong = odd.filter(([, , kinds], i) => !kinds.test(kindOf(answered[i] ?? { id: '', answer: {} })))
  expect(wrong.map(([name]) => name)).toEqual([])
  expect(JSON.stringify(answered)).not.toMatch(/\bat [^"]*\.ts:\d+/)
  expect(kindOf(answered.at(-1) ?? { id: '', answer: {} })).toBe('cross')
})

test('an error names the fault and shows what to write', () => {
  const [hen, allele, long] = batch([
    line(1, 'RIR cock over B/b hen'),
    line(2, 'q^z/q^z cock over B/- hen'),
    line(3, 'x'.repeat(70 * kilobyte)),
  ])
  expect(JSON.stringify(hen?.answer)).toMatch(/B\/-/)
  expect(JSON.stringify(allele?.answer)).toMatch(/q\^z/)
  expect(JSON.stringify(long?.answer)).toMatch(/KB|bytes/)
})

test('a flock statement gives one line of JSON; a file that is no JSON says so', () => {
  const { stdout, status } = ask(['--statement', file('broken.json', '{')])
  expect(JSON.parse(stdout)).toMatchObject({ error: expect.stringContaining('JSON') })
  expect(status).toBe(0)
})

test('a picture is written beside the text', () => {
  const path = join(folder, 'chicks.png')
  const { stdout, status } = ask(['--picture', path, message])
  expect(stdout).toMatch(/^Yes/)
  expect(readFileSync(path).subarray(1, 4).toString()).toBe('PNG')
  expect(status).toBe(0)
})

test('a picture that cannot be written costs only the picture', () => {
  const { stdout, stderr, status } = ask(['--picture', join(folder, 'no', 'chicks.png'), message])
  expect(stdout).toMatch(/^Yes/)
  expect(stderr).toContain('picture')
  expect(status).toBe(1)
})

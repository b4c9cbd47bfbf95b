// test/docs.test.ts: the README says only what is so: its commands and flags exist, its conversation is what the bot says.
import { globSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { flags } from '../bot/ask/task.ts'
import { settings } from '../bot/settings.ts'
import packageJson from '../package.json' with { type: 'json' }
import { block, questionsIn, rerun } from './tools/conversation.ts'

const readme = readFileSync('README.md', 'utf8')
const developers = readFileSync('DEVELOPERS.md', 'utf8')
const scripts = new Set([...Object.keys(packageJson.scripts), 'ci'])
const found = (text: string, pattern: RegExp): readonly string[] => [...text.matchAll(pattern)].map((m) => m[1] ?? '')

test('every npm command in the docs is a script', () => {
  const named = found(
    readme + developers,
    /npm (?:run (?:--silent )?)?(start|test|ci|(?<=run (?:--silent )?)[a-z:-]+)/g,
  )
  expect(named).toEqual(expect.arrayContaining(['ci', 'start', 'test', 'ask']))
  expect(named.filter((name) => !scripts.has(name))).toEqual([])
})

test('every flag in the README is a flag of ask, and every flag of ask is in the README', () => {
  const named = new Set(found(readme, /(?<![-\w])--([a-z]+)/g).filter((flag) => flag !== 'silent'))
  expect([...named].sort()).toEqual(Object.keys(flags).sort())
})

test('every file or folder that the docs link to exists', () => {
  const linked = found(readme + developers, /\]\((?!https?:|#)([^)#]+)/g)
  expect(linked.length).toBeGreaterThan(0)
  expect(linked.filter((path) => globSync(path).length === 0)).toEqual([])
})

test('every setting is in the README, and the README names no other', () => {
  const named = new Set(found(readme, /\b(HENWIFE_[A-Z_]+)\b/g).filter((name) => name !== 'HENWIFE_CONFIG'))
  expect([...named].sort()).toEqual(settings.map(({ variable }) => variable).sort())
})

test('every setting is read somewhere', () => {
  const readers = globSync('bot/**/*.ts').filter((file) => file !== 'bot/settings.ts')
  const code = readers.map((file) => readFileSync(file, 'utf8')).join('\n')
  const read = (key: string): boolean => new RegExp(`\\.${key}\\b|\\b${key}[,} ].*=`).test(code)
  const keys = settings.map(({ path }) => path.at(-1) ?? '').filter((key) => !key.endsWith('File')) // config.ts puts a file's words in the key without File
  expect(keys.filter((key) => !read(key))).toEqual([])
})

test('the conversation in the README is what the bot says', () => {
  const questions = questionsIn(readme)
  expect(questions.length).toBeGreaterThan(2)
  expect(block(readme)).toBe(rerun(questions))
})

// test/architecture.test.ts: imports go down only, core and grammar are pure, and the check has seen every file.
import { globSync } from 'node:fs'
import { cruise, type ICruiseResult } from 'dependency-cruiser'
import { expect, test } from 'vitest'
import extractRules from 'dependency-cruiser/config-utl/extract-depcruise-options'
import extractTypeScriptConfig from 'dependency-cruiser/config-utl/extract-ts-config'

const folders = ['bot', 'core', 'grammar']

async function cruised(): Promise<ICruiseResult> {
  const tsConfig = extractTypeScriptConfig('tsconfig.json')
  const rules = await extractRules('./.dependency-cruiser.js')
  const { output } = await cruise(folders, { ...rules, validate: true }, undefined, { tsConfig })
  if (typeof output === 'string') throw new Error('want the result as data')
  return output
}

test('every TypeScript file of bot, core and grammar is among the modules that were checked, and none breaks a rule', async () => {
  const { modules, summary } = await cruised()
  const seen = new Set(modules.map(({ source }) => source))
  const files = globSync(folders.map((folder) => `${folder}/**/*.ts`))
  expect(files.length).toBeGreaterThan(40)
  expect(files.filter((file) => !seen.has(file))).toEqual([])
  expect(summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} -> ${to}`)).toEqual([])
})

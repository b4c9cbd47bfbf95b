// bot/config.ts: the operator's settings as told: environment over file over default, checked in one go, every fault named.
import { existsSync, readFileSync } from 'node:fs'
import { parse } from 'yaml'
import type { $ZodIssue } from 'zod/v4/core'
import type { Result } from '../core/vocabulary.ts'
import { environmentName, prefix, Settings, settings, type Config } from './settings.ts'

type Tree = { [key: string]: unknown }
const isTree = (value: unknown): value is Tree => typeof value === 'object' && value !== null && !Array.isArray(value)

const branchOf = (tree: Tree, key: string): Tree => {
  const branch = tree[key]
  if (isTree(branch)) return branch
  const grown: Tree = {}
  tree[key] = grown
  return grown
}
const place = (tree: Tree, [key, ...rest]: readonly string[], value: string): void => {
  if (key === undefined) return
  if (rest.length === 0) tree[key] = value
  else place(branchOf(tree, key), rest, value)
}

const nameOf = (path: readonly PropertyKey[]): string => `${path.join('.')} (${environmentName(path.map(String))})`

const worded = (issue: $ZodIssue): readonly string[] =>
  issue.code === 'unrecognized_keys'
    ? issue.keys.map((key) => `${[...issue.path, key].join('.')}: there is no such setting`)
    : [
        `${nameOf(issue.path)}: ${issue.input === undefined && issue.code === 'invalid_type' ? 'is missing' : issue.message}`,
      ]

const readTree = (fileText: string, faults: string[]): Tree => {
  try {
    const read: unknown = parse(fileText) ?? {}
    if (isTree(read)) return read
    faults.push('the file: want settings by name')
  } catch (error) {
    faults.push(`the file is not YAML: ${String(error).split('\n')[0]}`)
  }
  return {}
}

const takeEnvironment = (tree: Tree, env: NodeJS.ProcessEnv, faults: string[]): void => {
  for (const [variable, value] of Object.entries(env)) {
    if (!variable.startsWith(prefix) || variable === `${prefix}CONFIG` || value === undefined) continue
    const known = settings.find((setting) => setting.variable === variable)
    if (known) place(tree, known.path, value)
    else faults.push(`${variable}: there is no such setting`)
  }
}

const secrets = ['password', 'accessToken', 'recoveryKey'] as const

const openSecrets = (matrix: Tree, readFile: ReadFile, faults: string[]): void => {
  for (const name of secrets) {
    const file = matrix[`${name}File`]
    if (typeof file !== 'string') continue
    if (matrix[name] !== undefined) faults.push(`matrix.${name} and matrix.${name}File: want one, not both`)
    try {
      matrix[name] = readFile(file).trim()
    } catch {
      faults.push(`${nameOf(['matrix', `${name}File`])}: cannot read ${file}`)
      matrix[name] = 'unread'
    }
  }
  if (matrix['password'] === undefined && matrix['accessToken'] === undefined)
    faults.push(`${nameOf(['matrix', 'password'])} or ${nameOf(['matrix', 'accessToken'])}: one of them is needed`)
}

type ReadFile = (path: string) => string
const readText: ReadFile = (path) => readFileSync(path, 'utf8')

/**
 * Checks everything before anything starts.
 *
 * @param fileText the settings file's text (YAML), '' where there is none
 * @fault every fault at once, one line each, with the setting's name in file and environment
 */
export function readConfig(
  env: NodeJS.ProcessEnv,
  fileText: string,
  readFile: ReadFile = readText,
): Result<Config, readonly string[]> {
  const faults: string[] = []
  const tree = readTree(fileText, faults)
  takeEnvironment(tree, env, faults)
  if (isTree(tree['matrix'])) openSecrets(tree['matrix'], readFile, faults)
  const read = Settings.safeParse(tree, { reportInput: true })
  if (!read.success) faults.push(...read.error.issues.flatMap(worded))
  return read.success && faults.length === 0 ? { ok: true, value: read.data } : { ok: false, fault: faults }
}

/** As `readConfig`, from the file that HENWIFE_CONFIG names, or henwife.yaml in this folder where there is one. */
export function loadConfig(env: NodeJS.ProcessEnv = process.env): Result<Config, readonly string[]> {
  const named = env[`${prefix}CONFIG`]
  const file = named ?? 'henwife.yaml'
  if (named !== undefined && !existsSync(named))
    return { ok: false, fault: [`${prefix}CONFIG: there is no file ${named}`] }
  return readConfig(env, existsSync(file) ? readText(file) : '')
}

// test/bot/config.test.ts: the settings: environment over file over default, and every fault at once.
import { expect, test } from 'vitest'
import { readConfig } from '../../bot/config.ts'

const account = {
  HENWIFE_MATRIX_HOMESERVER: 'https://marlpit.example',
  HENWIFE_MATRIX_USER: '@hen:marlpit.example',
  HENWIFE_MATRIX_PASSWORD: 'sesame',
}
const faultsOf = (env: NodeJS.ProcessEnv, file = ''): string => {
  const read = readConfig(env, file)
  return read.ok ? 'no fault' : read.fault.join('\n')
}

test('nothing told is a chat in the terminal', () => {
  const read = readConfig({ PATH: '/bin' }, '')
  expect(read.ok && read.value.matrix).toBeUndefined()
  expect(read.ok && read.value.health).toEqual({ host: '127.0.0.1', port: 9464 })
})

test('the environment overrules the file, and the file the default', () => {
  const file = 'state: /data\nhealth: {port: 8000}\nlog: {level: warn}'
  const read = readConfig({ HENWIFE_HEALTH_PORT: '9000' }, file)
  expect(read).toMatchObject({ ok: true, value: { state: '/data', health: { port: 9000 }, log: { level: 'warn' } } })
})

test('a list is told with commas in the environment', () => {
  const read = readConfig({ ...account, HENWIFE_MATRIX_INVITES_FROM_USERS: '@wren:a.example, @finch:b.example' }, '')
  expect(read.ok && read.value.matrix?.invitesFromUsers).toEqual(['@wren:a.example', '@finch:b.example'])
})

test('every fault is named at once: a typo in either place, a wrong kind, a missing need', () => {
  const faults = faultsOf(
    { HENWIFE_MATRX_USER: 'x', HENWIFE_HEALTH_PORT: 'many', HENWIFE_MATRIX_GREETS: 'maybe' },
    'matrix: {homesever: x}\nfeed: corn',
  )
  for (const part of [
    'HENWIFE_MATRX_USER: there is no such setting',
    'matrix.homesever: there is no such setting',
    'feed: there is no such setting',
    'health.port (HENWIFE_HEALTH_PORT): want a port number',
    'matrix.greets (HENWIFE_MATRIX_GREETS): want true or false',
    'matrix.homeserver (HENWIFE_MATRIX_HOMESERVER): is missing',
    'matrix.user (HENWIFE_MATRIX_USER): is missing',
    'matrix.accessToken (HENWIFE_MATRIX_ACCESS_TOKEN): one of them is needed',
  ])
    expect(faults).toContain(part)
})

test('a secret may stand in a file of its own', () => {
  const { HENWIFE_MATRIX_PASSWORD: _, ...rest } = account
  const env = { ...rest, HENWIFE_MATRIX_PASSWORD_FILE: '/run/secrets/hen' }
  const read = readConfig(env, '', (path) => (path === '/run/secrets/hen' ? 'sesame\n' : 'wrong file'))
  expect(read.ok && read.value.matrix?.password).toBe('sesame')
})

test('a secret file that cannot be read is named, and so is a secret told twice', () => {
  expect(faultsOf({ ...account, HENWIFE_MATRIX_RECOVERY_KEY_FILE: '/nowhere/key' })).toContain(
    'cannot read /nowhere/key',
  )
  expect(faultsOf({ ...account, HENWIFE_MATRIX_PASSWORD_FILE: '/nowhere/word' })).toContain('want one, not both')
})

test('no fault repeats a secret', () => {
  const faults = faultsOf({ ...account, HENWIFE_MATRIX_PASSWORD: 'hunter2', HENWIFE_MATRIX_USER: 'hen' })
  expect(faults).toContain('want a full name')
  expect(faults).not.toContain('hunter2')
})

test('a file that is not YAML is a fault, not a crash', () => {
  expect(faultsOf({}, 'a: [')).toContain('not YAML')
  expect(faultsOf({}, '- a\n- b')).toContain('want settings by name')
})

test('questions seen are remembered for a month at least, lest they be answered again', () => {
  expect(faultsOf({ HENWIFE_KEEP_SEEN_DAYS: '29' })).toContain('keep.seenDays')
  expect(faultsOf({ HENWIFE_KEEP_SEEN_DAYS: '30' })).toBe('no fault')
})

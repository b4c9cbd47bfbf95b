// test/bot/serve.test.ts: what goes out over a transport: one answer a question, amended, withdrawn, and a picture that may fail.
import { expect, test } from 'vitest'
import { deskInMemory } from '../../bot/desk.ts'
import { serve, type Service } from '../../bot/serve.ts'
import type { Picture, Transport } from '../../bot/transport.ts'
import { edited, room, said, withdrawn } from './people.ts'

const cross = said('Rhode Island Red cock over Light Sussex hens')
const drawing: Picture = { png: new Uint8Array(), width: 1, height: 1, caption: 'chicks', fileName: 'chicks.png' }

/** A transport that notes what it is told to do. */
function noting(refuse: readonly string[] = []) {
  const done: string[] = []
  const note = (what: string): Promise<string> => {
    if (refuse.some((word) => what.startsWith(word))) return Promise.reject(new Error('refused'))
    done.push(what)
    return Promise.resolve(what)
  }
  const quiet = async (what: string): Promise<void> => void (await note(what))
  const transport: Transport = {
    listen: () => Promise.resolve(),
    reply: (to, _at, _reply, key) => note(`reply ${to} ${key}`),
    amend: (sent, _at, _reply, key) => quiet(`amend ${sent} ${key}`),
    withdraw: (sent, _at, key) => quiet(`withdraw ${sent} ${key}`),
    show: (to, _at, _picture, key) => note(`show ${to} ${key}`),
    seen: (message) => quiet(`seen ${message}`),
    typing: () => Promise.resolve(),
  }
  const faults: string[] = []
  const counted: string[] = []
  const service: Service = {
    transport,
    desk: deskInMemory(),
    settingsOf: () => room,
    draw: () => Promise.resolve(drawing),
    count: (kind) => void counted.push(kind),
    log: (_fault, what) => void faults.push(what),
  }
  return { service, done, faults, counted }
}
const verbs = (done: readonly string[]): readonly string[] => done.map((line) => line.split(' ')[0] ?? '')

test('a question gets its text, then its picture, then the mark of having been read', async () => {
  const { service, done } = noting()
  await serve(service, cross)
  expect(verbs(done)).toEqual(['reply', 'show', 'seen'])
})

test('each answer is counted by its kind, a withdrawal not', async () => {
  const { service, counted } = noting()
  await serve(service, cross)
  await serve(service, edited(cross, 'how many eggs to set for 6 pullets'))
  await serve(service, withdrawn(cross))
  expect(counted).toEqual(['cross', 'hatch'])
})

test('keys are made of the question alone: the same message sent again carries the same keys', async () => {
  const [one, other] = [noting(), noting()]
  await serve(one.service, cross)
  await serve(other.service, cross)
  expect(one.done).toEqual(other.done)
  expect(new Set(one.done).size).toBe(one.done.length)
})

test('an edited question amends its answer and replaces its picture; it is not answered twice', async () => {
  const { service, done } = noting()
  await serve(service, cross)
  await serve(service, edited(cross, 'Rhode Island Red cock over Barred Plymouth Rock hens'))
  expect(verbs(done)).toEqual(['reply', 'show', 'seen', 'amend', 'withdraw', 'show'])
})

test('a question taken back takes text and picture along, once', async () => {
  const { service, done } = noting()
  await serve(service, cross)
  await serve(service, withdrawn(cross))
  await serve(service, withdrawn(cross))
  expect(verbs(done)).toEqual(['reply', 'show', 'seen', 'withdraw', 'withdraw'])
})

test('a picture that is refused costs the picture only, and is noted', async () => {
  const { service, done, faults } = noting(['show'])
  await serve(service, cross)
  expect(verbs(done)).toEqual(['reply', 'seen'])
  expect(faults).toEqual(['picture'])
})

test('forgetting reaches the other rooms and threads of that person, and nobody else', async () => {
  const { service } = noting()
  const elsewhere = { ...cross, room: '!barn:marlpit.example', id: '$elsewhere' }
  const another = { ...cross, person: '@dill:marlpit.example', id: '$another' }
  for (const message of [cross, elsewhere, another, said('forget me')]) await serve(service, message)
  expect([cross, elsewhere, another].map((at) => service.desk.memoryOf(at) === undefined)).toEqual([true, true, false])
})

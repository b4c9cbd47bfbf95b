// test/tools/soak.ts: `npm run soak`: does each question get one answer while the bot is killed a hundred times, its server stops, and it is told to slow down? Some ten minutes, on loopback only, stops by itself.
import { parseArgs } from 'node:util'
import { whole, type Line } from '../matrix/with/bot.ts'
import type { Person } from '../matrix/with/person.ts'
import { startProxy } from '../matrix/with/proxy.ts'
import { isInstalled, openScene, type Scene } from '../matrix/with/scene.ts'

const { values } = parseArgs({
  options: {
    questions: { type: 'string', default: '1000' },
    kills: { type: 'string', default: '100' },
    away: { type: 'string', default: '500' },
    pictures: { type: 'boolean', default: false },
  },
})
const [questions, kills, away] = [Number(values.questions), Number(values.kills), Number(values.away)]
const settings = { HENWIFE_MATRIX_PICTURES: String(values.pictures) }
const roomCount = 5

const pause = (milliseconds: number): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve, milliseconds)
  })
const print = (words: string): void => void process.stdout.write(`${words}\n`)
const breeds = [
  'Rhode Island Red',
  'Light Sussex',
  'Barred Rock',
  'Welsummer',
  'Brown Leghorn',
  'Buff Orpington',
  'Marans',
]
const question = (i: number): string =>
  `${breeds[i % 7]} cock over ${breeds[(i + 1 + (Math.floor(i / 7) % 6)) % 7]} hens`

/** Sends even where the server is away: the same transaction again and again. */
async function ask(who: Person, room: string, i: number): Promise<string> {
  for (;;) {
    try {
      return await who.say(room, question(i))
    } catch {
      await pause(1000)
    }
  }
}

type Tally = { readonly asked: number; readonly answered: number; readonly doubled: number; readonly missed: number }

/** Waits until nothing has come for a while, then counts the answers that were not taken back. */
async function count(who: Person, ids: readonly string[]): Promise<Tally> {
  const answersTo = (id: string): number =>
    who.answersTo(id).filter(({ content }) => content['msgtype'] === 'm.notice').length
  const end = Date.now() + 180_000
  while (Date.now() < end && ids.some((id) => answersTo(id) === 0)) await pause(500)
  await pause(5000)
  const counts = ids.map(answersTo)
  return {
    asked: ids.length,
    answered: counts.filter((n) => n > 0).length,
    doubled: counts.filter((n) => n > 1).length,
    missed: counts.filter((n) => n === 0).length,
  }
}

async function deviceKeys(scene: Scene): Promise<string> {
  const info = await scene.wren.client.getCrypto()?.getUserDeviceInfo([scene.hen.user], true)
  return [...(info?.get(scene.hen.user)?.values() ?? [])]
    .map((device) => `${device.deviceId} ${device.getFingerprint()}`)
    .join(', ')
}

let failures = 0
const report = (what: string, tally: Tally, started: number): void => {
  const { asked, answered, doubled, missed } = tally
  if (answered !== asked || doubled > 0) failures += 1
  const seconds = Math.round((Date.now() - started) / 1000)
  print(`| ${what} | ${asked} | ${answered} | ${doubled} | ${missed} | ${seconds} s |`)
}

const saysOf = (lines: readonly Line[], msg: string): number => lines.filter((line) => line.msg.includes(msg)).length

async function killed(scene: Scene, rooms: readonly string[]): Promise<void> {
  const started = Date.now()
  const keysBefore = await deviceKeys(scene)
  const ids: string[] = []
  const asking = (async () => {
    for (let i = 0; i < questions; i += 1) {
      ids.push(await ask(scene.wren, rooms[i % rooms.length] ?? '', i))
      await pause(120)
    }
  })()
  for (let n = 0; n < kills; n += 1) {
    await pause(Math.random() * 1500)
    await scene.bot().stop('SIGKILL')
    const start = scene.start(settings).catch(() => undefined)
    if (n % 4 !== 3) await start // every fourth time it is killed somewhere on its way up
  }
  await scene.bot().stop('SIGKILL')
  await scene.start(settings)
  await asking
  report(`${kills + 1} times kill -9`, await count(scene.wren, ids), started)
  const keysAfter = await deviceKeys(scene)
  print(
    keysBefore === keysAfter ? 'The same device and key throughout.' : `Keys changed: ${keysBefore} -> ${keysAfter}`,
  )
  if (keysBefore !== keysAfter) failures += 1
}

async function awayFor(scene: Scene, rooms: readonly string[]): Promise<void> {
  const started = Date.now()
  await scene.bot().stop('SIGKILL')
  const ids: string[] = []
  for (let i = 0; i < away; i += 1) ids.push(await ask(scene.wren, rooms[0] ?? '', i))
  await scene.start(settings)
  report(`${away} asked while it was away`, await count(scene.wren, ids), started)
}

async function serverAway(scene: Scene, rooms: readonly string[]): Promise<void> {
  const started = Date.now()
  const ids: string[] = []
  const asking = (async () => {
    for (let i = 0; i < 100; i += 1) {
      ids.push(await ask(scene.wren, rooms[i % rooms.length] ?? '', i))
      await pause(200)
    }
  })()
  await pause(8000)
  await scene.synapse.stop()
  await pause(60_000)
  await scene.synapse.start()
  await asking
  report('server stopped for a minute', await count(scene.wren, ids), started)
}

async function slowedDown(scene: Scene, rooms: readonly string[]): Promise<void> {
  const started = Date.now()
  const proxy = await startProxy(scene.synapse.url)
  await scene.bot().stop('SIGTERM')
  await scene.start({ ...settings, HENWIFE_MATRIX_HOMESERVER: proxy.url })
  proxy.fate = (_method, path) =>
    !path.includes('/sync') && Math.random() < 0.5 ? { kind: 'limited', milliseconds: 500 } : { kind: 'passed' }
  const ids: string[] = []
  for (let i = 0; i < 100; i += 1) ids.push(await ask(scene.wren, rooms[i % rooms.length] ?? '', i))
  report('every other request told to slow down', await count(scene.wren, ids), started)
  print(`("slow down" was said ${proxy.counts.get('limited')} times)`)
  await scene.bot().stop('SIGTERM')
  await proxy.close()
}

if (!isInstalled) {
  print('Synapse is not installed; test/tools/synapse.sh installs it.')
  process.exit(2)
}
const scene = await openScene(whole)
try {
  await scene.start(settings)
  const rooms: string[] = []
  for (let n = 0; n < roomCount; n += 1) rooms.push(await scene.room(true))
  print(
    `${new Date().toISOString()}, Node ${process.version}, ${roomCount} encrypted rooms, pictures ${values.pictures ? 'on' : 'off'}\n`,
  )
  print('| what happened | asked | answered | doubled | missed | time |\n|---|---|---|---|---|---|')
  await killed(scene, rooms)
  await awayFor(scene, rooms)
  await serverAway(scene, rooms)
  const faults = saysOf(scene.bot().lines, 'a fault of ours')
  if (faults > 0) print(`${faults} faults of ours in the log`)
  await slowedDown(scene, rooms)
} finally {
  await scene.clear()
}
print(failures === 0 ? '\nEach question had one answer.' : `\n${failures} of these did not hold.`)
process.exit(failures === 0 ? 0 : 1)

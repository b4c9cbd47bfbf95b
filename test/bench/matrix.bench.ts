// test/bench/matrix.bench.ts: how fast the bot answers in real rooms, beside a bare echo bot on the same SDK, key store and inbox; how fast it starts; how much memory it takes. PARTS=memory MESSAGES=10000 for the long run of memory.
import { newFolder, removeFolder, startBot, told, whole, type Bot } from '../matrix/with/bot.ts'
import { comesIn, person, type Person } from '../matrix/with/person.ts'
import { startSynapse, synapseInstalled, type Account, type Synapse } from '../matrix/with/synapse.ts'

if (!synapseInstalled()) {
  process.stdout.write('Synapse is not installed (test/tools/synapse.sh installs it): nothing measured.\n')
  process.exit(0)
}

const messages = Number(process.env['MESSAGES'] ?? 1000)
const rounds = Number(process.env['ROUNDS'] ?? 100)
const bare = '../test/matrix/with/bareBot.ts'
const question = 'Rhode Island Red cock over Light Sussex hens'

const pause = (milliseconds: number): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve, milliseconds)
  })
const print = (words: string): void => void process.stdout.write(`${words}\n`)
const began = performance.now()
/** How far it is, beside the figures. */
const tell = (words: string): void =>
  void process.stderr.write(`[${Math.round((performance.now() - began) / 1000)} s] ${words}\n`)
const longEnough = 300_000 // ms for one answer, on a machine with much else to do
const at = (sorted: readonly number[], share: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? NaN
const spread = (times: readonly number[]) => {
  const sorted = [...times].sort((a, b) => a - b)
  return { median: at(sorted, 0.5), p99: at(sorted, 0.99) }
}

type Seat = {
  readonly name: string
  readonly account: Account
  readonly folder: string
  bot: Bot
  readonly script: string
  readonly settings: Record<string, string>
}

const synapse: Synapse = await startSynapse()
const wren: Person = await person(synapse.url, await synapse.register('wren'))
const seats: Seat[] = []

async function seat(name: string, script: string, settings: Record<string, string> = {}): Promise<Seat> {
  const account = await synapse.register(name)
  const folder = newFolder()
  const bot = startBot(script, { ...told(synapse.url, account, folder), ...settings })
  await bot.says('ready')
  const made = { name, account, folder, bot, script, settings }
  seats.push(made)
  return made
}
const startAgain = async (one: Seat): Promise<number> => {
  const started = performance.now()
  one.bot = startBot(one.script, { ...told(synapse.url, one.account, one.folder), ...one.settings })
  await one.bot.says('ready')
  return performance.now() - started
}
async function roomWith(one: Seat, encrypted: boolean): Promise<string> {
  const room = await wren.makeRoom({ encrypted, direct: true, invite: [one.account.user] })
  await comesIn(wren, room, one.account.user)
  return room
}
const megabytes = async (one: Seat): Promise<number> => {
  const { text } = await one.bot.page('/metrics')
  return Math.round(Number(/^henwife_process_resident_memory_bytes (\S+)/mu.exec(text)?.[1]) / 1e6)
}

/** From the call that sends the question to the moment the asker's client has the answer. */
async function roundTrip(room: string): Promise<number> {
  const started = performance.now()
  const sent = await wren.say(room, question)
  await wren.sees(() => wren.answersTo(sent)[0], longEnough)
  return performance.now() - started
}

const turned = <T>(list: readonly T[], by: number): readonly T[] => [
  ...list.slice(by % list.length),
  ...list.slice(0, by % list.length),
]

async function latency(): Promise<void> {
  const settings = { HENWIFE_MATRIX_PICTURES: 'false' }
  const [plain, withHead, withPictures] = [
    await seat('bare', bare),
    await seat('hen', whole, settings),
    await seat('artist', whole),
  ]
  print('| send to reply, encrypted room | median | 99th percentile | n |\n|---|---|---|---|')
  const taken = new Map<Seat, number[]>([plain, withHead, withPictures].map((one) => [one, []]))
  const rooms = new Map<Seat, string>()
  for (const one of taken.keys()) rooms.set(one, await roomWith(one, true))
  for (let i = 0; i < rounds + 5; i += 1) {
    for (const [one, times] of turned([...taken], i)) {
      const time = await roundTrip(rooms.get(one) ?? '') // in turn, so that all have the same weather
      if (i >= 5) times.push(time)
      await pause(one === withPictures ? 800 : 300) // until the last one's afterwork is done
    }
    if (i % 20 === 4) tell(`latency: ${i + 1} of ${rounds + 5} rounds`)
  }
  const names = ['bare echo bot', 'Henwife, pictures off', 'Henwife, pictures on (time of the text)']
  const base = spread(taken.get(plain) ?? []).median
  for (const [i, times] of [...taken.values()].entries()) {
    const { median, p99 } = spread(times)
    print(
      `| ${names[i]} | ${median.toFixed(0)} ms (${(median / base).toFixed(2)} x) | ${p99.toFixed(0)} ms | ${times.length} |`,
    )
  }
  print('')
}

async function starts(): Promise<void> {
  const one = seats.find(({ name }) => name === 'hen')
  if (!one) return
  const times: number[] = []
  for (let i = 0; i < 7; i += 1) {
    await one.bot.stop('SIGTERM')
    times.push(await startAgain(one))
  }
  const { median } = spread(times)
  print(
    `Start to ready, with keys: median ${(median / 1000).toFixed(2)} s, slowest ${(Math.max(...times) / 1000).toFixed(2)} s of ${times.length}.\n`,
  )
}

/** Answers a second while a backlog is worked off, from the first to the last. */
async function rate(one: Seat, rooms: readonly string[], each: number): Promise<number> {
  await one.bot.stop('SIGTERM')
  const asked: string[] = []
  for (let i = 0; i < each; i += 1) asked.push(...(await Promise.all(rooms.map((room) => wren.say(room, question)))))
  await startAgain(one)
  const answers = await Promise.all(asked.map((id) => wren.sees(() => wren.answersTo(id)[0], longEnough)))
  const times = answers.map((answer) => answer.at).sort((a, b) => a - b)
  return (1000 * (asked.length - 1)) / ((times.at(-1) ?? 0) - (times[0] ?? 0))
}

async function rates(): Promise<void> {
  print('| answers a second, encrypted, pictures off | one room | 50 rooms |\n|---|---|---|')
  for (const [name, label] of [
    ['bare', 'bare echo bot'],
    ['hen', 'Henwife'],
  ] as const) {
    const one = seats.find((seat) => seat.name === name)
    if (!one) continue
    const rooms: string[] = []
    for (let n = 0; n < 50; n += 1) rooms.push(await roomWith(one, true))
    tell(`rates: ${label} is in its 50 rooms`)
    const alone = await rate(one, rooms.slice(0, 1), 100)
    tell(`rates: ${label} has answered in one room`)
    const together = await rate(one, rooms, 4)
    print(`| ${label} | ${alone.toFixed(1)} | ${together.toFixed(1)} |`)
  }
  print('')
}

/** Enough of different kinds that no memory of the last answer helps. */
const questions = [
  question,
  'Black Copper Marans cock over Barred Plymouth Rock hens',
  'red cock over White Rock hens, can I tell the chicks apart?',
  'how many eggs to set for 6 pullets',
  'My black cock Bert gave 7 black chicks from a lavender hen. Does he carry lavender?',
  'Cream Legbar cock over Welsummer hens',
  'how many eggs does a Light Sussex lay?',
  'Blue Orpington x Black Orpington',
]
const reportEvery = Math.min(500, messages)
const settles = 90_000 // ms, until what is thrown away is given back, and the thread that draws has gone

async function memoryOf(name: string, label: string, count: number, settings: Record<string, string>): Promise<void> {
  const one = await seat(name, whole, settings)
  await one.bot.stop('SIGTERM')
  await startAgain(one) // the first start compiles the sources, and what that takes stays until the next
  await pause(settles)
  const idle = await megabytes(one)
  tell(`memory, ${label}: idle at ${idle} MB`)
  const rooms: string[] = []
  for (let n = 0; n < 10; n += 1) {
    const room = await wren.makeRoom({ encrypted: true, invite: [one.account.user, '@nobody:marlpit.test'] })
    await comesIn(wren, room, one.account.user)
    rooms.push(room)
  }
  const answered = async (): Promise<number> => {
    const { text } = await one.bot.page('/metrics')
    return Number(/^henwife_answer_seconds_count (\S+)/mu.exec(text)?.[1]) - rooms.length // greetings
  }
  const figures: number[] = []
  for (let sent = rooms.length; sent <= count; sent += rooms.length) {
    const words = questions[(sent / rooms.length) % questions.length]
    await Promise.all(rooms.map((room) => wren.say(room, `!hen ${words}`)))
    while (sent - (await answered()) > 2 * rooms.length) await pause(50)
    if (sent % reportEvery !== 0) continue
    figures.push(await megabytes(one))
    tell(`memory, ${label}: ${sent} of ${count} messages, ${figures.at(-1)} MB`)
  }
  await pause(settles)
  const rest = await megabytes(one)
  const after = await answered()
  print(`| ${label} | ${after} | ${idle} | ${Math.max(...figures)} | ${figures.at(-1)} | ${rest} |`)
  await one.bot.stop('SIGTERM')
}

async function memory(): Promise<void> {
  print(
    '| MB resident after a second start, ten encrypted rooms, every message a question | answered | idle | most | last | at rest |\n|---|---|---|---|---|---|',
  )
  await memoryOf('keeper', 'pictures off', messages, { HENWIFE_MATRIX_PICTURES: 'false' })
  await memoryOf('painter', 'pictures on', messages, {})
  print('')
}

try {
  const parts = { latency, starts, rates, memory }
  const wanted = process.env['PARTS']?.split(',')
  for (const [name, part] of Object.entries(parts))
    if (wanted?.includes(name) ?? true) {
      tell(name)
      await part()
    }
} finally {
  for (const one of seats) {
    await one.bot.stop('SIGKILL')
    removeFolder(one.folder)
  }
  wren.stop()
  await synapse.remove()
}
process.exit(0)

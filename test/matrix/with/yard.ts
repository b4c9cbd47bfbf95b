// test/matrix/with/yard.ts: one test's own scripted homeserver and state folder, and the bots started against it; gone with the test.
import { test as plain } from 'vitest'
import { startHomeserver, type Homeserver, type Request } from '../../homeserver.ts'
import { me, type Content, type Sent } from '../../homeserver/world.ts'
import { echo, newFolder, removeFolder, startBot, told, type Bot } from './bot.ts'

export const [wren, finch]: readonly [string, string] = ['@wren:marlpit.test', '@finch:marlpit.test']

export type Yard = {
  readonly home: Homeserver
  readonly folder: string
  readonly start: (settings?: Readonly<Record<string, string>>, script?: string) => Bot
  /** Started and at work. */
  readonly ready: (settings?: Readonly<Record<string, string>>, script?: string) => Promise<Bot>
  /** Wren says something. */
  readonly say: (room: string, body: string, more?: Content) => string
  readonly until: (isSo: () => boolean, within?: number) => Promise<void>
  readonly answersTo: (question: string) => readonly Sent[]
  readonly answered: (question: string) => Promise<void>
  /** Asks a last question in the room: once it is answered, everything before it has been dealt with. */
  readonly settle: (room: string) => Promise<void>
  readonly clear: () => Promise<void>
}

export const isSend = ({ method, path }: Request): boolean => method === 'PUT' && path.includes('/send/')
export const relationOf = ({ content }: Sent): Content => Object(content['m.relates_to'])

async function newYard(): Promise<Yard> {
  const home = await startHomeserver()
  const folder = newFolder()
  const bots: Bot[] = []
  const start: Yard['start'] = (settings = {}, script = echo) => {
    const account = told(home.url, { user: me, password: 'sesame' }, folder)
    const bot = startBot(script, { ...account, HENWIFE_MATRIX_ENCRYPTION: 'false', ...settings })
    bots.push(bot)
    return bot
  }
  const until: Yard['until'] = async (isSo, within = 50_000) => {
    for (const end = Date.now() + within; !isSo();) {
      if (Date.now() > end) throw new Error(`not so within ${within} ms; sent: ${JSON.stringify(home.world.sent)}`)
      await new Promise((resolve) => {
        setTimeout(resolve, 20)
      })
    }
  }
  const say: Yard['say'] = (room, body, more) => home.world.say(room, wren, body, more)
  const answersTo: Yard['answersTo'] = (question) =>
    home.world.sent.filter((sent) => Object(relationOf(sent)['m.in_reply_to'])['event_id'] === question)
  const answered: Yard['answered'] = (question) => until(() => answersTo(question).length > 0)
  return {
    home,
    folder,
    start,
    say,
    until,
    answersTo,
    answered,
    ready: async (settings, script) => {
      const bot = start(settings, script)
      await bot.says('ready')
      return bot
    },
    settle: (room) => answered(say(room, '!hen settled?')),
    clear: async () => {
      await Promise.all(bots.map((bot) => bot.stop('SIGKILL')))
      await home.close()
      removeFolder(folder)
    },
  }
}

/** Side by side: each test waits for processes of its own most of the time. */
export const test = plain.extend<{ yard: Yard }>({
  // oxlint-disable-next-line no-empty-pattern -- the test runner reads the pattern to learn what a fixture needs
  yard: async ({}, use) => {
    const yard = await newYard()
    await use(yard)
    await yard.clear()
  },
}).concurrent

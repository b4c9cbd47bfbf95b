// test/matrix/with/scene.ts: a real homeserver with the bot's account and a member on it, and the bot started, stopped and started again.
import { echo, newFolder, removeFolder, startBot, told, type Bot } from './bot.ts'
import { comesIn, person, type Person } from './person.ts'
import { startSynapse, synapseInstalled, type Account, type Synapse } from './synapse.ts'

export type Scene = {
  readonly synapse: Synapse
  readonly hen: Account
  readonly wren: Person
  readonly folder: string
  /** The bot of now. */
  readonly bot: () => Bot
  /** Starts it and waits until it is at work. */
  readonly start: (settings?: Readonly<Record<string, string>>) => Promise<Bot>
  readonly join: (name: string) => Promise<Person>
  /** A room of wren's with the bot in it, and others. */
  readonly room: (encrypted: boolean, others?: readonly Person[]) => Promise<string>
  readonly clear: () => Promise<void>
}

/** @param script which bot: the echo, or the whole */
export async function openScene(script: string = echo, { slow = false } = {}): Promise<Scene> {
  const synapse = await startSynapse({ slow })
  const hen = await synapse.register('hen')
  const people: Person[] = []
  const bots: Bot[] = []
  const folder = newFolder()
  const join: Scene['join'] = async (name) => {
    const who = await person(synapse.url, await synapse.register(name))
    people.push(who)
    return who
  }
  const wren = await join('wren')
  const bot = (): Bot => {
    const last = bots.at(-1)
    if (!last) throw new Error('no bot was started')
    return last
  }
  return {
    synapse,
    hen,
    wren,
    folder,
    bot,
    join,
    start: async (settings = {}) => {
      bots.push(startBot(script, { ...told(synapse.url, hen, folder), ...settings }))
      await bot().says('ready')
      return bot()
    },
    room: async (encrypted, others = []) => {
      const invite = [hen.user, ...others.map(({ id }) => id)]
      const room = await wren.makeRoom({ encrypted, direct: others.length === 0, invite })
      for (const other of others) await other.client.joinRoom(room)
      await comesIn(wren, room, hen.user)
      return room
    },
    clear: async () => {
      await Promise.all(bots.map((one) => one.stop('SIGKILL')))
      for (const who of people) who.stop()
      await synapse.remove()
      removeFolder(folder)
    },
  }
}

export const isInstalled = synapseInstalled()

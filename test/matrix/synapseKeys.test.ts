// test/matrix/synapseKeys.test.ts: the bot's keys against a real homeserver: one device, one key, vouched for, copied away; late and lost keys.
import { existsSync, globSync, readFileSync, rmSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { newFolder, removeFolder, startBot, told, echo } from './with/bot.ts'
import { person, type Person } from './with/person.ts'
import { startProxy } from './with/proxy.ts'
import { isInstalled, openScene, type Scene } from './with/scene.ts'

describe.skipIf(!isInstalled)('keys, with Synapse', { timeout: 120_000 }, () => {
  let scene: Scene
  let wren: Person
  beforeAll(async () => {
    scene = await openScene()
    wren = scene.wren
    await scene.start()
  }, 180_000)
  afterAll(() => scene?.clear())

  const until = async (isSo: () => Promise<boolean>, within = 20_000): Promise<void> => {
    for (const end = Date.now() + within; !(await isSo());) {
      if (Date.now() > end) throw new Error(`not so within ${within} ms`)
      await new Promise((resolve) => {
        setTimeout(resolve, 100)
      })
    }
  }
  /** Device id and key of the bot as others see them. */
  const devices = async (): Promise<readonly (readonly [string, string | undefined])[]> => {
    const info = await wren.client.getCrypto()?.getUserDeviceInfo([scene.hen.user], true)
    return [...(info?.get(scene.hen.user)?.values() ?? [])].map((device) => [device.deviceId, device.getFingerprint()])
  }
  const isVouchedFor = async (device: string): Promise<boolean> => {
    const status = await wren.client.getCrypto()?.getDeviceVerificationStatus(scene.hen.user, device)
    return status?.signedByOwner === true
  }
  const figure = async (name: string): Promise<number> => {
    const { text } = await scene.bot().page('/metrics')
    return Number(new RegExp(String.raw`^henwife_${name} (\d+)`, 'mu').exec(text)?.[1])
  }
  const askedFor = async (path: string): Promise<Record<string, unknown>> => {
    const login = {
      type: 'm.login.password',
      identifier: { type: 'm.id.user', user: scene.hen.user },
      password: scene.hen.password,
    }
    const at = `${scene.synapse.url}/_matrix/client/v3`
    const { access_token: token } = await (
      await fetch(`${at}/login`, { method: 'POST', body: JSON.stringify(login) })
    ).json()
    const answer = await (await fetch(at + path, { headers: { authorization: `Bearer ${token}` } })).json()
    await fetch(`${at}/logout`, { method: 'POST', headers: { authorization: `Bearer ${token}` } })
    return answer
  }

  test('a message whose key comes late is kept, and answered once when the key has come', async () => {
    const room = await scene.room(true)
    const proxy = await startProxy(scene.synapse.url)
    const late = await person(proxy.url, await scene.synapse.register('late'))
    await wren.client.invite(room, late.id)
    await late.client.joinRoom(room)
    await late.sees((seen) => seen.find(() => true)).catch(() => undefined)
    proxy.fate = (_method, path) =>
      path.includes('/sendToDevice/m.room.encrypted') ? { kind: 'late', milliseconds: 2500 } : { kind: 'passed' }
    const question = await late.say(room, '!hen one')
    await until(async () => (await figure('undecryptable_total')) > 0, 2400)
    expect(late.answersTo(question)).toEqual([])
    await late.answerTo(question)
    await wren.answerTo(await wren.say(room, '!hen two'))
    expect(wren.answersTo(question)).toHaveLength(1)
    late.stop()
    await proxy.close()
  })

  test('the account vouches for the device, and a copy of the keys is kept at the server, locked', async () => {
    const room = await scene.room(true)
    await wren.answerTo(await wren.say(room, 'one'))
    await until(async () => (await figure('device_cross_signed')) === 1)
    const [device] = await devices()
    await until(() => isVouchedFor(device?.[0] ?? ''))
    await until(async () => Number((await askedFor('/room_keys/version'))['count']) > 0)
  })

  test('the recovery key is written down for its owner only', () => {
    const file = join(scene.folder, 'recovery-key')
    expect(readFileSync(file, 'utf8')).toMatch(/^Es[\w ]{50,}\n$/u)
    expect(statSync(file).mode & 0o777).toBe(0o600)
  })

  test('a second process on the same state folder is refused while the first is at work', async () => {
    const second = startBot(echo, told(scene.synapse.url, scene.hen, scene.folder))
    expect((await second.ended).code).toBe(1)
    expect(second.lastWords()).toContain('held by another Henwife')
    const room = await scene.room(true)
    await wren.answerTo(await wren.say(room, 'one'))
  })

  test('without its key file it does not start as if nothing had happened, and its device keeps its key', async () => {
    const before = await devices()
    await scene.bot().stop('SIGTERM')
    const away = globSync(join(scene.folder, 'keys.sqlite*'))
    expect(away.length).toBeGreaterThan(0)
    for (const file of away) rmSync(file)
    const bot = startBot(echo, told(scene.synapse.url, scene.hen, scene.folder))
    expect((await bot.ended).code).toBe(1)
    expect(bot.lastWords()).toContain('The key file is not the one of device')
    expect(await devices()).toEqual(before)
  })

  test('with a new folder and the recovery key it is a new device, vouched for, that reads and answers', async () => {
    const key = readFileSync(join(scene.folder, 'recovery-key'), 'utf8').trim()
    const folder = newFolder()
    const settings = { ...told(scene.synapse.url, scene.hen, folder), HENWIFE_MATRIX_RECOVERY_KEY: key }
    const old = (await devices()).map(([device]) => device)
    const bot = await scene.start(settings)
    await until(async () => (await figure('device_cross_signed')) === 1)
    const fresh = (await devices()).map(([device]) => device).find((device) => !old.includes(device))
    await until(() => isVouchedFor(fresh ?? ''))
    const room = await scene.room(true)
    await wren.answerTo(await wren.say(room, 'one'))
    expect(existsSync(join(folder, 'recovery-key'))).toBe(false)
    await bot.stop('SIGTERM')
    removeFolder(folder)
  })

  test('an access token whose device has keys elsewhere is refused', async () => {
    const [first, second] = [newFolder(), newFolder()]
    const { HENWIFE_MATRIX_PASSWORD: _, ...rest } = told(scene.synapse.url, scene.hen, first)
    const settings = { ...rest, HENWIFE_MATRIX_ACCESS_TOKEN: scene.hen.token }
    const bot = startBot(echo, settings)
    await bot.says('ready')
    await bot.stop('SIGTERM')
    const other = startBot(echo, { ...settings, HENWIFE_STATE: second })
    expect((await other.ended).code).toBe(1)
    expect(other.lastWords()).toContain('has keys at the server that are not in the state folder')
    const again = startBot(echo, settings)
    await again.says('ready')
    await again.stop('SIGTERM')
    removeFolder(first)
    removeFolder(second)
  })
})

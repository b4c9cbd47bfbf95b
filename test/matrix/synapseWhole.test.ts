// test/matrix/synapseWhole.test.ts: the whole bot, head and all, in a room on a real homeserver: a conversation as a keeper has it, with its picture.
import { Attachment, EncryptedAttachment, initAsync } from '@matrix-org/matrix-sdk-crypto-wasm'
import { DatabaseSync } from 'node:sqlite'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { whole } from './with/bot.ts'
import type { Person, Seen } from './with/person.ts'
import { isInstalled, openScene, type Scene } from './with/scene.ts'

describe.skipIf(!isInstalled)('the whole bot, with Synapse', { timeout: 120_000 }, () => {
  let scene: Scene
  let wren: Person
  beforeAll(async () => {
    scene = await openScene(whole)
    wren = scene.wren
    await scene.start()
  }, 180_000)
  afterAll(() => scene?.clear())

  const bodyOf = ({ content }: Seen): string => String(content['body'])
  const pictureOf = (question: string): Promise<Seen> =>
    wren.sees(() => wren.answersTo(question).find(({ content }) => content['msgtype'] === 'm.image'), 30_000)
  const bytesAt = async (mxc: unknown): Promise<Uint8Array> => {
    const path = `/_matrix/client/v1/media/download/${String(mxc).slice('mxc://'.length)}`
    const headers = { authorization: `Bearer ${wren.client.getAccessToken()}` }
    return new Uint8Array(await (await fetch(scene.synapse.url + path, { headers })).arrayBuffer())
  }
  const isPng = (bytes: Uint8Array): boolean => Buffer.from(bytes).toString('latin1', 1, 4) === 'PNG'

  test('in an encrypted chat: question, picture, follow-up, correction, thanks, and forgetting', async () => {
    const room = await scene.room(true)
    const greeting = await wren.sees((seen) => seen.find((one) => one.room === room))
    expect(bodyOf(greeting)).toContain('I am Henwife')

    const question = await wren.say(room, 'Rhode Island Red cock over Light Sussex hens')
    const answer = await wren.answerTo(question)
    expect(bodyOf(answer)).toMatch(/^Yes/u)
    expect(String(answer.content['formatted_body'])).not.toMatch(/<(?:table|span|font|h\d|details)/u)

    const picture = await pictureOf(question)
    const { url, ...how } = Object(picture.content['file'])
    await initAsync()
    const closed = await bytesAt(url)
    expect(isPng(closed)).toBe(false)
    const opened = Attachment.decrypt(new EncryptedAttachment(closed, JSON.stringify(how)))
    expect(isPng(opened)).toBe(true)
    expect(picture.content['info']).toMatchObject({ mimetype: 'image/png', size: opened.length })
    expect(picture.content['filename']).not.toBe(picture.content['body'])

    const followUp = await wren.say(room, 'and the other way round?')
    expect(bodyOf(await wren.answerTo(followUp))).toMatch(/Light Sussex.* over Rhode Island Red/u)

    const amended = wren.sees((seen) =>
      seen.find(({ relation }) => relation['rel_type'] === 'm.replace' && relation['event_id'] === answer.id),
    )
    await wren.edit(room, question, 'Rhode Island Red cock over Barred Rock hens')
    expect(JSON.stringify((await amended).content['m.new_content'])).toContain('Barred')

    const forget = await wren.say(room, 'forget me')
    expect(bodyOf(await wren.answerTo(forget))).toContain('forgotten')
    await scene.bot().stop('SIGTERM')
    const sql = new DatabaseSync(join(scene.folder, 'henwife.sqlite'))
    expect(sql.prepare('SELECT count(*) AS n FROM memories').get()).toEqual({ n: 0 })
    expect(sql.prepare('SELECT count(*) AS n FROM sent WHERE person IS NOT NULL').get()).toEqual({ n: 0 })
    sql.close()
    await scene.start()
  })

  test('in a plain room of three: called by name it answers the asker; the picture can be fetched', async () => {
    const finch = await scene.join('finch')
    const room = await scene.room(false, [finch])
    const chatter = await finch.say(room, 'we had fourteen eggs today')
    const question = await wren.say(room, '!hen Light Sussex cock over Rhode Island Red hens')
    const answer = await finch.sees(() => finch.answersTo(question)[0])
    expect(answer.content['m.mentions']).toEqual({ user_ids: [wren.id] })
    const picture = await pictureOf(question)
    expect(isPng(await bytesAt(picture.content['url']))).toBe(true)
    expect(picture.content['m.mentions']).toEqual({})
    expect(finch.answersTo(chatter)).toEqual([])
  })
})

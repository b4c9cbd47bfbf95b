// test/homeserver.ts: a small homeserver on loopback for a test to script: rooms, syncs, sends, and every fault a real one cannot be asked for.
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http'
import { answerTo } from './homeserver/routes.ts'
import { newWorld, type World } from './homeserver/world.ts'

export type Request = {
  readonly method: string
  readonly path: string
  readonly query: URLSearchParams
  readonly body: Readonly<Record<string, unknown>>
  readonly token: string | undefined
}
export type Response = { readonly status: number; readonly body: object }
/** What a server may do other than answer: cut the line, or say nothing for ever. */
export type Misbehaviour = Response | 'cut' | 'hang' | undefined

export type Homeserver = {
  readonly url: string
  readonly world: World
  /** Every request, in order. */
  readonly asked: readonly Request[]
  /** Asked first at each request. `before`: it misbehaves before it does what it was asked; else it does it and then misbehaves. */
  misbehave: (request: Request) => Misbehaviour
  misbehaveAfter: (request: Request) => Misbehaviour
  readonly close: () => Promise<void>
}

const bodyOf = async (request: IncomingMessage): Promise<Readonly<Record<string, unknown>>> => {
  const parts: Buffer[] = []
  for await (const part of request) parts.push(part)
  const text = Buffer.concat(parts).toString()
  try {
    return JSON.parse(text)
  } catch {
    return { bytes: text.length }
  }
}

const asRequest = async (request: IncomingMessage): Promise<Request> => {
  const url = new URL(request.url ?? '/', 'http://localhost')
  const path = decodeURIComponent(url.pathname.replace(/^\/_matrix\/(?:client|media)(?:\/(?:v\d|r0|unstable))?/u, ''))
  const token = request.headers.authorization?.replace('Bearer ', '')
  return { method: request.method ?? 'GET', path, query: url.searchParams, body: await bodyOf(request), token }
}

const send = (response: ServerResponse, { status, body }: Response): void => {
  response.writeHead(status, { 'content-type': 'application/json' }).end(JSON.stringify(body))
}

/** @returns whether the request is dealt with */
const didMisbehave = (response: ServerResponse, how: Misbehaviour): boolean => {
  if (how === 'cut') response.socket?.destroy()
  else if (typeof how === 'object') send(response, how)
  return how !== undefined
}

export async function startHomeserver(): Promise<Homeserver> {
  const world = newWorld()
  const asked: Request[] = []
  const nothing = (): Misbehaviour => undefined
  const server = createServer((incoming, response) => {
    void asRequest(incoming).then(async (request) => {
      asked.push(request)
      if (didMisbehave(response, home.misbehave(request))) return
      const answer = await answerTo(world, request)
      if (!didMisbehave(response, home.misbehaveAfter(request))) send(response, answer)
    })
  })
  await new Promise<void>((resolve) => {
    server.listen(0, '127.0.0.1', resolve)
  })
  const address = server.address()
  const home: Homeserver = {
    url: `http://127.0.0.1:${typeof address === 'object' && address ? address.port : 0}`,
    world,
    asked,
    misbehave: nothing,
    misbehaveAfter: nothing,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve())
        server.closeAllConnections()
      }),
  }
  return home
}

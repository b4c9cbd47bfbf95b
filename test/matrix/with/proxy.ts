// test/matrix/with/proxy.ts: a line to a real server that can be cut, slowed, or answered for: what a bad network and a busy server do.
import { createServer, request as forward, type IncomingMessage, type ServerResponse } from 'node:http'
import { freePort } from './synapse.ts'

/** What becomes of one request. `lost`: it never arrives. `deaf`: it arrives, its answer does not. `late`: answered at once with nothing, delivered after so many milliseconds. */
export type Fate =
  | { readonly kind: 'passed' | 'lost' | 'deaf' | 'half' }
  | { readonly kind: 'slow' | 'late'; readonly milliseconds: number }
  | { readonly kind: 'limited'; readonly milliseconds: number }

export type Proxy = {
  readonly url: string
  /** Decides over each request by its method and path. */
  fate: (method: string, path: string) => Fate
  readonly counts: ReadonlyMap<Fate['kind'], number>
  readonly close: () => Promise<void>
}

const wait = (milliseconds: number): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve, milliseconds)
  })
const json = { 'content-type': 'application/json' }

const readAll = async (incoming: IncomingMessage): Promise<Buffer> => {
  const parts: Buffer[] = []
  for await (const part of incoming) parts.push(part)
  return Buffer.concat(parts)
}

type Answer = { readonly status: number; readonly headers: NodeJS.Dict<string | string[]>; readonly body: Buffer }

const deliver = (target: URL, incoming: IncomingMessage, body: Buffer): Promise<Answer> =>
  new Promise((resolve, reject) => {
    const options = { method: incoming.method, headers: { ...incoming.headers, host: target.host } }
    const out = forward(target, options, (answer) => {
      readAll(answer).then(
        (bytes) => resolve({ status: answer.statusCode ?? 500, headers: answer.headers, body: bytes }),
        reject,
      )
    })
    out.once('error', reject)
    out.end(body)
  })

async function carry(target: URL, incoming: IncomingMessage, response: ServerResponse, fate: Fate): Promise<void> {
  const body = await readAll(incoming)
  const cut = (): void => void response.socket?.destroy()
  if (fate.kind === 'lost') return cut()
  if (fate.kind === 'limited') {
    const told = JSON.stringify({ errcode: 'M_LIMIT_EXCEEDED', error: 'slow down', retry_after_ms: fate.milliseconds })
    return void response.writeHead(429, json).end(told)
  }
  if (fate.kind === 'late') {
    response.writeHead(200, json).end('{}')
    await wait(fate.milliseconds)
    await deliver(target, incoming, body)
    return undefined
  }
  if (fate.kind === 'slow') await wait(fate.milliseconds)
  const answer = await deliver(target, incoming, body)
  if (fate.kind === 'deaf') return cut()
  const { 'content-length': _length, 'transfer-encoding': _encoding, ...headers } = answer.headers
  response.writeHead(answer.status, { ...headers, 'content-length': answer.body.length })
  if (fate.kind !== 'half') return void response.end(answer.body)
  response.write(answer.body.subarray(0, Math.floor(answer.body.length / 2)), cut)
  return undefined
}

export async function startProxy(to: string): Promise<Proxy> {
  const port = await freePort()
  const counts = new Map<Fate['kind'], number>()
  const server = createServer((incoming, response) => {
    const path = incoming.url ?? '/'
    const fate = proxy.fate(incoming.method ?? 'GET', path)
    counts.set(fate.kind, (counts.get(fate.kind) ?? 0) + 1)
    carry(new URL(path, to), incoming, response, fate).catch(() => response.socket?.destroy())
  })
  const proxy: Proxy = {
    url: `http://127.0.0.1:${port}`,
    fate: () => ({ kind: 'passed' }),
    counts,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve())
        server.closeAllConnections()
      }),
  }
  await new Promise<void>((resolve) => {
    server.listen(port, '127.0.0.1', resolve)
  })
  return proxy
}

// bot/health.ts: /live, /ready and /metrics over plain http, on loopback unless the operator says otherwise.
import { createServer, type ServerResponse } from 'node:http'
import type { Registry } from 'prom-client'

export type Health = { readonly port: number; readonly close: () => Promise<void> }

const say = (response: ServerResponse, status: number, text: string, type = 'text/plain; charset=utf-8'): void => {
  response.writeHead(status, { 'content-type': type }).end(text)
}

/**
 * @param ready whether the bot has heard from its chat server lately; asked at each request
 * @fault rejects where the port is taken
 */
export async function openHealth(
  at: { readonly host: string; readonly port: number },
  ready: () => boolean,
  registry: Registry,
): Promise<Health> {
  const pages: Record<string, (response: ServerResponse) => void> = {
    '/live': (response) => say(response, 200, 'live\n'),
    '/ready': (response) => (ready() ? say(response, 200, 'ready\n') : say(response, 503, 'not ready\n')),
    '/metrics': (response) =>
      void registry.metrics().then(
        (text) => say(response, 200, text, registry.contentType),
        () => say(response, 500, 'no metrics\n'),
      ),
  }
  const server = createServer((request, response) => {
    const page = request.method === 'GET' ? pages[new URL(request.url ?? '/', 'http://localhost').pathname] : undefined
    if (page) page(response)
    else say(response, 404, 'there are /live, /ready and /metrics\n')
  })
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject)
    server.listen(at.port, at.host, resolve)
  })
  const address = server.address()
  return {
    port: typeof address === 'object' && address ? address.port : at.port,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve())
        server.closeAllConnections()
      }),
  }
}

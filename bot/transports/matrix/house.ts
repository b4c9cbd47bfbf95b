// bot/transports/matrix/house.ts: what a session in rooms is handed. Type only.
import type { Log } from '../../log.ts'
import type { Metrics } from '../../metrics.ts'
import type { Service } from '../../serve.ts'
import type { Config, MatrixConfig } from '../../settings.ts'
import type { Store } from '../../store.ts'
import type { Incoming } from '../../transport.ts'

export type House = {
  readonly config: Config
  readonly matrix: MatrixConfig
  readonly store: Store
  readonly log: Log
  readonly metrics: Metrics
  readonly serve: (service: Service, incoming: Incoming) => Promise<void>
  readonly draw: Service['draw']
  /** Ends the session in order. */
  readonly stop: AbortSignal
  /** ms without a word from the server after which the bot counts as deaf */
  readonly patience: number
  /** Handed a new question at each session: is the bot at work and hearing? */
  readonly asks: (isReady: () => boolean) => void
}

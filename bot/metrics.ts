// bot/metrics.ts: what an operator can watch, in the text format of Prometheus. No label holds a room or a person.
import { Counter, Gauge, Histogram, Registry, collectDefaultMetrics } from 'prom-client'

/** Counts since the process started, unless a name says otherwise. */
export function openMetrics() {
  const registry = new Registry()
  collectDefaultMetrics({ register: registry, prefix: 'henwife_' })
  const registers = [registry]
  const counter = <T extends string = never>(name: string, help: string, labelNames: readonly T[] = []) =>
    new Counter<T>({ name: `henwife_${name}`, help, labelNames, registers })
  const gauge = (name: string, help: string) => new Gauge({ name: `henwife_${name}`, help, registers })
  return {
    registry,
    syncs: counter('syncs_total', 'Finished syncs with the chat server'),
    messages: counter('messages_total', 'Messages taken into the inbox'),
    answers: counter('answers_total', 'Answers sent, by kind of answer', ['kind']),
    greetings: counter('greetings_total', 'Rooms greeted'),
    faults: counter('faults_total', 'Things that went wrong and were survived', ['kind']),
    undecryptable: counter('undecryptable_total', 'Messages whose key was not there when they came'),
    slowedDown: counter('rate_limited_total', 'Times the chat server said: slow down'),
    limited: counter(
      'questions_over_limit_total',
      'Questions left unanswered because one person or room asked too many',
    ),
    waiting: gauge('inbox_waiting', 'Messages not yet handled'),
    locked: gauge('inbox_locked', 'Messages kept until their key comes'),
    rooms: gauge('rooms', 'Rooms the bot is in'),
    trusted: gauge('device_cross_signed', '1 where the account vouches for the bot as a device of its own'),
    seconds: new Histogram({
      name: 'henwife_answer_seconds',
      help: 'From taking a message out of the inbox to its reply being stored by the chat server',
      buckets: [0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10, 30],
      registers,
    }),
  } as const
}

export type Metrics = ReturnType<typeof openMetrics>

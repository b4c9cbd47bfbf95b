// test/tools/fuzz.ts: reads made-up messages until it has read as many as it is told. Run: npm run fuzz -- 1000000 [seed]
import { Question } from '../../core/question.ts'
import { think } from '../../bot/think.ts'
import { emptyContext, type Context } from '../../grammar/context.ts'
import { understand } from '../../grammar/understand.ts'
import { message } from './chatter.ts'

const wanted = Number(process.argv[2] ?? 10_000)
const firstSeed = Number(process.argv[3] ?? 1)
/** One message in so many goes all the way to a reply; one in so many is checked against the schema. */
const wholeWay = 200
const checked = 20
/** Longest reply that may go out, in characters. */
const longestReply = 12_000
/** A reading that takes longer than this is shown. */
const slowMilliseconds = 50

let seed = firstSeed
let context: Context = emptyContext()
const kinds = new Map<string, number>()
let slowest = { milliseconds: 0, text: '' }
let longest = 0
const began = performance.now()

const fail = (why: string, text: string): never => {
  console.error(`${why}\nseed ${seed}\n${JSON.stringify(text)}`)
  process.exit(1)
}

for (let done = 0; done < wanted; done += 1) {
  const made = message(seed, done % 50 === 0 ? 120 : 14)
  const before = context
  try {
    const start = performance.now()
    const read = understand(made.text, before)
    const milliseconds = performance.now() - start
    if (milliseconds > slowest.milliseconds && done > 2000) slowest = { milliseconds, text: made.text.slice(0, 200) }
    kinds.set(read.question.kind, (kinds.get(read.question.kind) ?? 0) + 1)
    if (done % checked === 0) Question.parse(read.question)
    if (done % wholeWay === 0) {
      const { document, crash } = think(made.text, before)
      if (crash !== undefined) fail(`crash on the way to a reply: ${String(crash)}`, made.text)
      longest = Math.max(longest, JSON.stringify(document).length)
    }
    context = done % 7 === 0 ? emptyContext() : read.context
  } catch (fault) {
    fail(String(fault instanceof Error ? fault.stack : fault), made.text)
  }
  seed = made.next
}

const seconds = (performance.now() - began) / 1000
console.log(
  `${wanted} messages read in ${seconds.toFixed(0)} s, none failed; kinds: ${[...kinds].map(([kind, n]) => `${kind} ${n}`).join(', ')}`,
)
console.log(
  `slowest reading ${slowest.milliseconds.toFixed(1)} ms${slowest.milliseconds > slowMilliseconds ? `: ${JSON.stringify(slowest.text)}` : ''}; longest reply document ${longest} of ${longestReply} signs allowed`,
)
if (longest > longestReply) process.exit(1)

// test/bench/ask.bench.ts: from message to reply: warm in one process, and cold from process start to answer. Run: npm run bench -- ask. No limits here.
import { spawnSync } from 'node:child_process'
import { do_not_optimize, measure } from 'mitata'
import { reply } from '../../bot/render/reply.ts'
import { think } from '../../bot/think.ts'
import { emptyContext } from '../../grammar/context.ts'

/** One of each kind that keepers write, the long and the odd among them. */
const messages: readonly string[] = [
  'Rhode Island Red cock over Light Sussex hens',
  'RIR x BR',
  'LS cock over RIR hens, can I sex them?',
  'red cock over White Rock hens',
  'White Leghorn roo with my New Hampshires, what do the chicks look like',
  'black copper marans over cream legbar, egg colour?',
  'golden laced wyandotte cock on silver laced hens',
  'easter egger roo over australorp hens',
  'red sexlink x red sexlink',
  'production RIR over barred rock vs heritage RIR over barred rock',
  'buff orp roo over barred rock, over australorp, over light brahma',
  's+/s+ k+/k+ over S/- K/-',
  'E/e^Wh s+/s+ male, e^Wh/e^Wh S/- Co/Co female',
  'lav orpington x blue orpington, percent please',
  'frizzle x frizzle',
  '(RIR x Light Sussex) cock over (RIR x Light Sussex) hens',
  'black silkie roo over buff brahma hens',
  'which hens for my Welsummer cock so I can sex the chicks?',
  'what rooster for silver laced wyandotte hens, want sexable and good layers',
  'which hens with my black ameraucana for green eggs',
  'my black cock gave 7 black chicks from a lavender hen, does he carry lavender?',
  'can a hen be split to chocolate',
  'what did I hatch: black chick with a white spot, cock is RIR, hens are barred rock and light sussex',
  'how many eggs to set for 12 pullets',
  'which line of rhode island red for eggs',
  'is columbian silver or gold',
  'white spot on the head always means rooster?',
  'rhodeiland red rooser over bard rok hens',
  'wyandotte over wyandotte, sexlinks?',
  'morning all, frost on the coop today',
  '🐓RIR ➕ 🐔BR 🤔',
  `so ${'the neighbour said one thing and the lady in the store another, '.repeat(20)}RIR cock over barred rock hens, what hatches?`,
]

const milliseconds = (ns: number): string => `${(ns / 1e6).toFixed(2)} ms`
const print = (line: string): void => void process.stdout.write(`${line}\n`)

const answer = (text: string): void => {
  const { question, answer } = think(text, emptyContext())
  do_not_optimize(reply(answer, question))
}

let next = 0
const { min, p50, p99, max, samples } = await measure(
  () => {
    answer(messages[next % messages.length]!)
    next += 1
  },
  { batch_threshold: 0, warmup_samples: 20 * messages.length, min_samples: 200 * messages.length, min_cpu_time: 5e9 },
)
print(`message to reply, warm, ${messages.length} messages in turn, ${samples.length} answers:`)
print(
  `  fastest ${milliseconds(min)}, median ${milliseconds(p50)}, 99th percentile ${milliseconds(p99)}, slowest ${milliseconds(max)}`,
)
print(`  memory after it: ${(process.memoryUsage().rss / 1e6).toFixed(0)} MB`)

const slowest = await Promise.all(
  messages.map(async (text) => {
    const { p50 } = await measure(() => answer(text), { batch_threshold: 0, min_cpu_time: 5e7 })
    return { text, p50 }
  }),
)
print('slowest messages, median of each:')
for (const { text, p50 } of slowest.toSorted((a, b) => b.p50 - a.p50).slice(0, 5))
  print(`  ${milliseconds(p50)}  ${text.slice(0, 70)}`)

/** Says at the end of a process what it took: most memory in KB, processor time in us. */
const hook =
  'data:text/javascript,process.on("exit",()=>{const{maxRSS,userCPUTime,systemCPUTime}=process.resourceUsage();process.stderr.write(maxRSS+","+(userCPUTime+systemCPUTime))})'
type Start = { readonly wall: number; readonly cpu: number; readonly memory: number }
function start(): Start {
  const argv = ['--max-semi-space-size=2', '--import', hook, 'bot/launch.js', 'ask.ts', messages[0]!]
  const began = performance.now()
  const { stderr } = spawnSync(process.execPath, argv, { encoding: 'utf8' })
  const [memory = NaN, cpu = NaN] = stderr.split(',').map(Number)
  return { wall: performance.now() - began, cpu: cpu / 1000, memory: memory / 1024 }
}
const middle = (numbers: readonly number[]): number => numbers.toSorted((a, b) => a - b)[numbers.length >> 1] ?? NaN

start()
const starts = Array.from({ length: 15 }, start)
const [wall, cpu, memory] = (['wall', 'cpu', 'memory'] as const).map((key) => middle(starts.map((one) => one[key])))
print(
  `ask, cold, from process start to answer: median ${wall?.toFixed(0)} ms (of which processor ${cpu?.toFixed(0)} ms), most memory ${memory?.toFixed(0)} MB`,
)
const npmBegan = performance.now()
for (let i = 0; i < 5; i += 1) spawnSync('npm', ['run', '--silent', 'ask', '--', messages[0]!])
print(`the same through npm run: ${((performance.now() - npmBegan) / 5).toFixed(0)} ms`)

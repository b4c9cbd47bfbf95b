// test/bench/picture.bench.ts: time and size of pictures, from answer to PNG, in the thread that draws them. Run: npm run bench -- picture.
import { bench, do_not_optimize, run, summary } from 'mitata'
import { planOf } from '../../bot/render/picture/plan.ts'
import { rasterise } from '../../bot/render/picture/raster.ts'
import { draw } from '../../bot/render/picture/worker.ts'
import { resolve } from '../../core/resolve.ts'
import type { Answer } from '../../core/answer.ts'

const manner = { symbols: false, units: 'both' } as const
const cross = (sire: string, dam: string): Answer =>
  resolve({
    kind: 'cross',
    matings: [{ sire: { breed: sire }, dam: { breed: dam } }],
    aspects: [],
    assumed: [],
    manner,
  })

const names = [
  'Rhode Island Red',
  'Light Sussex',
  'Barred Plymouth Rock',
  'White Plymouth Rock',
  'Cream Legbar',
  'Silver Laced Wyandotte',
  'Black Silkie',
  'Blue Australorp',
  'Brown Leghorn',
  'Speckled Sussex',
]
/** Every cock on every hen: a hundred matings, from the plainest card to the fullest. */
const answers = names.flatMap((sire) => names.map((dam) => cross(sire, dam)))

type Once = { readonly ms: number; readonly processorMs: number; readonly bytes: number }
async function once(answer: Answer): Promise<Once> {
  const from = performance.now()
  const busy = process.cpuUsage()
  const plan = await planOf(answer, 'light')
  const bytes = plan ? rasterise(plan.markup, plan.height).png.byteLength : 0
  const { user, system } = process.cpuUsage(busy)
  return { ms: performance.now() - from, processorMs: (user + system) / 1000, bytes }
}

const quantile = (sorted: readonly number[], q: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * q))]!

async function spread(): Promise<void> {
  for (const answer of answers) await once(answer) // warm
  const runs: Once[] = []
  for (let round = 0; round < 5; round += 1) for (const answer of answers) runs.push(await once(answer))
  const line = (what: string, of: (one: Once) => number, unit: string): string => {
    const all = runs.map(of).toSorted((a, b) => a - b)
    return `${what}: median ${quantile(all, 0.5).toFixed(1)} ${unit}, 99th percentile ${quantile(all, 0.99).toFixed(1)} ${unit}, most ${all.at(-1)!.toFixed(1)} ${unit}\n`
  }
  process.stdout.write(
    `${answers.length} crosses, ${runs.length} pictures\n${line('time', ({ ms }) => ms, 'ms')}${line('processor time, where others use the machine too', ({ processorMs }) => processorMs, 'ms')}${line('PNG', ({ bytes }) => bytes / 1000, 'kB')}\n`,
  )
}

await spread()
summary(() => {
  const plain = cross('Rhode Island Red', 'Light Sussex')
  const blues = cross('Blue Australorp', 'Blue Australorp')
  const white = cross('Rhode Island Red', 'White Plymouth Rock')
  bench('one case, sexable', async () => do_not_optimize(await once(plain)))
  bench('several looks', async () => do_not_optimize(await once(blues)))
  bench('two cases', async () => do_not_optimize(await once(white)))
  bench('the same picture again', async () => do_not_optimize(await draw({ answer: plain, room: 'light' }))).baseline()
})
await run()

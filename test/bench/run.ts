// test/bench/run.ts: runs the benches one after the other, each in a process of its own. `npm run bench -- ask` runs those named so.
import { spawnSync } from 'node:child_process'
import { globSync } from 'node:fs'
import { basename } from 'node:path'
import { cpus } from 'node:os'

const wanted = process.argv.slice(2)
const files = globSync('test/bench/*.bench.ts').sort()
const chosen = files.filter((file) => wanted.length === 0 || wanted.some((word) => basename(file).includes(word)))
const [cpu] = cpus()

process.stdout.write(`Node ${process.version}, ${cpus().length} x ${cpu?.model ?? 'unknown processor'}\n`)
for (const file of chosen) {
  process.stdout.write(`\n## ${basename(file, '.bench.ts')}\n\n`)
  const { status } = spawnSync(process.execPath, ['--expose-gc', file], { stdio: 'inherit' })
  if (status !== 0) process.exitCode = 1
}
if (chosen.length === 0) {
  process.stderr.write(
    `No bench has that name; there are ${files.map((file) => basename(file, '.bench.ts')).join(', ')}.\n`,
  )
  process.exitCode = 2
}

// bot/start.js: starts the bot so that it takes little memory. The process becomes the bot: same number, same pipes. What this needs must be told to a process before it begins, and npm cannot say it on every system.
import { fileURLToPath } from 'node:url'

/** V8: what is soon thrown away is kept small, and the heap is swept before it has grown by a tenth, not by all of its size. */
const flags = ['--max-semi-space-size=2', '--heap-growing-percent=10', '--optimize-for-size']
/** The C library: no heap of its own for every thread, and what is freed goes back to the system. In bytes. */
const allocator = { MALLOC_ARENA_MAX: '1', MALLOC_MMAP_THRESHOLD_: '16384', MALLOC_TRIM_THRESHOLD_: '65536' }

const launch = fileURLToPath(new URL('launch.js', import.meta.url))
const program = process.argv.slice(2)
if (process.platform === 'win32') await import('./launch.js')
else
  process.execve(process.execPath, [process.execPath, ...flags, ...process.execArgv, launch, ...program], {
    ...allocator,
    ...process.env,
  })

// bot/render/picture/thread.js: what the thread that draws runs first. Plain JavaScript, since a thread has no compile cache until it asks for one: without, it loads the compiler, which costs a second and 15 MB.
import { enableCompileCache } from 'node:module'

enableCompileCache()
export const { draw } = await import('./worker.ts')

// bot/launch.js: starts a program of this folder from Node's compile cache. Plain JavaScript, since a first file in
// TypeScript would load the compiler, which costs 40 ms and 18 MB at every start: `node bot/launch.js ask.ts …`.
import { enableCompileCache } from 'node:module'

const [program] = process.argv.splice(2, 1)
enableCompileCache()
await import(`./${program}`)

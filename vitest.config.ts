// vitest.config.ts: which files are tests; pure files share one module graph, which saves half a second.
import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: { include: ['test/**/*.test.ts'], isolate: false, testTimeout: 60_000 },
})

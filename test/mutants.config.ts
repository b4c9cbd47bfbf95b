// test/mutants.config.ts: the tests that are to notice a changed engine. Used by `npm run mutants` alone.
import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    include: [
      'test/core/engine/**/*.test.ts',
      'test/core/statement.test.ts',
      'test/core/testMating.test.ts',
      'test/core/flock/**/*.test.ts',
    ],
    env: { MUTANTS: 'yes' },
    isolate: false,
    testTimeout: 20_000,
  },
})

import { availableParallelism } from 'node:os'
import { defineConfig } from 'vitest/config'
import { LongestFirst } from './tests/longest-first.ts'

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    testTimeout: 120_000,
    hookTimeout: 300_000,
    // One for each core: the default leaves one idle.
    maxWorkers: availableParallelism(),
    sequence: { sequencer: LongestFirst },
    reporters: ['default', ['json', { outputFile: '.worked-notes/test-results.json' }]],
    setupFiles: ['tests/seed.ts'],
    globalSetup: ['tests/set-up.ts'],
  },
})

import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    testTimeout: 60_000,
    hookTimeout: 300_000,
    reporters: ['default', ['json', { outputFile: '.worked-notes/test-results.json' }]],
    setupFiles: ['tests/seed.ts'],
    globalSetup: ['tests/browser/set-up.ts'],
  },
})

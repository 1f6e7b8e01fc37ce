import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    include: [
      'packages/*/src/**/*.test.ts',
      'packages/*/test/**/*.test.ts',
      'apps/*/src/**/*.test.ts',
      'apps/cli/test/**/*.test.ts',
      'scripts/**/*.test.ts',
    ],
    // No test measures time, and a busy machine must not make one fail.
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
})

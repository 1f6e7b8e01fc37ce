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
    // As many as there are cores: left alone, Vitest keeps one free, which is half of a small machine.
    maxWorkers: '100%',
    // No test changes a module, a global or the environment (a test says so), so files share what is loaded once:
    // for each of them anew it cost a third of the whole run.
    isolate: false,
    // No test measures time, and a busy machine must not make one fail.
    testTimeout: 300_000,
    hookTimeout: 300_000,
  },
})

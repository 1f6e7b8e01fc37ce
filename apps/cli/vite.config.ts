import { defineConfig } from 'vite'

/** One file with everything in it, so that the program starts fast and needs nothing beside it. */
export default defineConfig({
  build: {
    ssr: 'src/main.ts',
    outDir: 'dist',
    target: 'node20',
    rolldownOptions: { output: { entryFileNames: 'chargewright.js', codeSplitting: false } },
  },
  ssr: { noExternal: true },
})

import { defineConfig } from 'vite'

/**
 * Everything bundled, so that the program starts fast and needs nothing beside its folder. What only one verb needs, the
 * writer of PDF above all, is a file of its own and loaded by that verb alone.
 */
export default defineConfig({
  build: {
    ssr: 'src/main.ts',
    outDir: 'dist',
    target: 'node20',
    rolldownOptions: {
      output: {
        entryFileNames: 'chargewright.js',
        chunkFileNames: '[name].js',
        // What several parts share is one file: cut along every overlap it would be dozens, each with its time to open.
        codeSplitting: { groups: [{ name: 'shared', minShareCount: 2 }] },
      },
    },
  },
  // The writer's own build for browsers carries its data in itself; the one for Node would look for it beside its files.
  resolve: { alias: { pdfmake: 'pdfmake/build/pdfmake.min.js' } },
  ssr: { noExternal: true },
})

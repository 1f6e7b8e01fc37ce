import { readdirSync, readFileSync } from 'node:fs'
import { defineConfig, type Plugin } from 'vite'
import { VitePWA } from 'vite-plugin-pwa'

export default defineConfig({
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  server: { port: 4173 },
  preview: { port: 4173, strictPort: true },
  build: {
    target: 'es2023',
    modulePreload: { polyfill: false },
    assetsInlineLimit: 0,
    // What writes the record to sign is a megabyte; it is a part of its own and runs only when a record is asked for.
    chunkSizeWarningLimit: 1100,
    // What two parts share goes into one file: forty small ones compress a sixth worse, and each is a request. What only
    // the steps share comes with the first of them that is opened, and not with the start.
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [
            { name: 'shared', test: /^(?!.*field\/src\/steps\/)/, minShareCount: 2, priority: 1 },
            { name: 'steps', test: /field\/src\/steps\//, minShareCount: 2 },
          ],
        },
      },
    },
  },
  worker: { format: 'es' },
  plugins: [
    contentSecurityPolicy(),
    demoVisits(),
    VitePWA({
      // A new version waits until every tab of the old one is closed: a page is never swapped under a half-typed entry.
      registerType: 'prompt',
      injectRegister: false,
      includeManifestIcons: false,
      manifest: {
        name: 'Chargewright',
        short_name: 'Chargewright',
        description: 'From readings to the right refrigerant charge, with proof',
        start_url: '.',
        display: 'standalone',
        background_color: '#fbfaf5',
        theme_color: '#15181b',
        icons: [{ src: 'mark.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' }],
      },
      workbox: {
        globPatterns: ['**/*.{html,js,css,json,svg,woff2,webmanifest}'],
        // The demo and the engine may be a few megabytes; everything must be there when the network is not.
        maximumFileSizeToCacheInBytes: 8e6,
        clientsClaim: true,
        cleanupOutdatedCaches: true,
        sourcemap: false,
      },
    }),
  ],
})

/** All invented visits as one file: two dozen requests would hold a first start up. */
function demoVisits(): Plugin {
  const examples = new URL('../../examples/', import.meta.url)
  const all = () => {
    const names = readdirSync(examples)
      .filter((name) => name.endsWith('.json'))
      .toSorted()
    return JSON.stringify(names.map((name) => JSON.parse(readFileSync(new URL(name, examples), 'utf8'))))
  }
  return {
    name: 'demo-visits',
    generateBundle() {
      this.emitFile({ type: 'asset', fileName: 'demo-visits.json', source: all() })
    },
    configureServer({ middlewares }) {
      middlewares.use('/demo-visits.json', (_, answer) => answer.end(all()))
    },
  }
}

/** Only what this app itself brings may run or load. Left out while developing, where the server injects its own code. */
function contentSecurityPolicy(): Plugin {
  const content = [
    "default-src 'none'",
    "script-src 'self'",
    "style-src 'self'",
    "font-src 'self'",
    "img-src 'self' data: blob:",
    "connect-src 'self'",
    "manifest-src 'self'",
    "worker-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ')
  const meta = { tag: 'meta', attrs: { 'http-equiv': 'Content-Security-Policy', content } }
  return {
    name: 'content-security-policy',
    apply: 'build',
    transformIndexHtml: () => [{ ...meta, injectTo: 'head-prepend' }],
  }
}

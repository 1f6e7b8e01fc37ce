#!/usr/bin/env node
// Runs the bundle that `npm ci` builds (script `prepare`).
import { existsSync } from 'node:fs'

const bundle = new URL('../dist/chargewright.js', import.meta.url)

if (existsSync(bundle)) await import(bundle.href)
else {
  process.stderr.write('chargewright is not built yet. Build it once, in the folder of the repository: npm run build\n')
  process.exitCode = 3
}

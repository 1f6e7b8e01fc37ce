import { execFileSync } from 'node:child_process'
import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { buildSync } from 'esbuild'

/** The twin's speed and robustness, bundled as an app would be: running TypeScript as it is makes every closure dearer. */
const folder = mkdtempSync(join(tmpdir(), 'bench-'))

for (const name of ['speed', 'robustness', 'target-grid']) {
  const outfile = join(folder, `${name}.mjs`)
  buildSync({
    entryPoints: [join(import.meta.dirname, `${name}.ts`)],
    bundle: true,
    format: 'esm',
    platform: 'node',
    outfile,
    logLevel: 'error',
  })
  console.log(name)
  execFileSync(process.execPath, [outfile], { stdio: 'inherit' })
}

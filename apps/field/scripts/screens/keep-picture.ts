import { spawnSync } from 'node:child_process'
import { mkdirSync, statSync, writeFileSync } from 'node:fs'

export const FOLDER = new URL('../../../../docs/screens/', import.meta.url)

/** What one picture may weigh, so that the folder stays small enough for a repository. */
const MOST_BYTES = 60_000

/** Tried in order until the picture is light enough: ink on paper needs few shades. */
const SHADES = [32, 16, 8]

/** Keeps a screenshot with as many shades as fit into its weight. */
export function keepPicture(name: string, screenshot: Buffer): void {
  mkdirSync(FOLDER, { recursive: true })
  const file = new URL(`${name}.png`, FOLDER)
  for (const shades of SHADES) {
    const run = spawnSync('pngquant', [String(shades), '--nofs', '--speed', '1', '--strip', '-'], { input: screenshot })
    if (run.error) throw new Error('pngquant is not installed (Debian: apt-get install pngquant)', { cause: run.error })
    if (run.status !== 0) throw new Error(`pngquant: ${run.stderr}`)
    writeFileSync(file, run.stdout)
    if (statSync(file).size <= MOST_BYTES) return
  }
  throw new Error(`${name}.png weighs more than ${MOST_BYTES} bytes with ${SHADES.at(-1)} shades`)
}

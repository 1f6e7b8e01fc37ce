import { spawnSync } from 'node:child_process'
import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

export const FOLDER = fileURLToPath(new URL('../../../../docs/screens/', import.meta.url))

/** What one picture may weigh, so that the folder stays small enough for a repository. */
const MOST_BYTES = 60_000

/** Tried in order until the picture is light enough: ink on paper needs few shades. */
const SHADES = [24, 16, 12]

/** Keeps a screenshot with as many shades as fit into its weight. */
export function keepPicture(name: string, screenshot: Buffer): void {
  mkdirSync(FOLDER, { recursive: true })
  for (const shades of SHADES) {
    const reduced = through('pngquant', [`${shades}`, '--nofs', '--speed', '1', '-'], screenshot)
    const picture = through('cwebp', ['-quiet', '-lossless', '-z', '9', '-o', '-', '--', '-'], reduced)
    if (picture.length > MOST_BYTES) continue
    writeFileSync(join(FOLDER, `${name}.webp`), picture)
    return
  }
  throw new Error(`${name} weighs more than ${MOST_BYTES} bytes with ${SHADES.at(-1)} shades`)
}

function through(program: string, args: readonly string[], input: Buffer): Buffer {
  const { error, status, stdout, stderr } = spawnSync(program, args, { input, maxBuffer: 1e8 })
  if (error) throw new Error(`${program} is missing (Debian: apt-get install pngquant webp)`, { cause: error })
  if (status !== 0) throw new Error(`${program}: ${stderr}`)
  return stdout
}

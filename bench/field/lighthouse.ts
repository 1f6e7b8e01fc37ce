/**
 * What Lighthouse says of the built app, first loaded on the phone that it takes for usual.
 *
 *   npx tsx bench/field/lighthouse.ts
 *
 * Lighthouse is fetched for the run, into a folder outside of this one, and is no part of the project.
 */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync } from 'node:fs'
import { loadavg, tmpdir } from 'node:os'
import { join } from 'node:path'
import { ADDRESS, CHROMIUM, serve } from './serve.ts'

const PAGES = { start: '', visit: '#/visit/demo-orifice-add' } as const
const CATEGORIES = ['performance', 'accessibility', 'best-practices'] as const
const LEAST = 95

interface Report {
  readonly categories: Readonly<Record<(typeof CATEGORIES)[number], { readonly score: number }>>
  /** How fast it found this machine: a busy one is slower than it is. */
  readonly environment: { readonly benchmarkIndex: number }
}

const folder = mkdtempSync(join(tmpdir(), 'lighthouse-'))
const stop = await serve()
try {
  for (const [page, address] of Object.entries(PAGES)) {
    const { categories, environment } = reportOn(page, `${ADDRESS}${address}`)
    const scores = CATEGORIES.map((id) => [id, Math.round(100 * categories[id].score)] as const)
    const said = scores.map(([id, score]) => `${id} ${score}${score < LEAST ? ` (below ${LEAST})` : ''}`).join(', ')
    const load = loadavg()[0]?.toFixed(1)
    console.log(`${page}: ${said}; this machine ${environment.benchmarkIndex}, load average ${load}`)
  }
} finally {
  stop()
}

function reportOn(page: string, address: string): Report {
  const file = join(folder, `${page}.json`)
  const asked = ['--quiet', `--only-categories=${CATEGORIES}`, '--output=json', `--output-path=${file}`]
  const browser = '--chrome-flags=--headless=new --no-sandbox --disable-gpu'
  spawnSync('npx', ['--yes', 'lighthouse@12.2.3', address, ...asked, browser], {
    cwd: folder,
    env: { ...process.env, ...(CHROMIUM && { CHROME_PATH: CHROMIUM }) },
    stdio: 'inherit',
  })
  return JSON.parse(readFileSync(file, 'utf8'))
}

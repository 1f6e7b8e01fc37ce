import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import type { Results } from '../results.ts'
import { boardSection } from './board-section.ts'
import { calibrationPicture } from './calibration-picture.ts'
import { loopSection } from './loop-section.ts'
import { riskPicture } from './risk-picture.ts'
import { robustnessSection } from './robustness-section.ts'

const PAGE = new URL('../../../docs/scoreboard.md', import.meta.url)
const PICTURES = new URL('../../../docs/scoreboard/', import.meta.url)

/** Renews what stands between the markers of the page, and its pictures; the words around them are written by hand. */
export function writePage({ board, robustness, loops }: Results): void {
  let page = readFileSync(PAGE, 'utf8')
  if (board) {
    page = between(page, 'board', boardSection(board))
    const ours = board.judges.at(-1)!
    mkdirSync(PICTURES, { recursive: true })
    writeFileSync(new URL('risk-coverage.svg', PICTURES), `${riskPicture(board.judges)}\n`)
    writeFileSync(new URL('calibration.svg', PICTURES), `${calibrationPicture(ours.name, ours.reliability)}\n`)
  }
  if (robustness) page = between(page, 'robustness', robustnessSection(robustness))
  if (loops) page = between(page, 'closed loop', loopSection(loops))
  writeFileSync(PAGE, page)
}

function between(page: string, name: string, text: string): string {
  const [start, end] = [`<!-- ${name}: written by npm run scoreboard -->`, `<!-- end of ${name} -->`]
  const [from, to] = [page.indexOf(start), page.indexOf(end)]
  if (from < 0 || to < from) throw new Error(`docs/scoreboard.md has no place for ${name}`)
  return `${page.slice(0, from + start.length)}\n\n${text}\n\n${page.slice(to)}`
}

import { parseArgs } from 'node:util'
import { board } from './board.ts'
import { closedLoops } from './closed-loop/closed-loops.ts'
import { boardSection } from './page/board-section.ts'
import { loopSection } from './page/loop-section.ts'
import { robustnessSection } from './page/robustness-section.ts'
import { writePage } from './page/write-page.ts'
import { keep, type Results } from './results.ts'
import { robustness } from './robustness.ts'

const { values: asked } = parseArgs({
  options: {
    quick: { type: 'boolean', default: false },
    nominals: { type: 'boolean', default: false },
    structure: { type: 'boolean', default: false },
    loop: { type: 'boolean', default: false },
    cases: { type: 'string', default: '1120' },
    plants: { type: 'string', default: '200' },
    seed: { type: 'string', default: '7000' },
  },
})

const [cases, plants, seed] = [asked.cases, asked.plants, asked.seed].map(Number) as [number, number, number]
const shrink = asked.quick ? 8 : 1
const kinds = (['nominals', 'structure'] as const).filter((kind) => asked[kind])

const progress = (share: number) => {
  if (process.stderr.isTTY) process.stderr.write(`\r${Math.round(100 * share)} % `)
}

const measured: Results = {
  ...(kinds.length > 0 ? { robustness: await robustness(kinds, Math.ceil(cases / 4 / shrink), seed, progress) } : {}),
  ...(asked.loop ? { loops: await closedLoops(Math.ceil(plants / shrink), seed, progress) } : {}),
  ...(kinds.length > 0 || asked.loop ? {} : { board: await board(Math.ceil(cases / shrink), seed, progress) }),
}

console.log(
  [
    measured.board ? boardSection(measured.board) : '',
    measured.robustness ? robustnessSection(measured.robustness) : '',
    measured.loops ? loopSection(measured.loops) : '',
  ]
    .filter((section) => section !== '')
    .join('\n\n'),
)
if (!asked.quick) writePage(keep(measured))

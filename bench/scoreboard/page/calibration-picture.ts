import { exactAxis } from '../../../packages/picture/src/axis.ts'
import { draw } from '../../../packages/picture/src/draw.ts'
import { DESK } from '../../../packages/picture/src/index.ts'
import { label } from '../../../packages/picture/src/label.ts'
import { lineIn, plot } from '../../../packages/picture/src/plot.ts'
import { element } from '../../../packages/picture/src/svg.ts'
import { STROKE } from '../../../packages/picture/src/tokens.ts'
import type { ReliabilityBin } from '../metrics/reliability.ts'

/** How often answers were right over the probability stated with them, each with its exact 95 % interval. */
export function calibrationPicture(name: string, bins: readonly ReliabilityBin[]): string {
  const sheet = { ...DESK, width: 480, height: 420 }
  const { palette, text } = sheet
  const at = plot(sheet, exactAxis('stated probability, %', 0, 100, 5), exactAxis('right, % (simulated)', 0, 100, 5))
  const place = (x: number, y: number) => at.place({ x: 100 * x, y: 100 * y })
  const marks = bins.flatMap((bin) => {
    const [dot, low, high] = [bin.share, bin.low, bin.high].map((y) => place(bin.stated, y)) as [Place, Place, Place]
    return [
      lineIn(at, [low, high], palette.ink, STROKE.line * text),
      element('circle', {
        cx: dot.x,
        cy: dot.y,
        r: 0.3 * text,
        fill: palette.paper,
        stroke: palette.ink,
        'stroke-width': STROKE.line * text,
      }),
      label(String(bin.of), dot.x, bin.to === 1 ? low.y + 1.1 * text : high.y - 0.35 * text, sheet, {
        anchor: 'middle',
        onPaper: true,
        fill: palette.soft,
      }),
    ]
  })
  return draw(
    sheet,
    {
      title: `${name}: stated probability against how often it was right (simulated)`,
      description: bins
        .map(
          (bin) => `Stated ${(100 * bin.stated).toFixed(0)} %: right ${(100 * bin.share).toFixed(0)} % of ${bin.of}.`,
        )
        .join(' '),
      table: { head: [], rows: [] },
    },
    element('rect', { width: sheet.width, height: sheet.height, fill: palette.paper }),
    at.grid,
    lineIn(at, [place(0, 0), place(1, 1)], palette.soft, STROKE.thin * text, '4 4'),
    ...marks,
  ).svg
}

type Place = ReturnType<ReturnType<typeof plot>['place']>

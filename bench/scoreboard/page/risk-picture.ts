import { exactAxis } from '../../../packages/picture/src/axis.ts'
import { draw } from '../../../packages/picture/src/draw.ts'
import { DESK } from '../../../packages/picture/src/index.ts'
import { label } from '../../../packages/picture/src/label.ts'
import { lineIn, plot } from '../../../packages/picture/src/plot.ts'
import { element } from '../../../packages/picture/src/svg.ts'
import { STROKE } from '../../../packages/picture/src/tokens.ts'
import type { JudgeOnBoard } from '../board.ts'

/** Wrong answers among those taken over the share of cases answered; a judge without probabilities is one point. */
export function riskPicture(judges: readonly JudgeOnBoard[]): string {
  const sheet = { ...DESK, height: 380 }
  const { palette, text } = sheet
  const worst = Math.max(...judges.flatMap(({ curve }) => curve.map(({ wrong }) => 100 * wrong)))
  const at = plot(
    sheet,
    exactAxis('cases answered, %', 0, 100, 5),
    exactAxis('of these wrong, % (simulated)', 0, Math.ceil(worst / 10 + 0.5) * 10, 6),
  )
  const drawn = judges.map(({ name, curve }) => {
    const points = curve.map(({ coverage, wrong }) => at.place({ x: 100 * coverage, y: 100 * wrong }))
    const end = points.at(-1)
    if (!end) return ''
    return [
      points.length > 1 ? lineIn(at, points, palette.care, STROKE.heavy * text) : '',
      element('circle', {
        cx: end.x,
        cy: end.y,
        r: 0.3 * text,
        fill: palette.paper,
        stroke: palette.ink,
        'stroke-width': STROKE.line * text,
      }),
      label(name, end.x - 0.6 * text, end.y - 0.6 * text, sheet, { anchor: 'end', onPaper: true }),
    ].join('')
  })
  return draw(
    sheet,
    {
      title: 'Wrong answers over the share of cases answered (simulated)',
      description: judges
        .map(
          ({ name, curve }) =>
            `${name}: ${curve.length > 1 ? 'a curve that ends' : 'a point'} at ${at100(curve.at(-1)?.coverage)} % answered, ${at100(curve.at(-1)?.wrong)} % of these wrong.`,
        )
        .join(' '),
      table: { head: [], rows: [] },
    },
    element('rect', { width: sheet.width, height: sheet.height, fill: palette.paper }),
    at.grid,
    ...drawn,
  ).svg
}

const at100 = (share: number | undefined): string => (share === undefined ? '–' : (100 * share).toFixed(0))

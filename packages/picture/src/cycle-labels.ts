import { type Quantity, type Statement, say, type Tell } from '@chargewright/quantity'
import type { CyclePoints } from './cycle-points.ts'
import { bare } from './in-unit.ts'
import { label } from './label.ts'
import type { Sheet } from './picture.ts'
import type { Place, Run } from './run.ts'
import { textWidth } from './text-width.ts'

/** `342.0 psig, bubble 105.0 °F` above or below its level; the reading alone where the level is too short for both. */
export function levelLabel(
  { level, from, to }: Run,
  end: 'dew' | 'bubble',
  below: number,
  place: Place,
  tell: Tell,
  sheet: Sheet,
): string {
  const { x, y } = place({ enthalpy: from, pressure: level.pressure })
  const room = place({ enthalpy: to, pressure: level.pressure }).x - x - 1.2 * sheet.text
  const [read, saturated] = [bare(level.reading), bare(level.saturation)]
  const reading = tell(say`${read}`)
  const both = tell(end === 'dew' ? say`${read}, dew ${saturated}` : say`${read}, bubble ${saturated}`)
  const words = textWidth(both, sheet.text) <= room ? both : reading
  return label(words, x + 0.8 * sheet.text, y + below * sheet.text, sheet, { onPaper: true })
}

/** Stations whose readings are no state of the refrigerant, written inside the cycle beside the part they act on. */
export function besideLabels(
  { beside, points }: CyclePoints,
  low: Run | undefined,
  high: Run | undefined,
  place: Place,
  tell: Tell,
  sheet: Sheet,
): readonly string[] {
  const { text, palette } = sheet
  const words = (station: 1 | 4 | 6, named: (value: Quantity) => Statement) =>
    beside[station] && `${station} · ${tell(named(bare(beside[station].quantity)))}`
  const along = (run: Run | undefined, down: number, written: string | undefined) => {
    if (!run || !written) return ''
    const { x, y } = place({ enthalpy: run.from, pressure: run.level.pressure })
    return label(written, x + 0.8 * text, y + down * text, sheet, { fill: palette.soft, onPaper: true })
  }
  const [suction, discharge] = ([2, 3] as const).map((station) => points.find((point) => point.station === station))
  const power = words(6, (current) => say`${current}`)
  const compression = suction && discharge && power ? [place(suction.state), place(discharge.state)] : []
  const [a, b] = compression
  return [
    along(low, -0.6, words(1, airIn)),
    along(high, 1.35, words(4, airIn)),
    a && b && power
      ? label(power, (a.x + b.x) / 2 + 0.7 * text, (a.y + b.y) / 2 + 0.35 * text, sheet, {
          fill: palette.soft,
          onPaper: true,
        })
      : '',
  ]
}

const airIn = (temperature: Quantity): Statement => say`air in ${temperature}`

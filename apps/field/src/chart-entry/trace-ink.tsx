import type { Calibration, Spot } from './calibration.ts'
import type { ChartKind, Tap, Traced } from './trace.ts'

interface Props {
  readonly taps: readonly Tap[]
  readonly axes: Calibration | undefined
  readonly traced: Traced | undefined
  readonly kind: ChartKind
  /** Pixels of the photo to one of the screen: strokes and letters are of the screen. */
  readonly unit: number
  readonly aim: Spot | undefined
}

/** What is drawn over the photo: marks, taps, and the curves of the grid that they make, to be held against it. */
export function TraceInk({ taps, axes, traced, kind, unit, aim }: Props) {
  return (
    <g class="trace-ink on-photo" stroke-width={unit * 1.5} font-size={unit * 14}>
      {axes &&
        traced &&
        gridCurves(traced, kind).map(({ value, points }) => {
          const spots = points.map(([across, up]) => axes.spotOf(across, up))
          const end = spots.at(-1)
          return (
            <g key={value}>
              <polyline
                class="trace-curve"
                points={spots.map(({ x, y }) => `${x},${y}`).join(' ')}
                stroke-width={unit * 2}
              />
              {end && (
                <text x={end.x + 4 * unit} y={end.y} stroke-width={unit * 3}>
                  {value}°
                </text>
              )}
            </g>
          )
        })}
      {taps.map(({ on, value, at: { x, y } }, i) =>
        on === 'curve' ? (
          <circle key={i} cx={x} cy={y} r={unit * 3.5} />
        ) : (
          <g key={i}>
            <path class="trace-mark" d={`M${x - 6 * unit} ${y}H${x + 6 * unit}M${x} ${y - 6 * unit}V${y + 6 * unit}`} />
            <text
              x={x + (on === 'up' ? -7 : 7) * unit}
              y={y + (on === 'up' ? -7 : 18) * unit}
              text-anchor={on === 'up' ? 'end' : 'start'}
              stroke-width={unit * 3}
            >
              {value}°
            </text>
          </g>
        ),
      )}
      {aim && <path class="trace-aim" d={crosshair(aim, unit)} stroke-width={unit * 2.5} />}
    </g>
  )
}

/** Four arms that leave the very spot free. */
function crosshair({ x, y }: Spot, unit: number): string {
  const [near, far] = [3 * unit, 16 * unit]
  return `M${x - far} ${y}H${x - near}M${x + near} ${y}H${x + far}M${x} ${y - far}V${y - near}M${x} ${y + near}V${y + far}`
}

interface GridCurve {
  readonly value: number
  readonly points: readonly (readonly [across: number, up: number])[]
}

/** The curves as the grid holds them, whichever way it lies. */
function gridCurves({ chart }: Traced, { across }: ChartKind): readonly GridCurve[] {
  const { outdoorTemperatures: outdoor, indoorTemperatures: indoor, superheat } = chart
  const [ticks, values] = across === 'outdoor' ? [outdoor, indoor] : [indoor, outdoor]
  return values.map((value, j) => ({
    value,
    points: ticks.flatMap((tick, i) => {
      const up = across === 'outdoor' ? superheat[i]?.[j] : superheat[j]?.[i]
      return typeof up === 'number' ? [[tick, up] as const] : []
    }),
  }))
}

import { t } from '../words/t.ts'
import 'uplot/dist/uPlot.min.css'
import type { Channel } from '@chargewright/charging'
import { fromSi, preferredUnit, type UnitPreference } from '@chargewright/quantity'
import { readingKind } from '@chargewright/visit'
import { useEffect, useRef } from 'preact/hooks'
import uPlot from 'uplot'
import type { Theme } from '../session/preference.ts'
import { drawEndLabels, drawSettled, inkOf } from './trend-ink.ts'
import type { Stretch } from './trend-plots.tsx'

interface Props {
  readonly unit: string
  readonly channels: readonly Channel[]
  readonly units: UnitPreference
  readonly theme: Theme
  readonly settled: readonly Stretch[]
}

const HEIGHT = 190
/** Lines are told apart by their dashes and by the name at their end, never by a colour. */
const DASHES: readonly number[][] = [[], [8, 4], [2, 3], [12, 3, 2, 3], [5, 5], [1, 5]]

/** The trend of channels of one unit. */
export function Trend({ unit, channels, units, theme, settled }: Props) {
  const place = useRef<HTMLDivElement>(null)
  // The plot is drawn anew when what it shows, the theme or the room changes: it is a few milliseconds.
  useEffect(() => {
    const host = place.current
    if (!host) return
    let drawn: uPlot | undefined
    const draw = () => {
      drawn?.destroy()
      drawn = new uPlot(options(host.clientWidth, unit, channels, settled), dataOf(channels, units), host)
    }
    draw()
    const room = new ResizeObserver(draw)
    room.observe(host)
    return () => {
      room.disconnect()
      drawn?.destroy()
    }
  }, [unit, channels, units, theme, settled])
  const names = channels.map(({ what }) => t(readingKind(what).label)).join(', ')
  return (
    <div
      class="trend"
      ref={place}
      role="img"
      aria-label={t('Trend of {0}, in {1}. Its figures follow.', names, unit)}
    />
  )
}

/** Minutes from the first sample, and the numbers that the reader sees. */
function dataOf(channels: readonly Channel[], units: UnitPreference): uPlot.AlignedData {
  const first = Math.min(...channels.map(({ samples }) => samples[0]?.time_s ?? 0))
  return uPlot.join(
    channels.map(({ dimension, samples }): uPlot.AlignedData => {
      const shown = preferredUnit(dimension, units)
      return [samples.map(({ time_s }) => (time_s - first) / 60), samples.map(({ si }) => fromSi(si, shown))]
    }),
  )
}

function options(
  width: number,
  unit: string,
  channels: readonly Channel[],
  settled: readonly Stretch[],
): uPlot.Options {
  const ink = inkOf(document.documentElement)
  const first = Math.min(...channels.map(({ samples }) => samples[0]?.time_s ?? 0))
  const names = channels.map(({ what }) => t(readingKind(what).label))
  const stretches = settled.map(({ from_s, to_s }) => [(from_s - first) / 60, (to_s - first) / 60] as const)
  const axis = { stroke: ink.soft, font: ink.font, grid: { stroke: ink.rule, width: 1 }, ticks: { show: false } }
  return {
    width,
    height: HEIGHT,
    padding: [24, null, null, null],
    legend: { show: false },
    cursor: { show: false },
    scales: { x: { time: false } },
    axes: [
      { ...axis, values: (_, ticks) => ticks.map((tick) => `${tick} min`), space: 80 },
      { ...axis, size: 56 },
    ],
    series: [
      {},
      ...names.map((label, i) => ({
        label,
        stroke: ink.ink,
        width: 2,
        dash: DASHES[i % DASHES.length]!,
        points: { show: false },
        spanGaps: true,
      })),
    ],
    hooks: {
      drawClear: [(plot) => drawSettled(plot, stretches, ink)],
      draw: [(plot) => drawEndLabels(plot, names, unit, ink)],
    },
  }
}

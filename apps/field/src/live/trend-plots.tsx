import { type Channel, steadiness } from '@chargewright/charging'
import { preferredUnit, type UnitPreference } from '@chargewright/quantity'
import { useMemo } from 'preact/hooks'
import type { Theme } from '../session/preference.ts'
import { Trend } from './trend.tsx'

interface Props {
  readonly channels: readonly Channel[]
  readonly units: UnitPreference
  readonly theme: Theme
}

/** A stretch of time, in seconds of the recording. */
export interface Stretch {
  readonly from_s: number
  readonly to_s: number
}

/** Moments at which it is asked whether everything held still. */
const ASKED = 120

/** One plot for each unit, one under the other over the same time; shaded where all channels held still. */
export function TrendPlots({ channels, units, theme }: Props) {
  const stretches = useMemo(() => settledStretches(channels), [channels])
  const symbolOf = ({ dimension }: Channel) => preferredUnit(dimension, units).symbol
  const symbols = [...new Set(channels.map(symbolOf))]
  return (
    <div class="trends">
      {symbols.map((symbol) => (
        <Trend
          key={symbol}
          unit={symbol}
          channels={channels.filter((channel) => symbolOf(channel) === symbol)}
          units={units}
          theme={theme}
          settled={stretches}
        />
      ))}
    </div>
  )
}

function settledStretches(channels: readonly Channel[]): readonly Stretch[] {
  const times = channels.flatMap(({ samples }) => [samples[0]?.time_s ?? 0, samples.at(-1)?.time_s ?? 0])
  const [first, last] = [Math.min(...times), Math.max(...times)]
  const step = (last - first) / ASKED
  if (!(step > 0)) return []
  const stretches: Stretch[] = []
  for (let i = 1; i <= ASKED; i++) {
    const at = first + i * step
    if (steadiness(channels, at).kind !== 'settled') continue
    const open = stretches.at(-1)
    if (open && at - open.to_s < 1.5 * step) stretches[stretches.length - 1] = { ...open, to_s: at }
    else stretches.push({ from_s: at - step, to_s: at })
  }
  return stretches
}

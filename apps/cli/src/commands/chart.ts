import { sitePressure, sizedSystem } from '@chargewright/charging'
import {
  type ChargingChart,
  type ChartFamily,
  type ChartMeasure,
  chargingChart,
  type System,
  soundHealth,
} from '@chargewright/cycle'
import { fail, ok, outOfRange, type Problem, type Result } from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'
import { unreadable } from '../failure.ts'
import { typedShare } from '../typed-flag.ts'
import { readSystemFile } from './system-file.ts'

export const CHART_MEASURES = { superheat: 'superheat_K', subcooling: 'subcooling_K' } as const satisfies Record<
  string,
  ChartMeasure
>

export interface ChartFlags {
  /** Superheat for a fixed device and subcooling for a valve, unless given. */
  readonly measure?: keyof typeof CHART_MEASURES
  readonly family: ChartFamily['kind']
  readonly humidity?: string
}

export interface ChartAnswer {
  readonly visit: Visit
  readonly chart: ChargingChart
}

/** Round steps in the units of the chart, °F or °C. */
const AXES = {
  '°F': { outdoor: steps(65, 115, 5), 'wet-bulb': steps(56, 76, 2), 'dry-bulb': steps(70, 90, 2) },
  '°C': { outdoor: steps(18, 46, 4), 'wet-bulb': steps(13, 25, 1), 'dry-bulb': steps(21, 32, 1) },
} as const

/**
 * The charging chart of a system at its nameplate charge.
 *
 * @param data the facts of a system or a visit, as its JSON was parsed
 * @param unit of the round figures on both axes
 */
export function chart(
  data: unknown,
  { measure, family, humidity }: ChartFlags,
  unit: keyof typeof AXES,
): Result<ChartAnswer, readonly Problem[]> {
  const visit = readSystemFile(data)
  if (!visit.ok) return visit
  const { facts } = visit.value.system
  if (facts.application === 'medium-temperature' || facts.application === 'low-temperature') {
    const accepted = 'comfort-cooling or heat-pump-cooling: a chart is for rooms, not for cold rooms'
    return fail([{ kind: 'unknown', field: 'Application', value: facts.application, accepted }])
  }
  const sized = sizedSystem(visit.value.system)
  if (!sized.ok) return sized
  const chosen = familyOf(family, humidity)
  if (!chosen.ok) return fail([chosen.error])
  const found = chargingChart(
    sized.value,
    soundHealth(sized.value),
    CHART_MEASURES[measure ?? habitual(sized.value)],
    chosen.value,
    AXES[unit].outdoor.map((T) => kelvinOf(T, unit)),
    AXES[unit][family].map((T) => kelvinOf(T, unit)),
    sitePressure(visit.value, []).quantity.si,
  )
  return found.ok ? ok({ visit: visit.value, chart: found.value }) : fail([found.error])
}

const habitual = ({ device }: System): keyof typeof CHART_MEASURES =>
  device.kind === 'fixed-orifice' || device.kind === 'capillary' ? 'superheat' : 'subcooling'

function familyOf(kind: ChartFamily['kind'], humidity: string | undefined): Result<ChartFamily, Problem> {
  if (kind === 'wet-bulb') {
    return humidity === undefined
      ? ok({ kind })
      : fail(unreadable('humidity', humidity, 'none beside --family wet-bulb, which needs none'))
  }
  const share = typedShare(humidity ?? '50 %', 'humidity')
  if (!share.ok) return share
  const problem = outOfRange('humidity', share.value, 0.05, 1, 'of saturation')
  return problem ? fail(problem) : ok({ kind, relativeHumidity: share.value })
}

function steps(from: number, to: number, by: number): readonly number[] {
  return Array.from({ length: (to - from) / by + 1 }, (_, i) => from + i * by)
}

const kelvinOf = (T: number, unit: keyof typeof AXES) => (unit === '°F' ? (T + 459.67) / 1.8 : T + 273.15)

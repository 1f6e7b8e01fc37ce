import { fail, kelvin, ok, type Problem, type Result } from '@chargewright/quantity'
import { type Content, findRefrigerant, leak as leakOf, type PathPoint } from '@chargewright/refrigerant'
import { missing, unreadable } from '../failure.ts'
import { withNearNames } from '../near-names.ts'

/** What is asked: what a leak makes of a blend at rest. Shares are of mass or volume, 0 to 1. */
export interface LeakQuestion {
  readonly refrigerant?: string
  readonly temperature_K?: number
  /** Mass lost, of the mass there was. */
  readonly lost?: number
  /** Liquid, of the inner volume before the leak. */
  readonly fill?: number
  readonly from?: string
  /** Mass after topping up with fresh refrigerant, of the mass there was. */
  readonly top_up_to?: number
  readonly evaporating_K?: number
  readonly condensing_K?: number
}

export const LEAK_FIELDS = {
  refrigerant: 'text',
  temperature_K: 'number',
  lost: 'number',
  fill: 'number',
  from: 'text',
  top_up_to: 'number',
  evaporating_K: 'number',
  condensing_K: 'number',
} as const

/** The answer, in the very keys that `--json` prints. */
export interface LeakAnswer {
  readonly refrigerant: string
  readonly temperature_K: number
  readonly from: 'vapour' | 'liquid'
  readonly before: LeakContent
  readonly after: LeakContent
  readonly topped_up?: LeakContent
  readonly path: readonly LeakPathPoint[]
  readonly liquid_gone_at?: number
}

export interface LeakPathPoint {
  readonly lost: number
  readonly pressure_Pa: number
  readonly components: Readonly<Record<string, number>>
}

export interface LeakContent extends LeakPathPoint {
  readonly pressure_shift_Pa: number
  readonly liquid_volume_fraction: number
  readonly liquid_components?: Readonly<Record<string, number>>
  readonly glide_K: number
  /** What the chart of the nominal blend shows at these pressures, less what is true. */
  readonly chart_error: {
    readonly suction_pressure_Pa: number
    readonly superheat_K: number
    readonly liquid_pressure_Pa: number
    readonly subcooling_K: number
  }
}

export function leak(question: LeakQuestion): Result<LeakAnswer, Problem> {
  const { refrigerant, temperature_K, lost, fill, from, top_up_to, evaporating_K, condensing_K } = question
  if (refrigerant === undefined) return fail(missing('refrigerant', 'a blend, such as R-407C'))
  if (temperature_K === undefined)
    return fail(missing('temperature', 'that of the system at rest: --at "25 degC", or temperature_K in a batch'))
  if (lost === undefined) return fail(missing('lost', 'the share of the mass that was lost: --lost "20 %"'))
  if (from !== undefined && from !== 'vapour' && from !== 'liquid') {
    return fail(unreadable('from', from, 'vapour or liquid'))
  }
  const found = withNearNames(findRefrigerant(refrigerant))
  if (!found.ok) return found
  const answer = leakOf({
    refrigerant: found.value,
    temperature: kelvin(temperature_K),
    lost,
    ...(fill !== undefined && { liquidFill: fill }),
    ...(from !== undefined && { from }),
    ...(top_up_to !== undefined && { topUpTo: top_up_to }),
    ...(evaporating_K !== undefined && { evaporating: kelvin(evaporating_K) }),
    ...(condensing_K !== undefined && { condensing: kelvin(condensing_K) }),
  })
  if (!answer.ok) return answer
  const { before, after, toppedUp, path, liquidGoneAt } = answer.value
  return ok({
    refrigerant: answer.value.refrigerant,
    temperature_K,
    from: answer.value.from,
    before: content(before),
    after: content(after),
    ...(toppedUp && { topped_up: content(toppedUp) }),
    path: path.map(pathPoint),
    ...(liquidGoneAt !== undefined && { liquid_gone_at: liquidGoneAt }),
  })
}

const pathPoint = ({ lost, pressure_Pa, massFractions }: PathPoint): LeakPathPoint => ({
  lost,
  pressure_Pa,
  components: massFractions,
})

function content(of: Content): LeakContent {
  const { glide_K, suctionPressure_Pa, superheat_K, liquidPressure_Pa, subcooling_K } = of.chartError
  return {
    ...pathPoint(of),
    pressure_shift_Pa: of.pressureShift_Pa,
    liquid_volume_fraction: of.liquidVolumeFraction,
    ...(of.liquidMassFractions && { liquid_components: of.liquidMassFractions }),
    glide_K,
    chart_error: {
      suction_pressure_Pa: suctionPressure_Pa,
      superheat_K,
      liquid_pressure_Pa: liquidPressure_Pa,
      subcooling_K,
    },
  }
}

import type { UnitPreference } from '@chargewright/quantity'
import type { Fact, FactOf, Instrument } from '@chargewright/visit'
import type { Kept } from '../session/session.ts'
import { BlankForm } from './blank-form.tsx'
import { prefilled } from './prefilled.ts'

interface Props {
  readonly initial: FactOf<'pressure-test'>
  readonly units: UnitPreference
  readonly keepLabel: string
  readonly record: (fact: Fact) => Kept
}

/** With what a standing test is read, told again once it has begun. */
export function PressureTestGear({ initial, units, keepLabel, record }: Props) {
  const { gauge, thermometer } = initial
  return (
    <BlankForm
      blanks={prefilled(GEAR_STEPS, { gaugeStep: gauge?.resolution, thermometerStep: thermometer?.resolution })}
      units={units}
      keepLabel={keepLabel}
      keep={({ gaugeStep, thermometerStep }) =>
        record({ kind: 'pressure-test', gas: 'nitrogen', ...testGear(gauge, gaugeStep, thermometer, thermometerStep) })
      }
    />
  )
}

/** Instruments of a test with their last digits as typed; one of which nothing is known is left out. */
export function testGear(
  gauge: Instrument | undefined,
  gaugeStep: string | undefined,
  thermometer: Instrument | undefined,
  thermometerStep: string | undefined,
): Pick<FactOf<'pressure-test'>, 'gauge' | 'thermometer'> {
  const [withGauge, withThermometer] = [withStep(gauge, gaugeStep), withStep(thermometer, thermometerStep)]
  return { ...(withGauge && { gauge: withGauge }), ...(withThermometer && { thermometer: withThermometer }) }
}

function withStep(instrument: Instrument | undefined, step: string | undefined): Instrument | undefined {
  const { resolution: _, ...rest } = instrument ?? {}
  const told = { ...rest, ...(step !== undefined && { resolution: step }) }
  return Object.keys(told).length === 0 ? undefined : told
}

export const GEAR_STEPS = {
  gaugeStep: {
    label: 'Last digit of the gauge',
    accepts: ['pressure difference'],
    example: 'for example 1 psi or 0.1 bar',
    optional: true,
  },
  thermometerStep: {
    label: 'Last digit of the thermometer',
    accepts: ['temperature difference'],
    example: 'for example 0.1 °F or 0.1 K',
    optional: true,
  },
} as const

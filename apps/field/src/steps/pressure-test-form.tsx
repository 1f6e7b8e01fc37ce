import type { UnitPreference } from '@chargewright/quantity'
import type { Fact } from '@chargewright/visit'
import type { MyInstruments } from '../session/instruments.ts'
import type { Kept } from '../session/session.ts'
import { t } from '../words/t.ts'
import { BlankForm } from './blank-form.tsx'
import { prefilled } from './prefilled.ts'
import { TEST_READING } from './pressure-reading-form.tsx'
import { GEAR_STEPS, testGear } from './pressure-test-gear.tsx'

interface Props {
  readonly units: UnitPreference
  readonly instruments: MyInstruments
  readonly record: (fact: Fact) => Kept
}

/** The system stands under nitrogen: with what it is read, and the first reading. */
export function PressureTestForm({ units, instruments, record }: Props) {
  const { 'high-side-gauge': gauge, 'pipe-thermometer': thermometer } = instruments
  return (
    <BlankForm
      blanks={{
        ...TEST_READING,
        ...prefilled(GEAR_STEPS, { gaugeStep: gauge?.resolution, thermometerStep: thermometer?.resolution }),
      }}
      units={units}
      keepLabel="Under dry nitrogen: begin"
      keep={async ({ pressure = '', temperature = '', gaugeStep, thermometerStep }) => {
        const begun = await record({
          kind: 'pressure-test',
          gas: 'nitrogen',
          ...testGear(gauge, gaugeStep, thermometer, thermometerStep),
        })
        return begun.ok ? record({ kind: 'pressure-test-reading', after: '0 min', pressure, temperature }) : begun
      }}
    >
      <p class="hint">
        {t(
          'Where the same gauge and the same thermometer read every time, give their last digits: their own errors then drop out, and a smaller leak shows.',
        )}
      </p>
    </BlankForm>
  )
}

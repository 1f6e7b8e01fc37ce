import { bookUnits } from '@chargewright/ledger'
import type { UnitPreference } from '@chargewright/quantity'
import { vacuumUnits } from '@chargewright/tightness'
import type { Fact, FactOf } from '@chargewright/visit'
import type { Kept } from '../session/session.ts'
import { CylinderForm } from './cylinder-form.tsx'
import { GearForm } from './gear-form.tsx'
import { PressureReadingForm } from './pressure-reading-form.tsx'
import { PressureTestGear } from './pressure-test-gear.tsx'
import { SupplyForm } from './supply-form.tsx'
import { VacuumLogForm } from './vacuum-log-form.tsx'
import { VacuumReadingForm } from './vacuum-reading-form.tsx'
import { VacuumTestForm } from './vacuum-test-form.tsx'

/** What is entered in a step of the visit. */
export type StepFact = FactOf<
  | 'cylinder-weighed'
  | 'weighing-gear'
  | 'supply-measured'
  | 'vacuum-test'
  | 'vacuum-reading'
  | 'vacuum-log'
  | 'pressure-test'
  | 'pressure-test-reading'
>

interface Props {
  readonly fact: StepFact
  readonly units: UnitPreference
  readonly correct: (replacement: Fact) => Kept
}

/** The form of its step, filled in with the entry. */
export function StepCorrection({ fact, units, correct }: Props) {
  const form = { units, record: correct, keepLabel: 'Keep the correction' }
  switch (fact.kind) {
    case 'cylinder-weighed':
      return <CylinderForm {...form} units={bookUnits(units)} initial={fact} />
    case 'weighing-gear':
      return <GearForm {...form} initial={fact} />
    case 'supply-measured':
      return <SupplyForm {...form} initial={fact} />
    case 'vacuum-test':
      return <VacuumTestForm {...form} units={vacuumUnits(units)} initial={fact} />
    case 'vacuum-reading':
      return <VacuumReadingForm {...form} units={vacuumUnits(units)} initial={fact} />
    case 'vacuum-log':
      return <VacuumLogForm {...form} initial={fact} />
    case 'pressure-test':
      return <PressureTestGear {...form} initial={fact} />
    case 'pressure-test-reading':
      return <PressureReadingForm {...form} initial={fact} />
  }
}

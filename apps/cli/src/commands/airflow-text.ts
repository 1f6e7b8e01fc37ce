import type { Condition } from '@chargewright/charging'
import type { TraversePoints } from '@chargewright/moist-air'
import { format, quantity, say, type UnitPreference } from '@chargewright/quantity'
import { findingPage } from '../text/finding-page.ts'
import { page } from '../text/page.ts'
import { wrap } from '../text/wrap.ts'
import type { AirflowAnswer } from './airflow.ts'

const STATES: Readonly<Record<Condition['state'], string>> = {
  met: 'airflow in range',
  doubtful: 'airflow out of range',
  unmet: 'too little airflow',
  unknown: 'airflow',
}

/** An airflow as a page: how much, over the capacity where that is known, and what it rests on. */
export function airflowText({ airflow, perCapacity, airAssumed }: AirflowAnswer, units: UnitPreference, width: number) {
  const sentence = perCapacity ? say`${airflow.airflow}, ${perCapacity.quantity}` : say`${airflow.airflow}`
  const { state, evidence, remedy } = perCapacity?.condition ?? { state: 'unknown' }
  const assumed = airAssumed ? 'The temperature of the air was not given: 70 ± 10 °F was taken. ' : ''
  return findingPage(
    {
      title: [STATES[state], 'as it is where it was measured'],
      sentence,
      steps: remedy ? [remedy] : [],
      reasons: [airflow.evidence, ...(evidence ? [evidence] : [])],
      notes: [`${assumed}± is about 95 %; where none was typed, that of a plain instrument.`],
    },
    ductUnits(units),
    width,
  )
}

/** Distances from one wall. */
export function traversePointsText(points: TraversePoints, units: UnitPreference, width: number): string {
  const along = (name: string, distances: readonly number[]) => {
    const shown = distances.map((m) => format(quantity('length', m), ductUnits(units)))
    return wrap(`${name}: ${shown.join(', ')}`, width, '  ')
  }
  const heading = ['Hold the probe so far from one wall:']
  return points.kind === 'round'
    ? page(heading, along('along each of two diameters at right angles', points.acrossDiameter_m))
    : page(heading, [
        ...along('across the width', points.acrossWidth_m),
        ...along('across the height', points.acrossHeight_m),
      ])
}

/** Pressures and sizes of ducts as they are read: in psi and feet, or bar and metres, they would all be nothing. */
export function ductUnits(units: UnitPreference): UnitPreference {
  const metric = units.length === 'm'
  return { ...units, length: metric ? 'mm' : 'in', 'pressure difference': metric ? 'Pa' : 'inH2O' }
}

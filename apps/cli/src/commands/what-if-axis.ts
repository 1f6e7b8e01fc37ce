import { type Conditions, WHAT_IFS, type WhatIf } from '@chargewright/cycle'
import type { Dimension } from '@chargewright/quantity'

/** One thing that can be varied: its name at the prompt, and the values at which the state is asked. */
interface Axis {
  readonly varies: WhatIf
  readonly label: string
  /** Of the values; a share is shown in percent. */
  readonly dimension: Dimension | 'share'
  readonly values: (at: Conditions) => readonly number[]
}

export const WHAT_IF_AXES = {
  charge: {
    varies: 'charge',
    label: 'Charge',
    dimension: 'share',
    values: () => [0.6, 0.7, 0.8, 0.9, 1, 1.1, 1.2, 1.3],
  },
  outdoor: {
    varies: 'outdoor',
    label: 'Outdoor air',
    dimension: 'temperature',
    values: () => [65, 75, 85, 95, 105, 115].map((fahrenheit) => (fahrenheit + 459.67) / 1.8),
  },
  'wet-bulb': {
    varies: 'wetBulb',
    label: 'Wet bulb',
    dimension: 'temperature',
    values: ({ indoor }) =>
      within(
        'wetBulb',
        [-12, -8, -4, 0, 4, 8, 12].map((step) => indoor.wetBulb_K + step / 1.8),
      ),
  },
  'indoor-air': {
    varies: 'indoorAir',
    label: 'Airflow indoors',
    dimension: 'share',
    values: () => [0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.1, 1.2],
  },
  'outdoor-air': {
    varies: 'outdoorAir',
    label: 'Airflow outdoors',
    dimension: 'share',
    values: () => [0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.1, 1.2],
  },
  restriction: {
    varies: 'restriction',
    label: 'Drop in the line',
    dimension: 'pressure difference',
    values: () => [0, 1e5, 2e5, 4e5, 6e5, 8e5, 10e5],
  },
  'non-condensable': {
    varies: 'nonCondensable',
    label: 'Pressure of the gas',
    dimension: 'pressure difference',
    values: () => [0, 0.25e5, 0.5e5, 0.75e5, 1e5, 1.5e5, 2e5],
  },
  wear: { varies: 'wear', label: 'Leaks back', dimension: 'share', values: () => [0, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3] },
  drier: {
    varies: 'drier',
    label: 'Drier, inside',
    dimension: 'volume',
    values: () => [0, 0.1e-3, 0.2e-3, 0.3e-3, 0.4e-3, 0.6e-3, 0.8e-3],
  },
} as const satisfies Readonly<Record<string, Axis>>

export type WhatIfAxis = keyof typeof WHAT_IF_AXES

export const whatIfAxis = (name: WhatIfAxis): Axis => WHAT_IF_AXES[name]

function within(name: WhatIf, values: readonly number[]): readonly number[] {
  const { min, max } = WHAT_IFS[name]
  return values.filter((value) => value >= min && value <= max)
}

import { INCH_POUND, METRIC, type UnitPreference } from '@chargewright/quantity'
import { computed, type ReadonlySignal, signal } from '@preact/signals'

/** How this device shows things: kept here, part of no visit. */
export interface Preferences {
  readonly unitSystem: ReadonlySignal<UnitSystem>
  readonly units: ReadonlySignal<UnitPreference>
  readonly theme: ReadonlySignal<Theme>
  readonly turnUnits: () => void
  readonly turnTheme: () => void
}

export const UNIT_SYSTEMS = {
  'inch-pound': { label: '°F · psi · oz', units: INCH_POUND },
  metric: { label: '°C · bar · g', units: METRIC },
} as const
export type UnitSystem = keyof typeof UNIT_SYSTEMS

export const THEMES = { outdoor: 'Outdoor', dim: 'Dim room' } as const
export type Theme = keyof typeof THEMES

/** The part of the browser's own store that is needed. It may refuse, even to be named; that costs the preference. */
type Shelf = Pick<Storage, 'getItem' | 'setItem'>

export function preferences(shelf: () => Shelf): Preferences {
  const unitSystem = kept(shelf, 'chargewright.units', ['inch-pound', 'metric'] as const)
  const theme = kept(shelf, 'chargewright.theme', ['outdoor', 'dim'] as const)
  return {
    unitSystem: unitSystem.value,
    units: computed(() => UNIT_SYSTEMS[unitSystem.value.value].units),
    theme: theme.value,
    turnUnits: unitSystem.turn,
    turnTheme: theme.turn,
  }
}

function kept<Choice extends string>(shelf: () => Shelf, key: string, choices: readonly [Choice, Choice]) {
  const read = (): Choice => {
    try {
      return choices.find((choice) => choice === shelf().getItem(key)) ?? choices[0]
    } catch {
      return choices[0]
    }
  }
  const value = signal<Choice>(read())
  const turn = () => {
    value.value = value.value === choices[0] ? choices[1] : choices[0]
    try {
      shelf().setItem(key, value.value)
    } catch {
      // Shown all the same; it will have to be chosen again next time.
    }
  }
  return { value, turn }
}

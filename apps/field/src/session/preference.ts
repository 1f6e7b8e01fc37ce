import { INCH_POUND, METRIC, type UnitPreference } from '@chargewright/quantity'
import type { Instrument, InstrumentId } from '@chargewright/visit'
import { computed, type ReadonlySignal } from '@preact/signals'
import { LANGUAGES, type Language } from '../words/language.ts'
import { type MyInstruments, readInstruments } from './instruments.ts'
import { type Shelf, shelved } from './shelved.ts'
import { type ChosenQuantity, type OwnUnits, readOwnUnits, withOwnUnits } from './unit-choices.ts'

/** How this device shows things and what its owner measures with: kept here, part of no visit. */
export interface Preferences {
  readonly unitSystem: ReadonlySignal<UnitSystem>
  /** The units of the system, and what was chosen apart from it. */
  readonly units: ReadonlySignal<UnitPreference>
  readonly theme: ReadonlySignal<Theme>
  readonly language: ReadonlySignal<Language>
  readonly instruments: ReadonlySignal<MyInstruments>
  readonly turnUnits: () => void
  /** Chooses the unit of one quantity apart from the system that is turned on now. */
  readonly chooseUnit: (of: ChosenQuantity, choice: string) => void
  readonly turnTheme: () => void
  readonly turnLanguage: () => void
  /** Without one, a plain instrument is assumed again. */
  readonly setInstrument: (id: InstrumentId, instrument: Instrument | undefined) => void
}

export const UNIT_SYSTEMS = {
  'inch-pound': { label: '°F · psi · oz', units: INCH_POUND },
  metric: { label: '°C · bar · g', units: METRIC },
} as const
export type UnitSystem = keyof typeof UNIT_SYSTEMS

export const THEMES = { outdoor: 'Outdoor', dim: 'Dim room' } as const
export type Theme = keyof typeof THEMES

/**
 * What was chosen on this device, and the trade's usual where nothing was.
 *
 * @param spoken the language of the device itself, such as `es-MX`: the one to begin with
 */
export function preferences(shelf: () => Shelf, spoken = 'en'): Preferences {
  const unitSystem = shelved(shelf, 'chargewright.units', (kept) => (kept === 'metric' ? 'metric' : 'inch-pound'))
  const theme = shelved(shelf, 'chargewright.theme', (kept) => (kept === 'dim' ? 'dim' : 'outdoor'))
  const language = shelved(shelf, 'chargewright.language', (kept): Language => {
    if (typeof kept === 'string' && Object.hasOwn(LANGUAGES, kept)) return kept as Language
    return spoken.startsWith('es') ? 'es' : 'en'
  })
  const own: Readonly<Record<UnitSystem, ReturnType<typeof shelved<OwnUnits>>>> = {
    'inch-pound': shelved(shelf, 'chargewright.own-units.inch-pound', readOwnUnits),
    metric: shelved(shelf, 'chargewright.own-units.metric', readOwnUnits),
  }
  const instruments = shelved(shelf, 'chargewright.instruments', readInstruments)
  return {
    unitSystem: unitSystem.value,
    units: computed(() => {
      const system = unitSystem.value.value
      return withOwnUnits(UNIT_SYSTEMS[system].units, own[system].value.value)
    }),
    theme: theme.value,
    language: language.value,
    instruments: instruments.value,
    turnUnits: () => unitSystem.set(unitSystem.value.value === 'metric' ? 'inch-pound' : 'metric'),
    chooseUnit: (of, choice) => {
      const { value, set } = own[unitSystem.value.value]
      set({ ...value.value, [of]: choice })
    },
    turnTheme: () => theme.set(theme.value.value === 'dim' ? 'outdoor' : 'dim'),
    turnLanguage: () => language.set(language.value.value === 'es' ? 'en' : 'es'),
    setInstrument: (id, instrument) => {
      const { [id]: _, ...others } = instruments.value.value
      instruments.set(instrument ? { ...others, [id]: instrument } : others)
    },
  }
}

import type { UnitPreference } from '@chargewright/quantity'

interface UnitChoice {
  readonly label: string
  readonly units: UnitPreference
}

interface QuantityChoices {
  readonly label: string
  readonly choices: Readonly<Record<string, UnitChoice>>
}

const pressure = (unit: string, gauge = `${unit} g`, absolute = `${unit} a`): UnitChoice => ({
  label: unit,
  units: { 'gauge pressure': gauge, 'absolute pressure': absolute, 'pressure difference': unit },
})

/** The quantities whose unit can be chosen by itself, and what each choice turns over. */
export const UNIT_CHOICES = {
  pressure: {
    label: 'Pressure',
    choices: { psi: pressure('psi', 'psig', 'psia'), bar: pressure('bar'), kPa: pressure('kPa'), MPa: pressure('MPa') },
  },
  vacuum: {
    label: 'Below the atmosphere',
    choices: {
      pressure: { label: 'as pressure', units: {} },
      inHg: { label: 'inHg vacuum', units: { vacuum: 'inHg vac' } },
    },
  },
  temperature: {
    label: 'Temperature',
    choices: {
      '°F': { label: '°F', units: { temperature: '°F', 'temperature difference': '°F' } },
      '°C': { label: '°C', units: { temperature: '°C', 'temperature difference': 'K' } },
    },
  },
  mass: {
    label: 'Refrigerant',
    choices: {
      'lb oz': { label: 'lb and oz', units: { mass: 'lb oz' } },
      oz: { label: 'oz', units: { mass: 'oz' } },
      lb: { label: 'lb', units: { mass: 'lb' } },
      g: { label: 'g', units: { mass: 'g' } },
      kg: { label: 'kg', units: { mass: 'kg' } },
    },
  },
  length: {
    label: 'Length and altitude',
    choices: {
      ft: { label: 'ft', units: { length: 'ft', elevation: 'ft', 'mass per length': 'oz/ft' } },
      m: { label: 'm', units: { length: 'm', elevation: 'm', 'mass per length': 'g/m' } },
    },
  },
  airflow: {
    label: 'Airflow',
    choices: {
      CFM: { label: 'CFM', units: { airflow: 'CFM', 'specific airflow': 'CFM per ton' } },
      'm³/h': { label: 'm³/h', units: { airflow: 'm³/h', 'specific airflow': 'm³/h per kW' } },
      'L/s': { label: 'L/s', units: { airflow: 'L/s', 'specific airflow': 'm³/h per kW' } },
    },
  },
  capacity: {
    label: 'Capacity',
    choices: {
      ton: { label: 'ton', units: { 'cooling capacity': 'ton' } },
      'Btu/h': { label: 'Btu/h', units: { 'cooling capacity': 'Btu/h' } },
      kW: { label: 'kW', units: { 'cooling capacity': 'kW' } },
    },
  },
} as const satisfies Readonly<Record<string, QuantityChoices>>

export type ChosenQuantity = keyof typeof UNIT_CHOICES
export const CHOSEN_QUANTITIES = Object.keys(UNIT_CHOICES) as readonly ChosenQuantity[]

/** What was chosen apart from the system of units, by quantity. */
export type OwnUnits = Readonly<Partial<Record<ChosenQuantity, string>>>

export const choicesOf = (of: ChosenQuantity): QuantityChoices => UNIT_CHOICES[of]

/** The units of a system with what was chosen apart from it. */
export function withOwnUnits(system: UnitPreference, own: OwnUnits): UnitPreference {
  const chosen = CHOSEN_QUANTITIES.flatMap((of) => choicesOf(of).choices[own[of] ?? '']?.units ?? [])
  return chosen.length === 0 ? system : Object.assign({}, system, ...chosen)
}

/** The choice that holds for a quantity: the one whose units are shown. */
export function choiceThatHolds(of: ChosenQuantity, units: UnitPreference): string | undefined {
  const { choices } = choicesOf(of)
  const dimensions = Object.values(choices).flatMap((choice) => Object.keys(choice.units)) as (keyof UnitPreference)[]
  return Object.keys(choices).find((name) => dimensions.every((d) => choices[name]?.units[d] === units[d]))
}

/** What a device kept, as far as this version knows it. */
export function readOwnUnits(kept: unknown): OwnUnits {
  if (typeof kept !== 'object' || kept === null) return {}
  const known = Object.entries(kept).filter(
    ([of, choice]) =>
      Object.hasOwn(UNIT_CHOICES, of) && Object.hasOwn(choicesOf(of as ChosenQuantity).choices, String(choice)),
  )
  return Object.fromEntries(known)
}

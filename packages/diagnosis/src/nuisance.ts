import { AS_SIZED, adjusted, type Habits, type Nameplate, type ParameterName, type System } from '@chargewright/cycle'

/**
 * Something about this very system that no nameplate tells, with its spread among systems. Unless said otherwise a
 * natural logarithm of a factor; 0 as the habits have it.
 */
export type Nuisance =
  /** How the maker designed it. The twin is sized again for it, so rated capacity, power and charge always hold. */
  | (Named & { readonly kind: 'design'; readonly alter: (assumed: Assumed, amount: number) => Assumed })
  /** How this unit differs from its design: production, age, dust. Rated figures move with it. */
  | (Named & { readonly kind: 'unit'; readonly parameter: ParameterName })
  /** By how much the air entering the coils differs from what was read, K. Of this visit alone. */
  | (Named & { readonly kind: 'weather'; readonly air: 'outdoor' | 'returnAir' | 'returnWetBulb' })

interface Named {
  readonly name: string
  readonly sd: number
}

/** What a system is sized from. */
export interface Assumed {
  readonly plate: Nameplate
  readonly habits: Habits
}

const design = (name: string, sd: number, alter: (assumed: Assumed, amount: number) => Assumed): Nuisance => ({
  kind: 'design',
  name,
  sd,
  alter,
})

/** A habit that is a plain figure, times e to the amount. */
const factorOn = (name: NumericHabit, sd: number): Nuisance =>
  design(name, sd, ({ plate, habits }, amount) => ({
    plate,
    habits: { ...habits, [name]: habits[name] * Math.exp(amount) },
  }))

type NumericHabit = {
  [K in keyof Habits]: Habits[K] extends number ? K : never
}[keyof Habits]

/** One conductance of a coil's refrigerant side, times e to the amount. */
const shape = (
  coil: 'evaporatorShape' | 'condenserShape',
  phase: 'twoPhase' | 'vapour' | 'liquid',
  sd: number,
): Nuisance =>
  design(`${coil}.${phase}`, sd, ({ plate, habits }, amount) => ({
    plate,
    habits: { ...habits, [coil]: { ...habits[coil], [phase]: habits[coil][phase] * Math.exp(amount) } },
  }))

/** A habit with its guess moved, K. */
const guess = (name: 'evaporating_K' | 'condensingApproach_K', sd: number): Nuisance =>
  design(name, sd, ({ plate, habits }, amount) => ({
    plate,
    habits: { ...habits, [name]: { ...habits[name], value: habits[name].value + amount } },
  }))

/** What the maker rates it at, K: where it is printed only its rounding and the installation remain. */
const rated = (name: 'superheat_K' | 'subcooling_K', printed: number, silent: number) => (plate: Nameplate) =>
  design(name, plate[name] === undefined ? silent : printed, (assumed, amount) => {
    const { habits } = assumed
    const isFixed = plate.device === 'fixed-orifice' || plate.device === 'capillary'
    const habit = name === 'subcooling_K' ? habits.subcooling_K : habits.superheat_K[isFixed ? 'fixed' : 'valve']
    return { habits, plate: { ...assumed.plate, [name]: Math.max((assumed.plate[name] ?? habit) + amount, LEAST_K) } }
  })

/** A rating point drier or more subcooled by less than this would be no design. */
const LEAST_K = 0.5

const unit = (parameter: ParameterName, sd: number): Nuisance => ({
  kind: 'unit',
  name: `unit.${parameter}`,
  parameter,
  sd,
})

/**
 * All of them for one nameplate. Spreads are first guesses, *common practice*; the calibration carries factors on them.
 */
export function nuisancesOf(plate: Nameplate): readonly Nuisance[] {
  const isFixed = plate.device === 'fixed-orifice' || plate.device === 'capillary'
  return [
    guess('evaporating_K', 1.5),
    guess('condensingApproach_K', 2.5),
    rated('superheat_K', 1, isFixed ? 2.5 : 1.5)(plate),
    rated('subcooling_K', 1, 2)(plate),
    factorOn('lineGain_W_mK', 0.5),
    shape('evaporatorShape', 'twoPhase', 0.3),
    shape('evaporatorShape', 'vapour', 0.4),
    shape('condenserShape', 'twoPhase', 0.3),
    shape('condenserShape', 'vapour', 0.4),
    shape('condenserShape', 'liquid', 0.4),
    factorOn('indoorAir_m3_s_W', 0.1),
    factorOn('outdoorAir_m3_s_W', 0.2),
    factorOn('indoorFan', 0.3),
    factorOn('outdoorFan', 0.3),
    factorOn('circuitSpread', 0.5),
    factorOn('condenserVolume_m3_W', 0.3),
    factorOn('shellLoss', 0.5),
    design('clearance', 0.3, ({ plate: same, habits }, amount) => {
      const { scroll, rotary, reciprocating } = habits.clearance
      const by = Math.exp(amount)
      const clearance = { scroll: by * scroll, rotary: by * rotary, reciprocating: by * reciprocating }
      return { plate: same, habits: { ...habits, clearance } }
    }),
    unit('volume', 0.2),
    unit('device', 0.05),
    unit('sweep', 0.04),
    unit('efficiency', 0.05),
    unit('condenser', 0.1),
    unit('evaporator', 0.1),
    unit('outdoorAir', 0.1),
    unit('indoorAir', 0.1),
    { kind: 'weather', name: 'outdoor', air: 'outdoor', sd: 0.5 },
    { kind: 'weather', name: 'returnAir', air: 'returnAir', sd: 0.5 },
    { kind: 'weather', name: 'returnWetBulb', air: 'returnWetBulb', sd: 0.6 },
  ]
}

/** The sized system with one of its parameters moved; the flow of the device moves with the health instead. */
export const unitOf = (system: System, parameter: ParameterName, amount: number): System =>
  adjusted(system, { ...AS_SIZED, [parameter]: amount })

/** By how much the weather is moved to see what it does, K. A wet bulb goes down, so that it stays below its dry bulb. */
export const WEATHER_STEPS_K = { outdoor: 0.5, returnAir: 0.5, returnWetBulb: -0.5 } as const

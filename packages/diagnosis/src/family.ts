import { agreedHabits, type Habits, habitsOf, type Nameplate, type System, size } from '@chargewright/cycle'
import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import type { CalibratedDevice } from './calibration.ts'
import { type Assumed, type Nuisance, nuisancesOf, unitOf, WEATHER_STEPS_K } from './nuisance.ts'

/**
 * The systems that one nameplate may stand for: the twin as the habits have it, and one neighbour for each thing that
 * the nameplate does not tell. Made once per system and kept.
 */
export interface Family {
  readonly nominal: System
  readonly device: CalibratedDevice
  readonly members: readonly Member[]
}

export interface Member {
  readonly nuisance: Nuisance
  /** How far this neighbour is from the twin, in the unit of the nuisance. */
  readonly step: number
  /** The nominal one for the weather's nuisances. */
  readonly system: System
  /** Flow of its device over that of the nominal one's. */
  readonly deviceShare: number
}

/**
 * @param habits those of the application; others only to learn what wrong ones do
 * @returns the problem of sizing the twin; neighbours that no maker could build are left out
 */
export function familyOf(
  nameplate: Nameplate,
  habits: Habits = habitsOf(nameplate.application, nameplate.boxTemperature_K),
): Result<Family, Problem> {
  const device = calibratedAs(nameplate.device)
  if (!device) {
    const accepted = 'fixed orifice, capillary tube, thermostatic or electronic valve'
    return fail({ kind: 'unsolved', field: 'metering device', value: nameplate.device, accepted })
  }
  const nominal = size(nameplate, habits)
  if (!nominal.ok) return nominal
  const agreed = agreedHabits(nameplate, habits)
  if (!agreed.ok) return agreed
  const assumed = { plate: nameplate, habits: agreed.value }
  const members = nuisancesOf(nameplate).flatMap((nuisance) => memberOf(nominal.value, assumed, nuisance))
  return ok({ nominal: nominal.value, device, members })
}

/** An electronic valve that holds a superheat is judged as a thermostatic one; a constant-pressure valve is not known. */
export function calibratedAs(device: Nameplate['device']): CalibratedDevice | undefined {
  switch (device) {
    case 'fixed-orifice':
    case 'capillary':
    case 'thermostatic':
      return device
    case 'electronic':
      return 'thermostatic'
    case 'automatic':
      return undefined
  }
}

function memberOf(nominal: System, assumed: Assumed, nuisance: Nuisance): readonly Member[] {
  switch (nuisance.kind) {
    case 'design':
      for (const share of STEPS) {
        const step = share * nuisance.sd
        const { plate, habits } = nuisance.alter(assumed, step)
        const system = size(plate, habits)
        if (system.ok) return [{ nuisance, step, system: system.value, deviceShare: 1 }]
      }
      return []
    case 'unit': {
      const step = STEPS[0] * nuisance.sd
      const system = unitOf(nominal, nuisance.parameter, step)
      return [{ nuisance, step, system, deviceShare: nuisance.parameter === 'device' ? Math.exp(step) : 1 }]
    }
    case 'weather':
      return [{ nuisance, step: WEATHER_STEPS_K[nuisance.air], system: nominal, deviceShare: 1 }]
  }
}

/** Half a standard deviation up; where that cannot be built, down; then less. */
const STEPS = [0.5, -0.5, 0.15, -0.15] as const

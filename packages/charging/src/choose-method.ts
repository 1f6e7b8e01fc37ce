import { type Evidence, evidence, fail, ok, type Result, type Statement, say } from '@chargewright/quantity'
import { METERING_DEVICES, type Visit } from '@chargewright/visit'
import type { MethodId, NextEntry } from './assessment.ts'

export interface MethodChoice {
  readonly id: MethodId
  readonly because: Evidence
}

/**
 * The method that this system allows, or what must be known first. An empty system is charged by weight whatever its
 * kind; a receiver hides its charge from pressures and temperatures; a valve holds the superheat and a fixed orifice
 * does not.
 */
export function chooseMethod({ system, observations }: Visit): Result<MethodChoice, readonly NextEntry[]> {
  const { meteringDevice, application, receiver, sightGlass } = system.facts
  if (!meteringDevice)
    return fail([{ entry: { kind: 'fact', what: 'meteringDevice' }, why: say`the metering device decides the method` }])
  const choose = (id: MethodId, why: Statement) => ok({ id, because: evidence(why, 'common practice') })
  const device = METERING_DEVICES[meteringDevice]
  const Device = device.charAt(0).toUpperCase() + device.slice(1)

  const state = observations['charge-state']?.answer
  if (state === 'evacuated') return choose('weight', say`The system is empty: the charge is weighed in`)
  if (state === 'lost')
    return choose('weight', say`The charge was lost: nothing that is left in the system tells what belongs there`)

  switch (meteringDevice) {
    case 'fixed-orifice':
    case 'capillary': {
      if (receiver) return choose('weight', say`${Device} with receiver: the receiver hides the charge from superheat`)
      if (!application)
        return fail([
          {
            entry: { kind: 'fact', what: 'application' },
            why: say`the application decides: superheat sets the charge of a ${device} in comfort cooling only`,
          },
        ])
      const comfort = application === 'comfort-cooling' || application === 'heat-pump-cooling'
      return comfort
        ? choose('superheat', say`${Device} without receiver: superheat follows the charge`)
        : choose('weight', say`${Device} in refrigeration: the charge is critical`)
    }
    case 'thermostatic':
    case 'electronic':
      if (receiver) {
        return sightGlass
          ? choose(
              'sight-glass',
              say`${Device} with receiver: pressures and temperatures do not tell the charge, the glass under load does`,
            )
          : choose('weight', say`A receiver without a sight glass shows its charge to nothing but the scale`)
      }
      return choose(
        'subcooling',
        say`${Device} without receiver: the valve holds the superheat, subcooling follows the charge`,
      )
    case 'automatic':
      return receiver && sightGlass
        ? choose('sight-glass', say`${Device} with receiver: the glass under load tells the charge`)
        : choose(
            'weight',
            say`${Device}: it holds the evaporating pressure and not the superheat, only the scale is sure`,
          )
  }
}

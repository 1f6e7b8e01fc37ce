import type { Trouble } from './case.ts'
import { slipFor } from './compressor-law.ts'
import type { Design } from './design.ts'
import type { Device } from './device-law.ts'
import type { Fan } from './fan.ts'
import type { Random } from './random.ts'
import type { Unit } from './unit.ts'

/** Severities over which a technician meets a trouble; what each counts is said at `Truth`. */
export const SEVERITIES: Readonly<Record<Trouble, readonly [least: number, most: number]>> = {
  'short-of-charge': [0.1, 0.4],
  overcharged: [0.1, 0.4],
  'low-indoor-air': [0.2, 0.6],
  'poor-condenser-air': [0.2, 0.6],
  'liquid-line-restriction': [0.15, 0.6],
  'non-condensables': [0.2, 1],
  'weak-compressor': [0.12, 0.4],
  'valve-feeds-too-little': [0.25, 0.6],
  'valve-feeds-too-much': [0.3, 0.9],
}

/** The unit with a trouble in it. Wrong charge is no part of the unit: it is weighed in by the caller. */
export function inflict(unit: Unit, { rated }: Design, kind: Trouble, severity: number, random: Random): Unit {
  const { chance, uniform } = random
  switch (kind) {
    case 'short-of-charge':
    case 'overcharged':
      return unit
    case 'low-indoor-air':
      return { ...unit, evaporatorFan: starved(unit.evaporatorFan, severity, chance(0.7)) }
    case 'poor-condenser-air': {
      const isDirty = chance(0.7)
      const { condenser } = unit
      return {
        ...unit,
        condenserFan: starved(unit.condenserFan, severity, isDirty),
        // Dirt on the fins insulates besides.
        condenser: isDirty
          ? { ...condenser, fin_W_mK: condenser.fin_W_mK * (1 - uniform(0, 0.3) * severity) }
          : condenser,
      }
    }
    case 'liquid-line-restriction': {
      const across = rated.liquid_Pa - rated.suction.p_Pa
      const more = (severity * across * unit.fluid.at(rated.liquid_Pa).rhoLiquid) / rated.flow ** 2
      const { liquidLine } = unit
      return chance(0.75)
        ? { ...unit, liquidLine: { ...liquidLine, drierDrop: liquidLine.drierDrop + more } }
        : { ...unit, liquidLine: { ...liquidLine, strainerDrop: more } }
    }
    case 'non-condensables':
      return { ...unit, gas_Pa: severity * 101325 }
    case 'weak-compressor': {
      const slip = slipFor(
        unit.compressor,
        unit.fluid,
        rated.suction.p_Pa,
        rated.superheat_K,
        rated.discharge_Pa,
        severity,
      )
      return { ...unit, compressor: { ...unit.compressor, slip } }
    }
    case 'valve-feeds-too-little':
      return { ...unit, device: misset(unit, chance(0.4) ? { jammedAt: 1 - severity } : { later_K: 20 * severity }) }
    case 'valve-feeds-too-much':
      return { ...unit, device: misset(unit, chance(0.4) ? { jammedAt: 1 + severity } : { later_K: -12 * severity }) }
  }
}

function starved(fan: Fan, missing: number, isBlocked: boolean): Fan {
  return { ...fan, missing, because: isBlocked ? 'blocked' : 'slow' }
}

/**
 * A valve with its stem jammed at a share of the opening that rating needs, or one that opens only at more or already
 * at less superheat: its spring misset, its bulb loose or short of charge. An orifice has neither and stays.
 */
function misset({ device, fluid }: Unit, how: { readonly jammedAt: number } | { readonly later_K: number }): Device {
  if (device.kind !== 'thermostatic') return device
  if ('jammedAt' in how) return { ...device, jammed: device.rated * how.jammedAt }
  const at = 283
  const off = fluid.dewPressure(at + how.later_K) - fluid.dewPressure(at)
  return { ...device, spring_Pa: device.spring_Pa + off }
}

import { describe, expect, it } from 'vitest'
import type { Health, Readings } from '../src/index.ts'
import { plate, readings, sized } from './sample.ts'

const system = sized(plate('fixed-orifice'))
const sound = readings(system, 1)

/** What the published rules watch; the temperature differences of the air are leaving minus entering, taken positive. */
const watched = {
  evaporating: (r: Readings) => r.evaporating_K,
  superheat: (r: Readings) => r.superheat_K,
  // A gauge knows the condensing temperature only by the pressure.
  condensing: (r: Readings) => system.properties.saturated(r.dischargePressure_Pa).dew_K,
  subcooling: (r: Readings) => r.subcooling_K,
  discharge: (r: Readings) => r.dischargeTemperature_K,
  condenserAir: (r: Readings) => r.leavingCondenserAir_K,
  evaporatorAir: (r: Readings) => -r.supplyAir_K,
} as const

type Watched = keyof typeof watched
type Sign = '+' | '-' | '0 or -' | '+ or 0'

interface Rule {
  readonly share: number
  readonly fault: Partial<Health>
  readonly status: 'READ' | 'REMEMBERED'
  readonly signs: Readonly<Partial<Record<Watched, Sign>>>
  /** Where the model departs from the rule, with the sign it gives and why. */
  readonly exceptions: Readonly<Partial<Record<Watched, readonly [sign: '+' | '-', why: string]>>>
}

// Rossi and Braun 1997, rules for a fixed-orifice rooftop unit as reprinted (READ); the rest by physics and textbook
// tables (REMEMBERED). Each fault at 20 % intensity or more.
const SUPERHEAT_GONE =
  'the superheat of 7 K is gone first, and with it more of the discharge temperature than the fault adds'
const DRY_END = 'the dry end of the coil boils too, which outweighs the warmer refrigerant until all of it is wet'
const RULES: Readonly<Record<string, Rule>> = {
  undercharge: {
    share: 0.8,
    fault: {},
    status: 'READ',
    signs: {
      evaporating: '-',
      superheat: '+',
      condensing: '-',
      subcooling: '-',
      discharge: '+',
      condenserAir: '-',
      evaporatorAir: '-',
    },
    exceptions: {},
  },
  'compressor valve leak': {
    share: 1,
    fault: { wear: 0.3 },
    status: 'READ',
    signs: {
      evaporating: '+',
      superheat: '-',
      condensing: '-',
      subcooling: '-',
      discharge: '-',
      condenserAir: '-',
      evaporatorAir: '-',
    },
    exceptions: { evaporatorAir: ['+', DRY_END] },
  },
  'liquid-line restriction': {
    share: 1,
    fault: { restriction_Pa: 4e5 },
    status: 'READ',
    signs: {
      evaporating: '-',
      superheat: '+',
      condensing: '-',
      subcooling: '+',
      discharge: '+',
      condenserAir: '-',
      evaporatorAir: '-',
    },
    exceptions: {},
  },
  'condenser fouling': {
    share: 1,
    fault: { outdoorAirShare: 0.7 },
    status: 'READ',
    signs: {
      evaporating: '+',
      superheat: '-',
      condensing: '+',
      subcooling: '-',
      discharge: '+',
      condenserAir: '+',
      evaporatorAir: '-',
    },
    exceptions: {
      subcooling: ['+', 'the liquid at the end of the coil is cooled towards air that is now further below it'],
      evaporatorAir: ['+', DRY_END],
    },
  },
  'low indoor air': {
    share: 1,
    fault: { indoorAirShare: 0.7 },
    status: 'READ',
    signs: {
      evaporating: '-',
      superheat: '-',
      condensing: '-',
      subcooling: '-',
      discharge: '-',
      condenserAir: '-',
      evaporatorAir: '+',
    },
    exceptions: {},
  },
  overcharge: {
    share: 1.2,
    fault: {},
    status: 'REMEMBERED',
    signs: {
      evaporating: '+ or 0',
      superheat: '-',
      condensing: '+',
      subcooling: '+',
      discharge: '+',
      condenserAir: '+',
    },
    exceptions: { discharge: ['-', SUPERHEAT_GONE] },
  },
  'gas that does not condense': {
    share: 1,
    fault: { nonCondensable_Pa: 1e5 },
    status: 'REMEMBERED',
    signs: { evaporating: '+', superheat: '0 or -', condensing: '+', subcooling: '+', discharge: '+' },
    exceptions: { discharge: ['-', SUPERHEAT_GONE] },
  },
}

const hasSign = (change: number, sign: Sign): boolean => {
  switch (sign) {
    case '+':
      return change > 0
    case '-':
      return change < 0
    case '0 or -':
      return change < 0.2
    case '+ or 0':
      return change > -0.2
  }
}

describe.each(Object.entries(RULES))(
  'signs of %s in a fixed-orifice unit',
  (_, { share, fault, signs, exceptions }) => {
    const faulty = readings(system, share, fault)
    const rows = Object.entries(signs) as [Watched, Sign][]

    it.each(rows)('[published] %s moves %s, or is a listed exception', (name, published) => {
      const change = watched[name](faulty) - watched[name](sound)
      expect(hasSign(change, exceptions[name]?.[0] ?? published)).toBe(true)
    })
  },
)

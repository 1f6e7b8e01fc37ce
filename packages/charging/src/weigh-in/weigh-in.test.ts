import {
  evidence,
  INCH_POUND,
  kelvin,
  type Problem,
  type Quantity,
  quantity,
  type Result,
  render,
  say,
} from '@chargewright/quantity'
import { findRefrigerant, refrigerantNames, saturationAtTemperature } from '@chargewright/refrigerant'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { described, observed, visitOf } from '../../test/visit-of.ts'
import { assess } from '../assess.ts'
import {
  accessoryCharge,
  chargingCylinderMass,
  correctedReading,
  drierExchange,
  HABITUAL_HOLD_UP,
  hoseHoldUp,
  intoSystem,
  liquidAt,
  PLAIN_SCALE,
  vapourAt,
  vapourOver,
  weighedDifference,
  weighInProcedure,
  weighInTotal,
} from './index.ts'

const given = <T>(result: Result<T, Problem>): T => {
  if (!result.ok) throw new Error(JSON.stringify(result.error))
  return result.value
}
const IN3 = 0.0254 ** 3
const celsius = (t: number, u?: number) => quantity('temperature', t + 273.15, u)
const volume = (si: number) => quantity('volume', si)
const kg = (si: number, u?: number) => quantity('mass', si, u)
const r22 = given(findRefrigerant('R-22'))
const r410a = given(findRefrigerant('R-410A'))
const liquid = given(liquidAt(r410a, celsius(38)))
const vapour = given(vapourAt(r410a, quantity('absolute pressure', 9e5), celsius(15)))

describe('drier exchange', () => {
  test('[property] exchanged back, the charge is as it was; a larger drier of 8 in³ takes about 4.5 oz of R-410A', () => {
    const [oldVolume, newVolume] = [volume(8 * IN3), volume(16 * IN3)]
    const there = given(drierExchange({ oldVolume, newVolume }, liquid)).quantity.si
    const back = given(drierExchange({ oldVolume: newVolume, newVolume: oldVolume }, liquid)).quantity.si
    expect(there + back).toBe(0)
    expect(there / (0.45359237 / 16)).toBeGreaterThan(4.4)
    expect(there / (0.45359237 / 16)).toBeLessThan(4.7)
  })

  test('[limit] volumes that are none are refused', () => {
    for (const bad of [volume(-1), volume(Number.NaN), volume(1e3)]) {
      expect(drierExchange({ oldVolume: bad, newVolume: volume(1e-4) }, liquid).ok).toBe(false)
      expect(drierExchange({ oldVolume: volume(1e-4), newVolume: bad }, liquid).ok).toBe(false)
    }
  })
})

describe('accessories', () => {
  const receiver = (liquidShare: number) => ({ name: 'receiver', volume: volume(2e-3), liquidShare })

  test('[property] full of liquid or of vapour it holds the volume of each, half full the mean', () => {
    const held = (share: number) => given(accessoryCharge(receiver(share), liquid, vapour)).quantity.si
    expect(held(1)).toBeCloseTo(2e-3 * liquid.density_kg_m3, 12)
    expect(held(0)).toBeCloseTo(2e-3 * vapour.density_kg_m3, 12)
    expect(held(0.5)).toBeCloseTo((held(0) + held(1)) / 2, 12)
  })

  test('[property] an assessment weighs them in beside the nameplate charge, and refuses one that is none', () => {
    const facts = { refrigerant: 'R-410A', meteringDevice: 'thermostatic', nameplateCharge: '2 kg' } as const
    const visit = visitOf(described(facts), observed('charge-state', 'evacuated'))
    const at = quantity('temperature', (100 + 459.67) / 1.8)
    const held = accessoryCharge(receiver(0.3), given(liquidAt(r410a, at)), given(vapourOver(r410a, at)))
    const { target, finding } = assess(visit, [receiver(0.3)])
    expect(target?.quantity.si).toBeCloseTo(2 + given(held).quantity.si, 12)
    expect(finding.dose?.mass.si).toBe(target?.quantity.si)
    expect(assess(visit, [receiver(2)]).problems).toHaveLength(1)
  })

  test('[limit] a share beyond the whole is refused', () => {
    expect(accessoryCharge(receiver(1.01), liquid, vapour).ok).toBe(false)
    expect(accessoryCharge(receiver(Number.NaN), liquid, vapour).ok).toBe(false)
  })
})

describe('charging cylinder', () => {
  test('[property] what left is what the cylinder held before less what it holds after, liquid and vapour', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true })
    const whole = 3e-3
    fc.assert(
      fc.property(fc.double({ min: 0, max: 50, noNaN: true }), share, share, (t, a, b) => {
        const { bubble, dew } = given(saturationAtTemperature(r22, kelvin(t + 273.15)))
        const held = (full: number) => whole * (full * bubble.density_kg_m3 + (1 - full) * dew.density_kg_m3)
        const [high, low] = [Math.max(a, b), Math.min(a, b)]
        const left = given(chargingCylinderMass(r22, volume((high - low) * whole), celsius(t))).quantity.si
        expect(left).toBeCloseTo(held(high) - held(low), 9)
      }),
      { seed: 11, numRuns: 300 },
    )
  })

  test('[property] at the temperature of its scale a reading stands; warmer it means less, and back again the same', () => {
    const reading = kg(2)
    const read = (at: number, scale: number, mass = reading) =>
      given(correctedReading(r22, mass, celsius(scale), celsius(at)))
    expect(read(21, 21).si).toBe(2)
    expect(read(35, 21).si).toBeLessThan(2)
    expect(read(21, 35, read(35, 21)).si).toBeCloseTo(2, 12)
  })

  test('[limit] above the critical temperature there is no level to read', () => {
    expect(chargingCylinderMass(r22, volume(1e-3), celsius(97)).ok).toBe(false)
    expect(chargingCylinderMass(r22, volume(-1e-3), celsius(20)).ok).toBe(false)
    expect(correctedReading(r22, kg(Number.NaN), celsius(20), celsius(20)).ok).toBe(false)
  })
})

describe('scale and hoses', () => {
  test('[property] the share of the scale counts on the difference, its step twice', () => {
    const { si, u } = given(weighedDifference(kg(15), kg(13), { resolution_kg: 0.005, share: 0.001 }))
    expect(si).toBe(2)
    expect(u).toBeCloseTo(Math.hypot(0.007 / Math.sqrt(6), (0.005 * Math.SQRT2) / Math.sqrt(12)), 12)
  })

  // Charging scale, common practice, REMEMBERED: steps of 1 to 10 g, ±(0.05 to 0.1 % of the reading + 1 step).
  test('[published] the plain scale lies inside what is remembered of charging scales', () => {
    expect(PLAIN_SCALE.resolution_kg).toBeGreaterThanOrEqual(0.001)
    expect(PLAIN_SCALE.resolution_kg).toBeLessThanOrEqual(0.01)
    expect(PLAIN_SCALE.share).toBeGreaterThanOrEqual(0.0005)
    expect(PLAIN_SCALE.share).toBeLessThanOrEqual(0.001)
  })

  // Hose and manifold hold-up, common practice, REMEMBERED: 20 to 100 g.
  test('[published] a quarter-inch hose of 5 ft full of liquid holds within the remembered 20 to 100 g', () => {
    const hose = { inside: quantity('length', 0.0048), length: quantity('length', 1.5) }
    const held = given(hoseHoldUp(hose, liquid)).quantity.si
    expect(held).toBeGreaterThan(0.02)
    expect(held).toBeLessThan(0.1)
    expect(HABITUAL_HOLD_UP.si - Math.sqrt(3) * HABITUAL_HOLD_UP.u!).toBeCloseTo(0.02, 12)
    expect(HABITUAL_HOLD_UP.si + Math.sqrt(3) * HABITUAL_HOLD_UP.u!).toBeCloseTo(0.1, 12)
  })

  test('[property] cylinder, hose and system together neither gain nor lose', () => {
    const [left, held] = [kg(2, 0.01), kg(0.06, 0.02)]
    for (const fullAtZero of [true, false]) {
      for (const drawnEmptyAtEnd of [true, false]) {
        const system = intoSystem(left, held, { fullAtZero, drawnEmptyAtEnd }).quantity.si
        const hoseGained = (drawnEmptyAtEnd ? 0 : held.si) - (fullAtZero ? held.si : 0)
        expect(system + hoseGained).toBeCloseTo(left.si, 12)
      }
    }
  })

  test('[limit] weights and hoses that are none are refused', () => {
    for (const bad of [-1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(weighedDifference(kg(bad), kg(1), PLAIN_SCALE).ok).toBe(false)
      expect(weighedDifference(kg(1), kg(bad), PLAIN_SCALE).ok).toBe(false)
      expect(weighedDifference(kg(1), kg(1), { resolution_kg: bad, share: 0 }).ok).toBe(false)
      const hose = { inside: quantity('length', bad), length: quantity('length', 1) }
      expect(hoseHoldUp(hose, liquid).ok).toBe(false)
    }
  })
})

describe('contents', () => {
  test('[property] an uncertain temperature makes an uncertain density, by its slope', () => {
    const slope = given(liquidAt(r410a, celsius(37))).density_kg_m3 - liquid.density_kg_m3
    expect(given(liquidAt(r410a, celsius(38, 1))).u_kg_m3).toBeCloseTo(slope, 9)
    expect(liquid.u_kg_m3).toBe(0)
  })

  test('[limit] liquid is no vapour, and above the critical point there is no liquid', () => {
    expect(vapourAt(r410a, quantity('absolute pressure', 3e6), celsius(20)).ok).toBe(false)
    expect(liquidAt(r410a, celsius(90)).ok).toBe(false)
    expect(liquidAt(r410a, celsius(Number.NaN)).ok).toBe(false)
  })
})

describe('total', () => {
  const part = (mass: Quantity<'mass'>) => ({ quantity: mass, evidence: evidence(say`a part of ${mass}`) })

  test('[property] the sum of its parts, with all of them in the tree and their uncertainties in quadrature', () => {
    const total = given(weighInTotal(part(kg(2.8)), [part(kg(0.3, 0.03)), part(kg(-0.1, 0.04))]))
    expect(total.quantity.si).toBeCloseTo(3, 12)
    expect(total.quantity.u).toBeCloseTo(0.05, 12)
    expect(total.evidence.from).toHaveLength(3)
  })

  test('[limit] parts that take more than there is are refused', () => {
    const none = weighInTotal(part(kg(1)), [part(kg(-2))])
    expect(!none.ok && none.error).toMatchObject({ kind: 'out-of-range', field: 'charge to weigh in' })
  })
})

describe('procedure', () => {
  const steps = (name: string, meteringDevice: 'capillary' | 'thermostatic' = 'capillary') =>
    weighInProcedure({
      charge: kg(0.3),
      tolerance: kg(0.003),
      refrigerant: given(findRefrigerant(name)),
      meteringDevice,
    })
  const place = (name: string, id: string) => steps(name).findIndex((step) => step.id === id)

  test('[property] the system is empty first, liquid goes in with the compressor off, and it rests before the start', () => {
    for (const name of refrigerantNames()) {
      const order = [
        'tools',
        'access',
        'empty',
        'right-refrigerant',
        'compressor-off',
        'open',
        'close',
        'equalise',
        'start',
        'seal',
        'record',
      ]
      const places = order.map((id) => place(name, id))
      expect(places[0]).toBe(0)
      expect(places).toEqual([...places].sort((a, b) => a - b))
    }
    expect(steps('R-22').find(({ id }) => id === 'equalise')?.wait?.si).toBe(600)
  })

  test('[property] only a sealed system is told of its process tube, once the place is safe and before anything is connected', () => {
    expect(place('R-290', 'ventilate')).toBeLessThan(place('R-290', 'access'))
    expect(place('R-290', 'access')).toBeLessThan(place('R-290', 'empty'))
    const withValve = steps('R-290', 'thermostatic').map(({ id }) => id)
    expect(withValve).toContain('tools')
    expect(withValve.filter((id) => id === 'access' || id === 'seal')).toEqual([])
  })

  test('[property] ports are capped only where there are some', () => {
    const record = (device: 'capillary' | 'thermostatic') =>
      render(steps('R-290', device).find(({ id }) => id === 'record')!.act, INCH_POUND)
    expect(record('capillary')).not.toMatch(/ports/)
    expect(record('capillary')).toMatch(/check the seal for leaks/)
    expect(record('thermostatic')).toMatch(/cap the ports/)
  })

  test('[property] a low side that has not risen in a minute stops it, and names the capillary where there is one', () => {
    const silent = (device: 'capillary' | 'thermostatic') =>
      steps('R-22', device).find(({ id }) => id === 'open')!.stops[0]!
    expect(silent('capillary').after?.si).toBe(60)
    expect(render(silent('capillary').means, INCH_POUND)).toMatch(/capillary/)
    expect(render(silent('thermostatic').means, INCH_POUND)).not.toMatch(/capillary/)
  })

  test('[property] where it burns the room is made safe first; a blend never goes into the low side as it boils off', () => {
    expect(place('R-290', 'ventilate')).toBeLessThan(place('R-290', 'empty'))
    expect(place('R-22', 'ventilate')).toBe(-1)
    const rest = (name: string) => render(steps(name).find(({ id }) => id === 'rest-as-vapour')!.act, INCH_POUND)
    expect(rest('R-410A')).toMatch(/take liquid and throttle it to vapour/)
    expect(rest('R-22')).toMatch(/as vapour$/)
  })
})

import { describe, expect, it } from 'vitest'
import { plate, readings, sized, weather } from './sample.ts'

// Published: pressures and temperatures cannot tell the charge of a receiver system (common practice); a glass that
// bubbles under a forced high load is what shows a shortage there.
describe('a thermostatic system with a receiver', () => {
  const system = sized(plate('thermostatic', { receiver: {}, charge_kg: 5.5 }))
  const glass = (share: number, at = system.rated.conditions) => readings(system, share, {}, at).glassVapour
  const [lowLoad, highLoad] = [weather(25, 22, 15), weather(40, 32, 24)]

  it('[published] is blind to charge from 80 % to 115 %: superheat and subcooling move less than 0.2 K', () => {
    const states = [0.8, 0.9, 1, 1.1, 1.15].map((share) => readings(system, share))
    const spread = (of: (r: (typeof states)[number]) => number) =>
      Math.max(...states.map(of)) - Math.min(...states.map(of))
    expect(spread((r) => r.superheat_K)).toBeLessThan(0.1)
    expect(spread((r) => r.subcooling_K)).toBeLessThan(0.2)
  })

  it('[published] has a band of undercharge in which the glass is clear at low load and bubbles at high load', () => {
    const shares = [0.55, 0.6, 0.65, 0.7]
    const band = shares.filter((share) => glass(share, lowLoad) === 0 && glass(share, highLoad) > 0.1)
    expect(band).not.toEqual([])
  })

  it('[property] at right charge the glass is clear at low and at high load, at half charge it bubbles at both', () => {
    expect([glass(1, lowLoad), glass(1), glass(1, highLoad)]).toEqual([0, 0, 0])
    expect(Math.min(glass(0.5, lowLoad), glass(0.5, highLoad))).toBeGreaterThan(0.2)
  })
})

describe('sensitivity to charge', () => {
  const slope = (device: 'capillary' | 'fixed-orifice' | 'thermostatic') => {
    const system = sized(plate(device))
    return (readings(system, 0.9).superheat_K - readings(system, 1).superheat_K) / 0.1
  }

  it('[published] the superheat of a capillary system answers most to charge, that of a valve hardly', () => {
    expect(slope('capillary')).toBeGreaterThan(slope('fixed-orifice'))
    expect(slope('fixed-orifice')).toBeGreaterThan(10 * slope('thermostatic'))
  })
})

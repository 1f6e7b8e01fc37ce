import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { tables } from '../../test/sample.ts'
import { capillaryFlow } from './capillary-tube.ts'
import { type Device, deviceFlow } from './device.ts'
import { type DeviceInlet, deviceInlet } from './inlet.ts'
import { shortTubeLiquidFlux } from './short-tube.ts'

const properties = tables('R-22')

/** Liquid subcooled by some kelvin, or with some vapour, at a condensing temperature in °C. */
function inletAt(celsius: number, subcooling: number, quality = 0): DeviceInlet {
  const bubble = celsius + 273.15
  const at = properties.saturated(properties.bubblePressure(bubble))
  const liquid = properties.saturated(properties.bubblePressure(bubble - subcooling)).liquidEnthalpy_J_kg
  const latent = at.vapourEnthalpy_J_kg - at.liquidEnthalpy_J_kg
  return deviceInlet(properties, at, quality > 0 ? at.liquidEnthalpy_J_kg + quality * latent : liquid)
}

const devices: readonly Device[] = [
  { kind: 'fixed-orifice', diameter_m: 1.5e-3, length_m: 0.0127 },
  { kind: 'capillary', diameter_m: 2e-3, friction: 20 },
  { kind: 'thermostatic', area_m2: 1.5e-6, staticSuperheat_K: 2, band_K: 6 },
  { kind: 'electronic', area_m2: 1.5e-6, drive: { kind: 'superheat', setPoint_K: 5 } },
  { kind: 'automatic', area_m2: 1.5e-6, setting_Pa: 6e5, band_Pa: 1e5 },
]

describe('short-tube orifice', () => {
  // Published: Payne and O'Neal 2004, coefficients READ in two open codes; the example is COMPUTED from them and checks
  // the arithmetic only.
  it("[oracle] gives the worked arithmetic of Payne and O'Neal's form", () => {
    const flux = shortTubeLiquidFlux(
      { diameter_m: 0.00135, length_m: 0.0127 },
      {
        pressure_Pa: 1.73e6,
        bubblePressure_Pa: 1.355e6,
        subcooling_K: 10,
        liquidDensity_kg_m3: 1150,
        vapourDensity_kg_m3: 57.99,
      },
      { temperature_K: 369.3, pressure_Pa: 4.99e6 },
    )
    expect(flux).toBeCloseTo(24648.01209, 4)
    expect((Math.PI / 4) * 0.00135 ** 2 * flux).toBeCloseTo(0.03528087249722, 10)
  })
})

describe('capillary tube', () => {
  // Oracle: the same momentum balance integrated step by step with properties from the tables instead of the ω line.
  it('[oracle] is within 6 % of a marched isenthalpic homogeneous flow', () => {
    const tube = { kind: 'capillary', diameter_m: 2e-3, friction: 20 } as const
    for (const [celsius, subcooling] of [
      [40, 5],
      [45, 8],
      [50, 2],
      [55, 10],
    ] as const) {
      const inlet = inletAt(celsius, subcooling)
      const model = deviceFlow(tube, properties, inlet, 5e5, 5, 0.05).flow_kg_s
      expect(Math.abs(model / marched(tube.diameter_m, tube.friction, inlet) - 1)).toBeLessThan(0.06)
    }
  })

  it('[limit] falls to nothing as the pressures meet', () => {
    const inlet = inletAt(45, 5)
    const tube = { kind: 'capillary', diameter_m: 2e-3, friction: 20 } as const
    const flow = (downstream: number) => capillaryFlow(tube, inlet, 5, downstream)
    expect(flow(0.999 * inlet.bubblePressure_Pa)).toBeLessThanOrEqual(flow(5e5))
  })
})

/** Flow at which the friction length is used up where the flow chokes, by bisection on the flux. */
function marched(diameter: number, friction: number, inlet: DeviceInlet): number {
  const lengthOf = (G: number) => {
    let used = (2 * (inlet.at.pressure_Pa - inlet.bubblePressure_Pa) * inlet.density_kg_m3) / G ** 2
    let p = inlet.bubblePressure_Pa
    let v = 1 / inlet.density_kg_m3
    for (const dp = p / 4000; p > 0.1 * inlet.bubblePressure_Pa; p -= dp) {
      const there = properties.saturated(p - dp)
      const x =
        (inlet.enthalpy_J_kg - there.liquidEnthalpy_J_kg) / (there.vapourEnthalpy_J_kg - there.liquidEnthalpy_J_kg)
      const next = x / there.vapourDensity_kg_m3 + (1 - x) / there.liquidDensity_kg_m3
      const step = (2 * dp) / (G ** 2 * v) - (2 * (next - v)) / v
      if (step <= 0) return used
      used += step
      v = next
    }
    return used
  }
  let [low, high] = [500, 30_000]
  for (let i = 0; i < 40; i++) {
    const G = (low + high) / 2
    if (lengthOf(G) > friction) low = G
    else high = G
  }
  return (Math.PI / 4) * diameter ** 2 * low
}

describe.each(devices)('$kind', (device) => {
  const flow = (inlet: DeviceInlet, downstream = 5.5e5, superheat = 6) =>
    deviceFlow(device, properties, inlet, downstream, superheat, 0.05).flow_kg_s

  it('[property] passes more when the liquid is colder, less when vapour comes with it, always a finite flow', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 30, max: 60, noNaN: true }),
        fc.double({ min: 0.001, max: 0.9, noNaN: true }),
        (celsius, quality) => {
          const [cold, boiling, flashing] = [
            inletAt(celsius, 8),
            inletAt(celsius, 0),
            inletAt(celsius, 0, quality),
          ].map((inlet) => flow(inlet))
          expect(cold!).toBeGreaterThan(boiling!)
          expect(flashing!).toBeLessThanOrEqual(boiling! * (1 + 1e-9))
          expect(flashing!).toBeGreaterThan(0)
        },
      ),
      { seed: 3, numRuns: 100 },
    )
  })

  it('[limit] has no step where the first vapour appears, and no flow without a pressure difference', () => {
    expect(flow(inletAt(45, 0, 1e-9)) / flow(inletAt(45, 1e-7))).toBeCloseTo(1, 4)
    const inlet = inletAt(45, 5)
    if (device.kind !== 'capillary') expect(flow(inlet, inlet.at.pressure_Pa)).toBe(0)
  })
})

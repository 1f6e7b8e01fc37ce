import { kelvin } from '@chargewright/quantity'
import { describe, expect, it } from 'vitest'
import { saturationAtTemperature } from '../src/index.ts'
import { computed, everyRefrigerant } from './computed.ts'
import { criticalByStability } from './critical-by-stability.ts'
import criticalPoints from './data/critical-points.json' with { type: 'json' }

// The traced point is a polynomial between the ends of two lines; 0.010 K of it is the most that any blend shows.
const TEMPERATURE_K = 0.02
const PRESSURE = 2e-4

describe('critical point', () => {
  it('[property] the point where bubble and dew line meet is the one that the stability of one phase gives', () => {
    const blends = everyRefrigerant().filter((refrigerant) => refrigerant.kind === 'blend')
    expect(blends.length).toBeGreaterThan(100)
    for (const refrigerant of blends) {
      const { name, critical } = refrigerant
      const alone = criticalByStability(refrigerant)
      expect(alone, name).toBeDefined()
      expect(Math.abs(alone!.temperature_K - critical.temperature_K), name).toBeLessThan(TEMPERATURE_K)
      expect(Math.abs(alone!.pressure_Pa / critical.pressure_Pa - 1), name).toBeLessThan(PRESSURE)
    }
  })

  // The oracle lists a critical temperature of these two without a pressure. It is no critical point: to every digit it
  // is the reducing temperature T_r(x) of the mixture model, a scale for τ, and both phases still exist there.
  it.each(criticalPoints.reducingTemperatures as [string, number][])(
    '[oracle] %s: the %d K listed without a pressure is the reducing temperature, 11 to 13 K below the critical one',
    (name, T) => {
      const refrigerant = computed(name)
      expect(refrigerant.engine.fluid.reducingTemperature_K).toBeCloseTo(T, 4)
      expect(refrigerant.critical.temperature_K - T).toBeGreaterThan(11)
      expect(refrigerant.critical.temperature_K - T).toBeLessThan(13.5)
      const there = saturationAtTemperature(refrigerant, kelvin(T))
      if (!there.ok) throw new Error(JSON.stringify(there.error))
      const { bubble, dew } = there.value
      expect(bubble.density_kg_m3 / dew.density_kg_m3).toBeGreaterThan(3)
      expect(bubble.pressure_Pa / dew.pressure_Pa).toBeGreaterThan(1.2)
    },
  )
})

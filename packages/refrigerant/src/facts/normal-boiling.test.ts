import { pascal } from '@chargewright/quantity'
import { describe, expect, it } from 'vitest'
import { findRefrigerant } from '../find-refrigerant.ts'
import { recipeOf } from '../recipe.ts'
import { listed } from '../refrigerant-name.ts'
import { saturationAtPressure } from '../saturation.ts'
import { normalBoiling } from './normal-boiling.ts'

const ONE_ATMOSPHERE = pascal(101_325)

describe('normalBoiling', () => {
  it('[property] of everything listed it is what the whole saturation lines give, and absent where they say nothing', () => {
    let boiling = 0
    for (const entry of listed) {
      const short = normalBoiling(recipeOf(entry))?.value
      const found = findRefrigerant(entry.name)
      const whole = found.ok ? saturationAtPressure(found.value, ONE_ATMOSPHERE) : found
      expect(short !== undefined, entry.name).toBe(whole.ok)
      if (!short || !whole.ok) continue
      const { bubble, dew } = whole.value
      expect(Math.abs(short.bubble_K - bubble.temperature_K), entry.name).toBeLessThan(1e-7)
      expect(Math.abs(short.dew_K - dew.temperature_K), entry.name).toBeLessThan(1e-7)
      expect(short.glide_K).toBe(short.dew_K - short.bubble_K)
      boiling++
    }
    expect(boiling).toBeGreaterThan(150)
  })
})

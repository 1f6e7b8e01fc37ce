import { STANDARD_ATMOSPHERE } from '@chargewright/quantity'
import { expect, test } from 'vitest'
import { type SaturationQuestion, saturation } from './saturation.ts'
import { saturationText } from './saturation-text.ts'

function printed(question: SaturationQuestion): string {
  const answer = saturation(question)
  if (!answer.ok) throw new Error(answer.error.kind)
  return saturationText(answer.value, STANDARD_ATMOSPHERE, 1000)
}

test('[property] only of a blend at one pressure does it tell a glide', () => {
  expect(printed({ refrigerant: 'R-407C', pressure_Pa: 900e3 })).toMatch(/they lie 10\.\d °F or 5\.\d K apart/)
  expect(printed({ refrigerant: 'R-407C', temperature_K: 280 })).not.toContain('apart')
  expect(printed({ refrigerant: 'R-32', pressure_Pa: 900e3 })).toContain('A pure fluid')
  expect(printed({ refrigerant: 'R-32', temperature_K: 280 })).toContain('A pure fluid')
})

test('[limit] below the atmosphere the gauge pressure is negative, and the absolute one is not', () => {
  const text = printed({ refrigerant: 'R-134a', temperature_K: 230 })
  expect(text).toMatch(/gauge pressure +−\d/)
  expect(text).toMatch(/absolute pressure +\d/)
})

import { findRefrigerant, refrigerantNames } from '@chargewright/refrigerant'
import { expect, test } from 'vitest'
import { plateWindow } from '../src/plate-window.ts'
import { saturationLines } from '../src/saturation-lines.ts'

test('[property] bubble and dew line of every refrigerant meet at its critical pressure, without a jump', () => {
  for (const name of refrigerantNames()) {
    const found = findRefrigerant(name)
    if (!found.ok) throw new Error(name)
    const window = plateWindow(found.value, { points: [], beside: {} })!
    const { bubble, dew } = saturationLines(found.value, window)
    const [top, other] = [bubble.at(-1)!, dew.at(-1)!]
    expect([name, top.pressure]).toEqual([name, found.value.critical.pressure_Pa])
    expect([name, other.enthalpy]).toEqual([name, expect.closeTo(top.enthalpy, 3)])
    expect([name, other.pressure]).toEqual([name, top.pressure])
    const span = Math.abs(dew[0]!.enthalpy - bubble[0]!.enthalpy)
    for (const line of [bubble, dew]) {
      const jumps = line.slice(1).map((state, i) => Math.abs(state.enthalpy - line[i]!.enthalpy))
      expect([name, Math.max(...jumps) < 0.12 * span]).toEqual([name, true])
    }
  }
})

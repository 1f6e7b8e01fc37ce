import { INCH_POUND, METRIC } from '@chargewright/quantity'
import { FIGURE_IDS, figureKind } from '@chargewright/visit'
import { expect, test } from 'vitest'
import { exampleInUnits } from './example-in-units.ts'
import { understand } from './understand.ts'

const shown = (id: Parameters<typeof figureKind>[0], units = METRIC) =>
  exampleInUnits(figureKind(id), units).replaceAll('\u00a0', ' ')

test('[property] an example is a number that somebody types, not one that was converted', () => {
  const ids = ['lineLength', 'lowestAmbient', 'receiverVolume', 'nameplateCharge', 'nameplateSubcooling'] as const
  expect(ids.map((id) => shown(id))).toEqual(['12 m', '−20 °C', '5000 cm³', '2800 g', '6 K'])
  expect(ids.map((id) => shown(id, INCH_POUND))).toEqual(['40 ft', '0 °F', '300 in³', '6 lb 4 oz', '10 °F'])
  expect(shown('nameplateCharge', { ...METRIC, mass: 'kg' })).toBe('2.835 kg')
})

test.each(FIGURE_IDS)('[property] the example of %s can be typed in either system, and is about as much', (id) => {
  const kind = figureKind(id)
  const [inches, metric] = [INCH_POUND, METRIC].map((units) => {
    const read = understand(exampleInUnits(kind, units), kind, units)
    if (!read.ok) throw new Error(JSON.stringify(read.error))
    return read.value.quantity.si
  }) as [number, number]
  expect(Math.abs(metric / inches - 1)).toBeLessThan(0.15)
})

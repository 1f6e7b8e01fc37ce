import { readFileSync } from 'node:fs'
import { INCH_POUND, kelvin, METRIC } from '@chargewright/quantity'
import { findRefrigerant, saturationAtTemperature } from '@chargewright/refrigerant'
import { describe, expect, test } from 'vitest'
import { type WeighInFlags, weighIn, weighInByFlags } from './weigh-in.ts'
import { weighInJson } from './weigh-in-json.ts'
import { weighInText } from './weigh-in-text.ts'

const OZ = 0.45359237 / 16
const IN3 = 0.0254 ** 3

function found(answer: ReturnType<typeof weighIn>) {
  if (!answer.ok) throw new Error(JSON.stringify(answer.error))
  return answer.value
}
const visit = (name: string) => found(weighIn(JSON.parse(readFileSync(`examples/${name}.json`, 'utf8'))))

const FLAGS = {
  refrigerant: 'R-410A',
  meteringDevice: 'thermostatic',
  nameplateCharge: '6 lb 4 oz',
  lineLength: '45 ft',
  includedLineLength: '15 ft',
  lineChargePerLength: '0.6 oz/ft',
  oldDrierVolume: '8 in³',
  newDrierVolume: '16 in³',
}

test('[property] flags give what the visit with the same facts gives', () => {
  expect(found(weighInByFlags(FLAGS)).charge.quantity).toEqual(visit('line-set-weigh-in').charge.quantity)
})

// COMPUTED by hand: 100 oz on the nameplate and 30 ft at 0.6 oz/ft are 118 oz.
test('[oracle] the nameplate and the lines beyond the included length, by hand', () => {
  const { oldDrierVolume, newDrierVolume, ...withoutDrier } = FLAGS
  const answer = found(weighInByFlags(withoutDrier))
  expect(answer.charge.quantity.si / OZ).toBeCloseTo(118, 9)
  expect(weighInText(answer, INCH_POUND, 80)).toMatch(/^weigh in 7 lb 6 oz /)
})

const fahrenheit = (t: number) => (t + 459.67) / 1.8

/** Densities of liquid and of the vapour over it, kg/m³. */
function densities(name: string, temperature_K: number) {
  const refrigerant = findRefrigerant(name)
  const at = refrigerant.ok ? saturationAtTemperature(refrigerant.value, kelvin(temperature_K)) : refrigerant
  if (!at.ok) throw new Error(name)
  return { liquid: at.value.bubble.density_kg_m3, vapour: at.value.dew.density_kg_m3 }
}

// COMPUTED by hand from the densities: a tenth of 90 in³ as liquid, nine tenths as vapour.
test('[oracle] accessories hold what their volume and share of liquid say, and sentence and tolerance follow', () => {
  const { oldDrierVolume, newDrierVolume, ...plain } = FLAGS
  const oz = (...accessory: string[]) => found(weighInByFlags({ ...plain, accessory })).charge.quantity.si / OZ - 118
  const { liquid, vapour } = densities('R-410A', fahrenheit(100))
  expect(oz('accumulator: 90 in³, 10 %')).toBeCloseTo(((9 * liquid + 81 * vapour) * IN3) / OZ, 6)
  expect(oz('muffler: 90 in³, 0 %')).toBeCloseTo((90 * vapour * IN3) / OZ, 6)
  expect(oz('muffler: 90 in³, 0 %', 'accumulator: 90 in³, 10 %')).toBeCloseTo(
    oz('accumulator: 90 in³, 10 %') + oz('muffler: 90 in³, 0 %'),
    9,
  )
  const answer = found(weighInByFlags({ ...plain, accessory: ['accumulator: 90 in³, 10 %'] }))
  expect(answer.toGoIn?.si).toBe(answer.charge.quantity.si)
  expect(weighInText(answer, INCH_POUND, 80)).toContain('Weigh in 7 lb 15.7 oz')
})

describe('what it is measured out with', () => {
  const SMALL = { refrigerant: 'R-134a', meteringDevice: 'capillary', nameplateCharge: '12 oz' }
  const measured = (flags: object) => found(weighInByFlags({ ...SMALL, ...flags })).measured!

  test('[property] the scale is shown with its uncertainty, and a coarse one is called that', () => {
    expect(weighInText(found(weighInByFlags(SMALL)), INCH_POUND, 80)).toMatch(/12\.\d+ ± 0\.\d+ oz by a scale/)
    expect(measured({ scaleStep: '1 g' }).byScale.quantity.u).toBeLessThan(measured({}).byScale.quantity.u!)
    const coarse = found(weighInByFlags({ ...SMALL, scaleStep: '0.5 oz' }))
    expect(weighInText(coarse, INCH_POUND, 80)).toContain('too coarse')
    expect(weighInText(visit('line-set-weigh-in'), METRIC, 80)).toContain('fine enough')
  })

  // COMPUTED by hand from the densities.
  test('[oracle] a charging cylinder falls by the volume of liquid less the vapour that takes its place', () => {
    const { fall, graduation } = measured({ cylinderTemperature: '85 degF', cylinderScale: '70 degF' })
    const { liquid, vapour } = densities('R-134a', fahrenheit(85))
    const expected_m3 = (12 * OZ) / (liquid - vapour)
    expect(fall!.quantity.si).toBeCloseTo(expected_m3, 9)
    expect(graduation!.quantity.si).toBeCloseTo(expected_m3 * densities('R-134a', fahrenheit(70)).liquid, 6)
  })

  test('[property] a hose is filled before the scale is set to zero, and what it holds is told in both forms', () => {
    const answer = found(weighInByFlags({ ...SMALL, hose: '60 in, 0.2 in' }))
    const held = Math.PI * 0.1 ** 2 * 60 * IN3 * densities('R-134a', fahrenheit(70)).liquid
    expect(answer.measured!.inHose!.quantity.si).toBeCloseTo(held, 9)
    expect(weighInText(answer, INCH_POUND, 200)).toContain('Fill the hose before the scale is set to zero')
    expect(weighInJson(answer, METRIC)).toMatchObject({ weighing: { in_hose_kg: expect.any(Number) } })
  })

  test.each<[WeighInFlags, string]>([
    [{ accessory: ['accumulator'] }, 'accessory'],
    [{ accessory: ['accumulator: 90, 10 %'] }, 'accessory, volume'],
    [{ accessory: ['accumulator: 90 in³, much'] }, 'accessory, share of liquid'],
    [{ accessory: ['accumulator: 90 in³, 110 %'] }, 'accumulator, share of liquid'],
    [{ hose: '60 in' }, 'hose'],
    [{ hose: '60 in, 4 in' }, 'hose, inside diameter'],
    [{ scaleStep: '1' }, 'scale-step'],
    [{ scaleStep: '-1 g' }, 'scale-step'],
    [{ cylinderScale: '70 degF' }, 'cylinder-temperature'],
    [{ cylinderTemperature: '300 degF' }, 'temperature'],
  ])('[limit] %j is a problem of %s', (flags, field) => {
    expect(weighInByFlags({ ...SMALL, ...flags })).toMatchObject({ ok: false, error: [{ field }] })
  })
})

test('[property] one that still holds a charge is emptied in the sequence, an empty one is not', () => {
  expect(visit('line-set-weigh-in').procedure.map(({ id }) => id)).not.toContain('empty')
  const charged = visit('orifice-add')
  expect(charged.procedure.map(({ id }) => id)).toContain('empty')
  expect(weighInText(charged, METRIC, 80)).toContain('This is for when it is empty')
})

test('[property] waits, and stops with their times, are told', () => {
  const answer = visit('capillary-weigh-in')
  expect(weighInText(answer, INCH_POUND, 80)).toMatch(/stop if after 1 min: The low-side pressure has not risen/)
  const { procedure } = weighInJson(answer, METRIC) as { procedure: readonly object[] }
  expect(procedure).toContainEqual(expect.objectContaining({ id: 'equalise', wait_s: 600 }))
  expect(procedure).toContainEqual(
    expect.objectContaining({ id: 'open', stops: [expect.objectContaining({ after_s: 60 })] }),
  )
})

test.each([
  ['capillary-weighed-in', 'hold'],
  ['capillary-lost-charge', 'not the charge'],
])('[property] %s asks for no weighing: %s', (name, word) => {
  const answer = visit(name)
  expect(answer.procedure).toEqual([])
  expect(weighInText(answer, INCH_POUND, 80).split(/ {2}/)[0]).toBe(word)
})

test('[limit] what is missing or cannot be read is told, a visit entry is left out and named', () => {
  expect(weighInByFlags({})).toMatchObject({ error: [{ kind: 'missing', field: 'refrigerant' }] })
  const { nameplateCharge, ...without } = FLAGS
  expect(weighInByFlags(without)).toMatchObject({ error: [{ kind: 'missing', field: 'Nameplate charge' }] })
  expect(weighInByFlags({ ...FLAGS, lineLength: '45' })).toMatchObject({ error: [{ kind: 'unreadable' }] })
  expect(weighInByFlags({ ...FLAGS, refrigerant: 'R-410' })).toMatchObject({
    error: [{ kind: 'unknown', accepted: expect.stringContaining('R-410A') }],
  })
})

test.each([
  [{ refrigerant: 'R-410A', nameplateCharge: '6 lb' }, '--metering-device'],
  [{ refrigerant: 'R-410A', meteringDevice: 'capillary' }, '--nameplate-charge'],
  [{ nameplateCharge: '6 lb', meteringDevice: 'capillary' }, '--refrigerant'],
])('[limit] what is missing of %o is asked for by its flag', (flags, accepted) => {
  expect(weighInByFlags(flags)).toMatchObject({ ok: false, error: [{ kind: 'missing', accepted }] })
})

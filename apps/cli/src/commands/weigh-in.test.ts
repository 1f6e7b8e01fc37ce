import { readFileSync } from 'node:fs'
import { INCH_POUND, METRIC } from '@chargewright/quantity'
import { expect, test } from 'vitest'
import { weighIn, weighInByFlags } from './weigh-in.ts'
import { weighInJson } from './weigh-in-json.ts'
import { weighInText } from './weigh-in-text.ts'

const OZ = 0.45359237 / 16

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

test('[property] an empty system begins with the cylinder, one that still holds a charge with emptying it', () => {
  expect(visit('line-set-weigh-in').procedure[0]?.id).toBe('right-refrigerant')
  const charged = visit('orifice-add')
  expect(charged.procedure[0]?.id).toBe('empty')
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

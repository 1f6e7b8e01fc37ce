import { quantity } from '@chargewright/quantity'
import { fold, type VisitFile } from '@chargewright/visit'
import { expect, test } from 'vitest'
import orifice from '../../../examples/orifice-add.json'
import { assess, doubtStep } from './index.ts'

const dose = assess(fold(orifice as VisitFile)).finding.dose!
const doubt = (share: number) => doubtStep(quantity('mass', share * dose.mass.si), dose)

test('[property] about the mass that was asked for, or less, is taken as it is', () => {
  for (const share of [0.1, 1, 1.2]) expect(doubt(share)).toBeUndefined()
})

test('[property] twice as much is questioned, with what was asked for', () => {
  expect(doubt(2)?.values).toEqual([dose.mass])
})

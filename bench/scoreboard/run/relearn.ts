import {
  type CalibratedDevice,
  type DeviceCalibration,
  familyOf,
  recalibrate,
  type SoundVisit,
} from '../../../packages/diagnosis/src/index.ts'
import type { DeviceKind } from '../../population/case.ts'
import { drawCases } from '../../population/draw-cases.ts'
import type { Family } from '../../population/family.ts'
import { nameplateOf } from '../judges/nameplate.ts'
import type { Grounds } from '../judges/our-diagnosis.ts'
import { answer } from './answer.ts'

/** Learn again, for one device, from so many sound visits to systems of the seen half. */
export interface RelearnJob {
  readonly kind: DeviceKind
  readonly visits: number
  readonly seed: number
  readonly family?: Family
  readonly grounds: Grounds
}

export type Relearnt = readonly [CalibratedDevice, DeviceCalibration]

answer(({ kind, visits, seed, family, grounds }: RelearnJob): Relearnt => {
  const sound: SoundVisit[] = []
  for (const { plate, readings, truth } of drawCases({
    kind,
    half: 'seen',
    count: Infinity,
    seed,
    ...(family ? { family } : {}),
  })) {
    if (sound.length === visits) break
    const twins = truth.troubles.length === 0 ? familyOf(nameplateOf(plate), grounds.habits) : undefined
    if (twins?.ok) sound.push({ family: twins.value, sets: [{ readings, added_kg: 0 }] })
  }
  const learnt = recalibrate(grounds.calibration, sound, `${grounds.calibration.version}, learnt again`)
  if (!learnt.ok) throw new Error(`the calibration shipped was made for another twin`)
  return [kind, learnt.value.devices[kind]]
})

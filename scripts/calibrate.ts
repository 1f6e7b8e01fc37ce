/**
 * Learns the shipped calibration from simulated systems of another model family than the twin's: the seen half of the
 * population, never the half that is scored.
 *
 *   npm run calibrate                     all devices
 *   npm run calibrate -- capillary        one of them; the others stay
 */
import { readFileSync, writeFileSync } from 'node:fs'
import type { Case, DeviceKind } from '../bench/population/case.ts'
import { drawCases } from '../bench/population/draw-cases.ts'
import { nameplateOf } from '../bench/scoreboard/judges/nameplate.ts'
import { TWIN_VERSION } from '../packages/cycle/src/index.ts'
import {
  type Calibration,
  type Cause,
  type DeviceCalibration,
  diagnose,
  type Family,
  familyOf,
  OBSERVABLE_NAMES,
  recalibrate,
} from '../packages/diagnosis/src/index.ts'

const FILE = new URL('../packages/diagnosis/src/calibration/shipped.json', import.meta.url)
const KINDS: readonly DeviceKind[] = ['fixed-orifice', 'capillary', 'thermostatic']
const CASES = 500
const SEED = 11
const GUESSED = {
  evaporating: 0.6,
  superheat: 1.2,
  condensing: 0.6,
  subcooling: 0.7,
  discharge: 3,
  condenserAirRise: 1,
  supplyAirDrop: 1,
  compressorPower: 0.04,
  power: 0.04,
  drierDrop: 0.5,
  standstill: 0.5,
}
/** What is chosen by the log loss of the seen half rather than learnt: flat around these. */
const SIGNATURE = 0.35
const FLATTENING = 1
/** The guess counts for one visit only. */
const WEIGHT_OF_GUESS = 1
const RESPONSE_ROUNDS = 3

const shipped: Calibration = JSON.parse(readFileSync(FILE, 'utf8'))
const asked = process.argv.slice(2)
const kinds = KINDS.filter((kind) => asked.length === 0 || asked.includes(kind))
const learnt = Object.fromEntries(kinds.map((kind) => [kind, calibrationOf(kind)]))
const latest: Calibration = JSON.parse(readFileSync(FILE, 'utf8'))
write({
  version: `twin ${TWIN_VERSION}, 1`,
  twin: TWIN_VERSION,
  source: `simulated systems of another model family, seen half, ${CASES} cases per device, seed ${SEED}`,
  devices: { ...latest.devices, ...learnt },
})

interface Known {
  readonly drawn: Case
  readonly family: Family
}

function calibrationOf(kind: DeviceKind): DeviceCalibration {
  const known: Known[] = []
  for (const drawn of drawCases({ kind, half: 'seen', count: CASES, seed: SEED })) {
    if (drawn.truth.troubles.length > 1) continue
    const family = familyOf(nameplateOf(drawn.plate))
    if (family.ok) known.push({ drawn, family: family.value })
  }
  const all = (value: number) => Object.fromEntries(OBSERVABLE_NAMES.map((name) => [name, value]))
  let device: DeviceCalibration = {
    offset: all(0) as DeviceCalibration['offset'],
    discrepancy: GUESSED,
    spread: {},
    chargeResponse: { short: 1.2, over: 1.2 },
    signature: SIGNATURE,
    flattening: FLATTENING,
    intervalWidth: 1,
    learntFrom: 0,
  }
  const sound = known.filter(({ drawn }) => drawn.truth.troubles.length === 0)
  const visits = sound.map(({ drawn, family }) => ({ family, sets: setsOf(drawn) }))
  const found = recalibrate(withDevice(kind, device), visits, 'learning', WEIGHT_OF_GUESS)
  if (!found.ok) throw new Error(JSON.stringify(found.error))
  device = found.value.devices[kind]
  for (let round = 0; round < RESPONSE_ROUNDS; round++) {
    const { short, over } = device.chargeResponse
    device = {
      ...device,
      chargeResponse: {
        short: short * median(answers(kind, known, device, 'short-of-charge').map(({ ratio }) => ratio)),
        over: over * median(answers(kind, known, device, 'overcharged').map(({ ratio }) => ratio)),
      },
    }
  }
  const far = [...answers(kind, known, device, 'short-of-charge'), ...answers(kind, known, device, 'overcharged')].map(
    ({ off }) => Math.abs(off),
  )
  return { ...device, intervalWidth: quantile(far, 0.9) / 1.645 }
}

function setsOf({ readings }: Case) {
  return [{ readings, added_kg: 0 }]
}

function withDevice(kind: DeviceKind, device: DeviceCalibration): Calibration {
  return { ...shipped, twin: TWIN_VERSION, devices: { ...shipped.devices, [kind]: device } }
}

/** What the charge is estimated at where this cause is known: over the truth, and off it in standard deviations. */
function answers(kind: DeviceKind, known: readonly Known[], device: DeviceCalibration, cause: Cause) {
  return known.flatMap(({ drawn, family }) => {
    if (drawn.truth.troubles[0]?.kind !== cause) return []
    const said = diagnose(family, setsOf(drawn), { calibration: withDevice(kind, device) })
    const single = said.ok ? said.value.singles.find((s) => s.cause === cause) : undefined
    if (!single) return []
    const { mean, sd } = single.charge
    return [{ ratio: mean / drawn.truth.chargeError, off: (mean - drawn.truth.chargeError) / sd }]
  })
}

function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b)
  return sorted[Math.min(Math.floor(share * sorted.length), sorted.length - 1)]!
}

function median(values: readonly number[]): number {
  return quantile(values, 0.5)
}

/** Four digits say more than a calibration knows. */
function write(calibration: Calibration): void {
  const rounded = (_: string, value: unknown) => (typeof value === 'number' ? Number(value.toPrecision(4)) : value)
  writeFileSync(FILE, `${JSON.stringify(calibration, rounded, 2)}\n`)
}

import type { WeighingGear } from '@chargewright/charging'
import { fail, ok, type Problem, parse, type Quantity, quantity, type Result } from '@chargewright/quantity'
import { missing, unreadable } from '../failure.ts'
import { ifGiven, readFlags } from '../read-flags.ts'
import { PLAIN, typedReading } from '../typed-reading.ts'

/** With what a charge is measured out, as typed. */
export interface GearFlags {
  readonly scaleStep?: string
  /** `60 in, 0.2 in`: its length and its diameter inside. */
  readonly hose?: string
  readonly cylinderTemperature?: string
  readonly cylinderScale?: string
}

export const GEAR_FLAGS = ['scaleStep', 'hose', 'cylinderTemperature', 'cylinderScale'] as const

/** 70 °F, give or take ten: common practice. */
const USUAL_CYLINDER = quantity('temperature', (70 + 459.67) / 1.8, 10 / 1.8 / 2)

export function typedGear(flags: GearFlags): Result<WeighingGear, readonly Problem[]> {
  const read = readFlags({
    scaleStep: ifGiven(flags.scaleStep, (text) => parse(text, 'mass', { field: 'scale-step' })),
    hose: ifGiven(flags.hose, typedHose),
    cylinder: ifGiven(flags.cylinderTemperature, (text) =>
      typedReading(text, 'temperature', 'cylinder-temperature', PLAIN.thermometer),
    ),
    graduatedFor: ifGiven(flags.cylinderScale, (text) => parse(text, 'temperature', { field: 'cylinder-scale' })),
  })
  if (!read.ok) return read
  const { hose, ...rest } = read.value
  if (rest.graduatedFor && !rest.cylinder) {
    return fail([missing('cylinder-temperature', '--cylinder-temperature, for --cylinder-scale was given')])
  }
  return ok({ ...rest, ...(hose ? { hose: { ...hose, at: rest.cylinder ?? USUAL_CYLINDER } } : {}) })
}

function typedHose(
  text: string,
): Result<{ readonly length: Quantity<'length'>; readonly inside: Quantity<'length'> }, Problem> {
  const [, long, wide] = /^(.+),([^,]+)$/s.exec(text) ?? []
  if (long === undefined || wide === undefined) {
    return fail(unreadable('hose', text, 'length and diameter inside: "60 in, 0.2 in"'))
  }
  const length = parse(long, 'length', { field: 'hose, length' })
  if (!length.ok) return length
  const inside = parse(wide, 'length', { field: 'hose, diameter inside' })
  return inside.ok ? ok({ length: length.value, inside: inside.value }) : inside
}

import { sizedSystem } from '@chargewright/charging'
import {
  type Conditions,
  type Solution,
  type System,
  solve,
  soundHealth,
  type WhatIfPoint,
  whatIf,
} from '@chargewright/cycle'
import { fail, ok, outOfRange, type Problem, parse, type Result } from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'
import { unreadable } from '../failure.ts'
import { typedShare } from '../typed-flag.ts'
import { type AirFlags, siteAir } from './site-air.ts'
import { readSystemFile } from './system-file.ts'
import { WHAT_IF_AXES, type WhatIfAxis, whatIfAxis } from './what-if-axis.ts'

export interface TwinFlags extends AirFlags {
  /** Share of the nameplate charge, or a mass. */
  readonly charge?: string
  readonly whatIf?: string
}

/** A sized system and how it runs. */
export interface TwinAnswer {
  readonly visit: Visit
  readonly system: System
  readonly conditions: Conditions
  readonly charge_kg: number
  readonly solution: Solution
  readonly whatIf?: { readonly axis: WhatIfAxis; readonly points: readonly WhatIfPoint[] }
}

/**
 * The model of a sound system at a charge and in weather, and its states along one axis.
 *
 * @param data the facts of a system or a visit, as its JSON was parsed
 */
export function twin(data: unknown, flags: TwinFlags): Result<TwinAnswer, readonly Problem[]> {
  const visit = readSystemFile(data)
  if (!visit.ok) return visit
  const sized = sizedSystem(visit.value.system)
  if (!sized.ok) return sized
  const system = sized.value
  const at = siteAir(visit.value, system, flags)
  if (!at.ok) return at
  const charge = typedCharge(flags.charge ?? '100 %', system)
  if (!charge.ok) return fail([charge.error])
  const health = { ...soundHealth(system), charge_kg: charge.value }
  const answer = {
    visit: visit.value,
    system,
    conditions: at.value,
    charge_kg: charge.value,
    solution: solve(system, at.value, health),
  }
  if (flags.whatIf === undefined) return ok(answer)
  if (!isAxis(flags.whatIf)) {
    return fail([unreadable('what-if', flags.whatIf, Object.keys(WHAT_IF_AXES).join(', '))])
  }
  const { varies, values } = whatIfAxis(flags.whatIf)
  const points = whatIf(system, at.value, health, varies, values(at.value))
  return points.ok ? ok({ ...answer, whatIf: { axis: flags.whatIf, points: points.value } }) : fail([points.error])
}

const isAxis = (name: string): name is WhatIfAxis => Object.hasOwn(WHAT_IF_AXES, name)

/** Shares of the nameplate charge at which a system still runs, with room to spare. */
const [LEAST, MOST] = [0.2, 2.5]

function typedCharge(text: string, { rated }: System): Result<number, Problem> {
  const share = typedShare(text, 'charge')
  const mass = share.ok ? ok(share.value * rated.charge_kg) : massOf(text)
  if (!mass.ok) return mass
  const problem = outOfRange('charge', mass.value, LEAST * rated.charge_kg, MOST * rated.charge_kg, 'kg')
  return problem ? fail(problem) : mass
}

function massOf(text: string): Result<number, Problem> {
  const mass = parse(text, 'mass', { field: 'charge' })
  if (mass.ok) return ok(mass.value.si)
  return mass.error.kind === 'unreadable'
    ? fail({ ...mass.error, accepted: `${mass.error.accepted}, or a share of the nameplate charge: 90 %` })
    : mass
}

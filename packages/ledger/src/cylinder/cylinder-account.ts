import { add, type Problem, quantity, type Result, subtract } from '@chargewright/quantity'
import type { Cylinder, Mass } from './cylinder.ts'
import { designation } from './designation.ts'
import { type FillLimit, fillLimit } from './fill-limit.ts'
import type { Movement } from './movement.ts'

/**
 * Where the refrigerant of one cylinder came from and went. It always closes:
 * opening + fromSystems + fromElsewhere − toSystems − toElsewhere + unexplained = content.
 */
export interface CylinderAccount {
  readonly cylinder: Cylinder
  readonly opening: Mass
  readonly fromSystems: Mass
  readonly fromElsewhere: Mass
  readonly toSystems: Mass
  readonly toElsewhere: Mass
  /** Gained or, negative, lost between one weighing and the next without an entry. */
  readonly unexplained: Mass
  readonly content: Mass
  readonly gross: Mass
  readonly fillLimit: Result<FillLimit, Problem>
  /** Designations of all that ever went in, its own first. */
  readonly refrigerants: readonly string[]
  /** Systems from which it took refrigerant. */
  readonly recoveredFrom: readonly string[]
}

/** One movement as the account took it up. */
export interface Step {
  readonly movement: Movement
  readonly before: CylinderAccount
  readonly after: CylinderAccount
  /** In the direction of the entry; negative when the scale says it went the other way. */
  readonly moved: Mass
  /** Change of weight since the last entry. */
  readonly between?: Mass
}

const NOTHING: Mass = quantity('mass', 0)

export function openAccount(cylinder: Cylinder): CylinderAccount {
  const content = subtract(cylinder.firstWeighing, cylinder.tare)
  return {
    cylinder,
    opening: content,
    fromSystems: NOTHING,
    fromElsewhere: NOTHING,
    toSystems: NOTHING,
    toElsewhere: NOTHING,
    unexplained: NOTHING,
    content,
    gross: cylinder.firstWeighing,
    fillLimit: fillLimit(cylinder.waterCapacity, cylinder.refrigerant),
    refrigerants: [designation(cylinder.refrigerant)],
    recoveredFrom: [],
  }
}

/** Takes up a movement. The scale is believed over the entry: what it says between two entries is written as unexplained. */
export function enter(before: CylinderAccount, movement: Movement): Step {
  const { weighing, direction, counterpart } = movement
  const outwards = direction === 'from-cylinder'
  const towards = counterpart.kind === 'system' ? 'Systems' : 'Elsewhere'
  const weighed = weighing.kind === 'before-and-after'
  const moved = weighed
    ? subtract(outwards ? weighing.before : weighing.after, outwards ? weighing.after : weighing.before)
    : weighing.mass
  const between = weighed ? subtract(weighing.before, before.gross) : undefined
  const gross = weighed ? weighing.after : outwards ? subtract(before.gross, moved) : add(before.gross, moved)
  const side = `${outwards ? 'to' : 'from'}${towards}` as const
  const after: CylinderAccount = {
    ...before,
    [side]: add(before[side], moved),
    unexplained: between ? add(before.unexplained, between) : before.unexplained,
    gross,
    content: subtract(gross, before.cylinder.tare),
    ...(outwards ? {} : received(before, movement)),
  }
  return { movement, before, after, moved, ...(between ? { between } : {}) }
}

function received({ refrigerants, recoveredFrom }: CylinderAccount, { refrigerant, counterpart }: Movement) {
  return {
    refrigerants: withOne(refrigerants, designation(refrigerant)),
    recoveredFrom: counterpart.kind === 'system' ? withOne(recoveredFrom, counterpart.system) : recoveredFrom,
  }
}

const withOne = (names: readonly string[], name: string) => (names.includes(name) ? names : [...names, name])

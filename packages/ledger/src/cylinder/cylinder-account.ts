import { add, type Problem, quantity, type Result, subtract } from '@chargewright/quantity'
import type { Cylinder, Mass } from './cylinder.ts'
import { designation } from './designation.ts'
import { type FillLimit, fillLimit } from './fill-limit.ts'
import type { Movement, Weighing } from './movement.ts'

/**
 * Where the refrigerant of one cylinder came from and went. It always closes:
 * opening + fromSystems + fromElsewhere − toSystems − toElsewhere − hoses + unexplained = content.
 */
export interface CylinderAccount {
  readonly cylinder: Cylinder
  readonly opening: Mass
  readonly fromSystems: Mass
  readonly fromElsewhere: Mass
  readonly toSystems: Mass
  readonly toElsewhere: Mass
  /** Kept by the hoses on the way in or out. */
  readonly hoses: Mass
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
  /** Into or out of the other side, in the direction of the entry; negative when the scale says it went the other way. */
  readonly moved: Mass
  /** Change of weight since the last entry. */
  readonly between?: Mass
}

type GrossWeights = Extract<Weighing, { readonly kind: 'before-and-after' }>

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
    hoses: NOTHING,
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
  const weighed = weighing.kind === 'before-and-after' ? weighing : undefined
  const hoses = weighed?.hoses ?? NOTHING
  const moved = weighing.kind === 'difference' ? weighing.mass : otherSide(weighing, outwards)
  const between = weighed && subtract(weighed.before, before.gross)
  const gross = weighed?.after ?? (outwards ? subtract(before.gross, moved) : add(before.gross, moved))
  const side = `${outwards ? 'to' : 'from'}${counterpart.kind === 'system' ? 'Systems' : 'Elsewhere'}` as const
  const after: CylinderAccount = {
    ...before,
    [side]: add(before[side], moved),
    hoses: add(before.hoses, hoses),
    unexplained: between ? add(before.unexplained, between) : before.unexplained,
    gross,
    content: subtract(gross, before.cylinder.tare),
    ...(outwards ? {} : received(before, movement)),
  }
  return { movement, before, after, moved, ...(between ? { between } : {}) }
}

/** What the other side got, the hoses' part kept back; or gave, the hoses' part on top. */
function otherSide({ before, after, hoses = NOTHING }: GrossWeights, outwards: boolean): Mass {
  return outwards ? subtract(subtract(before, after), hoses) : add(subtract(after, before), hoses)
}

function received({ refrigerants, recoveredFrom }: CylinderAccount, { refrigerant, counterpart }: Movement) {
  return {
    refrigerants: withOne(refrigerants, designation(refrigerant)),
    recoveredFrom: counterpart.kind === 'system' ? withOne(recoveredFrom, counterpart.system) : recoveredFrom,
  }
}

const withOne = (names: readonly string[], name: string) => (names.includes(name) ? names : [...names, name])

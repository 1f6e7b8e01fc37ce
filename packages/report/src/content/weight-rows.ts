import { designation } from '@chargewright/ledger'
import { inQuadrature, type Quantity, quantity, say, type Tell, type UnitPreference } from '@chargewright/quantity'
import type { Move, Visit } from '@chargewright/visit'
import { COMPRESSOR, PHASES, PORTS } from './code-in-words.ts'
import { type QuantityCell, quantityCell } from './quantity-cell.ts'

/** One weighed move of refrigerant. */
export interface MoveRow {
  readonly at: string
  readonly direction: 'in' | 'out'
  readonly typed: string
  readonly quantity: QuantityCell
  readonly how: string
  readonly refrigerant: string
  readonly cylinder: string
  /** Net in the system since the start of the visit. */
  readonly net: QuantityCell
}

/** What one cylinder gave and took in this visit. */
export interface CylinderRow {
  readonly cylinder: string
  readonly refrigerant: string
  readonly gave: QuantityCell
  readonly took: QuantityCell
}

const NOT_NAMED = say`not named`

/**
 * One that was typed otherwise goes by its designation, so that it is the same all through the record; one that was not
 * typed with the move is that of the system, and says so.
 */
function nameOf({ refrigerant }: Move['fact'], { facts }: Visit['system'], tell: Tell): string {
  if (refrigerant !== undefined) return designation(refrigerant)
  return facts.refrigerant === undefined ? tell(NOT_NAMED) : tell(say`${designation(facts.refrigerant)}, as the system`)
}

export const moveRows = ({ moves, system }: Visit, preference: UnitPreference, tell: Tell): readonly MoveRow[] =>
  moves.map(({ at, fact, mass }, i) => ({
    at,
    direction: fact.direction === 'into-system' ? 'in' : 'out',
    typed: fact.mass,
    quantity: quantityCell(mass, preference),
    how: tell(say`${PHASES[fact.phase]}, ${PORTS[fact.port]}, ${COMPRESSOR[fact.compressor]}`),
    refrigerant: nameOf(fact, system, tell),
    cylinder: fact.cylinder ?? tell(NOT_NAMED),
    net: quantityCell(net(moves.slice(0, i + 1)), preference),
  }))

export function cylinderRows({ moves, system }: Visit, preference: UnitPreference, tell: Tell): readonly CylinderRow[] {
  const byCylinder = new Map<string, Move[]>()
  for (const move of moves) {
    const key = JSON.stringify([move.fact.cylinder, move.fact.refrigerant && designation(move.fact.refrigerant)])
    byCylinder.set(key, [...(byCylinder.get(key) ?? []), move])
  }
  return [...byCylinder.values()].map((own) => {
    const { fact } = own[0]!
    const moved = (direction: Move['fact']['direction']) =>
      quantityCell(sum(own.filter(({ fact }) => fact.direction === direction)), preference)
    return {
      cylinder: fact.cylinder ?? tell(NOT_NAMED),
      refrigerant: nameOf(fact, system, tell),
      gave: moved('into-system'),
      took: moved('out-of-system'),
    }
  })
}

const sum = (moves: readonly Move[]): Quantity<'mass'> =>
  quantity(
    'mass',
    moves.reduce((total, { mass }) => total + mass.si, 0),
    inQuadrature(...moves.map(({ mass }) => mass.u)),
  )

const net = (moves: readonly Move[]): Quantity<'mass'> =>
  quantity(
    'mass',
    moves.reduce((total, { fact, mass }) => total + (fact.direction === 'into-system' ? mass.si : -mass.si), 0),
    inQuadrature(...moves.map(({ mass }) => mass.u)),
  )

import { COVERAGE, quantity, type Statement, say, subtract } from '@chargewright/quantity'
import { type BookFinding, type BookFindingKind, bookFinding } from './book-finding.ts'
import type { Mass } from './cylinder.ts'
import type { CylinderAccount, Step } from './cylinder-account.ts'
import { designation } from './designation.ts'

/** A difference of two weights that were typed alike, after the arithmetic of the machine. */
const ROUNDING_KG = 1e-6

/** What one movement has against it, the gravest first. */
export function judgeStep(step: Step): readonly BookFinding[] {
  const { movement, after } = step
  const find = (kind: BookFindingKind, sentence: Statement) =>
    bookFinding(kind, after.cylinder.id, movement.id, sentence)
  return [...(movement.direction === 'to-cylinder' ? filling(step, find) : giving(step, find)), ...weights(step, find)]
}

/** The cylinder as it came into the book. */
export function judgeOpening(account: CylinderAccount): readonly BookFinding[] {
  const find = (kind: BookFindingKind, sentence: Statement) =>
    bookFinding(kind, account.cylinder.id, undefined, sentence)
  return [...overfilled(account, find), ...belowTare(account, find)]
}

type Find = (kind: BookFindingKind, sentence: Statement) => BookFinding

function filling({ movement, before, after }: Step, find: Find): readonly BookFinding[] {
  const { id, holds, refillable } = after.cylinder
  const incoming = designation(movement.refrigerant)
  const findings: BookFinding[] = []
  if (before.refrigerants.some((name) => name !== incoming)) {
    const held = before.refrigerants.join(' and ')
    findings.push(find('mixed', say`${incoming} must not go into cylinder ${id}, which holds ${held}`))
  }
  if (holds === 'new' && movement.counterpart.kind === 'system') {
    findings.push(
      find('recovered-into-new', say`Cylinder ${id} holds new refrigerant: recover into a recovery cylinder`),
    )
  }
  if (!refillable) {
    findings.push(find('refilled-disposable', say`Cylinder ${id} was sold filled and must never be filled again`))
  }
  if (!after.fillLimit.ok) {
    const sentence = say`The fill limit of cylinder ${id} is not known: keep to the one stamped or stated for this gas`
    findings.push(find('fill-limit-unknown', sentence))
  }
  return [...findings, ...overfilled(after, find)]
}

function giving({ movement, before }: Step, find: Find): readonly BookFinding[] {
  const { id, holds } = before.cylinder
  const findings: BookFinding[] = []
  const outgoing = designation(movement.refrigerant)
  if (before.refrigerants.some((name) => name !== outgoing)) {
    const held = before.refrigerants.join(' and ')
    findings.push(find('mixed', say`${outgoing} cannot come out of cylinder ${id}, which holds ${held}`))
  }
  if (holds === 'recovered' && movement.counterpart.kind === 'system') {
    const { system } = movement.counterpart
    const others = before.recoveredFrom.filter((name) => name !== system)
    if (others.length > 0) {
      const sentence = say`Cylinder ${id} holds refrigerant recovered from ${others.join(', ')}: into ${system} only if both have one owner, else it must be reclaimed first`
      findings.push(find('recovered-to-other-system', sentence))
    }
  }
  return findings
}

function weights({ movement, after, moved, between }: Step, find: Find): readonly BookFinding[] {
  const findings: BookFinding[] = []
  const { id } = after.cylinder
  if (between && clearly(between)) {
    const [size, changed] = [sizeOf(between), between.si > 0 ? 'more' : 'less']
    findings.push(
      find('weight-changed-between', say`Cylinder ${id} weighs ${size} ${changed} than after its last entry`),
    )
  }
  if (moved.si < 0 && clearly(moved)) {
    const sentence = say`By the scale, ${sizeOf(moved)} went the other way than was entered`
    findings.push(find('wrong-direction', sentence))
  }
  const stated = movement.weighing.kind === 'before-and-after' ? movement.weighing.stated : undefined
  if (stated && clearly(subtract(moved, stated))) {
    const sentence = say`Cylinder ${id} says that ${moved} moved, the visit says ${stated}`
    findings.push(find('disagrees-with-visit', sentence))
  }
  return [...findings, ...belowTare(after, find)]
}

/** The doubt counts against filling: a cylinder that may be over its limit is taken to be over it. */
function overfilled({ cylinder, content, fillLimit }: CylinderAccount, find: Find): readonly BookFinding[] {
  if (!fillLimit.ok) return []
  const { mass } = fillLimit.value
  if (content.si + COVERAGE * (content.u ?? 0) <= mass.si + ROUNDING_KG) return []
  return [find('overfilled', say`Cylinder ${cylinder.id} holds ${content}; it may hold ${mass}`)]
}

function belowTare({ cylinder, content }: CylinderAccount, find: Find): readonly BookFinding[] {
  if (content.si >= 0 || !clearly(content)) return []
  return [find('below-tare', say`Cylinder ${cylinder.id} weighs ${sizeOf(content)} less than its stamped tare`)]
}

/** Beyond what the scales can be off, as a 95 % band. */
const clearly = (mass: Mass) => Math.abs(mass.si) > COVERAGE * (mass.u ?? 0) + ROUNDING_KG

const sizeOf = (mass: Mass) => quantity('mass', Math.abs(mass.si), mass.u)

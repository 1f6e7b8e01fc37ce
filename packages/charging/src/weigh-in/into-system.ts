import { add, evidence, type Measure, type Quantity, say, subtract } from '@chargewright/quantity'

type Mass = Quantity<'mass'>

/**
 * What went into the system, from what left the cylinder. A hose that was full when the scale was set to zero and
 * stays full takes nothing; one that was empty and stays full keeps its hold-up; one that was full and is drawn empty
 * into the system gives it on top.
 */
export function intoSystem(
  leftCylinder: Mass,
  holdUp: Mass,
  hose: { readonly fullAtZero: boolean; readonly drawnEmptyAtEnd: boolean },
): Measure<Mass> {
  const { fullAtZero, drawnEmptyAtEnd } = hose
  if (fullAtZero !== drawnEmptyAtEnd) {
    const statement = say`${leftCylinder} left the cylinder, and as much went into the system`
    return { quantity: leftCylinder, evidence: evidence(statement, 'balance of the hose') }
  }
  const mass = fullAtZero ? add(leftCylinder, holdUp) : subtract(leftCylinder, holdUp)
  const hoseDid = fullAtZero ? 'gave' : 'kept'
  const statement = say`${mass} went into the system: ${leftCylinder} left the cylinder, the hose ${hoseDid} ${holdUp}`
  return { quantity: mass, evidence: evidence(statement, 'balance of the hose') }
}

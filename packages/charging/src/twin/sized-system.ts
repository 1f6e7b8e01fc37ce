import {
  type CycleApplication,
  type System as CycleSystem,
  type Device,
  type Nameplate,
  propertiesOf,
  size,
} from '@chargewright/cycle'
import { fail, ok, outOfRange, type Problem, type Result } from '@chargewright/quantity'
import { findRefrigerant } from '@chargewright/refrigerant'
import { type Figure, type FigureId, figureKind, type System } from '@chargewright/visit'

/**
 * The model of a system, sized from the facts that a visit states of it: the ground of twin, charging chart and dose.
 *
 * @returns every fact that is still missing; or the one that cannot be used, or that contradicts the others
 */
export function sizedSystem(system: System): Result<CycleSystem, readonly Problem[]> {
  const plate = nameplateOf(system)
  if (!plate.ok) return plate
  const sized = size(plate.value)
  return sized.ok ? sized : fail([sized.error])
}

/** What a model is sized from, out of the facts that a visit states; else every fact that is missing or cannot be used. */
export function nameplateOf({ facts, figures }: System): Result<Nameplate, readonly Problem[]> {
  const { nominalCapacity, ratedPower, nameplateCharge, nameplateSubcooling, lineLength, boxSetPoint } = figures
  const { refrigerant: name, meteringDevice, application } = facts
  if (!name || !meteringDevice || !application || !nominalCapacity || !nameplateCharge) {
    return fail([
      ...absent('Refrigerant', name, 'the one on the nameplate'),
      ...absent('Metering device', meteringDevice, 'how the flow is metered'),
      ...absent('Application', application, 'what the system cools'),
      ...absent(figureKind('nominalCapacity').label, nominalCapacity, 'a capacity such as 3 ton'),
      ...absent(figureKind('nameplateCharge').label, nameplateCharge, 'a mass such as 6 lb 4 oz'),
    ])
  }
  const beyond = [
    ...outside('nominalCapacity', nominalCapacity, CAPACITY_W, 'W'),
    ...outside('ratedPower', ratedPower, POWER_W, 'W'),
    ...outside('nameplateCharge', nameplateCharge, CHARGE_KG, 'kg'),
    ...outside('nameplateSubcooling', nameplateSubcooling, SUBCOOLING_K, 'K'),
    ...outside('lineLength', lineLength, LINE_M, 'm'),
    ...outside('boxSetPoint', boxSetPoint, BOX_K, 'K'),
  ]
  if (beyond.length > 0) return fail(beyond)
  const refrigerant = findRefrigerant(name)
  if (!refrigerant.ok) return fail([refrigerant.error])
  const properties = propertiesOf(refrigerant.value)
  if (!properties.ok) return fail([properties.error])
  return ok({
    properties: properties.value,
    application: application satisfies CycleApplication,
    device: meteringDevice satisfies Device['kind'],
    capacity_W: nominalCapacity.quantity.si,
    charge_kg: nameplateCharge.quantity.si,
    ...(ratedPower
      ? { efficiency: { kind: 'cop' as const, cop: nominalCapacity.quantity.si / ratedPower.quantity.si } }
      : {}),
    ...(nameplateSubcooling ? { subcooling_K: nameplateSubcooling.quantity.si } : {}),
    ...(lineLength ? { lineLength_m: lineLength.quantity.si } : {}),
    ...(boxSetPoint ? { boxTemperature_K: boxSetPoint.quantity.si } : {}),
    ...(facts.receiver ? { receiver: {} } : {}),
    ...(facts.accumulator ? { accumulator: true } : {}),
  })
}

/** Beyond these no system of the covered applications is built: the model is not asked. Own choice. */
const CAPACITY_W = [30, 1e6] as const
const POWER_W = [10, 1e6] as const
const CHARGE_KG = [0.01, 1000] as const
const SUBCOOLING_K = [0, 30] as const
const LINE_M = [0, 300] as const
/** −40 °C to 15 °C. */
const BOX_K = [233.15, 288.15] as const

function outside(
  id: FigureId,
  figure: Figure | undefined,
  [min, max]: readonly [number, number],
  unit: string,
): readonly Problem[] {
  const problem = figure && outOfRange(figureKind(id).label, figure.quantity.si, min, max, unit)
  return problem ? [problem] : []
}

const absent = (field: string, value: unknown, accepted: string): readonly Problem[] =>
  value ? [] : [{ kind: 'missing', field, value: 'nothing', accepted }]

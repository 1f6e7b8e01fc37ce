import { quantity, say } from '@chargewright/quantity'
import { refrigerantFacts } from '@chargewright/refrigerant'
import type { Application } from '@chargewright/visit'
import type { Caution } from './assessment.ts'

/**
 * How much of a burning refrigerant a circuit may hold, by the standard for the kind of system, where its flammability
 * limit is on file. Both kinds are told where it is not known which this is.
 */
export function chargeLimitCautions(name: string, application: Application | undefined): readonly Caution[] {
  switch (application) {
    case 'comfort-cooling':
    case 'heat-pump-cooling':
      return airConditioner(name)
    case 'medium-temperature':
    case 'low-temperature':
      return appliance(name)
    case undefined:
      return [...airConditioner(name), ...appliance(name)]
  }
}

function airConditioner(name: string): readonly Caution[] {
  const facts = refrigerantFacts(name)
  const limits = facts.ok ? facts.value.chargeLimits : undefined
  if (!limits) return []
  const any = quantity('mass', limits.m1_kg)
  const special = quantity('mass', limits.m2_kg)
  const most = quantity('mass', limits.m3_kg)
  const statement = say`Air conditioner: up to ${any} of ${name} in a circuit whatever the room; above that the size of the room decides, above ${special} it takes special measures, above ${most} it belongs in no occupied space`
  return [{ id: 'room-charge-limit', statement, source: sourced('IEC 60335-2-40', limits.confirmed) }]
}

function appliance(name: string): readonly Caution[] {
  const facts = refrigerantFacts(name)
  const limits = facts.ok ? facts.value.applianceChargeLimits : undefined
  if (!limits) return []
  const household = quantity('mass', limits.household_kg)
  const commercial = quantity('mass', limits.commercial_kg)
  const statement = say`Refrigerating appliance: up to ${household} of ${name} in a circuit whatever the room; a commercial one up to ${commercial} where its marking says for how large a room, a household one no more. A system built on site goes by the size of its room`
  const standards = 'IEC 60335-2-89 for commercial appliances, IEC 60335-2-24 for household ones, ISO 5149 on site'
  return [{ id: 'appliance-charge-limit', statement, source: sourced(standards, limits.confirmed) }]
}

const sourced = (standards: string, isConfirmed: boolean) =>
  `${standards}, local code first${isConfirmed ? '' : ', unconfirmed: look it up'}`

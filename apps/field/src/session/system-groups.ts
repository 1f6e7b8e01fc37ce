import type { FactName } from '@chargewright/visit'

/** The facts of a system in the order in which one meets them: what it is, its nameplate, its lines, its site. */
export const SYSTEM_GROUPS: readonly { readonly title: string; readonly facts: readonly FactName[] }[] = [
  {
    title: 'What it is',
    facts: [
      'name',
      'refrigerant',
      'meteringDevice',
      'application',
      'nominalCapacity',
      'receiver',
      'sightGlass',
      'accumulator',
    ],
  },
  {
    title: 'Nameplate',
    facts: [
      'nameplateCharge',
      'ratedPower',
      'nameplateSubcooling',
      'valveSuperheatMin',
      'valveSuperheatMax',
      'ratedLoadCurrent',
      'makersChart',
      'compressorRating',
    ],
  },
  {
    title: 'Lines and parts',
    facts: [
      'lineLength',
      'includedLineLength',
      'liquidLineTube',
      'lineChargePerLength',
      'oldDrierVolume',
      'newDrierVolume',
      'receiverVolume',
      'accessories',
    ],
  },
  {
    title: 'Head-pressure control',
    facts: ['floodingCharge', 'condenserVolume', 'condenserDesignDifference', 'heldCondensing', 'lowestAmbient'],
  },
  { title: 'Site', facts: ['elevation', 'atmosphericPressure', 'boxSetPoint'] },
]

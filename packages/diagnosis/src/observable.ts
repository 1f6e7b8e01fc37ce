/** What readings are reduced to before they are judged: one figure each, small when its cause is small. */
export const OBSERVABLES = {
  evaporating: { unit: 'K', label: 'evaporating temperature', meaning: 'dew point at the suction pressure' },
  superheat: { unit: 'K', label: 'superheat', meaning: 'suction line above that dew point' },
  condensing: { unit: 'K', label: 'condensing temperature', meaning: 'bubble point at the liquid pressure' },
  subcooling: { unit: 'K', label: 'subcooling', meaning: 'liquid line below that bubble point' },
  discharge: { unit: 'K', label: 'discharge temperature', meaning: 'discharge line' },
  condenserAirRise: {
    unit: 'K',
    label: 'condenser air rise',
    meaning: 'air leaving the condenser above the outdoor air',
  },
  supplyAirDrop: { unit: 'K', label: 'supply air drop', meaning: 'supply air below the return air' },
  compressorPower: { unit: '1', label: 'compressor power', meaning: 'natural logarithm of W' },
  power: { unit: '1', label: 'total power', meaning: 'natural logarithm of W' },
  drierDrop: { unit: 'K', label: 'temperature drop over the drier', meaning: 'drier inlet above drier outlet' },
  standstill: {
    unit: 'K',
    label: 'standing-pressure excess',
    meaning: 'saturation of the standing pressure above the ambient',
  },
} as const satisfies Readonly<
  Record<string, { readonly unit: 'K' | '1'; readonly label: string; readonly meaning: string }>
>

export type Observable = keyof typeof OBSERVABLES

export const OBSERVABLE_NAMES = Object.keys(OBSERVABLES) as readonly Observable[]

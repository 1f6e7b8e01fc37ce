import type { CompressorType, CycleApplication } from './nameplate.ts'

/** What systems of one application have in common: the starting point where the nameplate is silent. */
export interface Habits {
  readonly outdoor_K: number
  readonly indoor_K: number
  readonly indoorWetBulb_K: number
  /** Mean temperature of the boiling refrigerant, K. */
  readonly evaporating_K: Guess
  /** Mean temperature of the condensing refrigerant above the outdoor air. */
  readonly condensingApproach_K: Guess
  /** Natural logarithm of the isentropic efficiency of compressor and motor. */
  readonly lnEfficiency: Guess
  readonly compressorType: CompressorType
  readonly bestRatio: number
  /** Per W of net cooling. */
  readonly indoorAir_m3_s_W: number
  readonly outdoorAir_m3_s_W: number
  readonly indoorFan: number
  readonly outdoorFan: number
  readonly condenserVolume_m3_W: number
  readonly evaporatorVolume_m3_W: number
  readonly evaporatorShape: CoilShape
  readonly condenserShape: CoilShape
  /** Unevenness of the evaporator's circuits: standard deviation of their flow over its mean. */
  readonly circuitSpread: number
  /** Loss of filling per unit of (pressure ratio − 1). */
  readonly clearance: Readonly<Record<CompressorType, number>>
  /** Fall of the efficiency away from its best pressure ratio, see `VolumetricCompressor`. */
  readonly efficiencyBend: Readonly<Record<CompressorType, number>>
  /** Share of the rated power that is drawn whatever is pumped. */
  readonly constantPower: Readonly<Record<CompressorType, number>>
  /** Share of the work that warms the gas before it is compressed. */
  readonly shellHeat: Readonly<Record<CompressorType, number>>
  /** Share of the compressor's power that leaves through its shell. */
  readonly shellLoss: number
  /** Insulated suction line, W/K per metre. */
  readonly lineGain_W_mK: number
  /** Share of the charge that is dissolved in the oil. */
  readonly oilShare: number
  readonly superheat_K: { readonly fixed: number; readonly valve: number }
  readonly subcooling_K: number
  readonly lineLength_m: number
}

/** Conductances of the refrigerant side over that of the air side. */
export interface CoilShape {
  readonly twoPhase: number
  /** In an evaporator with R-22; other gases follow their own heat transfer. */
  readonly vapour: number
  readonly liquid: number
}

/** Most likely value and standard deviation. */
export interface Guess {
  readonly value: number
  readonly sd: number
}

/**
 * Calibrated once against the published slope of the target superheat with wet bulb and outdoor temperature, not
 * against any single system or cell. The liquid's low figure stands for its true one, near 0.8, less the heat that
 * reaches it along the fins from the condensing rows.
 */
const EVAPORATOR_SHAPE: CoilShape = { twoPhase: 1.3, vapour: 0.14, liquid: 0.8 }
const CONDENSER_SHAPE: CoilShape = { twoPhase: 3, vapour: 0.4, liquid: 0.25 }

/**
 * The same in every application. Clearance and bend of scroll: from a published ten-coefficient map of an R-410A
 * compressor, READ; reciprocating: of the ratings of such compressors, REMEMBERED, whose efficiency falls less with the
 * pressure ratio, having no built-in one, and more with the flow; rotary between. The shells of scroll and reciprocating
 * compressors are full of suction gas, which takes up the motor's losses less what the shell gives off; a rotary's is
 * not. Suction line of about 20 mm. All else *common practice*.
 */
const EVERYWHERE = {
  evaporatorShape: EVAPORATOR_SHAPE,
  condenserShape: CONDENSER_SHAPE,
  circuitSpread: 0.05,
  clearance: { scroll: 0.045, rotary: 0.05, reciprocating: 0.08 },
  efficiencyBend: { scroll: 1, rotary: 0.6, reciprocating: 0.3 },
  constantPower: { scroll: 0, rotary: 0.05, reciprocating: 0.1 },
  shellHeat: { scroll: 0.12, rotary: 0.03, reciprocating: 0.12 },
  shellLoss: 0.08,
  lineGain_W_mK: 0.35,
  oilShare: 0.04,
} as const

/** 400 CFM per ton. */
const CFM_PER_TON = 0.000471947 / 3516.853

/**
 * Rating conditions of comfort cooling: AHRI 210/240 test A (35 °C outdoors, 26.7/19.4 °C indoors). All else is
 * *common practice*: airflow 400 CFM per ton indoors; condensing 20 °F and 30 °F above outdoor air; evaporating 45 °F;
 * box temperature less 10 °F to 15 °F for cold rooms.
 */
export function habitsOf(application: CycleApplication, boxTemperature_K?: number): Habits {
  switch (application) {
    case 'comfort-cooling':
    case 'heat-pump-cooling':
      return {
        ...EVERYWHERE,
        outdoor_K: 308.15,
        indoor_K: 299.82,
        indoorWetBulb_K: 292.59,
        evaporating_K: { value: 280.4, sd: 1.5 },
        condensingApproach_K: { value: 12.5, sd: 3.5 },
        lnEfficiency: { value: Math.log(0.69), sd: 0.08 },
        compressorType: 'scroll',
        bestRatio: 2.6,
        indoorAir_m3_s_W: 400 * CFM_PER_TON,
        outdoorAir_m3_s_W: 900 * CFM_PER_TON,
        indoorFan: 0.036,
        outdoorFan: 0.018,
        condenserVolume_m3_W: 0.4e-6,
        evaporatorVolume_m3_W: 0.36e-6,
        superheat_K: { fixed: 6.9, valve: 5 },
        subcooling_K: 5.6,
        lineLength_m: 4.6,
      }
    case 'medium-temperature':
      return cold(boxTemperature_K ?? 275.15, { value: 7, sd: 2 }, 2.8)
    case 'low-temperature':
      return cold(boxTemperature_K ?? 253.15, { value: 6, sd: 2 }, 3.5)
  }
}

function cold(box_K: number, below: Guess, bestRatio: number): Habits {
  return {
    ...EVERYWHERE,
    outdoor_K: 305.35,
    indoor_K: box_K,
    // 85 % relative humidity lies within a kelvin of this from −25 °C to 10 °C.
    indoorWetBulb_K: box_K - 0.9 - 0.025 * Math.max(box_K - 263.15, 0),
    evaporating_K: { value: box_K - below.value, sd: below.sd },
    condensingApproach_K: { value: 11, sd: 3 },
    lnEfficiency: { value: Math.log(0.58), sd: 0.12 },
    compressorType: 'reciprocating',
    bestRatio,
    indoorAir_m3_s_W: 1.8e-4,
    outdoorAir_m3_s_W: 1.6e-4,
    indoorFan: 0.05,
    outdoorFan: 0.04,
    condenserVolume_m3_W: 0.5e-6,
    evaporatorVolume_m3_W: 0.6e-6,
    superheat_K: { fixed: 6, valve: 5 },
    subcooling_K: 3,
    lineLength_m: 8,
  }
}

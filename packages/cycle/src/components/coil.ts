/**
 * A fin-and-tube coil as conductances: the air side in series with the refrigerant side, which differs by phase.
 * `…Ua` are for the whole coil as if it held that phase alone, at the rated flows; the air side follows the airflow by
 * the power 0.6 (plain and wavy fins, *common practice*), single phases the refrigerant's flow by 0.8 (Dittus and Boelter).
 */
export interface Coil {
  readonly airUa_W_K: number
  readonly twoPhaseUa_W_K: number
  readonly vapourUa_W_K: number
  readonly liquidUa_W_K: number
  readonly volume_m3: number
  /** Dry air, kg/s, with a clean coil and the fan as rated. */
  readonly airflow_kg_s: number
  readonly ratedFlow_kg_s: number
  readonly fan_W: number
}

export const AIR_EXPONENT = 0.6

export interface Conductances {
  readonly air: number
  readonly twoPhase: number
  readonly vapour: number
  readonly liquid: number
}

/**
 * @param airShare airflow over rated airflow
 * @param flow refrigerant, kg/s
 * @returns overall conductances air to refrigerant (`air`: the air side alone), W/K
 */
export function conductances(coil: Coil, airShare: number, flow: number): Conductances {
  const air = coil.airUa_W_K * power(airShare, AIR_EXPONENT)
  const single = power(Math.max(flow / coil.ratedFlow_kg_s, 1e-3), 0.8)
  return {
    air,
    twoPhase: inSeries(air, coil.twoPhaseUa_W_K),
    vapour: inSeries(air, coil.vapourUa_W_K * single),
    liquid: inSeries(air, coil.liquidUa_W_K * single),
  }
}

/** A third of the time that `**` takes. */
const power = (base: number, exponent: number): number => Math.exp(exponent * Math.log(base))

const inSeries = (a: number, b: number): number => (a * b) / (a + b)

/** Effectiveness of a stretch that fresh air crosses while the refrigerant's temperature stands still along the air's way. */
export const crossflowEffectiveness = (conductance: number, capacityRate: number): number =>
  1 - Math.exp(-conductance / capacityRate)

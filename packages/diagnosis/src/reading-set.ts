/**
 * What was read on a system in one settled state, in SI, pressures absolute. What was not read is absent; the air that
 * enters both coils must be known, because everything is judged against the weather.
 */
export interface ReadingSet {
  readonly outdoor_K: number
  readonly returnAir_K: number
  readonly returnWetBulb_K: number
  /** Of the place; that at sea level where absent. */
  readonly airPressure_Pa?: number
  readonly suctionPressure_Pa?: number
  /** On the suction line at the compressor. */
  readonly suctionLine_K?: number
  /** At the condenser's outlet. */
  readonly liquidPressure_Pa?: number
  readonly liquidLine_K?: number
  readonly dischargeLine_K?: number
  readonly condenserLeavingAir_K?: number
  readonly supplyAir_K?: number
  readonly drierInlet_K?: number
  readonly drierOutlet_K?: number
  readonly compressorPower_W?: number
  /** Compressor and both fans. */
  readonly power_W?: number
  /** Stopped and equalised, both coils at the temperature of one ambient. */
  readonly standstill?: { readonly pressure_Pa: number; readonly ambient_K: number }
}

/** One settled state, and what had been weighed in since the first. */
export interface WeighedSet {
  readonly readings: ReadingSet
  /** Refrigerant added since the first set, kg; negative when recovered; 0 for the first. */
  readonly added_kg: number
}

import type { Coil } from './coil.ts'
import type { Compressor } from './compressor-law.ts'
import type { Device } from './device-law.ts'
import type { Fan } from './fan.ts'
import type { Fluid } from './fluid.ts'

/** One machine with its troubles in it. Everything SI. */
export interface Unit {
  readonly fluid: Fluid
  readonly compressor: Compressor
  readonly condenser: Coil
  readonly condenserFan: Fan
  readonly evaporator: Coil
  readonly evaporatorFan: Fan
  readonly device: Device
  readonly liquidLine: {
    readonly volume_m3: number
    readonly drier_m3: number
    /** Pa lost per (kg/s)² and specific volume; a restriction adds to it, before or after the place of the drier's outlet. */
    readonly drop: number
    readonly drierDrop: number
    readonly strainerDrop: number
    readonly loss_W_K: number
  }
  readonly suctionLine: {
    readonly volume_m3: number
    readonly drop: number
    readonly gain_W_K: number
  }
  readonly dischargeLine_m3: number
  readonly shell_m3: number
  readonly accumulator_m3: number
  /** Wetness at which an accumulator's bleed passes all the liquid only when it is full. */
  readonly accumulatorWetness: number
  readonly oil_kg: number
  /** Refrigerant that the oil holds at suction pressure and rating warmth, kg/kg. */
  readonly oilTakes: number
  /** Air or nitrogen in the circuit, pressure it would have alone in all the circuit at 25 °C, Pa. */
  readonly gas_Pa: number
}

export interface Weather {
  readonly outdoor_K: number
  readonly returnAir_K: number
  readonly returnWetBulb_K: number
}

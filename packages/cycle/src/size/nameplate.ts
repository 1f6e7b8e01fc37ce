import type { Compressor } from '../components/compressor.ts'
import type { Device } from '../devices/device.ts'
import type { Properties } from '../refrigerant/properties.ts'
import type { VoidFraction } from '../void-fraction.ts'

export type CycleApplication = 'comfort-cooling' | 'heat-pump-cooling' | 'medium-temperature' | 'low-temperature'

export type CompressorType = 'reciprocating' | 'rotary' | 'scroll'

/** What a technician can read on a system and its papers, in SI. Everything after the charge may be missing. */
export interface Nameplate {
  readonly properties: Properties
  readonly application: CycleApplication
  readonly device: Device['kind']
  /** Net cooling at the rating conditions of the application, W. */
  readonly capacity_W: number
  /** What the system holds when right, lines included, kg. */
  readonly charge_kg: number
  readonly efficiency?: RatedEfficiency
  /** Superheat at the compressor for a fixed device, at the coil for a valve, at the rating conditions, K. */
  readonly superheat_K?: number
  readonly subcooling_K?: number
  /** One way, m. */
  readonly lineLength_m?: number
  readonly receiver?: { readonly volume_m3?: number }
  readonly accumulator?: boolean
  /** Air in the cold room, K; refrigeration only. */
  readonly boxTemperature_K?: number
  readonly compressorType?: CompressorType
  /** The maker's ten coefficients, where they are at hand. */
  readonly compressorMap?: Extract<Compressor, { kind: 'map' }>
  readonly voidFraction?: VoidFraction
}

export type RatedEfficiency =
  /** Net cooling over all power, fans included. An EER in Btu/(W·h) is 3.412 times this. */
  | { readonly kind: 'cop'; readonly cop: number }
  /** Electric power of the compressor at rating conditions. */
  | { readonly kind: 'compressor-power'; readonly power_W: number }
  /** Rated-load current of the compressor: a figure for wiring, and so only a rough hint. */
  | {
      readonly kind: 'rated-load-current'
      readonly current_A: number
      readonly voltage_V: number
      readonly phases: 1 | 3
    }

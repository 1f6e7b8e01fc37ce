import type { ReadingId } from '@chargewright/visit'

/** The Environmental Sensing service. */
export const SENSING_SERVICE = 0x181a

export interface SensingKind {
  readonly uuid: number
  readonly label: string
  /** Unit of the number. */
  readonly unit: string
  /** What it is taken for until something else is said. */
  readonly what?: ReadingId
  /** The number out of the bytes, or NaN where the sensor says that it knows none. */
  readonly decode: (bytes: DataView) => number
}

/**
 * The characteristics of the service that a visit can use.
 *
 * @source Bluetooth SIG, GATT Specification Supplement: Temperature (sint16, 0.01 °C, −32768 unknown), Pressure
 *   (uint32, 0.1 Pa), Humidity (uint16, 0.01 %, 65535 unknown), little-endian
 */
export const SENSING_KINDS: readonly SensingKind[] = [
  {
    uuid: 0x2a6e,
    label: 'Temperature',
    unit: '°C',
    what: 'return-air-dry-bulb',
    decode: (bytes) => known(bytes, 2, () => bytes.getInt16(0, true), -32_768) / 100,
  },
  {
    uuid: 0x2a6f,
    label: 'Humidity',
    unit: '%',
    what: 'return-air-humidity',
    decode: (bytes) => known(bytes, 2, () => bytes.getUint16(0, true), 65_535) / 100,
  },
  {
    uuid: 0x2a6d,
    label: 'Pressure',
    unit: 'Pa a',
    decode: (bytes) => known(bytes, 4, () => bytes.getUint32(0, true)) / 10,
  },
]

function known(bytes: DataView, length: number, read: () => number, unknown?: number): number {
  if (bytes.byteLength < length) return Number.NaN
  const number = read()
  return number === unknown ? Number.NaN : number
}

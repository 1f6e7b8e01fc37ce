import { expect, test } from 'vitest'
import { SENSING_KINDS } from './sensor-value.ts'

const decode = (uuid: number, ...bytes: number[]) =>
  SENSING_KINDS.find((kind) => kind.uuid === uuid)!.decode(new DataView(Uint8Array.from(bytes).buffer))

// Published: Bluetooth SIG, GATT Specification Supplement: field type and exponent of each characteristic. REMEMBERED.
test('[published] values are little-endian integers in hundredths and tenths', () => {
  expect(decode(0x2a6e, 0xc4, 0x09)).toBe(25)
  expect(decode(0x2a6e, 0x0c, 0xfe)).toBe(-5)
  expect(decode(0x2a6f, 0x88, 0x13)).toBe(50)
  expect(decode(0x2a6d, 0x02, 0x76, 0x0f, 0x00)).toBe(101_325)
})

test('[limit] an unknown value and a short one are no number', () => {
  expect(decode(0x2a6e, 0x00, 0x80)).toBeNaN()
  expect(decode(0x2a6f, 0xff, 0xff)).toBeNaN()
  expect(decode(0x2a6d, 0x02)).toBeNaN()
})

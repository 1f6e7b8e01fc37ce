import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import { crc32 } from './crc32.ts'
import type { PropertyTable, Surface } from './property-table.ts'

/**
 * A table as bytes, to be kept in a cache: 'CWT2', the length of a JSON head, the head padded to eight bytes, the
 * coefficients (curves as 64-bit, surfaces as 32-bit floats, little-endian), and a CRC-32 of all before it.
 */
const MAGIC = 'CWT2'
const FIELDS = ['temperature', 'volume', 'entropy', 'quality'] as const

type Head = Omit<PropertyTable, 'curves' | 'liquid' | 'vapour' | 'dome'> & {
  readonly curves: number
  readonly surfaces: readonly SurfaceHead[]
}

type SurfaceHead = Pick<Surface, 'every' | 'columns' | 'stretch'> & { readonly lengths: readonly number[] }

export function tableToBytes(table: PropertyTable): Uint8Array {
  const { curves, liquid, vapour, dome, ...rest } = table
  const surfaces = dome ? [liquid, vapour, dome] : [liquid, vapour]
  const head: Head = { ...rest, curves: curves.length, surfaces: surfaces.map(headOf) }
  const json = asciiBytes(JSON.stringify(head))
  const start = padded(8 + json.length)
  const floats = surfaces.flatMap((surface) => FIELDS.map((field) => surface[field]))
  const size = start + 8 * curves.length + 4 * floats.reduce((sum, f) => sum + f.length, 0)
  const bytes = new Uint8Array(size + 4)
  const view = new DataView(bytes.buffer)
  bytes.set(asciiBytes(MAGIC), 0)
  view.setUint32(4, json.length, true)
  bytes.set(json, 8)
  let at = start
  for (const value of curves) {
    view.setFloat64(at, value, true)
    at += 8
  }
  for (const values of floats) {
    for (const value of values) {
      view.setFloat32(at, value, true)
      at += 4
    }
  }
  view.setUint32(size, crc32(bytes.subarray(0, size)), true)
  return bytes
}

/** @returns `unreadable` for anything but what `tableToBytes` made, down to a single changed bit */
export function tableFromBytes(bytes: Uint8Array): Result<PropertyTable, Problem> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const size = bytes.length - 4
  if (size < 8 || asciiText(bytes.subarray(0, 4)) !== MAGIC) return fail(unreadable('no table'))
  if (crc32(bytes.subarray(0, size)) !== view.getUint32(size, true)) return fail(unreadable('a damaged table'))
  const length = view.getUint32(4, true)
  const { curves: curveCount, surfaces, ...rest } = JSON.parse(asciiText(bytes.subarray(8, 8 + length))) as Head
  let at = padded(8 + length)
  const curves = new Float64Array(curveCount)
  for (let k = 0; k < curveCount; k++, at += 8) curves[k] = view.getFloat64(at, true)
  const read = ({ lengths, ...head }: SurfaceHead): Surface => {
    const [temperature, volume, entropy, quality] = lengths.map((count) => {
      const values = new Float64Array(count)
      for (let k = 0; k < count; k++, at += 4) values[k] = view.getFloat32(at, true)
      return values
    })
    return { ...head, temperature: temperature!, volume: volume!, entropy: entropy!, quality: quality! }
  }
  const [liquid, vapour, dome] = surfaces.map(read)
  return ok({ ...rest, curves, liquid: liquid!, vapour: vapour!, ...(dome && { dome }) })
}

function headOf(surface: Surface): SurfaceHead {
  const { every, columns, stretch } = surface
  return { every, columns, stretch, lengths: FIELDS.map((field) => surface[field].length) }
}

const padded = (length: number): number => Math.ceil(length / 8) * 8

/** Names of refrigerants are ASCII, so that neither the DOM's nor Node's text coders are needed. */
function asciiBytes(text: string): Uint8Array {
  return Uint8Array.from(text, (character) => character.charCodeAt(0))
}

function asciiText(bytes: Uint8Array): string {
  return Array.from(bytes, (code) => String.fromCharCode(code)).join('')
}

const unreadable = (value: string): Problem => ({
  kind: 'unreadable',
  field: 'table',
  value,
  accepted: 'bytes written by tableToBytes',
})

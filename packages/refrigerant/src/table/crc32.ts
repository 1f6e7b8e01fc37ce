const POLYNOMIAL = 0xedb88320

const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let c = byte
  for (let bit = 0; bit < 8; bit++) c = c & 1 ? (c >>> 1) ^ POLYNOMIAL : c >>> 1
  return c
})

/** @source ISO 3309 / ITU-T V.42: the check value of the ASCII digits 1 to 9 is CBF43926 [itu-v42] */
export function crc32(bytes: Uint8Array): number {
  let c = 0xffffffff
  for (let i = 0; i < bytes.length; i++) c = TABLE[(c ^ bytes[i]!) & 0xff]! ^ (c >>> 8)
  return (c ^ 0xffffffff) >>> 0
}

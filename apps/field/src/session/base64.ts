/** Bytes in one call of the encoder: more would not fit on its stack. */
const CHUNK = 0x8000

export function toBase64(bytes: Uint8Array): string {
  const pieces: string[] = []
  for (let at = 0; at < bytes.length; at += CHUNK) {
    pieces.push(String.fromCharCode(...bytes.subarray(at, at + CHUNK)))
  }
  return btoa(pieces.join(''))
}

/** The bytes, or nothing where the text is no base64. */
export function fromBase64(text: string): Uint8Array<ArrayBuffer> | undefined {
  try {
    return Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0))
  } catch {
    return undefined
  }
}

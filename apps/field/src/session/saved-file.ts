/** A file to be saved on the device. */
export interface SavedFile {
  readonly name: string
  /** Media type. */
  readonly type: string
  readonly content: string | Uint8Array<ArrayBuffer>
}

/** A name that is safe on any disk, made of the first words of the name of the system. */
export function fileName(system: string | undefined, ending: string): string {
  const words = (system ?? 'visit').toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? ['visit']
  return `${words.slice(0, 8).join('-')}.${ending}`
}

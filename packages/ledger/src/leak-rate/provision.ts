/** How a figure of a law is known: its text was read; another's account of it was read; it was recalled. */
export type Standing = 'read' | 'secondary' | 'remembered'

/** One figure of a law, with the place where it stands. */
export interface Provision<Value> {
  readonly value: Value
  readonly source: string
  readonly standing: Standing
}

export const read = <Value>(value: Value, source: string): Provision<Value> => ({ value, source, standing: 'read' })

export const secondary = <Value>(value: Value, source: string): Provision<Value> => ({
  value,
  source,
  standing: 'secondary',
})

export const remembered = <Value>(value: Value, source: string): Provision<Value> => ({
  value,
  source,
  standing: 'remembered',
})

/** Only what was read in the text of the law counts as confirmed; the rest must be shown as not confirmed. */
export const isConfirmed = ({ standing }: Provision<unknown>): boolean => standing === 'read'

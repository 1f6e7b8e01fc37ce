import type { Mass } from './cylinder.ts'

/** Refrigerant that went into or out of a cylinder, and how much the scale said. */
export interface Movement {
  /** Never used again in this book. */
  readonly id: string
  /** When, as ISO text; the order of the book is that of its entries, whatever the clock said. */
  readonly at: string
  readonly cylinder: string
  readonly refrigerant: string
  readonly direction: 'from-cylinder' | 'to-cylinder'
  readonly counterpart: Counterpart
  readonly weighing: Weighing
  /** The visit in which it happened, if it did in one. */
  readonly visit?: string
}

export type Counterpart =
  | { readonly kind: 'system'; readonly system: string }
  /** Supplier, reclaimer, another cylinder: in words. */
  | { readonly kind: 'elsewhere'; readonly where: string }

export type Weighing =
  | {
      readonly kind: 'before-and-after'
      /** Gross weights of the cylinder. */
      readonly before: Mass
      readonly after: Mass
      /** What the hoses kept on the way, so that neither the cylinder nor the other side has it. */
      readonly hoses?: Mass
      /** What the record of the visit says was moved, to be held against the weights. */
      readonly stated?: Mass
    }
  /** Only the difference was recorded, as with a scale that was set to zero. */
  | { readonly kind: 'difference'; readonly mass: Mass }

/** One line of the book. Lines are only ever appended; a correction changes what holds, never what was written. */
export type BookEntry =
  | { readonly kind: 'moved'; readonly movement: Movement }
  | {
      readonly kind: 'corrected'
      readonly movementId: string
      /** What holds instead, in the place of the first entry; absent: it did not happen. */
      readonly replacement?: Omit<Movement, 'id'>
      readonly reason?: string
    }

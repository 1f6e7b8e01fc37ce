import type { TypedGrid } from './typed-grid.ts'

type Shelf = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>

/** A half-typed grid, kept on this device until the chart is kept. A shelf that refuses costs the draft only. */
export function gridDraft(shelf: () => Shelf, visitId: string) {
  const key = `chargewright.grid.${visitId}`
  return {
    recall: (): TypedGrid | undefined => {
      try {
        const kept: unknown = JSON.parse(shelf().getItem(key) ?? 'null')
        return Array.isArray(kept) ? (kept as TypedGrid) : undefined
      } catch {
        return undefined
      }
    },
    keep: (grid: TypedGrid | undefined): void => {
      try {
        if (grid) shelf().setItem(key, JSON.stringify(grid))
        else shelf().removeItem(key)
      } catch {
        // It lives as long as the page.
      }
    },
  }
}

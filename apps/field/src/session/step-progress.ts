import { type Shelf, shelved } from './shelved.ts'

/** How many steps of a list are done. It is this device's own mark, part of no visit; another list begins anew. */
export interface StepProgress {
  readonly list: string
  readonly done: number
}

/** Lists of steps that are remembered at a time: a person works at few systems in a day. */
const REMEMBERED = 20

/** The steps done of a list of one visit, kept on the device. */
export function stepProgress(shelf: () => Shelf, visitId: string, list: string) {
  const all = shelved(shelf, 'chargewright.steps', readAll)
  const kept = all.value.value[visitId]
  return {
    done: kept?.list === list ? kept.done : 0,
    keep: (done: number) => {
      const others = Object.entries(all.value.value).filter(([id]) => id !== visitId)
      all.set(Object.fromEntries([...others.slice(1 - REMEMBERED), [visitId, { list, done }]]))
    },
  }
}

function readAll(kept: unknown): Readonly<Record<string, StepProgress>> {
  if (typeof kept !== 'object' || kept === null) return {}
  return Object.fromEntries(Object.entries(kept).filter(([, one]) => Number.isInteger(one?.done) && one.done >= 0))
}

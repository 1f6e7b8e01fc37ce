import { type Shelf, shelved } from './shelved.ts'

/** How many steps of a list are done. It is this device's own mark, part of no visit; another list begins anew. */
export interface StepProgress {
  readonly list: string
  readonly done: number
}

/** Lists of steps that are remembered at a time: a person works at few systems in a day. */
const REMEMBERED = 20

/**
 * The steps of a list, told apart from those of another one. The same words after another change to the system are a list
 * of their own: of a second addition no step is done yet.
 *
 * @param change the last one, which the steps come after
 */
export const stepList = (
  steps: readonly { readonly template: string }[],
  change: { readonly eventId: string } | undefined,
) => [change?.eventId, ...steps.map(({ template }) => template)].join()

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

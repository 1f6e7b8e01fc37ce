import type { EventOf } from '@chargewright/visit'
import { MOVED_ALONG } from '@chargewright/visit'
import type { Change, Shelf, StoredVisit } from '../store/visit-store.ts'

/** What is written beside a move, in the logs of the visit and of both systems. */
const PARTS = ['known', 'assumed', 'left', 'brought'] as const

/** The id of a part: that of the move with the name of the part, so that an undo finds it. */
export const partOf = (move: string, part: (typeof PARTS)[number]): string => `${move}-${part}`

/** What came along with a move goes when the move is withdrawn, and comes back with it. */
export function alongWith(
  { id, at, corrects }: EventOf<'correction'>,
  visit: StoredVisit,
  { systems, visits }: Shelf,
): readonly Change[] {
  if (!visit.events.some(({ kind }) => kind === 'visit-moved')) return []
  const logs = [...visits, ...systems]
  const parts = PARTS.flatMap((part): readonly Change[] => {
    const log = logs.find(({ events }) => events.some((event) => event.id === partOf(corrects, part)))
    const head = { id: partOf(id, part), at, by: MOVED_ALONG }
    return log
      ? [{ kind: 'append', to: log.id, events: [{ ...head, kind: 'correction', corrects: partOf(corrects, part) }] }]
      : []
  })
  const move = visit.events.find((event) => event.id === corrects)
  return move?.kind === 'visit-moved' ? [...parts, { kind: 'set-aside', id: move.from, aside: false }] : parts
}

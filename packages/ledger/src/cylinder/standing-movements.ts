import type { Problem } from '@chargewright/quantity'
import type { BookEntry, Movement } from './movement.ts'

/**
 * The movements that hold, in the order in which they were first entered. Of several corrections of one movement the
 * last holds, so that a withdrawn one can be put back. A used id and a correction without a target change nothing.
 */
export function standingMovements(entries: readonly BookEntry[]): {
  readonly movements: readonly Movement[]
  readonly problems: readonly Problem[]
} {
  const standing = new Map<string, Movement | undefined>()
  const problems: Problem[] = []
  for (const [i, entry] of entries.entries()) {
    switch (entry.kind) {
      case 'moved': {
        const { id } = entry.movement
        if (standing.has(id)) problems.push(usedBefore(i, id))
        else standing.set(id, entry.movement)
        break
      }
      case 'corrected': {
        const { movementId: id, replacement } = entry
        if (standing.has(id)) standing.set(id, replacement && { ...replacement, id })
        else problems.push(nothingToCorrect(i, id))
        break
      }
      default:
        entry satisfies never
    }
  }
  return { movements: [...standing.values()].filter((movement) => movement !== undefined), problems }
}

const usedBefore = (i: number, value: string): Problem => ({
  kind: 'ambiguous',
  field: `entries[${i}].movement.id`,
  value,
  accepted: 'an id that this book has not used before',
})

const nothingToCorrect = (i: number, value: string): Problem => ({
  kind: 'unknown',
  field: `entries[${i}].movementId`,
  value,
  accepted: 'the id of an earlier movement of this book',
})

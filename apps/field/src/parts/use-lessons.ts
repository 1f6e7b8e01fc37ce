import { useMemo } from 'preact/hooks'
import { forgettingsOf, type Lessons, lessonsBefore, visitsTo } from '../session/lessons.ts'
import type { Session } from '../session/session.ts'
import type { StoredSystem } from '../store/visit-store.ts'

/** The lessons that a visit to a system begins with, as they change; without the visit, those of the next one. */
export function useLessons({ systems, visits }: Pick<Session, 'systems' | 'visits'>, of: string, to?: string): Lessons {
  const system = systems.value?.find(({ id }) => id === of)
  return useMemo(
    () => lessonsBefore(visitsTo(of, visits.value ?? []), forgotten(system), to),
    [system, visits.value, to],
  )
}

const forgotten = (system: StoredSystem | undefined) => (system ? forgettingsOf(system) : [])

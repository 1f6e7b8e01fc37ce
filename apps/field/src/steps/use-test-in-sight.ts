import type { Fact } from '@chargewright/visit'
import { useLayoutEffect, useRef } from 'preact/hooks'
import type { Kept } from '../session/session.ts'

/**
 * Brings a test into view when a reading was entered: the blank of the next one, and under it what the test says now.
 * Whoever works by keyboard goes on in that blank. Nothing moves when the step is only opened.
 */
export function useTestInSight(judged: unknown, record: (fact: Fact) => Kept) {
  const test = useRef<HTMLDivElement>(null)
  const awaited = useRef<{ readonly isByKey: boolean }>(undefined)
  useLayoutEffect(() => {
    if (!awaited.current || judged === undefined) return
    test.current?.scrollIntoView({ block: 'start' })
    const blank = awaited.current.isByKey && test.current?.querySelector<HTMLElement>('[data-blank]')
    if (blank) blank.focus({ preventScroll: true })
    awaited.current = undefined
  }, [judged])
  const recordReading = async (fact: Fact) => {
    awaited.current = { isByKey: document.activeElement?.matches(':focus-visible') ?? false }
    const kept = await record(fact)
    if (!kept.ok) awaited.current = undefined
    return kept
  }
  return { test, recordReading }
}

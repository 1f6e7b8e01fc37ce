import type { Fact } from '@chargewright/visit'
import { useLayoutEffect, useRef } from 'preact/hooks'
import type { Kept } from '../session/session.ts'

/** Brings what a test says into view when a reading was entered below it. Nothing moves when the step is only opened. */
export function useVerdictInSight(judged: unknown, record: (fact: Fact) => Kept) {
  const verdict = useRef<HTMLDivElement>(null)
  const isAwaited = useRef(false)
  useLayoutEffect(() => {
    if (!isAwaited.current || judged === undefined) return
    isAwaited.current = false
    verdict.current?.scrollIntoView({ block: 'start' })
  }, [judged])
  const recordReading = async (fact: Fact) => {
    isAwaited.current = true
    const kept = await record(fact)
    if (!kept.ok) isAwaited.current = false
    return kept
  }
  return { verdict, recordReading }
}

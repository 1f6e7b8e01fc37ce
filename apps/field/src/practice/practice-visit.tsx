import type { BenchRequest } from '@chargewright/cycle'
import type { Fact } from '@chargewright/visit'
import { useSignal } from '@preact/signals'
import { useEffect, useMemo, useState } from 'preact/hooks'
import { reveal } from '../parts/reveal.ts'
import type { VisitScreen } from '../screens/visit-screen.tsx'
import type { Preferences } from '../session/preference.ts'
import { createSession, type Session } from '../session/session.ts'
import { problemInWords } from '../words/problem-in-words.ts'
import { t } from '../words/t.ts'
import { useEngine } from '../worker/engine-context.ts'
import { useAnswer } from '../worker/use-answer.ts'
import { BenchPanel } from './bench-panel.tsx'
import { factsOf, readingsOf } from './facts-of.ts'
import { type PracticeStore, visitOf } from './practice-store.ts'
import type { Practised } from './practised.ts'
import { type Run, timeOf } from './run.ts'

interface Props {
  readonly run: Run
  readonly store: PracticeStore
  readonly preferences: Preferences
  readonly Visit: typeof VisitScreen
}

/** The visit page over the bench: the same page, with the bench where the tools and the system are on a roof. */
export function PracticeVisit({ run, store, preferences, Visit }: Props) {
  const units = preferences.units.value
  const engine = useEngine()
  const [session] = useState<Session>(() =>
    createSession({
      store,
      now: () => timeOf(store.runs().find(({ id }) => id === run.id) ?? run),
      newId: () => crypto.randomUUID(),
    }),
  )
  useEffect(() => void session.refresh(), [session])
  const trouble = useSignal<string | undefined>(undefined)
  const isBusy = useSignal(false)
  const asked = useMemo(() => ({ seed: run.seed, device: run.device }), [run.seed, run.device])
  const { answer } = useAnswer('practise', asked, run.requests)
  const bench = answer?.ok ? answer.value : undefined
  const stored = useMemo(() => visitOf(run), [run.id, run.events])

  /** All at once, so that the page is assessed once. */
  const keep = (facts: readonly Fact[]) => {
    const at = timeOf(store.runs().find(({ id }) => id === run.id) ?? run)
    const events = facts.map((fact) => ({ id: crypto.randomUUID(), at, ...fact }))
    return store.write([{ kind: 'append', to: run.id, events }])
  }
  const perform = async (request: BenchRequest, typed: string): Promise<boolean> => {
    if (!bench || isBusy.value) return false
    isBusy.value = true
    const done = await engine.ask(run, 'practise', asked, [...run.requests, request])
    isBusy.value = false
    if (!done.ok || !done.value.ok) {
      trouble.value = done.ok && !done.value.ok ? done.value.error.map(problemInWords).join('\n') : t(FAILED)
      return false
    }
    trouble.value = undefined
    await store.ask(run.id, request)
    await keep(factsOf(request, bench, done.value.value, typed, units))
    return true
  }
  const enter = async ({ instruments }: Practised) => {
    if (isBusy.value) return
    await keep(readingsOf(instruments, units))
    reveal('finding')
  }
  return (
    <Visit
      stored={stored}
      session={session}
      preferences={preferences}
      bench={(asked) => (
        <BenchPanel
          bench={bench}
          asked={asked}
          units={units}
          isBusy={isBusy.value}
          trouble={trouble.value}
          perform={perform}
          enter={enter}
        />
      )}
    />
  )
}

const FAILED = 'The bench could not answer. Try again.'

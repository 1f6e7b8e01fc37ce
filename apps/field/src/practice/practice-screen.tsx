import { t } from '../words/t.ts'
import './practice.css'
import { useSignal } from '@preact/signals'
import { useEffect } from 'preact/hooks'
import { PRACTICE_ADDRESS } from '../session/route.ts'
import { PracticeMark } from './practice-mark.tsx'
import type { PracticeProps } from './practice-place.tsx'
import { type PracticeStore, practiceStore } from './practice-store.ts'
import { PracticeVisit } from './practice-visit.tsx'
import type { Run } from './run.ts'
import { RunList } from './run-list.tsx'

const opening = practiceStore()

/** All runs, or one of them, marked as what they are: exercises with no system behind. */
export function PracticeScreen({ id, preferences, Visit }: PracticeProps) {
  const store = useSignal<PracticeStore | undefined>(undefined)
  const runs = useSignal<readonly Run[]>([])
  useEffect(() => {
    let stop = () => {}
    void opening.then((opened) => {
      const follow = () => {
        runs.value = opened.runs()
      }
      store.value = opened
      follow()
      stop = opened.watch(follow)
    })
    return () => stop()
  }, [])
  useEffect(() => {
    const heading = document.querySelector<HTMLElement>('h1')
    heading?.focus({ preventScroll: true })
    document.title = heading ? `${heading.textContent} · Chargewright` : 'Chargewright'
  }, [id, store.value])
  if (!store.value || !Visit) return <main class="start" aria-busy="true" />
  const run = runs.value.find((each) => each.id === id)
  return (
    <div class="practice">
      <PracticeMark run={run} />
      {run && <PracticeVisit key={run.id} run={run} store={store.value} preferences={preferences} Visit={Visit} />}
      {!run && id === undefined && <RunList runs={runs.value} store={store.value} preferences={preferences} />}
      {!run && id !== undefined && (
        <main class="start">
          <h1 tabIndex={-1}>{t('This run is not on this device')}</h1>
          <a class="key" href={PRACTICE_ADDRESS}>
            {t('The practice bench')}
          </a>
        </main>
      )}
    </div>
  )
}

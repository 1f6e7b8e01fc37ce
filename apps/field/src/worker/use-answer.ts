import { useSignal } from '@preact/signals'
import { useLayoutEffect, useRef } from 'preact/hooks'
import { useEngine } from './engine-context.ts'
import type { Given, Gotten, TaskName } from './protocol.ts'

/** What a part shows while the engine works: the last answer stays in sight until the next one is there. */
export interface Asking<T> {
  readonly state: 'working' | 'ready' | 'failed'
  /** The last answer; while working or failed, it is to an earlier question. */
  readonly answer: T | undefined
  /** Why it failed. */
  readonly detail?: string
  readonly askAgain: () => void
}

/** The engine's answer to a question, asked again whenever something in the question changes. */
export function useAnswer<Name extends TaskName>(task: Name, ...given: Given<Name>): Asking<Gotten<Name>> {
  const engine = useEngine()
  const asker = useRef({})
  const attempt = useSignal(0)
  const answered = useSignal<{ readonly to: readonly unknown[]; readonly answer: Gotten<Name> } | undefined>(undefined)
  const failure = useSignal<{ readonly to: readonly unknown[]; readonly detail: string } | undefined>(undefined)
  const question = [...given, attempt.value]
  // At once and not after the next frame: the engine can work while the page is still being drawn.
  useLayoutEffect(() => {
    let isCurrent = true
    void engine.ask(asker.current, task, ...given).then((result) => {
      if (!isCurrent) return
      if (result.ok) answered.value = { to: question, answer: result.value }
      else if (result.error.kind === 'failed') failure.value = { to: question, detail: result.error.detail }
    })
    return () => {
      isCurrent = false
    }
  }, question)
  const askAgain = () => {
    attempt.value++
  }
  const answer = answered.value?.answer
  if (answered.value && isSame(answered.value.to, question)) return { state: 'ready', answer, askAgain }
  if (failure.value && isSame(failure.value.to, question))
    return { state: 'failed', answer, detail: failure.value.detail, askAgain }
  return { state: 'working', answer, askAgain }
}

const isSame = (a: readonly unknown[], b: readonly unknown[]) => a.every((each, i) => Object.is(each, b[i]))

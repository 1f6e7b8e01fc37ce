import { fail, ok, type Result } from '@chargewright/quantity'
import type { Answer, Ask, Given, Gotten, TaskName } from './protocol.ts'

/** Why there is no answer: a later question took the place of this one, or the work failed. */
export type NoAnswer = { readonly kind: 'superseded' } | { readonly kind: 'failed'; readonly detail: string }

/** The physics, on a thread of its own. */
export interface Engine {
  /**
   * Of the questions of one asker (any object of its own) only the last one is answered; those before it are told that
   * they are superseded.
   */
  readonly ask: <Name extends TaskName>(
    asker: object,
    task: Name,
    ...given: Given<Name>
  ) => Promise<Result<Gotten<Name>, NoAnswer>>
}

/** The part of a worker that is needed. */
export interface Thread {
  readonly post: (ask: Ask) => void
  readonly end: () => void
}

export interface Listener {
  readonly answered: (answer: Answer) => void
  /** The thread itself broke: it could not be loaded, or died. */
  readonly broke: (detail: string) => void
}

interface Question {
  readonly ask: Ask
  readonly settle: (result: Result<unknown, NoAnswer>) => void
}

/** One question of an asker is with the engine, and at most one waits for it. */
interface Lane {
  asked: Question
  waiting?: Question
}

/**
 * @param open starts a thread; a broken one is replaced at the next question
 * @param tick the beat, ms, by which patience is counted. Beats and not the clock, because a device that slept, with the
 * thread asleep too, has waited for nothing
 */
export function createEngine(open: (listener: Listener) => Thread, tick = 1000): Engine {
  const lanes = new Map<object, Lane>()
  let thread: Thread | undefined
  let turn = 0

  const lose = (detail: string) => {
    thread?.end()
    thread = undefined
    const lost = [...lanes.values()].flatMap(({ asked, waiting }) => (waiting ? [asked, waiting] : [asked]))
    lanes.clear()
    for (const { settle } of lost) settle(fail({ kind: 'failed', detail }))
  }
  const post = (asker: object, question: Question) => {
    thread ??= open({ answered, broke: lose })
    thread.post(question.ask)
    let ticks = 0
    const watch = setInterval(() => {
      if (lanes.get(asker)?.asked !== question) clearInterval(watch)
      else if (++ticks === PATIENCE) lose('no answer for too long')
    }, tick)
  }
  const answered = (answer: Answer) => {
    const found = [...lanes].find(([, { asked }]) => asked.ask.turn === answer.turn)
    if (!found) return
    const [asker, { asked, waiting }] = found
    if (waiting) {
      lanes.set(asker, { asked: waiting })
      asked.settle(SUPERSEDED)
      post(asker, waiting)
    } else {
      lanes.delete(asker)
      asked.settle(answer.ok ? ok(answer.value) : fail({ kind: 'failed', detail: answer.detail }))
    }
  }
  return {
    ask: (asker, task, ...given) =>
      new Promise((resolve) => {
        const ask = { turn: ++turn, task, given } as Ask
        const question: Question = { ask, settle: resolve as Question['settle'] }
        const lane = lanes.get(asker)
        if (lane) {
          lane.waiting?.settle(SUPERSEDED)
          lane.waiting = question
          return
        }
        lanes.set(asker, { asked: question })
        post(asker, question)
      }),
  }
}

/** Beats that one answer may take before its thread is taken for lost. */
const PATIENCE = 60

const SUPERSEDED = fail({ kind: 'superseded' } as const)

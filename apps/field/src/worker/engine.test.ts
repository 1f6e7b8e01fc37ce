import { describe, expect, test } from 'vitest'
import { createEngine, type Listener } from './engine.ts'
import type { Ask } from './protocol.ts'

const visit = (id: string) => ({ id, events: [] })

describe('the engine behind its thread', () => {
  test('[property] an answer reaches the one who asked, whoever is answered first', async () => {
    const { engine, asks, answer } = bench()
    const [one, other] = [engine.ask({}, 'refrigerants'), engine.ask({}, 'assess', visit('v'))]
    answer(asks[1]!, 'second')
    answer(asks[0]!, 'first')
    expect([await one, await other]).toEqual([
      { ok: true, value: 'first' },
      { ok: true, value: 'second' },
    ])
  })

  test('[property] of an asker’s questions the last is answered; at most one waits, and those between are never worked on', async () => {
    const { engine, asks, answer } = bench()
    const asker = {}
    const asked = ['a', 'b', 'c', 'd'].map((id) => engine.ask(asker, 'assess', visit(id)))
    expect(asks.map(({ given }) => given[0])).toEqual([visit('a')])
    answer(asks[0]!, 'to a')
    expect(asks.map(({ given }) => given[0])).toEqual([visit('a'), visit('d')])
    answer(asks[1]!, 'to d')
    const results = await Promise.all(asked)
    expect(results.slice(0, 3)).toEqual(Array(3).fill({ ok: false, error: { kind: 'superseded' } }))
    expect(results[3]).toEqual({ ok: true, value: 'to d' })
  })

  test('[limit] work that fails is told with its words, and the next question is answered', async () => {
    const { engine, asks, listener } = bench()
    const asker = {}
    const failing = engine.ask(asker, 'assess', visit('v'))
    listener().answered({ turn: asks[0]!.turn, ok: false, detail: 'no root' })
    expect(await failing).toEqual({ ok: false, error: { kind: 'failed', detail: 'no root' } })
    const again = engine.ask(asker, 'assess', visit('v'))
    listener().answered({ turn: asks[1]!.turn, ok: true, value: 'found' })
    expect(await again).toEqual({ ok: true, value: 'found' })
  })

  test('[limit] a thread that breaks fails every open question and is replaced at the next one', async () => {
    const { engine, listener, threads } = bench()
    const asker = {}
    const open = [
      engine.ask(asker, 'assess', visit('a')),
      engine.ask(asker, 'assess', visit('b')),
      engine.ask({}, 'refrigerants'),
    ]
    listener().broke('gone')
    for (const result of await Promise.all(open)) {
      expect(result).toEqual({ ok: false, error: { kind: 'failed', detail: 'gone' } })
    }
    expect(threads()).toEqual({ opened: 1, ended: 1 })
    void engine.ask(asker, 'refrigerants')
    expect(threads()).toEqual({ opened: 2, ended: 1 })
  })

  test('[limit] a thread that never answers is taken for lost', async () => {
    const { engine, threads } = bench(1)
    expect(await engine.ask({}, 'refrigerants')).toMatchObject({ ok: false, error: { kind: 'failed' } })
    expect(threads().ended).toBe(1)
  })

  test('[limit] an answer to no question changes nothing', async () => {
    const { engine, asks, answer, listener } = bench()
    const asked = engine.ask({}, 'refrigerants')
    listener().answered({ turn: 99, ok: true, value: 'stray' })
    answer(asks[0]!, 'right')
    expect(await asked).toEqual({ ok: true, value: 'right' })
  })
})

/** An engine on a thread that answers when it is told to. */
function bench(tick?: number) {
  const asks: Ask[] = []
  const listeners: Listener[] = []
  let ended = 0
  const engine = createEngine((listener) => {
    listeners.push(listener)
    return {
      post: (ask) => asks.push(ask),
      end: () => {
        ended++
      },
    }
  }, tick)
  const listener = () => listeners.at(-1)!
  return {
    engine,
    asks,
    listener,
    answer: ({ turn }: Ask, value: unknown) => listener().answered({ turn, ok: true, value }),
    threads: () => ({ opened: listeners.length, ended }),
  }
}

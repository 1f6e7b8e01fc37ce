import { expect, test } from 'vitest'
import { stepList, stepProgress } from './step-progress.ts'

test('[property] steps done are there at the next start, of the same visit and the same list only', () => {
  const kept = new Map<string, string>()
  const shelf = () => ({
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  })
  stepProgress(shelf, 'v', 'a,b,c').keep(2)
  expect(stepProgress(shelf, 'v', 'a,b,c').done).toBe(2)
  expect(stepProgress(shelf, 'v', 'd,e').done).toBe(0)
  expect(stepProgress(shelf, 'w', 'a,b,c').done).toBe(0)
  for (let i = 0; i < 30; i++) stepProgress(shelf, `v${i}`, 'a').keep(1)
  expect(stepProgress(shelf, 'v', 'a,b,c').done).toBe(0)
  expect(stepProgress(shelf, 'v29', 'a').done).toBe(1)
  kept.set('chargewright.steps', '{"v": {"list": "a", "done": "two"}, "w": null}')
  expect(stepProgress(shelf, 'v', 'a').done).toBe(0)
})

test('[property] the same steps after another change to the system begin anew, and stay done until then', () => {
  const kept = new Map<string, string>()
  const shelf = () => ({
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  })
  const steps = [{ template: 'Open the valve' }, { template: 'Add up to {0}' }]
  const first = stepList(steps, undefined)
  stepProgress(shelf, 'v', first).keep(2)
  expect(stepProgress(shelf, 'v', stepList(steps, undefined)).done).toBe(2)
  expect(stepProgress(shelf, 'v', stepList(steps, { eventId: 'move-1' })).done).toBe(0)
})

import { expect, type Page, test } from '@playwright/test'
import { enter, logLines, newVisit, openDemo, word } from './field-app.ts'

const START = new Date('2026-07-01T13:59:20')

test('[property] the wait of a step is begun by a press, survives a restart, and ends by a press that is in the log', async ({
  page,
}) => {
  await page.clock.install({ time: START })
  await unsettled(page)
  await page.getByRole('button', { name: /^Begin the wait: 15/ }).click()
  await expect(timer(page)).toHaveText('15 min to go Read again from 14:15 on')
  await expect(page.locator('.guide-now')).toBeVisible()
  await expect(logLines(page).first()).toContainText('Wait to settle, begun')
  await page.clock.fastForward('14:30')
  await page.reload()
  await expect(timer(page)).toContainText(' s to go')
  await page.clock.fastForward('00:31')
  await expect(timer(page)).toContainText('Read again now')
  // Nothing beside it asks to wait.
  await expect(page.locator('.guide-now')).toBeHidden()
  await page.getByRole('button', { name: 'It has run: read again' }).click()
  await expect(logLines(page).first()).toContainText('Wait to settle')
  await expect(logLines(page).first()).toContainText('15 min')
  await expect(timer(page)).toBeHidden()
  // Taken back, the wait stands there again, and is over.
  await page.getByRole('button', { name: 'Undo the last entry' }).click()
  await expect(timer(page)).toContainText('Read again now')
})

test('[property] a wait that is stopped early counts as long as it lasted', async ({ page }) => {
  await page.clock.install({ time: START })
  await unsettled(page)
  await page.getByRole('button', { name: /^Begin the wait/ }).click()
  await expect(timer(page)).toContainText('15 min to go')
  await page.clock.fastForward('06:20')
  await page.getByRole('button', { name: 'Stop waiting' }).click()
  await expect(logLines(page).first()).toContainText(/[67] min/)
})

test('[property] after liquid went into a stopped system its rest comes first, and its end is entered', async ({
  page,
}) => {
  await page.clock.install({ time: START })
  await openDemo(page, 'demo-orifice-add')
  await page.locator('summary', { hasText: 'Refrigerant moved' }).click()
  const form = page.locator('.acts .form').first()
  for (const answer of ['as liquid', 'liquid-line port', 'compressor stopped']) {
    await form.getByRole('button', { name: answer }).click()
  }
  await form.getByLabel('Mass by the scale').fill('5 oz')
  await form.getByRole('button', { name: 'Enter in the log' }).click()
  await expect(word(page)).toHaveText('not ready')
  await expect(timer(page)).toHaveText('10 min to go Start from 14:10 on')
  await page.clock.fastForward('10:01')
  await page.getByRole('button', { name: 'It has rested: go on' }).click()
  await expect(timer(page)).toContainText('Read again from 14:15 on')
})

test('[limit] far too much in a stopped system is neither waited for nor started', async ({ page }) => {
  await page.clock.install({ time: START })
  await openDemo(page, 'demo-capillary-weigh-in')
  await page.getByRole('button', { name: 'Enter what the scale showed' }).click()
  await page.keyboard.type('33 oz')
  await page.keyboard.press('Enter')
  await expect(word(page)).toHaveText('recover')
  await expect(timer(page)).toHaveCount(0)
})

test('[property] the owner is asked for calls at the first wait and never before, and is called when it is over', async ({
  page,
  context,
}) => {
  await page.addInitScript(() => {
    const seen = { asked: 0, called: [] as string[], shaken: 0 }
    Object.assign(window, { seen })
    class Call {
      static permission = 'default'
      static requestPermission = async () => {
        seen.asked++
        Call.permission = 'granted'
        return 'granted'
      }
      constructor(words: string) {
        seen.called.push(words)
      }
    }
    Object.assign(window, { Notification: Call })
    Object.defineProperty(navigator, 'vibrate', { value: () => seen.shaken++ })
    ServiceWorkerContainer.prototype.getRegistration = async () => undefined
  })
  const seen = () => page.evaluate(() => (window as unknown as { seen: object }).seen)
  await context.grantPermissions([])
  await page.clock.install({ time: START })
  await unsettled(page)
  expect(await seen()).toEqual({ asked: 0, called: [], shaken: 0 })
  await page.getByRole('button', { name: /^Begin the wait/ }).click()
  await page.getByRole('button', { name: 'Call me when it is over' }).click()
  await expect(page.locator('.wait-calls')).toContainText('This device will call when it is over')
  await page.clock.fastForward('15:01')
  await expect(timer(page)).toContainText('Read again now')
  await expect.poll(seen).toEqual({ asked: 1, called: ['The wait is over: read again'], shaken: 1 })
})

test('[limit] a browser without calls, vibration or wake lock keeps the time all the same', async ({ page }) => {
  await page.addInitScript(() => {
    for (const name of ['wakeLock', 'vibrate']) Reflect.deleteProperty(Navigator.prototype, name)
    Reflect.deleteProperty(window, 'Notification')
  })
  await page.clock.install({ time: START })
  await unsettled(page)
  await page.getByRole('button', { name: /^Begin the wait/ }).click()
  await expect(page.locator('.wait-calls')).toHaveText(
    'Nothing is lost if the screen locks: the time goes on by the clock. ',
  )
  await page.clock.fastForward('15:01')
  await expect(timer(page)).toContainText('Read again now')
})

test('[property] the screen is kept on while a wait runs, and let go when it is over', async ({ page }) => {
  await page.addInitScript(() => {
    const held = { now: 0 }
    Object.assign(window, { held })
    const request = async () => {
      held.now++
      return { release: async () => void held.now-- }
    }
    Object.defineProperty(navigator, 'wakeLock', { value: { request } })
  })
  const held = () => page.evaluate(() => (window as unknown as { held: { now: number } }).held.now)
  await page.clock.install({ time: START })
  await unsettled(page)
  expect(await held()).toBe(0)
  await page.getByRole('button', { name: /^Begin the wait/ }).click()
  await expect(page.locator('.wait-calls')).toContainText('The screen stays on')
  await expect.poll(held).toBe(1)
  await page.clock.fastForward('15:01')
  await expect(timer(page)).toContainText('Read again now')
  await expect.poll(held).toBe(0)
})

test('[limit] a clock that was set back is told, and the wait can be ended by the watch', async ({ page }) => {
  await page.clock.install({ time: START })
  await unsettled(page)
  await page.getByRole('button', { name: /^Begin the wait/ }).click()
  await expect(timer(page)).toContainText('15 min to go')
  await page.clock.setSystemTime(new Date('2026-07-01T12:00:00'))
  await page.clock.runFor(2000)
  // While the page lives it goes on by what passed.
  await expect(timer(page)).toContainText('15 min to go')
  await page.reload()
  await expect(page.locator('.settle-clock')).toContainText('a time from before the last entry, 13:59')
  await page.getByRole('button', { name: 'I have waited 15 min' }).click()
  await expect(page.locator('.settle-clock')).toBeHidden()
})

test('[property] few times are told aloud', async ({ page }) => {
  await page.clock.install({ time: START })
  await unsettled(page)
  await page.getByRole('button', { name: /^Begin the wait/ }).click()
  const told = page.locator('.settle-clock [role=status]')
  await expect(told).toHaveText('15 minutes to go')
  await page.clock.fastForward('04:00')
  await expect(told).toHaveText('15 minutes to go')
  await page.clock.fastForward('02:00')
  await expect(told).toHaveText('10 minutes to go')
  await page.clock.fastForward('09:01')
  await expect(told).toHaveText('The wait is over: read again')
})

/** A visit that asks for nothing but to let the system run. */
async function unsettled(page: Page): Promise<void> {
  await newVisit(page)
  await enter(page, 'system-refrigerant', 'R-410A')
  await page.getByRole('button', { name: 'fixed orifice' }).click()
  await page.getByRole('button', { name: 'comfort cooling' }).click()
  await expect(page.getByRole('button', { name: /^Begin the wait/ })).toBeVisible()
}

const timer = (page: Page) => page.getByRole('timer')

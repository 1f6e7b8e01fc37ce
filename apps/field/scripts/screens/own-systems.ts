import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { VisitEvent } from '@chargewright/visit'
import type { Page } from '@playwright/test'
import { openStart } from '../../test/field-app.ts'

const EXAMPLES = fileURLToPath(new URL('../../../../examples/', import.meta.url))

/** Systems that a technician of an invented company would have, made of the example visits under other names. */
const SYSTEMS = [
  {
    name: 'Clinic roof, unit 2',
    visits: [
      { day: '2025-06-12', example: 'orifice-hold' },
      { day: '2025-09-03', example: 'orifice-hold', later: { 'suction-temperature': '53 °F' } },
      { day: '2026-05-20', example: 'orifice-hold', later: { 'suction-temperature': '57 °F' } },
      { day: '2026-07-01', example: 'orifice-add' },
    ],
  },
  { name: 'Bakery, cold store', visits: [{ day: '2026-06-24', example: 'receiver-bubbles-under-load' }] },
  { name: 'Harbour office, second floor', visits: [{ day: '2026-06-19', example: 'valve-subcooling-hold' }] },
  { name: 'School kitchen, bottle cooler', visits: [{ day: '2026-06-11', example: 'capillary-weighed-in' }] },
] as const

/** Takes these systems in as one file, as a technician does who changes the phone. */
export async function takeInOwnSystems(page: Page): Promise<void> {
  await openStart(page)
  const file = { name: 'own.archive.json', mimeType: 'application/json', buffer: Buffer.from(archive()) }
  await page.getByLabel('Take in a file').setInputFiles(file)
  await page.getByRole('status').filter({ hasText: 'Systems added: 4.' }).waitFor()
  await page.goto('/')
  await page
    .getByRole('link', { name: /^Clinic roof/ })
    .last()
    .waitFor()
}

function archive(): string {
  const systems = SYSTEMS.map(({ name, visits: [first] }, i) => {
    const [described] = eventsOf(name, `system-${i}`, first)
    return { id: `own-${i}`, origin: 'started-here', setAside: false, events: [described] }
  })
  const visits = SYSTEMS.flatMap(({ name, visits }, i) =>
    visits.map((visit, j) => {
      const id = `visit-${i}-${j}`
      return { id, system: `own-${i}`, origin: 'started-here', setAside: false, events: eventsOf(name, id, visit) }
    }),
  )
  return JSON.stringify({ format: 'chargewright-archive', version: 1, systems, visits, photos: [], preferences: {} })
}

interface OwnVisit {
  readonly day: string
  readonly example: string
  /** Readings in the place of those of the example. */
  readonly later?: Readonly<Record<string, string>>
}

function eventsOf(name: string, id: string, { day, example, later = {} }: OwnVisit): readonly VisitEvent[] {
  const { events } = JSON.parse(readFileSync(`${EXAMPLES}${example}.json`, 'utf8')) as { events: readonly VisitEvent[] }
  return events.map((event, i) => ({
    ...event,
    id: `${id}-${i}`,
    at: `${day}${event.at.slice(10)}`,
    ...(event.kind === 'system-described' && { facts: { ...event.facts, name } }),
    ...(event.kind === 'reading' && { value: later[event.what] ?? event.value }),
  }))
}

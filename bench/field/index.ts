import { loadavg } from 'node:os'
import { type Entry, findingTimes } from './finding-times.ts'
import { keyTimes } from './key-times.ts'
import { openPhone, SLOWER } from './phone.ts'
import { recordTimes } from './record-times.ts'
import { startTimes } from './start-times.ts'

/** What the app must keep on a phone, at the 95th of 100. */
const LIMITS_ms = { start: 1000, key: 50, finding: 200, record: 3000 } as const

/** A reading of the circuit moves no prediction of the model; one of the weather moves all of them. */
const ENTRIES: Readonly<Record<string, Entry>> = {
  circuit: { field: '#reading-suction-temperature', value: (i) => `${60 + (i % 8)}.${i % 7}` },
  weather: { field: '#reading-condenser-entering-air', value: (i) => `${90 + (i % 8)}.${i % 7}` },
}

console.log(`On a phone ${SLOWER} times slower than this machine; load average ${loadNow()}`)
const phone = await openPhone()
try {
  const { page, engine } = await phone.slowedBy()
  console.log(
    `the browser slows the page ${page.toFixed(1)} times, the engine ${engine.toFixed(1)} times: it is slowed here`,
  )
  report('from a warm start to the systems', await startTimes(phone, '/', '.row'), LIMITS_ms.start)
  const visit = await startTimes(phone, '/#/visit/demo-orifice-add', '.entry-value')
  report('from a warm start to the blanks of a visit', visit, LIMITS_ms.start)
  report('from a key of the keypad to what it means', await keyTimes(phone, 'keypad'), LIMITS_ms.key)
  report('from a key of a keyboard to what it means', await keyTimes(phone, 'keyboard'), LIMITS_ms.key)
  for (const [what, entry] of Object.entries(ENTRIES)) {
    const { found_ms, drawn_ms } = await findingTimes(phone, entry)
    report(`from a reading of the ${what} to the new finding`, found_ms, LIMITS_ms.finding)
    report(`from a reading of the ${what} to the frame that shows it`, drawn_ms, LIMITS_ms.finding)
  }
  report('from the press to the record (PDF)', await recordTimes(phone), LIMITS_ms.record)
} finally {
  await phone.end()
}
console.log(`load average ${loadNow()}`)

function report(what: string, times_ms: readonly number[], limit_ms: number): void {
  const sorted = times_ms.toSorted((a, b) => a - b)
  const at = (share: number) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]!
  const figures = `median ${at(0.5).toFixed(0)} ms, 95 % within ${at(0.95).toFixed(0)} ms`
  console.log(
    `${what}, ${times_ms.length} times: ${figures}; limit ${limit_ms} ms, ${(at(0.95) / limit_ms).toFixed(2)} of it`,
  )
}

function loadNow(): string {
  return loadavg()
    .map((load) => load.toFixed(1))
    .join(' ')
}

import { describeProblem } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { checkVisitFile, readVisitFile } from './visit-file.ts'

const head = { id: 'a', at: '2026-02-03T10:00:00Z' }
const file = (...events: readonly unknown[]) => ({ format: 'chargewright-visit', version: 1, id: 'v', events })

/** The problems of a file as sentences. */
function problems(data: unknown): readonly string[] {
  const read = typeof data === 'string' ? readVisitFile(data) : checkVisitFile(data)
  return read.ok ? [] : read.error.map(describeProblem)
}

describe('a visit file', () => {
  test('[property] comes back as it stands, byte order mark or not', () => {
    const whole = { ...file({ ...head, kind: 'reading', what: 'airflow', value: ' 1200 CFM' }), about: 'invented' }
    const json = JSON.stringify(whole)
    expect(readVisitFile(json)).toEqual({ ok: true, value: whole })
    expect(readVisitFile(`\uFEFF${json}`)).toEqual({ ok: true, value: whole })
  })

  test('[property] tells all problems at once', () => {
    expect(problems({ ...file({ ...head, kind: 'note' }, { kind: 'note', text: '' }), version: 2 })).toEqual([
      'version: cannot read “2”; expected 1',
      'events[0].text: missing; expected a value',
      'events[1].id: missing; expected a value',
      'events[1].at: missing; expected a time with its zone, such as 2026-01-31T14:05:00Z',
      'events[1].text: cannot read “”; expected some text',
    ])
  })
})

describe('what is wrong is said in words', () => {
  const reading = { ...head, kind: 'reading', what: 'suction-pressure', value: '118 psig' }
  const statement = (facts: unknown) => file({ ...head, kind: 'system-described', facts })
  const chart = { form: 'grid', indoor: 'wet-bulb', unit: '°F', outdoorTemperatures: [95], indoorTemperatures: [67] }
  const cases: readonly [situation: string, data: unknown, problem: string][] = [
    ['no JSON', 'suction 118 psig', 'visit file: cannot read “suction 118 psig”; expected JSON ('],
    ['nothing', null, 'visit file: cannot read “null”; expected an object'],
    ['a list', [1, 2], 'format: missing; expected a value'],
    ['another format', { ...file(), format: 'notes' }, 'format: cannot read “notes”; expected chargewright-visit'],
    ['events that are no list', { ...file(), events: {} }, 'events: cannot read “an object”; expected a list'],
    ['an event that is no object', file('reading'), 'events[0]: cannot read “reading”; expected an object'],
    [
      'no kind',
      file({ ...head, text: 'x' }),
      'events[0].kind: missing; expected one of system-described, reading, observation, refrigerant-moved, ' +
        'cylinder-weighed, weighing-gear, supply-measured, adjustment, wait, vacuum-test, vacuum-reading, vacuum-log, pressure-test, ' +
        'pressure-test-reading, lessons-forgotten, visit-moved, photo, note, correction',
    ],
    [
      'a number for text',
      file({ ...reading, value: 118 }),
      'events[0].value: cannot read “118”; expected text in quotes',
    ],
    [
      'a list for text',
      file({ ...reading, value: [1, 2] }),
      'events[0].value: cannot read “a list of 2”; expected text',
    ],
    [
      'a word that is none of a choice',
      file({ ...head, kind: 'wait', purpose: 'lunch', duration: '1 h' }),
      'events[0].purpose: cannot read “lunch”; expected one of settle, equalise',
    ],
    [
      'an unknown field',
      file({ ...reading, unit: 'psig' }),
      'events[0].unit: “unit” is not known; expected no such field here',
    ],
    [
      'a field whose name is no word',
      file({ ...reading, 'a.b c': 1 }),
      'events[0]["a.b c"]: “a.b c” is not known; expected no such field here',
    ],
    [
      'a time without its zone',
      file({ ...reading, at: '2026-02-03 10:00' }),
      'events[0].at: cannot read “2026-02-03 10:00”; expected a time with its zone, such as 2026-01-31T14:05:00Z',
    ],
    [
      'yes for true',
      statement({ receiver: 'yes' }),
      'events[0].facts.receiver: cannot read “yes”; expected true or false',
    ],
    [
      'a class beyond any gauge',
      file({ ...reading, instrument: { class: 60, span: '500 psi' } }),
      'events[0].instrument.class: cannot read “60”; expected at most 10',
    ],
    [
      'a class below nothing',
      file({ ...reading, instrument: { class: -1, span: '500 psi' } }),
      'events[0].instrument.class: cannot read “-1”; expected at least 0',
    ],
    [
      'a number for a word of the chart',
      statement({ makersChart: { ...chart, superheat: [['14']] } }),
      'events[0].facts.makersChart.superheat[0][0]: cannot read “14”; expected a number',
    ],
    [
      'a correction put in the place of a fact',
      file({ ...head, kind: 'correction', corrects: 'b', replacement: { kind: 'correction', corrects: 'c' } }),
      'events[0].replacement.kind: cannot read “correction”; expected one of system-described, reading, observation, ' +
        'refrigerant-moved, cylinder-weighed, weighing-gear, supply-measured, adjustment, wait, vacuum-test, vacuum-reading, vacuum-log, ' +
        'pressure-test, pressure-test-reading, lessons-forgotten, visit-moved, photo, note',
    ],
  ]
  test.each(cases)('[limit] %s', (_, data, problem) => {
    expect(problems(data)[0]!.slice(0, problem.length)).toBe(problem)
  })
})

describe('a hostile file is refused and never throws', () => {
  const note = JSON.stringify({ ...head, kind: 'note', text: 'x' })
  const text = (events: string) => `{"format":"chargewright-visit","version":1,"id":"v","events":[${events}]}`
  const deep = `${'['.repeat(50_000)}${']'.repeat(50_000)}`
  const deepObject = `${'{"a":'.repeat(50_000)}1${'}'.repeat(50_000)}`
  const cases: readonly [situation: string, json: string, problem: string][] = [
    [
      '10,001 events',
      text(Array(10_001).fill(note).join()),
      'events: cannot read “a list of 10001”; expected at most 10000 entries',
    ],
    [
      'a text of 100,000 characters',
      text(JSON.stringify({ ...head, kind: 'note', text: 'x'.repeat(1e5) })),
      `events[0].text: cannot read “${'x'.repeat(60)}…”; expected at most 10000 characters`,
    ],
    [
      'a field name of 100,000 characters',
      text(JSON.stringify({ ...head, kind: 'note', text: 'x', ['y'.repeat(1e5)]: 1 })),
      `events[0]["${'y'.repeat(60)}…"]: “${'y'.repeat(60)}…” is not known; expected no such field here`,
    ],
    ['lists nested 50,000 deep', text(deep), 'events[0].kind: missing; expected one of '],
    [
      'lists nested 50,000 deep for a text',
      text(note.replace('"x"', deep)),
      'events[0].text: cannot read “a list of 1”',
    ],
    ['objects nested 50,000 deep', text(note.replace('"x"', deepObject)), 'events[0].text: cannot read “an object”'],
    ['a number beyond all numbers', text('1e999'), 'events[0]: cannot read “Infinity”; expected an object'],
    [
      'such a number in a chart',
      text(
        JSON.stringify({
          ...head,
          kind: 'system-described',
          facts: {
            makersChart: {
              form: 'grid',
              indoor: 'wet-bulb',
              unit: '°F',
              outdoorTemperatures: [7],
              indoorTemperatures: [67],
              superheat: [[14]],
            },
          },
        }).replace('[7]', '[1e999]'),
      ),
      'events[0].facts.makersChart.outdoorTemperatures[0]: cannot read “Infinity”; expected a finite number',
    ],
    ...['__proto__', 'constructor', 'toString', 'hasOwnProperty'].map((key): [string, string, string] => [
      `a field ${key}`,
      text(note.replace('"text"', `"${key}":{"text":"y"},"text"`)),
      `events[0].${key}: “${key}” is not known; expected no such field here`,
    ]),
    [
      'a required field only inside __proto__',
      text('{"__proto__":{"kind":"note"}}'),
      'events[0].kind: missing; expected',
    ],
    ['half a file', text(note).slice(0, -3), 'visit file: cannot read “{"format"'],
    ['an empty file', '', 'visit file: cannot read “”; expected JSON ('],
  ]
  test.each(cases)('[limit] %s', (_, json, problem) => {
    expect(problems(json)[0]!.slice(0, problem.length)).toBe(problem)
  })

  test('[limit] 10,000 events are accepted', () => {
    expect(problems(text(Array(10_000).fill(note).join()))).toEqual([])
  })
})

import { INCH_POUND, METRIC } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { guessMeaning } from './guess-meaning.ts'
import { channelOf, typedValue } from './recording.ts'
import { recordingOfText } from './recording-of-text.ts'

function columns(text: string) {
  const read = recordingOfText('log.csv', text)
  if (!read.ok) throw new Error(JSON.stringify(read.error))
  return Object.fromEntries(
    read.value.columns.map(({ header, samples }) => [header, samples.map(({ time_s, number }) => [time_s, number])]),
  )
}

describe('tables as loggers and spreadsheets write them', () => {
  test('[property] separator and decimal mark are told from the text', () => {
    const wanted = {
      'T1 (°C)': [
        [0, 12.5],
        [10, 12.25],
      ],
      'P1 (bar)': [
        [0, 7],
        [10, 7.1],
      ],
    }
    for (const [s, mark] of [
      [',', '.'],
      [';', ','],
      [';', '.'],
      ['\t', ','],
      ['|', '.'],
    ] as const) {
      const cell = (number: number) => String(number).replace('.', mark)
      const rows = [
        [0, 12.5, 7],
        [10, 12.25, 7.1],
      ].map((row) => row.map(cell).join(s))
      expect(columns([['Time (s)', 'T1 (°C)', 'P1 (bar)'].join(s), ...rows].join('\r\n'))).toEqual(wanted)
    }
  })

  test('[property] lines above the head are skipped, a line of units below it belongs to it', () => {
    const text =
      'Logger 4, made up\nStarted,2026-07-01\n\nElapsed,Suction line,Humidity\nmin,°F,%\n0,64.5,"51"\n2,64.75,52'
    expect(columns(text)).toEqual({
      'Suction line °F': [
        [0, 64.5],
        [120, 64.75],
      ],
      'Humidity %': [
        [0, 51],
        [120, 52],
      ],
    })
  })

  test('[property] a clock may pass midnight, stand beside a date, and count in halves of a day', () => {
    const text = 'Date;Time;T\n01.07.2026;23:59:50;4,5\n02.07.2026;00:00:10;4,75'
    const [first, second] = columns(text).T!
    expect(second![0]! - first![0]!).toBe(20)
    expect(columns('Stamp,T\n7/1/2026 11:59:30 AM,1\n7/1/2026 12:00:30 PM,2').T!.map(([t]) => t)).toEqual([
      43_170, 43_230,
    ])
    expect(columns('at,T\n2026-07-01T14:05:00Z,1\n2026-07-01T14:05:01.5Z,2').T!.map(([t]) => t)).toEqual([
      50_700, 50_701.5,
    ])
  })

  test('[limit] without a time rows are a second apart; the latest row may come first', () => {
    expect(columns('T1,T2\n1,2\n3,4')).toEqual({
      T1: [
        [0, 1],
        [1, 3],
      ],
      T2: [
        [0, 2],
        [1, 4],
      ],
    })
    expect(columns('time,T\n20,2\n10,1').T).toEqual([
      [10, 1],
      [20, 2],
    ])
  })

  test('[limit] cells that hold no number are left out, and what is no table says what is wanted', () => {
    expect(columns('time,T\n0,1\n1,---\n2,3').T).toEqual([
      [0, 1],
      [2, 3],
    ])
    for (const text of ['', 'no table at all', 'a,b\nc,d', 'time\n1\n2', 'time,note\n0,on\n1,off']) {
      expect([text, recordingOfText('x', text)]).toMatchObject([text, { ok: false }])
    }
  })
})

describe('what a column means', () => {
  test.each([
    ['Suction pressure (psig)', 'suction-pressure', 'psig'],
    ['LP bar', 'suction-pressure', 'bar g'],
    ['High side pressure, kPa', 'liquid-pressure', 'kPa g'],
    ['Suction line °C', 'suction-temperature', '°C'],
    ['liquid_line [°F]', 'liquid-temperature', '°F'],
    ['Outdoor air', 'condenser-entering-air', '°F'],
    ['Return WB', 'return-air-wet-bulb', '°F'],
    ['Return air F', 'return-air-dry-bulb', '°F'],
    ['RH %', 'return-air-humidity', '%'],
    ['Supply air °C', 'supply-air-dry-bulb', '°C'],
    ['Amps', 'compressor-current', 'A'],
  ] as const)('[property] “%s” is guessed', (header, what, unit) => {
    expect(guessMeaning(header, INCH_POUND)).toEqual({ what, unit })
  })

  test('[limit] what is not known is not guessed', () => {
    expect(guessMeaning('Channel 7', METRIC)).toBeUndefined()
  })

  test('[property] a value is kept in the unit of its column, with a digit more than is shown', () => {
    const column = { header: 'T', instrument: 'i', samples: [{ time_s: 0, number: 12.345 }] }
    const channel = channelOf(column, { what: 'suction-temperature', unit: '°C' })
    expect(channel.samples[0]!.si).toBeCloseTo(285.495, 9)
    expect(typedValue({ dimension: 'temperature', si: 285.495 }, 'suction-temperature', '°C')).toBe('12.35 °C')
  })
})

import { describe, expect, test } from 'vitest'
import type { Fact, VisitEvent } from './event.ts'
import { fold } from './fold.ts'
import { runningWait } from './running-wait.ts'
import type { SystemStatement } from './system.ts'

const at = '2026-02-03T10:00:00Z'

/** A visit of these facts, with the ids e0, e1, … in order. */
const visitOf = (...facts: readonly Fact[]) =>
  fold({ id: 'v', events: facts.map((f, i) => ({ id: `e${i}`, at, ...f })) })
const described = (facts: SystemStatement): Fact => ({ kind: 'system-described', facts })
const reading = (value: string): Fact => ({ kind: 'reading', what: 'suction-pressure', value })
const glass = (answer: string): Fact => ({ kind: 'observation', what: 'sight-glass', answer })

describe('the system as described', () => {
  test('[property] statements add up, and a later one replaces an earlier one field by field', () => {
    const { system } = visitOf(
      described({ refrigerant: 'R-410A', nominalCapacity: '3 ton', receiver: true }),
      described({ nominalCapacity: '10,5 kW', receiver: false, meteringDevice: 'fixed-orifice' }),
    )
    expect(system.facts).toEqual({
      refrigerant: 'R-410A',
      nominalCapacity: '10,5 kW',
      receiver: false,
      meteringDevice: 'fixed-orifice',
    })
    expect(system.figures).toEqual({
      nominalCapacity: {
        eventId: 'e1',
        at,
        position: 1,
        typed: '10,5 kW',
        quantity: { dimension: 'cooling capacity', si: 10_500 },
      },
    })
  })

  test('[property] null takes an earlier statement back', () => {
    const { system, problems } = visitOf(
      described({ refrigerant: 'R-410A', nameplateSubcooling: '10 °F', accumulator: true }),
      described({ refrigerant: null, nameplateSubcooling: null, accumulator: null, boxSetPoint: null }),
    )
    expect(system).toEqual({ facts: {}, figures: {} })
    expect(problems).toEqual([])
  })

  test('[limit] a figure that cannot be read clears the older one, keeps its text and names itself', () => {
    const visit = visitOf(
      described({ nominalCapacity: '3 ton' }),
      described({ nominalCapacity: 'three', name: 'Shop' }),
    )
    expect(visit.system).toEqual({ facts: { nominalCapacity: 'three', name: 'Shop' }, figures: {} })
    expect(visit.problems).toMatchObject([
      { eventId: 'e1', problem: { kind: 'unreadable', field: 'Nominal capacity', value: 'three' } },
    ])
  })
})

describe('readings', () => {
  test('[property] the last of a kind stands, and all of them make the history', () => {
    const { readings, history } = visitOf(reading('118 psig'), reading(' 8,1 bar '))
    expect(readings['suction-pressure']).toMatchObject({ typed: ' 8,1 bar ', position: 1 })
    expect(history.map(({ typed }) => typed)).toEqual(['118 psig', ' 8,1 bar '])
  })

  test('[property] the order of events decides, not their clock', () => {
    const events: readonly VisitEvent[] = [
      { id: 'a', at: '2026-02-03T12:00:00Z', kind: 'reading', what: 'suction-pressure', value: '118 psig' },
      { id: 'b', at: '2026-02-03T09:00:00+05:00', kind: 'reading', what: 'suction-pressure', value: '121 psig' },
    ]
    expect(fold({ id: 'v', events }).readings['suction-pressure']).toMatchObject({ eventId: 'b', position: 1 })
  })

  test('[limit] one that cannot be read leaves none of its kind standing, and the rest is folded', () => {
    const visit = visitOf(
      reading('118 psig'),
      reading('one hundred'),
      { kind: 'note', text: 'gauge stuck' },
      glass('clear'),
    )
    expect(visit.readings).toEqual({})
    expect(visit.history).toHaveLength(1)
    expect(visit.problems).toMatchObject([
      { eventId: 'e1', problem: { field: 'Suction pressure', value: 'one hundred' } },
    ])
    expect(visit.observations['sight-glass']?.answer).toBe('clear')
    expect(visit.log).toHaveLength(4)
  })

  test('[limit] an ambiguous one is asked about and not guessed', () => {
    const visit = visitOf({ kind: 'reading', what: 'airflow', value: '1,234 CFM' })
    expect(visit.problems).toMatchObject([
      { problem: { kind: 'ambiguous', field: 'Airflow', accepted: '1234 CFM or 1.234 CFM' } },
    ])
  })

  test('[limit] an implausible one is used, and questioned', () => {
    const visit = visitOf({ kind: 'reading', what: 'liquid-temperature', value: '1100 °F' })
    expect(visit.readings['liquid-temperature']?.typed).toBe('1100 °F')
    expect(visit.doubts).toMatchObject([{ eventId: 'e0', problem: { field: 'Liquid line', value: 1100, unit: '°F' } }])
    expect(visit.problems).toEqual([])
  })

  test('[property] a corrected one keeps its place in the walk; the older one stands again when it is withdrawn', () => {
    const events: readonly VisitEvent[] = [
      { id: 'a', at, ...reading('118 psig') },
      { id: 'b', at, ...reading('811 psig') },
      { id: 'c', at, ...glass('clear') },
      { id: 'd', at, kind: 'correction', corrects: 'b', replacement: reading('118.5 psig') },
    ]
    expect(fold({ id: 'v', events }).readings['suction-pressure']).toMatchObject({ typed: '118.5 psig', position: 1 })
    const withdrawn: VisitEvent = { id: 'e', at, kind: 'correction', corrects: 'b' }
    const { readings } = fold({ id: 'v', events: [...events, withdrawn] })
    expect(readings['suction-pressure']).toMatchObject({ typed: '118 psig', position: 0 })
  })

  test('[property] a correction can make it a reading of another kind', () => {
    const events: readonly VisitEvent[] = [
      { id: 'a', at, ...reading('340 psig') },
      {
        id: 'b',
        at,
        kind: 'correction',
        corrects: 'a',
        replacement: { kind: 'reading', what: 'liquid-pressure', value: '340 psig' },
      },
    ]
    const { readings } = fold({ id: 'v', events })
    expect(Object.keys(readings)).toEqual(['liquid-pressure'])
  })
})

describe('observations', () => {
  test('[limit] an answer that is none of its answers leaves none standing, and the problem lists them', () => {
    const visit = visitOf(glass('clear'), glass('toString'))
    expect(visit.observations).toEqual({})
    expect(visit.problems).toEqual([
      {
        eventId: 'e1',
        problem: {
          kind: 'unknown',
          field: 'Sight glass',
          value: 'toString',
          accepted: 'one of clear, bubbles, partly-filled, empty',
        },
      },
    ])
  })
})

describe('what was done', () => {
  const moved = (mass: string): Fact => ({
    kind: 'refrigerant-moved',
    direction: 'into-system',
    mass,
    phase: 'liquid',
    port: 'liquid-line',
    compressor: 'stopped',
  })

  test('[property] refrigerant moved has its mass with the uncertainty of a charging scale', () => {
    const [move] = visitOf(moved('6 1/4 oz')).moves
    // ±(5 g + 0.1 %) as a limit seldom reached; 6.25 oz are 177.2 g.
    expect(move!.mass.si).toBeCloseTo(0.17718, 5)
    expect(move!.mass.u).toBeCloseTo((0.005 + 0.001 * 0.17718) / Math.sqrt(6), 8)
    expect(move!.fact).toEqual(moved('6 1/4 oz'))
  })

  test('[limit] less than nothing cannot be moved: the direction says which way', () => {
    const { moves, problems } = visitOf(moved('-6 oz'))
    expect(moves).toEqual([])
    expect(problems).toMatchObject([{ eventId: 'e0', problem: { kind: 'out-of-range', field: 'Refrigerant moved' } }])
  })

  test('[limit] nothing, or more than the whole nameplate charge, is taken and questioned', () => {
    const nameplate: Fact = { kind: 'system-described', facts: { nameplateCharge: '6 lb' } }
    const { moves, doubts } = visitOf(moved('0 oz'), moved('500 lb'), moved('6 lb'), nameplate)
    expect(moves).toHaveLength(3)
    expect(doubts).toMatchObject([
      { eventId: 'e0', problem: { kind: 'unreadable', value: '0 oz' } },
      { eventId: 'e1', problem: { kind: 'out-of-range', value: 8000, max: 96, unit: 'oz' } },
    ])
  })

  test('[property] adjustments and waits keep their order among the readings', () => {
    const visit = visitOf(
      reading('118 psig'),
      { kind: 'adjustment', what: 'blower one step faster' },
      { kind: 'wait', purpose: 'settle', duration: '1/4 h' },
      { kind: 'wait', purpose: 'equalise', duration: 'a while' },
    )
    expect(visit.adjustments).toEqual([{ eventId: 'e1', at, position: 1, what: 'blower one step faster' }])
    expect(visit.waits).toMatchObject([
      { position: 2, purpose: 'settle', duration: { dimension: 'duration', si: 900 } },
    ])
    expect(visit.problems).toMatchObject([{ eventId: 'e3', problem: { field: 'Wait', value: 'a while' } }])
  })

  test('[property] a wait that only begins is none that is over, until its end is entered', () => {
    const ends = '2026-01-31T14:20:00Z'
    const begins: Fact = { kind: 'wait', purpose: 'settle', duration: '15 min', ends }
    const over: Fact = { kind: 'wait', purpose: 'settle', duration: '15 min' }
    const running = visitOf(begins)
    expect(running.waits).toEqual([])
    expect(runningWait(running)).toMatchObject({ position: 0, ends, duration: { si: 900 } })
    expect(runningWait(visitOf(begins, { ...over, purpose: 'equalise' }))).toMatchObject({ position: 0 })
    expect(runningWait(visitOf(begins, over))).toBeUndefined()
    expect(runningWait(visitOf(begins, { kind: 'adjustment', what: 'stem' }))).toBeUndefined()
    expect(runningWait(visitOf(begins, over, begins))).toMatchObject({ position: 2 })
  })

  test('[property] photos and notes are in the log and nowhere else', () => {
    const visit = visitOf(
      { kind: 'photo', subject: 'nameplate', file: 'plate.jpg' },
      { kind: 'note', text: 'dog in yard' },
    )
    const { id, log, ...derived } = visit
    expect(id).toBe('v')
    expect(log.map(({ holds }) => holds?.kind)).toEqual(['photo', 'note'])
    const { id: _, log: __, ...empty } = fold({ id: 'v', events: [] })
    expect(derived).toEqual(empty)
  })
})

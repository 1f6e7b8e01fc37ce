import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { anyBook, anyMovement, cylinder, kg } from '../../test/any-book.ts'
import { balanceBook, type CylinderBook } from './balance-book.ts'
import type { Cylinder } from './cylinder.ts'
import { fillLimit } from './fill-limit.ts'
import type { BookEntry, Movement, Weighing } from './movement.ts'

const gross = (before: number, after: number, stated?: number): Weighing => ({
  kind: 'before-and-after',
  before: kg(before),
  after: kg(after),
  ...(stated === undefined ? {} : { stated: kg(stated) }),
})
const charge = (id: string, weighing: Weighing, rest: Partial<Movement> = {}): BookEntry => ({
  kind: 'moved',
  movement: {
    id,
    at: '2026-02-03T10:00:00Z',
    cylinder: 'A',
    refrigerant: 'R-410A',
    direction: 'from-cylinder',
    counterpart: { kind: 'system', system: 'shop' },
    weighing,
    ...rest,
  },
})
const recover = (id: string, weighing: Weighing, rest: Partial<Movement> = {}) =>
  charge(id, weighing, { direction: 'to-cylinder', ...rest })

const kindsOf = (entries: readonly BookEntry[], one: Partial<Cylinder> = {}) =>
  balanceBook({ cylinders: [cylinder('A', one)], entries }).findings.map(({ kind }) => kind)

describe('balance', () => {
  test('[property] a charge leaves the cylinder and arrives in the system, with the uncertainty of two weighings', () => {
    const { cylinders, systems, findings } = balanceBook({
      cylinders: [cylinder('A')],
      entries: [charge('m1', gross(18, 16.5))],
    })
    expect(findings).toEqual([])
    expect(cylinders[0]?.toSystems.si).toBeCloseTo(1.5, 12)
    expect(cylinders[0]?.content.si).toBeCloseTo(8.5, 12)
    expect(systems).toMatchObject([{ system: 'shop', refrigerant: 'R-410A', movementIds: ['m1'] }])
    expect(systems[0]?.net.u).toBeCloseTo(0.005 * Math.SQRT2, 12)
  })

  test('[property] what the hoses kept is in neither: the system got less than the cylinder gave, or gave more', () => {
    const weighing = { ...gross(18, 16.5), hoses: kg(0.06, 0.023) } as const
    const recovery = { ...gross(8, 9), hoses: kg(0.06, 0.023) } as const
    const { cylinders, systems, findings } = balanceBook({
      cylinders: [cylinder('A'), cylinder('R', { holds: 'recovered', firstWeighing: kg(8) })],
      entries: [charge('m1', weighing), recover('m2', recovery, { cylinder: 'R' })],
    })
    expect(findings).toEqual([])
    expect(cylinders.map(({ hoses }) => hoses.si)).toEqual([0.06, 0.06])
    expect(systems[0]?.charged.si).toBeCloseTo(1.44, 12)
    expect(systems[0]?.recovered.si).toBeCloseTo(1.06, 12)
  })

  test('[property] every account closes, and the systems got what the cylinders gave, whatever is written', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const { cylinders, systems } = balanceBook(book)
        for (const one of cylinders) {
          const came = one.opening.si + one.fromSystems.si + one.fromElsewhere.si + one.unexplained.si
          expect(came - one.toSystems.si - one.toElsewhere.si - one.hoses.si).toBeCloseTo(one.content.si, 9)
          expect(one.gross.si - one.cylinder.tare.si).toBeCloseTo(one.content.si, 9)
        }
        const given = cylinders.reduce((sum, one) => sum + one.toSystems.si - one.fromSystems.si, 0)
        expect(systems.reduce((sum, one) => sum + one.net.si, 0)).toBeCloseTo(given, 9)
        for (const { charged, recovered, net } of systems) expect(charged.si - recovered.si).toBeCloseTo(net.si, 9)
      }),
      { seed: 2026, numRuns: 500 },
    )
  })

  test('[property] a movement that is corrected to another leaves the book as if that one had been written first', () => {
    fc.assert(
      fc.property(anyBook, anyMovement, anyMovement, ({ cylinders, entries }, wrong, right) => {
        const id = 'fresh'
        const { id: _, ...replacement } = right
        const corrected = [
          { kind: 'moved', movement: { ...wrong, id } },
          ...entries,
          { kind: 'corrected', movementId: id, replacement },
        ] as const
        const atOnce = [{ kind: 'moved', movement: { ...right, id } }, ...entries] as const
        const { problems, ...balance } = balanceBook({ cylinders, entries: corrected })
        const { problems: others, ...expected } = balanceBook({ cylinders, entries: atOnce })
        expect(balance).toEqual(expected)
        expect(problems).toHaveLength(others.length)
      }),
      { seed: 2027, numRuns: 300 },
    )
  })

  test('[property] a withdrawn movement never was, and can be put back', () => {
    const book = (...entries: BookEntry[]): CylinderBook => ({ cylinders: [cylinder('A')], entries })
    const [first, second] = [charge('m1', gross(18, 17)), charge('m2', gross(17, 16))]
    const withdrawn = { kind: 'corrected', movementId: 'm2', reason: 'entered twice' } as const
    expect(balanceBook(book(first, second, withdrawn))).toEqual(balanceBook(book(first)))
    const { id: _, ...again } = (second as Extract<BookEntry, { kind: 'moved' }>).movement
    const back = { kind: 'corrected', movementId: 'm2', replacement: again } as const
    expect(balanceBook(book(first, second, withdrawn, back))).toEqual(balanceBook(book(first, second)))
  })
})

describe('findings', () => {
  test('[limit] a change of weight between two entries is flagged beyond the scales, not within them', () => {
    const next = (before: number) => kindsOf([charge('m1', gross(18, 17)), charge('m2', gross(before, 16))])
    expect(next(17)).toEqual([])
    expect(next(17.0141)).toEqual([])
    expect(next(17.0143)).toEqual(['weight-changed-between'])
    expect(next(16.9857)).toEqual(['weight-changed-between'])
  })

  test('[limit] the mass of the visit is held against the gross weights, within the three uncertainties', () => {
    expect(kindsOf([charge('m1', gross(18, 17, 1.017))])).toEqual([])
    expect(kindsOf([charge('m1', gross(18, 17, 1.018))])).toEqual(['disagrees-with-visit'])
    const hoses = { ...gross(18, 17, 0.94), hoses: kg(0.06, 0.023) } as const
    expect(kindsOf([charge('m1', hoses)])).toEqual([])
  })

  test('[limit] an entry that the scale contradicts is flagged, and the scale is believed', () => {
    const entries = [charge('m1', gross(16, 17))]
    expect(kindsOf(entries, { firstWeighing: kg(16) })).toEqual(['wrong-direction'])
    const { systems } = balanceBook({ cylinders: [cylinder('A', { firstWeighing: kg(16) })], entries })
    expect(systems[0]?.net.si).toBe(-1)
  })

  test('[limit] lighter than its tare is flagged', () => {
    expect(kindsOf([charge('m1', gross(18, 7.95))])).toEqual(['below-tare'])
    expect(kindsOf([charge('m1', gross(18, 7.99))])).toEqual([])
  })

  test('[limit] overfilled is flagged on the safe side of the uncertainty, and at the first weighing too', () => {
    const limit = fillLimit(kg(20, 0), 'R-410A')
    const full = 8 + (limit.ok ? limit.value.mass.si : Number.NaN)
    const recovery = { holds: 'recovered', firstWeighing: kg(20) } as const
    // Tare and weighing are uncertain by 5 g each: 14 g as a 95 % band.
    expect(kindsOf([recover('m1', gross(20, full - 0.015))], recovery)).toEqual([])
    expect(kindsOf([recover('m1', gross(20, full - 0.013))], recovery)).toEqual(['overfilled'])
    expect(kindsOf([], { firstWeighing: kg(26) })).toEqual(['overfilled'])
  })

  test('[limit] recovered refrigerant goes neither onto another one nor onto a new one nor into a disposable cylinder', () => {
    const recovery = { holds: 'recovered', firstWeighing: kg(8) } as const
    expect(kindsOf([recover('m1', gross(8, 9), { refrigerant: 'r410a' })], recovery)).toEqual([])
    expect(kindsOf([recover('m1', gross(8, 9), { refrigerant: 'R-22' })], recovery)).toEqual(['mixed'])
    expect(kindsOf([recover('m1', gross(18, 19))])).toEqual(['recovered-into-new'])
    expect(kindsOf([recover('m1', gross(8, 9))], { ...recovery, refillable: false })).toEqual(['refilled-disposable'])
  })

  test('[limit] a cylinder once mixed stays mixed, whatever comes out of it', () => {
    const entries = [
      recover('m1', gross(8, 9), { refrigerant: 'R-22' }),
      charge('m2', gross(9, 8.5), { counterpart: { kind: 'elsewhere', where: 'reclaimer' } }),
    ]
    expect(kindsOf(entries, { holds: 'recovered', firstWeighing: kg(8) })).toEqual(['mixed', 'mixed'])
  })

  test('[limit] what was recovered from one system may go back there, into another only under one owner', () => {
    const from = (system: string) => ({ counterpart: { kind: 'system', system } }) as const
    const recovery = { holds: 'recovered', firstWeighing: kg(8) } as const
    const first = recover('m1', gross(8, 10), from('shop'))
    expect(kindsOf([first, charge('m2', gross(10, 9), from('shop'))], recovery)).toEqual([])
    expect(kindsOf([first, charge('m2', gross(10, 9), from('house'))], recovery)).toEqual(['recovered-to-other-system'])
  })

  test('[limit] a gas without a computable fill limit asks for the stamped one when it is filled', () => {
    const gas = { refrigerant: 'R-744', holds: 'recovered', firstWeighing: kg(8) } as const
    expect(kindsOf([recover('m1', gross(8, 9), { refrigerant: 'CO2' })], gas)).toEqual(['fill-limit-unknown'])
  })
})

describe('problems', () => {
  test('[limit] a used id, an unknown cylinder, an aimless correction and a weight that is none are set aside, named', () => {
    const { problems, steps } = balanceBook({
      cylinders: [cylinder('A'), cylinder('A'), cylinder('C', { tare: kg(-1) })],
      entries: [
        charge('m1', gross(18, 17)),
        charge('m1', gross(17, 16)),
        charge('m2', gross(17, 16), { cylinder: 'lost' }),
        charge('m3', { kind: 'difference', mass: kg(Number.NaN) }),
        { kind: 'corrected', movementId: 'm9' },
      ],
    })
    expect(steps).toHaveLength(1)
    expect(problems.map(({ field }) => field)).toEqual([
      'cylinders[1].id',
      'cylinders[2].tare',
      'entries[1].movement.id',
      'entries[4].movementId',
      'movement m2, cylinder',
      'movement m3, mass',
    ])
  })
})

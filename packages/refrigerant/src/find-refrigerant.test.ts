import { describe, expect, it } from 'vitest'
import { findRefrigerant, refrigerantNames } from './find-refrigerant.ts'

describe('findRefrigerant', () => {
  it.each([
    ['R410A', 'R-410A'],
    ['r-410a', 'R-410A'],
    ['410a', 'R-410A'],
    ['R 410 A', 'R-410A'],
    ['HFC-134a', 'R-134a'],
    ['propane', 'R-290'],
    ['CO2', 'R-744'],
    ['Ammonia', 'R-717'],
    ['R-1234ze(E)', 'R-1234ze(E)'],
    ['R1234ze', 'R-1234ze(E)'],
    ['R1234zeZ', 'R-1234ze(Z)'],
    ['RE170', 'R-E170'],
    ['c318', 'R-C318'],
    ['R507', 'R-507A'],
  ])('[property] reads %s as %s', (written, name) => {
    expect(findRefrigerant(written)).toMatchObject({ ok: true, value: { name } })
  })

  it('[property] returns the same object again', () => {
    expect(findRefrigerant('R32')).toBe(findRefrigerant('R-32'))
  })

  it('[limit] an unknown name is told with what comes near it', () => {
    expect(findRefrigerant('R-407')).toMatchObject({
      ok: false,
      error: { kind: 'unknown', field: 'refrigerant', value: 'R-407', accepted: expect.stringContaining('R-407C') },
    })
    expect(findRefrigerant('')).toMatchObject({ ok: false, error: { kind: 'unknown' } })
  })

  it('[limit] a blend with an unpublished pair is refused with the pair', () => {
    expect(findRefrigerant('R-402A')).toEqual({
      ok: false,
      error: {
        kind: 'unsolved',
        field: 'refrigerant',
        value: 'R-402A',
        accepted: 'no published mixing parameters for R-125/R-22',
      },
    })
  })

  it('[pinned] 162 refrigerants can be computed: 49 fluids and 113 blends', () => {
    const names = refrigerantNames()
    expect(names).toHaveLength(162)
    expect(names).not.toContain('R-402A')
    const found = names.map((name) => findRefrigerant(name))
    expect(found.every((result) => result.ok)).toBe(true)
    expect(found.filter((result) => result.ok && result.value.kind === 'pure')).toHaveLength(49)
  })

  it('[property] components add up', () => {
    const found = findRefrigerant('R-448A')
    if (!found.ok) throw new Error('not found')
    const { components, molarMass_kg_mol } = found.value
    expect(components.reduce((sum, part) => sum + part.massFraction, 0)).toBeCloseTo(1, 12)
    expect(components.reduce((sum, part) => sum + part.moleFraction, 0)).toBeCloseTo(1, 12)
    const massOfAMole = components.reduce((sum, { name, moleFraction }) => {
      const pure = findRefrigerant(name)
      return sum + (pure.ok ? moleFraction * pure.value.molarMass_kg_mol : Number.NaN)
    }, 0)
    expect(massOfAMole).toBeCloseTo(molarMass_kg_mol, 12)
  })
})

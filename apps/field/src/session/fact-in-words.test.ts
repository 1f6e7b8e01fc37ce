import type { Fact } from '@chargewright/visit'
import { describe, expect, test } from 'vitest'
import { factInWords } from './fact-in-words.ts'

describe('a fact on one line of the log', () => {
  const cases: readonly (readonly [Fact, string, string])[] = [
    [{ kind: 'reading', what: 'suction-pressure', value: '110 psig' }, 'Suction pressure', '110 psig'],
    [{ kind: 'observation', what: 'sight-glass', answer: 'bubbles' }, 'Sight glass', 'bubbles in the stream'],
    [{ kind: 'observation', what: 'sight-glass', answer: 'toString' }, 'Sight glass', 'toString'],
    [{ kind: 'system-described', facts: { receiver: false } }, 'Receiver', 'no'],
    [{ kind: 'system-described', facts: { elevation: null } }, 'Site elevation', 'taken back'],
    [
      { kind: 'system-described', facts: { refrigerant: 'R-22', meteringDevice: 'fixed-orifice' } },
      'System',
      'Refrigerant: R-22; Metering device: fixed orifice',
    ],
    [{ kind: 'wait', purpose: 'settle', duration: '15 min' }, 'Wait to settle', '15 min'],
    [
      { kind: 'wait', purpose: 'equalise', duration: '10 min', ends: '2026-01-31T14:15:00Z' },
      'Wait to equalise, begun',
      '10 min',
    ],
    [
      {
        kind: 'refrigerant-moved',
        direction: 'into-system',
        mass: '6 oz',
        phase: 'vapour',
        port: 'suction',
        compressor: 'running',
        cylinder: 'C4',
      },
      'Into the system',
      '6 oz, as vapour, suction port, compressor running, cylinder C4',
    ],
  ]
  test.each(cases)('[property] %j', (fact, what, typed) => {
    expect(factInWords(fact)).toEqual({ what, typed })
  })
})

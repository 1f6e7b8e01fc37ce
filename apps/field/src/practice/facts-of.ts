import type { Action, BenchRequest } from '@chargewright/cycle'
import { subtract, type UnitPreference } from '@chargewright/quantity'
import { type Fact, READING_IDS } from '@chargewright/visit'
import { quantityInWords } from '../session/in-words.ts'
import { t } from '../words/t.ts'
import type { BenchInstrument, Practised } from './practised.ts'

/** What a trainee enters in the log of the visit for a request, as one would on a roof. */
export function factsOf(
  request: BenchRequest,
  before: Practised,
  after: Practised,
  typed: string,
  units: UnitPreference,
): readonly Fact[] {
  const compressor = before.isRunning ? 'running' : 'stopped'
  switch (request.kind) {
    case 'help':
    case 'look':
    case 'debrief':
      return []
    case 'wait':
      return [{ kind: 'wait', purpose: 'settle', duration: typed }]
    case 'add':
      return [moved('into-system', typed, request.phase, 'suction', compressor)]
    case 'recover':
      return [moved('out-of-system', typed, 'liquid', 'liquid-line', compressor)]
    case 'recover-evacuate-recharge':
    case 'replace-compressor': {
      const out = plain(quantityInWords(subtract(after.cylinder.held, before.cylinder.held), units))
      return [
        moved('out-of-system', out, 'liquid', 'liquid-line', 'stopped'),
        { kind: 'adjustment', what: t(EMPTIED[request.kind]) },
        moved('into-system', typed, 'liquid', 'liquid-line', 'stopped'),
      ]
    }
    default:
      return [{ kind: 'adjustment', what: ADJUSTED[request.kind](typed) }]
  }
}

/** What is done while the system is empty. */
const EMPTIED = {
  'recover-evacuate-recharge': 'evacuated and held',
  'replace-compressor': 'replaced the compressor and the drier, evacuated and held',
} as const

const ADJUSTED: Readonly<
  Record<Exclude<Action['kind'], 'add' | 'recover' | keyof typeof EMPTIED>, (typed: string) => string>
> = {
  vent: (typed) => t('vented {0}', typed),
  'turn-stem': (typed) => t('turned the valve stem by {0}, clockwise counted up', typed),
  'open-doors': () => t('opened the doors'),
  'indoor-fan': (typed) => t('set the indoor fan to {0}', typed),
  'clean-indoor-coil': () => t('cleaned the indoor coil and its filter'),
  'clean-condenser': () => t('cleaned the condenser'),
  'change-drier': () => t('changed the filter-drier'),
  restart: () => t('restarted it'),
}

/** What the instruments show, as readings in walking order; those that a visit has no place for are left out. */
export function readingsOf(instruments: readonly BenchInstrument[], units: UnitPreference): readonly Fact[] {
  return instruments
    .flatMap(({ what, quantity }) =>
      what ? [{ kind: 'reading', what, value: plain(quantityInWords(quantity, units)) } as const] : [],
    )
    .sort((a, b) => READING_IDS.indexOf(a.what) - READING_IDS.indexOf(b.what))
    .map((fact) => ({ ...fact, instrument: { name: 'practice bench' } }))
}

/** As a person would type it: with plain spaces. */
const plain = (words: string): string => words.replace(/[\u00a0\u202f]/g, ' ')

const moved = (
  direction: 'into-system' | 'out-of-system',
  mass: string,
  phase: 'liquid' | 'vapour',
  port: 'suction' | 'liquid-line',
  compressor: 'running' | 'stopped',
): Fact => ({ kind: 'refrigerant-moved', direction, mass, phase, port, compressor })

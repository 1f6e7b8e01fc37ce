import type { BenchRequest } from '@chargewright/cycle'
import { type Dimension, fail, ok, type Problem, parse, type Result } from '@chargewright/quantity'
import { unreadable } from '../failure.ts'
import { shorten } from '../shorten.ts'
import { typedShare } from '../typed-flag.ts'

/** Everything that can be typed at the prompt, as help shows it. */
export const BENCH_COMMANDS = [
  ['look', 'read all instruments'],
  ['wait 15 min', 'let time pass, and read'],
  ['add 5 oz', 'weigh vapour into the running low side; “add 5 oz liquid” for liquid'],
  ['recover 5 oz', 'weigh refrigerant out, into the recovery cylinder'],
  ['valve 1', 'turn the stem of a thermostatic valve clockwise, −1 back'],
  ['fan 80 %', 'set the speed of the indoor fan'],
  ['doors', 'open the doors: warm and moist air for the coil'],
  ['clean coil', 'clean the indoor coil and its filter'],
  ['clean condenser', 'clean the condenser coil'],
  ['drier', 'change the filter-drier'],
  ['purge 7 lb', 'recover all, evacuate, weigh that much in'],
  ['compressor 7 lb', 'replace the compressor and the drier, evacuate, weigh that much in'],
  ['restart', 'after a switch has stopped it'],
  ['debrief', 'end, and see what it was and what each act did'],
  ['help', 'this list'],
] as const

/** Reads a line of the prompt. */
export function parseRequest(line: string): Result<BenchRequest, Problem> {
  const [word = '', ...words] = line.trim().toLowerCase().split(/\s+/)
  const rest = words.join(' ')
  const amount = (dimension: Dimension, of: (si: number) => BenchRequest): Result<BenchRequest, Problem> => {
    const read = parse(rest, dimension, { field: word })
    return read.ok ? ok(of(read.value.si)) : read
  }
  const alone = (request: BenchRequest): Result<BenchRequest, Problem> =>
    rest === '' ? ok(request) : fail(unreadable(word, rest, 'nothing behind it'))
  switch (word) {
    case 'help':
    case 'look':
    case 'debrief':
    case 'restart':
      return alone({ kind: word })
    case 'wait':
      return amount('duration', (duration_s) => ({ kind: 'wait', duration_s }))
    case 'add':
      return parseAdd(rest)
    case 'recover':
    case 'vent':
      return amount('mass', (mass_kg) => ({ kind: word, mass_kg }))
    case 'purge':
      return amount('mass', (mass_kg) => ({ kind: 'recover-evacuate-recharge', mass_kg }))
    case 'compressor':
      return amount('mass', (mass_kg) => ({ kind: 'replace-compressor', mass_kg }))
    case 'valve':
      return parseTurns(rest)
    case 'fan': {
      const share = typedShare(rest, word)
      return share.ok ? ok({ kind: 'indoor-fan', share: share.value }) : share
    }
    case 'doors':
      return alone({ kind: 'open-doors' })
    case 'drier':
      return alone({ kind: 'change-drier' })
    case 'clean':
      if (rest === 'coil') return ok({ kind: 'clean-indoor-coil' })
      if (rest === 'condenser') return ok({ kind: 'clean-condenser' })
      return fail(unreadable(word, rest, 'clean coil or clean condenser'))
    default:
      return fail({
        kind: 'unknown',
        field: 'bench',
        value: shorten(word),
        accepted: 'one of the words that “help” lists',
      })
  }
}

function parseAdd(rest: string): Result<BenchRequest, Problem> {
  const [, mass = rest, phase = 'vapour'] = /^(.*?)\s+(?:as )?(vapour|liquid)$/.exec(rest) ?? []
  const read = parse(mass, 'mass', { field: 'add' })
  return read.ok ? ok({ kind: 'add', mass_kg: read.value.si, phase: phase === 'liquid' ? 'liquid' : 'vapour' }) : read
}

function parseTurns(rest: string): Result<BenchRequest, Problem> {
  const [, sign = '', digits = ''] = /^([-−+]?)\s*(\d{1,3}(?:\.\d+)?)(?: turns?)?$/.exec(rest) ?? []
  if (digits === '') return fail(unreadable('valve', rest, 'a number of turns: 1, −0.5'))
  return ok({ kind: 'turn-stem', turns: Number(digits) * (sign === '-' || sign === '−' ? -1 : 1) })
}

import type { BenchRequest } from '@chargewright/cycle'
import { ok } from '@chargewright/quantity'
import { choice, fields, number, type Reader, variant } from '../json-reader.ts'

/** Reads a line of a script: what is asked by its `kind`, amounts in SI under keys with their unit. */
export const readRequest: Reader<BenchRequest> = (input, field) => {
  const read = READ(input, field)
  if (!read.ok) return read
  const request = read.value
  return ok(request.kind === 'add' ? { ...request, phase: request.phase ?? 'vapour' } : request)
}

const plain = <const Kind extends string>(kind: Kind) => fields({ kind: choice(kind) }, {})

const READ = variant({
  help: plain('help'),
  look: plain('look'),
  debrief: plain('debrief'),
  wait: fields({ kind: choice('wait'), duration_s: number }, {}),
  add: fields({ kind: choice('add'), mass_kg: number }, { phase: choice('vapour', 'liquid') }),
  recover: fields({ kind: choice('recover'), mass_kg: number }, {}),
  vent: fields({ kind: choice('vent'), mass_kg: number }, {}),
  'turn-stem': fields({ kind: choice('turn-stem'), turns: number }, {}),
  'open-doors': plain('open-doors'),
  'indoor-fan': fields({ kind: choice('indoor-fan'), share: number }, {}),
  'clean-indoor-coil': plain('clean-indoor-coil'),
  'clean-condenser': plain('clean-condenser'),
  'change-drier': plain('change-drier'),
  'recover-evacuate-recharge': fields({ kind: choice('recover-evacuate-recharge'), mass_kg: number }, {}),
  'replace-compressor': fields({ kind: choice('replace-compressor'), mass_kg: number }, {}),
  restart: plain('restart'),
})

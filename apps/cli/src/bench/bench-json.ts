import {
  type BenchAnswer,
  type BenchStart,
  gaugeReadings,
  type LogLine,
  PRACTICE_PLATE,
  targetsSuperheat,
} from '@chargewright/cycle'
import { render, type UnitPreference } from '@chargewright/quantity'
import { siKey } from '../json-key.ts'
import { optional } from '../quantity-json.ts'
import { BENCH_COMMANDS } from './parse-request.ts'

export function startJson({ seed, device, system, target_K }: BenchStart): object {
  return {
    practice: true,
    kind: 'start',
    seed,
    refrigerant: PRACTICE_PLATE.refrigerant,
    metering_device: device,
    capacity_W: system.rated.capacity_W,
    nameplate_charge_kg: system.rated.charge_kg,
    ...(target_K === undefined
      ? {}
      : { [targetsSuperheat(system) ? 'target_superheat_K' : 'target_subcooling_K']: target_K }),
  }
}

export function answerJson(answer: BenchAnswer, { system }: BenchStart, units: UnitPreference): object {
  const marked = { practice: true, kind: answer.kind }
  switch (answer.kind) {
    case 'help':
      return { ...marked, commands: BENCH_COMMANDS.map(([command, meaning]) => ({ command, meaning })) }
    case 'look':
    case 'wait': {
      const { conditions, clock_s, isRunning, cylinder } = answer.practice
      return {
        ...marked,
        clock_s,
        running: isRunning,
        readings: Object.fromEntries(
          gaugeReadings(answer.readings, system).map(({ name, dimension, si }) => [siKey(name, dimension), si]),
        ),
        outdoor_K: conditions.outdoor.dryBulb_K,
        return_K: conditions.indoor.dryBulb_K,
        wet_bulb_K: conditions.indoor.wetBulb_K,
        cylinder_kg: cylinder.held_kg,
      }
    }
    case 'act':
      return { ...marked, clock_s: answer.practice.clock_s, did: render(answer.did, units) }
    case 'debrief': {
      const { fault, startError, finalError, isFaultGone, harm, statements } = answer.debrief
      return {
        ...marked,
        clock_s: answer.practice.clock_s,
        fault,
        fault_gone: isFaultGone,
        start_error_fraction: startError,
        final_error_fraction: finalError,
        sentences: statements.map((each) => render(each, units)),
        acts: answer.acts.map(({ clock_s, did, before, after }) => ({
          clock_s,
          did: render(did, units),
          before: pointJson(before),
          after: pointJson(after),
        })),
        harm: {
          liquid_at_compressor_s: harm.liquidAtCompressor_s,
          liquid_into_suction_kg: harm.liquidIntoSuction_kg,
          vented_kg: harm.vented_kg,
          overfilled_kg: harm.overfilled_kg,
          trips: harm.trips,
        },
      }
    }
  }
}

const pointJson = ({ charge_kg, superheat_K, subcooling_K }: LogLine['before']): object => ({
  charge_kg,
  ...optional('superheat_K', superheat_K),
  ...optional('subcooling_K', subcooling_K),
})

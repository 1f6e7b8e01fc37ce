import {
  type BenchAnswer,
  type BenchStart,
  gaugeReadings,
  type LogLine,
  PRACTICE_PLATE,
  targetsSuperheat,
} from '@chargewright/cycle'
import { format, quantity, render, type UnitPreference } from '@chargewright/quantity'
import { METERING_DEVICES } from '@chargewright/visit'
import { columns } from '../text/columns.ts'
import { wrap } from '../text/wrap.ts'
import { BENCH_COMMANDS } from './parse-request.ts'

/** Stands over everything that the bench says: no system is behind it. */
const MARK = 'PRACTICE, no real system'

/** Where the meanings begin behind the commands. */
const HELP_COLUMN = 18

export function startText(start: BenchStart, units: UnitPreference, width: number): string {
  const { system, device, seed, target_K } = start
  const { rated } = system
  const measure = targetsSuperheat(system) ? 'superheat' : 'subcooling'
  const target =
    target_K === undefined
      ? ' No reading tells its charge in this weather: it is weighed in.'
      : ` Target by its chart in this weather: ${format(quantity('temperature difference', target_K), units)} of ${measure}.`
  const lines = [
    `${MARK}  (seed ${seed})`,
    ...wrap(
      `An air conditioner of ${format(quantity('cooling capacity', rated.capacity_W), units)}, ${PRACTICE_PLATE.refrigerant}, ${METERING_DEVICES[device]}, nameplate charge ${format(quantity('mass', rated.charge_kg), units)}. It has just been started, and its charge is in doubt; there may be a fault as well, or nothing.${target}`,
      width,
    ),
    ...wrap('Type “help” for what can be done, “debrief” to end.', width),
  ]
  return `${lines.join('\n')}\n`
}

export function answerText(answer: BenchAnswer, start: BenchStart, units: UnitPreference, width: number): string {
  return `${lines(answer, start, units, width).join('\n')}\n`
}

function lines(answer: BenchAnswer, start: BenchStart, units: UnitPreference, width: number): readonly string[] {
  switch (answer.kind) {
    case 'help':
      return BENCH_COMMANDS.flatMap(([command, meaning]) => wrap(meaning, width, `  ${command}`.padEnd(HELP_COLUMN)))
    case 'look':
    case 'wait':
      return readingLines(answer, start, units)
    case 'act':
      return wrap(
        `[practice ${clock(answer.practice.clock_s)}] You ${render(answer.did, units)}. It takes time to settle: “wait 15 min”.`,
        width,
      )
    case 'debrief':
      return debriefLines(answer, units, width)
  }
}

function readingLines(
  { practice, readings }: Extract<BenchAnswer, { kind: 'look' | 'wait' }>,
  { system }: BenchStart,
  units: UnitPreference,
): readonly string[] {
  const { outdoor, indoor } = practice.conditions
  const gauges = gaugeReadings(readings, system).map(({ label, dimension, si }) =>
    dimension === 'absolute pressure'
      ? [label, format(quantity('gauge pressure', si - indoor.pressure_Pa), units)]
      : [label, format(quantity(dimension, si), units)],
  )
  const temperature = (K: number) => format(quantity('temperature', K), units)
  const rows = [
    ...gauges,
    ['Outdoor air', temperature(outdoor.dryBulb_K)],
    ['Return air', temperature(indoor.dryBulb_K)],
    ['Return air, wet bulb', temperature(indoor.wetBulb_K)],
    ['In the recovery cylinder', format(quantity('mass', practice.cylinder.held_kg), units)],
  ]
  return [
    `[practice ${clock(practice.clock_s)}] ${practice.isRunning ? 'running' : 'stopped'}`,
    ...columns(rows, ['left', 'right']).map((row) => `  ${row}`),
  ]
}

function debriefLines(
  { debrief, acts }: Extract<BenchAnswer, { kind: 'debrief' }>,
  units: UnitPreference,
  width: number,
): readonly string[] {
  const difference = (K: number) => format(quantity('temperature difference', K), units)
  const point = ({ charge_kg, superheat_K, subcooling_K }: LogLine['before']) =>
    superheat_K === undefined || subcooling_K === undefined
      ? `${format(quantity('mass', charge_kg), units)}, no steady state`
      : `${format(quantity('mass', charge_kg), units)}, superheat ${difference(superheat_K)}, subcooling ${difference(subcooling_K)}`
  return [
    `Debrief of a ${MARK}`,
    ...debrief.statements.flatMap((each) => wrap(render(each, units), width, '  ')),
    ...(acts.length > 0 ? ['What each act did, once settled'] : []),
    ...acts.flatMap(({ clock_s, did, before, after }) => [
      ...wrap(`${clock(clock_s)} you ${render(did, units)}`, width, '  '),
      ...wrap(`from ${point(before)}`, width, '    '),
      ...wrap(`to ${point(after)}`, width, '    '),
    ]),
  ]
}

/** `1:05` after the start, hours and minutes. */
function clock(seconds: number): string {
  const minutes = Math.floor(seconds / 60)
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`
}

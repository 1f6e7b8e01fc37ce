import { HIDDEN, type LoopResult } from '../closed-loop/loop-result.ts'
import { percent, table, written } from './write.ts'

/** Wrong charge first: how it ends; then other troubles and sound systems: who touches the charge. */
export function loopSection(loops: readonly LoopResult[]): string {
  const [wrong, other, sound] = HIDDEN.map((hidden) => loops.filter((loop) => loop.hidden === hidden))
  return [
    `${wrong![0]?.plants} plants per device whose only trouble is the charge; shares with exact 95 % intervals.`,
    table(
      [
        '',
        'off before, rms',
        'off after, rms',
        'within 5 %',
        'within 10 %',
        'weighed',
        'of those within 5 %',
        'of those within 10 %',
        'steps, median',
        'harmed',
        'no verdict',
        'first interval holds',
      ],
      wrong!.map((loop) => [
        `${loop.kind}, ${loop.policy}`,
        percent(loop.startRms),
        percent(loop.rms),
        written(loop.within5),
        written(loop.within10),
        written(loop.stepped),
        written(loop.steppedWithin5),
        written(loop.steppedWithin10),
        String(loop.steps?.value ?? '–'),
        written(loop.harmedPlants),
        written(loop.noVerdict),
        written(loop.coverage),
      ]),
    ),
    `${other![0]?.plants} plants per device that hold the right charge and have another trouble.`,
    table(
      ['', 'told to weigh', 'off after, rms', 'harmed', 'no verdict'],
      other!.map((loop) => [
        `${loop.kind}, ${loop.policy}`,
        written(loop.stepped),
        percent(loop.rms),
        written(loop.harmedPlants),
        written(loop.noVerdict),
      ]),
    ),
    `${sound![0]?.plants} sound plants per device that hold the right charge.`,
    table(
      ['', 'told to weigh', 'within 5 % at the end', 'within 10 % at the end', 'harmed', 'no verdict'],
      sound!.map((loop) => [
        `${loop.kind}, ${loop.policy}`,
        written(loop.stepped),
        written(loop.within5),
        written(loop.within10),
        written(loop.harmedPlants),
        written(loop.noVerdict),
      ]),
    ),
  ].join('\n\n')
}

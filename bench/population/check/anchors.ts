import { inflict } from '../inflict.ts'
import type { Running } from '../operate.ts'
import { seeded } from '../random.ts'
import { mean, type Sample } from './sample.ts'

/**
 * Published effects of charge and of other faults beside what these plants do, means over units.
 *
 * @source Kim and Braun 2012; ASHRAE RP-1173; Farzad; Goswami; Grace, READ in abstracts and digests; two public fits of
 *   fault effects in building-energy programs, evaluated
 */
export function anchors(all: readonly Sample[]): string[] {
  const ratio = (of: (r: Running) => number, change: (s: Sample) => Running | undefined) =>
    mean(
      all.flatMap((s) => {
        const [base, now] = [change(s), s.sound]
        return base ? [of(base) / of(now)] : []
      }),
    )
  const cop = (r: Running) => r.capacity_W / r.power_W
  const power = (r: Running) => r.power_W
  const capacity = (r: Running) => r.capacity_W
  const gone =
    (
      kind: 'poor-condenser-air' | 'low-indoor-air' | 'liquid-line-restriction' | 'non-condensables',
      severity: number,
    ) =>
    (s: Sample) =>
      s.now({ unit: inflict(s.unit, s.design, kind, severity, seeded(1)) })
  const charge = (share: number) => (s: Sample) => s.now({ charge: share })
  const show = (name: string, published: string, ...values: readonly number[]) =>
    `  ${name.padEnd(66)}${published.padEnd(36)}${values.map((v) => v.toFixed(3)).join(' / ')}`
  const three = (change: (s: Sample) => Running | undefined) =>
    [ratio(capacity, change), ratio(power, change), ratio(cop, change)] as const
  const inWeather = (share: number, weather: Parameters<Sample['now']>[0]['weather'] & object) =>
    mean(
      all.flatMap((s) => {
        const [base, now] = [s.now({ weather }), s.now({ weather, charge: share })]
        return base && now ? [now.capacity_W / base.capacity_W] : []
      }),
    )
  return [
    show('A1  −25 % charge: capacity / power / COP', '0.75–0.88 / – / 0.80–0.92', ...three(charge(0.75))),
    show('A2  −10 % charge: capacity', 'orifice falls from 0.90', ratio(capacity, charge(0.9))),
    show('A2  −20 % charge: capacity', 'valve falls from 0.80', ratio(capacity, charge(0.8))),
    show(
      'A3  −20 % / +20 % charge: COP',
      'cap. 0.79 / 0.89, TXV 0.98 / 0.92',
      ratio(cop, charge(0.8)),
      ratio(cop, charge(1.2)),
    ),
    show('A4  −10 % charge: capacity / COP', '0.965 / 1.02', ratio(capacity, charge(0.9)), ratio(cop, charge(0.9))),
    show(
      'A5  +20 % charge: suction / discharge pressure',
      '≈ 1 / rises',
      ratio((r) => r.suction.p_Pa, charge(1.2)),
      ratio((r) => r.discharge_Pa, charge(1.2)),
    ),
    show('A6  −30 % charge: power', '0.92–0.96', ratio(power, charge(0.7))),
    show(
      'A7  −30 % charge: capacity at 27.8 / 35 / 40.6 °C',
      '0.775 / 0.800 / 0.819',
      inWeather(0.7, { outdoor_K: 300.95 }),
      inWeather(0.7, {}),
      inWeather(0.7, { outdoor_K: 313.75 }),
    ),
    show(
      'A8  −20 % charge: capacity at wet bulb 17 / 19.4 / 22 °C',
      '0.900 / 0.881 / 0.861',
      inWeather(0.8, { returnWetBulb_K: 290.15 }),
      inWeather(0.8, {}),
      inWeather(0.8, { returnWetBulb_K: 295.15 }),
    ),
    show(
      'A9  −30 % condenser air: capacity / power / COP',
      '1.00 / 1.086 / 0.922',
      ...three(gone('poor-condenser-air', 0.3)),
    ),
    show(
      'A9  −50 % condenser air: capacity / power / COP',
      '0.96 / 1.22 / 0.79',
      ...three(gone('poor-condenser-air', 0.5)),
    ),
    show('A9  −20 % indoor air: capacity', '0.86 … 0.966', ratio(capacity, gone('low-indoor-air', 0.2))),
    show(
      'A9  restriction +20 %: capacity / power / COP',
      '0.89 / 1.00 / 0.89',
      ...three(gone('liquid-line-restriction', 0.2)),
    ),
    show('A9  gas 0.4: capacity / power / COP', '1.03 / 1.07 / 0.96', ...three(gone('non-condensables', 0.4))),
    show(
      'A10 −30 % indoor air and −20 % charge: capacity, alone × alone',
      'pair is the milder',
      ratio(capacity, (s) => s.now({ charge: 0.8, unit: inflict(s.unit, s.design, 'low-indoor-air', 0.3, seeded(1)) })),
      ratio(capacity, charge(0.8)) * ratio(capacity, gone('low-indoor-air', 0.3)),
    ),
  ]
}

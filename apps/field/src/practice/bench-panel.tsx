import type { Dose } from '@chargewright/charging'
import type { BenchRequest } from '@chargewright/cycle'
import type { UnitPreference } from '@chargewright/quantity'
import { Trouble } from '../parts/trouble.tsx'
import { quantityInWords } from '../session/in-words.ts'
import { t } from '../words/t.ts'
import { BenchActs } from './bench-acts.tsx'
import { BenchDebrief } from './bench-debrief.tsx'
import type { Practised } from './practised.ts'
import { benchClock } from './run.ts'

export type Perform = (request: BenchRequest, typed: string) => Promise<boolean>

interface Props {
  /** Absent until it was first computed. */
  readonly bench: Practised | undefined
  /** The step that the finding asks for. */
  readonly asked: Dose | undefined
  readonly units: UnitPreference
  readonly isBusy: boolean
  readonly trouble: string | undefined
  readonly perform: Perform
  readonly enter: (bench: Practised) => Promise<void>
}

/** The invented system: what its instruments show, and everything that can be done to it. */
export function BenchPanel({ bench, asked, units, isBusy, trouble, perform, enter }: Props) {
  // A key that is busy says so and is not disabled, which would take the focus from who pressed it by keyboard.
  if (!bench) return <section class="bench" aria-busy="true" />
  if (bench.debrief) return <BenchDebrief debrief={bench.debrief} units={units} />
  const { clock_s, isRunning, instruments, cylinder } = bench
  return (
    <section class="bench" aria-labelledby="bench" aria-busy={isBusy}>
      <h2 id="bench" tabIndex={-1}>
        {t('The bench')}
      </h2>
      <p class="bench-clock" role="status">
        <strong>{benchClock(clock_s)}</strong> {t('since the start')},{' '}
        {isRunning ? t('compressor running') : t('stopped: a switch has opened')}
      </p>
      <dl class="bench-instruments">
        {instruments.map(({ label, quantity }) => (
          <div key={label}>
            <dt>{t(label)}</dt>
            <dd>{quantityInWords(quantity, units)}</dd>
          </div>
        ))}
        <div>
          <dt>{t('In the recovery cylinder')}</dt>
          <dd>
            {t('{0} of at most {1}', quantityInWords(cylinder.held, units), quantityInWords(cylinder.most, units))}
          </dd>
        </div>
      </dl>
      <button type="button" class="act" aria-disabled={isBusy} onClick={() => void enter(bench)}>
        {t('Enter what the instruments show')}
      </button>
      <fieldset class="bench-keys">
        <legend class="form-label">{t('Let time pass')}</legend>
        {WAITS.map(([label, duration_s]) => (
          <button
            key={label}
            type="button"
            class="key"
            aria-disabled={isBusy}
            onClick={() => void perform({ kind: 'wait', duration_s }, label)}
          >
            {t('Wait {0}', label)}
          </button>
        ))}
      </fieldset>
      {trouble !== undefined && <Trouble key={trouble}>{trouble}</Trouble>}
      <BenchActs bench={bench} asked={asked} units={units} isBusy={isBusy} perform={perform} />
    </section>
  )
}

/** A wait is over as soon as it is asked for. */
const WAITS = [
  ['5 min', 300],
  ['15 min', 900],
  ['60 min', 3600],
] as const

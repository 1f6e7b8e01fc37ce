import { problemInWords } from '../words/problem-in-words.ts'
import { spoken } from '../words/speak.ts'
import { t } from '../words/t.ts'
import './steps.css'
import { PRESSURE_TEST_CAUTIONS, PRESSURE_TEST_WORDS } from '@chargewright/tightness'
import { useWide } from '../parts/use-wide.ts'
import { useAnswer } from '../worker/use-answer.ts'
import { PressureReadingForm } from './pressure-reading-form.tsx'
import { PressureTestForm } from './pressure-test-form.tsx'
import { ReadingsSoFar } from './readings-so-far.tsx'
import { StandingClock } from './standing-clock.tsx'
import { StepCautions } from './step-cautions.tsx'
import type { StepProps } from './step-place.tsx'
import { TestVerdict } from './test-verdict.tsx'
import { useTestInSight } from './use-test-in-sight.ts'

/** The system stands under dry nitrogen: whether it loses more than its change of temperature explains. */
export function PressureTestStep({ visit, events, units, instruments, record, showEntry, beside }: StepProps) {
  const test = visit.pressureTests.at(-1)
  const { answer } = useAnswer('tightness', events, units, useWide() ? 'desk' : 'phone', spoken.value)
  const judged = test && answer?.pressure
  const isOne = test?.readings.length === 1 && judged?.ok === false && judged.error.kind === 'missing'
  const { test: place, recordReading } = useTestInSight(judged, record)
  return (
    <>
      <StepCautions cautions={[...(beside?.['pressure-test'] ?? []), ...PRESSURE_TEST_CAUTIONS]} units={units} />
      <div ref={place}>
        {test && (
          <>
            <StandingClock begun={test.at} units={units} />
            <h4>{t('Next reading')}</h4>
            <PressureReadingForm begun={test.at} units={units} record={recordReading} />
          </>
        )}
        {isOne && (
          <p class="hint">
            {t('One reading so far. Read again later: the longer it stands, the smaller a leak shows.')}
          </p>
        )}
        {judged && !judged.ok && !isOne && (
          <p class="doubt">{t('Not judged yet. {0}', problemInWords(judged.error))}</p>
        )}
        {judged?.ok && (
          <TestVerdict
            verdict={PRESSURE_TEST_WORDS[judged.value.last.kind]}
            {...judged.value.last}
            units={units}
            showEntry={showEntry}
          />
        )}
      </div>
      {test && (
        <ReadingsSoFar
          head={['after', 'pressure', 'gas']}
          rows={test.readings.map(({ eventId, after, pressure, temperature }) => ({
            eventId,
            cells: [after, pressure, temperature],
          }))}
          units={units}
          showEntry={showEntry}
        />
      )}
      <details class="fold" open={!test}>
        <summary>{test ? t('Begin another test') : t('Begin the test')}</summary>
        <PressureTestForm units={units} instruments={instruments} record={recordReading} />
      </details>
    </>
  )
}

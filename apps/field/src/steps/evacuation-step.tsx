import { problemInWords } from '../words/problem-in-words.ts'
import { spoken } from '../words/speak.ts'
import { t } from '../words/t.ts'
import './steps.css'
import { EVACUATION_CAUTIONS, HOLD_WORDS, vacuumUnits } from '@chargewright/tightness'
import { PictureFigure } from '../parts/picture-figure.tsx'
import { useWide } from '../parts/use-wide.ts'
import { useAnswer } from '../worker/use-answer.ts'
import { ReadingsSoFar } from './readings-so-far.tsx'
import { StepCautions } from './step-cautions.tsx'
import type { StepProps } from './step-place.tsx'
import { TestVerdict } from './test-verdict.tsx'
import { useTestInSight } from './use-test-in-sight.ts'
import { VacuumLogForm } from './vacuum-log-form.tsx'
import { VacuumReadingForm } from './vacuum-reading-form.tsx'
import { VacuumTestForm } from './vacuum-test-form.tsx'

/** A vacuum that is shut off from the pump and watched: whether it holds, and if not, whether it leaks or is wet. */
export function EvacuationStep({ visit, events, units, record, showEntry, beside }: StepProps) {
  const test = visit.vacuumTests.at(-1)
  const shown = vacuumUnits(units)
  const { answer } = useAnswer('tightness', events, units, useWide() ? 'desk' : 'phone', spoken.value)
  const judged = test && answer?.vacuum
  const { test: place, recordReading } = useTestInSight(judged, record)
  const isEmpty = visit.observations['charge-state']?.answer === 'evacuated'
  return (
    <>
      <StepCautions cautions={[...(beside?.evacuation ?? []), ...EVACUATION_CAUTIONS]} units={units} />
      <div ref={place}>
        {test && (
          <>
            <h4>{t('Next reading')}</h4>
            <VacuumReadingForm begun={test.at} units={shown} record={recordReading} />
          </>
        )}
        {judged && !judged.ok && <p class="doubt">{t('Not judged yet. {0}', problemInWords(judged.error))}</p>}
        {judged?.ok && (
          <>
            <TestVerdict
              verdict={HOLD_WORDS[judged.value.finding.kind]}
              {...judged.value.finding}
              units={shown}
              showEntry={showEntry}
            />
            {judged.value.finding.kind === 'pass' && !isEmpty && (
              <button
                type="button"
                class="act"
                onClick={() => void record({ kind: 'observation', what: 'charge-state', answer: 'evacuated' })}
              >
                {t('Enter that the system is empty and evacuated')}
              </button>
            )}
            <PictureFigure picture={judged.value.picture} />
          </>
        )}
      </div>
      {test && !test.log && (
        <ReadingsSoFar
          head={['after', 'vacuum']}
          rows={test.readings.map(({ eventId, after, pressure }) => ({ eventId, cells: [after, pressure] }))}
          units={shown}
          showEntry={showEntry}
        />
      )}
      <details class="fold" open={!test}>
        <summary>{test ? t('Begin another test') : t('Begin the test as the valve is shut')}</summary>
        <VacuumTestForm units={shown} record={recordReading} />
      </details>
      <details class="fold">
        <summary>{t('Paste the log of the gauge instead')}</summary>
        <VacuumLogForm record={record} />
      </details>
    </>
  )
}

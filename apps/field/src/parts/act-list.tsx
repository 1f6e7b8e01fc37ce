import type { Assessment, Dose } from '@chargewright/charging'
import type { UnitPreference } from '@chargewright/quantity'
import type { Fact } from '@chargewright/visit'
import type { ComponentChildren } from 'preact'
import type { Kept } from '../session/session.ts'
import { t } from '../words/t.ts'
import { CautionList } from './caution-list.tsx'
import { MoveForm } from './move-form.tsx'
import { MOVED_MASS, reveal } from './reveal.ts'
import { WaitForm } from './wait-form.tsx'
import { WordsForm } from './words-form.tsx'

interface Props {
  /** The step that is asked for: it fills in the form, all but what the scale will show. */
  readonly dose: Dose | undefined
  /** What to mind in each act; known with the first answer. */
  readonly beside: Assessment['beside'] | undefined
  readonly units: UnitPreference
  readonly record: (fact: Fact) => Kept
}

/** What was done: refrigerant moved, waits, adjustments, notes. */
export function ActList({ dose, beside, units, record }: Props) {
  const asked = dose && { direction: dose.direction, phase: dose.phase, port: dose.port, compressor: dose.compressor }
  /** What changes the system changes the finding: back to it, where the next act stands. */
  const recordAct = async (fact: Fact) => {
    const kept = await record(fact)
    if (kept.ok) reveal('finding')
    return kept
  }
  return (
    <section class="acts" aria-labelledby="acts">
      <h2 id="acts">{t('What you did')}</h2>
      <Fold title={t('Refrigerant moved')}>
        <MoveForm
          massId={MOVED_MASS}
          key={JSON.stringify(asked)}
          initial={asked ?? {}}
          beside={beside}
          dose={dose}
          units={units}
          keep={recordAct}
        />
      </Fold>
      <Fold title={t('Waited')}>
        <WaitForm initial={{}} units={units} keep={recordAct} />
      </Fold>
      <Fold title={t('Adjusted')}>
        <CautionList cautions={beside?.['adjust-valve'] ?? []} units={units} />
        <WordsForm
          label={t('What was adjusted')}
          keepLabel="Enter in the log"
          keep={(what) => recordAct({ kind: 'adjustment', what })}
        />
      </Fold>
      <Fold title={t('Note')}>
        <WordsForm label={t('Note')} keepLabel="Enter in the log" keep={(text) => record({ kind: 'note', text })} />
      </Fold>
    </section>
  )
}

function Fold({ title, children }: { readonly title: string; readonly children: ComponentChildren }) {
  return (
    <details class="group">
      <summary>
        <h3>{title}</h3>
      </summary>
      {children}
    </details>
  )
}

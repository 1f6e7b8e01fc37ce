import { t } from '../words/t.ts'
import './steps.css'
import { type BookFinding, bookUnits, notCounted } from '@chargewright/ledger'
import type { UnitPreference } from '@chargewright/quantity'
import { inWords, quantityInWords } from '../session/in-words.ts'
import type { CylinderAnswer } from '../worker/protocol.ts'
import { useAnswer } from '../worker/use-answer.ts'
import { CylinderForm } from './cylinder-form.tsx'
import type { StepProps } from './step-place.tsx'

/** The cylinders of the visit: what each holds by the scale, what still fits into it, and what the book objects to. */
export function CylinderStep({ visit, events, units, record }: StepProps) {
  const { answer } = useAnswer('cylinders', events)
  const weighed = bookUnits(units)
  const leftOut = answer ? notCounted(answer.balance.problems, answer.problems) : []
  return (
    <>
      <div class="cautions">
        <h4>{t('Take care')}</h4>
        <ul>
          <li>{t('Never vent refrigerant: recover it into a cylinder that is made for it.')}</li>
          <li>{t('Fill a recovery cylinder to at most 80 % of its volume: warm and full of liquid it bursts.')}</li>
          <li>{t('Never fill a cylinder that was sold filled, and never mix refrigerants in one.')}</li>
        </ul>
      </div>
      {visit.cylinders.length === 0 && (
        <p class="hint">
          {t(
            'None yet. Weigh a cylinder before it is opened; then name it with each move, and every gram has its place.',
          )}
        </p>
      )}
      <ul class="cylinders">
        {answer?.balance.cylinders.map(({ cylinder, refrigerants, content, unexplained }, i) => (
          <li key={cylinder.id}>
            <h4>
              {cylinder.id} · {t(cylinder.holds)} {refrigerants.join(' + ')}
            </h4>
            <dl>
              <dt>{t('contents')}</dt>
              <dd>{quantityInWords(content, weighed, true)}</dd>
              <dt>{t('room')}</dt>
              <dd>{roomInWords(answer.room[i], weighed)}</dd>
              <dt>{t('unexplained')}</dt>
              <dd>{quantityInWords(unexplained, weighed, true)}</dd>
            </dl>
            {answer.balance.findings
              .filter((finding) => finding.cylinder === cylinder.id)
              .map(({ kind, severity, sentence }) => (
                <p key={kind} class={severity === 'stop' ? 'trouble' : 'doubt'}>
                  {t(SEVERITY[severity])} {inWords(sentence, weighed)}
                </p>
              ))}
          </li>
        ))}
      </ul>
      {leftOut.map((sentence) => (
        <p key={inWords(sentence, weighed)} class="doubt">
          {inWords(sentence, weighed)}
        </p>
      ))}
      <h4>{t('A cylinder on the scale')}</h4>
      <CylinderForm refrigerant={visit.system.facts.refrigerant} units={weighed} record={record} />
    </>
  )
}

const SEVERITY: Readonly<Record<BookFinding['severity'], string>> = {
  stop: 'Must not be.',
  check: 'Weigh again, or remember what happened.',
}

function roomInWords(room: CylinderAnswer['room'][number], units: UnitPreference): string {
  if (room === undefined) return t('only to be emptied')
  return room.ok ? t('for {0}', quantityInWords(room.value, units)) : t('fill limit not known: keep to the one stamped')
}

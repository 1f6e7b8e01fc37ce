import type { Finding } from '@chargewright/charging'
import type { Visit } from '@chargewright/visit'
import { t } from '../words/t.ts'
import { BEFORE_CHARGING, entryId, MOVED_MASS, RECORD, reveal } from './reveal.ts'

interface Props {
  readonly finding: Finding
  readonly system: Visit['system']
  /** The practice bench ends with a debrief and not with a record. */
  readonly isPractice: boolean
}

/** The way from the step at hand to the place on the page where it is done or entered. */
export function ActKey({ finding, system, isPractice }: Props) {
  const { dose, kind, cause } = finding
  if (dose) {
    const { nameplateCharge, receiverVolume } = system.figures
    const byGlass = dose.until === 'glass-clears' || dose.port === 'receiver'
    const canBeSized = dose.withoutTwin !== undefined && !nameplateCharge && !(byGlass && receiverVolume)
    return (
      <div class="next">
        <Key name={t('Enter what the scale showed')} to={MOVED_MASS} />
        {canBeSized && (
          <>
            <p class="next-why">
              {t('The step is as large as habit has it, because the nameplate charge is not known.')}
            </p>
            <Link name={t('Enter the nameplate charge')} to={entryId(CHARGE)} />
            {byGlass && <Link name={t('Enter the volume of the receiver')} to={entryId(RECEIVER)} />}
          </>
        )}
      </div>
    )
  }
  if (kind === 'hold' && !isPractice) return <Key name={t('Go to the record')} to={RECORD} />
  if (cause?.id === 'leak') return <Key name={t('Go to pressure test, evacuation and weigh-in')} to={BEFORE_CHARGING} />
  return null
}

const CHARGE = { kind: 'figure', what: 'nameplateCharge' } as const
const RECEIVER = { kind: 'figure', what: 'receiverVolume' } as const

function Key({ name, to }: { readonly name: string; readonly to: string }) {
  return (
    <button type="button" class="act" onClick={() => reveal(to)}>
      {name}
    </button>
  )
}

function Link({ name, to }: { readonly name: string; readonly to: string }) {
  return (
    <button type="button" class="link" onClick={() => reveal(to)}>
      {name}
    </button>
  )
}

import type { UnitPreference } from '@chargewright/quantity'
import { type Fact, type FactOf, vacuumText } from '@chargewright/visit'
import { useSignal } from '@preact/signals'
import { Choices } from '../parts/choices.tsx'
import { CRITERIA } from '../session/fact-in-words.ts'
import type { Kept } from '../session/session.ts'
import { t } from '../words/t.ts'
import { BlankForm } from './blank-form.tsx'
import { prefilled } from './prefilled.ts'
import { VACUUM } from './vacuum-reading-form.tsx'

interface Props {
  /** A test that has begun, to be told again; its readings are entries of their own. */
  readonly initial?: FactOf<'vacuum-test'>
  readonly keepLabel?: string
  readonly units: UnitPreference
  readonly record: (fact: Fact) => Kept
}

const pressure = { accepts: ['absolute pressure'], readAs: vacuumText } as const
const MAKERS = {
  start: { ...pressure, label: 'Pull down to', example: 'for example 300 micron or 40 Pa' },
  limit: { ...pressure, label: 'Not to rise above', example: 'for example 500 micron or 67 Pa' },
  hold: { label: 'For', accepts: ['duration'], example: 'for example 30 min' },
} as const
const BESIDES = {
  resolution: { ...pressure, label: 'Last digit of the gauge', example: 'for example 1 micron', optional: true },
  coldestSpot: {
    label: 'Coldest spot of the system',
    accepts: ['temperature'],
    example: 'water freezes unseen there: 50 °F or 10 °C',
    optional: true,
  },
} as const

const FIRST = { ...VACUUM, label: 'Vacuum as the valve is shut' } as const
type Blanks = typeof MAKERS & typeof BESIDES & { readonly pressure: typeof FIRST }

/** The valve to the pump is shut: what the vacuum is held against, and its first reading. */
export function VacuumTestForm({ initial, units, keepLabel = 'The valve is shut: begin', record }: Props) {
  const criterion = useSignal<FactOf<'vacuum-test'>['criterion']>(initial?.criterion ?? 'specification')
  const own = criterion.value === 'maker' ? MAKERS : {}
  const first = initial ? {} : { pressure: FIRST }
  return (
    <BlankForm
      key={criterion.value}
      blanks={prefilled({ ...own, ...first, ...BESIDES } as Blanks, initial)}
      units={units}
      keepLabel={keepLabel}
      keep={async ({ pressure: reading, ...figures }) => {
        const begun = await record({ kind: 'vacuum-test', criterion: criterion.value, ...figures })
        return begun.ok && reading !== undefined
          ? record({ kind: 'vacuum-reading', after: '0 min', pressure: reading })
          : begun
      }}
    >
      <Choices
        label={t('Hold it against')}
        choices={CRITERIA}
        chosen={criterion.value}
        choose={(to) => (criterion.value = to)}
      />
      <p class="hint">{t('What the maker of the system prints goes before both.')}</p>
    </BlankForm>
  )
}

import { fail, type UnitPreference } from '@chargewright/quantity'
import type { SystemFacts } from '@chargewright/visit'
import type { Kept } from '../session/session.ts'
import { t } from '../words/t.ts'
import { BlankForm } from './blank-form.tsx'

type Part = NonNullable<SystemFacts['accessories']>[number]

interface Props {
  readonly parts: readonly Part[]
  readonly units: UnitPreference
  readonly state: (parts: Part[]) => Kept
}

/** Parts of the system that fill with refrigerant beyond its nameplate. */
export function AddedParts({ parts, units, state }: Props) {
  return (
    <>
      <ul class="added-parts">
        {parts.map((part, i) => (
          <li key={`${part.name} ${part.volume}`}>
            {t('{0}: {1}, {2} % of it liquid', part.name, part.volume, part.liquidPercent)}{' '}
            <button type="button" class="link" onClick={() => void state(parts.toSpliced(i, 1))}>
              {t('take {0} out', part.name)}
            </button>
          </li>
        ))}
      </ul>
      <BlankForm
        blanks={{
          name: { label: 'The part', accepts: [], example: 'for example accumulator' },
          volume: { label: 'Its volume inside', accepts: ['volume'], example: 'for example 90 in³ or 1.5 L' },
          liquid: {
            label: 'Full of liquid while it runs, in percent',
            accepts: [],
            example: '0 to 100, for example 10',
          },
        }}
        units={units}
        keepLabel="Add the part"
        keep={async ({ name = '', volume = '', liquid = '' }) => {
          const liquidPercent = Number(liquid.replace('%', '').trim())
          if (liquidPercent >= 0 && liquidPercent <= 100) return state([...parts, { name, volume, liquidPercent }])
          const problem = {
            kind: 'unreadable',
            field: 'Full of liquid while it runs',
            value: liquid,
            accepted: '0 to 100 percent',
          } as const
          return fail({ kind: 'problems', problems: [problem] })
        }}
      />
    </>
  )
}

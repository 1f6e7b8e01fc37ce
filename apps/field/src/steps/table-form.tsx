import { useSignal } from '@preact/signals'
import { useId } from 'preact/hooks'
import { t } from '../words/t.ts'
import type { AirflowFormProps } from './airflow-step.tsx'
import { BlankForm } from './blank-form.tsx'

const KINDS = {
  'pressure-drop': {
    label: 'Pressure drop across it',
    example: 'for example 0.22 inH2O or 55 Pa',
    hint: 'A coil as wet, or a filter as clean, as the maker’s table has it.',
    table: 'CFM,inH2O\n800,0.10\n1000,0.15\n1200,0.21',
  },
  'fan-table': {
    label: 'External static pressure',
    example: 'supply less return: 0.5 inH2O or 125 Pa',
    hint: 'The blower at the speed of the table, with coil and filter as the table has them.',
    table: 'inH2O,CFM\n0.3,1260\n0.5,1190\n0.7,1100',
  },
} as const

/** A pressure against the maker's table, between its entries only. */
export function TableForm({ kind, units, find }: AirflowFormProps & { readonly kind: keyof typeof KINDS }) {
  const id = useId()
  const table = useSignal('')
  const { label, example, hint, table: shown } = KINDS[kind]
  return (
    <BlankForm
      blanks={{ pressure: { label, accepts: ['pressure difference'], example } }}
      units={{ ...units, 'pressure difference': units.length === 'm' ? 'Pa' : 'inH2O' }}
      keepLabel="Work the airflow out and enter it"
      keep={({ pressure = '' }) =>
        find(
          { kind, table: table.value, pressure },
          t('{0}, table of {1} lines', pressure, Math.max(0, table.value.trim().split(/\r\n|\n|\r/).length - 1)),
        )
      }
    >
      <p class="hint">{t(hint)}</p>
      <label class="form-label" for={id}>
        {t('The maker’s table')}
      </label>
      <textarea
        id={id}
        rows={5}
        spellcheck={false}
        placeholder={shown}
        value={table.value}
        onInput={(event) => {
          table.value = event.currentTarget.value
        }}
      />
    </BlankForm>
  )
}

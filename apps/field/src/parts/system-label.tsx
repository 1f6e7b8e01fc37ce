import { useMemo } from 'preact/hooks'
import { encode } from 'uqr'
import { systemAddress } from '../session/route.ts'
import { t } from '../words/t.ts'

interface Props {
  readonly id: string
  readonly name: string | undefined
  readonly refrigerant: string | undefined
}

/** A label to print and put inside the panel: its code opens this page again on a device that knows the system. */
export function SystemLabel({ id, name, refrigerant }: Props) {
  const address = new URL(systemAddress(id), location.href).href
  const code = useMemo(() => encode(address, { ecc: 'M', border: 4 }), [address])
  const print = () => {
    const root = document.documentElement
    root.dataset.print = 'label'
    addEventListener('afterprint', () => delete root.dataset.print, { once: true })
    window.print()
  }
  return (
    <section class="label-section" aria-labelledby="label">
      <h2 id="label">{t('Label')}</h2>
      <p class="hint">
        {t('Print it and put it inside the panel. Its code opens this page on a device that has the system.')}
      </p>
      <div class="label">
        <svg
          class="label-code"
          viewBox={`0 0 ${code.size} ${code.size}`}
          role="img"
          aria-label={t('Code of {0}', address)}
        >
          <rect width={code.size} height={code.size} fill="#ffffff" />
          <path d={modules(code.data)} fill="#000000" />
        </svg>
        <div class="label-words">
          <strong>{name ?? t('System without a name')}</strong>
          {refrigerant !== undefined && <span>{refrigerant}</span>}
        </div>
      </div>
      <button type="button" class="key" onClick={print}>
        {t('Print the label')}
      </button>
    </section>
  )
}

/** The dark modules, row by row. */
function modules(rows: readonly (readonly boolean[])[]): string {
  return rows.flatMap((row, y) => row.flatMap((dark, x) => (dark ? [`M${x} ${y}h1v1h-1z`] : []))).join('')
}

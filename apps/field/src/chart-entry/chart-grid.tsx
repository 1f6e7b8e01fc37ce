import type { MakersChart } from '@chargewright/visit'
import { useSignal } from '@preact/signals'
import { useContext, useRef } from 'preact/hooks'
import { Trouble } from '../parts/trouble.tsx'
import { DraftPage } from '../session/draft-place.ts'
import { problemInWords } from '../words/problem-in-words.ts'
import { t } from '../words/t.ts'
import { ChartKindChoices } from './chart-kind-choices.tsx'
import { gridDraft } from './grid-draft.ts'
import { blockOf, chartOfGrid, EMPTY_GRID, gridOfChart, type TypedGrid, withBlock, withCell } from './typed-grid.ts'

interface Props {
  readonly chart: MakersChart | undefined
  readonly keep: (chart: MakersChart | null) => Promise<boolean>
}

/** A chart typed cell by cell, as in a spreadsheet: arrow keys, Enter, and blocks pasted from one. */
export function ChartGrid({ chart, keep }: Props) {
  const draft = gridDraft(() => localStorage, useContext(DraftPage))
  const kind = useSignal<Pick<MakersChart, 'indoor' | 'unit'>>({
    indoor: chart?.indoor ?? 'wet-bulb',
    unit: chart?.unit ?? '°F',
  })
  const grid = useSignal<TypedGrid>(draft.recall() ?? (chart?.form === 'grid' ? gridOfChart(chart) : EMPTY_GRID))
  const trouble = useSignal<string | undefined>(undefined)
  const table = useRef<HTMLTableElement>(null)
  const change = (to: TypedGrid) => {
    grid.value = to
    trouble.value = undefined
    draft.keep(to)
  }
  const goTo = (row: number, column: number) =>
    table.current?.querySelector<HTMLInputElement>(`[data-cell="${row} ${column}"]`)?.focus()
  const submit = async () => {
    const typed = chartOfGrid(grid.value, kind.value)
    if (!typed.ok) trouble.value = problemInWords(typed.error)
    else if (await keep(typed.value)) draft.keep(undefined)
  }
  return (
    <div class="form">
      <p class="hint">
        {t(
          'Indoor temperatures along the top, outdoor temperatures down the side, superheats between. Leave a cell empty where the maker gives no value. A block copied from a spreadsheet can be pasted into any cell.',
        )}
      </p>
      <ChartKindChoices kind={kind.value} choose={(to) => (kind.value = to)} />
      <div class="chart-grid">
        <table ref={table} aria-label={t('Maker’s charging chart')}>
          <tbody>
            {grid.value.map((row, i) => (
              <tr key={i}>
                {row.map((text, j) => (
                  <td key={j} data-axis={i === 0 || j === 0}>
                    {i === 0 && j === 0 ? (
                      <span class="chart-corner">{t('outdoor ↓ indoor →')}</span>
                    ) : (
                      <input
                        data-cell={`${i} ${j}`}
                        inputMode="text"
                        autoComplete="off"
                        aria-label={cellName(grid.value, i, j)}
                        value={text}
                        onInput={(event) => change(withCell(grid.value, i, j, event.currentTarget.value))}
                        onPaste={(event) => {
                          const block = blockOf(event.clipboardData?.getData('text') ?? '')
                          if (!block) return
                          event.preventDefault()
                          // A block with an axis on two sides is the whole chart, wherever it is pasted.
                          const whole = block.length > 1 && block[0]![0] === ''
                          change(withBlock(grid.value, whole ? 0 : i, whole ? 0 : j, block))
                        }}
                        onKeyDown={(event) => {
                          const step = stepOf(event)
                          if (!step) return
                          event.preventDefault()
                          goTo(i + step[0], j + step[1])
                        }}
                      />
                    )}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {trouble.value !== undefined && <Trouble>{trouble.value}</Trouble>}
      <div class="chart-keys">
        <button type="button" class="key" onClick={() => void submit()}>
          {t('Keep the chart')}
        </button>
        <button type="button" class="key" onClick={() => change(EMPTY_GRID)}>
          {t('Empty the grid')}
        </button>
      </div>
    </div>
  )
}

function cellName(grid: TypedGrid, row: number, column: number): string {
  if (row === 0) return t('Indoor temperature {0}', column)
  if (column === 0) return t('Outdoor temperature {0}', row)
  return t(
    'Superheat at {0} outdoors and {1} indoors',
    grid[row]?.[0] || t('row {0}', row),
    grid[0]?.[column] || t('column {0}', column),
  )
}

/** Where a key leads; sideways only from the edge of the text, so that a number can be mended. */
function stepOf({ key, currentTarget }: KeyboardEvent): readonly [down: number, right: number] | undefined {
  const { selectionStart, selectionEnd, value } = currentTarget as HTMLInputElement
  switch (key) {
    case 'ArrowUp':
      return [-1, 0]
    case 'ArrowDown':
    case 'Enter':
      return [1, 0]
    case 'ArrowLeft':
      return selectionStart === 0 && selectionEnd === 0 ? [0, -1] : undefined
    case 'ArrowRight':
      return selectionStart === value.length ? [0, 1] : undefined
    default:
      return undefined
  }
}

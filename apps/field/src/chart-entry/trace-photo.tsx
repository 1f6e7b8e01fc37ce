import type { MakersChart } from '@chargewright/visit'
import { useSignal } from '@preact/signals'
import { useContext, useEffect, useId, useMemo } from 'preact/hooks'
import { Choices } from '../parts/choices.tsx'
import { DraftPage } from '../session/draft-place.ts'
import { problemInWords } from '../words/problem-in-words.ts'
import { t } from '../words/t.ts'
import { ChartKindChoices } from './chart-kind-choices.tsx'
import { keepDraft, keptDraft, type TraceDraft } from './draft-store.ts'
import { photoOf } from './photo-of.ts'
import { axesOf, type ChartKind, nextTap, type Tap, traced } from './trace.ts'
import { TraceResult } from './trace-result.tsx'
import { TraceSurface } from './trace-surface.tsx'

interface Props {
  readonly keep: (chart: MakersChart) => Promise<boolean>
}

const ACROSS = { outdoor: 'outdoor temperature', indoor: 'indoor temperature' } as const
const INDOORS = { 'wet-bulb': 'wet bulb indoors', 'dry-bulb': 'dry bulb indoors' } as const
const FRESH: ChartKind = { indoor: 'wet-bulb', unit: '°F', across: 'outdoor' }

/** A chart traced on a photo: two marks on each axis, then taps along every curve, each tap to be undone. */
export function TracePhoto({ keep }: Props) {
  const visitId = useContext(DraftPage)
  const draft = useSignal<TraceDraft | undefined>(undefined)
  const typed = useSignal('')
  const trouble = useSignal<string | undefined>(undefined)
  useEffect(() => {
    void keptDraft(visitId).then((kept) => {
      draft.value = kept
      typed.value = String(kept?.taps.findLast(({ on }) => on === 'curve')?.value ?? '')
    })
  }, [visitId])
  const change = (to: TraceDraft | undefined) => {
    draft.value = to
    trouble.value = undefined
    void keepDraft(visitId, to)
  }
  const { photo, taps = [], kind = FRESH } = draft.value ?? {}
  const found = useMemo(() => traced(taps, kind), [taps, kind])
  const axes = useMemo(() => axesOf(taps), [taps])

  const take = async (file: Blob) => {
    const picture = await photoOf(file)
    if (picture) change({ photo: picture, kind, taps: [] })
    else trouble.value = t('This file is no picture that the browser can read.')
  }
  if (!photo) return <PickPhoto take={take} trouble={trouble.value} />

  const on = nextTap(taps)
  const place = (at: Tap['at']) => {
    const value = Number(typed.value.trim().replace(/[−–]/, '-').replace(',', '.'))
    if (typed.value.trim() === '' || Number.isNaN(value)) {
      trouble.value = t('Type its value first, then tap.')
      return
    }
    change({ photo, kind, taps: [...taps, { on, value, at }] })
    // The value of a curve stays, for its next point; a mark on an axis has one of its own.
    if (on !== 'curve') typed.value = ''
  }
  const undo = () => {
    const last = taps.at(-1)
    if (!last) return
    change({ photo, kind, taps: taps.slice(0, -1) })
    typed.value = String(last.value)
  }
  const submit = async () => {
    if (!found.ok) trouble.value = problemInWords(found.error)
    else if (await keep(found.value.chart)) change(undefined)
  }
  return (
    <div class="form trace">
      {/* Said once, at the beginning; then it stands out of the way of the photo. */}
      <details class="group" open={taps.length === 0}>
        <summary>
          <span class="form-label">
            {t(
              'What it shows: {0} along the bottom, {1}, {2}',
              t(ACROSS[kind.across]),
              t(INDOORS[kind.indoor]),
              kind.unit,
            )}
          </span>
        </summary>
        <Choices
          label={t('Along the bottom')}
          choices={ACROSS}
          chosen={kind.across}
          choose={(across) => change({ photo, taps, kind: { ...kind, across } })}
        />
        <ChartKindChoices kind={kind} choose={(to) => change({ photo, taps, kind: { ...kind, ...to } })} />
      </details>
      <TraceStep on={on} taps={taps} kind={kind} typed={typed} />
      <TraceSurface
        photo={photo}
        taps={taps}
        axes={axes}
        curves={found.ok ? found.value : undefined}
        kind={kind}
        place={place}
      />
      {trouble.value !== undefined && (
        <p class="trouble" role="alert">
          {trouble.value}
        </p>
      )}
      <div class="chart-keys">
        <button type="button" class="key" disabled={taps.length === 0} onClick={undo}>
          {t('Undo the last tap')}
        </button>
        <button type="button" class="key" onClick={() => change(undefined)}>
          {t('Another photo')}
        </button>
      </div>
      {found.ok && <TraceResult found={found.value} />}
      <button type="button" class="act" onClick={() => void submit()}>
        {t('Keep the chart')}
      </button>
    </div>
  )
}

interface StepProps {
  readonly on: Tap['on']
  readonly taps: readonly Tap[]
  readonly kind: ChartKind
  readonly typed: { value: string }
}

const AXIS = { outdoor: 'outdoor temperature', 'wet-bulb': 'indoor wet bulb', 'dry-bulb': 'indoor dry bulb' } as const

/** What to tap next, with the value that it has. */
function TraceStep({ on, taps, kind, typed }: StepProps) {
  const id = useId()
  const along = kind.across === 'outdoor' ? AXIS.outdoor : AXIS[kind.indoor]
  const ofCurves = kind.across === 'outdoor' ? AXIS[kind.indoor] : AXIS.outdoor
  const isSecond = taps.length % 2 === 1
  const words = {
    across: isSecond
      ? t('A second mark on the axis of the {0}', t(along))
      : t('A first mark on the axis of the {0}', t(along)),
    up: isSecond ? t('A second mark on the axis of the superheat') : t('A first mark on the axis of the superheat'),
    curve: t('A curve: its {0}', t(ofCurves)),
  }
  return (
    <div class="trace-step">
      <label class="form-label" for={id}>
        {t('{0}, in {1}', words[on], kind.unit)}
      </label>
      <input
        id={id}
        class="form-blank"
        inputMode="text"
        autoComplete="off"
        value={typed.value}
        onInput={(event) => {
          typed.value = event.currentTarget.value
        }}
      />
      <p class="hint">
        {on === 'curve'
          ? t('Tap along it from end to end, closer where it bends. Then type the next curve’s value.')
          : t('Type its value, then put the finger on it. The loupe shows where; lift the finger to set it.')}
      </p>
    </div>
  )
}

function PickPhoto({
  take,
  trouble,
}: {
  readonly take: (file: Blob) => Promise<void>
  readonly trouble: string | undefined
}) {
  const id = useId()
  return (
    <div class="form">
      <p class="hint">
        {t(
          'Photograph the chart on the panel straight from above, with its axes and their numbers. The photo stays on this device, and only until the chart is kept.',
        )}
      </p>
      <div class="file-picker">
        <input
          id={id}
          type="file"
          accept="image/*"
          onChange={(event) => {
            const [file] = event.currentTarget.files ?? []
            if (file) void take(file)
          }}
        />
        <label class="key" for={id}>
          {t('Take or pick a photo')}
        </label>
      </div>
      {trouble !== undefined && (
        <p class="trouble" role="alert">
          {trouble}
        </p>
      )}
    </div>
  )
}

import { useSignal } from '@preact/signals'
import { useEffect, useRef } from 'preact/hooks'
import { t } from '../words/t.ts'
import type { Calibration, Spot } from './calibration.ts'
import type { ChartKind, Tap, Traced } from './trace.ts'
import { TraceInk } from './trace-ink.tsx'

interface Props {
  readonly photo: Blob
  readonly taps: readonly Tap[]
  readonly axes: Calibration | undefined
  readonly curves: Traced | undefined
  readonly kind: ChartKind
  readonly place: (at: Spot) => void
}

/** The photo to tap on: a loupe over the finger while it is down, arrow keys and Enter for a keyboard. */
export function TraceSurface({ photo, taps, axes, curves, kind, place }: Props) {
  const size = useSignal<{ readonly width: number; readonly height: number } | undefined>(undefined)
  const source = useSignal<string | undefined>(undefined)
  const aim = useSignal<Spot | undefined>(undefined)
  const surface = useRef<SVGSVGElement>(null)
  const frame = useRef<HTMLDivElement>(null)
  const shownWidth = useSignal(PHONE_WIDTH)
  useEffect(() => {
    if (!frame.current) return
    const room = new ResizeObserver(([entry]) => {
      shownWidth.value = entry?.contentRect.width || PHONE_WIDTH
    })
    room.observe(frame.current)
    return () => room.disconnect()
  }, [])
  useEffect(() => {
    const address = URL.createObjectURL(photo)
    source.value = address
    void createImageBitmap(photo).then((picture) => {
      size.value = { width: picture.width, height: picture.height }
      picture.close()
    })
    return () => URL.revokeObjectURL(address)
  }, [photo])
  if (!size.value || !source.value) return <div ref={frame} class="trace-surface" aria-busy="true" />
  const { width, height } = size.value
  const unit = width / shownWidth.value

  const spotOf = ({ clientX, clientY }: PointerEvent): Spot => {
    const box = surface.current!.getBoundingClientRect()
    const along = (at: number, from: number, length: number) => within((at - from) / length, 1)
    return { x: along(clientX, box.left, box.width) * width, y: along(clientY, box.top, box.height) * height }
  }
  const move = (event: KeyboardEvent) => {
    // From where one was: the next tap along a curve is not far.
    const from = aim.value ?? taps.at(-1)?.at ?? { x: width / 2, y: height / 2 }
    const step = (event.shiftKey ? 20 : 2) * (width / 600)
    const by = { ArrowLeft: [-step, 0], ArrowRight: [step, 0], ArrowUp: [0, -step], ArrowDown: [0, step] }[event.key]
    if (by) aim.value = { x: within(from.x + by[0]!, width), y: within(from.y + by[1]!, height) }
    else if (event.key === 'Enter' && aim.value) place(aim.value)
    else return
    event.preventDefault()
  }
  return (
    <div
      ref={frame}
      class="trace-surface"
      role="application"
      aria-label={t('Photo of the chart. Arrow keys move the mark, with Shift in large steps; Enter sets it.')}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: it is worked with the arrow keys
      tabIndex={0}
      onKeyDown={move}
      onBlur={() => {
        aim.value = undefined
      }}
    >
      <svg
        ref={surface}
        viewBox={`0 0 ${width} ${height}`}
        aria-hidden="true"
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId)
          aim.value = spotOf(event)
        }}
        onPointerMove={(event) => {
          if (event.currentTarget.hasPointerCapture(event.pointerId)) aim.value = spotOf(event)
        }}
        onPointerUp={(event) => {
          if (!event.currentTarget.hasPointerCapture(event.pointerId)) return
          aim.value = undefined
          place(spotOf(event))
        }}
        onPointerCancel={() => {
          aim.value = undefined
        }}
      >
        <image href={source.value} width={width} height={height} />
        <TraceInk taps={taps} axes={axes} traced={curves} kind={kind} unit={unit} aim={aim.value} />
      </svg>
      {aim.value && (
        <svg
          class="trace-loupe"
          data-side={aim.value.x < width / 2 ? 'right' : 'left'}
          viewBox={loupeBox(aim.value, width)}
          aria-hidden="true"
        >
          <image href={source.value} width={width} height={height} />
          <TraceInk taps={taps} axes={axes} traced={undefined} kind={kind} unit={unit / LOUPE} aim={aim.value} />
        </svg>
      )}
    </div>
  )
}

/** On the photo, and not beside it. */
const within = (at: number, length: number) => Math.min(length, Math.max(0, at))

/** Until it is known how wide the photo is shown. */
const PHONE_WIDTH = 358
/** How many times larger the loupe shows the photo. */
const LOUPE = 4
/** Share of the width of the photo that the loupe takes on the screen. */
const LOUPE_SHARE = 0.4

function loupeBox({ x, y }: Spot, width: number): string {
  const side = (LOUPE_SHARE * width) / LOUPE
  return `${x - side / 2} ${y - side / 2} ${side} ${side}`
}

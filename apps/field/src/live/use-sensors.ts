import { type ReadonlySignal, useSignal } from '@preact/signals'
import { useEffect, useRef } from 'preact/hooks'
import { t } from '../words/t.ts'
import type { Meaning, Recording } from './recording.ts'
import { connectSensor, radioOf, type Sensor } from './sensor.ts'

/** Older samples are let go: a sensor on a roof may tell several times a second for hours. */
const MOST_SAMPLES = 20_000

interface Sensors {
  readonly recording: ReadonlySignal<Recording | undefined>
  readonly trouble: ReadonlySignal<string | undefined>
  /** Absent where the browser has no radio. */
  readonly connect: (() => Promise<void>) | undefined
  readonly stop: () => void
}

/** The connected sensors as one recording that grows; they are let go when the page is left. */
export function useSensors(appear: (column: string, meaning: Meaning | undefined) => void): Sensors {
  const recording = useSignal<Recording | undefined>(undefined)
  const trouble = useSignal<string | undefined>(undefined)
  const connected = useRef<readonly Sensor[]>([])
  const radio = radioOf(navigator)

  const stop = () => {
    for (const sensor of connected.current) sensor.stop()
    connected.current = []
    recording.value = undefined
    trouble.value = undefined
  }
  useEffect(() => stop, [])

  const add = (instrument: string, header: string, number: number) => {
    const sample = { time_s: Date.now() / 1000, number }
    const columns = recording.value?.columns ?? []
    const known = columns.some((column) => column.header === header)
    recording.value = {
      name: t('Sensors'),
      columns: known
        ? columns.map((column) =>
            column.header === header
              ? { ...column, samples: [...column.samples.slice(1 - MOST_SAMPLES), sample] }
              : column,
          )
        : [...columns, { header, instrument, samples: [sample] }],
    }
  }
  const connect = async () => {
    if (!radio) return
    trouble.value = undefined
    const found = await connectSensor(
      radio,
      (name, { label, unit, what }, number) => {
        const header = `${name}: ${t(label)}`
        appear(header, what && { what, unit })
        add(name, header, number)
      },
      (name) => {
        trouble.value = t('{0} is no longer connected. What it measured stays here.', name)
      },
    )
    if (!found.ok) trouble.value = found.error
    else if (found.value) connected.current = [...connected.current, found.value]
  }
  return { recording, trouble, connect: radio && connect, stop }
}

import { useId } from 'preact/hooks'

interface Props {
  readonly label: string
  readonly take: (text: string) => Promise<void>
}

/** Picks one file and hands over its text. */
export function FilePicker({ label, take }: Props) {
  const id = useId()
  return (
    <div class="file-picker">
      <input
        id={id}
        type="file"
        accept=".json,application/json"
        onChange={async (event) => {
          const picker = event.currentTarget
          const [file] = picker.files ?? []
          if (file) await take(await file.text())
          // The same file can be picked again after it was mended.
          picker.value = ''
        }}
      />
      <label class="key" for={id}>
        {label}
      </label>
    </div>
  )
}

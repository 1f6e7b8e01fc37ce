import { ok } from '@chargewright/quantity'
import type { ComponentChildren } from 'preact'
import type { Kept } from '../session/session.ts'
import { t } from '../words/t.ts'
import { EntryMessage } from './entry-message.tsx'
import { focusNextEntry } from './reveal.ts'
import { useDraft } from './use-draft.ts'

export interface TextFieldProps {
  readonly id: string
  readonly label: string
  readonly kept: string | undefined
  readonly absent: string
  readonly remark?: string | undefined
  readonly suggestions?: readonly string[] | undefined
  /** What was understood of the text, under it; `take` puts another in its place. */
  readonly understood?: (typed: string, take: (text: string) => void) => ComponentChildren
  readonly keep: (text: string) => Kept
  readonly clear?: (() => Kept) | undefined
}

/** A blank for a name. */
export function TextField({ id, label, kept, absent, remark, suggestions, understood, keep, clear }: TextFieldProps) {
  const field = useDraft({ id, label, kept, check: (typed) => ok(typed.trim()), keep, clear })
  return (
    <div class="entry" data-kept={kept !== undefined}>
      <label class="entry-label" for={id}>
        {t(label)}
      </label>
      <div class="entry-blank">
        <input
          id={id}
          data-entry
          class="entry-value entry-words"
          type="text"
          autoComplete="off"
          spellcheck={false}
          enterKeyHint="next"
          list={suggestions && `${id}-suggestions`}
          aria-describedby={`${id}-says`}
          aria-invalid={field.trouble.value !== undefined}
          value={field.draft.value ?? kept ?? ''}
          onInput={(event) => field.type(event.currentTarget.value)}
          onBlur={() => void field.commit()}
          onKeyDown={(event) => {
            if (event.key === 'Escape') field.letGo()
            if (event.key !== 'Enter') return
            // Else the same press would also take the answer that gets the focus.
            event.preventDefault()
            void field.commit()
            focusNextEntry(event.currentTarget)
          }}
        />
        {suggestions && (
          <datalist id={`${id}-suggestions`}>
            {suggestions.map((name) => (
              <option key={name} value={name} />
            ))}
          </datalist>
        )}
      </div>
      <div class="entry-says" id={`${id}-says`}>
        <EntryMessage
          trouble={field.trouble.value}
          isLeftOver={field.isLeftOver.value}
          remark={remark}
          absent={kept === undefined ? absent : undefined}
        />
        {understood?.(field.draft.value ?? '', (text) => {
          field.letGo()
          void keep(text)
        })}
      </div>
    </div>
  )
}

import { t } from '../words/t.ts'
import { useAnswer } from '../worker/use-answer.ts'

export interface RefrigerantReadProps {
  readonly typed: string
  /** Takes one of the names that it could be. */
  readonly take: (name: string) => void
}

/** What was understood of a refrigerant's name; one that could be several is asked about, with those it could be. */
export function RefrigerantRead({ typed, take }: RefrigerantReadProps) {
  const { answer, state } = useAnswer('refrigerantNamed', typed)
  const text = typed.trim()
  if (text === '') return null
  return (
    // Pressing a name must not take the focus from the field, or what was typed would be kept first.
    <div class="name-read" role="status" onMouseDown={(event) => event.preventDefault()}>
      {state === 'ready' && answer?.kind === 'read' && answer.name !== text && (
        <p>
          {t('reads as')} <strong>{answer.name}</strong>
        </p>
      )}
      {state === 'ready' && answer?.kind === 'unclear' && (
        <>
          <p class="doubt">
            {answer.near.length > 0 ? t('Which one is it?') : t('No refrigerant is known by this name.')}
          </p>
          {answer.near.length > 0 && (
            <div class="choices">
              {answer.near.slice(0, MOST_NAMES).map((name) => (
                <button key={name} type="button" class="choice" onClick={() => take(name)}>
                  {name}
                </button>
              ))}
            </div>
          )}
        </>
      )}
    </div>
  )
}

/** More are no help to choose from: then the name is typed on. */
const MOST_NAMES = 9

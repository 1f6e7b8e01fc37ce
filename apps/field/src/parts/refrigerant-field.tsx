import { useAnswer } from '../worker/use-answer.ts'
import { RefrigerantReadPlace } from './refrigerant-read-place.tsx'
import { TextField, type TextFieldProps } from './text-field.tsx'

/** A blank for a refrigerant. It offers every designation that can be computed, asks about a name that could be several, and takes any other too. */
export function RefrigerantField(field: Omit<TextFieldProps, 'suggestions' | 'understood'>) {
  const { answer: names } = useAnswer('refrigerants')
  return (
    <TextField
      {...field}
      suggestions={names}
      understood={(typed, take) => <RefrigerantReadPlace typed={typed} take={take} />}
    />
  )
}

import { useAnswer } from '../worker/use-answer.ts'
import { TextField, type TextFieldProps } from './text-field.tsx'

/** A blank for a refrigerant. It offers every designation that can be computed, and takes any other name too. */
export function RefrigerantField(field: Omit<TextFieldProps, 'suggestions'>) {
  const { answer: names } = useAnswer('refrigerants')
  return <TextField {...field} suggestions={names} />
}

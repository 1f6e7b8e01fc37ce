import { fail, ok, type Problem, type Result } from '@chargewright/quantity'

type Flags = Readonly<Record<string, Result<unknown, Problem> | undefined>>
type ValueOf<Read> = Extract<Read, { readonly ok: true }> extends { readonly value: infer Value } ? Value : never

/** The values of flags that must be given, and of those that may. */
export type FlagValues<Read extends Flags> = {
  readonly [Name in keyof Read as undefined extends Read[Name] ? never : Name]: ValueOf<Read[Name]>
} & { readonly [Name in keyof Read as undefined extends Read[Name] ? Name : never]?: ValueOf<Read[Name]> }

/** The values of the flags that were given, or every problem among them. */
export function readFlags<Read extends Flags>(flags: Read): Result<FlagValues<Read>, readonly Problem[]> {
  const given = Object.entries(flags)
  const problems = given.flatMap(([, read]) => (read && !read.ok ? [read.error] : []))
  if (problems.length > 0) return fail(problems)
  const values = given.flatMap(([name, read]) => (read?.ok ? [[name, read.value] as const] : []))
  return ok(Object.fromEntries(values) as FlagValues<Read>)
}

/** Reads a flag if it was given. */
export const ifGiven = <Value>(text: string | undefined, read: (text: string) => Result<Value, Problem>) =>
  text === undefined ? undefined : read(text)

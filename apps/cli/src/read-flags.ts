import { fail, ok, type Problem, type Result } from '@chargewright/quantity'

/** What was read of each flag that was given. */
export type ReadFlags<Name extends string> = Readonly<Record<Name, Result<number, Problem> | undefined>>

/** The values of the flags that were given, or every problem among them. */
export function readFlags<Name extends string>(
  flags: ReadFlags<Name>,
): Result<{ readonly [Each in Name]?: number }, readonly Problem[]> {
  const given = Object.entries<Result<number, Problem> | undefined>(flags)
  const problems = given.flatMap(([, read]) => (read && !read.ok ? [read.error] : []))
  if (problems.length > 0) return fail(problems)
  const values = given.flatMap(([name, read]) => (read?.ok ? [[name, read.value] as const] : []))
  return ok(Object.fromEntries(values) as { readonly [Each in Name]?: number })
}

/** Reads a flag if it was given. */
export const ifGiven = (text: string | undefined, read: (text: string) => Result<number, Problem>) =>
  text === undefined ? undefined : read(text)

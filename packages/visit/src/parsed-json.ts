import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import { quoted } from './schema-problem.ts'

/** The data of a JSON text; the parser's own words say where it breaks off. */
export function parsedJson(json: string, field: string): Result<unknown, Problem> {
  try {
    // Some editors put a byte order mark before the text, which JSON does not know.
    return ok(JSON.parse(json.replace(/^\uFEFF/, '')))
  } catch (error) {
    const accepted = `JSON (${error instanceof Error ? error.message : 'not JSON'})`
    return fail({ kind: 'unreadable', field, value: quoted(json), accepted })
  }
}

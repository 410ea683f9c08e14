/**
 * What of faulty settings can be read: one wrong line must not make the kit forget the others. In: a
 * schema and the settings as data. Out: them without what is wrong, the schema's own values in its
 * place. Undefined: nothing can be made of it.
 */
import type { z } from 'zod'

/** More faults than this in a row of one inside another are no slip. */
const mostRounds = 10

export function readableOf<T>(
  schema: z.ZodType<T>,
  settings: unknown,
  needed: Readonly<Record<string, unknown>>,
): T | undefined {
  const left: unknown = structuredClone(settings)
  if (!isRecord(left)) return undefined
  for (let round = 0; round < mostRounds; round++) {
    const result = schema.safeParse({ ...needed, ...left })
    if (result.success) return result.data
    for (const issue of result.error.issues) {
      if (issue.code === 'unrecognized_keys')
        for (const key of issue.keys) takeOut(left, [...issue.path, key])
      else takeOut(left, issue.path)
    }
  }
  return undefined
}

const isRecord = (value: unknown): value is Record<PropertyKey, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** What is missing cannot be taken out: what it is missing from goes. */
function takeOut(from: Record<PropertyKey, unknown>, [key, ...rest]: readonly PropertyKey[]): void {
  if (key === undefined) return
  const inner = from[key]
  if (rest.length > 0 && isRecord(inner) && reaches(inner, rest)) takeOut(inner, rest)
  else if (rest.length === 1 && Array.isArray(inner))
    from[key] = inner.filter((_, index) => index !== rest[0])
  else Reflect.deleteProperty(from, key)
}

const reaches = (from: Readonly<Record<PropertyKey, unknown>>, [key]: readonly PropertyKey[]) =>
  key !== undefined && key in from

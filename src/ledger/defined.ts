/** An object without the members that are undefined: for what is optional in a type or a file. */
type Defined<T> = { [K in keyof T]?: Exclude<T[K], undefined> }

const isDefined = <V>(value: V): value is Exclude<V, undefined> => value !== undefined

export function defined<T extends object>(values: T): Defined<T> {
  const made: Defined<T> = {}
  for (const key in values) {
    const value = values[key]
    if (isDefined(value)) made[key] = value
  }
  return made
}

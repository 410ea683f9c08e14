/** Runs a task for each of a list, a few at a time, and gives the results in the list's order. */
export async function forAll<T, R>(
  list: readonly T[],
  atOnce: number,
  task: (one: T) => Promise<R>,
): Promise<R[]> {
  const results = new Map<number, R>()
  let next = 0
  const worker = async (): Promise<void> => {
    for (let index = next++; index < list.length; index = next++) {
      const one = list[index]
      if (one !== undefined) results.set(index, await task(one))
    }
  }
  await Promise.all(Array.from({ length: Math.min(atOnce, list.length) }, worker))
  return [...results].sort(([a], [b]) => a - b).map(([, result]) => result)
}

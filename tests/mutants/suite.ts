/**
 * The tests of a file, collected and run in this very process. In: what a test file hands to `describe`
 * and `test`. Out: the first failure, if any.
 *
 * The expectations are Vitest's own; only its collecting and reporting are left out, since some ten
 * thousand runs are wanted. Hooks are not run: no test of a calculator needs one.
 */
import { expect } from 'vitest'

type Run = (...values: readonly unknown[]) => unknown
export interface Case {
  readonly path: readonly string[]
  readonly run: () => unknown
}

export interface Suite {
  /** The tests collected since the last call. */
  taken(): readonly Case[]
  /** What stands for the package `vitest`. */
  readonly api: Readonly<Record<string, unknown>>
}

export function newSuite(): Suite {
  let cases: Case[] = []
  let path: readonly string[] = []
  const inside = (name: string, run: () => unknown): void => {
    const before = path
    path = [...path, name]
    run()
    path = before
  }
  const add = (name: string, run: Run): void => {
    cases.push({ path: [...path, name], run: () => run() })
  }
  const each =
    (take: (name: string, run: () => unknown) => void) =>
    (table: readonly unknown[]) =>
    (name: string, run: Run): void => {
      for (const row of table) {
        const values: readonly unknown[] = Array.isArray(row) ? row : [row]
        take(titled(name, values[0]), () => run(...values))
      }
    }
  const test = Object.assign(add, { each: each(add) })
  const describe = Object.assign(inside, { each: each(inside) })
  const none = (): void => undefined
  const api = {
    __esModule: true,
    describe,
    test,
    it: test,
    expect,
    afterAll: none,
    afterEach: none,
    beforeAll: none,
    beforeEach: none,
  }
  const taken = (): readonly Case[] => {
    const all = cases
    cases = []
    return all
  }
  return { taken, api }
}

/** `%s` and `$id`, which the choice of tests goes by; other places are left as they are. */
function titled(name: string, value: unknown): string {
  const id = typeof value === 'object' && value !== null && 'id' in value ? String(value.id) : '$id'
  return name.replace('%s', String(value)).replace('$id', id)
}

/** The words of the first failure. Tests whose titles do not fit are not run. */
export async function firstFailure(
  cases: readonly Case[],
  fits: (path: readonly string[]) => boolean = () => true,
): Promise<string | undefined> {
  for (const { path, run } of cases) {
    if (!fits(path)) continue
    try {
      await run()
    } catch (error) {
      return `${path.join(' › ')}: ${error instanceof Error ? error.message : String(error)}`
    }
  }
  return undefined
}

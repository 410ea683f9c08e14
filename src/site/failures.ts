/**
 * Runs what authors write in braces while pages are made, and keeps what fails. In: expressions, from the
 * program of the pages. Out: problems with their places, told once each; in the page, what was typed.
 *
 * Pages find it by a name in `globalThis`: they run in this process, in a module graph of their own.
 */
import { byPlace } from '../ledger/order.ts'
import type { Problem } from '../ledger/problems.ts'
import { problemAt } from '../ledger/report.ts'
import type { Runner } from '../mdx/guard.ts'
import { words } from '../words/words.ts'
import { atPlaceHtml } from '../writing/messages.ts'

export interface Failures {
  /** Its name in `globalThis`. */
  readonly key: string
  readonly problems: () => readonly Problem[]
  /** The notes have changed: what fails now will be seen again. */
  readonly forget: () => void
}

let made = 0

/** `tell`: where each failure is told when it comes up. */
export function keepFailures(tell: (problem: Problem) => void = () => undefined): Failures {
  const found = new Map<string, Problem>()
  const told = new Map<string, string>()
  const runner: Runner = {
    run(file, line, column, typed, work) {
      const place = `${file}:${line}:${column}`
      const failed = (error: unknown): string => {
        const problem = problemAt(file, { line, column }, saidOf(error, typed))
        found.set(place, problem)
        if (told.get(place) !== problem.text) tell(problem)
        told.set(place, problem.text)
        return typed
      }
      try {
        const value = work()
        if (value instanceof Promise) return value.catch(failed)
        found.delete(place)
        told.delete(place)
        return value
      } catch (error) {
        return failed(error)
      }
    },
    told: (file, from, to) =>
      inOrder(found)
        .filter((one) => one.file === file && one.line >= from && one.line <= to)
        .map(atPlaceHtml)
        .join(''),
  }
  const key = `worked-notes:run:${made++}`
  Reflect.set(globalThis, key, runner)
  return { key, problems: () => inOrder(found), forget: () => found.clear() }
}

const inOrder = (found: ReadonlyMap<string, Problem>): Problem[] =>
  [...found.values()].sort(byPlace)

const known: readonly (readonly [RegExp, (found: readonly string[]) => string])[] = [
  [
    /^Cannot read properties of (?:undefined|null) \(reading '(.*)'\)$/,
    ([, name = '']) => words`there is nothing here that could have \`${name}\``,
  ],
  [/^(.*) is not a function$/, ([, name = '']) => words`\`${name}\` is nothing that can be called`],
  [
    /^(.*) is not (?:iterable|async iterable)\b.*$/,
    ([, name = '']) => words`\`${name}\` is no list`,
  ],
  [/^(.*) is not defined$/, ([, name = '']) => words`nothing is called \`${name}\``],
  [
    /^Cannot access '(.*)' before initialization$/,
    ([, name = '']) => words`\`${name}\` is used before it is given`,
  ],
  [/^Reduce of empty array/, () => words`a list is empty`],
  [/^Maximum call stack/, () => words`it calls itself without end`],
]

function saidOf(error: unknown, typed: string) {
  const message = (error instanceof Error ? error.message : String(error)).split('\n')[0] ?? ''
  const reason = known.flatMap(([pattern, say]) => {
    const read = pattern.exec(message)
    return read === null ? [] : [say(read)]
  })[0]
  const short = typed.length > 60 ? `${typed.slice(0, 57)}…` : typed
  return {
    rule: 'expression-fails',
    text: words`\`${short.replace(/\s+/g, ' ')}\` fails when the page is made: ${reason ?? message}`,
    hint: words`what stands in braces is JavaScript; numbers are worked by the kit alone: \`{name}\``,
  }
}

/** Problems as lines for a terminal: place, level, what is wrong, what is allowed, the likely slip. */
import type { Problem } from '../ledger/problems.ts'
import { words } from '../words/words.ts'
import { severityWords } from '../ledger/severity.ts'

export function printProblem(problem: Problem, folder: string): string {
  const at = ({ file, line, column }: { file: string; line: number; column: number }): string =>
    `${folder === '' ? '' : `${folder}/`}${file}:${line}:${column}`
  const lines = [`${at(problem)} ${severityWords[problem.level]}: ${problem.text}`]
  if (problem.allowed !== undefined) lines.push(`    ${words`allowed: ${problem.allowed}`}`)
  if (problem.hint !== undefined) lines.push(`    ${problem.hint.replaceAll('\n', '\n    ')}`)
  for (const other of problem.also ?? []) lines.push(`    ${words`also at ${at(other)}`}`)
  return lines.join('\n')
}

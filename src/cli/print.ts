/** Problems as lines for a terminal: place, level, what is wrong, what is allowed, the likely slip. */
import type { Problem } from '../ledger/problems.ts'

export function printProblem(problem: Problem, folder: string): string {
  const at = ({ file, line, column }: { file: string; line: number; column: number }): string =>
    `${folder === '' ? '' : `${folder}/`}${file}:${line}:${column}`
  const lines = [`${at(problem)} ${problem.level}: ${problem.text}`]
  if (problem.allowed !== undefined) lines.push(`    allowed: ${problem.allowed}`)
  if (problem.hint !== undefined) lines.push(`    ${problem.hint.replaceAll('\n', '\n    ')}`)
  for (const other of problem.also ?? []) lines.push(`    also at ${at(other)}`)
  return lines.join('\n')
}

export function summary(problems: readonly Problem[]): string {
  const count = (level: Problem['level'], word: string): string => {
    const number = problems.filter((problem) => problem.level === level).length
    return `${number} ${word}${number === 1 ? '' : 's'}`
  }
  return `${count('error', 'error')}, ${count('warning', 'warning')}`
}

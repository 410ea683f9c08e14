/** How grave problems are, in words: of one, and of how many there are. */
import { counted } from '../words/counted.ts'
import { words } from '../words/words.ts'
import type { Problem } from './problems.ts'

export const severityWords: Readonly<Record<Problem['level'], string>> = {
  error: words`error`,
  warning: words`warning`,
}

export function summary(problems: readonly Problem[]): string {
  const [errors = 0, warnings = 0] = (['error', 'warning'] as const).map(
    (level) => problems.filter((problem) => problem.level === level).length,
  )
  return [
    counted(errors, words`${errors} error`, words`${errors} errors`),
    counted(warnings, words`${warnings} warning`, words`${warnings} warnings`),
  ].join(', ')
}

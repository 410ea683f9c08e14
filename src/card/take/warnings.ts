/** The caution texts of hazards as plain text, gravest first, each with its signal word. */
import { hazards, type HazardId } from '../../../calculators/hazards.ts'
import { inOrder } from './hazard-line.ts'
import { signalWords } from '../words.ts'

export function warningsOf(ids: readonly string[]): readonly string[] {
  return inOrder(ids).map(warning)
}

function warning(id: HazardId): string {
  const { signal, title, what, consequence, avoid } = hazards[id]
  return `${signalWords[signal]} ${title}. ${what} ${consequence} ${avoid}`
}

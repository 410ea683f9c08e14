/**
 * What stands for a result that a block did not give. “Cannot tell” counts as not passed, so it is said
 * only where a check of the block cannot tell; otherwise nothing asked for the result.
 */
import type { PublishedFinding } from './published.ts'
import { words } from '../words/words.ts'

export const untold = (findings: readonly Pick<PublishedFinding, 'level'>[]): string =>
  findings.some(({ level }) => level === 'unknown') ? words`cannot tell` : words`not worked out`

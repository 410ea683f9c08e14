/**
 * Judges a block: its verdict from its findings, whether a pass is provisional, and whether a stop may
 * be published.
 */
import type { Calculator, Finding, Level } from '../../calculators/define.ts'
import type { Firmness, PublishedBlock, PublishedFinding } from './published.ts'
import type { Problem } from './problems.ts'
import { words } from '../words/words.ts'

const worstFirst: readonly Level[] = ['stop', 'unknown', 'watch', 'pass']
const weakestFirst: readonly Firmness[] = ['assumed', 'chosen', 'rated', 'reading']

/** The worst of the findings; without any there is nothing to tell by. */
export function verdictOf(findings: readonly { readonly level: Level }[]): Level {
  return (
    worstFirst.find((level) => findings.some((finding) => finding.level === level)) ?? 'unknown'
  )
}

export function weakest(kinds: readonly Firmness[]): Firmness {
  return weakestFirst.find((kind) => kinds.includes(kind)) ?? 'reading'
}

export const isProvisional = (verdict: Level, inputs: readonly Firmness[]): boolean =>
  verdict === 'pass' && inputs.includes('assumed')

export function publishFindings(
  calculator: Calculator,
  findings: readonly Finding[],
): PublishedFinding[] {
  return findings.map(({ check, level, text, threshold }) => ({
    check,
    level,
    text,
    threshold,
    basis: calculator.checks[check]?.basis ?? '',
  }))
}

/** A stop needs the builder's reason; some stops no reason covers. */
export function acceptProblems(block: PublishedBlock, calculator: Calculator): Problem[] {
  const at = { file: block.file, line: block.line, column: 1 }
  const stops = block.findings.filter(({ level }) => level === 'stop')
  const said = stops.map(({ text }) => text).join(' ')
  const forbidden = stops.filter(({ check }) => calculator.checks[check]?.never === true)
  if (forbidden.length > 0)
    return [
      {
        rule: 'stop-nobody-may-accept',
        level: 'error',
        text: words`\`${block.name}\` is a stop that no reason covers: ${forbidden.map(({ text }) => text).join(' ')}`,
        ...at,
      },
    ]
  if (stops.length > 0 && block.accepted === null)
    return [
      {
        rule: 'stop',
        level: 'error',
        text: words`\`${block.name}\` is a stop: ${said}`,
        hint: words`change what it rests on, or publish it with your reason: \`accept="…"\``,
        ...at,
      },
    ]
  if (stops.length === 0 && block.accepted !== null)
    return [
      {
        rule: 'nothing-to-accept',
        level: 'warning',
        text: words`\`${block.name}\` accepts a stop, and there is none`,
        hint: words`take the \`accept\` out, so that a later stop is seen`,
        ...at,
      },
    ]
  return []
}

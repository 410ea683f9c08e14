/**
 * Verdicts and findings: words in a frame that can be told apart in black alone. The frame's class
 * only repeats what the word says.
 */
import type { Calculator } from '../../calculators/define.ts'
import type { PublishedBlock, PublishedFinding } from '../ledger/published.ts'
import { sentenceHtml } from './firm.ts'
import { escape } from './html.ts'
import { levelWords, verdictName, verdictWords, type VerdictName } from './words.ts'
import { words } from '../words/words.ts'

export function frameHtml(name: VerdictName): string {
  return `<strong class="verdict verdict-${name}">${verdictWords[name]}</strong>`
}

export function verdictHtml(block: Pick<PublishedBlock, 'verdict' | 'provisional' | 'accepted'>) {
  return frameHtml(verdictName(block))
}

export function findingsHtml(
  findings: readonly PublishedFinding[],
  calculator: Calculator | undefined,
): string {
  const items = findings.map((finding) => {
    const title = calculator?.checks[finding.check]?.title ?? finding.check
    return [
      `<li class="finding"><strong class="verdict verdict-${finding.level}">${levelWords[finding.level]}</strong>`,
      `<div><p><b>${escape(title)}.</b> ${sentenceHtml(finding.text)}</p>`,
      `<p class="basis">${words`Limit: ${sentenceHtml(finding.threshold)}.`} ${sentenceHtml(basisWords(finding.basis))}</p></div></li>`,
    ].join('')
  })
  return `<ul class="findings">${items.join('')}</ul>`
}

/** `published: UN R100` -> `Published: UN R100.` */
export function basisWords(basis: string): string {
  return `${basis.charAt(0).toUpperCase()}${basis.slice(1)}${/[.!?]$/.test(basis) ? '' : '.'}`
}

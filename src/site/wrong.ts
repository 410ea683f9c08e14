/**
 * What is wrong with a new site, as lines for the terminal. A link that leads nowhere is told at the
 * note's line that it comes from, once, and is no fault of the numbers.
 */
import { printProblem } from '../cli/print.ts'
import type { Ledger } from '../ledger/load.ts'
import { problemAt } from '../ledger/report.ts'
import { counted } from '../words/counted.ts'
import { words } from '../words/words.ts'
import type { Discrepancy } from './differences.ts'

type Notes = Pick<Ledger, 'notes' | 'site'>

export function wrongLines(
  wrong: readonly Discrepancy[],
  ledger: Notes,
  folder: string,
): readonly string[] {
  return [...new Set(wrong.map((one) => noteLine(one, ledger, folder) ?? plainLine(one)))]
}

const plainLine = ({ file, line, text }: Discrepancy): string => `${file}:${line} ${text}`

function noteLine(
  { link, text }: Discrepancy,
  { notes, site }: Notes,
  folder: string,
): string | undefined {
  if (link === undefined) return undefined
  const base = (site?.base ?? '/').replace(/\/$/, '')
  for (const note of notes) {
    const from = note.links.find(({ url }) => url.startsWith('/') && base + url === link)
    if (from !== undefined)
      return printProblem(problemAt(note.file, from, { rule: 'dead-link', text }), folder)
  }
  return undefined
}

/** How much of it is what. */
export function wrongWords(wrong: readonly Discrepancy[]): string {
  const links = new Set(wrong.flatMap(({ link }) => link ?? [])).size
  const others = wrong.filter(({ link }) => link === undefined).length
  const said = [
    others === 0
      ? ''
      : counted(
          others,
          words`${others} place of the new site is not what its numbers give`,
          words`${others} places of the new site are not what its numbers give`,
        ),
    links === 0
      ? ''
      : counted(
          links,
          words`${links} link of the new site leads nowhere`,
          words`${links} links of the new site lead nowhere`,
        ),
  ]
  return said.filter((one) => one !== '').join(', ')
}

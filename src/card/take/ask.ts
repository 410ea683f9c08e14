/**
 * A link that begins a question to the builder: a mail (RFC 6068) or a form of a forum, with the
 * block's address, its verdict, whose figures they are, and its hazards already in it. Some programs
 * cut long addresses, so it is kept below 1900 characters: figures that do not fit are left out, and
 * the text says how many. Hazards and standing words are never left out.
 */
import { standingWords } from '../../../calculators/hazard-names.ts'
import type { PublishedBlock } from '../../ledger/published.ts'
import type { CardContext } from '../context.ts'
import { verdictName, verdictWords } from '../words.ts'
import { blockAddress } from './address.ts'
import type { ChangedFigure } from './changed.ts'
import { hazardLine } from './hazard-line.ts'
import { whoseWords } from './whose.ts'
import { words } from '../../words/words.ts'
import { counted } from '../../words/counted.ts'

const longest = 1900
/** More figures than this never fit. */
const most = 60
/** Most signs of a title or a figure, while there is room, when there is little, when there is none. */
const [roomy, short, shortest] = [120, 40, 12] as const

export function askHref(
  block: PublishedBlock,
  ctx: CardContext,
  setting: string,
  figures: readonly ChangedFigure[],
): string {
  let href = ''
  for (const [clip, kept] of attempts(figures.length)) {
    href = hrefOf(setting, titleOf(block, ctx, clip), textOf(block, ctx, figures, kept, clip))
    if (href.length < longest) break
  }
  return href
}

/** Long titles make room before figures are dropped. */
function* attempts(figures: number): Generator<readonly [clip: number, kept: number]> {
  yield [roomy, figures]
  for (const clip of [short, shortest])
    for (let kept = Math.min(figures, most); kept >= 0; kept -= 1) yield [clip, kept]
}

function titleOf(block: PublishedBlock, ctx: CardContext, clip: number): string {
  const note = ctx.note(block.note)?.title ?? block.note
  return plain(words`Question: ${clipped(block.title, clip)} (${clipped(note, clip)})`)
}

function textOf(
  block: PublishedBlock,
  ctx: CardContext,
  figures: readonly ChangedFigure[],
  kept: number,
  clip: number,
): string {
  const left = figures.length - kept
  const lines = figures
    .slice(0, kept)
    .map(({ label, yours, builders }) =>
      [label, yours, builders].map((text) => clipped(text, clip)),
    )
    .map(
      ([label = '', yours = '', builders = '']) =>
        `- ${words`${label}: ${yours} (builder: ${builders})`}`,
    )
  const whose =
    figures.length === 0
      ? whoseWords({ who: 'builder' })
      : whoseWords({ who: 'reader', changed: figures.length })
  return [
    words`My question:`,
    '',
    '',
    clipped(block.title, clip),
    blockAddress(block, ctx),
    words`Verdict: ${verdictWords[verdictName(block)]}`,
    whose,
    ...lines,
    ...(left === 0 ? [] : [`(${leftWords(left)})`]),
    ...(block.hazards.length === 0 ? [] : [hazardLine(block.hazards)]),
    standingWords,
  ]
    .map(plain)
    .join('\n')
}

const leftWords = (left: number): string =>
  counted(
    left,
    words`${left} changed figure left out: no room.`,
    words`${left} changed figures left out: no room.`,
  )

/** Typographic signs take nine characters each in an address. */
function plain(text: string): string {
  return text
    .toWellFormed()
    .replace(/[‘’]/g, "'")
    .replace(/[“”]/g, '"')
    .replace(/[\u00a0\u202f]/g, ' ')
    .replaceAll('−', '-')
}

function clipped(text: string, clip: number): string {
  const signs = Array.from(text)
  return signs.length <= clip ? text : `${signs.slice(0, clip - 2).join('')}..`
}

function hrefOf(setting: string, title: string, text: string): string {
  if (/^https:/i.test(setting)) {
    const filled = { '{title}': encodeURIComponent(title), '{text}': encodeURIComponent(text) }
    return setting.replace(/\{title\}|\{text\}/g, (name) =>
      name === '{title}' ? filled['{title}'] : filled['{text}'],
    )
  }
  const [local = '', domain = ''] = setting.split('@')
  const body = encodeURIComponent(text.replaceAll('\n', '\r\n'))
  return `mailto:${encodeURIComponent(local)}@${domain}?subject=${encodeURIComponent(title)}&body=${body}`
}

/**
 * What `check` says, in the page while its author writes. In: problems. Out: HTML, for the head of a
 * page and for the place in the text that a message is about. None of it is ever in a finished site.
 */
import { escape } from '../card/html.ts'
import { byPlace } from '../ledger/order.ts'
import type { Problem } from '../ledger/problems.ts'
import { severityWords, summary } from '../ledger/severity.ts'
import { words } from '../words/words.ts'
import { counted } from '../words/counted.ts'

/** As many as help; all are in the terminal. */
const most = 30

const slugOf = (file: string): string | undefined => /^notes\/([^/]+)\.mdx$/.exec(file)?.[1]

/** The same for one problem wherever it is told. */
const messageId = ({ file, line, column, rule }: Problem): string =>
  `Message-${slugOf(file) ?? 'site'}-${line}-${column}-${rule}`

const placeText = ({ file, line, column }: Problem): string => `${file}:${line}:${column}`

/** What was typed stands in backquotes in the text of a message. */
export const wordsHtml = (text: string): string =>
  escape(text)
    .replace(/`([^`]+)`/g, '<code>$1</code>')
    .replaceAll('\n', '<br>')

function bodyHtml(problem: Problem, place: string): string {
  const { level, text, allowed, hint } = problem
  return [
    `<b>${severityWords[level]}</b> ${place} ${wordsHtml(text)}.`,
    allowed === undefined ? '' : ` ${words`Allowed: ${wordsHtml(allowed)}.`}`,
    hint === undefined ? '' : `<br>${wordsHtml(hint)}`,
  ].join('')
}

/** Before the paragraph, table or element that it is about. */
export function atPlaceHtml(problem: Problem): string {
  const place = `<code>${escape(placeText(problem))}</code>`
  return `<div class="message message-${problem.level}" role="note" id="${escape(messageId(problem))}">${bodyHtml(problem, place)}</div>`
}

/** Something that cannot be shown as it is meant: the text as typed. */
export const asTypedHtml = (text: string): string =>
  `<code class="as-typed">${escape(text.trim())}</code>`

/** At the head of a page: of a note's page what is about the note, and where else there is something. */
export function panelHtml(problems: readonly Problem[], path: string, base: string): string {
  if (problems.length === 0) return ''
  const page = /\/notes\/([^/]+)\//.exec(path)?.[1]
  const own = problems.filter(({ file }) => page !== undefined && slugOf(file) === page)
  const listed = (own.length > 0 ? own : problems).toSorted(byPlace)
  const items = listed.slice(0, most).map((problem) => {
    const slug = slugOf(problem.file)
    const to = slug === page ? '' : `${base}notes/${slug ?? ''}/`
    const place =
      slug === undefined
        ? `<code>${escape(placeText(problem))}</code>`
        : `<a href="${escape(`${to}#${messageId(problem)}`)}">${escape(placeText(problem))}</a>`
    return `<li class="message-${problem.level}">${bodyHtml(problem, place)}</li>`
  })
  const left = listed.length - items.length
  const elsewhere = own.length > 0 ? problems.length - own.length : 0
  const all = `<a href="${escape(base)}">${words`all of them`}</a>`
  return [
    `<aside class="messages" aria-label="${words`Messages`}"><p><b>${summary(listed)}</b></p>`,
    `<ul>${items.join('')}</ul>`,
    left > 0 ? `<p>${words`and ${left} more, in the terminal`}</p>` : '',
    elsewhere > 0
      ? `<p>${counted(
          elsewhere,
          words`${elsewhere} message about other files: ${all}`,
          words`${elsewhere} messages about other files: ${all}`,
        )}</p>`
      : '',
    '</aside>',
  ].join('')
}

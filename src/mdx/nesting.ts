/**
 * Tags that do not fit together: one without an end, one that closes nothing, two that cross.
 *
 * In: what the tree builder knew when it gave up. Out: the problem, and the offsets of the tags to read
 * as text when the note is parsed again. The builder gives up at the first, so they come one by one;
 * a closing tag whose opening one was already told is part of that fault and no problem of its own.
 */
import type { Problem } from '../ledger/problems.ts'
import { problem, short } from './explain.ts'
import { isMessage, offsetOf, type OpenTag, type Pass } from './forgive.ts'
import type { PlaceAt } from './place.ts'
import { words } from '../words/words.ts'

export interface Nesting {
  readonly problem: Problem | undefined
  readonly signs: readonly number[]
}

const nowhere: OpenTag = { name: undefined, start: 0, end: 0 }

export function nestingFault(message: Error, pass: Pass, placeAt: PlaceAt): Nesting {
  const tag = pass.tag ?? nowhere
  const open = pass.open.at(-1)
  const typed = pass.text.slice(tag.start, tag.end)
  const at = offsetOf(message)
  const ruleId = isMessage(message) ? message.ruleId : undefined
  if (!pass.tag) return givenUp(placeAt)
  // Under a heading's line of dashes the builder fails on its own, without a message.
  const isOpen = ruleId === undefined || (ruleId === 'end-tag-mismatch' && at !== tag.start)
  if (!typed.startsWith('</') || isOpen) {
    return unclosed(latestOpen(pass, typed), placeAt)
  }
  const quoted = `\`${short(typed)}\``
  if (ruleId !== 'end-tag-mismatch' && ruleId !== 'unexpected-closing-slash') {
    const hint = words`write \`</${nameOf(typed)}>\``
    const said = { text: words`${quoted} closes a tag and holds more than its name`, hint }
    return tell({ rule: 'unreadable-tag', at: at ?? tag.start, ...said }, [tag], placeAt)
  }
  if (!open) {
    if (opensBefore(pass, nameOf(typed))) return { problem: undefined, signs: [tag.start] }
    const hint = words`take it out, or open the tag before it`
    const said = {
      rule: 'tag-closes-nothing',
      at: tag.start,
      text: words`${quoted} closes nothing`,
      hint,
    }
    return tell(said, [tag], placeAt)
  }
  const said =
    nameOf(typed) === (open.name ?? '')
      ? {
          text: words`${quoted} closes a tag that was opened outside this paragraph, list or emphasis`,
          hint: words`open and close the tag inside the same one`,
        }
      : {
          text: words`${quoted} stands where \`</${open.name ?? ''}>\` is due`,
          hint: words`close \`<${open.name ?? ''}>\` first, or end it with \`/>\``,
        }
  const found = tell({ rule: 'tag-mismatch', at: tag.start, ...said }, [tag, open], placeAt)
  return {
    signs: found.signs,
    problem: found.problem && { ...found.problem, also: [placeAt(open.start)] },
  }
}

/** No tag is to blame: nothing can be read as text to go on. */
function givenUp(placeAt: PlaceAt): Nesting {
  const said = {
    text: words`the note cannot be read`,
    hint: words`take out the last change and try again`,
  }
  return { ...tell({ rule: 'unreadable-note', at: 0, ...said }, [], placeAt) }
}

function unclosed(open: OpenTag, placeAt: PlaceAt): Nesting {
  const name = open.name ?? ''
  const said = {
    rule: 'tag-open',
    at: open.start,
    text: words`\`<${name}>\` is never closed, or not in the paragraph, list or table it began in`,
    hint: /^(?:br|hr|img|wbr|input)$/.test(name)
      ? words`write \`<${name} />\``
      : words`end it with \`/>\`, or write \`</${name}>\` where it ends`,
  }
  return tell(said, [open], placeAt)
}

/** The tag that began last may itself be the one that is open. */
function latestOpen({ open, tag }: Pass, typed: string): OpenTag {
  if (tag && !typed.startsWith('</') && !typed.endsWith('/>'))
    return { ...tag, name: nameOf(typed) }
  return (typed.startsWith('</') ? open.at(-2) : open.at(-1)) ?? open.at(-1) ?? tag ?? nowhere
}

function opensBefore({ text, literal, tag }: Pass, name: string): boolean {
  return [...literal].some(
    (start) => start < (tag?.start ?? 0) && nameOf(text.slice(start, start + 200)) === name,
  )
}

function nameOf(tag: string): string {
  return /^<\/?\s*([^\s/>{]*)/.exec(tag)?.[1] ?? ''
}

function tell(
  said: Parameters<typeof problem>[0],
  tags: readonly OpenTag[],
  placeAt: PlaceAt,
): Nesting {
  return { problem: problem(said, placeAt), signs: tags.map(({ start }) => start) }
}

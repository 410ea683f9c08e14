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
    const hint = `write \`</${nameOf(typed)}>\``
    const words = { text: `${quoted} closes a tag and holds more than its name`, hint }
    return tell({ rule: 'unreadable-tag', at: at ?? tag.start, ...words }, [tag], placeAt)
  }
  if (!open) {
    if (opensBefore(pass, nameOf(typed))) return { problem: undefined, signs: [tag.start] }
    const hint = 'take it out, or open the tag before it'
    const words = {
      rule: 'tag-closes-nothing',
      at: tag.start,
      text: `${quoted} closes nothing`,
      hint,
    }
    return tell(words, [tag], placeAt)
  }
  const words =
    nameOf(typed) === (open.name ?? '')
      ? {
          text: `${quoted} closes a tag that was opened outside this paragraph, list or emphasis`,
          hint: 'open and close the tag inside the same one',
        }
      : {
          text: `${quoted} stands where \`</${open.name ?? ''}>\` is due`,
          hint: `close \`<${open.name ?? ''}>\` first, or end it with \`/>\``,
        }
  const found = tell({ rule: 'tag-mismatch', at: tag.start, ...words }, [tag, open], placeAt)
  return {
    signs: found.signs,
    problem: found.problem && { ...found.problem, also: [placeAt(open.start)] },
  }
}

/** No tag is to blame: nothing can be read as text to go on. */
function givenUp(placeAt: PlaceAt): Nesting {
  const words = { text: 'the note cannot be read', hint: 'take out the last change and try again' }
  return { ...tell({ rule: 'unreadable-note', at: 0, ...words }, [], placeAt) }
}

function unclosed(open: OpenTag, placeAt: PlaceAt): Nesting {
  const name = open.name ?? ''
  const words = {
    rule: 'tag-open',
    at: open.start,
    text: `\`<${name}>\` is never closed, or not in the paragraph, list or table it began in`,
    hint: /^(?:br|hr|img|wbr|input)$/.test(name)
      ? `write \`<${name} />\``
      : `end it with \`/>\`, or write \`</${name}>\` where it ends`,
  }
  return tell(words, [open], placeAt)
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
  words: Parameters<typeof problem>[0],
  tags: readonly OpenTag[],
  placeAt: PlaceAt,
): Nesting {
  return { problem: problem(words, placeAt), signs: tags.map(({ start }) => start) }
}

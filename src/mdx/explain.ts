/**
 * What MDX could not read, in a builder's words.
 *
 * In: the text and the fault. Out: the problem, and how far the fault reaches: signs inside that
 * stretch are part of it and not told a second time. The words are made from what was typed; the
 * parser's own message is not used.
 */
import type { Problem } from '../ledger/problems.ts'
import { looksLikeModule } from './module-line.ts'
import { mostBraces, type Fault } from './forgive.ts'
import { lineFrom, paragraphEnd, type PlaceAt } from './place.ts'
import { unitAt } from './prose-units.ts'
import { slipInSum } from './sum-slips.ts'
import { matchingBrace, walkTag } from './tag.ts'
import { words } from '../words/words.ts'

export interface Explained {
  /** undefined: it only looked like markup and is plain text. */
  readonly problem: Problem | undefined
  /** Offset one past the end of the fault. */
  readonly end: number
}

interface Words {
  readonly rule: string
  readonly at: number
  readonly text: string
  readonly hint: string
}

export function explain(text: string, fault: Fault, placeAt: PlaceAt): Explained {
  const explained =
    fault.overlong !== undefined
      ? { words: overlong(fault.start, fault.overlong.braces), end: fault.overlong.end }
      : fault.kind === 'tag'
        ? explainTag(text, fault)
        : fault.kind === 'braces'
          ? explainBraces(text, fault.start, fault.at)
          : explainModule(text, fault)
  return { problem: explained.words && problem(explained.words, placeAt), end: explained.end }
}

export function problem({ rule, at, text, hint }: Words, placeAt: PlaceAt): Problem {
  return { rule, level: 'error', ...placeAt(at), text, hint }
}

function overlong(at: number, braces: number): Words {
  return {
    rule: 'overlong-braces',
    at,
    text: words`${braces} pairs of braces in one place, more than the ${mostBraces} that are read`,
    hint: words`write a list of parts as a table inside the element, and a long one in several elements`,
  }
}

interface Found {
  readonly words: Words | undefined
  readonly end: number
}

function explainTag(text: string, { start, at }: Fault): Found {
  const line = lineFrom(text, start)
  if (line.startsWith('<!')) {
    const comment = /^[^]*?(?:--|[–—])>/.exec(text.slice(start))?.[0]
    return {
      end: comment === undefined ? paragraphEnd(text, start) : start + comment.length,
      words: {
        rule: 'html-comment',
        at: start,
        text: words`\`${/^<!(?:--|[–—])?/.exec(line)?.[0] ?? '<!'}\` does not begin a comment here`,
        hint: words`write \`{/* … */}\``,
      },
    }
  }
  const address = /^<((?:https?:\/\/|mailto:|[^\s<>@"=]+@)[^\s<>]*)>?/i.exec(line)
  if (address) {
    return {
      end: start + address[0].length,
      words: {
        rule: 'bare-address',
        at: start,
        text: words`an address in angle brackets is read as a tag: \`${short(address[0])}\``,
        hint: words`write \`[words](${address[1]?.includes(':') ? '' : 'mailto:'}${short(address[1] ?? '')})\``,
      },
    }
  }

  const { name, end, fault: last, swallowing } = walkTag(text, start)
  const fault = swallowing ?? last
  const tag = `<${text[start + 1] === '/' ? '/' : ''}${name}`
  const found = (said: Words): Found => ({ words: said, end: Math.max(end, start + 1) })
  const value = fault ? lineFrom(text, fault.at) : ''
  const attribute = fault?.attribute ?? ''
  switch (fault?.kind) {
    case 'bare': {
      const typed = /^.*?(?=\s+[\w$]+\s*=|\s*\/?>|\s*$)/.exec(value)?.[0] ?? ''
      return found({
        rule: 'value-without-quotes',
        at: fault.at,
        text: words`the value of \`${attribute}\` has no quotes: \`${attribute}=${short(typed)}\``,
        hint: words`write \`${attribute}="${short(typed) || '…'}"\``,
      })
    }
    case 'quote':
    case 'curly':
      return found({
        rule: 'quote-open',
        at: fault.at,
        text: words`the quote after \`${attribute}=\` is never closed`,
        hint: words`write the same straight quote \`"\` at the end of the value`,
      })
    case 'braces':
      return found({ ...braceOpen(fault.at), rule: 'brace-open' })
    case 'open':
      return found({
        rule: 'tag-open',
        at: start,
        text: words`\`${tag}\` begins a tag that has no end`,
        hint: words`end it with \`${tag.startsWith('</') ? '>' : '/>'}\`; for “less than” write \`\\<\``,
      })
    case 'sign':
    case undefined:
      return explainInside(text, start, at, tag, end)
  }
}

/** The tag can be followed to its end: the fault is a sign in it, or braces that cannot be read. */
function explainInside(
  text: string,
  start: number,
  at: number | undefined,
  tag: string,
  end: number,
): Found {
  const stop = Math.max(end, start + 1)
  const brace = at === undefined ? undefined : braceAround(text, start, at, stop)
  if (brace !== undefined) {
    const close = matchingBrace(text, brace, stop) ?? stop
    return { words: unreadable(text, brace, close, at).words, end: stop }
  }
  const place = at ?? stop
  const sign = /^\P{Cc}/u.exec(text.slice(place))?.[0]
  const what = sign ? words`\`${sign}\` cannot stand here in the tag \`${tag}\`` : undefined
  return {
    end: Math.max(stop, place),
    words: {
      rule: 'unreadable-tag',
      at: place,
      text: what ?? words`the tag \`${tag}\` cannot be read`,
      hint: signHint(text, start, place),
    },
  }
}

/** What is usual to have happened where a sign cannot stand. */
function signHint(text: string, start: number, place: number): string {
  const sign = text[place] ?? ''
  if (/[,;]/.test(sign) && /^<\/?\p{Ll}[^=]*$/u.test(text.slice(start, place)))
    return words`for “less than” write \`\\<\``
  if (/[,;]/.test(sign))
    return words`take out the \`${sign}\`: words of a tag stand apart by spaces only`
  const colon = /([\p{L}$_][\p{L}\p{N}$_]*)\s*:\s*$/u.exec(text.slice(start, place))
  if (colon && /["'“”„{]/.test(sign))
    return words`write \`${colon[1] ?? ''}="…"\`, with \`=\` for \`:\``
  if (/["'”]/.test(sign))
    return words`a value ends at its next straight quote: inside it write “curly” ones, and \`in\` for inches`
  if (sign === '\\') return words`a tag ends with \`/>\``
  return words`a tag is \`<Name word="value" />\`; for “less than” write \`\\<\``
}

/** The `{` of the outermost braces that hold `at`. */
function braceAround(text: string, start: number, at: number, end: number): number | undefined {
  let from = start
  for (;;) {
    const open = text.indexOf('{', from)
    if (open < 0 || open > at || open >= end) return undefined
    const close = matchingBrace(text, open, end) ?? end
    if (at <= close) return open
    from = close + 1
  }
}

function braceOpen(at: number): Words {
  return {
    rule: 'brace-open',
    at,
    text: words`\`{\` opens braces that are never closed`,
    hint: words`close them, as in \`{pumpDraw}\`, or write \`\\{\` for a brace as text`,
  }
}

function explainBraces(text: string, start: number, at: number | undefined): Found {
  // A table's cell ends with its line at the latest.
  const inRow = /(?:^|[\r\n])[ \t>]*\|[^\r\n]*$/.test(text.slice(0, start))
  const end = inRow ? start + lineFrom(text, start).length : paragraphEnd(text, start)
  const close = matchingBrace(text, start, end)
  if (close !== undefined) return unreadable(text, start, close, at)
  // A quote mark in prose may have hidden the closing brace.
  const plain = text.slice(start, end).indexOf('}')
  if (plain < 0) return { words: braceOpen(start), end: start + 1 }
  return unreadable(text, start, start + plain, at)
}

function unreadable(text: string, start: number, close: number, at: number | undefined): Found {
  const inner = text.slice(start + 1, close).trim()
  const asText = words`write \`\\{\` for a brace as text`
  const refused = (rule: string, said: string, hint: string): Found => ({
    words: { rule, at: start, text: said, hint },
    end: close + 1,
  })
  if (/^[[{]/.test(inner) && at !== undefined && at > start && at < close) {
    const rule = 'unreadable-braces'
    const said = words`a list in braces cannot be read from \`${short(lineFrom(text, at))}\` on`
    const hint = words`write it as \`{[{ name: "value" }, { name: "value" }]}\`, with a comma between entries`
    return { words: { rule, at, text: said, hint }, end: close + 1 }
  }
  const comma = /^[-+−]?\d+,\d+/.exec(inner)
  if (comma) return refused('decimal-comma', decimalComma(inner), decimalPoint(inner))
  if (inner.startsWith('#')) {
    return refused(
      'unreadable-braces',
      words`\`{${short(inner)}}\` does not name a heading`,
      words`take it out: a heading gets its id from its words`,
    )
  }
  const slip = slipInSum(inner)
  if (slip !== undefined)
    return refused('unreadable-braces', slip.text, words`${slip.hint}; ${asText}`)
  const quantity = quantityIn(inner)
  if (quantity !== undefined) {
    return refused(
      'unreadable-braces',
      words`\`{${short(inner)}}\` is neither a name nor a sum of names`,
      words`give \`${quantity}\` a name first, as in \`<Chosen id="given" value="${quantity}" because="…" />\`, and put the name into the sum; ${asText}`,
    )
  }
  if (/^[-+−]?[\d.]/.test(inner)) {
    return refused(
      'unreadable-braces',
      words`\`{${short(inner)}}\` is neither a name nor a sum of names`,
      words`a name begins with a letter; a value goes into an element, as in \`<Reading value="${short(inner)}" />\`; ${asText}`,
    )
  }
  if (/^[\p{L}$_][\p{L}\p{N}$_]*(?:\s+[\p{L}\p{N}$_]+)+$/u.test(inner)) {
    const joined = inner.replace(/\s+(.)/gu, (_, first: string) => first.toUpperCase())
    return refused(
      'unreadable-braces',
      words`\`{${short(inner)}}\` has a space in its name`,
      words`did you mean \`{${short(joined)}}\`? ${asText}`,
    )
  }
  return refused(
    'unreadable-braces',
    words`\`{${short(inner)}}\` is neither a name nor a sum of names`,
    words`write a name, as in \`{pumpDraw}\`, or a sum, as in \`{supply + back}\`; ${asText}`,
  )
}

/** The first number with a unit in what else would be a sum: `20 s` of `tenTurns / 20 s`. */
function quantityIn(inner: string): string | undefined {
  for (const { index, 0: number } of inner.matchAll(/(?<![\p{L}\p{N}_$.])\d+(?:\.\d+)?/gu)) {
    const unit = unitAt(inner, index + number.length)
    if (unit === undefined) continue
    const rest = inner.slice(0, index) + inner.slice(unit.end)
    return /[-+−*×/]/.test(rest) ? inner.slice(index, unit.end) : undefined
  }
  return undefined
}

export function decimalComma(typed: string): string {
  return words`\`${short(typed)}\` has a decimal comma`
}

export function decimalPoint(typed: string): string {
  return words`write \`${short(typed.replace(/(\d),(\d)/g, '$1.$2'))}\``
}

function explainModule(text: string, { start, at, twice }: Fault): Found {
  const block = text.slice(start, paragraphEnd(text, start))
  const end = start + block.length
  if (!looksLikeModule(block)) return { words: undefined, end: start }
  if (twice !== undefined) {
    return {
      end,
      words: {
        rule: 'imported-twice',
        at: at ?? start,
        text: words`\`${twice}\` is imported a second time`,
        hint: words`keep one of the two, or give it another name: \`${twice} as ${twice}There\``,
      },
    }
  }
  const prose = block.split(/\r\n?|\n/).find((line, index) => index > 0 && beginsProse(line))
  if (prose !== undefined) {
    return {
      end,
      words: {
        rule: 'import-in-paragraph',
        at: start,
        text: words`\`${short(lineFrom(block, 0))}\` is not apart from the text below it`,
        hint: words`leave an empty line before \`${short(prose.trim())}\``,
      },
    }
  }
  return {
    end,
    words: {
      rule: 'unreadable-import',
      at: at ?? start,
      text: words`\`${short(lineFrom(block, 0))}\` cannot be read`,
      hint: words`write \`import { pumpDraw } from './other-note.mdx'\`, with straight quotes`,
    },
  }
}

/** A line that does not go on with an import: neither another one nor the inside of its braces. */
function beginsProse(line: string): boolean {
  return (
    /\S/.test(line) &&
    !/^\s*(?:import|export)\b|^\s*[\w$]+(?:\s+as\s+[\w$]+)?\s*,?\s*$|^\s*\}/.test(line)
  )
}

/** What was typed, short enough for one line of a message; backquotes would end the quotation. */
export function short(typed: string): string {
  const line = typed.replace(/\s+/g, ' ').replaceAll('`', 'ˋ')
  return line.length > 60 ? `${line.slice(0, 57)}…` : line
}

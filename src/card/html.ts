/**
 * Text into HTML. Everything that the card prints passes through `escape`, element text and
 * attribute values alike; a function here whose name ends in `Html` returns markup, any other text.
 */
const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
}

export function escape(text: string): string {
  return text.replace(/[&<>"]/g, (character) => entities[character] ?? character)
}

/** Data for a script of the page; it is never run, and cannot end early. */
export const dataBlockHtml = (id: string, data: unknown): string =>
  `<script type="application/json" id="${id}">${JSON.stringify(data).replaceAll('<', '\\u003c')}</script>`

/** `' name="value"'`, or nothing when there is no value. */
export function attribute(name: string, value: string | undefined): string {
  return value === undefined ? '' : ` ${name}="${escape(value)}"`
}

/** Escaped, `Q_m` with its index lowered, `v^0.45` with its power raised: for symbols and working. */
export function symbolsHtml(text: string): string {
  return escape(text)
    .replace(/(\p{L}\p{M}*)_([\p{L}\p{Nd}∞]+)/gu, '$1<sub>$2</sub>')
    .replace(/\^([-−]?\p{Nd}+(?:\.\p{Nd}+)?)/gu, '<sup>$1</sup>')
}

/** The value of a DOM id: letters, digits, `-` and `_`; two different texts never give the same. */
export function idOf(text: string): string {
  return text
    .replace(/\s+/g, '')
    .replace(
      /[^\p{L}\p{N}_]/gu,
      (sign) => signs[sign] ?? `-u${sign.codePointAt(0)?.toString(16) ?? ''}-`,
    )
}

const signs: Readonly<Record<string, string>> = {
  '.': '--',
  '/': '-over-',
  '+': '-plus-',
  '-': '-minus-',
  '*': '-times-',
  '(': '-open-',
  ')': '-close-',
}

/**
 * Any text inside MDX, so that it stays text: in a comment, in the value of an attribute, in a string
 * within braces. A text's words stay; line breaks become spaces, and in a comment braces become round.
 */

/** Control and direction signs have no business in a note, a line break none in one line. */
const oneLine = (text: string): string =>
  text
    .toWellFormed()
    .replace(/[\u200E\u200F\u202A-\u202E\u2066-\u2069]/g, '')
    .replace(/[\p{Cc}\p{Zl}\p{Zp} ]+/gu, ' ')
    .trim()

/** A line of a comment that opens and closes elsewhere. */
export function commentText(text: string): string {
  return oneLine(text).replaceAll('*/', '* /').replaceAll('{', '(').replaceAll('}', ')')
}

const references: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '"': '&quot;',
  '<': '&lt;',
  '>': '&gt;',
  '{': '&#123;',
  '}': '&#125;',
}

/** `name="text"` */
export function attributeText(name: string, text: string): string {
  return `${name}="${oneLine(text).replace(/[&"<>{}]/g, (sign) => references[sign] ?? sign)}"`
}

/** A string of a list in braces. */
export function stringText(text: string): string {
  return JSON.stringify(oneLine(text)).replace(
    /[{}<>`]/g,
    (sign) => `\\u${(sign.codePointAt(0) ?? 0).toString(16).padStart(4, '0')}`,
  )
}

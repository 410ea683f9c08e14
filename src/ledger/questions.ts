/**
 * Where readers' questions go: a mail address, or the address of a form with places for the words. In:
 * the setting as written. Out: what is wrong with it, in a builder's words, or undefined.
 */
import { words } from '../words/words.ts'
import { allOf } from '../words/lists.ts'

const allowed = words`a mail address, such as \`name@example.org\`, or an https address with \`{title}\` and \`{text}\` where the words go`
/** More would leave no room for the question. */
const longest = 300

const mail =
  /^[A-Za-z0-9.!#$%&'*+/=?^_`{|}~-]+@(?:[A-Za-z0-9](?:[A-Za-z0-9-]*[A-Za-z0-9])?\.)+[A-Za-z]{2,}$/
const local = /^\.|\.\.|\.@/

export function questionsFault(text: string): string | undefined {
  const read = `\`${text}\``
  if (text.length > longest) return words`it has more than ${longest} characters; due is ${allowed}`
  if (/^mailto:/i.test(text)) return words`${read} was read; write the mail address alone`
  if (/^https:\/\//i.test(text)) return formFault(text)
  if (/^[a-z][a-z0-9+.-]*:/i.test(text))
    return words`${read} was read; an address begins with \`https://\``
  return mail.test(text) && !local.test(text)
    ? undefined
    : words`${read} was read; due is ${allowed}`
}

function formFault(text: string): string | undefined {
  const read = words`\`${text}\` was read`
  const missing = ['{title}', '{text}'].filter((name) => !text.includes(name))
  if (missing.length > 0)
    return words`${read}; ${allOf(missing.map((name) => `\`${name}\``))} must stand where the words go`
  const filled = text.replaceAll('{title}', 'x').replaceAll('{text}', 'x')
  const other = /\{[^}]*\}?|\}/.exec(filled)?.[0]
  if (other !== undefined) return words`${read}; \`${other}\` is none of \`{title}\` and \`{text}\``
  const host = /^https:\/\/([^/?#]*)/i.exec(text)?.[1] ?? ''
  if (host.includes('{') || host.includes('@') || /\s/.test(text) || !URL.canParse(filled))
    return words`${read}; that is no web address`
  return undefined
}

/**
 * What may be a name. In: the text of an `id`. Out: the name (NFKC), or why not, for a builder.
 *
 * A name is used in `{…}`, so it must be a JavaScript identifier; it also becomes an HTML id.
 */
import { words } from '../words/words.ts'

const identifier = /^[\p{ID_Start}$_][\p{ID_Continue}$]*$/u

const reservedWords = new Set(
  `abstract arguments await boolean break byte case catch char class const continue debugger default
  delete do double else enum eval export extends false final finally float for function goto if
  implements import in instanceof int interface let long native new null package private protected
  public return short static super switch synchronized this throw throws transient true try typeof
  undefined var void volatile while with yield NaN Infinity`.split(/\s+/),
)

/** Names that every compiled note already has. */
export const noteOwnNames: ReadonlySet<string> = new Set([
  'frontmatter',
  'props',
  'components',
  'Content',
  'url',
  'file',
  'headings',
  'getHeadings',
])

export function readName(text: string): { name: string } | { why: string; hint?: string } {
  const name = text.normalize('NFKC').trim()
  if (name === '') return { why: words`an id must not be empty` }
  if (reservedWords.has(name) || name === 'default')
    return {
      why: words`\`${name}\` is a reserved word of the language behind the braces`,
      hint: `${name}Value`,
    }
  if (name === 'parts')
    return { why: words`\`parts\` already means the parts of all notes`, hint: 'partsValue' }
  if (noteOwnNames.has(name))
    return { why: words`\`${name}\` already means something in every note`, hint: `${name}Value` }
  if (identifier.test(name)) return { name }
  const parts = name.split(/[^\p{ID_Continue}$]+/u).filter((word) => word !== '')
  const first = parts.findIndex((word) => !/^\d/.test(word))
  const turned = first < 0 ? parts : [...parts.slice(first), ...parts.slice(0, first)]
  const hint = turned
    .map(
      (word, index) =>
        (index === 0 ? word.charAt(0).toLowerCase() : word.charAt(0).toUpperCase()) + word.slice(1),
    )
    .join('')
  const why = /^\d/.test(name)
    ? words`\`${name}\` begins with a digit; in \`{${name}}\` it would be read as a number`
    : words`\`${name}\` would be read as a sum in \`{${name}}\`; a name is letters and digits without spaces or dashes`
  return identifier.test(hint) ? { why, hint } : { why }
}

/**
 * The words of the kit in what is bundled: each words`…` becomes plain text of the chosen language, so
 * that a reader's scripts carry neither the catalogue nor its look-up. In: a module as JavaScript. Out: the
 * same without its words`…`. Pages and scripts get the catalogue that this process reads, so that what
 * `verify` writes again is what stands in the pages.
 */
import { language, texts } from '#words'
import { dirname, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Plugin } from 'vite'
import { piecesOf, words } from '../words/words.ts'
import { isNode, listIn, nodesIn, type Node } from './tree.ts'

/** Each with the name of the module that is made for it. */
const catalogue = ['#words', '\0worked-notes:words'] as const
const sheet = ['virtual:worked-notes/words.css', '/worked-notes-words.css'] as const

/** The catalogue as a module, and the words of the style sheet. */
export function catalogueModule(): Plugin {
  const names = new Map<string, string>([catalogue, sheet])
  const made = new Map<string, string>([
    [
      catalogue[1],
      `export const language = ${JSON.stringify(language)}\nexport const texts = ${JSON.stringify(texts)}`,
    ],
    [sheet[1], sheetText()],
  ])
  return {
    name: 'worked-notes:catalogue',
    enforce: 'pre',
    resolveId: (id) => names.get(id),
    load: (id) => made.get(id),
  }
}

/** What only a style sheet writes, for those that have the style sheet. */
function sheetText(): string {
  const properties = [
    ['measured', words`measured`],
    ['measured-here', words`measured:`],
    ['rests-on', words`rests on`],
  ]
  return `:root{${properties.map(([name, text]) => `--word-${name}:${JSON.stringify(text)}`).join(';')}}`
}

export function plainWords(): Plugin {
  return {
    name: 'worked-notes:plain-words',
    enforce: 'post',
    transform: {
      filter: { code: /\/words\.ts['"]/ },
      handler(code, id) {
        const plain = plainCode(code, this.parse(code), id)
        return plain === code ? null : { code: plain, map: null }
      },
    },
  }
}

const room = fileURLToPath(new URL('../words/words.ts', import.meta.url))

/** What a module calls the words that it imports. */
function importedName(program: unknown, folder: string): string | undefined {
  const imports = nodesIn(
    program,
    ({ type, source }) =>
      type === 'ImportDeclaration' &&
      isNode(source) &&
      typeof source.value === 'string' &&
      resolve(folder, source.value) === room,
  )
  const names = imports.flatMap(({ specifiers }) =>
    listIn(specifiers).flatMap(({ imported, local }) =>
      isNode(imported) && imported.name === 'words' && isNode(local) ? [local.name] : [],
    ),
  )
  return names.find((name) => typeof name === 'string')
}

/** `id`: the module’s own path. */
export function plainCode(code: string, program: unknown, id: string): string {
  const name = importedName(program, dirname(id.replace(/\?.*$/, '')))
  if (name === undefined) return code
  const isWords = ({ type, tag }: Node): boolean =>
    type === 'TaggedTemplateExpression' &&
    isNode(tag) &&
    tag.type === 'Identifier' &&
    tag.name === name
  const within = (node: unknown, from: number, to: number): string => {
    let made = ''
    let copied = from
    for (const one of nodesIn(node, isWords)) {
      made += code.slice(copied, one.start) + plainText(one)
      copied = one.end
    }
    return made + code.slice(copied, to)
  }
  const plainText = ({ quasi }: Node): string => {
    const template = isNode(quasi) ? quasi : undefined
    const pieces = piecesOf(listIn(template?.quasis).map(textOf))
    const values = listIn(template?.expressions).map((one) => within(one, one.start, one.end))
    return written(pieces, values)
  }
  return within(program, 0, code.length)
}

function textOf({ value }: Node): string {
  const cooked: unknown =
    typeof value === 'object' && value !== null && 'cooked' in value ? value.cooked : undefined
  return typeof cooked === 'string' ? cooked : ''
}

/** Values that a language puts in another order are still worked in the order of the English text. */
function written(pieces: ReturnType<typeof piecesOf>, values: readonly string[]): string {
  const order = pieces.filter((piece) => typeof piece === 'number')
  const inOrder = order.length === values.length && order.every((value, index) => value === index)
  const names = values.map((_, index) => `value${index}`)
  const text = pieces
    .map((piece) =>
      typeof piece === 'number'
        ? `\${${(inOrder ? values : names)[piece] ?? "''"}}`
        : piece.replace(/[\\`]|\$(?=\{)/g, '\\$&'),
    )
    .join('')
  if (values.length === 0)
    return JSON.stringify(pieces.filter((piece) => typeof piece === 'string').join(''))
  return inOrder ? `\`${text}\`` : `((${names.join(', ')}) => \`${text}\`)(${values.join(', ')})`
}

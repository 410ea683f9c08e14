/**
 * Every text of the kit, found in its source: the words`…` of `src/`, `components/` and `calculators/`,
 * in TypeScript and in Astro's files. In: the kit's folder. Out: the texts as they stand in the
 * catalogue, each with the file that has it first, and the catalogue of the English ones.
 *
 * Only `npm run words` and its test come here: the parser and the formatter are no part of a site.
 */
import { readdir, readFile } from 'node:fs/promises'
import { join, sep } from 'node:path'
import { format, resolveConfig } from 'prettier'
import ts from 'typescript'
import { keyOf, placeholder } from './words.ts'

export interface Found {
  readonly text: string
  /** From the kit's folder. */
  readonly file: string
}

const rooms = ['calculators', 'components', 'src'] as const

export async function collectWords(root: string): Promise<readonly Found[]> {
  const found = new Map<string, Found>()
  for (const file of await filesIn(root)) {
    const source = await readFile(join(root, file), 'utf8')
    for (const text of file.endsWith('.ts') ? wordsInScript(source) : wordsInPage(source))
      if (!found.has(text)) found.set(text, { text, file })
  }
  return [...found.values()]
}

async function filesIn(root: string): Promise<readonly string[]> {
  const lists = await Promise.all(
    rooms.map(async (room) =>
      (await readdir(join(root, room), { recursive: true }))
        .filter((name) => /\.(?:ts|astro)$/.test(name))
        .map((name) => `${room}/${name.split(sep).join('/')}`),
    ),
  )
  return lists.flat().sort()
}

export function wordsInScript(source: string): readonly string[] {
  const found: string[] = []
  const walk = (node: ts.Node): void => {
    if (isWords(node)) found.push(textOf(node))
    ts.forEachChild(node, walk)
  }
  walk(parsed(source))
  return found
}

/** What follows the tag's name is parsed from there: around it is no TypeScript. */
export function wordsInPage(source: string): readonly string[] {
  return [...source.matchAll(/(?<![\w$.`])words`/g)].flatMap(({ index }) => {
    let first: ts.Node | undefined = parsed(source.slice(index)).statements[0]
    while (first !== undefined && !isWords(first)) {
      const children: ts.Node[] = []
      ts.forEachChild(first, (child) => void children.push(child))
      first = children[0]
    }
    return first === undefined ? [] : [textOf(first)]
  })
}

const parsed = (source: string): ts.SourceFile =>
  ts.createSourceFile('source.ts', source, ts.ScriptTarget.Latest, true)

const isWords = (node: ts.Node): node is ts.TaggedTemplateExpression =>
  ts.isTaggedTemplateExpression(node) && ts.isIdentifier(node.tag) && node.tag.text === 'words'

function textOf({ template }: ts.TaggedTemplateExpression): string {
  const strings = ts.isNoSubstitutionTemplateLiteral(template)
    ? [template.text]
    : [template.head.text, ...template.templateSpans.map(({ literal }) => literal.text)]
  const written = strings.find((text) => placeholder.test(text))
  if (written !== undefined)
    throw new Error(`\`${written}\`: digits in braces stand for values, and cannot be written`)
  return keyOf(strings)
}

const head = `/**
 * Every text of the kit in English, made by \`npm run words\` from where it is used. For another language
 * copy this file, say the language, and translate what stands behind each colon: \`{0}\`, \`{1}\` are
 * values, and may stand in another order. The README says how it is chosen.
 */
/** As in \`lang="…"\` (BCP 47). */
export const language = 'en'

export const texts: Readonly<Record<string, string>> = {`

/** The text of `en.ts`. */
export async function englishCatalogue(found: readonly Found[], path: string): Promise<string> {
  const lines = found.map(({ text, file }, index) => {
    const comment = file === found[index - 1]?.file ? '' : `// ${file}\n`
    return `${comment}${JSON.stringify(text)}: ${JSON.stringify(text)},`
  })
  const options = await resolveConfig(path)
  return format([head, ...lines, '}'].join('\n'), { ...options, parser: 'typescript' })
}

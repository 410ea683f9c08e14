/**
 * Notes that are not to be published yet: `draft: true` in the frontmatter. The one gate is
 * `loadLedger`, which leaves them out of the ledger unless it is asked for them (`dev` asks). Here: what
 * a published note may not take from one, told with both places.
 *
 * In: the tree of a note, and the drafts. Out: a problem for each module line and link that leads into one.
 */
import type { Nodes, Root } from 'mdast'
import { visitParents } from 'unist-util-visit-parents'
import type { At, NoteSource } from './note-source.ts'
import type { Problem } from './problems.ts'
import { anyNode, isNode, keyText, nodesOf, placeOf, type AnyNode } from './read/estree.ts'
import { problemAt } from './report.ts'
import { words } from '../words/words.ts'

export interface Draft {
  readonly slug: string
  /** As messages name it. */
  readonly file: string
  /** Absolute. */
  readonly path: string
  /** Undefined where it cannot be read yet. */
  readonly note: NoteSource | undefined
}

export const isDraft = (frontmatter: Readonly<Record<string, unknown>> | undefined): boolean =>
  frontmatter?.draft === true

/** `draftAt`: the draft that a path written in a note leads to. */
export function takenFromDrafts(
  tree: Root,
  file: string,
  draftAt: (path: string) => Draft | undefined,
): Problem[] {
  const found: Problem[] = []
  visitParents(tree, (node) => {
    if (node.type === 'mdxjsEsm')
      for (const statement of node.data?.estree?.body ?? [])
        found.push(...inStatement(anyNode(statement), file, draftAt))
    if (node.type === 'link' || node.type === 'definition')
      found.push(...inLink(node, node.url, file, draftAt))
  })
  return found
}

function inStatement(
  statement: AnyNode,
  file: string,
  draftAt: (path: string) => Draft | undefined,
): Problem[] {
  const draft = isNode(statement.source) ? draftAt(String(statement.source.value)) : undefined
  if (draft === undefined) return []
  const specifiers = nodesOf(statement.specifiers)
  if (specifiers.length === 0) return [restsOnDraft(placeOf(statement), file, draft, undefined)]
  return specifiers.map((one) =>
    restsOnDraft(placeOf(one), file, draft, keyText(one.imported ?? one.local)),
  )
}

function restsOnDraft(at: At, file: string, draft: Draft, name: string | undefined): Problem {
  const number = [
    ...(draft.note?.roots ?? []),
    ...(draft.note?.sums ?? []),
    ...(draft.note?.blocks ?? []),
  ].find((one) => one.name === name)
  const { line, column } = number ?? { line: 1, column: 1 }
  return problemAt(file, at, {
    rule: 'rests-on-draft',
    text:
      name === undefined || number === undefined
        ? words`this takes something from \`${draft.file}\`, which is a draft`
        : words`\`${name}\` stands in \`${draft.file}\`, which is a draft: what is published cannot rest on it`,
    hint: words`publish the draft as well (take out \`draft: true\`), or make this note a draft too`,
    also: [{ file: draft.file, line, column }],
  })
}

function inLink(
  { position }: Nodes,
  url: string,
  file: string,
  draftAt: (path: string) => Draft | undefined,
): Problem[] {
  const [path = ''] = url.split('#')
  const draft = draftAt(path)
  if (draft === undefined) return []
  return [
    problemAt(file, position?.start ?? { line: 1, column: 1 }, {
      rule: 'link-to-draft',
      text: words`a link to \`${draft.file}\`, which is a draft: readers would find nothing there`,
      hint: words`publish the draft as well (take out \`draft: true\`), or leave the words without the link`,
      also: [{ file: draft.file, line: 1, column: 1 }],
    }),
  ]
}

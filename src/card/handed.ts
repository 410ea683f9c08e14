/**
 * What a component of the author's language got from the kit's remark plugin: its finished HTML. When
 * there is none the plugin did not run, and a page without its numbers must not be built quietly.
 */
import { words } from '../words/words.ts'
export function handed(element: string, props: Readonly<Record<string, unknown>>): string {
  const { html } = props
  if (typeof html === 'string') return html
  throw new Error(
    words`<${element}> has nothing to show: the kit’s plugin did not run on this page. Notes are built with \`npm run build\` or \`npm run dev\`.`,
  )
}

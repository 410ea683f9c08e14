/** `numbers.json` as text: one number or block a line, so that a changed value is a changed line. */
import { parsedJson } from './json.ts'
import type { Published } from './published.ts'

/** `more`: what a reader's copy says besides, at its end. */
export function recordText(
  published: Published,
  more: Readonly<Record<string, unknown>> = {},
): string {
  const list = (name: string, items: readonly unknown[]): string =>
    `${JSON.stringify(name)}: [${items.map((item) => `\n${JSON.stringify(item)}`).join(',')}\n]`
  return [
    `{"format": ${published.format}`,
    `"site": ${JSON.stringify(published.site)}`,
    list('notes', published.notes),
    list('numbers', published.numbers),
    list('blocks', published.blocks),
    ...(['parts', 'tasks', 'steps', 'quotes', 'links'] as const).flatMap((name) => {
      const items = published[name] ?? []
      return items.length === 0 ? [] : [list(name, items)]
    }),
    ...Object.entries(more).map(([name, value]) =>
      value instanceof Array
        ? list(name, value)
        : `${JSON.stringify(name)}: ${JSON.stringify(value)}`,
    ),
  ]
    .join(',\n')
    .concat('}\n')
}

/** Reads what `recordText` wrote; undefined when it is something else. */
export function readRecord(text: string): Published | undefined {
  const data = parsedJson(text)
  return isPublished(data) ? data : undefined
}

function isPublished(data: unknown): data is Published {
  if (typeof data !== 'object' || data === null) return false
  const has = (key: string): boolean =>
    key in data && Array.isArray(Object.entries(data).find(([name]) => name === key)?.[1])
  return (
    'format' in data &&
    data.format === 1 &&
    'site' in data &&
    has('notes') &&
    has('numbers') &&
    has('blocks')
  )
}

/**
 * What the commands take behind `--`. In: the words of the command line. Out: folders, or a message.
 */
import { resolve } from 'node:path'
import { parseArgs } from 'node:util'
import { words } from '../words/words.ts'

export interface Options {
  /** Absolute: the builder's notes. */
  readonly content: string
  /** Absolute: the site. */
  readonly out: string
  readonly format: 'text' | 'json'
  /** Where `start` and `dev` serve. */
  readonly port: number
}

export class UsageError extends Error {}

export function readOptions(args: readonly string[], root: string): Options {
  let values: { content?: string; out?: string; format?: string; port?: string }
  try {
    values = parseArgs({
      args: [...args],
      options: {
        content: { type: 'string' },
        out: { type: 'string' },
        format: { type: 'string' },
        port: { type: 'string' },
      },
    }).values
  } catch {
    throw new UsageError(
      words`cannot make sense of \`${args.join(' ')}\`; allowed: ${'--content DIR, --out DIR, --format text|json, --port N'}`,
    )
  }
  const { content = 'content', out = 'dist', format = 'text', port = '4321' } = values
  if (format !== 'text' && format !== 'json')
    throw new UsageError(words`--format is text or json, not \`${format}\``)
  if (!/^\d{2,5}$/.test(port) || Number(port) > 65535)
    throw new UsageError(words`--port is a number up to 65535, not \`${port}\``)
  return { content: resolve(root, content), out: resolve(root, out), format, port: Number(port) }
}

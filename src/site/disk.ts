/**
 * What a builder is told when the disk refuses. In: an error, as deep as it is wrapped. Out: a sentence;
 * undefined where the error is of another kind. The bundler tells of its own writing by words alone.
 */
import { words } from '../words/words.ts'

const refusals: Readonly<Record<string, string>> = {
  ENOSPC: words`the disk is full`,
  EDQUOT: words`the share of the disk that you may use is full`,
  EROFS: words`the disk can only be read`,
  EACCES: words`the folder may not be written to`,
  EPERM: words`the folder may not be written to`,
}

const told: readonly (readonly [RegExp, string])[] = [
  [/no space left on device|not enough space on the disk/i, 'ENOSPC'],
  [/disk quota exceeded/i, 'EDQUOT'],
  [/read-only file system/i, 'EROFS'],
]

export function diskWords(error: unknown): string | undefined {
  for (let one = error; one instanceof Error; one = one.cause) {
    const { message } = one
    const byWords = told.find(([pattern]) => pattern.test(message))?.[1] ?? ''
    const said = refusals[textOf(one, 'code') ?? ''] ?? refusals[byWords]
    if (said === undefined) continue
    // Of a copy, where it goes: that is the disk that is full.
    const path =
      textOf(one, 'dest') ?? textOf(one, 'path') ?? /write file in (\S+)/.exec(message)?.[1]
    return path === undefined ? said : `${said} (\`${path}\`)`
  }
  return undefined
}

function textOf(error: Error, name: string): string | undefined {
  const value: unknown = Reflect.get(error, name)
  return typeof value === 'string' ? value : undefined
}

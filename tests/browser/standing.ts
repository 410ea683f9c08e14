/** Every value and verdict of a ledger by id; or only those that are not as in `before`. */
import type { Published } from '../../src/ledger/published.ts'

export type Standing = Readonly<Record<string, number | string | null>>

export function standing({ numbers, blocks }: Published, before: Standing = {}): Standing {
  const all = [
    ...numbers.flatMap(({ id, value, now, firmness }): [string, number | string | null][] => [
      [id, value],
      [`${id} now`, now],
      [`${id} stands on`, firmness],
    ]),
    ...blocks.map(({ id, verdict, provisional, findings }): [string, string] => [
      `${id} verdict`,
      `${verdict} ${provisional} ${findings.map(({ level }) => level).join()}`,
    ]),
  ]
  const kept = new Set(all.map(([id]) => id))
  const gone = Object.keys(before).filter((id) => !kept.has(id))
  return Object.fromEntries([
    ...all.filter(([id, what]) => !Object.is(before[id], what)),
    ...gone.map((id) => [id, 'gone'] as const),
  ])
}

/**
 * Takes out of a folder of kept pictures what no site needs any more: the files of a picture that none of
 * the last builds named. In: the folder, and the pictures that this build named. Out: the folder without
 * the others.
 *
 * Builds are counted, not days: a clock may be wrong. Several sites may be built from one kit, so that a
 * build of one is a build without the pictures of the other; these are made anew when they are gone.
 */
import { readdir, rm } from 'node:fs/promises'
import { join } from 'node:path'
import { isRecord, parsedJson } from '../ledger/json.ts'
import { cached, cacheFolder, keep } from './cache.ts'

/** A picture is kept for so many builds without it. */
export const keptBuilds = 20

const record = 'used.json'

interface Used {
  readonly builds: number
  /** What is kept -> the last build that named it. */
  readonly last: ReadonlyMap<string, number>
}

/** `named`: what the names of its files begin with, for each picture of this build. */
export async function pruneCopies(named: ReadonlySet<string>, folder = cacheFolder): Promise<void> {
  const names = await readdir(folder).catch(() => [])
  if (names.length === 0) return
  const before = usedIn(await cached(record, folder))
  const builds = before.builds + 1
  const last = new Map<string, number>()
  for (const name of names) {
    const key = /^([0-9a-f]{20,64})[-.]/.exec(name)?.[1]
    if (key === undefined) continue
    // What a stopped build left half written is nobody's picture.
    const one = name.endsWith('.part') ? name : key
    // Made while writing, and no build has seen it yet: it begins now.
    const seen = named.has(one) ? builds : (before.last.get(one) ?? builds)
    if (builds - seen <= keptBuilds) last.set(one, seen)
    else await rm(join(folder, name), { force: true }).catch(() => undefined)
  }
  const sorted = Object.fromEntries([...last].sort(([a], [b]) => (a < b ? -1 : 1)))
  await keep(record, `${JSON.stringify({ builds, last: sorted })}\n`, folder)
}

function usedIn(bytes: Buffer | undefined): Used {
  const none: Used = { builds: 0, last: new Map() }
  const read = parsedJson(bytes?.toString('utf8') ?? '')
  if (!isRecord(read)) return none
  const { builds, last } = read
  if (!Number.isSafeInteger(builds) || !isRecord(last)) return none
  const pairs = Object.entries(last).flatMap(([one, build]): [string, number][] =>
    Number.isSafeInteger(build) ? [[one, Number(build)]] : [],
  )
  return { builds: Number(builds), last: new Map(pairs) }
}

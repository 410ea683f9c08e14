/** The list of which calculator reads which standard table, held against the imports themselves. */
import { readdirSync, readFileSync } from 'node:fs'
import { basename, dirname, join, resolve } from 'node:path'
import { expect, it } from 'vitest'
import { calculators } from '../../calculators/index.ts'
import { tables } from '../../calculators/tables/index.ts'
import { tablesRead } from '../../calculators/tables/readers.ts'

const folder = resolve(import.meta.dirname, '../../calculators')
const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((name) =>
  join(folder, name),
)
const fileOf = (id: string): string =>
  files.find((file) => basename(file) === `${id}.ts` && !file.includes('/tables/')) ?? ''

const importsOf = (file: string): string[] =>
  [...readFileSync(file, 'utf8').matchAll(/^(?:import|export)[^']*'(\.[^']+\.ts)'/gm)].map(
    ([, to = '']) => join(dirname(file), to),
  )

const isTable = (file: string): boolean => dirname(file) === join(folder, 'tables')

/** Every table that a file reaches, through shared files as well. */
function reached(file: string, seen = new Set<string>()): Set<string> {
  const found = new Set<string>()
  if (seen.has(file)) return found
  seen.add(file)
  for (const next of importsOf(file)) {
    if (isTable(next)) found.add(basename(next, '.ts'))
    else for (const id of reached(next, seen)) found.add(id)
  }
  return found
}

it.each(Object.keys(tablesRead))('%s is a calculator and reaches every table listed', (id) => {
  expect(Object.keys(calculators)).toContain(id)
  const known = reached(fileOf(id))
  // Two tables are printed from the functions that the calculators use, not the other way round.
  const printed = ['standard-atmosphere', 'vapour-pressure']
  const sources: Readonly<Record<string, string>> = {
    'standard-atmosphere': join(folder, 'air.ts'),
    'vapour-pressure': join(folder, 'vapour.ts'),
  }
  for (const table of tablesRead[id] ?? []) {
    expect(Object.keys(tables)).toContain(table)
    if (printed.includes(table)) expect(importsOf(fileOf(id))).toContain(sources[table])
    else expect([...known]).toContain(table)
  }
})

it('no calculator reads a table directly that is not listed', () => {
  const missing = Object.keys(calculators).flatMap((id) =>
    importsOf(fileOf(id))
      .filter(isTable)
      .map((file) => basename(file, '.ts'))
      .filter((table) => table in tables && !(tablesRead[id] ?? []).includes(table))
      .map((table) => `${id}: ${table}`),
  )
  expect(missing).toEqual([])
})

/**
 * Lays a ledger out for working. In: the ledger, the calculators, and up to which day replacements
 * count. Out: the context with nothing worked yet, and with the circles of replacements broken.
 */
import type { Calculator, Field, NumberField } from '../../../calculators/define.ts'
import { givenNumbers } from '../given.ts'
import type { Problem } from '../problems.ts'
import type { Given, Published, PublishedBlock } from '../published.ts'
import type { WorkContext } from './context.ts'
import { breakCircles, latestReplacements } from './replacements.ts'
import { ownValue, valueOf } from './values.ts'

export function startWork(
  published: Published,
  calculators: ReadonlyMap<string, Calculator>,
  asOf: string | undefined,
): WorkContext {
  const given = published.numbers.filter(({ calculator }) => calculator === null)
  const problems: Problem[] = []
  const ctx: WorkContext = {
    published,
    calculators,
    numbers: new Map(given.map((one) => [one.id, one])),
    blocks: new Map(published.blocks.map((block) => [block.id, block])),
    ...fieldsIn(published.blocks, calculators),
    replacements: breakCircles(latestReplacements(given, asOf), problems),
    dates: new Map(published.notes.map(({ slug, date }) => [slug, date])),
    done: { numbers: new Map(), blocks: new Map(), results: new Map(), resultsOf: new Map() },
    way: [],
    circles: new Set(),
    problems,
    ownValue: (id) => ownValue(ctx, id),
    valueOf: (id) => valueOf(ctx, id),
  }
  return ctx
}

/** What the inputs of these blocks go into, and which of them were left to the calculator. */
export function fieldsIn(
  blocks: readonly PublishedBlock[],
  calculators: ReadonlyMap<string, Calculator>,
): Pick<WorkContext, 'fields' | 'defaults'> {
  return { fields: inputFields(blocks, calculators), defaults: defaultsOf(blocks) }
}

function inputFields(
  blocks: readonly PublishedBlock[],
  calculators: ReadonlyMap<string, Calculator>,
): Map<string, NumberField> {
  const found = new Map<string, NumberField>()
  const add = (field: Field | undefined, given: Given): void => {
    if (given.type === 'number' && field?.type === 'number') found.set(given.id, field)
    if (given.type === 'rows' && field?.type === 'list')
      for (const row of given.rows)
        for (const [name, cell] of Object.entries(row)) add(field.fields[name], cell)
  }
  for (const block of blocks)
    for (const [name, given] of Object.entries(block.given))
      add(calculators.get(block.calculator)?.inputs[name], given)
  return found
}

function defaultsOf(blocks: readonly PublishedBlock[]): Set<string> {
  return new Set(
    blocks.flatMap(({ given }) =>
      givenNumbers(given).flatMap(({ id, how }) => (how === 'assumed-default' ? [id] : [])),
    ),
  )
}

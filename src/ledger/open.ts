/**
 * A ledger kept open for a reader's figures: each change works again only what rests on it, by the
 * same steps as `work`. In: the ledger as data. Out: the ledger as worked with the figures in force,
 * and which numbers and blocks came out otherwise than before.
 *
 * What rests on what is read from the builder's ledger once. A figure may take a connection away, never
 * make one, so walking the builder's connections reaches everything that can move.
 */
import type { Calculator } from '../../calculators/define.ts'
import { givenIds } from './given.ts'
import { declared, overrideBlock, type Overrides } from './override.ts'
import type { Published, PublishedBlock, PublishedNumber } from './published.ts'
import { nowOf } from './work.ts'
import type { WorkContext } from './work/context.ts'
import { filled } from './work/fill.ts'
import { startWork, fieldsIn } from './work/start.ts'
import { workBlock } from './work/values.ts'

export interface Reworked {
  /** With the figures in force. */
  readonly published: Published
  /** Ids of numbers whose value or standing is not what it was before this change. */
  readonly numbers: ReadonlySet<string>
  readonly blocks: ReadonlySet<string>
}

export interface OpenLedger {
  /** The builder's own, worked. */
  readonly builder: Published
  /** With the figures of the last `set`. */
  readonly published: Published
  /** Puts just these figures in force. */
  set(overrides: Overrides): Reworked
  /** Ids of the numbers and blocks that would be worked again if these changed. */
  restingOn(ids: Iterable<string>): ReadonlySet<string>
}

export function openLedger(
  given: Published,
  calculators: ReadonlyMap<string, Calculator>,
): OpenLedger {
  const ctx = startWork(given, calculators, undefined)
  const base = { numbers: new Map(ctx.numbers), blocks: new Map(ctx.blocks) }
  const numbers = new Map<string, PublishedNumber>()
  const blocks = new Map<string, PublishedBlock>()
  workAgain(ctx, [...ctx.numbers.keys(), ...ctx.blocks.keys()], numbers, blocks)
  const snapshot = (): Published => ({
    ...given,
    numbers: [...numbers.values()],
    blocks: [...blocks.values()],
  })
  const builder = snapshot()
  const builders = new Map(builder.blocks.map((block) => [block.id, block]))
  const users = usersIn(builder)
  const restingOn = (ids: Iterable<string>) => closure(ids, users)
  let published = builder
  let inForce: Overrides = {}

  return {
    builder,
    get published() {
      return published
    },
    restingOn,
    set(overrides) {
      const changed = changedKeys(inForce, overrides)
      inForce = overrides
      const touched = new Set<string>()
      for (const key of changed)
        for (const id of replaceIn(ctx, base, key, overrides)) touched.add(id)
      const resting = restingOn(touched)
      const before = { numbers: new Map<string, unknown>(), blocks: new Map<string, unknown>() }
      for (const id of resting) forget(ctx, id, numbers, blocks, before)
      ctx.problems.length = 0
      workAgain(ctx, resting, numbers, blocks)
      for (const id of resting) {
        const block = blocks.get(id)
        if (block !== undefined) blocks.set(id, asAccepted(block, builders.get(id)))
      }
      published = snapshot()
      return {
        published,
        numbers: new Set(
          [...before.numbers.keys(), ...resting].filter(
            (id) => signOfNumber(numbers.get(id)) !== before.numbers.get(id),
          ),
        ),
        blocks: new Set([...resting].filter((id) => blocks.get(id) !== before.blocks.get(id))),
      }
    },
  }
}

function signOfNumber(number: PublishedNumber | undefined): unknown {
  return number === undefined ? undefined : `${number.value} ${number.now} ${number.firmness}`
}

/** As published, where nothing went in that the builder had not; else no stop is accepted. */
function asAccepted(block: PublishedBlock, builder: PublishedBlock | undefined): PublishedBlock {
  const alike = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b)
  if (builder === undefined || !alike(builder.inputs, block.inputs))
    return { ...block, accepted: null }
  const same = builder.provisional === block.provisional && alike(builder.given, block.given)
  return same ? builder : { ...block, accepted: builder.accepted }
}

function changedKeys(before: Overrides, after: Overrides): string[] {
  const keys = new Set([...Object.keys(before), ...Object.keys(after)])
  return [...keys].filter((key) => JSON.stringify(before[key]) !== JSON.stringify(after[key]))
}

/** Puts a figure, or the builder's again, where it belongs. Out: what is to be worked again for it. */
function replaceIn(
  ctx: WorkContext,
  base: Pick<WorkContext, 'numbers' | 'blocks'>,
  key: string,
  overrides: Overrides,
): string[] {
  const own = base.numbers.get(key)
  if (own?.block === null) {
    const made = declared(own, overrides[key])
    ctx.numbers.set(key, made)
    for (const [id, later] of ctx.replacements) if (later.id === key) ctx.replacements.set(id, made)
    return [key]
  }
  const block = base.blocks.get(key.slice(0, key.indexOf('.', key.indexOf('/'))))
  const calculator = block && ctx.calculators.get(block.calculator)
  if (block === undefined || calculator === undefined) return []
  const now = ctx.blocks.get(block.id) ?? block
  const before = givenIds(now.given)
  for (const id of before) ctx.numbers.delete(id)
  const ids = new Set(givenIds(block.given))
  const given = new Map([...base.numbers].filter(([id]) => ids.has(id)))
  const made = overrideBlock(block, overrides, calculator, given)
  for (const [id, number] of given) ctx.numbers.set(id, number)
  ctx.blocks.set(block.id, made)
  const { fields, defaults } = fieldsIn([made], ctx.calculators)
  for (const [id, field] of fields) ctx.fields.set(id, field)
  for (const id of ids) ctx.defaults.delete(id)
  for (const id of givenIds(made.given)) ctx.defaults.delete(id)
  for (const id of defaults) ctx.defaults.add(id)
  return [block.id, ...before, ...givenIds(made.given)]
}

/** Id -> what is worked from it, one step on. */
function usersIn(builder: Published): Map<string, string[]> {
  const users = new Map<string, string[]>()
  const add = (id: string, user: string): void => {
    const list = users.get(id)
    if (list === undefined) users.set(id, [user])
    else list.push(user)
  }
  for (const number of builder.numbers) {
    if (number.calculator === null) for (const id of number.rests) add(id, number.id)
    else if (number.block !== null) add(number.block, number.id)
    // Whoever uses the old number gets the later one's value.
    if (number.replaces !== undefined) add(number.id, number.replaces)
  }
  for (const block of builder.blocks) for (const id of givenIds(block.given)) add(id, block.id)
  return users
}

function closure(ids: Iterable<string>, users: ReadonlyMap<string, readonly string[]>) {
  const seen = new Set<string>()
  const queue = [...ids]
  for (let id = queue.pop(); id !== undefined; id = queue.pop()) {
    if (seen.has(id)) continue
    seen.add(id)
    queue.push(...(users.get(id) ?? []))
  }
  return seen
}

/** Takes out what was worked. */
function forget(
  ctx: WorkContext,
  id: string,
  numbers: Map<string, PublishedNumber>,
  blocks: ReadonlyMap<string, PublishedBlock>,
  before: { numbers: Map<string, unknown>; blocks: Map<string, unknown> },
): void {
  const block = blocks.get(id)
  if (block !== undefined) {
    before.blocks.set(id, block)
    ctx.done.blocks.delete(id)
    // Its results go with it; they may be others than the builder's.
    for (const one of ctx.done.resultsOf.get(id) ?? []) forget(ctx, one, numbers, blocks, before)
    ctx.done.resultsOf.delete(id)
    return
  }
  ctx.done.numbers.delete(id)
  ctx.done.results.delete(id)
  before.numbers.set(id, signOfNumber(numbers.get(id)))
  numbers.delete(id)
}

/** Works these, and writes them as they are published. */
function workAgain(
  ctx: WorkContext,
  ids: Iterable<string>,
  numbers: Map<string, PublishedNumber>,
  blocks: Map<string, PublishedBlock>,
): void {
  const written = (number: PublishedNumber) => {
    const now = nowOf(ctx, number)
    numbers.set(number.id, number.now === now ? number : { ...number, now })
  }
  const worked: string[] = []
  for (const id of ids) {
    const block = ctx.blocks.get(id)
    if (block === undefined) ctx.ownValue(id)
    else {
      workBlock(ctx, block)
      worked.push(id)
    }
  }
  for (const id of ids) {
    const number = ctx.numbers.get(id)
    if (number !== undefined) written(filled(ctx, number))
  }
  for (const id of worked) {
    const block = ctx.done.blocks.get(id)
    if (block !== undefined) blocks.set(id, block)
    for (const one of ctx.done.resultsOf.get(id) ?? []) {
      const result = ctx.done.results.get(one)
      if (result !== undefined) written(result)
    }
  }
}

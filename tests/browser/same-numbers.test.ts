/**
 * A thousand changes by a reader, drawn at random over the notes of the demo: what a page works in the
 * browser is what the build's engine works from the whole ledger, the same doubles.
 */
import fc from 'fast-check'
import { build } from 'vite'
import { afterAll, beforeAll, expect, it } from 'vitest'
import type { Calculator, Field } from '../../calculators/define.ts'
import { lookupOf } from '../../src/card/index.ts'
import { loadLedger, type Ledger } from '../../src/ledger/load.ts'
import { isDeclared, workPublished, type Overrides } from '../../src/ledger/override.ts'
import type { Published, PublishedBlock } from '../../src/ledger/published.ts'
import { textsOf } from '../../src/live/texts.ts'
import { dimensions, formatQuantity, parseQuantity, sameKind } from '../../src/quantity/index.ts'
import { demo } from '../build/site.ts'
import type { workedInPage } from './in-page.ts'
import { opened, served, type Served } from './serve.ts'
import { standing, type Standing } from './standing.ts'

const many = 1000

let host: Served
let ledger: Ledger
let script: string
beforeAll(async () => {
  ;[host, ledger, script] = await Promise.all([served(demo, '/'), loadLedger(demo), bundled()])
})
afterAll(() => host.close())

/** Made small as the site's own scripts are, since that may fold constants. */
async function bundled(): Promise<string> {
  const made = await build({
    configFile: false,
    logLevel: 'silent',
    build: {
      write: false,
      lib: {
        entry: `${import.meta.dirname}/in-page.ts`,
        formats: ['iife'],
        name: 'inPage',
        fileName: 'in-page',
      },
    },
  })
  const first = Array.isArray(made) ? made[0] : made
  const chunk = first !== undefined && 'output' in first ? first.output[0] : undefined
  if (chunk === undefined) throw new Error('nothing was bundled')
  return chunk.code
}

interface Draw {
  readonly at: number
  readonly share: number
  readonly way: number
}

const draws: fc.Arbitrary<Draw> = fc.record({
  at: fc.nat(),
  share: fc.double({ min: 0.4, max: 1.8, noNaN: true }),
  way: fc.nat(),
})

/** Something a reader can change: an id, and what a draw makes of it. */
type Changeable = readonly [id: string, text: (draw: Draw) => Overrides[string]]

function scaled(typed: string, { share, way }: Draw): string {
  const read = parseQuantity(typed)
  if (!read.ok) return typed
  const units = [read.unit, ...(read.of === undefined ? [] : dimensions[read.of].units)].filter(
    (unit) => {
      const one = parseQuantity(`1 ${unit}`)
      return one.ok && sameKind(one, read)
    },
  )
  const unit = units[way % units.length] ?? read.unit
  return formatQuantity(read.value * share, unit, { figures: 6 }).replaceAll('\u2212', '-')
}

function changeText(field: Field, text: Overrides[string], draw: Draw): Overrides[string] {
  if (field.type === 'choice') {
    const options = Object.keys(field.options)
    return options[draw.way % options.length] ?? ''
  }
  if (typeof text === 'string') return field.type === 'number' ? scaled(text, draw) : text
  if (field.type !== 'list') return text
  // Now and then a row is taken away, or there twice.
  const at = draw.at % Math.max(1, text.length)
  const rows =
    draw.way % 5 === 0
      ? text.toSpliced(at, 1)
      : draw.way % 5 === 1
        ? [...text, ...text.slice(at, at + 1)]
        : text
  return rows.map((row) =>
    Object.fromEntries(
      Object.entries(row).map(([column, cell]) => {
        const inner = field.fields[column]
        const made = inner === undefined || cell === '' ? cell : changeText(inner, cell, draw)
        return [column, typeof made === 'string' ? made : cell]
      }),
    ),
  )
}

function changeableOf(part: Published, calculators: ReadonlyMap<string, Calculator>): Changeable[] {
  const lookup = lookupOf(part)
  const ofBlock = (block: PublishedBlock): Changeable[] => {
    const inputs = calculators.get(block.calculator)?.inputs ?? {}
    const texts = textsOf(block, inputs, (id) => lookup.number(id))
    return Object.entries(inputs).map(([key, field]): Changeable => [
      `${block.id}.${key}`,
      (draw) => changeText(field, texts[key] ?? '', draw),
    ])
  }
  return [
    ...part.numbers
      .filter(isDeclared)
      .map(({ id, typed = '' }): Changeable => [id, (draw) => scaled(typed, draw)]),
    ...part.blocks.flatMap(ofBlock),
  ]
}

/** The ledger's numbers and blocks of a page; rows come and go with their block. */
function partLike(whole: Published, ids: ReadonlySet<string>): Published {
  return {
    ...whole,
    numbers: whole.numbers.filter(({ id, block }) => ids.has(block ?? id)),
    blocks: whole.blocks.filter(({ id }) => ids.has(id)),
  }
}

it(`after each of ${many} changes the browser has the doubles that the build has`, async () => {
  const { page, context, faults } = await opened(host, '404.html')
  await page.evaluate(script)
  const notes = ledger.published.notes.map(({ slug }) => slug)
  let compared = 0
  let moved = 0
  for (const slug of notes) {
    const figures = host.site.files.get(`notes/${slug}/figures.json`)?.toString('utf8') ?? ''
    const roots = (JSON.parse(figures) as { roots: { numbers: Numbered[]; blocks: Numbered[] } })
      .roots
    const ids = new Set(
      [...roots.numbers, ...roots.blocks].map(({ note, name }) => `${note}/${name}`),
    )
    const part = partLike(ledger.published, ids)
    const changeable = changeableOf(part, ledger.calculators)
    const changes = fc
      .sample(fc.array(draws, { minLength: 1, maxLength: 3 }), Math.ceil(many / notes.length))
      .map((one) =>
        Object.fromEntries(
          one.flatMap((draw) => {
            const [id, text] = changeable[draw.at % changeable.length] ?? []
            return id === undefined || text === undefined ? [] : [[id, text(draw)] as const]
          }),
        ),
      )
    const working = page.evaluate(
      ([text, list]) =>
        (globalThis as unknown as { workedInPage: typeof workedInPage }).workedInPage(text, list),
      [figures, changes] as const,
    )
    // Both work at the same time: what is to be sent has to be off first.
    await new Promise((sent) => setTimeout(sent, 20))
    const builder = standing(part)
    const due = changes.map((overrides): Standing => {
      const whole = workPublished(ledger.published, overrides, ledger.calculators)
      return { overrides: JSON.stringify(overrides), ...standing(partLike(whole, ids), builder) }
    })
    const worked = await working
    expect(worked.builder).toEqual(builder)
    expect(
      worked.changed.map((one, index) => ({ overrides: JSON.stringify(changes[index]), ...one })),
    ).toStrictEqual(due)
    compared += due.length
    moved += due.flatMap((one) => Object.keys(one)).length
  }
  expect(compared).toBeGreaterThanOrEqual(many)
  // Most changes move something beyond themselves.
  expect(moved).toBeGreaterThan(many * 4)
  expect(faults).toEqual([])
  await context.close()
}, 180_000)

interface Numbered {
  readonly note: string
  readonly name: string
}

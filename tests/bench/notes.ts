/**
 * Notes for the benchmark, as many as wanted, each with ten blocks. In: how many. Out: the same notes
 * twice: in the kit's language, and with every number typed by hand and every block as a table.
 *
 * Blocks are the calculators' own outside examples, so that every calculator that needs no accepted
 * stop takes part, with the inputs of its trade.
 */
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Calculator, ExampleValue } from '../../calculators/define.ts'
import { calculators } from '../../calculators/index.ts'
import { loadLedger } from '../../src/ledger/load.ts'
import type { Published } from '../../src/ledger/published.ts'

export const blocksInNote = 10

const site = `title: Notes of a benchmark
vehicle: an invented van
instruments:
  meter: { title: digital multimeter }
`

const filler = [
  'The old mount was cut away and the edge filed until a finger felt nothing. What was kept went into a',
  'box with a label, because it is always the odd clip that is wanted two years later. It rained, so the',
  'rest was done under the lean-to with the lamp on the rafter, and it took two evenings instead of one.',
].join('\n')

interface Sample {
  readonly calculator: Calculator
  readonly inputs: Readonly<Record<string, ExampleValue>>
}

function calcMarkup(
  id: string,
  { calculator, inputs }: Sample,
  named: string | undefined,
  reading: string,
): string {
  const attributes = Object.entries(inputs).map(([key, value]) =>
    key === named
      ? `${key}={${reading}}`
      : typeof value === 'string'
        ? `${key}="${value}"`
        : `${key}={${JSON.stringify(value)}}`,
  )
  return `<Calc id="${id}" use="${calculator.id}" ${attributes.join(' ')} />`
}

const head = (index: number): string =>
  `---\ntitle: Evening ${index} on the bench\ndate: 2026-${String(1 + (index % 12)).padStart(2, '0')}-${String(1 + (index % 28)).padStart(2, '0')}\nphase: road\nstatus: done\n---\n`

async function ledgerOfNotes(texts: ReadonlyMap<string, string>) {
  const folder = await mkdtemp(join(tmpdir(), 'bench-'))
  try {
    await writeNotes(folder, texts)
    return await loadLedger(folder)
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}

export async function writeNotes(
  folder: string,
  texts: ReadonlyMap<string, string>,
): Promise<void> {
  await mkdir(join(folder, 'notes'), { recursive: true })
  await writeFile(join(folder, 'site.yaml'), site)
  for (const [slug, text] of texts) await writeFile(join(folder, 'notes', `${slug}.mdx`), text)
}

/** The examples that can be published as they are. */
async function samples(): Promise<Sample[]> {
  const all: Sample[] = []
  for (const load of Object.values(calculators)) {
    const calculator = await load()
    for (const { inputs } of calculator.examples) {
      const given = Object.entries(inputs).flatMap(([key, value]) =>
        value === undefined ? [] : [[key, value] as const],
      )
      all.push({ calculator, inputs: Object.fromEntries(given) })
    }
  }
  const probe = new Map(
    all.map((sample, index) => [
      `probe-${index}`,
      `${head(1)}\n${calcMarkup('one', sample, undefined, '')}\n`,
    ]),
  )
  const { problems } = await ledgerOfNotes(probe)
  const failing = new Set(problems.filter(({ level }) => level === 'error').map(({ file }) => file))
  return all.filter((_, index) => !failing.has(`notes/probe-${index}.mdx`))
}

/** An input that a reading can stand for. */
function readableInput({ calculator, inputs }: Sample): string | undefined {
  return Object.entries(inputs).find(
    ([key, value]) => calculator.inputs[key]?.type === 'number' && typeof value === 'string',
  )?.[0]
}

interface Piece {
  readonly name: string
  readonly reading: string
  readonly value: string | undefined
  readonly calc: string
  readonly results: readonly string[]
}

function pieceOf(sample: Sample, index: number): Piece {
  const name = `block${index}`
  const reading = `reading${index}`
  const input = readableInput(sample)
  const value = input === undefined ? undefined : sample.inputs[input]
  return {
    name,
    reading,
    value: typeof value === 'string' ? value : undefined,
    calc: calcMarkup(name, sample, input, reading),
    results: Object.entries(sample.calculator.outputs)
      .filter(([, { type }]) => type === 'number')
      .slice(0, 3)
      .map(([key]) => key),
  }
}

function kitNote(index: number, pieces: readonly Piece[]): string {
  const parts = pieces.map(({ name, reading, value, calc, results }, at) => {
    const read =
      value === undefined
        ? ''
        : ` Today it read <Reading id="${reading}" value="${value}" with="meter" />.`
    const out = results.map((key) => `{${name}.${key}}`).join(', ')
    return `## Step ${at + 1} of evening ${index}\n\n${filler}${read}\n\n${calc}\n\nThat makes ${out || 'what the card says'}.\n`
  })
  return `${head(index)}\n${parts.join('\n')}`
}

/** The same, its numbers typed: a table for each block, as the card shows them. */
function typedNote(
  index: number,
  slug: string,
  pieces: readonly Piece[],
  published: Published,
  found: ReadonlyMap<string, string>,
): string {
  const shown = (id: string): string => found.get(`${slug}/${id}`) ?? ''
  const cell = (text: string): string => text.replaceAll('|', '\\|').replace(/[{}<]/g, '')
  const parts = pieces.map(({ name, reading, value, results }, at) => {
    const block = published.blocks.find(({ id }) => id === `${slug}/${name}`)
    const rows = published.numbers
      .filter((number) => number.block === `${slug}/${name}`)
      .map(
        (number) =>
          `| ${cell(number.name)} | ${cell(number.shown)} | ${cell(number.shownOther ?? '')} |`,
      )
    const findings = (block?.findings ?? []).map(
      ({ level, text }) => `- **${level}** ${cell(text)}`,
    )
    const working = (block?.working ?? []).map((text, line) => `${line + 1}. ${cell(text)}`)
    const read = value === undefined ? '' : ` Today it read ${shown(reading)}.`
    const out = results.map((key) => shown(`${name}.${key}`)).join(', ')
    return [
      `## Step ${at + 1} of evening ${index}\n\n${filler}${read}\n`,
      `| Number | Value | Also |\n| --- | --- | --- |\n${rows.join('\n')}\n`,
      `${findings.join('\n')}\n\n${working.join('\n')}\n`,
      `That makes ${out || 'what the table says'}.\n`,
    ].join('\n')
  })
  return `${head(index)}\n${parts.join('\n')}`
}

export interface Pair {
  readonly kit: ReadonlyMap<string, string>
  readonly typed: ReadonlyMap<string, string>
  readonly numbers: number
  readonly blocks: number
}

export async function makeNotes(many: number): Promise<Pair> {
  const pool = await samples()
  const all = Array.from({ length: many }, (_, index) => {
    const pieces = Array.from({ length: blocksInNote }, (__, at) => {
      const sample = pool[(index * blocksInNote + at) % pool.length]
      if (sample === undefined)
        throw new Error('no calculator has an example that can be published')
      return pieceOf(sample, at + 1)
    })
    return { slug: `evening-${index + 1}`, index: index + 1, pieces }
  })
  const kit = new Map(all.map(({ slug, index, pieces }) => [slug, kitNote(index, pieces)]))
  const { published, problems } = await ledgerOfNotes(kit)
  const error = problems.find(({ level }) => level === 'error')
  if (error !== undefined) throw new Error(`${error.file}:${error.line} ${error.text}`)
  const found = new Map(published.numbers.map(({ id, shown }) => [id, shown]))
  const bySlug = Map.groupBy(published.numbers, ({ note }) => note)
  const blocksBySlug = Map.groupBy(published.blocks, ({ note }) => note)
  const typed = new Map(
    all.map(({ slug, index, pieces }) => [
      slug,
      typedNote(
        index,
        slug,
        pieces,
        { ...published, numbers: bySlug.get(slug) ?? [], blocks: blocksBySlug.get(slug) ?? [] },
        found,
      ),
    ]),
  )
  return { kit, typed, numbers: published.numbers.length, blocks: published.blocks.length }
}

/**
 * A block as the ledger publishes it, from inputs in SI: its numbers chosen where the field is a choice,
 * else assumed. In: a calculator, its inputs, and changes to single numbers by path. Out: the block and
 * the look-up of its numbers.
 */
import type { Calculator, Field, InputValue } from '../../calculators/define.ts'
import { blankNumber } from '../../src/ledger/blank.ts'
import { publishFindings, verdictOf } from '../../src/ledger/judge.ts'
import type { NumberLookup } from '../../src/ledger/matters.ts'
import type {
  Given,
  PlainValue,
  Published,
  PublishedBlock,
  PublishedNumber,
} from '../../src/ledger/published.ts'
import { say } from '../../src/ledger/say.ts'
import { dimensions } from '../../src/quantity/index.ts'

export type Inputs = Readonly<Record<string, InputValue>>

/** Four metres of 3 mm² solid copper there and back, 10 A at 12 V: inputs of `cable-drop`, in SI. */
export const run: Inputs = {
  current: 10,
  length: 4,
  wire: 3e-6,
  volts: 12,
  returnPath: 'wire',
  chassis: 0.005,
  conductor: 'solid',
  temperature: 293.15,
  critical: 'yes',
  derate: 1,
}

export interface Made {
  readonly block: PublishedBlock
  readonly lookup: NumberLookup
  readonly published: Published
}

const plain = (value: InputValue): PlainValue =>
  typeof value === 'object'
    ? value.map((row) =>
        Object.fromEntries(Object.entries(row).map(([key, cell]) => [key, cell ?? null])),
      )
    : (value ?? null)

export function blockOf(
  calculator: Calculator,
  inputs: Inputs,
  numbers: Readonly<Record<string, Partial<PublishedNumber>>> = {},
  more: readonly PublishedNumber[] = [],
): Made {
  const made = new Map(more.map((number) => [number.id, number]))
  const id = 'note/block'
  const give = (path: string, field: Field, value: InputValue): Given | undefined => {
    if (value === undefined) return undefined
    if (typeof value === 'object') {
      if (field.type !== 'list') throw new Error(`${path} is no list`)
      const rows = value.map((row, index) =>
        Object.fromEntries(
          Object.entries(field.fields).flatMap(([column, cell]) => {
            const given = give(`${path}.${index}.${column}`, cell, row[column])
            return given === undefined ? [] : [[column, given] as const]
          }),
        ),
      )
      return { type: 'rows', rows }
    }
    if (typeof value === 'string') return { type: 'word', value, how: 'literal' }
    if (field.type !== 'number') throw new Error(`${path} is no number`)
    const kind = field.choice === true ? 'chosen' : 'assumed'
    const place = { note: 'note', name: `block.${path}`, date: '2026-03-14', file: 'n.mdx' }
    const number: PublishedNumber = {
      ...blankNumber({ ...place, line: 1, column: 1 }),
      kind,
      firmness: kind,
      of: field.of,
      vector: dimensions[field.of].vector,
      flavour: dimensions[field.of].flavour,
      block: id,
      value,
      now: value,
      ...numbers[path],
    }
    made.set(number.id, number)
    return { type: 'number', id: number.id, how: number.expression ? 'reference' : 'literal' }
  }
  const given = Object.fromEntries(
    Object.entries(calculator.inputs).flatMap(([key, field]) => {
      const one = give(key, field, inputs[key])
      return one === undefined ? [] : [[key, one] as const]
    }),
  )
  const outputs = calculator.compute(inputs)
  const findings = publishFindings(calculator, calculator.findings(inputs, outputs, say))
  const block: PublishedBlock = {
    id,
    note: 'note',
    name: 'block',
    title: calculator.title,
    calculator: calculator.id,
    given,
    inputs: Object.fromEntries(Object.entries(inputs).map(([key, one]) => [key, plain(one)])),
    outputs: Object.fromEntries(Object.entries(outputs).map(([key, one]) => [key, plain(one)])),
    verdict: verdictOf(findings),
    provisional: false,
    accepted: null,
    findings,
    working: [],
    hazards: [],
    file: 'n.mdx',
    line: 1,
  }
  const published: Published = {
    format: 1,
    site: { title: 'A test', description: '', vehicle: '', units: ['metric', 'us'] },
    notes: [],
    numbers: [...made.values()],
    blocks: [block],
  }
  return { block, published, lookup: { number: (one) => made.get(one) } }
}

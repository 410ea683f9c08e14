/**
 * Every input of every calculator, badly given: outside its hard range at both ends and in both units, of
 * another kind, not a number, empty, left out; lists with no row, too many, or a row cut short.
 *
 * Each is read the way an author's is, alone and in a whole note. Each must be answered by words that
 * name the field, repeat what was read and say what is allowed; never by silence, an exception or a value.
 */
import { describe, expect, test } from 'vitest'
import type { Calculator, Field, ListField, NumberField } from '../../calculators/define.ts'
import { calculators } from '../../calculators/index.ts'
import { mayBeLeftOut, readField, readRows, slipWords } from '../../src/ledger/input.ts'
import type { SingleField } from '../../src/ledger/input.ts'
import { fromSI, toSI } from '../../src/quantity/index.ts'
import { ledgerOf } from '../ledger/ledger-of.ts'
import { all } from './all.ts'
import { run, runExample } from './run-example.ts'

const nonsense = ['abc', 'NaN', 'Infinity', '-', 'null', '1e999']
const program = /NaN|undefined|Infinity|\[object|\bnull\b|Error\b/

interface Bad {
  /** `hoses.0.bore` is a cell of a list. */
  readonly path: string
  readonly field: SingleField
  readonly text: string
  /** Words of the field that must be said to be allowed. */
  readonly allowed: readonly string[]
}

/** A number as a person would type it. */
const plain = (value: number): string => {
  const text = String(Number(value.toPrecision(7)))
  return text.includes('e') ? value.toFixed(20).replace(/0+$/, '') : text
}

function outside({ hard: [low, high], units }: NumberField): readonly string[] {
  const step = (high - low) / 50
  return [low - step, high + step].flatMap((value) =>
    [...new Set(units)]
      .filter((unit) => unit !== 'AWG')
      .map((unit) => `${plain(fromSI(toSI(value, units[0]), unit))} ${unit}`.trim()),
  )
}

function badTexts(path: string, field: SingleField): readonly Bad[] {
  if (field.type === 'text')
    return mayBeLeftOut(field) ? [] : [{ path, field, text: ' ', allowed: ['words'] }]
  if (field.type === 'choice') {
    const allowed = Object.keys(field.options)
    return ['no such thing', '7', ''].map((text) => ({ path, field, text, allowed }))
  }
  const { units, of } = field
  const wrong = of === 'mass' ? '5 s' : '5 kg'
  return [
    ...outside(field).map((text) => ({ path, field, text, allowed: [' to '] })),
    ...[wrong, ...nonsense].map((text) => ({ path, field, text, allowed: [] })),
    ...(units[0] === '' ? [] : [{ path, field, text: 'five', allowed: [] }]),
  ]
}

function everyBad({ inputs }: Calculator): readonly Bad[] {
  const of = (path: string, field: Field): readonly Bad[] =>
    field.type === 'list'
      ? Object.entries(field.fields).flatMap(([name, cell]) => of(`${path}.0.${name}`, cell))
      : badTexts(path, field)
  return Object.entries(inputs).flatMap(([name, field]) => of(name, field))
}

const lists = ({ inputs }: Calculator): readonly (readonly [string, ListField])[] =>
  Object.entries(inputs).flatMap(([name, field]) =>
    field.type === 'list' ? [[name, field] as const] : [],
  )

/** A row of a list as typed, with the usual value in every cell. */
const usualRow = ({ fields }: ListField): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.entries(fields).map(([name, cell]) => [
      name,
      cell.type === 'text'
        ? 'front'
        : cell.type === 'choice'
          ? (Object.keys(cell.options)[0] ?? '')
          : `${plain((cell.usual[0] + cell.usual[1]) / 2)} ${cell.units[0]}`.trim(),
    ]),
  )

/** As an attribute; a list gets as many rows as it must have, the bad one first. */
function attribute({ inputs }: Calculator, { path, text }: Bad): string {
  const [name = '', , column] = path.split('.')
  if (column === undefined) return `${name}="${text}"`
  const field = inputs[name]
  const more = field?.type === 'list' ? ', {}'.repeat(field.rows[0] - 1) : ''
  return `${name}={[{ ${column}: "${text}" }${more}]}`
}

describe.each(all)('$id', (calculator) => {
  test('refuses each bad text, and says why', () => {
    for (const { field, text, allowed } of everyBad(calculator)) {
      const read = readField(field, text)
      const about = `“${field.label}”: \`${text}\``
      if (read.ok) throw new Error(`${about} is read as ${String(read.value)}`)
      const [typed = ''] = text.trim().split(' ')
      expect(read.text, about).toContain(typed)
      expect(`${read.text} ${read.allowed ?? ''}`, about).not.toMatch(/^\s*$/)
      for (const word of allowed) expect(read.allowed ?? '', about).toContain(word)
      expect(slipWords(read).replaceAll(text, '').replaceAll(typed, ''), about).not.toMatch(program)
      expect(read.allowed ?? read.hint ?? '', about).not.toBe('')
    }
  })

  test('refuses what is left empty and has to be given', () => {
    for (const [name, field] of Object.entries(calculator.inputs)) {
      if (field.type === 'list' || mayBeLeftOut(field)) continue
      const read = readField(field, '')
      expect(read.ok, name).toBe(false)
    }
  })

  test.each(lists(calculator))('counts the rows of %s', (_name, field) => {
    const [least, most] = field.rows
    const row = usualRow(field)
    const many = (count: number) =>
      readRows(
        field,
        Array.from({ length: count }, () => row),
      )
    for (const count of [0, least - 1, most + 1, 1000]) {
      if (count < 0 || (count >= least && count <= most)) continue
      const read = many(count)
      if (read.ok) throw new Error(`${count} rows are taken`)
      expect(slipWords(read)).toContain(
        `“${field.label}” has ${count} ${count === 1 ? 'row' : 'rows'}`,
      )
      expect(read.allowed).toContain(`${least} to ${most} rows`)
    }
    expect(many(least).ok).toBe(true)
    expect(many(most).ok).toBe(true)
  })

  test.each(lists(calculator))('works with the least and the most rows of %s', (name, field) => {
    for (const example of calculator.examples) {
      const { input } = runExample(calculator, example)
      const rows = input[name]
      if (typeof rows !== 'object') continue
      for (const count of field.rows) {
        const many = Array.from({ length: count }, (_, at) => rows[at % rows.length] ?? {})
        const { output, findings, working } = run(calculator, { ...input, [name]: many })
        const said = [...findings.flatMap(({ text, threshold }) => [text, threshold]), ...working]
        expect(said.filter((text) => program.test(text))).toEqual([])
        const numbers = Object.values(output).filter((value) => typeof value === 'number')
        expect(numbers.filter((value) => !Number.isFinite(value))).toEqual([])
      }
    }
  })

  test.each(lists(calculator))('names row and column of a bad cell of %s', (_name, field) => {
    const good = usualRow(field)
    for (const [column, cell] of Object.entries(field.fields)) {
      if (cell.type === 'text' && mayBeLeftOut(cell)) continue
      const bad = { ...good, [column]: cell.type === 'text' ? ' ' : 'abc' }
      const rows = Array.from({ length: Math.max(2, field.rows[0]) }, (_, at) =>
        at === 1 ? bad : good,
      )
      const read = readRows(field, rows)
      if (read.ok) throw new Error(`a bad ${column} is taken`)
      expect(read.text).toContain(`${field.row} 2, ${cell.label}: `)
    }
  })

  test('is refused in a note, at its place', { timeout: 120_000 }, async () => {
    const bad = everyBad(calculator)
    const start = (at: number): string => `<Calc id="b${at}" use="${calculator.id}" `
    const blocks = bad.map((one, at) => `${start(at)}${attribute(calculator, one)} />`)
    const { problems } = await ledgerOf(
      { n: [...blocks, `${start(bad.length)}/>`].join('\n\n') },
      calculators,
    )
    const errors = problems.filter(({ level }) => level === 'error')
    expect(
      errors
        .filter(({ text, hint }) => /NaN|undefined|\[object/.test(`${text}${hint ?? ''}`))
        .filter(({ text }) => !text.includes('`NaN')),
    ).toEqual([])
    for (const [at, { path, text }] of bad.entries()) {
      const here = errors.filter(
        ({ line, rule, text: said }) =>
          line === 7 + 2 * at && rule !== 'missing-input' && said.includes(`\`${path}\``),
      )
      const [first, ...more] = here
      const about = `${path}="${text}"`
      if (first === undefined) throw new Error(`${about}: nothing is said`)
      expect(more, about).toEqual([])
      const [typed = ''] = text.trim().split(' ')
      expect(first.text, about).toContain(typed)
      expect(first.allowed ?? first.hint ?? '', about).not.toBe('')
      const block = blocks[at] ?? ''
      const column = path.includes('.')
        ? block.indexOf(`"${text}"`)
        : block.indexOf(` ${path}=`) + 1
      expect([first.file, first.column], about).toEqual(['notes/n.mdx', column + 1])
    }
    const due = Object.entries(calculator.inputs).flatMap(([name, field]) =>
      (field.type === 'list' ? field.optional === true : mayBeLeftOut(field)) ? [] : [name],
    )
    const missing = errors.filter(({ line }) => line === 7 + 2 * bad.length)
    expect(missing.map(({ rule }) => rule)).toEqual(due.map(() => 'missing-input'))
    for (const [at, name] of due.entries()) expect(missing[at]?.text).toContain(name)
  })
})

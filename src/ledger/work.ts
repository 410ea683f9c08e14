/**
 * Works the ledger: from what was given to every value, result, verdict and shown text.
 *
 * In: the ledger as data, worked or not; whatever was worked before is worked again from the roots.
 * Out: the same with everything filled in, and what is wrong with it. The build, the commands, the
 * browser and `verify` all call this, so a value can only come about in one way.
 */
import type {
  Calculator,
  Field,
  InputValue,
  NumberField,
  NumberOutput,
  OutputValue,
} from '../../calculators/define.ts'
import {
  combine,
  dimensions,
  displayUnit,
  formatQuantity,
  negate,
  parseQuantity,
  unitOf,
} from '../quantity/index.ts'
import type { Quantity, Slip } from '../quantity/types.ts'
import { rangeSlip, readNumber, unusualRemark } from './range.ts'
import { acceptProblems, isProvisional, publishFindings, verdictOf, weakest } from './judge.ts'
import type { Problem } from './problems.ts'
import { figuresOf, resolutionOf, say, showRoot, showWorked, type Precision } from './show.ts'
import type {
  Expression,
  Firmness,
  Given,
  PlainValue,
  Published,
  PublishedBlock,
  PublishedNumber,
} from './published.ts'

export interface Worked {
  readonly published: Published
  readonly problems: readonly Problem[]
}

export interface WorkOptions {
  /** Replacements count from their date on, up to this day (YYYY-MM-DD). Left out: all count. */
  readonly asOf?: string
}

/** A number as evaluated: `null` where it cannot be told. */
interface Evaluated extends Precision {
  readonly quantity: Quantity | null
  readonly firmness: Firmness
}

const unknownNumber: Evaluated = {
  quantity: null,
  firmness: 'assumed',
  figures: null,
  given: false,
}

export function work(
  published: Published,
  calculators: ReadonlyMap<string, Calculator>,
  options: WorkOptions = {},
): Worked {
  const problems: Problem[] = []
  const numbers = new Map(
    published.numbers.filter((one) => one.calculator === null).map((one) => [one.id, one]),
  )
  const blocks = new Map(published.blocks.map((block) => [block.id, block]))
  const fields = inputFields(published.blocks, calculators)
  const defaults = new Set(
    published.blocks.flatMap(({ given }) => Object.values(given).flatMap(defaultIds)),
  )
  const results = new Map<string, PublishedNumber>()
  const doneNumbers = new Map<string, Evaluated>()
  const doneBlocks = new Map<string, PublishedBlock>()
  const path: string[] = []
  const circles = new Set<string>()
  const systems = published.site.units

  const replacement = new Map<string, PublishedNumber>()
  for (const number of numbers.values()) {
    if (number.replaces === undefined) continue
    if (options.asOf !== undefined && number.date > options.asOf) continue
    const before = replacement.get(number.replaces)
    if (
      before === undefined ||
      before.date < number.date ||
      (before.date === number.date && before.id < number.id)
    )
      replacement.set(number.replaces, number)
  }

  const report = (
    number: PublishedNumber,
    problem: Omit<Problem, 'level' | 'file' | 'line' | 'column'>,
    level: Problem['level'] = 'error',
  ): void => {
    problems.push({
      ...problem,
      level,
      file: number.file,
      line: number.line,
      column: number.column,
    })
  }

  for (const id of replacement.keys()) breakCircle(id)

  /** Numbers that take each other's place: reported, and each then stands for itself. */
  function breakCircle(id: string): void {
    const chain: PublishedNumber[] = []
    for (
      let next = replacement.get(id);
      next !== undefined && !chain.includes(next);
      next = replacement.get(next.id)
    )
      chain.push(next)
    const [first, ...rest] = chain.some(({ id: own }) => own === id) ? chain.toSorted(byId) : []
    if (first === undefined) return
    for (const number of chain) replacement.delete(number.id)
    const { file, line, column } = first
    problems.push({
      rule: rest.length === 0 ? 'replaces-itself' : 'circle',
      level: 'error',
      text:
        rest.length === 0
          ? `\`${first.name}\` cannot take its own place`
          : `these numbers take each other’s place in a circle: ${[first, ...rest, first].map((one) => `\`${one.id}\``).join(' → ')}`,
      hint: '`replaces` names an older number, whose place this one takes',
      file,
      line,
      column,
      ...(rest.length === 0
        ? {}
        : { also: rest.map((one) => ({ file: one.file, line: one.line, column: one.column })) }),
    })
  }

  /** Walks into `id`; a way that comes back to itself is a circle and is reported once. */
  const enter = <T>(id: string, otherwise: T, walk: () => T): T => {
    const from = path.indexOf(id)
    if (from >= 0) {
      reportCircle(path.slice(from))
      return otherwise
    }
    path.push(id)
    const value = walk()
    path.pop()
    return value
  }

  const reportCircle = (ids: readonly string[]): void => {
    const key = [...ids].sort().join(' ')
    if (circles.has(key)) return
    circles.add(key)
    const places = ids.flatMap((id) => {
      const one = numbers.get(id) ?? blocks.get(id)
      return one === undefined
        ? []
        : [{ id, file: one.file, line: one.line, column: 'column' in one ? one.column : 1 }]
    })
    const [first, ...rest] = places
    if (first === undefined) return
    problems.push({
      rule: 'circle',
      level: 'error',
      text: `these numbers rest on each other in a circle: ${[...places.map(({ id }) => `\`${id}\``), `\`${first.id}\``].join(' → ')}`,
      hint: 'one of them has to be given: measured, read from a sheet, assumed or chosen',
      file: first.file,
      line: first.line,
      column: first.column,
      also: rest.map(({ file, line, column }) => ({ file, line, column })),
    })
  }

  /** The value that stands for `id` now. */
  const valueOf = (id: string): Evaluated => {
    const stands = replacement.get(id)
    if (stands !== undefined) return valueOf(stands.id)
    return ownValue(id)
  }

  const ownValue = (id: string): Evaluated => {
    const known = doneNumbers.get(id)
    if (known !== undefined) return known
    const number = numbers.get(id)
    if (number === undefined) return resultValue(id)
    const evaluated = enter(id, unknownNumber, () => evaluate(number))
    doneNumbers.set(id, evaluated)
    return evaluated
  }

  const resultValue = (id: string): Evaluated => {
    const block = blocks.get(blockIdOf(id))
    if (block === undefined) return unknownNumber
    workBlock(block)
    return doneNumbers.get(id) ?? unknownNumber
  }

  const evaluate = (number: PublishedNumber): Evaluated => {
    const field = fields.get(number.id)
    if (number.expression !== undefined) return evaluateSum(number, number.expression, field)
    const typed = number.typed ?? ''
    const read = field === undefined ? parseQuantity(typed) : readNumber(field, typed)
    if (!read.ok) {
      const { rule, text, allowed, hint } = read
      report(number, {
        rule,
        text: field === undefined ? text : `${fieldName(number)}: ${text}`,
        ...(allowed === undefined ? {} : { allowed }),
        ...(hint === undefined ? {} : { hint }),
      })
      return unknownNumber
    }
    const quantity = 'quantity' in read ? read.quantity : read
    if (quantity.remark !== undefined)
      report(number, { rule: 'read-as', text: quantity.remark }, 'warning')
    if ('unusual' in read)
      report(
        number,
        { rule: 'unusual', text: `${fieldName(number)}: \`${quantity.typed}\` is ${read.unusual}` },
        'warning',
      )
    const kind = number.kind === 'worked' ? 'assumed' : number.kind
    return {
      quantity,
      firmness: kind,
      figures: Number.isFinite(quantity.figures) ? quantity.figures : null,
      given: kind === 'chosen' || defaults.has(number.id),
      unit: quantity.unit,
      ...resolutionOf(quantity),
    }
  }

  const evaluateSum = (
    number: PublishedNumber,
    expression: Expression,
    field: NumberField | undefined,
  ): Evaluated => {
    const parts: Evaluated[] = []
    const refuse = ({ rule, text, hint }: Slip): undefined => {
      report(number, {
        rule,
        text: `\`${number.name}\`: ${text}`,
        ...(hint === undefined ? {} : { hint }),
      })
      return undefined
    }
    const read = (part: Expression): { quantity: Quantity; precision: Precision } | undefined => {
      if (typeof part === 'number')
        return {
          quantity: {
            value: part,
            vector: dimensions.number.vector,
            flavour: 'amount',
            of: 'number',
          },
          precision: { figures: null, given: true },
        }
      if ('ref' in part) {
        const value = valueOf(part.ref)
        parts.push(value)
        return value.quantity === null ? undefined : { quantity: value.quantity, precision: value }
      }
      if (part.op === 'negate') {
        const inner = read(part.of)
        if (inner === undefined) return undefined
        const turned = negate(inner.quantity)
        if ('rule' in turned) { refuse(turned); return; }
        return { quantity: turned, precision: inner.precision }
      }
      const left = read(part.left)
      const right = read(part.right)
      if (left === undefined || right === undefined) return undefined
      const made = combine(part.op, left.quantity, right.quantity)
      if ('rule' in made) { refuse(made); return; }
      return { quantity: made, precision: figuresOf(part.op, made, left, right) }
    }
    const made = read(expression)
    const firmness = weakest(parts.map((one) => one.firmness))
    if (made === undefined || (field !== undefined && !fits(number, field, made.quantity)))
      return { ...unknownNumber, firmness }
    return { ...made.precision, quantity: made.quantity, firmness }
  }

  /** Whether a worked value may go into a field; if not, it is reported. */
  const fits = (number: PublishedNumber, field: NumberField, quantity: Quantity): boolean => {
    const due = dimensions[field.of]
    const same =
      due.flavour === quantity.flavour &&
      due.vector.every((power, index) => power === quantity.vector[index])
    if (!same) {
      report(number, {
        rule: 'wrong-dimension',
        text: `${fieldName(number)}: ${due.words} is due, and this is ${wordsOf(quantity)}`,
        allowed: `a value in ${[...new Set(field.units)].join(' or ')}`,
      })
      return false
    }
    const refused = rangeSlip(field, quantity.value)
    if (refused !== undefined) {
      const { rule, text, allowed } = refused
      report(number, {
        rule,
        text: `${fieldName(number)}: ${text}`,
        ...(allowed === undefined ? {} : { allowed }),
      })
      return false
    }
    const unusual = unusualRemark(field, quantity.value)
    if (unusual !== undefined)
      report(
        number,
        {
          rule: 'unusual',
          text: `${fieldName(number)}: \`${formatQuantity(quantity.value, field.units[0], { figures: 3 })}\` is ${unusual}`,
        },
        'warning',
      )
    return true
  }

  const workBlock = (block: PublishedBlock): void => {
    if (doneBlocks.has(block.id)) return
    enter(block.id, undefined, () => evaluateBlock(block))
  }

  const evaluateBlock = (block: PublishedBlock): void => {
    const calculator = calculators.get(block.calculator)
    if (calculator === undefined) return
    const roots: Evaluated[] = []
    const missing: string[] = []
    const rests: string[] = []
    const input = (field: Field, given: Given | undefined): InputValue => {
      if (given === undefined) {
        if (!('optional' in field)) missing.push(field.label)
        return undefined
      }
      if (given.type === 'word') return given.value
      if (given.type === 'number') {
        rests.push(given.id)
        const value = ownValue(given.id)
        roots.push(value)
        if (value.quantity === null) missing.push(field.label)
        return value.quantity?.value
      }
      if (field.type !== 'list') return undefined
      return given.rows.map((row) =>
        Object.fromEntries(
          Object.entries(field.fields).map(([name, inner]) => {
            const value = input(inner, row[name])
            return [name, typeof value === 'object' ? undefined : value]
          }),
        ),
      )
    }
    const inputs = Object.fromEntries(
      Object.entries(calculator.inputs).map(([name, field]) => [
        name,
        input(field, block.given[name]),
      ]),
    )
    const words = Object.values(block.given).flatMap((given) =>
      given.type === 'word' && given.how === 'assumed-default' ? [given] : [],
    )
    const firmnesses: Firmness[] = [
      ...roots.map(({ firmness }) => firmness),
      ...words.map(() => 'assumed' as const),
    ]
    const firmness = weakest(firmnesses)
    const worked =
      missing.length > 0 ? cannotTell(calculator, missing) : compute(block, calculator, inputs)
    for (const [name, value] of Object.entries(worked.outputs))
      addResults(block, calculator, name, value, {
        rests: [...new Set(rests)].sort(),
        firmness,
        roots,
      })
    const findings = publishFindings(calculator, worked.findings)
    const verdict = verdictOf(findings)
    const done: PublishedBlock = {
      ...block,
      inputs: plainRecord(inputs),
      outputs: plainRecord(worked.outputs),
      findings,
      working: worked.working,
      hazards: worked.hazards,
      verdict,
      provisional: isProvisional(verdict, firmnesses),
    }
    doneBlocks.set(block.id, done)
    problems.push(...acceptProblems(done, calculator))
  }

  const compute = (
    block: PublishedBlock,
    calculator: Calculator,
    inputs: Readonly<Record<string, InputValue>>,
  ): Computed => {
    const fault = (what: string): void => {
      problems.push({
        rule: 'calculator-fault',
        level: 'error',
        text: `the calculator \`${block.calculator}\` ${what}; that is a fault of the kit, not of the note`,
        file: block.file,
        line: block.line,
        column: 1,
      })
    }
    try {
      const computed = calculator.compute(inputs)
      const outputs = finite(computed)
      const lost = Object.keys(computed).filter((name) => hasNoNumber(computed[name]))
      if (lost.length > 0)
        fault(
          `gives no number for ${lost.map((name) => `\`${name}\``).join(', ')} from these inputs`,
        )
      return {
        outputs,
        findings: calculator.findings(inputs, outputs, say),
        working: calculator.working(inputs, outputs, say),
        hazards: [
          ...new Set([...calculator.hazards, ...(calculator.moreHazards?.(inputs, outputs) ?? [])]),
        ],
      }
    } catch {
      fault('failed on these inputs')
      return cannotTell(calculator, [])
    }
  }

  const addResults = (
    block: PublishedBlock,
    calculator: Calculator,
    name: string,
    value: OutputValue,
    origin: { rests: readonly string[]; firmness: Firmness; roots: readonly Evaluated[] },
  ): void => {
    const output = calculator.outputs[name]
    if (output === undefined) return
    if (output.type === 'number')
      addResult(
        block,
        `${block.name}.${name}`,
        output,
        typeof value === 'number' ? value : undefined,
        origin,
      )
    if (output.type !== 'table' || !Array.isArray(value)) return
    value.forEach((row: Readonly<Record<string, OutputValue>>, index) => {
      for (const [column, cell] of Object.entries(output.columns))
        if (cell.type === 'number') {
          const inner = row[column]
          addResult(
            block,
            `${block.name}.${name}.${index}.${column}`,
            cell,
            typeof inner === 'number' ? inner : undefined,
            origin,
          )
        }
    })
  }

  const addResult = (
    block: PublishedBlock,
    name: string,
    output: NumberOutput,
    value: number | undefined,
    origin: { rests: readonly string[]; firmness: Firmness; roots: readonly Evaluated[] },
  ): void => {
    const id = `${block.note}/${name}`
    const { vector, flavour, si } = dimensions[output.of]
    const figures = output.exact === true ? null : leastFigures(origin.roots)
    const quantity: Quantity | null =
      value === undefined ? null : { value, vector, flavour, of: output.of }
    doneNumbers.set(id, {
      quantity,
      firmness: origin.firmness,
      figures,
      given: output.exact === true,
      unit: output.units[systems[0] === 'us' ? 1 : 0],
    })
    const note = published.notes.find(({ slug }) => slug === block.note)
    results.set(id, {
      id,
      note: block.note,
      name,
      kind: 'worked',
      firmness: origin.firmness,
      value: value ?? null,
      unit: si,
      of: output.of,
      vector,
      flavour,
      ...showWorked(quantity, output.units, systems, figures, output.exact === true),
      figures,
      ...(output.exact === true ? { exact: true } : {}),
      plusMinus: null,
      rests: origin.rests,
      calculator: block.calculator,
      block: block.id,
      source: null,
      instrument: null,
      date: note?.date ?? '',
      file: block.file,
      line: block.line,
      column: 1,
      now: value ?? null,
    })
  }

  for (const number of numbers.values()) ownValue(number.id)
  for (const block of blocks.values()) workBlock(block)

  for (const number of numbers.values()) {
    compareKinds(number, number.replaces, 'take the place of')
    compareKinds(number, number.checks, 'be compared with')
  }

  /** A number stands in for, or is held against, one of its own kind only. */
  function compareKinds(number: PublishedNumber, other: string | undefined, words: string): void {
    const is = ownValue(number.id).quantity
    const due = other === undefined ? null : ownValue(other).quantity
    if (is === null || due === null) return
    if (
      is.flavour === due.flavour &&
      is.vector.every((power, index) => power === due.vector[index])
    )
      return
    report(number, {
      rule: 'wrong-dimension',
      text: `\`${number.name}\` is ${wordsOf(is)} and cannot ${words} \`${other ?? ''}\`, which is ${wordsOf(due)}`,
    })
  }

  const filled = [...numbers.values()].map((number): PublishedNumber =>
    fill(number, ownValue(number.id)),
  )
  const all = [...filled, ...results.values()].map((number): PublishedNumber => {
    const stands = replacement.get(number.id)
    const now = stands === undefined ? number.value : (valueOf(number.id).quantity?.value ?? null)
    return { ...number, now }
  })

  function fill(number: PublishedNumber, evaluated: Evaluated): PublishedNumber {
    const { quantity, firmness, figures } = evaluated
    const field = fields.get(number.id)
    const ref =
      typeof number.expression === 'object' && 'ref' in number.expression
        ? number.expression.ref
        : undefined
    const original = ref === undefined ? undefined : (replacement.get(ref) ?? numbers.get(ref))
    const alias =
      original === undefined
        ? {}
        : { kind: original.kind, source: original.source, instrument: original.instrument }
    const plusMinus = amountOf(number)
    // A number that was given keeps its author's unit where the field knows it.
    const typed = original === undefined ? number.typed : original.typed
    const asTyped =
      typed !== undefined &&
      (number.expression === undefined || field?.units.includes(evaluated.unit ?? '') === true)
    const shownAs = asTyped
      ? showRoot(quantity, typed, evaluated, field?.units)
      : showWorked(quantity, unitsFor(quantity, field, evaluated.unit), systems, figures, false)
    const rest: PublishedNumber = { ...number }
    Reflect.deleteProperty(rest, 'shownOther')
    Reflect.deleteProperty(rest, 'displayOther')
    return {
      ...rest,
      ...alias,
      firmness,
      value: quantity?.value ?? null,
      unit:
        quantity === null
          ? ''
          : quantity.of === undefined
            ? displayUnit({ ...quantity }, 'metric')
            : dimensions[quantity.of].si,
      ...(quantity?.of === undefined ? {} : { of: quantity.of }),
      vector: quantity?.vector ?? number.vector,
      flavour: quantity?.flavour ?? number.flavour,
      ...shownAs,
      figures,
      plusMinus,
      now: quantity?.value ?? null,
    }
  }

  function amountOf(number: PublishedNumber): number | null {
    if (number.plusMinusShown === undefined) return null
    const read = parseQuantity(number.plusMinusShown)
    if (!read.ok) {
      report(number, {
        rule: read.rule,
        text: `the ±: ${read.text}`,
        ...(read.hint === undefined ? {} : { hint: read.hint }),
      })
      return null
    }
    const value = ownValue(number.id).quantity
    if (read.unit === '%') return value === null ? null : Math.abs(value.value) * read.value
    if (value !== null && !value.vector.every((power, index) => power === read.vector[index])) {
      report(number, {
        rule: 'wrong-dimension',
        text: `the ± \`${number.plusMinusShown}\` is not of the same kind as the value \`${number.typed ?? ''}\``,
      })
      return null
    }
    // A ± is a difference: `± 1 °C` is one kelvin.
    if (read.flavour === 'temperature') return toDifference(read.unit, read.typed)
    return read.value
  }

  return {
    published: {
      ...published,
      numbers: all.sort(byId),
      blocks: [...blocks.values()].map((block) => doneBlocks.get(block.id) ?? block).sort(byId),
    },
    problems: problems.sort(byPlace),
  }
}

interface Computed {
  readonly outputs: Readonly<Record<string, OutputValue>>
  readonly findings: ReturnType<Calculator['findings']>
  readonly working: readonly string[]
  readonly hazards: readonly string[]
}

/** What a block says when something that it needs is not known. */
function cannotTell(calculator: Calculator, missing: readonly string[]): Computed {
  const why =
    missing.length === 0
      ? 'Cannot tell.'
      : `Cannot tell: ${[...new Set(missing)].join(', ')} not known.`
  return {
    outputs: Object.fromEntries(
      Object.entries(calculator.outputs).map(([name, { type }]) => [
        name,
        type === 'table' ? [] : undefined,
      ]),
    ),
    findings: Object.keys(calculator.checks).map((check) => ({
      check,
      level: 'unknown',
      text: why,
      threshold: '',
    })),
    working: [],
    hazards: calculator.hazards,
  }
}

/** A calculator must not give NaN or infinity; if it does, the value is not known. */
function finite(outputs: Readonly<Record<string, OutputValue>>): Record<string, OutputValue> {
  const known = <T>(value: T): T | undefined =>
    typeof value === 'number' && !Number.isFinite(value) ? undefined : value
  return Object.fromEntries(
    Object.entries(outputs).map(([name, value]) => [
      name,
      Array.isArray(value)
        ? value.map((row: Readonly<Record<string, number | string | undefined>>) =>
            Object.fromEntries(Object.entries(row).map(([key, cell]) => [key, known(cell)])),
          )
        : known(value),
    ]),
  )
}

const wordsOf = (quantity: Quantity): string =>
  quantity.of === undefined
    ? `a value in ${displayUnit(quantity, 'metric')}`
    : dimensions[quantity.of].words

/** NaN or infinite, or a table with such a cell. */
function hasNoNumber(value: OutputValue): boolean {
  if (Array.isArray(value))
    return value.some((row: Readonly<Record<string, number | string | undefined>>) =>
      Object.values(row).some(hasNoNumber),
    )
  return typeof value === 'number' && !Number.isFinite(value)
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

function defaultIds(given: Given): string[] {
  if (given.type === 'number') return given.how === 'assumed-default' ? [given.id] : []
  return given.type === 'rows'
    ? given.rows.flatMap((row) => Object.values(row).flatMap(defaultIds))
    : []
}

function leastFigures(roots: readonly Evaluated[]): number {
  const counted = roots.filter(({ given, figures }) => !given && figures !== null)
  if (counted.length === 0) return 3
  return Math.max(2, Math.min(...counted.map(({ figures }) => figures ?? 3)))
}

function unitsFor(
  quantity: Quantity | null,
  field: NumberField | undefined,
  unit: string | undefined,
): readonly [string, string] {
  if (field !== undefined) return field.units
  if (quantity === null) return ['', '']
  if (unit !== undefined && unit !== '' && unitOf(unit)?.flavour === quantity.flavour) {
    const usual: readonly [string, string] = [
      displayUnit(quantity, 'metric'),
      displayUnit(quantity, 'us'),
    ]
    return usual.includes(unit) ? usual : [unit, unit]
  }
  return [displayUnit(quantity, 'metric'), displayUnit(quantity, 'us')]
}

function toDifference(unit: string, typed: string): number | null {
  const read = parseQuantity(typed.replace(unit, '').trim() + ` Δ${unit}`)
  return read.ok ? read.value : null
}

function plainRecord(values: Readonly<Record<string, OutputValue>>): Record<string, PlainValue> {
  const plain = (value: number | string | undefined): number | string | null => value ?? null
  const made: Record<string, PlainValue> = {}
  for (const [name, value] of Object.entries(values)) {
    if (value === undefined) continue
    made[name] =
      typeof value === 'object'
        ? value.map((row) =>
            Object.fromEntries(
              Object.entries(row).flatMap(([key, cell]) =>
                cell === undefined ? [] : [[key, plain(cell)]],
              ),
            ),
          )
        : plain(value)
  }
  return made
}

const fieldName = (number: PublishedNumber): string =>
  `\`${number.name.slice(number.name.indexOf('.') + 1)}\``

/** `note/block.field…` -> `note/block`. */
function blockIdOf(id: string): string {
  const dot = id.indexOf('.', id.indexOf('/'))
  return dot < 0 ? id : id.slice(0, dot)
}

const byId = (a: { id: string }, b: { id: string }): number =>
  a.id < b.id ? -1 : a.id > b.id ? 1 : 0
const byPlace = (a: Problem, b: Problem): number =>
  a.file === b.file ? a.line - b.line || a.column - b.column : a.file < b.file ? -1 : 1

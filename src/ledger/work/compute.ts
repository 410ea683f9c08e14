/**
 * Runs a calculator. In: its inputs in SI. Out: results, findings, working and hazards.
 *
 * A calculator should never throw or give NaN or infinity. If one does, that is a fault of the kit and
 * is reported as such; nothing of it reaches a page as a number.
 */
import type { Calculator, Finding, InputValue, OutputValue } from '../../../calculators/define.ts'
import type { PublishedBlock } from '../published.ts'
import { sayFor } from '../say.ts'
import type { WorkContext } from './context.ts'
import { words } from '../../words/words.ts'

interface Computed {
  readonly outputs: Readonly<Record<string, OutputValue>>
  readonly findings: readonly Finding[]
  readonly working: readonly string[]
  readonly hazards: readonly string[]
}

export function compute(
  ctx: WorkContext,
  block: PublishedBlock,
  calculator: Calculator,
  inputs: Readonly<Record<string, InputValue>>,
  currency: string | undefined,
): Computed {
  try {
    const computed = calculator.compute(inputs)
    const outputs = finite(computed)
    const lost = Object.keys(computed).filter((name) => hasNoNumber(computed[name]))
    if (lost.length > 0) {
      const names = lost.map((name) => `\`${name}\``).join(', ')
      reportFault(
        ctx,
        block,
        words`the calculator \`${block.calculator}\` gives no number for ${names} from these inputs; that is a fault of the kit, not of the note`,
      )
    }
    const say = sayFor(ctx.published.site.units, currency)
    const more = calculator.moreHazards?.(inputs, outputs) ?? []
    return {
      outputs,
      findings: calculator.findings(inputs, outputs, say),
      working: calculator.working(inputs, outputs, say),
      hazards: [...new Set([...calculator.hazards, ...more])],
    }
  } catch {
    reportFault(
      ctx,
      block,
      words`the calculator \`${block.calculator}\` failed on these inputs; that is a fault of the kit, not of the note`,
    )
    return cannotTell(calculator, [])
  }
}

function reportFault({ problems }: WorkContext, block: PublishedBlock, text: string): void {
  problems.push({
    rule: 'calculator-fault',
    level: 'error',
    text,
    file: block.file,
    line: block.line,
    column: 1,
  })
}

/** A field that is needed and cannot be told. */
export interface Missing {
  readonly label: string
  readonly why?: string | undefined
}

/** What a block says when something that it needs is not known. */
export function cannotTell(calculator: Calculator, missing: readonly Missing[]): Computed {
  const unknown = [...new Set(missing.filter(isUnknown).map(({ label }) => label))]
  const reasons = new Set(
    missing.flatMap(({ label, why }) =>
      why === undefined ? [] : [words`Cannot tell: ${label}: ${why.replaceAll('`', '')}.`],
    ),
  )
  const sentences = [
    ...(unknown.length === 0 ? [] : [words`Cannot tell: ${unknown.join(', ')} not known.`]),
    ...reasons,
  ]
  const why = sentences.length === 0 ? words`Cannot tell.` : sentences.join(' ')
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

const isUnknown = ({ why }: Missing): boolean => why === undefined

type Cell = number | string | undefined

const isNoNumber = (cell: Cell): boolean => typeof cell === 'number' && !Number.isFinite(cell)
const known = (cell: Cell): Cell => (isNoNumber(cell) ? undefined : cell)

/** The same with undefined in place of NaN and infinity. */
function finite(outputs: Readonly<Record<string, OutputValue>>): Record<string, OutputValue> {
  return Object.fromEntries(
    Object.entries(outputs).map(([name, value]) => [
      name,
      typeof value === 'object' ? value.map(finiteRow) : known(value),
    ]),
  )
}

const finiteRow = (row: Readonly<Record<string, Cell>>): Record<string, Cell> =>
  Object.fromEntries(Object.entries(row).map(([key, cell]) => [key, known(cell)]))

const hasNoNumber = (value: OutputValue): boolean =>
  typeof value === 'object'
    ? value.some((row) => Object.values(row).some(isNoNumber))
    : isNoNumber(value)

/**
 * What a reader's figure goes into: a number of the text or the input of a block. In: its id and the
 * builder's ledger. Out: the field it has to fit, what it is called, what the builder gave; and whether
 * a figure will do, in the words of the build.
 */
import type { Field, NumberField } from '../../calculators/define.ts'
import type { CardContext } from '../card/context.ts'
import { blockInput } from '../card/input-id.ts'
import { labelOf } from '../card/words.ts'
import { isDeclared } from '../ledger/override.ts'
import { slipWords } from '../ledger/input.ts'
import { calculatorIn } from '../ledger/in-currency.ts'
import type { PublishedBlock, PublishedNumber } from '../ledger/published.ts'
import { displayUnit, parseQuantity, sameKind } from '../quantity/index.ts'
import { judge, type Said } from './judge.ts'
import type { Figure } from './own.ts'
import { textsOf, type Texts } from './texts.ts'
import { words } from '../words/words.ts'

export interface Target {
  readonly id: string
  readonly label: string
  /** Undefined for a quantity without a name of the trade, such as W/K². */
  readonly field: Field | undefined
  readonly number: PublishedNumber | undefined
  readonly block: PublishedBlock | undefined
  readonly key: string
  /** What the builder gave. */
  readonly builder: Figure
}

export function targetOf(id: string, ctx: CardContext): Target | undefined {
  const number = ctx.number(id)
  if (number !== undefined && isDeclared(number)) return declaredTarget(number, ctx)
  const input = blockInput(id)
  const block = input && ctx.block(input.block)
  const written = block && ctx.calculator(block.calculator)
  const calculator = written && calculatorIn(written, block.currency)
  // A link may name what every object has, such as `constructor`.
  const isInput = input && calculator && Object.hasOwn(calculator.inputs, input.key)
  const field = isInput === true ? calculator.inputs[input.key] : undefined
  if (input === undefined || block === undefined || field === undefined) return undefined
  const texts = textsOf(block, { [input.key]: field }, (one) => ctx.number(one))
  return {
    id,
    label: field.label,
    field,
    number,
    block,
    key: input.key,
    builder: texts[input.key] ?? '',
  }
}

function declaredTarget(number: PublishedNumber, ctx: CardContext): Target {
  const label = labelOf(number, ctx)
  return {
    id: number.id,
    label,
    field: declaredField(number, label),
    number,
    block: undefined,
    key: number.name,
    builder: number.typed ?? '',
  }
}

function declaredField(number: PublishedNumber, label: string): NumberField | undefined {
  const { of, value, vector, flavour } = number
  if (of === undefined) return undefined
  const quantity = { value: value ?? 0, vector, flavour, of }
  const all = [-Infinity, Infinity] as const
  return {
    type: 'number',
    label,
    symbol: '',
    of,
    units: [displayUnit(quantity, 'metric'), displayUnit(quantity, 'us')],
    hard: all,
    usual: all,
    help: '',
  }
}

/** What there is to say of a figure, by the name of its control; without fault: nothing. */
export function figureSaid(target: Target, figure: Figure): ReadonlyMap<string, Said> {
  const { field, key, number } = target
  if (field !== undefined) {
    const texts: Texts = { [key]: figure }
    const fits = (field.type === 'list') === (typeof figure === 'object')
    return fits
      ? judge({ [key]: field }, texts)
      : new Map([[key, { level: 'error', text: words`This is of another form now.` }]])
  }
  const read = parseQuantity(typeof figure === 'string' ? figure : '')
  if (!read.ok)
    return new Map([[key, { level: 'error', text: slipWords(read).replaceAll('`', '') }]])
  return number !== undefined && sameKind(read, number)
    ? new Map()
    : new Map([[key, { level: 'error', text: words`a value in ${number?.display ?? ''} is due` }]])
}

export const isWrong = (said: ReadonlyMap<string, Said>): boolean =>
  [...said.values()].some(({ level }) => level === 'error')

/** A figure in a line of text. */
export const figureText = (figure: Figure): string =>
  typeof figure === 'string'
    ? figure === ''
      ? words`left out`
      : figure
    : figure
        .map((row) =>
          Object.values(row)
            .filter((text) => text !== '')
            .join(', '),
        )
        .join('; ') || words`no rows`

/**
 * The words of the page: kinds, firmness, verdicts, dates, names. One place, because the build, the
 * browser and the tests must say the same. No verdict says more than that the checks were passed.
 */
import type { Level } from '../../calculators/define.ts'
import type {
  Firmness,
  Kind,
  PlainValue,
  PublishedBlock,
  PublishedNumber,
  Status,
} from '../ledger/published.ts'
import type { CardContext } from './context.ts'
import { words } from '../words/words.ts'
import { language } from '#words'

export const cannotTell = words`cannot tell`

export const kindWords: Readonly<Record<Kind, string>> = {
  reading: words`measured`,
  rated: words`from a sheet`,
  assumed: words`a guess`,
  chosen: words`chosen`,
  worked: words`worked out`,
}

const workedFrom: Readonly<Record<Firmness, string>> = {
  reading: words`worked out from measurements`,
  rated: words`worked out, as firm as a sheet`,
  chosen: words`worked out from choices`,
  assumed: words`worked out, rests on a guess`,
}

/** `measured`, `worked out, rests on a guess`. */
export function howWords(number: Pick<PublishedNumber, 'kind' | 'firmness'>): string {
  return number.kind === 'worked' ? workedFrom[number.firmness] : kindWords[number.kind]
}

export const levelWords: Readonly<Record<Level, string>> = {
  pass: words`pass`,
  watch: words`watch`,
  stop: words`stop`,
  unknown: cannotTell,
}

export type VerdictName = Level | 'provisional' | 'accepted'

type Judged = Pick<PublishedBlock, 'verdict' | 'provisional' | 'accepted'>

/** Which of the six frames a block's verdict stands in. */
export function verdictName(block: Judged): VerdictName {
  if (block.verdict === 'stop') return block.accepted === null ? 'stop' : 'accepted'
  return block.verdict === 'pass' && block.provisional ? 'provisional' : block.verdict
}

export const verdictWords: Readonly<Record<VerdictName, string>> = {
  ...levelWords,
  provisional: words`pass, provisional`,
  accepted: words`STOP, accepted by the builder`,
}

export const statusWords: Readonly<Record<Status, string>> = {
  planned: words`planned`,
  doing: words`under way`,
  done: words`done`,
  redone: words`done again`,
  abandoned: words`given up`,
}

/** The same where nothing stands before it. */
export const statusHeads: Readonly<Record<Status, string>> = {
  planned: words`Planned`,
  doing: words`Under way`,
  done: words`Done`,
  redone: words`Done again`,
  abandoned: words`Given up`,
}

/** Of hazards, as they are printed. */
export const signalWords = {
  DANGER: words`DANGER`,
  WARNING: words`WARNING`,
  CAUTION: words`CAUTION`,
  NOTICE: words`NOTICE`,
} as const

/** While writing; nothing of a draft is in a finished site. */
export const draftWords = words`Draft, not published.`

const months = [
  words`January`,
  words`February`,
  words`March`,
  words`April`,
  words`May`,
  words`June`,
  words`July`,
  words`August`,
  words`September`,
  words`October`,
  words`November`,
  words`December`,
]

/** `2026-03-14` -> `14 March 2026`; any other text as it is. */
export function dateWords(date: string): string {
  const [, year, month, day] = /^(\d{4})-(\d\d)-(\d\d)$/.exec(date) ?? []
  const name = months[Number(month) - 1]
  return year === undefined || name === undefined ? date : words`${Number(day)} ${name} ${year}`
}

/** `pumpDraw` -> `pump draw`; an abbreviation keeps its capitals. */
export function nameWords(name: string): string {
  return name
    .replace(/_+/g, ' ')
    .replace(/(\p{Ll}|\p{N})(\p{Lu})/gu, '$1 $2')
    .replace(/\p{Lu}(?=\p{Ll})/gu, (letter) => letter.toLowerCase())
    .trim()
}

/** A sum in prose: its name is what it is worked from. */
export function isSum(number: PublishedNumber): boolean {
  return (
    number.expression !== undefined &&
    number.block === null &&
    number.part === undefined &&
    !/^[\p{L}_$][\p{L}\p{N}_$]*$/u.test(number.name)
  )
}

const figuresOfParts: Readonly<Record<string, string>> = {
  quantity: words`how many`,
  price: words`price of one`,
  cost: words`price of all`,
  mass: words`mass of one`,
  totalMass: words`mass of all`,
  x: words`behind the front axle`,
  z: words`height`,
  load: words`current of one`,
  totalLoad: words`current of all`,
  power: words`power of one`,
  totalPower: words`power of all`,
  duty: words`on for`,
  surge: words`start multiple`,
}

const figureWords = (figure: string): string => figuresOfParts[figure] ?? nameWords(figure)

/** What a reader calls a number: the field's label within a block, else its name in words. */
export function labelOf(number: PublishedNumber, ctx: CardContext): string {
  if (number.part !== undefined)
    return `${number.part}, ${figureWords(number.name.slice(number.name.indexOf('.') + 1))}`
  const block = number.block === null ? undefined : ctx.block(number.block)
  const calculator = block && ctx.calculator(block.calculator)
  if (!block || !calculator) return nameWords(number.name)
  const [key = '', row, column = ''] = number.id.slice(block.id.length + 1).split('.')
  const field = calculator.inputs[key] ?? calculator.outputs[key]
  if (field === undefined) return nameWords(number.name)
  if (row === undefined) return field.label
  const index = Number(row)
  if (field.type === 'list') {
    const name = rowName(block.inputs[key], field.fields, index) ?? `${field.row} ${index + 1}`
    return `${name}, ${lower(field.fields[column]?.label ?? column)}`
  }
  if (field.type === 'table') {
    const name = rowName(block.outputs[key], field.columns, index) ?? words`row ${index + 1}`
    return `${field.label}, ${name}, ${lower(field.columns[column]?.label ?? column)}`
  }
  return field.label
}

/** What a row is called: its first text, when it has one. */
export function rowName(
  rows: PlainValue | undefined,
  columns: Readonly<Record<string, { readonly type: string }>>,
  index: number,
): string | undefined {
  const key = Object.keys(columns).find((one) => columns[one]?.type === 'text')
  const name = typeof rows === 'object' && key !== undefined ? rows?.[index]?.[key] : undefined
  return typeof name === 'string' && name !== '' ? name : undefined
}

/** A label within a sentence, which English writes without its capital; an abbreviation keeps them. */
export function lower(label: string): string {
  return /^en\b/.test(language) && /^\p{Lu}\p{Ll}/u.test(label)
    ? label.charAt(0).toLowerCase() + label.slice(1)
    : label
}

/** With a capital, for the start of a sentence. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}

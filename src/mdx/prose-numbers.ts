/**
 * Numbers with units in a stretch of prose, and which of them are only names.
 *
 * In: plain text (markup taken out) and the site's list of nominals. Out: each find with its offsets and
 * how it is to be taken. Years, dates, money, counts, threads, grades, standards, part numbers and
 * category codes are no finds at all. A torque, current, voltage or pressure is dropped only where
 * the words around it leave no doubt.
 */
import { unitAt, type ProseUnit } from './prose-units.ts'
import { spelledAt, spelledStart } from './spelled.ts'

export interface Find {
  readonly start: number
  readonly end: number
  readonly typed: string
  /** Ready for an element: `5 A`; two for a range. */
  readonly values: readonly string[]
  readonly danger: boolean
  /** The name of a size: listed, not reported. */
  readonly nominal: boolean
}

/** Prose that only points at things: sizes in it are names. A danger is one everywhere. */
export interface Setting {
  readonly nominals: readonly string[]
  readonly pointing?: boolean
}

const fraction = '½¼¾⅓⅔⅛⅜⅝⅞'
const plain = String.raw`\d{1,3}(?:[,'\u00A0\u2009\u202F]\d{3})+(?!\d)(?:\.\d+)?|\d+[ \u00A0-]\d+[/⁄]\d+|\d+[/⁄]\d+|\d*[${fraction}]|\d+(?:[.,]\d+)?|[.,]\d+`
const joint = String.raw`[ \u00A0]?(?:-|–|—|\.\.\.?|…|±|\+/-|[x×/])[ \u00A0]?|[ \u00A0](?:to|or|and|by)[ \u00A0]`
const digits = new RegExp(`[-+−±~≈<>≤≥]?[ \\u00A0]?(?:${plain})(?:(?:${joint})(?:${plain}))*`, 'uy')
const oneNumber = new RegExp(plain, 'gu')

export function findNumbers(text: string, setting: Setting): readonly Find[] {
  const finds: Find[] = [...listedWords(text, setting.nominals)]
  const taken = (start: number, end: number) =>
    finds.some((one) => start < one.end && end > one.start)
  let at = 0
  while (at < text.length) {
    const size = threadAt(text, at)
    if (size > 0) {
      at += size
      continue
    }
    const read = numberAt(text, at)
    if (!read) {
      at += 1
      continue
    }
    const unit = unitAt(text, read.end)
    if (!unit || !counts(text, read, unit)) {
      // The last number of `24 or 5 A` has the unit: try again behind the first.
      at = read.spelled ? read.start + spelledStart(text, read.start) : firstEnd(text, read)
      continue
    }
    at = unit.end
    if (!taken(read.start, unit.end)) finds.push(toFind(text, read, unit, setting))
  }
  return finds.toSorted((a, b) => a.start - b.start)
}

interface NumberRead {
  readonly start: number
  readonly end: number
  readonly spelled: boolean
  /** `2 x …`: the first number may be a count. */
  readonly counted?: boolean
  /** As digits. */
  readonly numbers: readonly string[]
}

function numberAt(text: string, at: number): NumberRead | undefined {
  const sign = text[at] ?? ''
  if (/[\p{L}]/u.test(sign)) {
    const spelled = spelledAt(text, at)
    return spelled && { start: at, end: spelled.end, spelled: true, numbers: spelled.numbers }
  }
  if (!/[-+−±~≈<>≤≥\d½¼¾⅓⅔⅛⅜⅝⅞.,]/.test(sign)) return undefined
  if (!mayBegin(text, at)) return undefined
  digits.lastIndex = at
  const found = digits.exec(text)?.[0]
  if (found === undefined) return undefined
  const numbers = found.match(oneNumber) ?? []
  // `2 x 12 V` is a count and a voltage; `25 x 3 mm` are two lengths.
  const counted = /^\d[ \u00A0]?[x×]/.test(found) && numbers.length === 2
  return { start: at, end: at + found.length, spelled: false, numbers, counted }
}

const threadSize = /(?:#\d{1,2}|\d{1,2}[/⁄]\d{1,2})[-–]\d{1,2}(?![\d.,/⁄])/y

/** How long a thread at `at` is: `1/4-20 to 90 lb·in` is no range. With a unit behind it is none. */
function threadAt(text: string, at: number): number {
  threadSize.lastIndex = at
  const { length } = threadSize.exec(text)?.[0] ?? ''
  return length > 0 && mayBegin(text, at) && unitAt(text, at + length) === undefined ? length : 0
}

/** Not inside a word, another number or a sum of money. */
function mayBegin(text: string, at: number): boolean {
  const before = behind(text, at)
  if (/[\p{L}\p{N}_#$€£¥]$/u.test(before) || /[$€£¥]\s$/.test(before)) return false
  if (/\d[.,:]$/.test(before)) return false
  // The sign of `BX-12`: only a number's own sign stands behind a space or bracket.
  return !(/[-+−<>]/.test(text[at] ?? '') && /[\p{L}\p{N})]$/u.test(before))
}

/** `BX-12V`, `RX-48V-20`: an order code. `mid-12 V` and `DC-12 V` are voltages. */
function isCode(
  before: string,
  { danger, start, hyphenated }: ProseUnit,
  numberEnd: number,
): boolean {
  const word = /([\p{L}\p{N}]+)[-–]$/u.exec(before)?.[1]
  if (word === undefined || !(/\d/.test(word) || /^\p{Lu}+$/u.test(word))) return false
  return !danger || hyphenated || start === numberEnd
}

/** What stands just before: enough to judge by, and no more, or a long text takes for ever. */
function behind(text: string, at: number): string {
  return text.slice(Math.max(0, at - 80), at)
}

function firstEnd(text: string, { start, end }: NumberRead): number {
  oneNumber.lastIndex = start
  const first = oneNumber.exec(text.slice(0, end))
  oneNumber.lastIndex = 0
  return first ? first.index + first[0].length : end
}

const standards =
  /\b(?:ISO|SAE|EN|IEC|DIN|UL|ABYC|ASTM|CFR|ECE|BS|UN|NFPA|JIS|FMVSS|IEEE|VDE)[- ]?$/
const category =
  /\bCAT\.?[ \u00A0]*(?:I{1,3}|IV|[1-4])[\s\u00A0,/(:-]*(?:\d+[ \u00A0]?V[\s\u00A0,/]*)*$/i
const reference =
  /(?:\b(?:section|sect?\.|clause|page|pp?\.|table|fig(?:ure|\.)?|chapter|ch\.|annex|appendix|article|art\.|paragraph|para\.?|rule|step|row|exhibit)|§)\s*$/i
const thread =
  /(?:\bM\d+(?:\.\d+)?|\d\/\d+-\d+|#\d+(?:-\d+)?)\s*[x×]\s*(?:\d+(?:\.\d+)?\s*[x×]\s*)?$/
const orderCode = /\b(?:part|order|model|code|serial|item|type|no|number)s?\.?[:\s]*$/i
const paid =
  /\b(?:cost|costs|paid|pay|spent|price|worth|sold|bought|asked|wanted|charged?)\b[^.]{0,40}$/i

/** Whether it is a quantity at all. */
function counts(text: string, read: NumberRead, unit: ProseUnit): boolean {
  const { start, end, numbers, spelled } = read
  const before = behind(text, start)
  if (isCode(before, unit, end)) return false
  const after = text.slice(unit.end)
  const typed = text.slice(unit.start, unit.end)
  if (spelled && !unit.danger) return unit.hyphenated
  if (standards.test(before) || category.test(before) || thread.test(before)) return false
  if (unit.unit === 'V' && /^[\s\u00A0,/(]*CAT\b/.test(after)) return false
  if (
    unit.what === 'length' &&
    /^\.?[ \u00A0-](?:NPT|BSP|UNC|UNF|JIC|AN\b|flare|thread)/.test(after)
  )
    return false
  if (typed.length === 1 && /[A-Za-z]/.test(typed) && reference.test(before)) return false
  if (orderCode.test(before) && /^-\d/.test(after)) return false
  if (/^pounds?$/i.test(typed)) {
    if (paid.test(before) || /^ (?:well )?(?:spent|each|cheaper|for it|sterling)\b/.test(after))
      return false
  }
  if (/^bars?$/i.test(typed)) return isPressure(text, read, unit)
  if (unit.unit === '%' && numbers.at(-1) === '100') {
    return !/^ (?:sure|certain|happy|convinced|positive|there)\b/.test(after)
  }
  return true
}

/** Bars are also pieces of metal and soap. */
function isPressure(text: string, read: NumberRead, unit: ProseUnit): boolean {
  const many = /s$/i.test(text.slice(unit.start, unit.end))
  if (many && /^ of (?!pressure|boost|vac|air|water)/i.test(text.slice(unit.end))) return false
  if (/\bclause\s*$/i.test(behind(text, read.start))) return false
  const countable = many || /\bone$/i.test(text.slice(read.start, read.end))
  if (!read.spelled || !countable) return true
  return /pressur|psi|pump|tyre|tire|gauge|leak|boost|cap\b|vacuum/i.test(text)
}

function toFind(text: string, read: NumberRead, unit: ProseUnit, setting: Setting): Find {
  const lead = /^[<>≤≥]?[ \u00A0]?/.exec(text.slice(read.start, read.end))?.[0].length ?? 0
  const start = read.start + (/[<>≤≥ \u00A0]/.test(text[read.start] ?? '') ? lead : 0)
  return {
    start,
    end: unit.end,
    typed: text.slice(start, unit.end),
    values: spread(signed(text, read, amounts(read, unit))).map(
      (number) => `${number} ${unit.unit}`,
    ),
    danger: unit.danger,
    nominal: isNominal(text, read, unit, setting),
  }
}

/** `−5 °C` is not 5 °C; a dash that stands off by a space is one of the sentence. */
function signed(text: string, { start }: NumberRead, numbers: readonly string[]) {
  const [first = '', ...more] = numbers
  return /^[-−]\S/.test(text.slice(start, start + 2)) ? [`-${first}`, ...more] : numbers
}

function amounts({ numbers, counted }: NumberRead, { what }: ProseUnit): readonly string[] {
  return counted === true && what !== 'length' ? numbers.slice(1) : numbers
}

/** The ends of a range; `12/24 V` are two voltages, `3/8 in` is one length. */
function spread(numbers: readonly string[]): readonly string[] {
  return numbers.flatMap((number) => {
    const parts = /^(-?\d+)[/⁄](\d+)$/.exec(number)
    const below = Number(parts?.[2])
    if (parts && ![2, 3, 4, 8, 16, 32, 64].includes(below)) return [parts[1] ?? '', parts[2] ?? '']
    return [asDigits(number)]
  })
}

/** As a value is written in an element: a point for a decimal comma, thousands joined. */
const asDigits = (number: string): string =>
  number
    .replace(/(\d)['\u00A0\u2009\u202F](?=\d{3})/g, '$1')
    .replace(/^-?[1-9]\d{0,2}(?:,\d{3})+(?!\d)/, (found) => found.replaceAll(',', ''))
    .replace(',', '.')
    .replace(/^(-?)\./, '$10.')

function isNominal(text: string, read: NumberRead, unit: ProseUnit, setting: Setting): boolean {
  const [number = '', ...others] = amounts(read, unit)
  if (!read.spelled && others.length === 0) {
    const same = setting.nominals.some((nominal) => isSame(nominal, number, unit))
    if (same) return true
  }
  const after = text.slice(unit.end)
  if (unit.danger) return unit.hyphenated && unit.what !== 'torque' && namesAPart(after)
  return (
    unit.hyphenated ||
    setting.pointing === true ||
    (unit.what === 'length' && isTool(after)) ||
    (unit.what === 'time' && isTelling(behind(text, read.start), after, read)) ||
    (unit.unit === '°' &&
      /^ (?:elbow|bend|fitting|angle|turn|connector|hose|valve|mitre|miter)/.test(after)) ||
    (unit.unit === 'L' && /^ (?:engine|motor|diesel|petrol|turbo|four\b|six\b|V\d)/.test(after))
  )
}

function isSame(nominal: string, number: string, unit: ProseUnit): boolean {
  const read = numberAt(nominal, 0)
  if (read?.numbers.length !== 1 || read.numbers[0] !== number) return false
  const other = unitAt(nominal, read.end)
  return other?.unit === unit.unit && other.end === nominal.length
}

const measured =
  /^(?:drop|draw|sag|loss|rise|difference|load|current|reading|surge|spike|leak|ripple|limit|gap|increase|decrease|swing|overshoot|peak|pull|dip|offset|error|change|jump)s?$/i
const joining =
  /^(?:at|on|in|when|and|or|to|from|is|was|are|were|with|for|under|over|but|then|if|as|than|while|after|before|by|per|of|max|min)$/i

/** `12-volt battery`, not `2-volt drop` nor `15-psi and sticks`. */
function namesAPart(after: string): boolean {
  const next = /^ ([\p{L}-]+)(?: ([\p{L}-]+))?/u.exec(after)
  if (!next?.[1] || joining.test(next[1]) || measured.test(next[1])) return false
  return !measured.test(next[2] ?? '')
}

const tools =
  /^(?:spanner|wrench|socket|drill|bit|hole|holesaw|tap|die|reamer|punch|hex|key|allen|ratchet|driver|screwdriver|bolt|nut|screw|stud|washer|rivet|cutter|countersink|chisel)s?$/i
const between =
  /^(?:of|from|to|above|below|in|on|at|and|or|the|a|an|into|over|under|past|between|away|behind|off|apart|is|was|too|wide|long|for|with)$/i

/** `13 mm spanner`, `8 mm cobalt drill bit`: a tool within three words, with nothing between. */
function isTool(after: string): boolean {
  const words =
    /^((?:[ \u00A0-][\p{L}-]+){1,3})/u
      .exec(after)?.[1]
      ?.trim()
      .split(/[ \u00A0]/) ?? []
  for (const word of words) {
    if (between.test(word)) return false
    if (word.split('-').some((part) => tools.test(part))) return true
  }
  return false
}

const tellingAfter =
  /^ (?:later|ago|earlier|before|after|job|drive|break|wait|walk|mark|ride|or so|straight|each|early|late|into|in\b|of|long|a (?:day|week|month|year))/i
const tellingBefore =
  /\b(?:after|for|took|takes?|wait(?:s|ed|ing)?|every|another|within|spent|next|last|first|each)(?: (?:about|around|some|the|a|another|maybe|over|nearly|at least))? *$/i

/** Time as one tells a story, not as one measures a process. */
function isTelling(before: string, after: string, { numbers }: NumberRead): boolean {
  if (numbers.some((number) => /[.,]/.test(number))) return false
  return tellingAfter.test(after) || tellingBefore.test(before)
}

/** Nominals that are words: `half-inch`. Spaces and hyphens are alike. */
function listedWords(text: string, nominals: readonly string[]): readonly Find[] {
  return nominals
    .filter((nominal) => !/\d/.test(nominal) && nominal.trim() !== '')
    .flatMap((nominal) => {
      const parts = nominal.trim().split(/[\s-]+/)
      const source = parts
        .map((part) => part.replace(/[^\p{L}\p{N}]/gu, String.raw`\$&`))
        .join('[-\\s]+')
      const pattern = new RegExp(String.raw`(?<![\p{L}\p{N}])${source}(?![\p{L}\p{N}])`, 'giu')
      return [...text.matchAll(pattern)].map(({ 0: typed, index }) => ({
        start: index,
        end: index + typed.length,
        typed,
        values: [],
        danger: false,
        nominal: true,
      }))
    })
}

/**
 * Text to quantity: `1 1/2 in`, `65 °C`, `30 psi gauge`, `0.3 mΩ/ft`, `18 AWG`.
 *
 * In: text as a builder types it, and what is due. Out: the SI value with what was typed, or a slip
 * that says in one sentence what was read and why it will not do. Nothing is guessed but what can be
 * meant in one way only, and then `remark` says so.
 */
import { toSI } from './convert.ts'
import { dimensions, fits, nameOf } from './dimensions.ts'
import { explain } from './explain.ts'
import { nearestName } from './nearest.ts'
import { readNumber } from './number.ts'
import { axes, currencies } from './table.ts'
import { tidy, tidyUnit } from './tidy.ts'
import type { Of, ParsedQuantity, Slip } from './types.ts'
import { isUnit, readUnit, unitNames, type Unit } from './unit.ts'
import { currencyAt, inFirstCurrency, none } from './vector.ts'
import { oneOf } from '../words/lists.ts'
import { words } from '../words/words.ts'

type Read = ParsedQuantity | Slip

/** A ledger reads the same texts again and again; more than a large site holds is not kept. */
const mostKept = 5000
const kept = new Map<string, Read>()

export function parseQuantity(text: string, of?: Of): Read {
  const key = `${of ?? ''}:${text}`
  const before = kept.get(key)
  if (before !== undefined) return before
  const read = readQuantity(text, of)
  if (kept.size >= mostKept) kept.clear()
  kept.set(key, read)
  return read
}

function readQuantity(text: string, of?: Of): Read {
  const typed = text.trim()
  const slip = (rule: string, why: string, hint?: string): Slip => ({
    ok: false,
    rule,
    text: why,
    ...(of && { allowed: allowed(of) }),
    ...(hint !== undefined && { hint }),
  })
  if (typed.length > 100)
    return slip(
      'not-a-quantity',
      words`\`${typed.slice(0, 20)} …\` is too long for a number with a unit`,
    )
  const tidied = unitLast(tidy(text))
  const gauge = /^(\d+\/0|\d+(?:\.\d+)?) ?AWG$/i.exec(tidied)?.[1]
  const read = readNumber(gauge === undefined ? tidied : tidied.replace(/.*(?=AWG)/i, '1 '), typed)
  if (!read.ok) return slip(read.rule, read.text, read.hint)
  const { digits, rest, withPoint } = read
  const number = gauge === undefined ? read.number : gaugeNumber(gauge)
  const figures = gauge === undefined ? read.figures : Infinity
  if (number === undefined)
    return slip(
      'no-such-size',
      words`\`${typed}\` is not a size of the American wire gauge`,
      words`the sizes run from 40 to 1, then 1/0 to 4/0`,
    )

  if (rest === '') return plain()
  const said = tidyUnit(rest)
  if (/(?<![/^\w-])\d/.test(said.replace(/^1\//, '/'))) {
    const joined = /^\d{3}(?: \d{3})*(?!\d)/.exec(rest)?.[0]
    const hint =
      joined &&
      words`did you mean \`${digits}${joined.replaceAll(' ', '')}${rest.slice(joined.length)}\`?`
    return slip(
      'two-quantities',
      words`\`${typed}\` holds more than one number`,
      hint ?? words`write one number and its unit`,
    )
  }

  const letter = /^°? ?([CF]|celsius|centigrade|fahrenheit)$/i.exec(said)?.[1]?.[0]?.toUpperCase()
  if (letter !== undefined && said.length === 1 && of === undefined) {
    return slip(
      'ambiguous-unit',
      letter === 'C'
        ? words`\`${typed}\` could be in °C or in coulombs`
        : words`\`${typed}\` could be in °F or in farads`,
      words`write ${oneOf([`°${letter}`, letter === 'C' ? 'coulomb' : 'farad'].map((unit) => `\`${digits} ${unit}\``))}`,
    )
  }
  const electric = (said === 'C' && of === 'charge') || (said === 'F' && of === 'capacitance')
  const unit = readUnit(letter === undefined || electric ? said : `°${letter}`)
  if (!isUnit(unit)) {
    if ('instead' in unit)
      return slip(
        'ambiguous-unit',
        words`\`${said}\` can be read in two ways`,
        words`did you mean \`${digits} ${unit.instead}\`?`,
      )
    return slip(
      'unknown-unit',
      words`\`${unit.unknown}\` is not a unit known here`,
      meant(said, unit.unknown),
    )
  }
  // Where money is due, a sum in any one currency will do.
  if (of === undefined || fits(of, { ...unit, vector: inFirstCurrency(unit.vector) })) {
    const bare = said.length === 1 && unit.flavour === 'temperature'
    return quantity(unit, bare ? words`\`${typed}\` is read as ${digits} ${unit.name}` : undefined)
  }
  const forceful = readUnit(
    said.replace(/\b(lbs?|kg)(?=\/)/, (mass) => `${mass.replace('s', '')}f`),
  )
  if (isUnit(forceful) && fits(of, forceful))
    return quantity(forceful, words`\`${typed}\` is read as ${digits} ${forceful.name}`)
  const { rule, text: why, hint } = explain(typed, digits, unit, of)
  return slip(rule, why, hint)

  /** The nearest unit that would do here; direct and alternating current are no units. */
  function meant(said: string, unknown: string): string | undefined {
    const current = /[ ·]?(?:[AD]C|RMS|peak)$/i
    const tries = current.test(said)
      ? [said.replace(current, '')]
      : unitNames.map((name) => said.replace(unknown, name))
    const known = tries.filter((name) => {
      const unit = readUnit(name)
      return name !== '' && isUnit(unit) && (of === undefined || fits(of, unit))
    })
    const near = current.test(said) ? known[0] : nearestName(said, known)
    return near === undefined ? undefined : words`did you mean \`${digits} ${near}\`?`
  }

  function plain(): Read {
    const whole = /^[+-]?\d+$/.test(digits)
    const due = of ?? 'number'
    if (due !== 'number' && due !== 'fraction')
      return slip('no-unit', words`\`${typed}\` has no unit; ${dimensions[due].words} is due`)
    if (due === 'fraction' && Math.abs(number ?? 0) > 1)
      return slip(
        'more-than-whole',
        words`\`${typed}\` without % is more than the whole`,
        words`did you mean \`${typed} %\`?`,
      )
    return {
      ok: true,
      value: number ?? 0,
      vector: none,
      flavour: 'amount',
      of: due,
      unit: '',
      typed,
      figures: whole ? Infinity : figures,
      ...(withPoint !== undefined && { remark: byComma('') }),
    }
  }

  /** Who is used to decimal commas is off by a thousand, and every other comma is refused. */
  function byComma(unit: string): string {
    const [plain, pointed] = [digits, withPoint ?? ''].map((one) => `${one} ${unit}`.trim())
    return words`\`${typed}\` is read as ${plain ?? ''}: write \`${plain ?? ''}\`, or \`${pointed ?? ''}\` if the comma is a decimal one`
  }

  function quantity(unit: Unit, remark?: string): Read {
    const inWater = of === 'concentration' && unit.name === 'ppm'
    const name = inWater ? 'mg/L' : unit.name
    const value = toSI(number ?? 0, name)
    const isForeign = (currencyAt(unit.vector) ?? 0) > 0
    const { vector, flavour } = of && !isForeign ? dimensions[of] : unit
    const known = isForeign ? undefined : (of ?? nameOf(unit))
    if (!Number.isFinite(value) || (value === 0 && number !== 0 && unit.offset === 0))
      return slip('not-finite', words`\`${typed}\` is not a number that can be worked with`)
    if (value < 0 && (flavour === 'temperature' || flavour === 'absolute'))
      return slip(
        'below-zero',
        flavour === 'absolute'
          ? words`\`${typed}\` is below vacuum`
          : words`\`${typed}\` is below absolute zero`,
      )
    const said = inWater
      ? words`\`${typed}\` is read as ${digits} mg/L, which holds in water`
      : withPoint !== undefined && !isMoney(unit)
        ? byComma(unit.name)
        : remark
    return {
      ok: true,
      value,
      vector,
      flavour,
      ...(known && { of: known }),
      unit: name,
      typed,
      figures,
      ...(said !== undefined && { remark: said }),
    }
  }
}

/** `a flow: L/min or gal/min` */
function allowed(of: Of): string {
  const { words: what, units } = dimensions[of]
  if (of === 'number') return what
  if (of === 'fraction') return words`${what}: % or a number up to 1`
  return `${what}: ${oneOf([...new Set(units)])}`
}

/** `$1,299`, `€ 1,299/m`: thousands of money are set off everywhere. */
const isMoney = ({ vector }: Unit): boolean =>
  vector.slice(axes.length - currencies.length).some((power) => power !== 0)

const before = new RegExp(
  String.raw`^(AWG|[A-Z]{0,2}\$|€|£|USD|${currencies.slice(1).join('|')}) ?([\d.,]+(?:/0)?)`,
  'i',
)

/** `US$ 5/kWh`, `AWG 18`: some units are written first. */
const unitLast = (text: string): string => text.replace(before, '$2 $1')

/** 18; 2/0 and 00 are -1. */
function gaugeNumber(text: string): number | undefined {
  const zeros = /^0+$/.test(text) ? text.length : Number(/^(\d+)\/0$/.exec(text)?.[1] ?? 0)
  const number = zeros > 0 ? 1 - zeros : Number(text)
  return Number.isInteger(number) && number >= -3 && number <= 40 ? number : undefined
}

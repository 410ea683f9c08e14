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
import { currencies } from './table.ts'
import { tidy, tidyUnit } from './tidy.ts'
import type { Of, ParsedQuantity, Slip } from './types.ts'
import { isUnit, readUnit, unitNames, type Unit } from './unit.ts'
import { none } from './vector.ts'

export function parseQuantity(text: string, of?: Of): ParsedQuantity | Slip {
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
      `\`${typed.slice(0, 20)} …\` is too long for a number with a unit`,
    )
  const tidied = unitLast(tidy(text))
  const gauge = /^(\d+\/0|\d+(?:\.\d+)?) ?AWG$/i.exec(tidied)?.[1]
  const read = readNumber(gauge === undefined ? tidied : tidied.replace(/.*(?=AWG)/i, '1 '), typed)
  if (!read.ok) return slip(read.rule, read.text, read.hint)
  const { digits, rest } = read
  const number = gauge === undefined ? read.number : gaugeNumber(gauge)
  const figures = gauge === undefined ? read.figures : Infinity
  if (number === undefined)
    return slip(
      'no-such-size',
      `\`${typed}\` is not a size of the American wire gauge`,
      'the sizes run from 40 to 1, then 1/0 to 4/0',
    )

  if (rest === '') return plain()
  const said = tidyUnit(rest)
  if (of !== undefined && isOtherCurrency(said))
    return slip(
      'other-currency',
      `\`${typed}\` is not in US$, and no rate of exchange is kept here`,
      'convert it and write US$',
    )
  if (/(?<![/^\w-])\d/.test(said.replace(/^1\//, '/'))) {
    const joined = /^\d{3}(?: \d{3})*(?!\d)/.exec(rest)?.[0]
    const hint =
      joined &&
      `did you mean \`${digits}${joined.replaceAll(' ', '')}${rest.slice(joined.length)}\`?`
    return slip(
      'two-quantities',
      `\`${typed}\` holds more than one number`,
      hint ?? 'write one number and its unit',
    )
  }

  const letter = /^°? ?([CF]|celsius|centigrade|fahrenheit)$/i.exec(said)?.[1]?.[0]?.toUpperCase()
  if (letter !== undefined && said.length === 1 && of === undefined) {
    const electric = letter === 'C' ? 'coulomb' : 'farad'
    return slip(
      'ambiguous-unit',
      `\`${typed}\` could be in °${letter} or in ${electric}s`,
      `write \`${digits} °${letter}\` or \`${digits} ${electric}\``,
    )
  }
  const electric = (said === 'C' && of === 'charge') || (said === 'F' && of === 'capacitance')
  const unit = readUnit(letter === undefined || electric ? said : `°${letter}`)
  if (!isUnit(unit)) {
    if ('instead' in unit)
      return slip(
        'ambiguous-unit',
        `\`${said}\` can be read in two ways`,
        `did you mean \`${digits} ${unit.instead}\`?`,
      )
    return slip(
      'unknown-unit',
      `\`${unit.unknown}\` is not a unit known here`,
      meant(said, unit.unknown),
    )
  }
  if (of === undefined || fits(of, unit)) {
    const bare = said.length === 1 && unit.flavour === 'temperature'
    return quantity(unit, bare ? `\`${typed}\` is read as ${digits} ${unit.name}` : undefined)
  }
  const forceful = readUnit(
    said.replace(/\b(lbs?|kg)(?=\/)/, (mass) => `${mass.replace('s', '')}f`),
  )
  if (isUnit(forceful) && fits(of, forceful))
    return quantity(forceful, `\`${typed}\` is read as ${digits} ${forceful.name}`)
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
    return near === undefined ? undefined : `did you mean \`${digits} ${near}\`?`
  }

  function plain(): ParsedQuantity | Slip {
    const whole = /^[+-]?\d+$/.test(digits)
    const due = of ?? 'number'
    if (due !== 'number' && due !== 'fraction')
      return slip('no-unit', `\`${typed}\` has no unit; ${dimensions[due].words} is due`)
    if (due === 'fraction' && Math.abs(number ?? 0) > 1)
      return slip(
        'more-than-whole',
        `\`${typed}\` without % is more than the whole`,
        `did you mean \`${typed} %\`?`,
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
    }
  }

  function quantity(unit: Unit, remark?: string): ParsedQuantity | Slip {
    const inWater = of === 'concentration' && unit.name === 'ppm'
    const name = inWater ? 'mg/L' : unit.name
    const value = toSI(number ?? 0, name)
    const { vector, flavour } = of ? dimensions[of] : unit
    const known = of ?? nameOf(unit)
    if (!Number.isFinite(value) || (value === 0 && number !== 0 && unit.offset === 0))
      return slip('not-finite', `\`${typed}\` is not a number that can be worked with`)
    if (value < 0 && (flavour === 'temperature' || flavour === 'absolute'))
      return slip(
        'below-zero',
        `\`${typed}\` is below ${flavour === 'absolute' ? 'vacuum' : 'absolute zero'}`,
      )
    const said = inWater ? `\`${typed}\` is read as ${digits} mg/L, which holds in water` : remark
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
  const { words, units } = dimensions[of]
  if (of === 'number') return words
  if (of === 'fraction') return `${words}: % or a number up to 1`
  return `${words}: ${[...new Set(units)].join(' or ')}`
}

/** Fields of calculators are in US$. */
const isOtherCurrency = (said: string): boolean => {
  const unit = readUnit(said)
  return isUnit(unit) && unit.vector.slice(7).some((power) => power !== 0)
}

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

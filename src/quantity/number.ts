/**
 * The number that a text begins with, and what is left of the text.
 *
 * In: tidied text. Out: value, significant figures typed (Infinity for fractions), the digits for
 * repeating them in a hint, and the rest; or a slip. `1,200` is twelve hundred; `1,5` and `0,125` are
 * decimal commas and refused; `1-1/2` is one and a half, `3-5` a range.
 */
import { words } from '../words/words.ts'

export interface ReadNumber {
  readonly ok: true
  readonly number: number
  readonly digits: string
  readonly figures: number
  readonly rest: string
  /** `1.250` of `1,250`, where the comma may have been meant as a decimal one. */
  readonly withPoint?: string
}

export interface NumberSlip {
  readonly ok: false
  readonly rule: string
  readonly text: string
  readonly hint?: string
}

const decimal =
  /^([1-9]\d{0,2}(?:,\d{3})+(?![\d,])|\d+)?(\.\d*)?(?:[eE]([+-]?\d+)| ?[·x] ?10\^([+-]?\d+))?/
const fraction = /^(?:(\d+)[ -])?(\d+) ?\/ ?(\d+)(?![\d./])/
const range = /^ ?[^\d\s^]* ?(?:[-–—]|\.\.+|\bto\b) ?\.?\d/

export function readNumber(text: string, typed = text): ReadNumber | NumberSlip {
  const refuse = (rule: string, why: string, hint?: string): NumberSlip => ({
    ok: false,
    rule,
    text: why,
    ...(hint !== undefined && { hint }),
  })
  const quoted = `\`${typed}\``
  if (text === '') return refuse('empty', words`nothing is written here`)
  const bare = text.replace(/^(?:[~≈≃<>≤≥=]+|about\b|approx\b\.?|circa\b|ca?\.) ?(?=[-–.\d])/i, '')
  if (bare !== text)
    return refuse(
      'not-one-number',
      words`${quoted} does not say one number`,
      words`write \`${bare}\``,
    )
  if (/±|\+\/-|\+-/.test(text))
    return refuse(
      'plus-minus',
      words`${quoted} holds a ±`,
      words`write the ± in a place of its own`,
    )

  const sign = /^(?:[-–—] ?|\+)/.exec(text)?.[0] ?? ''
  const body = text.slice(sign.length)
  const minus = sign === '' || sign === '+' ? '' : '-'
  const [parts, whole, above, below] = fraction.exec(body) ?? []
  if (parts !== undefined && (whole === undefined || Number(above) < Number(below))) {
    const number = Number(whole ?? 0) + Number(above) / Number(below)
    return finite(minus ? -number : number, minus + parts, Infinity, body.slice(parts.length))
  }
  const [found = '', digits = '', places = '', size, power] = decimal.exec(body) ?? []
  if (!/\d/.test(found))
    return refuse('not-a-quantity', words`${quoted} does not begin with a number`)
  const rest = body.slice(found.length)
  if (rest.startsWith(',') || /^[.,]\d/.test(rest)) {
    const all = /^[\d.,]+/.exec(body)?.[0] ?? ''
    const comma = all.includes(',')
    const plain = all
      .replaceAll('.', '')
      .replace(/,(?=[^,]*$)/, '.')
      .replaceAll(',', '')
    return refuse(
      comma ? 'decimal-comma' : 'two-points',
      comma
        ? words`\`${all}\` has a comma where numbers here have a point`
        : words`\`${all}\` has more than one point`,
      words`did you mean \`${minus}${plain}${body.slice(all.length)}\`?`,
    )
  }
  if (range.test(rest))
    return refuse('range', words`${quoted} is a range, not one number`, words`pick one of the two`)
  const mantissa = digits.replaceAll(',', '') + places
  const figures = mantissa.replace('.', '').replace(/^0+(?=.)/, '').length
  const exponent = size ?? power ?? '0'
  const doubtful = /^\d+,\d+$/.test(found) ? minus + digits.replace(',', '.') : undefined
  const said = `${minus}${digits}${places}${exponent === '0' ? '' : `e${exponent}`}`
  return finite(Number(`${minus}${mantissa}e${exponent}`), said, figures, rest, doubtful)

  function finite(
    number: number,
    said: string,
    figures: number,
    rest: string,
    withPoint?: string,
  ): ReadNumber | NumberSlip {
    if (!Number.isFinite(number))
      return refuse('not-finite', words`\`${said}\` is not a number that can be worked with`)
    const common = { ok: true, number, figures, rest: rest.trim() } as const
    return withPoint === undefined
      ? { ...common, digits: said }
      : { ...common, digits: said.replace(',', ''), withPoint }
  }
}

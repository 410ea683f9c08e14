/**
 * Why a quantity that was understood is not what is due, and the likely slip.
 *
 * In: the text, its number, its unit, and what is due. Out: rule, sentence and hint. The traps of the
 * trade come before the general case: gauge or absolute, temperature or difference, mm of a wire, lb
 * or lbf.
 */
import { dimensions, nameOf } from './dimensions.ts'
import type { Of } from './types.ts'
import { type Unit } from './unit.ts'
import { sameVector } from './vector.ts'
import { oneOf } from '../words/lists.ts'
import { words } from '../words/words.ts'

interface Explanation {
  readonly rule: string
  readonly text: string
  readonly hint?: string
}

export function explain(text: string, digits: string, unit: Unit, of: Of): Explanation {
  const due = dimensions[of]
  const { name } = unit
  const is = nameOf(unit)
  const write = (...names: string[]): string =>
    words`write ${oneOf(names.map((unit) => `\`${digits} ${unit}\``))}`

  if (of === 'wireArea' && is === 'length')
    return {
      rule: 'bare-mm',
      text: words`\`${text}\` does not say whether it is a diameter or an area, and trade sizes of wire in mm differ`,
      ...(name === 'mm' && {
        hint: words`write \`${digits} mm²\` if that is the area of the metal`,
      }),
    }
  if (sameVector(unit.vector, due.vector) && unit.flavour !== due.flavour) {
    const base = name.replace(/ gauge$| abs$/, '')
    if (due.flavour === 'temperature')
      return {
        rule: 'difference-for-temperature',
        text: words`\`${text}\` is a temperature difference; a temperature is due`,
        hint: write(name.replace('Δ', '')),
      }
    if (unit.flavour === 'temperature')
      return {
        rule: 'temperature-for-difference',
        text: words`\`${text}\` is a temperature; a temperature difference is due`,
        hint: name === '°C' ? write('K', '°C diff') : write('Δ°F', '°F diff'),
      }
    if (unit.flavour === 'amount')
      return {
        rule: 'gauge-or-absolute',
        text: words`\`${text}\` does not say gauge or absolute; ${due.words} is due`,
        hint: words`write \`${digits} ${base} gauge\` from the air's pressure or \`${digits} ${base} abs\` from vacuum`,
      }
    if (due.flavour === 'amount')
      return {
        rule: 'point-for-difference',
        text: words`\`${text}\` is ${looks(is)}; a pressure difference is due`,
        hint: write(base),
      }
  }
  const meant = sloppy(name, of)
  return {
    rule: 'wrong-dimension',
    text: is
      ? words`\`${text}\` looks like ${name} (${looks(is)}); ${due.words} is due`
      : words`\`${text}\` looks like ${name}; ${due.words} is due`,
    ...(meant && { hint: words`did you mean \`${digits} ${meant}\`?` }),
  }
}

const looks = (of: Of | undefined): string =>
  of === 'pressure' ? words`a pressure` : of ? dimensions[of].words : ''

/** What was probably meant by a unit that is near in writing but far in meaning. */
function sloppy(name: string, of: Of): string | undefined {
  if (of === 'force' && /^(lb|kg)$/.test(name)) return `${name}f`
  if (of === 'mass' && /^(lbf|kgf)$/.test(name)) return name.slice(0, -1)
  if (of === 'torque' && name === 'mN') return 'N·m'
  if (of === 'time' && name === 'm') return 'min'
  if (of === 'temperature' && name === '°') return '°C'
  return undefined
}

/**
 * What can be typed for each kind of quantity, from the table of units itself, and how numbers are read.
 * In: the calculators, whose fields name the compound units of the trade. Out: HTML.
 */
import type { Calculator, Field } from '../../calculators/define.ts'
import { escape } from '../card/html.ts'
import { counterparts } from '../quantity/counterparts.ts'
import { dimensions, fits, names } from '../quantity/dimensions.ts'
import { formatQuantity, parseQuantity } from '../quantity/index.ts'
import { aliases, currencies } from '../quantity/table.ts'
import type { Of, ParsedQuantity } from '../quantity/types.ts'
import { isUnit, readUnit, unitNames } from '../quantity/unit.ts'
import { words } from '../words/words.ts'

const unitsIn = (field: Field): readonly string[] =>
  field.type === 'number'
    ? field.units
    : field.type === 'list'
      ? Object.values(field.fields).flatMap(unitsIn)
      : []

/** Every unit that anything of the kit writes, each as the kit writes it. */
function everyUnit(calculators: readonly Calculator[]): readonly string[] {
  const texts = [
    ...Object.values(dimensions).flatMap(({ units }) => units),
    ...unitNames,
    ...[counterparts.us, counterparts.metric].flatMap((map) => [...map].flat()),
    ...calculators.flatMap(({ inputs }) => Object.values(inputs).flatMap(unitsIn)),
    'psi gauge',
    'psi abs',
    'kcmil',
  ]
  const read = texts.map(readUnit).flatMap((unit) => (isUnit(unit) ? [unit.name] : []))
  return [...new Set(read)].filter((name) => name !== '')
}

/** `gpm` for `gal/min`; what only adds an s or shouts is understood anyway. */
function otherWays(unit: string): readonly string[] {
  return [...aliases.keys()].filter((typed) => {
    const read = readUnit(typed)
    return isUnit(read) && read.name === unit
  })
}

export interface UnitRow {
  readonly of: Of
  readonly words: string
  readonly units: readonly string[]
  readonly also: readonly string[]
}

export function unitRows(calculators: readonly Calculator[]): readonly UnitRow[] {
  const all = everyUnit(calculators)
  return names
    .filter((of) => of !== 'number')
    .map((of) => {
      const fitting = all.filter((name) => {
        const unit = readUnit(name)
        return isUnit(unit) && fits(of, unit)
      })
      const units = of === 'money' ? currencies : fitting
      return {
        of,
        words: dimensions[of].words.replace(/^an? /, ''),
        units,
        also: [...new Set(units.flatMap(otherWays))],
      }
    })
}

const codes = (texts: readonly string[]): string =>
  texts.map((text) => `<code>${escape(text)}</code>`).join(' ')

const table = (heads: readonly string[], rows: readonly (readonly string[])[]): string =>
  [
    `<table class="ledger"><thead><tr>${heads.map((head) => `<th scope="col">${head}</th>`).join('')}</tr></thead><tbody>`,
    ...rows.map(
      ([first = '', ...rest]) =>
        `<tr><th scope="row">${first}</th>${rest.map((cell, at) => `<td data-label="${heads[at + 1] ?? ''}">${cell}</td>`).join('')}</tr>`,
    ),
    '</tbody></table>',
  ].join('')

export function unitsHtml(calculators: readonly Calculator[]): string {
  const rows = unitRows(calculators).map(({ words, units, also }) => [
    escape(words),
    codes(units),
    codes(also),
  ])
  return table([words`For`, words`Type`, words`Or`], rows)
}

/** Typed as on a phone, on paper, or in another country. */
const ways = [
  '1.5 A',
  '½ in',
  '1 1/2 in',
  '1,200 W',
  '1’200 W',
  '5e-3 m',
  '–5 °C',
  '65 deg C',
  '11 °F diff',
  '30 psi gauge',
  '18 AWG',
  '1.5 mm2',
  '2.5 gpm',
  '9 L per min',
  '18 ft-lbs',
  '4.7 k ohm',
  '€ 40',
] as const

const refused = ['1,5 A', '5–6 A', '~5 A', '<5 A', '5 A ± 0.1 A', '5 ft 3 in', '12 C'] as const

/** With the figures that were typed; a fraction is exact, and needs as many as it takes. */
function asRead({ value, unit, figures }: ParsedQuantity): string {
  if (Number.isFinite(figures)) return formatQuantity(value, unit, { figures })
  return formatQuantity(value, unit, { figures: 6 }).replace(
    /\.0+(?=\D|$)|(\.\d*?)0+(?=\D|$)/,
    '$1',
  )
}

/** How numbers are read, by reading them. */
export function waysHtml(): string {
  const rows = [...ways, ...refused].map((typed) => {
    const read = parseQuantity(typed)
    const said = read.ok
      ? words`read as ${escape(asRead(read))}`
      : escape([read.text, read.hint].filter(Boolean).join(': ')).replace(
          /`([^`]+)`/g,
          '<code>$1</code>',
        )
    return [`<code>${escape(typed)}</code>`, said]
  })
  return table([words`Typed`, words`What becomes of it`], rows)
}

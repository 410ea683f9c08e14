/**
 * A calculator in another currency. Calculators are written in US$, and add up sums of whichever one
 * currency a block was given. In: the currency of a block. Out: units, fields and drawings in it.
 */
import type { Calculator, Field, Output } from '../../calculators/define.ts'
import type { Axis, Plot } from '../../calculators/plot.ts'

const written = 'US$'

/** `US$/kWh` -> `EUR/kWh` */
export const unitIn = (unit: string, currency: string | undefined): string =>
  currency === undefined ? unit : unit.replace(written, currency)

type Units = readonly [metric: string, us: string]

export const unitsIn = ([metric, us]: Units, currency: string | undefined): Units => [
  unitIn(metric, currency),
  unitIn(us, currency),
]

type Each = Field | Output

function fieldsIn<T extends Each>(fields: Readonly<Record<string, T>>, currency: string) {
  return Object.fromEntries(
    Object.entries(fields).map(([name, field]) => [name, fieldIn(field, currency)]),
  )
}

function fieldIn<T extends Each>(field: T, currency: string): T {
  if (field.type === 'number') return { ...field, units: unitsIn(field.units, currency) }
  if ('fields' in field) return { ...field, fields: fieldsIn(field.fields, currency) }
  if ('columns' in field) return { ...field, columns: fieldsIn(field.columns, currency) }
  return field
}

export function plotIn(plot: Plot, currency: string | undefined): Plot {
  const axis = (one: Axis): Axis => ({ ...one, units: unitsIn(one.units, currency) })
  return currency === undefined ? plot : { ...plot, x: axis(plot.x), y: axis(plot.y) }
}

const known = new WeakMap<Calculator, Map<string, Calculator>>()

export function calculatorIn(calculator: Calculator, currency: string | undefined): Calculator {
  if (currency === undefined) return calculator
  const made = known.get(calculator) ?? new Map<string, Calculator>()
  known.set(calculator, made)
  const before = made.get(currency)
  if (before !== undefined) return before
  const one: Calculator = {
    ...calculator,
    inputs: fieldsIn(calculator.inputs, currency),
    outputs: fieldsIn(calculator.outputs, currency),
  }
  made.set(currency, one)
  return one
}

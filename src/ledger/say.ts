/**
 * What calculators are handed to write a value in their findings and working, in the site's first
 * system of units. They name a unit of their own choice; where the other system has another, the exact
 * SI value is written in that.
 *
 * One or two figures asked for are enough for a round limit (`5 K`) and too few for what becomes of it:
 * 1 bar is 14.5 psi and not 10. A converted value has up to three, without zeros at the end.
 */
import type { Say } from '../../calculators/define.ts'
import { counterpart, formatQuantity, fromSI } from '../quantity/index.ts'
import { unitIn } from './in-currency.ts'
import type { UnitSystem } from './published.ts'
import { words } from '../words/words.ts'

const cannotTell = words`cannot tell`

/** In the unit asked for, whatever the site's. */
export const say: Say = (value, unit, figures = 3) =>
  value === undefined ? cannotTell : formatQuantity(value, unit, { figures })

/** As many figures as are not zeros at the end, three at the most. */
function trimmed(number: number): number {
  const digits = number.toExponential(2).split('e')[0] ?? ''
  return digits.replace(/[-.]/g, '').replace(/0+$/, '').length || 1
}

function sayIn(system: UnitSystem): Say {
  return (value, unit, figures = 3) => {
    const other = counterpart(unit, system)
    if (value === undefined || other === undefined) return say(value, unit, figures)
    return formatQuantity(value, other, {
      figures: figures < 3 ? trimmed(fromSI(value, other)) : figures,
    })
  }
}

const says: Readonly<Record<UnitSystem, Say>> = { metric: sayIn('metric'), us: sayIn('us') }

/** The first of a site's systems counts: a second one would make sentences long. */
export function sayFor(systems: readonly UnitSystem[], currency?: string): Say {
  const inSystem = says[systems[0] ?? 'metric']
  if (currency === undefined) return inSystem
  return (value, unit, figures) => inSystem(value, unitIn(unit, currency), figures)
}

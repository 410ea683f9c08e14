/**
 * The coolant as a calculator asks for it and speaks of it: three fields, the coolant they make, and
 * the finding whether its properties can be told.
 *
 * In: choices and a fraction, kelvin. Out: a coolant or undefined, a level with its text. A strength
 * without its basis is no coolant: 50 % by volume and by mass are different mixes.
 */
import {
  coldestByVolume,
  freezingPoint,
  hottestKnown,
  propertiesOf,
  strongestKnown,
  type Basis,
  type Coolant,
  type Glycol,
} from './coolant.ts'
import type { ChoiceField, Level, NumberField, Say } from './define.ts'
import { words } from '../src/words/words.ts'

/** A coolant from fields; undefined while its strength or the basis of it is not given. */
export function coolantOf(
  kind: Glycol | 'water',
  strength: number | undefined,
  basis: Basis | undefined,
): Coolant | undefined {
  if (kind === 'water') return { kind, strength: 0, basis: 'volume' }
  return strength === undefined || basis === undefined ? undefined : { kind, strength, basis }
}

/** Whether a coolant's properties can be told at a temperature, and if not, why. */
export function coolantState(
  coolant: Coolant | undefined,
  temperature: number,
): 'liquid' | 'frozen' | 'not given' | 'outside' {
  if (coolant === undefined) return 'not given'
  if (temperature <= (freezingPoint(coolant) ?? -Infinity)) return 'frozen'
  return propertiesOf(coolant, temperature) === undefined ? 'outside' : 'liquid'
}

/** The same as a finding; frozen is a stop whatever else is known. */
export function coolantFinding(
  coolant: Coolant | undefined,
  temperature: number,
  say: Say,
): { readonly level: Level; readonly text: string; readonly threshold: string } {
  const state = coolantState(coolant, temperature)
  const freezing = say(coolant && freezingPoint(coolant), '°C')
  const texts = {
    liquid: words`It is liquid here and freezes at ${freezing}.`,
    frozen: words`It freezes at ${freezing} and is given at ${say(temperature, '°C')}: slush does not flow. Use a stronger mix.`,
    'not given': words`Say how strong the mix is, and whether by volume or by mass.`,
    outside: words`No property table reaches this mix or temperature.`,
  }
  return {
    level: state === 'liquid' ? 'pass' : state === 'frozen' ? 'stop' : 'unknown',
    text: texts[state],
    threshold: words`liquid; ${say(coldestByVolume, '°C', 2)} to ${say(hottestKnown, '°C')}, at most ${say(strongestKnown, '%', 2)} glycol`,
  }
}

const kindField = {
  type: 'choice',
  label: words`Coolant`,
  help: words`The glycol, not its colour: the sheet names it.`,
  options: {
    'ethylene-glycol': words`ethylene glycol and water`,
    'propylene-glycol': words`propylene glycol and water`,
    water: words`water`,
  },
  choice: true,
} as const satisfies ChoiceField

const strengthField = {
  type: 'number',
  label: words`Glycol in the mix`,
  symbol: 'x',
  of: 'fraction',
  units: ['%', '%'],
  hard: [0, 100],
  usual: [25, 60],
  help: words`Leave out for water.`,
  choice: true,
  optional: true,
} as const satisfies NumberField

const basisField = {
  type: 'choice',
  label: words`Strength is`,
  help: words`Jugs and hydrometers go by volume.`,
  options: { volume: words`by volume`, mass: words`by mass` },
  optional: true,
} as const satisfies ChoiceField

/** The three fields that say what is in a loop. */
export const coolantFields = {
  coolant: kindField,
  concentration: strengthField,
  basis: basisField,
}

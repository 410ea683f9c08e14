/**
 * Two inputs that have an order, given the wrong way round: some check must say so, and none may pass
 * because of it. The table lists them; inputs whose names sound like such a pair must be in it.
 */
import { describe, expect, test } from 'vitest'
import type { Fields, InputValue, NumberField } from '../../calculators/define.ts'
import { toSI } from '../../src/quantity/index.ts'
import { all } from './all.ts'
import { numberAt, withNumber } from './paths.ts'
import { run, runExample } from './run-example.ts'

interface Pair {
  readonly id: string
  readonly lower: string
  readonly upper: string
  /** Check that says it, and words of it. */
  readonly check: string
  readonly says: RegExp
  /** What else has to be given or chosen, in SI. */
  readonly more?: Readonly<Record<string, InputValue>>
}

const whichIsWhich = /above .*: check which is which/
const pair = (
  id: string,
  lower: string,
  upper: string,
  check: string,
  says = whichIsWhich,
  more: Pair['more'] = {},
): Pair => ({ id, lower, upper, check, says, more })

const pairs: readonly Pair[] = [
  pair('brake-energy', 'cutIn', 'cutOut', 'supply', whichIsWhich, { servo: 'vacuum' }),
  pair('cell-current', 'cellMinimum', 'cellVoltage', 'lowest'),
  pair('cell-current', 'steadyCurrent', 'peakCurrent', 'peak', whichIsWhich, { asked: 'current' }),
  pair('cell-current', 'steadyPower', 'peakPower', 'peak', whichIsWhich, { asked: 'power' }),
  pair('cell-current', 'steadyRate', 'pulseRate', 'peak'),
  pair('cell-heating', 'cellMinimum', 'cellVoltage', 'cold'),
  pair('cell-heating', 'dischargeFrom', 'chargeFrom', 'discharge'),
  pair('cell-spread', 'lowest', 'highest', 'limits'),
  pair('charge-time', 'from', 'to', 'span', /Charging goes up/),
  pair('fastener-torque', 'stack', 'length', 'engagement', /a bolt of .* or longer/),
  pair('hill-start', 'continuousPower', 'peakPower', 'climb'),
  pair('hose-bend', 'bore', 'outside', 'bend', /not less than the outside diameter/),
  pair('hose-bend', 'straight', 'cut', 'slack', /does not reach/),
  pair('isolation-resistance', 'withResistor', 'negative', 'readings', /contradict each other/, {
    positive: 1,
  }),
  pair('key-off-drain', 'floor', 'parkedAt', 'days', /parked as low as it may go/),
  pair('loop-volume', 'coldTemperature', 'hotTemperature', 'air'),
  pair('main-fuse', 'cellResistance', 'coldResistance', 'interrupt'),
  pair('main-fuse', 'lowVoltage', 'voltage', 'voltage'),
  pair('main-fuse', 'minimumBreaking', 'interrupt', 'weakest'),
  pair('main-fuse', 'running', 'peak', 'peak'),
  pair('motor-circuit', 'running', 'starting', 'start', /below the running one: check which/),
  pair('pack-layout', 'cellMinimum', 'cellNominal', 'cell', /not in rising order/),
  pair('pack-layout', 'cellMinimum', 'cellMaximum', 'cell', /not in rising order/),
  pair('pack-layout', 'cellNominal', 'cellMaximum', 'cell', /not in rising order/),
  pair('pack-layout', 'parts.0.least', 'parts.0.most', 'highest'),
  pair('panel-hole', 'bore', 'groove', 'drill', whichIsWhich, { purpose: 'grommet' }),
  pair('panel-hole', 'least', 'most', 'through', whichIsWhich, { purpose: 'gland' }),
  pair('prediction-check', 'air', 'coolant', 'back', /coolant must be warmer than the air/),
  pair('pump-and-loop', 'coldTemperature', 'temperature', 'coldStart'),
]

/** Not pairs, though their names sound so: reason. */
const excused: Readonly<Record<string, string>> = {
  'heat-and-rise: power, peakTime': 'a power and a time',
}

const sounds: readonly (readonly [string, string])[] = [
  ['least', 'most'],
  ['lowest', 'highest'],
  ['low', 'high'],
  ['minimum', 'maximum'],
  ['minimum', 'nominal'],
  ['nominal', 'maximum'],
  ['from', 'to'],
  ['cutIn', 'cutOut'],
  ['cold', 'hot'],
  ['steady', 'peak'],
  ['continuous', 'peak'],
  ['running', 'starting'],
  ['running', 'peak'],
]

type Named = readonly [path: string, field: NumberField]

function numbers(fields: Fields, before = ''): readonly Named[] {
  return Object.entries(fields).flatMap(([name, field]) =>
    field.type === 'list'
      ? numbers(field.fields, `${name}.0.`)
      : field.type === 'number'
        ? [[before + name, field] as const]
        : [],
  )
}

const blank = { output: {}, findings: [], working: [] }

describe('the wrong way round', () => {
  test.each(pairs)('$id: $lower above $upper', ({ id, lower, upper, check, says, more }) => {
    const calculator = all.find((one) => one.id === id)
    if (calculator === undefined) throw new Error(`there is no calculator ${id}`)
    const fields = new Map(numbers(calculator.inputs))
    const usualOf = (path: string): number => {
      const field = fields.get(path)
      if (field === undefined) throw new Error(`${id} has no input ${path}`)
      return toSI((field.usual[0] + field.usual[1]) / 2, field.units[0])
    }
    const inputs = calculator.examples.map((example) => runExample(calculator, example).input)
    const giving = inputs.filter((input) =>
      [lower, upper].every((path) => numberAt({ ...blank, input }, path) !== undefined),
    )
    const wrong = (giving.length > 0 ? giving : inputs).map((given) => {
      const input = { ...given, ...more }
      const [one, other] = [lower, upper].map(
        (path) => numberAt({ ...blank, input }, path) ?? usualOf(path),
      )
      const low = Math.min(one ?? 0, other ?? 0)
      const high = Math.max(one ?? 0, other ?? 0, low + Math.abs(low) / 10)
      const swapped = withNumber(withNumber(input, lower, high), upper, low)
      return run(calculator, swapped).findings.find((finding) => finding.check === check)
    })
    for (const finding of wrong) expect(['unknown', 'stop']).toContain(finding?.level)
    expect(wrong.some((finding) => says.test(finding?.text ?? ''))).toBe(true)
  })

  test.each(all)('pairs of $id are all in the table', ({ id, inputs }) => {
    const named = numbers(inputs)
    const paths = new Set(named.map(([path]) => path))
    const due = named.flatMap(([path]) =>
      sounds.flatMap(([low, high]) => {
        const other = path.replace(new RegExp(low, 'i'), (found) =>
          /^[A-Z]/.test(found) ? high.charAt(0).toUpperCase() + high.slice(1) : high,
        )
        return other !== path && paths.has(other) ? [[path, other] as const] : []
      }),
    )
    const missed = due.filter(
      ([low, high]) =>
        excused[`${id}: ${low}, ${high}`] === undefined &&
        !pairs.some((one) => one.id === id && one.lower === low && one.upper === high),
    )
    expect(missed).toEqual([])
  })
})

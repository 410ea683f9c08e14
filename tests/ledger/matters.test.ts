/**
 * What moves a result, held against the formulas in closed form, and what would pass, held against the
 * same solved by hand. Then every calculator with each of its examples.
 */
import { describe, expect, it } from 'vitest'
import { defineCalculator, type Calculator, type Finding } from '../../calculators/define.ts'
import {
  resultsOf,
  whatMatters,
  whatWouldPass,
  type Matters,
  type Move,
  type NumberRemedy,
  type Remedies,
} from '../../src/ledger/matters.ts'
import { exampleInputs } from '../../src/ledger/example.ts'
import { blankNumber } from '../../src/ledger/blank.ts'
import type { PublishedNumber } from '../../src/ledger/published.ts'
import { rangeSlip } from '../../src/ledger/range.ts'
import { say, sayFor } from '../../src/ledger/say.ts'
import { all } from '../calculators/all.ts'
import { blockOf, run, type Inputs } from './matters-block.ts'
import { trivial } from './trivial.ts'

const named = (id: string): Calculator => {
  const found = all.find((one) => one.id === id)
  if (found === undefined) throw new Error(`no calculator ${id}`)
  return found
}
const simple = async (id: string): Promise<Calculator> => {
  const found = await trivial[id]?.()
  if (found === undefined) throw new Error(`no calculator ${id}`)
  return found
}
const moveOf = (matters: Matters | undefined, path: string): Move => {
  const found = matters?.moves.find(({ place }) => place.path === path)
  if (found === undefined) throw new Error(`${path} was not moved`)
  return found
}
const numberRemedy = (remedies: Remedies, path: string): NumberRemedy => {
  const found = remedies.remedies.find(({ place }) => place.path === path)
  if (found?.type !== 'number') throw new Error(`${path} is not offered`)
  return found
}
const number = (name: string, more: Partial<PublishedNumber>): PublishedNumber => ({
  ...blankNumber({ note: 'note', name, date: '', file: 'n.mdx', line: 1, column: 1 }),
  ...more,
})

/* Solid copper, 1/58 Ω·mm²/m and 0.00393 per kelvin from 20 °C (IEC 60028), there and back. */
const cable = named('cable-drop')
const dropBy = (length: number, area: number, kelvin = 0): number =>
  (10 * 2 * length * (1e-6 / 58) * (1 + 0.00393 * kelvin)) / area

describe('what moves a result', () => {
  const matters = (numbers = {}, more: readonly PublishedNumber[] = []) => {
    const { block, lookup } = blockOf(cable, run, numbers, more)
    return whatMatters(block, lookup, cable, 'drop')
  }

  it('follows Ohm’s law over the usual range of each input', () => {
    const found = matters()
    expect(found?.now).toBeCloseTo(dropBy(4, 3e-6), 12)
    const length = moveOf(found, 'length')
    expect([length.low.value, length.high.value]).toEqual([0.2, 15])
    expect(length.low.result).toBeCloseTo(dropBy(0.2, 3e-6), 12)
    expect(length.high.result).toBeCloseTo(dropBy(15, 3e-6), 12)
    expect(length.span).toBeCloseTo(dropBy(14.8, 3e-6), 12)
    const wire = moveOf(found, 'wire')
    expect(wire.low.result).toBeCloseTo(dropBy(4, 0.35e-6), 12)
    expect(wire.high.result).toBeCloseTo(dropBy(4, 150e-6), 12)
    expect(moveOf(found, 'temperature').high.result).toBeCloseTo(dropBy(4, 3e-6, 85), 12)
  })

  it('ranks by how far the result goes', () => {
    const spans = matters()?.moves.map(({ span }) => span)
    expect(spans).toEqual(spans?.toSorted((a = -1, b = -1) => b - a))
    // 0.1 to 600 A, 0.35 to 150 mm², 0.2 to 15 m, 20 to 105 °C.
    expect(
      matters()
        ?.moves.map(({ place }) => place.path)
        .slice(0, 4),
    ).toEqual(['current', 'wire', 'length', 'temperature'])
    expect(moveOf(matters(), 'volts').span).toBe(0)
  })

  it('changes in proportion with a tenth more and less, inversely with the area', () => {
    const found = matters()
    const now = dropBy(4, 3e-6)
    const length = moveOf(found, 'length')
    expect(length.step).toEqual({ how: 'share', size: 0.4 })
    expect(length.more?.result).toBeCloseTo(1.1 * now, 12)
    expect(length.less?.result).toBeCloseTo(0.9 * now, 12)
    expect(moveOf(found, 'wire').more?.result).toBeCloseTo(now / 1.1, 12)
  })

  it('takes a step of five kelvin for a temperature', () => {
    const { step, more, less } = moveOf(matters(), 'temperature')
    expect(step).toEqual({ how: 'step', size: 5 })
    expect(more?.result).toBeCloseTo(dropBy(4, 3e-6, 5), 12)
    expect(less?.result).toBeCloseTo(dropBy(4, 3e-6, -5), 12)
  })

  it('goes over the ± of an input, cut off where the field ends', () => {
    const length = moveOf(matters({ length: { plusMinus: 0.5 } }), 'length')
    expect([length.plusMinus, length.clipped]).toEqual([0.5, false])
    expect(length.low.value).toBe(3.5)
    expect(length.low.result).toBeCloseTo(dropBy(3.5, 3e-6), 12)
    expect(length.span).toBeCloseTo(dropBy(1, 3e-6), 12)
    const far = moveOf(matters({ length: { plusMinus: 7 } }), 'length')
    expect([far.low.value, far.high.value, far.clipped]).toEqual([0.01, 11, true])
  })

  it('goes over the ± of the number that an input names', () => {
    const tape = number('tape', { kind: 'reading', value: 4, now: 4, plusMinus: 0.02 })
    const input = { kind: 'worked', expression: { ref: 'note/tape' } } as const
    expect(moveOf(matters({ length: input }, [tape]), 'length').plusMinus).toBe(0.02)
    // A later number stands there: the ± is not that value's.
    const older = { ...tape, value: 5, now: 4 }
    expect(moveOf(matters({ length: input }, [older]), 'length').plusMinus).toBeUndefined()
    const later = number('again', { kind: 'reading', value: 4, now: 4, plusMinus: 0.01 })
    const { block, lookup } = blockOf(cable, run, { length: input }, [older, later])
    const known = { ...lookup, replacedBy: (id: string) => (id === older.id ? later : undefined) }
    expect(moveOf(whatMatters(block, known, cable, 'drop'), 'length').plusMinus).toBe(0.01)
  })

  it('follows Q = P (1 − η), where an efficiency has no tenth more', () => {
    const heat = named('heat-and-rise')
    const inputs: Inputs = {
      power: 27_500,
      efficiency: 0.96,
      duty: 1,
      flow: 8 / 60_000,
      coolant: 'water',
      temperature: 333.15,
    }
    const { block, lookup } = blockOf(heat, inputs)
    const found = whatMatters(block, lookup, heat, 'heat')
    expect(found?.now).toBeCloseTo(1100, 9)
    const { step, more, less, low, high } = moveOf(found, 'efficiency')
    // A tenth of 85 to 98 %.
    expect(step.how).toBe('step')
    expect(step.size).toBeCloseTo(0.013, 12)
    expect(more?.result).toBeCloseTo(27_500 * 0.027, 9)
    expect(less?.result).toBeCloseTo(27_500 * 0.053, 9)
    expect([low.result, high.result]).toEqual([
      expect.closeTo(27_500 * 0.15, 9),
      expect.closeTo(27_500 * 0.02, 9),
    ])
    expect(moveOf(found, 'power').more?.result).toBeCloseTo(1210, 9)
    const edge = blockOf(heat, { ...inputs, efficiency: 0.99 })
    const near = moveOf(whatMatters(edge.block, edge.lookup, heat, 'heat'), 'efficiency')
    expect(near.more).toBeUndefined()
    expect(near.less?.value).toBeCloseTo(0.977, 12)
  })

  it('moves the cells of lists, and reads those of tables', async () => {
    const cut = await simple('cut')
    const pieces = [{ name: 'supply', length: 1 }, { length: 3 }]
    const { block, lookup } = blockOf(cut, { pieces })
    expect(resultsOf(block, cut).map(({ path }) => path)).toEqual([
      'total',
      'each.0.share',
      'each.1.share',
    ])
    const found = whatMatters(block, lookup, cut, 'each.0.share')
    expect(found?.moves.map(({ place }) => place.label)).toEqual([
      'piece 2, length',
      'supply, length',
    ])
    // 6/9 − 0.1/3.1 with the first, 1/1.1 − 1/7 with the second.
    expect(moveOf(found, 'pieces.0.length').span).toBeCloseTo(6 / 9 - 0.1 / 3.1, 12)
    expect(moveOf(found, 'pieces.1.length').span).toBeCloseTo(1 / 1.1 - 1 / 7, 12)
    expect(whatMatters(block, lookup, cut, 'each.2.share')).toBeUndefined()
  })

  it('says where it cannot tell, and never gives NaN', () => {
    const { block, lookup } = blockOf(edgy, { x: 2 })
    const fails = { ...edgy, compute: () => ({ y: NaN }) }
    const { low, high, span, more } = moveOf(whatMatters(block, lookup, edgy, 'y'), 'x')
    expect([low.result, high.result]).toEqual([undefined, 9])
    expect([span, more?.result]).toEqual([7, 2.2])
    const lost = whatMatters(block, lookup, fails, 'y')
    expect([lost?.now, moveOf(lost, 'x').span]).toEqual([undefined, undefined])
    const throws = {
      ...edgy,
      compute: () => {
        throw new Error('no')
      },
    }
    expect(moveOf(whatMatters(block, lookup, throws, 'y'), 'x').span).toBeUndefined()
  })

  it('moves nothing before all that is needed is known', () => {
    const { block, lookup } = blockOf(cable, run)
    const inputs = { ...block.inputs, length: null }
    const found = whatMatters({ ...block, inputs }, lookup, cable, 'drop')
    expect([found?.missing, found?.moves]).toEqual([['Length, one way'], []])
    const remedies = whatWouldPass({ ...block, inputs }, lookup, cable)
    expect([remedies.missing, remedies.finding]).toEqual([['Length, one way'], undefined])
  })
})

/**
 * y = x from 1 on, below it cannot be told. `first` passes from 4 to 8, or with a kind that lets it; `second`
 * stops from 4 up to 6, and with the loose kind.
 */
const edgy: Calculator = defineCalculator({
  id: 'edgy',
  title: 'Edges',
  phase: 'workshop',
  purpose: 'For the test.',
  inputs: {
    x: {
      type: 'number',
      label: 'Amount',
      symbol: 'x',
      of: 'length',
      units: ['m', 'ft'],
      hard: [0, 10],
      usual: [0.5, 9],
      help: 'Any.',
      choice: true,
      optional: true,
    },
    kind: {
      type: 'choice',
      label: 'Kind',
      help: 'Any.',
      options: { plain: 'plain', lax: 'lax', loose: 'loose' },
      choice: true,
      optional: true,
    },
  },
  outputs: { y: { type: 'number', label: 'Out', symbol: 'y', of: 'length', units: ['m', 'ft'] } },
  formula: [],
  validity: [],
  checks: {
    first: { title: 'First', basis: 'model' },
    second: { title: 'Second', basis: 'model' },
  },
  hazards: [],
  sources: [],
  compute: ({ x }) => ({ y: x === undefined || x < 1 ? undefined : x }),
  findings: ({ x = 0, kind }) => [
    {
      check: 'first',
      level: kind === 'lax' || kind === 'loose' || (x >= 4 && x <= 8) ? 'pass' : 'watch',
      text: `At ${String(x)}.`,
      threshold: '4 to 8 m',
    },
    {
      check: 'second',
      level: kind === 'loose' || (x >= 4 && x < 6) ? 'stop' : 'pass',
      text: 'Beside.',
      threshold: 'not 4 to 6 m',
    },
  ],
  working: () => [],
  examples: [],
})

const metres = {
  type: 'number',
  label: 'Length',
  symbol: 'L',
  of: 'length',
  units: ['m', 'ft'],
  hard: [0.1, 20],
  usual: [0.1, 6],
  help: 'Any.',
  choice: true,
} as const

/** At most 399.5 m in all. */
const hoses: Calculator = defineCalculator({
  id: 'hoses',
  title: 'Hoses',
  phase: 'workshop',
  purpose: 'For the test.',
  inputs: {
    pieces: {
      type: 'list',
      label: 'Pieces',
      row: 'piece',
      help: 'Any.',
      rows: [1, 500],
      fields: { length: metres, bore: metres },
    },
  },
  outputs: {
    total: { type: 'number', label: 'Total', symbol: 'L', of: 'length', units: ['m', 'ft'] },
  },
  formula: [],
  validity: [],
  checks: { total: { title: 'Total', basis: 'model' } },
  hazards: [],
  sources: [],
  compute: ({ pieces }) => ({ total: pieces.reduce((sum, { length }) => sum + length, 0) }),
  findings: (_, { total = 0 }) => [
    {
      check: 'total',
      level: total <= 399.5 ? 'pass' : 'watch',
      text: 'In all.',
      threshold: '399.5 m',
    },
  ],
  working: () => [],
  examples: [],
})

const levelOf = (calculator: Calculator, inputs: Inputs, check: string): Finding['level'] =>
  calculator.findings(inputs, calculator.compute(inputs), say).find((one) => one.check === check)
    ?.level ?? 'unknown'

describe('what would pass', () => {
  it('is the wire that by hand loses 3 % of the supply', () => {
    const { block, lookup } = blockOf(cable, run)
    const remedies = whatWouldPass(block, lookup, cable, { check: 'drop' })
    const { band, size, beyond } = numberRemedy(remedies, 'wire')
    // A = 2 L I ρ / (3 % of 12 V) = 8 m × 10 A / 58 / 0.36 V = 3.8314 mm².
    const area = ((8 * 10) / 58 / 0.36) * 1e-6
    expect(remedies.finding?.level).toBe('watch')
    expect(band.nearest / area).toBeCloseTo(1, 8)
    expect([band.way, band.to, band.unusual]).toEqual([1, undefined, false])
    expect(levelOf(cable, { ...run, wire: band.nearest }, 'drop')).toBe('pass')
    expect(levelOf(cable, { ...run, wire: band.nearest * (1 - 3e-9) }, 'drop')).toBe('watch')
    // Rounded to the thicker side: 3.84 mm²; 12 AWG is 3.31 mm², 11 AWG 4.17 mm² (ASTM B258).
    expect(band.from?.rounded.map(({ value }) => value * 1e6)).toEqual([
      expect.closeTo(3.84, 9),
      expect.closeTo(4.17, 2),
    ])
    expect(size).toEqual({ value: 4e-6, unit: 'mm²' })
    expect(beyond?.value).toBeCloseTo(1.1 * band.nearest, 15)
    expect(beyond?.finding.level).toBe('pass')
    // 3 % / 1.1 = 2.727 %.
    expect(beyond?.finding.text).toContain('2.7\u00a0% of the supply')
  })

  it('is said in the units asked for', () => {
    const heat = named('heat-and-rise')
    const inputs = { duty: 1, flow: 6 / 60_000, minimumFlow: 8 / 60_000, temperature: 333.15 }
    const { block, lookup } = blockOf(heat, { ...inputs, coolant: 'water', loss: 1000 })
    const us = whatWouldPass(block, lookup, heat, { check: 'minimumFlow', say: sayFor(['us']) })
    expect(us.finding?.threshold).toBe('at least 2.11\u00a0gal/min')
  })

  it('is a made size of the family of the wire that is there', () => {
    const gauge = blockOf(cable, { ...run, wire: (Math.PI / 4) * 2.0525e-3 ** 2 })
    const remedies = whatWouldPass(gauge.block, gauge.lookup, cable, { check: 'drop' })
    // 10 AWG is 5.261 mm² (ASTM B258).
    const { size } = numberRemedy(remedies, 'wire')
    expect(size?.unit).toBe('AWG')
    expect((size?.value ?? 0) * 1e6).toBeCloseTo(5.261, 3)
  })

  it('is a stretch with two ends where more is too much', () => {
    const loom = { ampacityFrom: 'loom', insulation: '70C', fuse: 30 }
    const { block, lookup } = blockOf(cable, { ...run, ...loom, wire: 2.5e-6 })
    const remedies = whatWouldPass(block, lookup, cable, { check: 'fuse' })
    const { band } = numberRemedy(remedies, 'fuse')
    // At least the current, at most the 21.75 A that the table prints.
    expect(band.nearest).toBeCloseTo(21.75, 6)
    expect(band.from?.value).toBeCloseTo(10, 6)
    expect(band.to?.rounded[0]).toEqual({ value: 21.7, figures: 3 })
  })

  it('is found for what was not given, as a stretch', () => {
    const loom = { ampacityFrom: 'loom', insulation: '70C' }
    const { block, lookup } = blockOf(cable, { ...run, ...loom, wire: 2.5e-6 })
    const remedies = whatWouldPass(block, lookup, cable, { check: 'fuse' })
    const { band, place, beyond } = numberRemedy(remedies, 'fuse')
    expect([place.now, band.way, beyond]).toEqual([undefined, 0, undefined])
    expect(band.from?.value).toBeCloseTo(10, 6)
    expect(band.to?.value).toBeCloseTo(21.75, 6)
  })

  it('is each piece that can be cut, solved', async () => {
    const cut = await simple('cut')
    const pieces = [{ length: 4 }, { length: 5 }, { length: 3 }]
    const { block, lookup } = blockOf(cut, { pieces })
    const remedies = whatWouldPass(block, lookup, cut)
    const lengths = [0, 1, 2].map((row) => numberRemedy(remedies, `pieces.${row}.length`).band)
    // Twelve metres are two too many.
    for (const [row, length] of [2, 3, 1].entries()) {
      expect(lengths[row]?.nearest).toBeCloseTo(length, 7)
      expect([lengths[row]?.way, lengths[row]?.from]).toEqual([-1, undefined])
    }
  })

  it('is never a measured, a stated or another card’s number', async () => {
    const cut = await simple('cut')
    const pieces = [{ length: 4 }, { length: 5 }, { length: 3 }, { length: 2 }]
    const refers = (ref: string) => ({ kind: 'worked', expression: { ref } }) as const
    const more = [
      number('tape', { kind: 'reading', value: 4, now: 4 }),
      number('half', {
        expression: { op: '+', left: { ref: 'note/sheet' }, right: { ref: 'note/own' } },
      }),
      number('sheet', { kind: 'rated' }),
      number('own', { kind: 'chosen' }),
      number('pump.run', { calculator: 'other', block: 'note/pump' }),
    ]
    const numbers = {
      'pieces.0.length': refers('note/tape'),
      'pieces.1.length': refers('note/half'),
      'pieces.2.length': refers('note/own'),
      'pieces.3.length': refers('note/pump.run'),
    }
    const { block, lookup } = blockOf(cut, { pieces }, numbers, more)
    const { remedies, held, cannot } = whatWouldPass(block, lookup, cut)
    expect(held.map(({ place, by }) => [place.path, by.name])).toEqual([
      ['pieces.0.length', 'tape'],
      ['pieces.1.length', 'sheet'],
      ['pieces.3.length', 'pump.run'],
    ])
    // 14 m, and the free piece is only 3 m long.
    expect([remedies, cannot.map(({ path }) => path)]).toEqual([[], ['pieces.2.length']])
  })

  it('spoils no other check where it can, and says so where it cannot', () => {
    const plain = blockOf(edgy, { x: 2, kind: 'plain' })
    const found = whatWouldPass(plain.block, plain.lookup, edgy)
    const { band, worse } = numberRemedy(found, 'x')
    expect(band.nearest).toBeCloseTo(6, 7)
    expect(band.to?.value).toBeCloseTo(8, 7)
    expect(worse).toEqual([])
    const kinds = found.remedies.find(({ type }) => type === 'choice')
    expect(kinds).toMatchObject({
      options: [
        { key: 'lax', worse: [] },
        { key: 'loose', worse: ['second'] },
      ],
    })
    const strict: Calculator = {
      ...edgy,
      findings: (input, output, write) =>
        edgy
          .findings(input, output, write)
          .map((one) =>
            one.check === 'second' && Number(input.x) >= 4 ? { ...one, level: 'stop' } : one,
          ),
    }
    const spoiled = numberRemedy(whatWouldPass(plain.block, plain.lookup, strict), 'x')
    expect([spoiled.band.nearest, spoiled.worse]).toEqual([expect.closeTo(4, 7), ['second']])
  })

  it('stays quick with very many choices, and says which are left out', () => {
    const cut = blockOf(hoses, {
      pieces: Array.from({ length: 400 }, () => ({ length: 1, bore: 1 })),
    })
    let calls = 0
    const counting: Calculator = {
      ...hoses,
      compute: (input) => {
        calls += 1
        return hoses.compute(input)
      },
    }
    const { remedies, cannot, untried } = whatWouldPass(cut.block, cut.lookup, counting)
    expect(calls).toBeLessThanOrEqual(2000)
    expect(untried.length).toBeGreaterThan(0)
    expect(remedies.length + cannot.length + untried.length).toBe(800)
    calls = 0
    const found = whatMatters(cut.block, cut.lookup, counting, 'total')
    expect(calls).toBeLessThanOrEqual(2000)
    expect((found?.moves.length ?? 0) + (found?.untried ?? 0)).toBe(800)
  })

  it('is nothing where everything passes', () => {
    const { block, lookup } = blockOf(edgy, { x: 7 })
    expect(whatWouldPass(block, lookup, edgy)).toEqual({
      finding: undefined,
      missing: [],
      remedies: [],
      cannot: [],
      held: [],
      untried: [],
    })
  })

  it('counts in whole cells', () => {
    const cells = named('cell-current')
    const example = cells.examples.find(({ name }) => name === 'a pickup at 450 A')
    if (example === undefined) throw new Error('no such example')
    const inputs = exampleInputs(cells, example)
    const { block, lookup } = blockOf(cells, inputs)
    const { band } = numberRemedy(whatWouldPass(block, lookup, cells), 'parallel')
    expect([inputs.parallel, band.nearest]).toEqual([1, 2])
    expect(moveOf(whatMatters(block, lookup, cells, 'packResistance'), 'parallel').step).toEqual({
      how: 'step',
      size: 1,
    })
  })
})

const rank = (level: Finding['level']): number =>
  ['pass', 'watch', 'unknown', 'stop'].indexOf(level)

/** Not of a table's further rows. */
const isFirst = ({ path }: { readonly path: string }): boolean => !/\.[1-9]\d*\./.test(path)

/** Every number anywhere in it. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value]
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : []
}

/** One value put in by itself, not through the code under test. */
function changed(inputs: Inputs, path: string, value: number | string): Inputs {
  const copy = structuredClone(inputs)
  const keys = path.split('.')
  const last = keys.pop() ?? ''
  const holder = keys.reduce<unknown>((at, key) => Reflect.get(Object(at), key), copy)
  Reflect.set(Object(holder), last, value)
  return copy
}

describe.each(all)('$id', (calculator) => {
  const cases = calculator.examples.map((example) => {
    const inputs = exampleInputs(calculator, example)
    return { inputs, ...blockOf(calculator, inputs) }
  })

  it('moves the results of every example by finite amounts, within the ranges', () => {
    for (const { block, lookup } of cases)
      for (const { path } of resultsOf(block, calculator).filter(isFirst)) {
        let calls = 0
        const counting: Calculator = {
          ...calculator,
          compute: (input) => {
            calls += 1
            return calculator.compute(input)
          },
        }
        const found = whatMatters(block, lookup, counting, path)
        const moves = found?.moves ?? []
        expect(calls).toBeLessThanOrEqual(2000)
        expect(found?.missing).toEqual([])
        const results = moves.flatMap(({ low, high, more, less, span }) =>
          numbersIn([low, high, more, less, span]),
        )
        expect(results.filter((one) => !Number.isFinite(one))).toEqual([])
        const outside = moves.flatMap(({ place, low, high, more, less }) =>
          [low, high, more, less].flatMap((end) =>
            end === undefined ? [] : (rangeSlip(place.field, end.value) ?? []),
          ),
        )
        expect(outside).toEqual([])
      }
  })

  it('offers choices only, within their ranges, that pass when worked again', () => {
    for (const { block, lookup, inputs } of cases)
      for (const { check } of block.findings) {
        let calls = 0
        const counting: Calculator = {
          ...calculator,
          compute: (input) => {
            calls += 1
            return calculator.compute(input)
          },
        }
        const { remedies, cannot, held, untried } = whatWouldPass(block, lookup, counting, {
          check,
        })
        expect(calls).toBeLessThanOrEqual(2000)
        expect(held).toEqual([])
        for (const place of [...cannot, ...untried, ...remedies.map((one) => one.place)])
          expect(place.field.choice).toBe(true)
        for (const remedy of remedies) {
          const { path } = remedy.place
          const level = (value: number | string) =>
            levelOf(calculator, changed(inputs, path, value), check)
          if (remedy.type === 'choice') {
            expect(remedy.options.map(({ key }) => level(key))).toEqual(
              remedy.options.map(() => 'pass'),
            )
            continue
          }
          const { band, size, place } = remedy
          const rounded = [band.from, band.to].flatMap((edge) => edge?.rounded ?? [])
          const offered = [
            band.nearest,
            ...[band.from, band.to].flatMap((edge) => edge?.value ?? []),
            ...rounded.filter(({ figures }) => figures < 6).map(({ value }) => value),
            ...(size === undefined ? [] : [size.value]),
          ]
          expect(offered.map(level)).toEqual(offered.map(() => 'pass'))
          expect(offered.flatMap((value) => rangeSlip(place.field, value) ?? [])).toEqual([])
          if (band.way === 0) continue
          // A hair (of a count, one) nearer to the present value it does not pass, or spoils a check.
          const hair = Number.isInteger(place.now) && place.field.of === 'number' ? 1 : 4e-9
          const gap = hair === 1 ? 1 : hair * Math.abs(band.nearest)
          const short = changed(inputs, path, band.nearest - band.way * gap)
          const spoiled = block.findings.filter(
            (one) => rank(levelOf(calculator, short, one.check)) > rank(one.level),
          )
          expect([level(band.nearest - band.way * gap) === 'pass', spoiled.length]).not.toEqual([
            true,
            0,
          ])
        }
      }
  })
})

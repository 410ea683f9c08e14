/**
 * Isolation readings made by a solved circuit, with and without the meter's own resistance, must give
 * the smaller leak back; the form of FMVSS 305 must agree; and nothing but a whole measurement passes.
 */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { isolationResistance } from '../../calculators/traction/isolation-resistance.ts'
import { numberIn, rowsOf } from '../reference/csv.ts'
import { say } from './run-example.ts'

type Input = Parameters<typeof isolationResistance.compute>[0]

const parallel = (...ohms: readonly number[]) => 1 / ohms.reduce((sum, r) => sum + 1 / r, 0)

interface Circuit {
  readonly plus: number
  readonly minus: number
  readonly pack: number
  readonly resistor: number
  readonly meter: number
}

/** What a voltmeter of this resistance reads on two leaks, and again with the known resistor. */
function read({ plus, minus, pack, resistor, meter }: Circuit): Input {
  const over = (one: number, other: number) => (pack * one) / (one + other)
  const negative = over(parallel(minus, meter), plus)
  const positive = over(parallel(plus, meter), minus)
  const withResistor =
    negative >= positive
      ? over(parallel(minus, meter, resistor), plus)
      : over(parallel(plus, meter, resistor), minus)
  return {
    ...blank,
    maximumVoltage: pack,
    packVoltage: pack,
    negative,
    positive,
    withResistor,
    resistor,
    meter,
  }
}

const blank: Input = {
  maximumVoltage: 400,
  bus: 'combined',
  contactors: 'closed',
  condition: 'used-dry',
  packVoltage: undefined,
  negative: undefined,
  positive: undefined,
  withResistor: undefined,
  resistor: undefined,
  resistorPower: 100,
  resistorVoltage: 2000,
  meter: 10e6,
  testerReading: undefined,
  testerVoltage: undefined,
}

const level = (input: Input, check: string) =>
  isolationResistance
    .findings(input, isolationResistance.compute(input), say)
    .find((finding) => finding.check === check)?.level

test.each(rowsOf('isolation.csv'))('$R_plus_ohm and $R_minus_ohm Ω on $Vb_V V', (row) => {
  const pack = numberIn(row, 'Vb_V')
  const { resistance, perVolt } = isolationResistance.compute({
    ...blank,
    maximumVoltage: pack,
    packVoltage: pack,
    negative: numberIn(row, 'V1_V'),
    positive: numberIn(row, 'V2_V'),
    withResistor: numberIn(row, 'V_prime_V'),
    resistor: numberIn(row, 'Ro_ohm'),
    meter: 1e12,
  })
  // The table prints its readings to six figures.
  expect((resistance ?? 0) / numberIn(row, 'Ri_R100_ohm')).toBeCloseTo(1, 5)
  expect((resistance ?? 0) / numberIn(row, 'Ri_305_ohm')).toBeCloseTo(1, 5)
  expect((perVolt ?? 0) / numberIn(row, 'ohm_per_V')).toBeCloseTo(1, 5)
})

const leaks = fc.double({ min: 1e4, max: 2e7, noNaN: true })
const circuits = fc.record({
  plus: leaks,
  minus: leaks,
  pack: fc.double({ min: 60, max: 900, noNaN: true }),
  resistor: fc.double({ min: 1e4, max: 5e5, noNaN: true }),
  meter: fc.constantFrom(1e6, 1e7, 1e9),
})

test('the smaller leak comes back, whatever the meter', () => {
  fc.assert(
    fc.property(circuits, (circuit) => {
      const input = read(circuit)
      const found = isolationResistance.compute(input).resistance ?? 0
      expect(found / Math.min(circuit.plus, circuit.minus)).toBeCloseTo(1, 6)
      expect(level(input, 'readings')).toBe('pass')
    }),
  )
})

test('all ohms times k give k times the resistance; all volts times k give the same', () => {
  fc.assert(
    fc.property(circuits, fc.double({ min: 0.5, max: 2, noNaN: true }), (circuit, k) => {
      const plain = isolationResistance.compute(read(circuit)).resistance ?? 0
      const ohms = {
        plus: circuit.plus * k,
        minus: circuit.minus * k,
        resistor: circuit.resistor * k,
        meter: circuit.meter * k,
      }
      const more = isolationResistance.compute(read({ ...circuit, ...ohms })).resistance ?? 0
      const volts = isolationResistance.compute(read({ ...circuit, pack: circuit.pack * k }))
      expect(more / plain).toBeCloseTo(k, 6)
      expect((volts.resistance ?? 0) / plain).toBeCloseTo(1, 6)
    }),
  )
})

describe('nothing but a whole measurement passes', () => {
  const good = read({ plus: 5e6, minus: 4e6, pack: 400, resistor: 1e5, meter: 10e6 })

  test('good as it stands', () => {
    expect(level(good, 'isolation')).toBe('pass')
  })
  test('contactors open or not told', () => {
    expect(level({ ...good, contactors: 'open' }, 'isolation')).toBe('unknown')
    expect(level({ ...good, contactors: undefined }, 'isolation')).toBe('unknown')
  })
  test('a reading that the others contradict', () => {
    expect(level({ ...good, positive: 60 }, 'isolation')).toBe('unknown')
  })
  test('a tester below the pack, or of unknown voltage', () => {
    const tester = { ...blank, testerReading: 5e6 }
    expect(level({ ...tester, testerVoltage: 500 }, 'isolation')).toBe('pass')
    expect(level({ ...tester, testerVoltage: 250 }, 'isolation')).toBe('unknown')
    expect(level(tester, 'isolation')).toBe('unknown')
  })
  test('a dead short is a stop, with the contactors open too', () => {
    const short = { ...good, negative: 400, positive: 0.001, withResistor: 400 }
    expect(isolationResistance.compute(short).resistance).toBe(0)
    expect(level(short, 'isolation')).toBe('stop')
    expect(level({ ...short, contactors: 'open' }, 'isolation')).toBe('stop')
  })
  test('29 mA of leakage is a stop at any voltage', () => {
    for (const volts of [72, 131.4, 400, 800]) {
      const input: Input = {
        ...blank,
        bus: 'dc',
        maximumVoltage: volts,
        testerReading: volts / 0.029,
        testerVoltage: 1000,
      }
      expect(level(input, 'isolation')).toBe('stop')
    }
  })
  test('of two methods the lower counts', () => {
    const both = { ...good, testerReading: 1e5, testerVoltage: 500 }
    expect(isolationResistance.compute(both).resistance).toBe(1e5)
    expect(level(both, 'isolation')).toBe('stop')
  })
})

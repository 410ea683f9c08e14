/**
 * Constant power against its own definition and against a second way of solving for it.
 */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { findRoot } from '../../calculators/solve.ts'
import { cellCurrent, currentForPower } from '../../calculators/traction/cell-current.ts'

const open = fc.double({ min: 2, max: 1000, noNaN: true })
const resistance = fc.double({ min: 1e-4, max: 1, noNaN: true })
const share = fc.double({ min: 1e-9, max: 0.999, noNaN: true })

test('the current times the sagged voltage is the power, on the side of small sag', () => {
  fc.assert(
    fc.property(open, resistance, share, (volts, ohms, part) => {
      const power = (part * volts ** 2) / (4 * ohms)
      const current = currentForPower(volts, ohms, power) ?? NaN
      expect((current * (volts - current * ohms)) / power).toBeCloseTo(1, 9)
      expect(current * ohms).toBeLessThanOrEqual(volts / 2)
      const searched = findRoot(
        (amps) => amps * (volts - amps * ohms) - power,
        0,
        volts / (2 * ohms),
      )
      expect((searched ?? NaN) / current).toBeCloseTo(1, 6)
    }),
  )
})

test('beyond the most there is, no current', () => {
  expect(currentForPower(100, 0.1, 25_000)).toBeCloseTo(500, 9)
  expect(currentForPower(100, 0.1, 25_001)).toBeUndefined()
})

// J. Bird, Electrical Circuit Theory and Technology, 4.4: 15 V and 2 Ω on 58 Ω: 0.25 A, 14.5 V.
test('ten cells of 1.5 V and 0.2 Ω on 58 Ω', () => {
  const { peak, loaded } = cellCurrent.compute({
    series: 10,
    parallel: 1,
    capacity: 3600,
    cellVoltage: 1.5,
    cellMinimum: 1,
    resistance: 0.2,
    resistanceAt: 293.15,
    temperature: 293.15,
    hottest: 328.15,
    rest: 0,
    asked: 'power',
    steadyCurrent: undefined,
    peakCurrent: undefined,
    steadyPower: undefined,
    peakPower: 0.25 ** 2 * 58,
    peakTime: 1,
    steadyRate: 1,
    pulseRate: undefined,
    pulseTime: undefined,
  })
  expect(peak).toBeCloseTo(0.25, 9)
  expect(loaded).toBeCloseTo(14.5, 9)
})

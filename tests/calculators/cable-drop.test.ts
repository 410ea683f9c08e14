/**
 * Cable drop: how it scales, that the sizes it names do what is said of them, and where a table does
 * not apply.
 */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { cableDrop } from '../../calculators/auxiliary/cable-drop.ts'
import { gaugeArea } from '../../calculators/wire.ts'

type Input = Parameters<typeof cableDrop.compute>[0]

const base: Input = {
  current: 10,
  length: 4,
  wire: 2.5e-6,
  volts: 12,
  returnPath: 'wire',
  chassis: 0.005,
  conductor: 'flexible',
  temperature: 343.15,
  critical: 'yes',
  ampacityFrom: 'boat',
  insulation: '105C',
  sheetRating: undefined,
  sheetConditions: undefined,
  derate: 1,
  fuse: undefined,
}
const drop = (input: Partial<Input>) => cableDrop.compute({ ...base, ...input }).drop ?? NaN
const factors = fc.double({ min: 0.1, max: 10, noNaN: true })

test('drop goes with current and length, loss with the square of the current', () => {
  fc.assert(
    fc.property(factors, factors, (i, l) => {
      const scaled = cableDrop.compute({
        ...base,
        current: base.current * i,
        length: base.length * l,
      })
      expect((scaled.drop ?? NaN) / drop({})).toBeCloseTo(i * l, 9)
      expect((scaled.loss ?? NaN) / (10 * drop({}))).toBeCloseTo(i * i * l, 9)
    }),
  )
})

test('the body in place of the return cable: half the copper and its own resistance', () => {
  expect(drop({ returnPath: 'chassis' })).toBeCloseTo(drop({}) / 2 + 10 * 0.005, 12)
})

test('the size named for the drop keeps it, and the one below does not', () => {
  const sizes = [0.5, 0.75, 1, 1.5, 2, 2.5, 3, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 150, 185, 240]
  const amps = fc.double({ min: 1, max: 200, noNaN: true })
  fc.assert(
    fc.property(amps, fc.constantFrom('yes', 'no'), (current, critical) => {
      const { sizeForDrop } = cableDrop.compute({ ...base, current, critical })
      const limit = (critical === 'yes' ? 0.03 : 0.1) * 12
      const keeps = sizes
        .map((size) => size * 1e-6)
        .filter((wire) => drop({ current, wire }) <= limit)
      if (sizeForDrop === undefined || sizeForDrop >= 0.5e-6)
        expect(sizeForDrop ?? 0).toBeCloseTo(keeps[0] ?? 0, 12)
    }),
  )
})

test('what the next size leaves is what it has when fitted', () => {
  const here = cableDrop.compute({ ...base, wire: gaugeArea(10) })
  const next = cableDrop.compute({ ...base, wire: here.nextSize ?? NaN })
  expect(next.dropShare).toBeCloseTo(here.nextShare ?? NaN, 12)
  expect(here.nextSize).toBeCloseTo(gaugeArea(8), 12)
})

test('the marine table is not used at 50 V and above, a sheet rating is', () => {
  expect(cableDrop.compute({ ...base, volts: 48 }).ampacity).toBeDefined()
  expect(cableDrop.compute({ ...base, volts: 50 }).ampacity).toBeUndefined()
  const sheet: Input = { ...base, volts: 400, ampacityFrom: 'sheet', sheetRating: 30, derate: 0.8 }
  expect(cableDrop.compute(sheet).ampacity).toBeCloseTo(24, 12)
})

test('above 60 V the high-voltage hazard comes with it', () => {
  const output = cableDrop.compute(base)
  expect(cableDrop.moreHazards?.({ ...base, volts: 61 }, output)).toContain('high-voltage')
  expect(cableDrop.moreHazards?.(base, output)).not.toContain('high-voltage')
})

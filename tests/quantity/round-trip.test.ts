/**
 * What the kit writes, it reads back: every unit, any size of number, typed digits kept.
 */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  dimensions,
  formatQuantity,
  fromSI,
  parseQuantity,
  toSI,
  unitNames,
  unitOf,
} from '../../src/quantity/index.ts'
import type { Of } from '../../src/quantity/index.ts'

const compound = Object.values(dimensions).flatMap(({ units, si }) => [...units, si])
const units = [...new Set([...unitNames, ...compound])].filter((unit) => unit !== 'AWG')

/** C and F by themselves could be degrees: they are read where they are due. */
const due: Readonly<Record<string, Of>> = { C: 'charge', F: 'capacitance' }

describe.each(units)('%s', (unit) => {
  const kind = unitOf(unit)
  const least = kind?.flavour === 'temperature' || kind?.flavour === 'absolute' ? 0 : -1e9

  test('is read back as written, to twelve figures', () => {
    fc.assert(
      fc.property(fc.double({ min: least, max: 1e9, noNaN: true }), (number) => {
        const value = toSI(number, unit)
        const read = parseQuantity(formatQuantity(value, unit, { exact: true }), due[unit])
        if (!read.ok) throw new Error(`${read.rule}: ${read.text}`)
        expect(read).toMatchObject({ unit: unit === '1' ? '' : unit, flavour: kind?.flavour })
        expect(read.vector).toEqual(kind?.vector)
        const back = fromSI(read.value, unit)
        // Near zero on a scale with an offset, what is left is the rounding of the offset.
        expect(Math.abs(back - fromSI(value, unit))).toBeLessThanOrEqual(
          1e-11 * Math.abs(number) + (least === 0 ? 1e-10 : 0),
        )
      }),
      { numRuns: 30 },
    )
  })

  test('converts there and back', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e9, max: 1e9, noNaN: true }), (number) => {
        const back = fromSI(toSI(number, unit), unit)
        expect(Math.abs(back - number)).toBeLessThanOrEqual(1e-14 * Math.abs(number) + 1e-12 * 500)
      }),
      { numRuns: 30 },
    )
  })
})

test('every wire size from 40 to 4/0', () => {
  for (let gauge = 40; gauge >= -3; gauge--) {
    const text = formatQuantity(toSI(gauge, 'AWG'), 'AWG')
    expect(text).toBe(`${gauge > 0 ? gauge : `${1 - gauge}/0`}\u00A0AWG`)
    expect(parseQuantity(text, 'wireArea')).toMatchObject({ ok: true, value: toSI(gauge, 'AWG') })
    expect(fromSI(toSI(gauge, 'AWG'), 'AWG')).toBeCloseTo(gauge, 9)
  }
})

test('the figures typed are those printed', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1e-3, max: 9e8, noNaN: true }),
      fc.integer({ min: 2, max: 9 }),
      (number, figures) => {
        const text = formatQuantity(toSI(number, 'V'), 'V', { figures })
        const read = parseQuantity(text)
        const whole = Number(number.toPrecision(figures)).toFixed(0).length
        expect(read).toMatchObject({ ok: true, figures: Math.max(figures, number < 1 ? 0 : whole) })
      },
    ),
  )
})

test('whatever is typed gets an answer, never an exception', () => {
  const pieces = fc.constantFrom(
    ...[
      '5',
      '1/2',
      '.',
      ',',
      ' ',
      '-',
      '–',
      '°',
      'C',
      'F',
      'm',
      'k',
      'µ',
      '²',
      '^',
      '/',
      '(',
      ')',
      '·',
    ],
    ...[
      'psi',
      'g',
      'AWG',
      'Ω',
      '%',
      '$',
      'e',
      '×',
      '10',
      '⁻⁷',
      '½',
      'Δ',
      'diff',
      'lb',
      'ft',
      '\u00A0',
      '"',
    ],
  )
  const typed = fc.oneof(
    fc.string({ unit: 'grapheme' }),
    fc.array(pieces, { maxLength: 9 }).map((all) => all.join('')),
  )
  const anything = fc.constantFrom(
    undefined,
    ...Object.keys(dimensions).filter((of): of is Of => of in dimensions),
  )
  fc.assert(
    fc.property(typed, anything, (text, of) => {
      const read = parseQuantity(text, of)
      if (!read.ok) expect(read.text).not.toMatch(/undefined|NaN/)
      else {
        expect(Number.isFinite(read.value)).toBe(true)
        if (of)
          expect(read).toMatchObject({
            of,
            flavour: dimensions[of].flavour,
            vector: dimensions[of].vector,
          })
      }
    }),
    { numRuns: 3000 },
  )
})

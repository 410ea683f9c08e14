/**
 * Arithmetic on quantities: what may be added, what a product is called, what is refused and how.
 */
import { describe, expect, test } from 'vitest'
import {
  combine,
  displayUnit,
  formatQuantity,
  negate,
  parseQuantity,
} from '../../src/quantity/index.ts'
import type { Of, Quantity } from '../../src/quantity/index.ts'

function q(text: string, of?: Of): Quantity {
  const read = parseQuantity(text, of)
  if (!read.ok) throw new Error(read.text)
  const { value, vector, flavour } = read
  return { value, vector, flavour, ...(read.of && { of: read.of }) }
}

type Op = '+' | '-' | '*' | '/'

describe('allowed', () => {
  test.each([
    ['2.4 m', '+', '2.8 m', 'length', '5.20 m'],
    ['2.4 m', '-', '2.8 m', 'length', '−400 mm'],
    ['65 °C', '-', '59 °C', 'temperatureDifference', '6.00 K'],
    ['65 °C', '-', '59 K', 'temperature', '6.0 °C'],
    ['65 °C', '+', '9 Δ°F', 'temperature', '70.0 °C'],
    ['9 Δ°F', '+', '65 °C', 'temperature', '70.0 °C'],
    ['6 K', '+', '6 K', 'temperatureDifference', '12.0 K'],
    ['100 kPa gauge', '-', '40 kPa gauge', 'pressure', '60.0 kPa'],
    ['100 kPa gauge', '+', '40 kPa', 'gaugePressure', '140 kPa gauge'],
    ['40 kPa', '+', '100 kPa gauge', 'gaugePressure', '140 kPa gauge'],
    ['100 kPa abs', '-', '40 kPa', 'absolutePressure', '60.0 kPa abs'],
    ['100 kPa abs', '-', '40 kPa abs', 'pressure', '60.0 kPa'],
    ['12 V', '*', '5 A', 'power', '60.0 W'],
    ['12 V', '/', '5 A', 'resistance', '2.40 Ω'],
    ['2 kW', '*', '3 h', 'energy', '6.00 kWh'],
    ['150 Wh/km', '*', '10 km', 'energy', '1.50 kWh'],
    ['15 kWh', '/', '100 km', 'consumption', '150 Wh/km'],
    ['100 Ah', '*', '12 V', 'energy', '1.20 kWh'],
    ['100 kg', '*', '9.81 m/s²', 'force', '981 N'],
    ['100 N·m', '*', '100 rad/s', 'power', '10.0 kW'],
    ['10 kW', '/', '100 rad/s', 'torque', '100 N·m'],
    ['100 N', '*', '2 m', undefined, '200 J'],
    ['100 rad/s', '*', '0.3 m', 'speed', '108 km/h'],
    ['2 rpm', '*', '1 min', 'angle', '720 °'],
    ['0.1 m', '*', '0.1 m', 'area', '100 cm²'],
    ['600 W', '/', '6 K', 'thermalConductance', '100 W/K'],
    ['6 K', '/', '600 W', 'thermalResistance', '0.0100 K/W'],
    ['10 L', '/', '5 min', 'flow', '2.00 L/min'],
    ['6 m', '/', '2 m', 'number', '3.00'],
    ['6 m', '*', '2', 'length', '12.0 m'],
    ['2', '*', '6 N·m', 'torque', '12.0 N·m'],
    ['6 N·m', '*', '50 %', 'torque', '3.00 N·m'],
    ['6 mm²', '*', '2', 'area', '12.0 mm²'],
    ['50 %', '*', '50 %', 'fraction', '25.0 %'],
    ['50 %', '*', '3', 'number', '1.50'],
    ['3', '/', '50 %', 'number', '6.00'],
    ['3', '+', '50 %', 'number', '3.50'],
    ['1', '/', '5 s', 'frequency', '0.200 Hz'],
    ['4 kg', '*', '9 m²', 'momentOfInertia', '36.0 kg·m²'],
    ['4 kg', '*', '9 m', undefined, '36.0 kg·m'],
    ['US$ 12', '/', '100 km', 'moneyPerLength', '0.120 US$/km'],
    ['0.30 US$/kWh', '*', '10 kWh', 'money', '3.00 US$'],
  ] as const)('%s %s %s is %s, %s', (a, op, b, of, shown) => {
    const result = combine(op, q(a), q(b))
    if ('ok' in result) throw new Error(result.text)
    expect(result.of).toBe(of)
    expect(formatQuantity(result.value, displayUnit(result, 'metric')).replace('\u00A0', ' ')).toBe(
      shown,
    )
  })
})

describe('refused', () => {
  const cases: readonly (readonly [string, Op, string, string, string, string?])[] = [
    [
      '65 °C',
      '+',
      '6 °C',
      'points-added',
      'a temperature cannot be added to a temperature',
      'one of the two must be a difference, as `6 K` or `11 Δ°F`',
    ],
    [
      '6 K',
      '-',
      '65 °C',
      'point-from-difference',
      'a temperature cannot be taken from a temperature difference',
    ],
    [
      '65 °C',
      '*',
      '2',
      'point-multiplied',
      'a temperature is a point on a scale and cannot be multiplied',
      'take the difference of two temperatures first',
    ],
    [
      '2',
      '/',
      '65 °C',
      'point-multiplied',
      'a temperature is a point on a scale and cannot be divided',
      'take the difference of two temperatures first',
    ],
    [
      '30 psig',
      '+',
      '30 psig',
      'points-added',
      'a gauge pressure cannot be added to a gauge pressure',
      'one of the two must be a pressure difference, as `30 kPa`',
    ],
    [
      '30 psig',
      '-',
      '30 psia',
      'points-mixed',
      'an absolute pressure cannot be taken from a gauge pressure',
      'the pressure of the air lies between gauge and absolute',
    ],
    [
      '30 psig',
      '/',
      '2',
      'point-multiplied',
      'a gauge pressure is a point on a scale and cannot be divided',
      'take the difference of two pressures first',
    ],
    [
      '30 psi',
      '-',
      '30 psig',
      'point-from-difference',
      'a gauge pressure cannot be taken from a pressure difference',
    ],
    ['2 m', '+', '3 s', 'wrong-dimension', 'a time cannot be added to a length'],
    ['2 m', '-', '3', 'wrong-dimension', 'a plain number cannot be taken from a length'],
    ['2 N·m', '+', '3 J', 'wrong-dimension', 'an energy cannot be added to a torque'],
    ['2 N', '+', '3 Wh/km', 'wrong-dimension', 'an energy per distance cannot be added to a force'],
    ['2 m', '+', '3 m/K', 'wrong-dimension', 'a value in m/K cannot be added to a length'],
    ['2 m', '/', '0 s', 'division-by-zero', 'a length is divided by zero'],
    ['1e300 m', '*', '1e300 m', 'not-finite', 'the result of `*` is too large to be a number'],
  ]
  for (const [a, op, b, rule, text, hint] of cases)
    test(`${a} ${op} ${b}: ${rule}`, () => {
      expect(combine(op, q(a), q(b))).toEqual({ ok: false, rule, text, ...(hint && { hint }) })
    })

  test('a temperature has no negative', () => {
    expect(negate(q('65 °C'))).toEqual({
      ok: false,
      rule: 'point-negated',
      text: 'a temperature cannot be turned into its negative',
    })
    expect(negate(q('6 K'))).toEqual(q('-6 K'))
    expect(negate(q('0 K'))).toEqual(q('0 K'))
  })
})

describe('displayUnit', () => {
  test.each([
    ['850 W', 'W', 'W'],
    ['30 kW', 'kW', 'kW'],
    ['5 mm', 'mm', 'in'],
    ['12 m', 'm', 'ft'],
    ['3 km', 'km', 'mi'],
    ['0 m', 'm', 'ft'],
    ['65 °C', '°C', '°F'],
    ['6 K', 'K', 'Δ°F'],
    ['10 kPa gauge', 'kPa gauge', 'psi gauge'],
    ['18 AWG', 'mm²', 'AWG'],
    ['5 kg·m', 'kg·m', 'kg·m'],
    ['5 m/K', 'm/K', 'm/K'],
    ['5 N/s', 'N/s', 'N/s'],
    ['5 rev/mi', 'rad/m', 'rad/m'],
    ['5', '', ''],
  ])('%s: %s, %s', (text, metric, us) => {
    expect(displayUnit(q(text), 'metric')).toBe(metric)
    expect(displayUnit(q(text), 'us')).toBe(us)
  })
})

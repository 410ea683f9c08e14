/**
 * Texts as builders type them, and what is read. Values are worked beside the table from the legal
 * definitions (inch 25.4 mm, pound 0.45359237 kg, US gallon 231 in³) or printed conversion tables.
 */
import { describe, expect, test } from 'vitest'
import { parseQuantity } from '../../src/quantity/index.ts'
import type { Of } from '../../src/quantity/index.ts'

const many = Infinity

/* text, what is due, SI value, unit as the kit writes it, figures */
type Case = readonly [string, Of | undefined, number, string, number]

const fractions: readonly Case[] = [
  ['1/2 in', 'length', 0.0127, 'in', many],
  ['1 1/2 in', 'length', 0.0381, 'in', many],
  ['1-1/2 in', 'length', 0.0381, 'in', many],
  ['½ in', 'length', 0.0127, 'in', many],
  ['1½ in', 'length', 0.0381, 'in', many],
  ['1 ½ in', 'length', 0.0381, 'in', many],
  ['5/8"', 'length', 0.015875, 'in', many],
  ['5/8”', 'length', 0.015875, 'in', many],
  ['5/8 in.', 'length', 0.015875, 'in', many],
  ['3/4-inch', 'length', 0.01905, 'in', many],
  ['-¼ in', 'length', -0.00635, 'in', many],
]

const numbers: readonly Case[] = [
  ['5A', 'current', 5, 'A', 1],
  ['5.0 A', 'current', 5, 'A', 2],
  ['.5 A', 'current', 0.5, 'A', 1],
  ['0.050 A', 'current', 0.05, 'A', 2],
  ['+5 V', 'voltage', 5, 'V', 1],
  ['−5 °C', 'temperature', 268.15, '°C', 1],
  ['–5 °C', 'temperature', 268.15, '°C', 1],
  ['1,200.0 W', 'power', 1200, 'W', 5],
  ['1,234,567.5 W', 'power', 1234567.5, 'W', 8],
  ['12\u202F345 W', 'power', 12345, 'W', 5],
  ['5e3 W', 'power', 5000, 'W', 1],
  ['1.2 × 10⁻⁷ F', 'capacitance', 1.2e-7, 'F', 2],
  ['5\u00A0A', 'current', 5, 'A', 1],
  ['  5 A\u200B ', 'current', 5, 'A', 1],
  ['4', 'number', 4, '', many],
  ['4.0', 'number', 4, '', 2],
  ['4', undefined, 4, '', many],
  ['4 %', 'fraction', 0.04, '%', 1],
  ['4%', 'fraction', 0.04, '%', 1],
  ['4 %', undefined, 0.04, '%', 1],
  ['0.04', 'fraction', 0.04, '', 1],
  ['1/4', 'fraction', 0.25, '', many],
]

const compound: readonly Case[] = [
  ['0.3 mΩ/ft', 'resistancePerLength', 0.3e-3 / 0.3048, 'mΩ/ft', 1],
  ['0.5 W/(m·K)', 'thermalConductivity', 0.5, 'W/(m·K)', 1],
  ['0.5 W/m/K', 'thermalConductivity', 0.5, 'W/(m·K)', 1],
  ['3.9 kJ/(kg K)', 'specificHeat', 3900, 'kJ/(kg·K)', 2],
  ['3900 J/(kg·°C)', 'specificHeat', 3900, 'J/(kg·K)', 4],
  ['1 BTU/(lb·°F)', 'specificHeat', 4186.8, 'BTU/(lb·Δ°F)', 1],
  ['25 W m⁻² K⁻¹', 'heatTransfer', 25, 'W/(m²·K)', 2],
  ['1000 kg/m³', 'density', 1000, 'kg/m³', 4],
  ['1000 kg/m^3', 'density', 1000, 'kg/m³', 4],
  ['1000 kg/m3', 'density', 1000, 'kg/m³', 4],
  ['250 Wh/mi', 'consumption', 900000 / 1609.344, 'Wh/mi', 3],
  ['15 kWh/100km', 'consumption', 540, 'kWh/100 km', 2],
  ['15 kWh / 100 km', 'consumption', 540, 'kWh/100 km', 2],
  ['36 kWh/100 mi', 'consumption', 129.6e6 / 160934.4, 'kWh/100 mi', 2],
  ['100 A²s', 'meltingIntegral', 100, 'A²s', 3],
  ['100 A^2·s', 'meltingIntegral', 100, 'A²s', 3],
  ['0.00393 1/K', undefined, 0.00393, '1/K', 3],
  ['0.00393 /K', undefined, 0.00393, '1/K', 3],
  ['100 Ω/V', 'resistancePerVolt', 100, 'Ω/V', 3],
  ['1 S', undefined, 1, 'S', 1],
  ['760 rev/mi', undefined, (760 * 2 * Math.PI) / 1609.344, 'rev/mi', 3],
  ['2 N m', 'torque', 2, 'N·m', 1],
  ['2 Nm', 'torque', 2, 'N·m', 1],
  ['2 N*m', 'torque', 2, 'N·m', 1],
  ['2 N⋅m', 'torque', 2, 'N·m', 1],
  ['2 N×m', 'torque', 2, 'N·m', 1],
  ['20 lb ft', 'torque', 27.116358966628, 'lb·ft', 2],
  ['20 ft-lbs', 'torque', 27.116358966628, 'ft·lb', 2],
  ['20 ft·lbf', 'torque', 27.116358966628, 'ft·lbf', 2],
  ['40 in-lbf', 'torque', 4.519393161105, 'in·lbf', 2],
  ['40 lb·in', 'torque', 4.519393161105, 'lb·in', 2],
  ['1 lb·ft²', 'momentOfInertia', 0.45359237 * 0.3048 ** 2, 'lb·ft²', 1],
]

const letters: readonly Case[] = [
  ['10 µF', 'capacitance', 1e-5, 'µF', 2],
  ['10 μF', 'capacitance', 1e-5, 'µF', 2],
  ['10 uF', 'capacitance', 1e-5, 'µF', 2],
  ['12 mΩ', 'resistance', 0.012, 'mΩ', 2],
  ['12 m\u2126', 'resistance', 0.012, 'mΩ', 2],
  ['12 mohm', 'resistance', 0.012, 'mΩ', 2],
  ['12 ohms', 'resistance', 12, 'Ω', 2],
  ['10 MΩ', 'resistance', 1e7, 'MΩ', 2],
  ['1 MW', 'power', 1e6, 'MW', 1],
  ['1 mW', 'power', 1e-3, 'mW', 1],
  ['6 mm²', 'wireArea', 6e-6, 'mm²', 1],
  ['6 mm2', 'wireArea', 6e-6, 'mm²', 1],
  ['3 lbs', 'mass', 1.36077711, 'lb', 1],
  ['3 l', 'volume', 3e-3, 'L', 1],
  ['500 ml', 'volume', 5e-4, 'mL', 3],
  ['1 hr', 'time', 3600, 'h', 1],
  ['2 inches', 'length', 0.0508, 'in', 1],
  ['6 feet', 'length', 1.8288, 'ft', 1],
  ['3000 RPM', 'angularSpeed', 100 * Math.PI, 'rpm', 4],
  ['45°', 'angle', Math.PI / 4, '°', 2],
  ['45 deg', 'angle', Math.PI / 4, '°', 2],
  ['80 Ah', 'charge', 288000, 'Ah', 2],
  ['80 A h', 'charge', 288000, 'A·h', 2],
]

const gallonsAndPressures: readonly Case[] = [
  ['1 gal', 'volume', 3.785411784e-3, 'gal', 1],
  ['1 US gal', 'volume', 3.785411784e-3, 'gal', 1],
  ['1 U.S. gallon', 'volume', 3.785411784e-3, 'gal', 1],
  ['1 gal (US)', 'volume', 3.785411784e-3, 'gal', 1],
  ['1 qt', 'volume', 0.946352946e-3, 'qt', 1],
  ['1 impgal', 'volume', 4.54609e-3, 'impgal', 1],
  ['1 imp gal', 'volume', 4.54609e-3, 'impgal', 1],
  ['1 imperial gallon', 'volume', 4.54609e-3, 'impgal', 1],
  ['2.5 gpm', 'flow', (2.5 * 3.785411784e-3) / 60, 'gal/min', 2],
  ['2.5 US gpm', 'flow', (2.5 * 3.785411784e-3) / 60, 'gal/min', 2],
  ['2.5 impgal/min', 'flow', (2.5 * 4.54609e-3) / 60, 'impgal/min', 2],
  ['150 CFM', 'flow', (150 * 0.3048 ** 3) / 60, 'cfm', 3],
  ['30 psi', 'pressure', 206842.71879505, 'psi', 2],
  ['30 psi', undefined, 206842.71879505, 'psi', 2],
  ['30 psig', 'gaugePressure', 206842.71879505, 'psi gauge', 2],
  ['30 psi(g)', 'gaugePressure', 206842.71879505, 'psi gauge', 2],
  ['30 PSI gauge', 'gaugePressure', 206842.71879505, 'psi gauge', 2],
  ['100 kPa gauge', 'gaugePressure', 1e5, 'kPa gauge', 3],
  ['-20 kPa gauge', 'gaugePressure', -2e4, 'kPa gauge', 2],
  ['1.4 bar(g)', 'gaugePressure', 1.4e5, 'bar gauge', 2],
  ['1.4 barg', 'gaugePressure', 1.4e5, 'bar gauge', 2],
  ['14.7 psia', 'absolutePressure', 101352.932, 'psi abs', 3],
  ['1.0 bar abs', 'absolutePressure', 1e5, 'bar abs', 2],
  ['1.0 bar absolute', 'absolutePressure', 1e5, 'bar abs', 2],
  ['1.0 bar(a)', undefined, 1e5, 'bar abs', 2],
  ['10 ft H2O', 'pressure', 29890.6692, 'ftH2O', 2],
  ['10 ft H₂O', 'pressure', 29890.6692, 'ftH2O', 2],
  ['29.92 inHg', 'pressure', 101320.748, 'inHg', 4],
  ['29.92 in Hg', 'pressure', 101320.748, 'inHg', 4],
]

const temperatures: readonly Case[] = [
  ['65 °C', 'temperature', 338.15, '°C', 2],
  ['65 ℃', 'temperature', 338.15, '°C', 2],
  ['65 º C', 'temperature', 338.15, '°C', 2],
  ['65 degC', 'temperature', 338.15, '°C', 2],
  ['65 deg C', 'temperature', 338.15, '°C', 2],
  ['65 degrees Celsius', 'temperature', 338.15, '°C', 2],
  ['65 °C', undefined, 338.15, '°C', 2],
  ['-40 °F', 'temperature', 233.15, '°F', 2],
  ['212 °F', 'temperature', 373.15, '°F', 3],
  ['298.15 K', 'temperature', 298.15, 'K', 5],
  ['6 K', 'temperatureDifference', 6, 'K', 1],
  ['6 K', undefined, 6, 'K', 1],
  ['6 °C diff', 'temperatureDifference', 6, 'Δ°C', 1],
  ['9 Δ°F', 'temperatureDifference', 5, 'Δ°F', 1],
  ['9 ∆°F', 'temperatureDifference', 5, 'Δ°F', 1],
  ['9 °F diff', 'temperatureDifference', 5, 'Δ°F', 1],
  ['9 F diff', 'temperatureDifference', 5, 'Δ°F', 1],
  ['9 °F difference', undefined, 5, 'Δ°F', 1],
  ['9 delta °F', 'temperatureDifference', 5, 'Δ°F', 1],
]

// Areas: ASTM B258-14, table 1, from its diameters 0.0403, 0.3648 and 0.4600 in.
const wires: readonly Case[] = [
  ['18 AWG', 'wireArea', 8.23047e-7, 'AWG', many],
  ['18AWG', 'wireArea', 8.23047e-7, 'AWG', many],
  ['AWG 18', 'wireArea', 8.23047e-7, 'AWG', many],
  ['18 awg', undefined, 8.23047e-7, 'AWG', many],
  ['2/0 AWG', 'wireArea', 6.74309e-5, 'AWG', many],
  ['00 AWG', 'wireArea', 6.74309e-5, 'AWG', many],
  ['AWG 2/0', 'wireArea', 6.74309e-5, 'AWG', many],
  ['0000 AWG', 'wireArea', 1.072193e-4, 'AWG', many],
  ['250 kcmil', 'wireArea', 1.26677e-4, 'kcmil', 3],
  ['0.1 in²', 'wireArea', 6.4516e-5, 'in²', 1],
]

const money: readonly Case[] = [
  ['US$ 12.50', 'money', 12.5, 'US$', 4],
  ['$12.50', 'money', 12.5, 'US$', 4],
  ['12.50 US$', 'money', 12.5, 'US$', 4],
  ['0.36 US$/kWh', 'moneyPerEnergy', 1e-7, 'US$/kWh', 2],
  ['$0.36/kWh', 'moneyPerEnergy', 1e-7, 'US$/kWh', 2],
]

describe.each([
  ['fractions', fractions],
  ['numbers', numbers],
  ['compound units', compound],
  ['letters and prefixes', letters],
  ['gallons and pressures', gallonsAndPressures],
  ['temperatures', temperatures],
  ['wire sizes', wires],
  ['money', money],
])('%s', (_, cases) => {
  test.each(cases)('`%s` (%s)', (text, of, value, unit, figures) => {
    const read = parseQuantity(text, of)
    if (!read.ok) throw new Error(`${read.rule}: ${read.text}`)
    expect(Math.abs(read.value - value)).toBeLessThanOrEqual(1e-5 * Math.abs(value) * slack(text))
    expect(read).toMatchObject({ unit, figures, typed: text.trim() })
    expect(read.remark).toBeUndefined()
    if (of) expect(read.of).toBe(of)
  })
})

/** The table's areas and the two pressures have six digits; all else is exact. */
const slack = (text: string): number => (/AWG|kcmil|psia|Hg/i.test(text) ? 1 : 1e-8)

describe('what can be meant in one way only is read and said', () => {
  test.each([
    [
      '1,250 kg',
      'mass',
      1250,
      'kg',
      '`1,250 kg` is read as 1250 kg: write `1250 kg`, or `1.250 kg` if the comma is a decimal one',
    ],
    [
      '-1,250',
      'number',
      -1250,
      '',
      '`-1,250` is read as -1250: write `-1250`, or `-1.250` if the comma is a decimal one',
    ],
    ['65 C', 'temperature', 338.15, '°C', '`65 C` is read as 65 °C'],
    ['65c', 'temperature', 338.15, '°C', '`65c` is read as 65 °C'],
    ['212 F', 'temperature', 373.15, '°F', '`212 F` is read as 212 °F'],
    ['200 lb/in', 'springRate', 35025.3670492953, 'lbf/in', '`200 lb/in` is read as 200 lbf/in'],
    [
      '150 ppm',
      'concentration',
      0.15,
      'mg/L',
      '`150 ppm` is read as 150 mg/L, which holds in water',
    ],
  ] as const)('`%s` (%s)', (text, of, value, unit, remark) => {
    const read = parseQuantity(text, of)
    expect(read).toMatchObject({ ok: true, of, unit, remark })
    expect(read.ok && read.value).toBeCloseTo(value, 9)
  })
})

describe('without anything due, the unit says what it is', () => {
  test.each([
    ['5 N·m', 'torque'],
    ['5 J', 'energy'],
    ['5 N', 'force'],
    ['5 Wh/km', 'consumption'],
    ['5 mm²', 'area'],
    ['5 AWG', 'wireArea'],
    ['5 mg/L', 'concentration'],
    ['5 kg/m³', 'density'],
    ['5 K', 'temperatureDifference'],
    ['5 °C', 'temperature'],
    ['5 psi', 'pressure'],
    ['5 psig', 'gaugePressure'],
    ['5 psia', 'absolutePressure'],
    ['5 rpm', 'angularSpeed'],
    ['5 Hz', 'frequency'],
    ['5 coulomb', 'charge'],
    ['5 farad', 'capacitance'],
    ['5 m/K', undefined],
  ])('%s: %s', (text, of) => {
    const read = parseQuantity(text)
    expect(read.ok && read.of).toBe(of)
  })
})

test('a value has the vector and flavour of what it is', () => {
  expect(parseQuantity('65 C', 'temperature')).toEqual({
    ok: true,
    value: 338.15,
    vector: [0, 0, 0, 0, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0],
    flavour: 'temperature',
    of: 'temperature',
    unit: '°C',
    typed: '65 C',
    figures: 2,
    remark: '`65 C` is read as 65 °C',
  })
})

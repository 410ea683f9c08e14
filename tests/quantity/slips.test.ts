/**
 * Texts that are not understood, or that must not be, each with its whole message: the rule, one
 * sentence that says what was read and why it will not do, what is allowed, and the likely slip.
 */
import { expect, test } from 'vitest'
import { parseQuantity } from '../../src/quantity/index.ts'
import type { Of, Slip } from '../../src/quantity/index.ts'

type Told = Omit<Slip, 'ok'>

const slips: readonly (readonly [text: string, due: Of | undefined, Told])[] = [
  [
    '',
    'flow',
    { rule: 'empty', text: 'nothing is written here', allowed: 'a flow: L/min or gal/min' },
  ],
  ['   ', undefined, { rule: 'empty', text: 'nothing is written here' }],
  [
    'warm',
    'temperature',
    {
      rule: 'not-a-quantity',
      text: '`warm` does not begin with a number',
      allowed: 'a temperature: °C or °F',
    },
  ],
  [
    'about right',
    undefined,
    { rule: 'not-a-quantity', text: '`about right` does not begin with a number' },
  ],
  [
    'A 5',
    'current',
    { rule: 'not-a-quantity', text: '`A 5` does not begin with a number', allowed: 'a current: A' },
  ],
  [
    '5',
    'flow',
    {
      rule: 'no-unit',
      text: '`5` has no unit; a flow is due',
      allowed: 'a flow: L/min or gal/min',
    },
  ],
  [
    '5',
    'temperature',
    {
      rule: 'no-unit',
      text: '`5` has no unit; a temperature is due',
      allowed: 'a temperature: °C or °F',
    },
  ],
  [
    '5',
    'wireArea',
    {
      rule: 'no-unit',
      text: '`5` has no unit; a wire size is due',
      allowed: 'a wire size: mm² or AWG',
    },
  ],
  [
    '5',
    'gaugePressure',
    {
      rule: 'no-unit',
      text: '`5` has no unit; a gauge pressure is due',
      allowed: 'a gauge pressure: kPa gauge or psi gauge',
    },
  ],
  [
    '1.2',
    'mass',
    { rule: 'no-unit', text: '`1.2` has no unit; a mass is due', allowed: 'a mass: kg or lb' },
  ],
  ['5 furlongs', undefined, { rule: 'unknown-unit', text: '`furlongs` is not a unit known here' }],
  [
    '5 KW',
    undefined,
    { rule: 'unknown-unit', text: '`KW` is not a unit known here', hint: 'did you mean `5 kW`?' },
  ],
  [
    '5 kw',
    'power',
    {
      rule: 'unknown-unit',
      text: '`kw` is not a unit known here',
      allowed: 'a power: kW or hp',
      hint: 'did you mean `5 kW`?',
    },
  ],
  [
    '5 Kpa',
    'pressure',
    {
      rule: 'unknown-unit',
      text: '`Kpa` is not a unit known here',
      allowed: 'a pressure difference: kPa or psi',
      hint: 'did you mean `5 kPa`?',
    },
  ],
  [
    '5 lbd',
    'force',
    {
      rule: 'unknown-unit',
      text: '`lbd` is not a unit known here',
      allowed: 'a force: N or lbf',
      hint: 'did you mean `5 lbf`?',
    },
  ],
  [
    '12 VDC',
    'voltage',
    {
      rule: 'unknown-unit',
      text: '`VDC` is not a unit known here',
      allowed: 'a voltage: V',
      hint: 'did you mean `12 V`?',
    },
  ],
  [
    '12 V DC',
    'voltage',
    {
      rule: 'unknown-unit',
      text: '`DC` is not a unit known here',
      allowed: 'a voltage: V',
      hint: 'did you mean `12 V`?',
    },
  ],
  [
    '5 amprs',
    'current',
    { rule: 'unknown-unit', text: '`amprs` is not a unit known here', allowed: 'a current: A' },
  ],
  [
    '20 NM',
    'torque',
    {
      rule: 'unknown-unit',
      text: '`NM` is not a unit known here',
      allowed: 'a torque: N·m or lb·ft',
    },
  ],
  [
    '18 gauge',
    'wireArea',
    {
      rule: 'unknown-unit',
      text: '`gauge` is not a unit known here',
      allowed: 'a wire size: mm² or AWG',
    },
  ],
  ['5 m//s', undefined, { rule: 'unknown-unit', text: '`m//s` is not a unit known here' }],
  ['5 m^0', undefined, { rule: 'unknown-unit', text: '`m^0` is not a unit known here' }],
  [
    '5 constructor',
    undefined,
    { rule: 'unknown-unit', text: '`constructor` is not a unit known here' },
  ],
  ['5 ()', undefined, { rule: 'unknown-unit', text: '`()` is not a unit known here' }],
  ['5 W/(m', undefined, { rule: 'unknown-unit', text: '`W/(m` is not a unit known here' }],
  [
    '2 bar',
    'flow',
    {
      rule: 'wrong-dimension',
      text: '`2 bar` looks like bar (a pressure); a flow is due',
      allowed: 'a flow: L/min or gal/min',
    },
  ],
  [
    '5 m',
    'time',
    {
      rule: 'wrong-dimension',
      text: '`5 m` looks like m (a length); a time is due',
      allowed: 'a time: s',
      hint: 'did you mean `5 min`?',
    },
  ],
  [
    '5 J',
    'torque',
    {
      rule: 'wrong-dimension',
      text: '`5 J` looks like J (an energy); a torque is due',
      allowed: 'a torque: N·m or lb·ft',
    },
  ],
  [
    '5 N·m',
    'energy',
    {
      rule: 'wrong-dimension',
      text: '`5 N·m` looks like N·m (a torque); an energy is due',
      allowed: 'an energy: kWh',
    },
  ],
  [
    '150 Wh/km',
    'force',
    {
      rule: 'wrong-dimension',
      text: '`150 Wh/km` looks like Wh/km (an energy per distance); a force is due',
      allowed: 'a force: N or lbf',
    },
  ],
  [
    '80 N',
    'consumption',
    {
      rule: 'wrong-dimension',
      text: '`80 N` looks like N (a force); an energy per distance is due',
      allowed: 'an energy per distance: Wh/km or Wh/mi',
    },
  ],
  [
    '20 lb',
    'force',
    {
      rule: 'wrong-dimension',
      text: '`20 lb` looks like lb (a mass); a force is due',
      allowed: 'a force: N or lbf',
      hint: 'did you mean `20 lbf`?',
    },
  ],
  [
    '20 kg',
    'force',
    {
      rule: 'wrong-dimension',
      text: '`20 kg` looks like kg (a mass); a force is due',
      allowed: 'a force: N or lbf',
      hint: 'did you mean `20 kgf`?',
    },
  ],
  [
    '20 lbf',
    'mass',
    {
      rule: 'wrong-dimension',
      text: '`20 lbf` looks like lbf (a force); a mass is due',
      allowed: 'a mass: kg or lb',
      hint: 'did you mean `20 lb`?',
    },
  ],
  [
    '2 mN',
    'torque',
    {
      rule: 'wrong-dimension',
      text: '`2 mN` looks like mN (a force); a torque is due',
      allowed: 'a torque: N·m or lb·ft',
      hint: 'did you mean `2 N·m`?',
    },
  ],
  [
    '60 rpm',
    'frequency',
    {
      rule: 'wrong-dimension',
      text: '`60 rpm` looks like rpm (a speed of rotation); a frequency is due',
      allowed: 'a frequency: Hz',
    },
  ],
  [
    '10 Hz',
    'angularSpeed',
    {
      rule: 'wrong-dimension',
      text: '`10 Hz` looks like Hz (a frequency); a speed of rotation is due',
      allowed: 'a speed of rotation: rpm',
    },
  ],
  [
    '5 m',
    'number',
    {
      rule: 'wrong-dimension',
      text: '`5 m` looks like m (a length); a plain number is due',
      allowed: 'a plain number',
    },
  ],
  [
    '4 %',
    'number',
    {
      rule: 'wrong-dimension',
      text: '`4 %` looks like % (a fraction); a plain number is due',
      allowed: 'a plain number',
    },
  ],
  [
    '10 °',
    'temperature',
    {
      rule: 'wrong-dimension',
      text: '`10 °` looks like ° (an angle); a temperature is due',
      allowed: 'a temperature: °C or °F',
      hint: 'did you mean `10 °C`?',
    },
  ],
  [
    '3 m/K',
    'flow',
    {
      rule: 'wrong-dimension',
      text: '`3 m/K` looks like m/K; a flow is due',
      allowed: 'a flow: L/min or gal/min',
    },
  ],
  [
    '101 kPa abs',
    'gaugePressure',
    {
      rule: 'wrong-dimension',
      text: '`101 kPa abs` looks like kPa abs (an absolute pressure); a gauge pressure is due',
      allowed: 'a gauge pressure: kPa gauge or psi gauge',
    },
  ],
  [
    '5 kWh',
    'power',
    {
      rule: 'wrong-dimension',
      text: '`5 kWh` looks like kWh (an energy); a power is due',
      allowed: 'a power: kW or hp',
    },
  ],
  [
    '5 C',
    undefined,
    {
      rule: 'ambiguous-unit',
      text: '`5 C` could be in °C or in coulombs',
      hint: 'write `5 °C` or `5 coulomb`',
    },
  ],
  [
    '50 F',
    undefined,
    {
      rule: 'ambiguous-unit',
      text: '`50 F` could be in °F or in farads',
      hint: 'write `50 °F` or `50 farad`',
    },
  ],
  [
    '5 C',
    'voltage',
    {
      rule: 'wrong-dimension',
      text: '`5 C` looks like °C (a temperature); a voltage is due',
      allowed: 'a voltage: V',
    },
  ],
  [
    '10 mm',
    'wireArea',
    {
      rule: 'bare-mm',
      text: '`10 mm` does not say whether it is a diameter or an area, and trade sizes of wire in mm differ',
      allowed: 'a wire size: mm² or AWG',
      hint: 'write `10 mm²` if that is the area of the metal',
    },
  ],
  [
    '1/4 in',
    'wireArea',
    {
      rule: 'bare-mm',
      text: '`1/4 in` does not say whether it is a diameter or an area, and trade sizes of wire in mm differ',
      allowed: 'a wire size: mm² or AWG',
    },
  ],
  [
    '10 mm',
    'area',
    {
      rule: 'wrong-dimension',
      text: '`10 mm` looks like mm (a length); an area is due',
      allowed: 'an area: m² or ft²',
    },
  ],
  [
    '1,5 mm',
    'length',
    {
      rule: 'decimal-comma',
      text: '`1,5` has a comma where numbers here have a point',
      allowed: 'a length: m or ft',
      hint: 'did you mean `1.5 mm`?',
    },
  ],
  [
    '0,125 m',
    undefined,
    {
      rule: 'decimal-comma',
      text: '`0,125` has a comma where numbers here have a point',
      hint: 'did you mean `0.125 m`?',
    },
  ],
  [
    '1.200,5 W',
    undefined,
    {
      rule: 'decimal-comma',
      text: '`1.200,5` has a comma where numbers here have a point',
      hint: 'did you mean `1200.5 W`?',
    },
  ],
  [
    '12,34 V',
    undefined,
    {
      rule: 'decimal-comma',
      text: '`12,34` has a comma where numbers here have a point',
      hint: 'did you mean `12.34 V`?',
    },
  ],
  [
    '1.200.000 W',
    undefined,
    {
      rule: 'two-points',
      text: '`1.200.000` has more than one point',
      hint: 'did you mean `1200000 W`?',
    },
  ],
  [
    '-1,5 °C',
    'temperature',
    {
      rule: 'decimal-comma',
      text: '`1,5` has a comma where numbers here have a point',
      allowed: 'a temperature: °C or °F',
      hint: 'did you mean `-1.5 °C`?',
    },
  ],
  [
    '30 psi',
    'gaugePressure',
    {
      rule: 'gauge-or-absolute',
      text: '`30 psi` does not say gauge or absolute; a gauge pressure is due',
      allowed: 'a gauge pressure: kPa gauge or psi gauge',
      hint: "write `30 psi gauge` from the air's pressure or `30 psi abs` from vacuum",
    },
  ],
  [
    '30 psi',
    'absolutePressure',
    {
      rule: 'gauge-or-absolute',
      text: '`30 psi` does not say gauge or absolute; an absolute pressure is due',
      allowed: 'an absolute pressure: kPa abs or psi abs',
      hint: "write `30 psi gauge` from the air's pressure or `30 psi abs` from vacuum",
    },
  ],
  [
    '30 psig',
    'pressure',
    {
      rule: 'point-for-difference',
      text: '`30 psig` is a gauge pressure; a pressure difference is due',
      allowed: 'a pressure difference: kPa or psi',
      hint: 'write `30 psi`',
    },
  ],
  [
    '30 psia',
    'pressure',
    {
      rule: 'point-for-difference',
      text: '`30 psia` is an absolute pressure; a pressure difference is due',
      allowed: 'a pressure difference: kPa or psi',
      hint: 'write `30 psi`',
    },
  ],
  [
    '65 °C',
    'temperatureDifference',
    {
      rule: 'temperature-for-difference',
      text: '`65 °C` is a temperature; a temperature difference is due',
      allowed: 'a temperature difference: K or Δ°F',
      hint: 'write `65 K` or `65 °C diff`',
    },
  ],
  [
    '65 °F',
    'temperatureDifference',
    {
      rule: 'temperature-for-difference',
      text: '`65 °F` is a temperature; a temperature difference is due',
      allowed: 'a temperature difference: K or Δ°F',
      hint: 'write `65 Δ°F` or `65 °F diff`',
    },
  ],
  [
    '65 C',
    'temperatureDifference',
    {
      rule: 'temperature-for-difference',
      text: '`65 C` is a temperature; a temperature difference is due',
      allowed: 'a temperature difference: K or Δ°F',
      hint: 'write `65 K` or `65 °C diff`',
    },
  ],
  [
    '6 Δ°C',
    'temperature',
    {
      rule: 'difference-for-temperature',
      text: '`6 Δ°C` is a temperature difference; a temperature is due',
      allowed: 'a temperature: °C or °F',
      hint: 'write `6 °C`',
    },
  ],
  [
    '11 °F diff',
    'temperature',
    {
      rule: 'difference-for-temperature',
      text: '`11 °F diff` is a temperature difference; a temperature is due',
      allowed: 'a temperature: °C or °F',
      hint: 'write `11 °F`',
    },
  ],
  ['-300 °C', undefined, { rule: 'below-zero', text: '`-300 °C` is below absolute zero' }],
  [
    '-1 K',
    'temperature',
    {
      rule: 'below-zero',
      text: '`-1 K` is below absolute zero',
      allowed: 'a temperature: °C or °F',
    },
  ],
  [
    '-5 psia',
    'absolutePressure',
    {
      rule: 'below-zero',
      text: '`-5 psia` is below vacuum',
      allowed: 'an absolute pressure: kPa abs or psi abs',
    },
  ],
  [
    '1e400 m',
    undefined,
    { rule: 'not-finite', text: '`1e400` is not a number that can be worked with' },
  ],
  [
    '1/0 m',
    undefined,
    { rule: 'not-finite', text: '`1/0` is not a number that can be worked with' },
  ],
  [
    '3 5 m',
    undefined,
    {
      rule: 'two-quantities',
      text: '`3 5 m` holds more than one number',
      hint: 'write one number and its unit',
    },
  ],
  [
    '12 345 W',
    undefined,
    {
      rule: 'two-quantities',
      text: '`12 345 W` holds more than one number',
      hint: 'did you mean `12345 W`?',
    },
  ],
  [
    '5 A 3 V',
    undefined,
    {
      rule: 'two-quantities',
      text: '`5 A 3 V` holds more than one number',
      hint: 'write one number and its unit',
    },
  ],
  [
    '1 h 30 min',
    undefined,
    {
      rule: 'two-quantities',
      text: '`1 h 30 min` holds more than one number',
      hint: 'write one number and its unit',
    },
  ],
  [
    '6\' 2"',
    undefined,
    {
      rule: 'two-quantities',
      text: '`6\' 2"` holds more than one number',
      hint: 'write one number and its unit',
    },
  ],
  [
    '3-5 mm',
    undefined,
    { rule: 'range', text: '`3-5 mm` is a range, not one number', hint: 'pick one of the two' },
  ],
  [
    '3 – 5 mm',
    undefined,
    { rule: 'range', text: '`3 – 5 mm` is a range, not one number', hint: 'pick one of the two' },
  ],
  [
    '3 mm to 5 mm',
    undefined,
    {
      rule: 'range',
      text: '`3 mm to 5 mm` is a range, not one number',
      hint: 'pick one of the two',
    },
  ],
  [
    '3...5 mm',
    undefined,
    { rule: 'range', text: '`3...5 mm` is a range, not one number', hint: 'pick one of the two' },
  ],
  [
    '~5 A',
    undefined,
    { rule: 'not-one-number', text: '`~5 A` does not say one number', hint: 'write `5 A`' },
  ],
  [
    '<5 A',
    undefined,
    { rule: 'not-one-number', text: '`<5 A` does not say one number', hint: 'write `5 A`' },
  ],
  [
    '≈ 5 A',
    undefined,
    { rule: 'not-one-number', text: '`≈ 5 A` does not say one number', hint: 'write `5 A`' },
  ],
  [
    'about 5 A',
    undefined,
    { rule: 'not-one-number', text: '`about 5 A` does not say one number', hint: 'write `5 A`' },
  ],
  [
    '5 ± 0.1 A',
    undefined,
    {
      rule: 'plus-minus',
      text: '`5 ± 0.1 A` holds a ±',
      hint: 'write the ± in a place of its own',
    },
  ],
  [
    '4',
    'fraction',
    {
      rule: 'more-than-whole',
      text: '`4` without % is more than the whole',
      allowed: 'a fraction: % or a number up to 1',
      hint: 'did you mean `4 %`?',
    },
  ],
  [
    '40',
    'fraction',
    {
      rule: 'more-than-whole',
      text: '`40` without % is more than the whole',
      allowed: 'a fraction: % or a number up to 1',
      hint: 'did you mean `40 %`?',
    },
  ],
  [
    '5 J/kg·K',
    undefined,
    {
      rule: 'ambiguous-unit',
      text: '`J/kg·K` can be read in two ways',
      hint: 'did you mean `5 J/(kg·K)`?',
    },
  ],
  [
    '5 J/kg K',
    'specificHeat',
    {
      rule: 'ambiguous-unit',
      text: '`J/kg K` can be read in two ways',
      allowed: 'a specific heat: kJ/(kg·K) or BTU/(lb·Δ°F)',
      hint: 'did you mean `5 J/(kg K)`?',
    },
  ],
  [
    '18.5 AWG',
    undefined,
    {
      rule: 'no-such-size',
      text: '`18.5 AWG` is not a size of the American wire gauge',
      hint: 'the sizes run from 40 to 1, then 1/0 to 4/0',
    },
  ],
  [
    '5/0 AWG',
    'wireArea',
    {
      rule: 'no-such-size',
      text: '`5/0 AWG` is not a size of the American wire gauge',
      allowed: 'a wire size: mm² or AWG',
      hint: 'the sizes run from 40 to 1, then 1/0 to 4/0',
    },
  ],
  [
    '41 AWG',
    undefined,
    {
      rule: 'no-such-size',
      text: '`41 AWG` is not a size of the American wire gauge',
      hint: 'the sizes run from 40 to 1, then 1/0 to 4/0',
    },
  ],
  [
    '12:30',
    undefined,
    {
      rule: 'two-quantities',
      text: '`12:30` holds more than one number',
      hint: 'write one number and its unit',
    },
  ],
  [
    '2026-03-14',
    undefined,
    { rule: 'range', text: '`2026-03-14` is a range, not one number', hint: 'pick one of the two' },
  ],
  ['IP67', undefined, { rule: 'not-a-quantity', text: '`IP67` does not begin with a number' }],
  ['5 A; DROP', undefined, { rule: 'unknown-unit', text: '`A;` is not a unit known here' }],
]

test.each(slips)('`%s` (%s)', (text, due, told) => {
  expect(parseQuantity(text, due)).toEqual({ ok: false, ...told })
})

test('a message is one sentence without a full stop, and repeats what was read', () => {
  for (const [text, , told] of slips) {
    expect(told.text).not.toMatch(/[.!]$/)
    if (text.trim() !== '') expect(told.text).toContain('`')
  }
})

test('a hint that says what to write is understood where it is due', () => {
  for (const [, due, told] of slips)
    for (const [, hinted = ''] of told.hint?.matchAll(/`([^`]+)`/g) ?? [])
      if (told.rule !== 'gauge-or-absolute')
        expect(parseQuantity(hinted, due), hinted).toMatchObject({ ok: true })
})

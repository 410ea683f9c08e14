/**
 * How dense the air is, from altitude, temperature, humidity and, if there is one, a barometer.
 *
 * K, m, Pa (absolute), humidity 0 to 1 in; kg/m³ out. The pressure that counts is the one at the
 * place: a weather report's is reduced to sea level and would make a mountain as thick as a beach.
 */
import { densityAltitude, moistDensity, standardPressure } from '../air.ts'
import { defineCalculator } from '../define.ts'
import { vapourPressure } from '../vapour.ts'
import { words } from '../../src/words/words.ts'

/** Density of the standard atmosphere at sea level (15 °C, 101 325 Pa). */
const seaLevelDensity = 1.225
/** IEC 60034-1: ratings of air-cooled machines hold to this altitude, m. */
const ratedTo = 1000
/** There the standard density is 1.112 kg/m³. */
const ratedShare = 1.112 / seaLevelDensity
/** Common practice: below this share of sea level's air every air-cooled part is to be sized anew. */
const thinShare = 0.7
/** Common practice: weather moves a barometer by up to this share. */
const weather = 0.05

export const airDensityCalculator = defineCalculator({
  id: 'air-density',
  title: words`Air density`,
  phase: 'vehicle',
  purpose: words`How dense the air is on the day, and what share of sea level’s air is left to cool a radiator and to drag on the body.`,
  inputs: {
    altitude: {
      type: 'number',
      label: words`Altitude`,
      symbol: 'z',
      of: 'length',
      units: ['m', 'ft'],
      hard: [-430, 6000],
      usual: [0, 3000],
      help: words`Height of the road above the sea, from a map.`,
    },
    airTemperature: {
      type: 'number',
      label: words`Air temperature`,
      symbol: 'T',
      of: 'temperature',
      units: ['°C', '°F'],
      hard: [-60, 60],
      usual: [-30, 45],
      help: words`In the shade, on the day in question; for cooling the hottest.`,
    },
    humidity: {
      type: 'number',
      label: words`Relative humidity`,
      symbol: 'φ',
      of: 'fraction',
      units: ['%', '%'],
      hard: [0, 100],
      usual: [10, 100],
      help: words`Moist air is the lighter one.`,
      assume: { value: 50, because: words`at 20 °C all of it is worth less than 1 %` },
    },
    barometer: {
      type: 'number',
      label: words`Barometer at the place`,
      symbol: 'p_b',
      of: 'absolutePressure',
      units: ['kPa abs', 'psi abs'],
      hard: [40, 112],
      usual: [65, 106],
      help: words`Read on the spot, not reduced to sea level. Left out: the standard atmosphere’s at the altitude.`,
      optional: true,
    },
  },
  outputs: {
    airDensity: {
      type: 'number',
      label: words`Air density`,
      symbol: 'ρ',
      of: 'density',
      units: ['kg/m³', 'lb/ft³'],
    },
    share: {
      type: 'number',
      label: words`Share of sea level’s air`,
      symbol: 'ρ/ρ_0',
      of: 'fraction',
      units: ['%', '%'],
    },
    pressure: {
      type: 'number',
      label: words`Pressure`,
      symbol: 'p',
      of: 'absolutePressure',
      units: ['kPa abs', 'psi abs'],
    },
    vapour: {
      type: 'number',
      label: words`Part of it water vapour`,
      symbol: 'e',
      of: 'pressure',
      units: ['kPa', 'psi'],
    },
    densityAltitude: {
      type: 'number',
      label: words`As thin as a standard day at`,
      symbol: 'z_ρ',
      of: 'length',
      units: ['m', 'ft'],
    },
    dragAt100: {
      type: 'number',
      label: words`Drag of 1 m² of CdA at 100 km/h`,
      symbol: 'F_1',
      of: 'force',
      units: ['N', 'lbf'],
    },
  },
  formula: [
    String.raw`\rho = \frac{p - e}{287.053\,T} + \frac{e}{461.523\,T}, \qquad e = \varphi\,e_s(T)`,
    String.raw`p = 101\,325\left(1 - \frac{0.0065\,h}{288.15}\right)^{5.2559}\;\text{Pa}, \quad h = \frac{r z}{r + z}`,
  ],
  validity: [
    words`Pressure of the standard atmosphere, within about 3 % of any real day; a barometer at the place is better.`,
    words`e_s is the vapour pressure of water (IAPWS); below freezing that of supercooled water, which weighs a quarter of a per cent at most.`,
    words`The share compares with 1.225 kg/m³, the standard day of 15 °C at sea level: a hot day is thin at the coast too.`,
  ],
  checks: {
    thin: {
      title: words`Air left for cooling`,
      basis:
        'published: IEC 60034-1 (2004 and later), 6.2, ratings to 1000 m; 70 %: common practice',
    },
    barometer: { title: words`Barometer fits the altitude`, basis: 'common practice' },
  },
  hazards: ['range-promise'],
  sources: [
    { title: 'US Standard Atmosphere', edition: '1976', trust: 'recalled' },
    { title: 'IAPWS SR1-86, saturation properties of water', edition: '1992', trust: 'read' },
    {
      title: 'IEC 60034-1, rotating machines, as a motor maker quotes it',
      at: '6.2, altitude to 1000 m',
      trust: 'read',
    },
  ],
  compute(input) {
    const pressure = input.barometer ?? standardPressure(input.altitude)
    const airDensity = moistDensity(input.airTemperature, pressure, input.humidity)
    return {
      airDensity,
      share: airDensity / seaLevelDensity,
      pressure,
      vapour: input.humidity * vapourPressure(input.airTemperature),
      densityAltitude: densityAltitude(airDensity),
      dragAt100: (airDensity / 2) * (100 / 3.6) ** 2,
    }
  },
  findings(input, output, say) {
    const share = output.share ?? 0
    const expected = standardPressure(input.altitude)
    const off = input.barometer === undefined ? 0 : input.barometer / expected - 1
    return [
      {
        check: 'thin',
        level: share >= ratedShare ? 'pass' : share >= thinShare ? 'watch' : 'stop',
        text:
          share >= ratedShare
            ? words`${say(share, '%')} of sea level’s air is left.`
            : share >= thinShare
              ? words`${say(share, '%')} of sea level’s air is left: radiator, fan and air-cooled motor give about that share of their rating. Work the cooling with this density.`
              : words`Only ${say(share, '%')} of sea level’s air is left: no air-cooled part may be taken at its rating. Work the cooling with this density and ask the makers for their figures at ${say(output.densityAltitude, 'm', 2)}.`,
        threshold: words`at least ${say(ratedShare, '%')} of ${say(seaLevelDensity, 'kg/m³', 4)}, as at ${say(ratedTo, 'm', 4)} (watch), 70 % (stop)`,
      },
      {
        check: 'barometer',
        level: Math.abs(off) <= weather * (1 + 1e-9) ? 'pass' : 'watch',
        text:
          input.barometer === undefined
            ? words`No barometer reading is given; the standard pressure of the altitude is taken.`
            : Math.abs(off) <= weather * (1 + 1e-9)
              ? words`The barometer is ${say(Math.abs(off), '%', 1)} off the standard pressure of the altitude, as weather makes it.`
              : words`The barometer says ${say(input.barometer, 'kPa abs')} where ${say(expected, 'kPa abs')} are usual at ${say(input.altitude, 'm')}. ${off > 0 ? words`It looks like a pressure reduced to sea level: read it on the spot.` : words`Check reading and altitude.`}`,
        threshold: words`within 5 % of the standard pressure at the altitude (watch)`,
      },
    ]
  },
  working(input, output, say) {
    return [
      input.barometer === undefined
        ? words`p = standard atmosphere at ${say(input.altitude, 'm')} = ${say(output.pressure, 'kPa abs', 4)}`
        : words`p = ${say(output.pressure, 'kPa abs', 4)} (barometer)`,
      `e = φ e_s = ${say(input.humidity, '%')} × ${say(vapourPressure(input.airTemperature), 'kPa')} = ${say(output.vapour, 'kPa')}`,
      words`ρ = (p − e) / (R_d T) + e / (R_v T) at ${say(input.airTemperature, 'K', 4)} = ${say(output.airDensity, 'kg/m³', 4)}`,
      `ρ / ρ_0 = ${say(output.airDensity, 'kg/m³', 4)} / ${say(seaLevelDensity, 'kg/m³', 4)} = ${say(output.share, '%')}`,
    ]
  },
  plot(input, output) {
    const line = (temperature: number) =>
      Array.from({ length: 21 }, (_, step) => {
        const height = step * 200
        return [
          height,
          moistDensity(temperature, standardPressure(height), input.humidity),
        ] as const
      })
    return {
      title: words`Air density against altitude`,
      x: { label: words`Altitude`, of: 'length', units: ['m', 'ft'] },
      y: { label: words`Density`, of: 'density', units: ['kg/m³', 'lb/ft³'] },
      series: [
        { name: words`this temperature`, points: line(input.airTemperature), line: 'solid' },
        { name: words`at freezing`, points: line(273.15), line: 'dashed' },
      ],
      marks: [
        ...(output.airDensity === undefined
          ? []
          : [
              {
                x: input.altitude,
                y: output.airDensity,
                label: words`here`,
                kind: 'point' as const,
              },
            ]),
        { x: 0, y: ratedShare * seaLevelDensity, label: words`rated to here`, kind: 'limit-y' },
      ],
      caption: words`A hot day thins the air as much as a climb of several hundred metres.`,
    }
  },
  examples: [
    {
      name: 'Humid hot day, 35 °C and 80 %',
      from: 'dry-air and vapour gas laws with the saturation pressure of IAPWS-IF97: 1.126249 kg/m³',
      inputs: { altitude: '0 m', airTemperature: '35 °C', humidity: '80 %' },
      outputs: { airDensity: '1.12625 kg/m³' },
      findings: { thin: 'pass', barometer: 'pass' },
    },
    {
      name: 'Standard atmosphere at 3000 m',
      from: 'US Standard Atmosphere 1976, table: 268.659 K, 70 121 Pa, 0.90925 kg/m³',
      inputs: { altitude: '3000 m', airTemperature: '268.659 K', humidity: '0 %' },
      outputs: {
        airDensity: '0.90925 kg/m³',
        pressure: '70.121 kPa abs',
        densityAltitude: '3000 m',
      },
      tolerance: 0.0001,
      why: 'Library’s table and the printed one differ in the fifth figure.',
      findings: { thin: 'watch' },
    },
    {
      // A dew point of 10 °C at 20 °C is 1228 Pa / 2339 Pa = 52.5 % humidity.
      name: 'Printed table of moist air, 20 °C, dew point 10 °C',
      from: 'public table of the density of moist air, dew point 10 °C, row 760 mmHg, column 20 °C',
      inputs: {
        altitude: '0 m',
        airTemperature: '20 °C',
        humidity: '52.5 %',
        barometer: '101.325 kPa abs',
      },
      outputs: { airDensity: '1.199 kg/m³' },
      findings: { barometer: 'pass' },
    },
    {
      name: 'Sea-level pressure from the weather report, used on a pass',
      from: 'threshold case',
      inputs: { altitude: '1500 m', airTemperature: '25 °C', barometer: '101.3 kPa abs' },
      outputs: {},
      findings: { thin: 'pass', barometer: 'watch' },
    },
    {
      name: 'The highest roads in summer',
      from: 'threshold case',
      inputs: { altitude: '4500 m', airTemperature: '20 °C' },
      outputs: {},
      findings: { thin: 'stop' },
    },
  ],
})

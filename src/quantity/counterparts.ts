/**
 * Which unit of the other system the trade uses where one system has a unit: `L/min` and `gal/min`.
 *
 * In: a unit as the kit writes it and a system. Out: the unit to write instead, or undefined where it
 * stays: units of both systems (A, kW, Wh, Ω), and parts that are bought by their own unit (mm² of
 * cable). A kelvin is taken as a difference; a temperature is written in °C or °F.
 */
type Pairs = readonly (readonly [metric: string, us: string])[]

const columns: Pairs = [
  ['mmHg', 'inHg'],
  ['Pa', 'inH2O'],
  ['cmH2O', 'inH2O'],
  ['mmH2O', 'inH2O'],
  ['mH2O', 'ftH2O'],
]

const pressures: Pairs = [
  ['kPa', 'psi'],
  ['bar', 'psi'],
  ['mbar', 'psi'],
  ['MPa', 'psi'],
  ['hPa', 'psi'],
  ['GPa', 'psi'],
]

/** Each is the other's counterpart; where a US unit stands twice, the first is what it becomes. */
const both: Pairs = [
  ['mm', 'in'],
  ['cm', 'in'],
  ['µm', 'mil'],
  ['m', 'ft'],
  ['km', 'mi'],
  ['1/m', '1/ft'],
  ['cm²', 'in²'],
  ['m²', 'ft²'],
  ['L', 'gal'],
  ['cm³', 'in³'],
  ['m³', 'ft³'],
  ['km/h', 'mph'],
  ['m/s', 'ft/s'],
  ['m/s²', 'ft/s²'],
  ['kg', 'lb'],
  ['t', 'lb'],
  ['g', 'oz'],
  ['N', 'lbf'],
  ['kN', 'lbf'],
  ['kgf', 'lbf'],
  ['N·m', 'lb·ft'],
  ['kN·m', 'lb·ft'],
  ['N/mm', 'lbf/in'],
  ['kg·m²', 'lb·ft²'],
  ...pressures,
  ...pressures.flatMap(([metric, us]): Pairs => [
    [`${metric} gauge`, `${us} gauge`],
    [`${metric} abs`, `${us} abs`],
  ]),
  ...columns,
  ['°C', '°F'],
  ['K', 'Δ°F'],
  ['Δ°C', 'Δ°F'],
  ['Wh/km', 'Wh/mi'],
  ['kWh/km', 'kWh/mi'],
  ['kWh/100 km', 'kWh/100 mi'],
  ['km/kWh', 'mi/kWh'],
  ['Wh/kg', 'Wh/lb'],
  ['kg/m³', 'lb/ft³'],
  ['kg/L', 'lb/gal'],
  ['g/cm³', 'lb/ft³'],
  ['L/min', 'gal/min'],
  ['L/s', 'gal/min'],
  ['L/h', 'gal/h'],
  ['m³/s', 'ft³/min'],
  ['m³/h', 'ft³/min'],
  ['m³/min', 'ft³/min'],
  ['kg/min', 'lb/min'],
  ['kg/s', 'lb/min'],
  ['g/s', 'lb/min'],
  ['kg/h', 'lb/h'],
  ['mΩ/m', 'mΩ/ft'],
  ['Ω/km', 'mΩ/ft'],
  ['US$/km', 'US$/mi'],
  ['US$/m', 'US$/ft'],
]

/** From US units only: the metric one stays in either system, or has a row above. */
const toMetricOnly: Pairs = [
  ['mm²', 'AWG'],
  ['mm²', 'kcmil'],
  ['m', 'yd'],
  ['L', 'qt'],
  ['L', 'impgal'],
  ['L/min', 'impgal/min'],
  ['m³/h', 'cfm'],
  ['m/s', 'ft/min'],
  ['N·m', 'lb·in'],
  ['N·m', 'lbf·ft'],
  ['N·m', 'lbf·in'],
  ['N·m', 'ft·lb'],
  ['N·m', 'in·lb'],
  ['N·m', 'ft·lbf'],
  ['N·m', 'in·lbf'],
  ['kW', 'hp'],
  ['kJ', 'BTU'],
  ['W', 'BTU/h'],
  ['kJ/(kg·K)', 'BTU/(lb·Δ°F)'],
  ['kJ/K', 'BTU/Δ°F'],
  ['W/K', 'BTU/(h·Δ°F)'],
  ['W/(m·K)', 'BTU/(h·ft·Δ°F)'],
  ['W/(m²·K)', 'BTU/(h·ft²·Δ°F)'],
]

const toUs = new Map(both.toReversed())
const toMetric = new Map(
  [...both, ...toMetricOnly].toReversed().map(([metric, us]) => [us, metric] as const),
)

/** Every unit that is written otherwise in one of the systems: from -> to. */
export const counterparts = { us: toUs, metric: toMetric } as const

export const counterpart = (unit: string, system: 'metric' | 'us'): string | undefined =>
  counterparts[system].get(unit)

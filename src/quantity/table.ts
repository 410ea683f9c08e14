/**
 * The units of the trade as data: every unit is defined by units before it, down to the SI.
 *
 * A definition is an optional number and a unit text. The names without a definition are the axes of
 * a `Vector`, in its order: the base units of the SI that the trade needs, the radian, and currencies. `lb` is a mass and `lbf` a force; `gal` is the US gallon; water
 * and mercury columns are the conventional ones (1000 and 13 595.1 kg/m³ under standard gravity).
 */
export const currencies = [
  'US$',
  'EUR',
  'GBP',
  'CAD',
  'AUD',
  'NZD',
  'CHF',
  'SEK',
  'NOK',
  'DKK',
] as const

export const axes = ['m', 'kg', 's', 'A', 'K', 'rad', ...currencies] as const

export const definitions: ReadonlyMap<string, string> = new Map(
  Object.entries({
    g: '1e-3 kg',
    t: '1000 kg',
    lb: '0.45359237 kg',
    oz: '0.0625 lb',
    in: '0.0254 m',
    ft: '12 in',
    yd: '3 ft',
    mi: '5280 ft',
    mil: '1e-3 in',
    kcmil: '0.7853981633974483 mil^2·1000',
    min: '60 s',
    h: '60 min',
    d: '24 h',
    rev: '6.283185307179586 rad',
    '°': '0.017453292519943295 rad',
    rpm: 'rev/min',
    Hz: '1/s',
    mph: 'mi/h',
    N: 'kg·m/s^2',
    kgf: '9.80665 N',
    lbf: '9.80665 lb·m/s^2',
    Pa: 'N/m^2',
    bar: '1e5 Pa',
    atm: '101325 Pa',
    torr: '0.0013157894736842105 atm',
    psi: 'lbf/in^2',
    mH2O: '9806.65 Pa',
    cmH2O: '0.01 mH2O',
    mmH2O: '1e-3 mH2O',
    inH2O: '0.0254 mH2O',
    ftH2O: '0.3048 mH2O',
    mmHg: '13.5951 mmH2O',
    inHg: '25.4 mmHg',
    J: 'N·m',
    W: 'J/s',
    Wh: 'W·h',
    hp: '550 ft·lbf/s',
    PS: '75 kgf·m/s',
    BTU: '1055.05585262 J',
    L: '1e-3 m^3',
    cc: '1e-6 m^3',
    gal: '231 in^3',
    qt: '0.25 gal',
    impgal: '4.54609 L',
    cfm: 'ft^3/min',
    P: '0.1 Pa·s',
    St: '1e-4 m^2/s',
    C: 'A·s',
    Ah: 'A·h',
    V: 'W/A',
    VA: 'V·A',
    Ω: 'V/A',
    S: 'A/V',
    F: 'C/V',
    H: 'V·s/A',
    '%': '0.01',
    ppm: '1e-6',
    'Δ°C': 'K',
    'Δ°F': '0.5555555555555556 K',
  }),
)

/** SI prefixes that each unit is used with. */
const electrical = 'pnµmkMG'
export const prefixed: ReadonlyMap<string, string> = new Map([
  ['m', 'nµmcdk'],
  ['g', 'µm'],
  ['s', 'nµm'],
  ['L', 'µmcd'],
  ['bar', 'm'],
  ['Pa', 'mhkMG'],
  ['P', 'mc'],
  ['St', 'c'],
  ['K', 'm'],
  ['t', 'k'],
  ...['A', 'V', 'W', 'Ω', 'S', 'F', 'H', 'C', 'J', 'N', 'Hz', 'Wh', 'Ah', 'VA'].map(
    (name) => [name, electrical] as const,
  ),
])

export const prefixes: ReadonlyMap<string, number> = new Map(
  Object.entries({
    p: 1e-12,
    n: 1e-9,
    µ: 1e-6,
    m: 1e-3,
    c: 0.01,
    d: 0.1,
    h: 100,
    k: 1e3,
    M: 1e6,
    G: 1e9,
  }),
)

/** Other ways to type a unit, each followed by how the kit writes it. */
export const aliases: ReadonlyMap<string, string> = new Map(
  (
    'ohm Ω|ltr L|pound lb|Btu BTU|btu BTU|l L|litre L|liter L|hr h|hour h|sec s|second s|minute min|day d|' +
    'inch in|inche in|foot ft|feet ft|yard yd|mile mi|metre m|meter m|gallon gal|quart qt|' +
    'amp A|volt V|watt W|kelvin K|coulomb C|farad F|henry H|percent %|deg °|degree °|USD US$|$ US$|€ EUR|£ GBP|CA$ CAD|C$ CAD|A$ AUD|AU$ AUD|NZ$ NZD|" in|\' ft|ΔF Δ°F|ΔC Δ°C|ΔK K|cu.in in^3|' +
    'gpm gal/min|impgpm impgal/min|impgallon impgal|lpm L/min|kph km/h|kmh km/h|kmph km/h|Nm N·m|kNm kN·m|' +
    'ftlb ft·lb|inlb in·lb|ftlbf ft·lbf|inlbf in·lbf|fpm ft/min|CCM cc'
  )
    .split('|')
    .map((line) => {
      const [typed = '', written = ''] = line.split(' ')
      return [typed, written]
    }),
)

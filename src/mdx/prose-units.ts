/**
 * Units as people type them in a sentence, and what each is called in an element.
 *
 * In: a text and the offset where a number ends. Out: the unit that stands there, if any. Order
 * counts: `amp hours` before `amps`, `ft lb` before `ft`. Torque, current, voltage and pressure are
 * `danger`: a wrong one burns a vehicle or drops a wheel, so spellings are read generously; for the
 * rest, a spelling that is as often an ordinary word (`in`, `s`, `C`) is read with care.
 */
export interface ProseUnit {
  /** As an element takes it: `N·m`. */
  readonly unit: string
  readonly danger: boolean
  readonly what: 'torque' | 'current' | 'voltage' | 'pressure' | 'length' | 'time' | 'other'
  /** One past its last character. */
  readonly end: number
  /** Offset of its first character, behind the gap. */
  readonly start: number
  /** `6-inch`: joined to the number by a hyphen. */
  readonly hyphenated: boolean
}

interface Spelling {
  readonly unit: string
  readonly what: ProseUnit['what']
  readonly pattern: RegExp
}

const dot = String.raw`\.?[ \u00A0]?[-·⋅•.*/×]?[ \u00A0]?`
const pound = String.raw`(?:lbs?f?|pounds?)`
const foot = String.raw`(?:ft|foot|feet)`
const inch = String.raw`(?:in|inch|inches)`
/** `85 lbs in the tray` is no torque. */
const notPlace = String.raw`(?!\.?[ \u00A0]+(?:the|a|an|my|each|all|total|that|this|front|back|it|one|weight|\d+)\b)`
const met = 'met(?:re|er)s?'
const per = String.raw`[ \u00A0]?(?:/|per|a)[ \u00A0]?`
const mode = String.raw`(?:[ \u00A0]?(?:[ad]c|AC|DC|rms|RMS|pk)|max|min|peak|cont|nom)?`
const shape = String.raw`(?!/C\b|[ -](?:belts?|pulley|groove|shaped|block|twin|band|clamp|arms?|frames?|pillars?|posts?|section|notch)\b)`

const symbol = (unit: string, what: ProseUnit['what'], source: string): Spelling => ({
  unit,
  what,
  pattern: new RegExp(`(?:${source})(?![\\p{L}\\p{N}_])`, 'uy'),
})
const word = (unit: string, what: ProseUnit['what'], source: string): Spelling => ({
  unit,
  what,
  pattern: new RegExp(`(?:${source})(?![\\p{L}\\p{N}_])`, 'iuy'),
})

const spellings: readonly Spelling[] = [
  word('Ah', 'other', 'amp(?:ere)?[- ]?hours?'),
  symbol('Ah', 'other', 'A[·⋅ -]?[Hh]'),
  symbol('mAh', 'other', 'mA[Hh]'),
  symbol('kVA', 'other', 'kVA'),
  symbol('VA', 'other', 'VA'),

  word('lb·ft', 'torque', `${pound}${dot}${foot}`),
  word('lb·ft', 'torque', `${foot}${dot}${pound}`),
  word('lb·in', 'torque', `${inch}${dot}${pound}`),
  word(
    'lb·in',
    'torque',
    `${pound}\\.?[-·⋅•.*/×]?${inch}|${pound}\\.?[ \\u00A0]${inch}${notPlace}`,
  ),
  word('oz·in', 'torque', `(?:oz|ounces?)[-· ]?${inch}${notPlace}|${inch}[-· ]?(?:oz|ounces?)`),
  word('N·m', 'torque', `newtons?[- \\u00A0]?${met}`),
  symbol('N·m', 'torque', String.raw`N[ \u00A0]?[·⋅•.*-]?[ \u00A0]?[mM]|nm`),
  symbol('kN·m', 'torque', String.raw`kN[·⋅ -]?m`),
  symbol('cN·m', 'torque', String.raw`cN[·⋅ -]?m`),
  word('kgf·m', 'torque', String.raw`kgf?[·⋅•.-]?m|kp[·.-]?m|kgf? m`),
  word('kgf·cm', 'torque', String.raw`kgf?[·⋅•.-]?cm`),

  word('psi', 'pressure', `${pound} (?:of )?(?:air|boost|pressure)`),
  word('lb·ft', 'torque', `${pound} (?:of )?torque`),
  word(
    'psi',
    'pressure',
    `p\\.?s\\.?i\\.?[gad]?|${pound}${per}(?:sq\\.?|square)[ \\u00A0]?in(?:ch|\\.)?`,
  ),
  word('psi', 'pressure', `${pound}[ \\u00A0-](?:rad(?:iator)? |pressure )?cap`),
  word('kgf/cm²', 'pressure', String.raw`kgf?/(?:cm(?:²|\^?2)|sq\.? ?cm)`),
  word('mH2O', 'pressure', 'm ?(?:WC|H2O|of water)'),
  word(
    'inHg',
    'pressure',
    `${inch}\\.?[ \\u00A0]?(?:of )?(?:mercury|Hg|vac(?:uum)?)|["″][ \\u00A0]?Hg`,
  ),
  word(
    'inH2O',
    'pressure',
    `${inch}\\.?[ \\u00A0]?(?:of )?(?:water|H2O|WC)|["″][ \\u00A0]?(?:H2O|WC)`,
  ),
  word('mmHg', 'pressure', String.raw`mm[ \u00A0]?(?:of )?(?:Hg|mercury)|torr`),
  word('mbar', 'pressure', 'm(?:illi)?bars?'),
  word(
    'bar',
    'pressure',
    'bar(?:[ga]|s)?(?! (?:none|stools?|graph|chart|code|lights?|magnets?|link|linkage)\\b)',
  ),
  symbol('MPa', 'pressure', 'MPa'),
  symbol('hPa', 'pressure', 'hPa'),
  word('kPa', 'pressure', 'kpa|kilopascals?'),
  symbol('Pa', 'pressure', 'Pa(?!·)'),
  word('Pa', 'pressure', 'pascals?'),
  word('atm', 'pressure', 'atm|atmospheres?'),

  word('mA', 'current', 'milli[- ]?amp(?:ere)?s?'),
  word('µA', 'current', 'micro[- ]?amp(?:ere)?s?'),
  word('A', 'current', 'amp(?:[eè]re)?s?'),
  symbol('mA', 'current', '[mM][aA]'),
  symbol('µA', 'current', '[µμu]A'),
  symbol('kA', 'current', '[kK]A'),
  symbol('A', 'current', `A${mode}${shape}`),
  symbol('A', 'current', 'a'),

  word('mV', 'voltage', 'milli[- ]?volts?'),
  word('kV', 'voltage', 'kilo[- ]?volts?'),
  word('V', 'voltage', 'volts?'),
  symbol('kV', 'voltage', `[kK][Vv]${mode}`),
  symbol('mV', 'voltage', `m[Vv]${mode}`),
  symbol('V', 'voltage', `[Vv]${mode}${shape}`),

  word('L/min', 'other', `l(?:it(?:er|re)s?)?${per}m(?:in(?:ute)?)?|lpm`),
  word('L/h', 'other', `l(?:it(?:er|re)s?)?${per}h(?:our)?|lph`),
  word('gal/min', 'other', `gal(?:lon)?s?${per}min(?:ute)?|gpm`),
  word('ft³/min', 'other', 'cfm'),
  word('mm²', 'other', String.raw`(?:sq\.? ?mm|mm(?:²|\^?2))`),
  word('cm²', 'other', String.raw`(?:sq\.? ?cm|cm(?:²|\^?2))`),
  word('in²', 'other', String.raw`(?:sq\.? ?in(?:ch)?(?:es)?|in(?:²|\^?2))`),
  word('ft²', 'other', String.raw`(?:sq\.? ?f(?:ee|oo)?t|ft(?:²|\^?2))`),
  word('m²', 'other', String.raw`(?:sq\.? ?m|m(?:²|\^?2))`),
  word('m³', 'other', String.raw`m(?:³|\^?3)`),

  word('Wh/km', 'other', `(?:wh|watt[- ]?hours?)${per}km`),
  word('Wh/mi', 'other', `(?:wh|watt[- ]?hours?)${per}mi(?:le)?`),
  word('kWh', 'other', 'kwh|kilowatt[- ]?hours?'),
  word('Wh', 'other', 'wh|watt[- ]?hours?'),
  word('kW', 'other', 'kw|kilowatts?'),
  word('W', 'other', 'watts?'),
  symbol('W', 'other', String.raw`W(?!-?\d)`),
  word('hp', 'other', 'b?hp|horsepower'),
  symbol('MΩ', 'other', 'M(?:Ω|Ω|ohms?)'),
  word('MΩ', 'other', 'meg(?:a[- ]?)?ohms?'),
  word('kΩ', 'other', 'k(?:Ω|Ω|ohms?)|kilo[- ]?ohms?'),
  symbol('mΩ', 'other', 'm(?:Ω|Ω|ohms?)'),
  word('mΩ', 'other', 'milli[- ]?ohms?'),
  word('µΩ', 'other', '[µμ](?:Ω|Ω|ohms?)|micro[- ]?ohms?'),
  word('Ω', 'other', 'Ω|Ω|ohms?'),
  symbol('µF', 'other', '[µμu]F'),
  symbol('kJ', 'other', 'kJ'),
  symbol('J', 'other', 'J(?![ -](?:hook|clip|bolt|channel))'),

  symbol('m/s', 'other', 'm/s'),
  word('mph', 'other', 'mph|miles (?:an|per) hour'),
  word('km/h', 'other', 'km/?h|kph|kmph'),
  word('rpm', 'other', 'rpm|rev/min|revs'),
  symbol('kHz', 'other', 'kHz|khz'),
  symbol('MHz', 'other', 'MHz'),
  word('Hz', 'other', 'hz|hertz'),
  word('mpg', 'other', 'mpg'),

  word('mm', 'length', `mm|millimet(?:re|er)s?|mil+imetre`),
  word('cm', 'length', `cm|centi${met}`),
  word('km', 'length', `km|kilo${met}`),
  word('mi', 'length', 'mi|miles?'),
  word('µm', 'length', '[µμ]m|microns?'),
  word('in', 'length', String.raw`inch(?:es)?|["″”](?!\w)`),
  symbol('in', 'length', String.raw`in\b`),
  word('ft', 'length', `${foot}|['′](?=\\s*(?:\\d|long|wide|tall|high|deep|of\\b|x\\b|×))`),
  symbol('m', 'length', 'm'),
  word('m', 'length', met),

  word('mL', 'other', 'ml|millilit(?:re|er)s?|cc'),
  word('L', 'other', 'l(?!-)|lit(?:re|er)s?'),
  word('gal', 'other', 'gal(?:lon)?s?'),
  word('qt', 'other', 'quarts?'),
  word('pt', 'other', 'pints?'),
  word('kg', 'other', 'kgs?|kilos?|kilograms?'),
  symbol('g', 'other', 'g'),
  word('g', 'other', 'grams?'),
  word('lb', 'other', 'lbs?|pounds?'),
  word('oz', 'other', 'oz|ounces?'),
  word('t', 'other', 'tonnes?'),
  symbol('kN', 'other', 'kN'),
  symbol('N', 'other', 'N'),
  word('N', 'other', 'newtons?'),

  symbol('°C', 'other', String.raw`(?:[°º]|deg(?:rees?|s|\.)?) ?C|[Dd]egrees? [Cc]elsius`),
  symbol('°F', 'other', String.raw`(?:[°º]|deg(?:rees?|s|\.)?) ?F|[Dd]egrees? [Ff]ahrenheit`),
  symbol(
    '°C',
    'other',
    'C(?!-| (?:rate|charg\\w*|discharg\\w*|cells?|clamps?|channel|section)\\b)',
  ),
  symbol('°F', 'other', 'F(?!-| clamps?\\b)'),
  word('°', 'other', '[°º]|degrees?|deg'),
  symbol('K', 'other', 'K'),
  word('%', 'other', '%|per ?cent'),
  word('ms', 'time', 'ms|milliseconds?'),
  word('s', 'time', 's|secs?|seconds?'),
  word('min', 'time', 'mins?|minutes?'),
  word('h', 'time', 'h|hrs?|hours?'),
]

const gap = /[-\u2010\u2011]|[ \u00A0\u2009\u202F]{0,2}/y
const dangers = new Set(['torque', 'current', 'voltage', 'pressure'])

export function unitAt(text: string, at: number): ProseUnit | undefined {
  gap.lastIndex = at
  const between = gap.exec(text)?.[0] ?? ''
  const start = at + between.length
  for (const { unit, what, pattern } of spellings) {
    pattern.lastIndex = start
    const found = pattern.exec(text)
    if (!found) continue
    const read: ProseUnit = {
      unit,
      what,
      danger: dangers.has(what),
      start,
      end: start + found[0].length,
      hyphenated: /[-\u2010\u2011]/.test(between),
    }
    if (isUnitHere(text, at, read, found[0], between)) return read
  }
  return undefined
}

const dimension = String.raw`long|wide|deep|thick|tall|high|higher|lower|across|dia|diameter|round|square|of\b|from|below|above|clear|apart|off|bore|ID|OD|tube|tubing|pipe|hose|line|gap|x\b|×|by\b|and\b|or\b|wrench|socket|drill|bit|hole|shorter|longer|wider|narrower|too|more|less|behind|ahead|inside|outside|past|between`

/** Spellings that are ordinary words or names as well. */
function isUnitHere(
  text: string,
  at: number,
  { unit, end }: ProseUnit,
  typed: string,
  between: string,
): boolean {
  const before = text.slice(0, at)
  const after = text.slice(end)
  const exact = /[./½¼¾⅛⅜⅝⅞]\d*$/.test(before) && !/\d[.]$/.test(before)
  if (typed === 'in') {
    if (between === '' || exact) return true
    if (new RegExp(String.raw`^\.?\s+(?:${dimension})`).test(after)) return true
    return (
      /^(?:\.\s*$|[,;:)]|$)/.test(after) &&
      !/\b(?:put|get|got|left|plug\w*|push\w*|let)\b[^.]*$/i.test(before)
    )
  }
  if (typed === 'a') return isCurrent(before, after, between, exact)
  if (typed === 'v' && /^\.?\s*\d/.test(after)) return false
  // `the 80s` and `1980s` are decades, `a 14s pack` a count of cells.
  if (typed === 's' && between === '' && !exact) {
    const decade = /(?:\b(?:the|early|mid|late)[ -]|\d\d)\d0$/i.test(before)
    return !decade && !/^ (?:pack|battery|string|cells?|li\w*|\d+p)\b/i.test(after)
  }
  if (unit === 'K') return between !== ''
  if (typed === '"' || typed === '”') {
    // A closing quotation mark, when one is open.
    const open = before.replace(/[\d½¼¾⅛⅜⅝⅞]["”]/g, '').match(/["“]/g)?.length ?? 0
    return open % 2 === 0
  }
  return true
}

/** `5a` and `2.3 a` are currents; `fig. 5a`, `2 a side` and `5 a week` are not. */
function isCurrent(before: string, after: string, between: string, exact: boolean): boolean {
  const reference =
    /(?:step|fig(?:ure)?|table|section|sect|clause|part|item|question|note|page|unit|row|rule|chapter|appendix|annex|number|no|sheet|flat|exhibit)\.?\s*[\d.]+$/i
  if (reference.test(before)) return false
  if (between === '' || exact) return true
  return (
    /^\s*(?:$|[.,;:)!?]|(?:fuse|breaker|circuit|draw|load|supply|charger|relay|max|peak|at|when|while|on|from|through|continuous)\b)/i.test(
      after,
    ) || /\b(?:draws?|drew|pull(?:s|ed|ing)?|drawing|current|amps|fuse)\b[^.]*$/i.test(before)
  )
}

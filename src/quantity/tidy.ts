/**
 * The many ways to type one thing, brought to one: spaces, signs, powers, degree signs, gallons.
 *
 * In: text as typed, on a phone or pasted from a sheet. Out: text with plain spaces, `-`, `·`, `/`,
 * `^2`, `µ` (U+00B5), `Ω` (U+03A9), `Δ`, `°`. Powers go first: Unicode's own folding (NFKC) would turn
 * `m²` into `m2` and `1½` into `11/2`.
 */
const rewrites: readonly (readonly [RegExp, string | ((found: string) => string)])[] = [
  // Signs that nobody sees: soft hyphens, marks of writing direction, variants of a sign.
  [
    /[\u00AD\u200B\u200C\u200E\u200F\u202A-\u202E\u2060-\u2064\u2066-\u2069\uFEFF]|\u200D|\p{Variation_Selector}/gu,
    '',
  ],
  // `40,-`, as prices are written by hand.
  [/(?<=\d)[.,][-–—−](?=\s|$)/g, ''],
  [/(?<=\d)[\u00A0\u2007\u2009\u202F'’](?=\d{3}(?!\d))/g, ''],
  [/[⁺⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+/g, (found) => `^${found.normalize('NFKC')}`],
  [/\s*(?=[¼½¾⅐-⅞])/g, ' '],
  [/[º˚]/g, '°'],
  [/[″”“]|''/g, '"'],
  [/[′’‘]/g, "'"],
]

const afterwards: typeof rewrites = [
  [/μ/g, 'µ'],
  [/∆/g, 'Δ'],
  [/⁄/g, '/'],
  [/[−‐‑]/g, '-'],
  [/[*⋅×•∙]/g, '·'],
  [/\s+/g, ' '],
  [/° (?=[CF])/g, '°'],
]

const unitRewrites: typeof rewrites = [
  [/^-(?=\p{L})/u, ''],
  [/\b(?:sq|square)\.? ?(?=[mkc]?m\b|in\b|inch|ft\b|f[eo][eo]t)(\p{L}+?)(?:e?s)?\b/giu, '$1^2'],
  [/\bper\b/gi, '/'],
  // A kelvin times an ohm is nothing that anybody types.
  [/(?<=^|[\s/])[kKmMµ] (?:[oO]hms?\b|Ω)/g, (found) => `${found.slice(0, 1).replace('K', 'k')}Ω`],
  [/\bdeg(?:ree)?s? ?(?=[CFK]\b|Celsius|Fahrenheit)/gi, '°'],
  [/\b(?:U\.?S\.? ?)(?=gal|qt|quart|gpm)/g, ''],
  [
    /\b(gal|gallons?|gpm) ?\((US|imp|UK)\)/g,
    (found) => (found.includes('US') ? found.slice(0, 3) : 'impgal'),
  ],
  [/\b(?:imp|imperial|UK)\.? ?(?=gal|gpm)/gi, 'imp'],
  [/\b(in|ft|cm|mm|m) (?=H2O|Hg)/g, (found) => found.trim()],
  [/(?<=\p{L})[-.](?=\p{L})/gu, '·'],
  [/\.(?= |$|\/)/g, ''],
  [/(?<=\p{L})(?<!\de)(?=\d)(?!2O)/gu, '^'],
  [/ ?([·/()]) ?/g, (found) => found.trim()],
]

const apply = (text: string, list: typeof rewrites): string =>
  list.reduce(
    (now, [pattern, to]) =>
      typeof to === 'string' ? now.replace(pattern, to) : now.replace(pattern, to),
    text,
  )

export const tidy = (text: string): string =>
  apply(apply(text, rewrites).normalize('NFKC'), afterwards).trim()

export const tidyUnit = (text: string): string => apply(tidy(text), unitRewrites).trim()

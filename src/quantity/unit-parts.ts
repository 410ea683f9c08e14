/**
 * The grammar of unit texts: names, prefixes, `·`, `/`, powers and brackets.
 *
 * In: a tidied unit text. Out: its parts, each with its power and its factor to the SI, or what is wrong
 * with it. `a/b·c` is refused, since half of those who type it mean `a/(b·c)`; a number belongs to the
 * name after it (`kWh/100 km`).
 */
import { aliases, axes, definitions, prefixed, prefixes } from './table.ts'
import { tidyUnit } from './tidy.ts'
import type { Vector } from './types.ts'
import { add, none } from './vector.ts'

export interface Part {
  readonly name: string
  readonly power: number
  readonly factor: number
  readonly vector: Vector
}

export type UnitFault =
  | { readonly unknown: string }
  /** Multiplication after a division without brackets; `instead` has the brackets. */
  | { readonly instead: string }

const one = { power: 1, factor: 1 }
const token = /\d+(?:\.\d+)?(?:e-?\d+)?|\^[+-]?\d+|[()/·]|(?:in|ft|cm|mm|m)H2O|[^\s\d^()/·]+/g

export function readParts(text: string): readonly Part[] | UnitFault {
  const tokens = text.match(token) ?? []
  let at = 0

  /** Terms up to the end or the closing bracket. */
  const terms = (): Part[] | UnitFault => {
    const parts: Part[] = []
    let divide = false
    let divided = false
    for (let next = tokens[at]; next !== undefined && next !== ')'; next = tokens[at]) {
      if (next === '·' || next === '/') {
        at++
        if (divide || (next === '/' && tokens[at] === undefined)) return { unknown: text }
        divide = next === '/'
        continue
      }
      if (divided && !divide) return { instead: text.replace(/\/(?!\()([^/]+)$/, '/($1)') }
      const found = term()
      if (!Array.isArray(found)) return found
      parts.push(...found.map((part) => (divide ? { ...part, power: -part.power } : part)))
      divided ||= divide
      divide = false
    }
    return parts
  }

  /** `100 km`, `ft^2`, `(m·K)^-1`: a number belongs to what follows it. */
  const term = (): Part[] | UnitFault => {
    const first = tokens[at] ?? ''
    const number = /^\d/.test(first) ? Number(first) : undefined
    if (number !== undefined) at++
    const own =
      number === undefined || number === 1
        ? []
        : [{ ...one, name: first, factor: number, vector: none }]
    const next = tokens[at]
    if (number !== undefined && (next === undefined || /^[)/·]/.test(next))) return own
    at++
    const inner: readonly Part[] | UnitFault = next === '(' ? terms() : readAtom(next ?? '')
    if (!(inner instanceof Array)) return inner
    if (next === '(' && tokens[at++] !== ')') return { unknown: text }
    const power = /^\^(.+)/.exec(tokens[at] ?? '')?.[1]
    if (power !== undefined) at++
    const times = Number(power ?? 1)
    if (times === 0 || Math.abs(times) > 9) return { unknown: text }
    return [...own, ...inner.map((part) => ({ ...part, power: part.power * times }))]
  }

  const parts = terms()
  return parts instanceof Array && at < tokens.length ? { unknown: text } : parts
}

/** The factor and the vector of a product of parts. */
export const product = (parts: readonly Part[]): { factor: number; vector: Vector } => ({
  factor: parts.reduce((all, { factor, power }) => all * factor ** power, 1),
  vector: parts.reduce((sum, { vector, power }) => add(sum, vector, power), none),
})

/** One name: a unit, a unit with a prefix, or another way to write units. */
function readAtom(typed: string): readonly Part[] | UnitFault {
  const singular = typed.length > 2 ? typed.replace(/s$/, '') : typed
  // `PSI` and `GPM` shout; prefixed units never do, since `MW` is not `mW`.
  const quiet = typed.length > 1 ? typed.toLowerCase() : typed
  for (const name of [typed, singular, quiet]) {
    const alias = aliases.get(name)
    if (alias !== undefined) return readParts(alias)
    const axis = axes.findIndex((known) => known === name)
    if (axis >= 0) return [{ ...one, name, vector: axisVector(axis) }]
    if (name === '°C' || name === '°F') return readAtom(name === '°C' ? 'K' : 'Δ°F')
    const definition = definitions.get(name)
    const defined = definition === undefined ? undefined : readParts(tidyUnit(definition))
    if (defined instanceof Array) return [{ ...product(defined), name, power: 1 }]
    if (name !== typed && name === quiet) continue
    const prefix = (name[0] ?? '').replace('u', 'µ')
    const rest = aliases.get(name.slice(1)) ?? name.slice(1)
    const scale = prefixed.get(rest)?.includes(prefix) ? prefixes.get(prefix) : undefined
    const under = scale === undefined ? undefined : readAtom(rest)
    if (scale !== undefined && under instanceof Array)
      return under.map((part) => ({ ...part, name: prefix + rest, factor: scale * part.factor }))
  }
  return { unknown: typed }
}

function axisVector(axis: number): Vector {
  const at = (i: number): number => (i === axis ? 1 : 0)
  const [m, kg, s, A, K, rad] = [at(0), at(1), at(2), at(3), at(4), at(5)]
  const [a, b, c, d, e] = [at(6), at(7), at(8), at(9), at(10)]
  const [f, g, h, i, j] = [at(11), at(12), at(13), at(14), at(15)]
  return [m, kg, s, A, K, rad, a, b, c, d, e, f, g, h, i, j]
}

/** `W/(m²·K)`, `kWh/100 km`, `1/K`. */
export function written(parts: readonly Part[]): string {
  const side = (sign: number): string[] => {
    const names: string[] = []
    for (const { name, power } of parts) {
      if (power * sign <= 0) continue
      const before = names.at(-1)
      const raised = name + superscript(power * sign)
      if (before !== undefined && /^\d+$/.test(before)) names.splice(-1, 1, `${before} ${raised}`)
      else names.push(raised)
    }
    return names
  }
  const above = side(1)
  const below = side(-1)
  const denominator = below.length > 1 ? `(${below.join('·')})` : below.join()
  // IEC 60269 writes a melting integral without the dot.
  const numerator = above.join('·').replace(/^A²·s$/, 'A²s')
  return (numerator || (below.length ? '1' : '')) + (denominator && `/${denominator}`)
}

export const superscript = (power: number): string =>
  power === 1 ? '' : String(power).replace(/\d/g, (digit) => '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(digit)] ?? '')

/**
 * Arithmetic on the values of one run, written as text: `2 * frontTyre / frontLaden`, `max(a, b) ^ 2`.
 * In: the text and what each name stands for. Out: a number. Names may hold digits and dots.
 */
const functions: Readonly<Record<string, (...values: readonly number[]) => number>> = {
  abs: Math.abs,
  cos: Math.cos,
  exp: Math.exp,
  ln: Math.log,
  max: Math.max,
  min: Math.min,
  sin: Math.sin,
  sqrt: Math.sqrt,
}

export function worked(text: string, valueOf: (name: string) => number): number {
  const tokens = text.match(/[\d.]+(?:e-?\d+)?(?![\w.])|[A-Za-z][\w.]*|[-+*/^(),]/g) ?? []
  if (tokens.join('') !== text.replaceAll(' ', '')) throw new Error(`cannot be read: ${text}`)
  let at = 0
  const next = (expected: string): void => {
    if (tokens[at++] !== expected) throw new Error(`${expected} is missing: ${text}`)
  }
  const sum = (): number => {
    let value = product()
    for (let sign = tokens[at]; sign === '+' || sign === '-'; sign = tokens[at]) {
      at++
      value += sign === '+' ? product() : -product()
    }
    return value
  }
  const product = (): number => {
    let value = power()
    for (let sign = tokens[at]; sign === '*' || sign === '/'; sign = tokens[at]) {
      at++
      value = sign === '*' ? value * power() : value / power()
    }
    return value
  }
  const power = (): number => {
    const base = single()
    if (tokens[at] !== '^') return base
    at++
    return base ** power()
  }
  const single = (): number => {
    const token = tokens[at++] ?? ''
    if (token === '-') return -power()
    if (token === '(') {
      const value = sum()
      next(')')
      return value
    }
    if (/^[\d.]/.test(token)) return Number(token)
    const named = functions[token]
    if (named === undefined || tokens[at] !== '(') return valueOf(token)
    const values: number[] = []
    do {
      at++
      values.push(sum())
    } while (tokens[at] === ',')
    next(')')
    return named(...values)
  }
  const value = sum()
  if (at !== tokens.length) throw new Error(`cannot be read to its end: ${text}`)
  return value
}

/**
 * Arithmetic on the values of one run, written as text: `2 * frontTyre / frontLaden`.
 * In: the text and what each name stands for. Out: a number. Names may hold digits and dots.
 */
export function worked(text: string, valueOf: (name: string) => number): number {
  const tokens = text.match(/[\d.]+(?:e-?\d+)?(?![\w.])|[A-Za-z][\w.]*|[-+*/()]/g) ?? []
  if (tokens.join('') !== text.replaceAll(' ', '')) throw new Error(`cannot be read: ${text}`)
  let at = 0
  const sum = (): number => {
    let value = product()
    for (let sign = tokens[at]; sign === '+' || sign === '-'; sign = tokens[at]) {
      at++
      value += sign === '+' ? product() : -product()
    }
    return value
  }
  const product = (): number => {
    let value = single()
    for (let sign = tokens[at]; sign === '*' || sign === '/'; sign = tokens[at]) {
      at++
      value = sign === '*' ? value * single() : value / single()
    }
    return value
  }
  const single = (): number => {
    const token = tokens[at++] ?? ''
    if (token === '-') return -single()
    if (token === '(') {
      const value = sum()
      at++
      return value
    }
    return /^[\d.]/.test(token) ? Number(token) : valueOf(token)
  }
  const value = sum()
  if (at !== tokens.length) throw new Error(`cannot be read to its end: ${text}`)
  return value
}

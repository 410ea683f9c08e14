/**
 * What a builder writes into braces as on paper: a unit behind a name, no sign for “times”, a small ².
 * In: what stands in the braces. Out: what is wrong with it and what to write, or undefined.
 */
import { parseQuantity } from '../quantity/index.ts'
import { words } from '../words/words.ts'

interface Slip {
  readonly text: string
  readonly hint: string
}

const name = String.raw`[\p{L}$_][\p{L}\p{N}$_]*(?:\.[\p{L}\p{N}$_]+|\[\d+\])*`
const withUnit = new RegExp(String.raw`^(${name})\s+(\S+(?: (?:gauge|abs|diff))?)$`, 'u')
const withoutSign = new RegExp(String.raw`^(\d+(?:\.\d+)?)\s*(${name})$`, 'u')
const power = new RegExp(String.raw`(${name})\s*([²³])`, 'u')

export function slipInSum(inner: string): Slip | undefined {
  const [, of, unit] = withUnit.exec(inner) ?? []
  if (of !== undefined && unit !== undefined && parseQuantity(`1 ${unit}`).ok)
    return {
      text: words`\`${unit}\` in \`{${inner}}\` is a unit, and a name brings its own`,
      hint: words`write \`{${of}}\`, or in a unit of your choice \`<Show value={${of}} unit="${unit}" />\``,
    }
  const [, factor, times] = withoutSign.exec(inner) ?? []
  if (factor !== undefined && times !== undefined && !parseQuantity(inner).ok)
    return {
      text: words`\`{${inner}}\` has no sign between its number and its name`,
      hint: words`write \`{${factor} * ${times}}\``,
    }
  const [found, base, sign] = power.exec(inner) ?? []
  if (found === undefined || base === undefined) return undefined
  const product = Array.from({ length: sign === '³' ? 3 : 2 }, () => base).join(' * ')
  return {
    text: words`\`${found}\` is not worked out between names`,
    hint: words`write \`${product}\` for it`,
  }
}

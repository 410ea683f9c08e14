/** <Show>: a number or a sum in another unit, with other digits, or with a name of its own. */
import { defined } from '../defined.ts'
import { attributesOf, type Attribute, type Element } from './attributes.ts'
import { lineAndColumn, report, startOf, type ReadContext } from './context.ts'
import { declare } from './declare.ts'
import { elementAttributes } from './kit.ts'
import { sortNames } from './names.ts'
import { readSum } from './sums.ts'
import { words } from '../../words/words.ts'

interface Asked {
  value?: Attribute
  name?: string
  unit?: string
  digits?: number
}

export function readShow(ctx: ReadContext, element: Element, linked: boolean): void {
  const at = startOf(element)
  const asked: Asked = {}
  for (const attribute of attributesOf(ctx, element)) readAttribute(ctx, attribute, element, asked)
  const { value, name, unit, digits } = asked
  if (value?.value.type !== 'braces') {
    const text = words`<Show> takes a name in braces: \`value={pump.flow}\``
    report(ctx, value ?? at, { rule: 'not-a-name', text })
    return
  }
  const { node, source } = value.value
  if (sortNames(ctx, node, words`value`) !== 'ledger') return
  const sum = readSum(ctx, node)
  if (sum === undefined) return
  if (name !== undefined) ctx.sums.push({ name, sum, ...lineAndColumn(at) })
  const also = defined({ name, unit, digits })
  ctx.uses.push({ type: 'show', sum, text: source, linked, ...also, ...at })
}

function readAttribute(
  ctx: ReadContext,
  attribute: Attribute,
  element: Element,
  asked: Asked,
): void {
  const { name, value } = attribute
  if (name === 'value') asked.value = attribute
  else if (name === 'id') asked.name = declare(ctx, attribute, 'Show', startOf(element))
  else if (name === 'unit' && value.type === 'text') asked.unit = value.text.trim()
  else if (name === 'digits') {
    const digits = numberIn(value)
    if (Number.isInteger(digits) && digits >= 1 && digits <= 12) asked.digits = digits
    else {
      const text = words`\`digits\` is a whole number from 1 to 12`
      report(ctx, attribute, { rule: 'bad-digits', text })
    }
  } else
    report(ctx, attribute, {
      rule: 'unknown-attribute',
      text: words`<Show> has no \`${name}\``,
      allowed: [...elementAttributes.Show.needs, ...elementAttributes.Show.may].join(', '),
    })
}

function numberIn(value: Attribute['value']): number {
  if (value.type === 'text') return Number(value.text)
  return value.type === 'braces' && value.node.type === 'Literal'
    ? Number(value.node.value)
    : Number.NaN
}

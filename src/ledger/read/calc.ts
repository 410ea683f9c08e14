/**
 * A block: <Calc>, with its name, its calculator and what it is given. Whether the calculator knows the
 * names of the inputs is seen when the block is linked.
 */
import { defined } from '../defined.ts'
import { attributesOf, named, textOf, type Attribute, type Element } from './attributes.ts'
import { lineAndColumn, report, startOf, type ReadContext, type Start } from './context.ts'
import { declare } from './declare.ts'
import { readInput } from './inputs.ts'
import { elementAttributes } from './kit.ts'
import { readTable, reportOtherContent, tablesIn } from './tables.ts'
import { words } from '../../words/words.ts'

const ownAttributes: readonly string[] = [
  ...elementAttributes.Calc.needs,
  ...elementAttributes.Calc.may,
]

export function readCalc(ctx: ReadContext, element: Element): void {
  const at = startOf(element)
  const attributes = attributesOf(ctx, element)
  const id = named(attributes, 'id')
  if (id === undefined)
    report(ctx, at, {
      rule: 'no-id',
      text: words`<Calc> has no \`id\`: its results need a name`,
      hint: '`id="pumpFuse"`',
    })
  const name = declare(ctx, id, 'Calc', at)
  const use = readUse(ctx, attributes, at)
  const accept = readAccept(ctx, attributes, at)
  const given = attributes
    .filter((attribute) => !ownAttributes.includes(attribute.name))
    .map((attribute) => [attribute.name, readInput(ctx, attribute)] as const)
  const meant = reportOtherContent(ctx, element, {
    rule: 'unexpected-content',
    text: words`<Calc> holds a table of parts and no other text`,
    hint: words`leave a blank line before and after the table, and put the words outside`,
  })
  if (use === undefined) return
  ctx.blocks.push({
    name,
    use,
    useAt: lineAndColumn(named(attributes, 'use') ?? at),
    ...defined({ title: textOf(ctx, attributes, 'title'), accept }),
    given: Object.fromEntries(given),
    tables: tablesIn(element).map((table) => readTable(ctx, table)),
    ...(meant ? { unreadTable: true } : {}),
    ...lineAndColumn(at),
  })
  ctx.uses.push({ type: 'block', name, ...at })
}

function readUse(
  ctx: ReadContext,
  attributes: readonly Attribute[],
  at: Start,
): string | undefined {
  if (named(attributes, 'use') === undefined)
    report(ctx, at, {
      rule: 'no-calculator',
      text: words`<Calc> does not say which calculator: \`use="…"\``,
    })
  return textOf(ctx, attributes, 'use')
}

/** The builder's reason for publishing a stop. */
function readAccept(
  ctx: ReadContext,
  attributes: readonly Attribute[],
  at: Start,
): string | undefined {
  const accept = textOf(ctx, attributes, 'accept')
  if (accept !== '') return accept
  const text = words`\`accept\` needs the reason`
  report(ctx, named(attributes, 'accept') ?? at, { rule: 'no-reason', text })
  return undefined
}

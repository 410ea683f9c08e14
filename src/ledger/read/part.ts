/**
 * A part, once, where it is fitted: `<Part id what …>`. In: the element. Out: what it is, where it is
 * by now, and its figures as typed or named. Whether a figure is a mass or a length is seen when it is
 * worked. Where a price says nothing else it is what the receipt says.
 */
import { isCalendarDate, whyNoDate } from '../dates.ts'
import { defined } from '../defined.ts'
import type { PartFigure, RawInput } from '../note-source.ts'
import type { PartStatus } from '../published.ts'
import { didYouMean } from '../report.ts'
import { attributesOf, named, textOf, type Attribute, type Element } from './attributes.ts'
import { lineAndColumn, report, startOf, type ReadContext } from './context.ts'
import { declare } from './declare.ts'
import { readInput } from './inputs.ts'
import { elementAttributes, partFigures } from './kit.ts'
import { hasOtherContent, tablesIn } from './tables.ts'
import { words } from '../../words/words.ts'

const statuses: Readonly<Record<string, PartStatus>> = {
  planned: 'planned',
  ordered: 'ordered',
  bought: 'bought',
  fitted: 'fitted',
  owned: 'owned',
  spare: 'spare',
  out: 'out',
  sold: 'sold',
}

const partAttributes: readonly string[] = [
  ...elementAttributes.Part.needs,
  ...elementAttributes.Part.may,
]

type Attributes = readonly Attribute[]

export function readPart(ctx: ReadContext, element: Element, linked: boolean): void {
  const at = startOf(element)
  const attributes = attributesOf(ctx, element)
  checkAttributes(ctx, attributes)
  if (hasOtherContent(element) || tablesIn(element).length > 0)
    report(ctx, at, {
      rule: 'unexpected-content',
      text: words`<Part> holds no text`,
      hint: words`\`<Part … />\`, with the words outside, or in \`note="…"\``,
    })
  const id = named(attributes, 'id')
  if (id === undefined)
    report(ctx, at, {
      rule: 'no-id',
      text: words`<Part> has no \`id\`: its figures need a name`,
      hint: '`id="pump"`',
    })
  const name = declare(ctx, id, 'Part', at)
  const what = textOf(ctx, attributes, 'what')
  if (what === undefined || what === '') {
    if (what === '' || named(attributes, 'what') === undefined)
      report(ctx, at, {
        rule: 'no-what',
        text: words`<Part> does not say what it is: \`what="…"\``,
      })
    return
  }
  const text = (key: string): string | undefined => {
    const read = textOf(ctx, attributes, key)
    return read === '' ? undefined : read
  }
  const priced = named(attributes, 'priced')
  if (priced !== undefined && named(attributes, 'price') === undefined)
    report(ctx, priced, {
      rule: 'no-price',
      text: words`\`priced\` says where a price comes from, and <Part> has no \`price\``,
      hint: words`write \`price="$89"\` as well, or take \`priced\` out`,
    })
  const source = named(attributes, 'source')
  ctx.parts.push({
    name,
    ...(source === undefined ? {} : { sourceAt: lineAndColumn(source) }),
    what,
    status: readStatus(ctx, attributes),
    used: readUsed(ctx, attributes),
    figures: readFigures(ctx, attributes),
    ...defined({
      size: text('size'),
      on: readDate(ctx, attributes),
      remark: text('note'),
      source: text('source'),
      at: text('at'),
      priced: text('priced'),
    }),
    ...lineAndColumn(at),
  })
  ctx.uses.push({ type: 'part', name, linked, ...at })
}

function checkAttributes(ctx: ReadContext, attributes: Attributes): void {
  for (const attribute of attributes)
    if (!partAttributes.includes(attribute.name))
      report(ctx, attribute, {
        rule: 'unknown-attribute',
        text: words`<Part> has no \`${attribute.name}\``,
        allowed: partAttributes.join(', '),
        hint: didYouMean(attribute.name, partAttributes),
      })
}

function readStatus(ctx: ReadContext, attributes: Attributes): PartStatus {
  const said = textOf(ctx, attributes, 'status')
  if (said === undefined) return 'fitted'
  const status = statuses[said]
  if (status !== undefined) return status
  const known = Object.keys(statuses)
  report(ctx, named(attributes, 'status') ?? { line: 1, column: 1 }, {
    rule: 'unknown-status',
    text: words`\`status="${said}"\` is not where a part can be`,
    allowed: known.join(', '),
    hint: didYouMean(said, known),
  })
  return 'fitted'
}

/** `used`, `used="yes"`; new where nothing is said. */
function readUsed(ctx: ReadContext, attributes: Attributes): boolean {
  const attribute = named(attributes, 'used')
  if (attribute === undefined) return false
  const { value } = attribute
  if (value.type === 'none') return true
  if (value.type === 'text' && /^(?:yes|no)$/.test(value.text.trim()))
    return value.text.trim() === 'yes'
  report(ctx, attribute, {
    rule: 'bad-used',
    text: words`\`used\` stands alone, or says \`yes\` or \`no\``,
    hint: words`\`<Part … used />\` for a second-hand one`,
  })
  return false
}

function readDate(ctx: ReadContext, attributes: Attributes): string | undefined {
  const on = textOf(ctx, attributes, 'on')
  const written = named(attributes, 'on')
  if (on === undefined || written === undefined || isCalendarDate(on)) return on
  report(ctx, written, {
    rule: 'bad-date',
    text: words`\`on="${on}"\` is not a date`,
    hint: whyNoDate(on),
  })
  return undefined
}

function readFigures(
  ctx: ReadContext,
  attributes: Attributes,
): Partial<Record<PartFigure, RawInput>> {
  const figures: Partial<Record<PartFigure, RawInput>> = {}
  for (const figure of partFigures) {
    const attribute = named(attributes, figure)
    if (attribute === undefined) continue
    const raw = readInput(ctx, attribute)
    if (raw.type === 'rows' || attribute.value.type === 'none')
      report(ctx, attribute, {
        rule: 'not-a-number',
        text: words`\`${figure}\` is one number`,
        hint: words`\`${figure}="…"\` with a unit, or \`${figure}={aName}\``,
      })
    else figures[figure] = raw
  }
  return figures
}

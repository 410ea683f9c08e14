/**
 * The numbers that are given: <Reading>, <Rated>, <Assumed>, <Chosen>, one by its `value` or several in
 * a table. Each kind must say where its value comes from, and what is missing is reported here.
 */
import { isCalendarDate, whyNoDate } from '../dates.ts'
import { defined } from '../defined.ts'
import type { RootSource, Sum } from '../note-source.ts'
import { didYouMean, likelyName } from '../report.ts'
import { attributesOf, named, textOf, type Attribute, type Element } from './attributes.ts'
import { lineAndColumn, report, startOf, type ReadContext, type Start } from './context.ts'
import { declare } from './declare.ts'
import { rootAttributes, rootKinds, type RootElement } from './kit.ts'
import { sortNames } from './names.ts'
import { readRootTable, type SharedByRoots } from './root-table.ts'
import { readSum } from './sums.ts'
import { readTable, reportOtherContent, tablesIn } from './tables.ts'
import { words } from '../../words/words.ts'

type Attributes = readonly Attribute[]

export function readRoot(
  ctx: ReadContext,
  element: Element,
  name: RootElement,
  linked: boolean,
): void {
  const at = startOf(element)
  const attributes = attributesOf(ctx, element)
  const [table] = tablesIn(element)
  checkAttributes(ctx, name, attributes)
  const meant = reportOtherContent(ctx, element, {
    rule: 'unexpected-content',
    text: words`<${name}> holds a value, or a table of them, and no other text`,
    hint: words`\`<${name} … />\`, with the words outside`,
  })
  const plusMinus = textOf(ctx, attributes, 'plusMinus')
  const shared = sharedOf(ctx, name, attributes)
  checkNeeds(ctx, name, attributes, at, meant || table !== undefined)
  if (table !== undefined) checkTableAttributes(ctx, name, attributes)
  if (table !== undefined) readRootTable(ctx, readTable(ctx, table), name, shared, at)
  else readSingle(ctx, name, attributes, { ...shared, ...defined({ plusMinus }) }, at, linked)
}

function readSingle(
  ctx: ReadContext,
  element: RootElement,
  attributes: Attributes,
  shared: Omit<RootSource, 'name' | 'value' | 'line' | 'column' | 'valueAt'>,
  at: Start,
  linked: boolean,
): void {
  const name = declare(ctx, named(attributes, 'id'), element, at)
  const value = textOf(ctx, attributes, 'value', {
    rule: 'not-text',
    text: words`a <${element}> is given, not worked out: its \`value\` is a text with a unit`,
    hint: words`\`value="2.4 m"\`; a sum needs no element: \`{a + b}\``,
  })
  if (value === undefined || value === '') return
  ctx.roots.push({
    name,
    value,
    ...shared,
    ...defined({
      replaces: nameOf(ctx, attributes, 'replaces'),
      checks: nameOf(ctx, attributes, 'checks'),
    }),
    ...lineAndColumn(at),
    valueAt: lineAndColumn(named(attributes, words`value`) ?? at),
  })
  ctx.uses.push({ type: 'root', name, linked, ...at })
}

/** The name in braces that an attribute takes. Whether it is one name is seen when it is linked. */
function nameOf(ctx: ReadContext, attributes: Attributes, key: string): Sum | undefined {
  const attribute = named(attributes, key)
  if (attribute === undefined) return undefined
  const { value } = attribute
  if (value.type === 'braces')
    return sortNames(ctx, value.node, words`value`) === 'ledger'
      ? readSum(ctx, value.node)
      : undefined
  report(ctx, attribute, {
    rule: 'not-a-name',
    text: words`\`${key}\` takes a name in braces: \`${key}={pump.flow}\``,
  })
  return undefined
}

function checkAttributes(ctx: ReadContext, name: RootElement, attributes: Attributes): void {
  const { needs, may } = rootAttributes[name]
  const known = [...needs, ...may]
  for (const attribute of attributes)
    if (!known.includes(attribute.name))
      report(ctx, attribute, {
        rule: 'unknown-attribute',
        text: words`<${name}> has no \`${attribute.name}\``,
        allowed: known.join(', '),
        hint: didYouMean(attribute.name, known),
      })
}

/** Each row of a table has these for itself. */
const ofOneNumber = ['id', 'value', 'plusMinus', 'replaces', 'checks']

function checkTableAttributes(ctx: ReadContext, name: RootElement, attributes: Attributes): void {
  for (const attribute of attributes.filter((one) => ofOneNumber.includes(one.name)))
    report(ctx, attribute, {
      rule: 'not-with-a-table',
      text: words`\`${attribute.name}\` is of one number, and this <${name}> holds a table of them`,
      hint: words`give it in the table (columns \`name\`, \`value\`, \`±\`), or write that number as an element of its own`,
    })
}

/** What holds for a single value and for every row of a table. */
function sharedOf(ctx: ReadContext, name: RootElement, attributes: Attributes): SharedByRoots {
  const text = (key: string): string | undefined => textOf(ctx, attributes, key)
  const on = text('on')
  const written = named(attributes, 'on')
  if (on !== undefined && written !== undefined && !isCalendarDate(on))
    report(ctx, written, {
      rule: 'bad-date',
      text: words`\`on="${on}"\` is not a date`,
      hint: whyNoDate(on),
    })
  const who = named(attributes, 'with') ?? named(attributes, 'source')
  return {
    kind: rootKinds[name],
    ...(who === undefined ? {} : { whoAt: lineAndColumn(who) }),
    ...defined({
      instrument: text('with'),
      source: text('source'),
      at: text('at'),
      because: text('because'),
      settle: text('settle'),
      on,
    }),
  }
}

const whatIsNeeded: Readonly<Record<string, readonly [rule: string, said: string]>> = {
  value: ['no-value', words`its value with a unit: \`value="1.5 A"\``],
  with: ['no-instrument', words`the instrument it was read with: \`with="clampMeter"\``],
  source: ['no-source', words`where it was read: \`source="controllerSheet"\`, and \`at="p. 7"\``],
  because: ['no-reason', words`the reason: \`because="…"\``],
}

function checkNeeds(
  ctx: ReadContext,
  name: RootElement,
  attributes: Attributes,
  at: Start,
  isTable: boolean,
): void {
  const { needs, may } = rootAttributes[name]
  const known: readonly string[] = [...needs, ...may]
  const slips = attributes.filter((one) => !known.includes(one.name))
  const meant = slips.map((one) => likelyName(one.name, known))
  for (const need of needs) {
    if ((need === 'value' && isTable) || meant.includes(need)) continue
    const value = named(attributes, need)?.value
    const isEmpty = value === undefined || (value.type === 'text' && value.text.trim() === '')
    const [rule, said] = whatIsNeeded[need] ?? [`no-${need}`, need]
    if (isEmpty) report(ctx, at, { rule, text: words`<${name}> does not say ${said}` })
  }
  const hasSource = named(attributes, 'source') !== undefined
  if (name === 'Rated' && hasSource && named(attributes, 'at') === undefined && !isTable)
    report(ctx, at, {
      rule: 'no-page',
      level: 'warning',
      text: words`<Rated> does not say where in the source it stands`,
      hint: words`\`at="p. 7"\`, or the table or clause`,
    })
}

/**
 * What a calculator's page says that is worked: the outside cases it is held against, worked again
 * here, and where these notes use it.
 */
import type { Calculator, Example } from '../../calculators/define.ts'
import { runExample, type ExampleFinding, type ExampleRow } from '../ledger/example.ts'
import { differenceWords } from './calculator.ts'
import type { CardContext } from './context.ts'
import { verdictHtml } from './findings.ts'
import { firm, sentenceHtml } from './firm.ts'
import { escape, symbolsHtml } from './html.ts'
import { lookupOf } from './lookup.ts'
import { levelWords } from './words.ts'
import { words } from '../words/words.ts'
import { counted } from '../words/counted.ts'

const heads = [
  words`Result`,
  words`Printed there`,
  words`Worked here`,
  words`Difference`,
  words`Allowed`,
]

function rowHtml(row: ExampleRow): string {
  const outside = row.within ? '' : ` <strong>${words`outside what is allowed`}</strong>`
  return [
    `<tr><th scope="row">${escape(row.label)}</th>`,
    `<td data-label="${words`Printed there`}">${sentenceHtml(row.printed)}</td>`,
    `<td data-label="${words`Worked here`}">${escape(row.computed)}</td>`,
    `<td data-label="${words`Difference`}">${escape(differenceWords(row.difference))}${outside}</td>`,
    `<td data-label="${words`Allowed`}">${escape(differenceWords(row.allowed))}</td></tr>`,
  ].join('')
}

function findingHtml(calculator: Calculator, { check, expected, found }: ExampleFinding): string {
  const title = calculator.checks[check]?.title ?? check
  const said = found === undefined ? words`not reported` : levelWords[found]
  const other =
    found === expected ? '' : ` <strong>${words`expected ${levelWords[expected]}`}</strong>`
  return `<li>${escape(title)}: ${said}${other}</li>`
}

function exampleHtml(calculator: Calculator, example: Example): string {
  const { rows, findings } = runExample(calculator, example)
  const table =
    rows.length === 0
      ? ''
      : `<table class="ledger"><thead><tr>${heads.map((head) => `<th scope="col">${head}</th>`).join('')}</tr></thead><tbody>${rows.map(rowHtml).join('')}</tbody></table>`
  const list = findings.map((finding) => findingHtml(calculator, finding)).join('')
  return [
    `<section class="outside"><h3>${sentenceHtml(example.name)}</h3><p class="over">${symbolsHtml(firm(example.from))}</p>`,
    table,
    example.why === undefined ? '' : `<p class="over">${sentenceHtml(example.why)}</p>`,
    list === '' ? '' : `<ul class="findings">${list}</ul>`,
    '</section>',
  ].join('')
}

export function outsideHtml(calculator: Calculator): string {
  const cases = calculator.examples.map((example) => exampleHtml(calculator, example))
  return `<div class="outside-cases">${cases.join('')}</div>`
}

/** Where these notes use it; '' when they do not. */
export function usesHtml(calculator: Calculator, ctx: CardContext): string {
  const uses = lookupOf(ctx.published).usesOf(calculator.id)
  if (uses.length === 0) return ''
  const items = uses.map((block) => {
    const href = escape(ctx.href(`/notes/${block.note}/#${block.name}`))
    const note = escape(ctx.note(block.note)?.title ?? block.note)
    return `<li>${verdictHtml(block)} <a href="${href}">${escape(block.title)}</a>, ${note}</li>`
  })
  return `<ul class="uses">${items.join('')}</ul>`
}

/** Its entry in the list of calculators. */
export function calculatorItemHtml(calculator: Calculator, ctx: CardContext): string {
  const { id, title, purpose, examples } = calculator
  const used = lookupOf(ctx.published).usesOf(id).length
  const uses =
    used === 0
      ? ''
      : `, ${counted(used, words`used ${used} time here`, words`used ${used} times here`)}`
  const cases = examples.length
  return [
    `<li><p class="title"><a href="${escape(ctx.href(`/calculators/${id}/`))}">${escape(title)}</a></p>`,
    `<p>${escape(purpose)}</p>`,
    `<p class="tally">${counted(cases, words`${cases} outside case`, words`${cases} outside cases`)}${uses}</p></li>`,
  ].join('')
}

/**
 * Which later number stands for which. In: numbers that may say what they replace. Out: id of the old
 * number -> the latest that took its place, of two of one day the later id.
 *
 * Numbers that take each other's place in a circle stand each for itself, and are reported.
 */
import { byId, byPlace } from '../order.ts'
import type { Problem } from '../problems.ts'
import type { PublishedNumber } from '../published.ts'
import { problemAt } from '../report.ts'
import { report, type WorkContext } from './context.ts'
import { words } from '../../words/words.ts'

/** `asOf`: replacements count from their date on, up to this day; left out, all count. */
export function latestReplacements(
  numbers: readonly PublishedNumber[],
  asOf?: string,
): Map<string, PublishedNumber> {
  const latest = new Map<string, PublishedNumber>()
  for (const number of numbers) {
    if (number.replaces === undefined) continue
    if (asOf !== undefined && number.date > asOf) continue
    const before = latest.get(number.replaces)
    if (before === undefined || isLater(number, before)) latest.set(number.replaces, number)
  }
  return latest
}

const isLater = (number: PublishedNumber, before: PublishedNumber): boolean =>
  before.date < number.date || (before.date === number.date && before.id < number.id)

/** A number counts from its day on: of an older day than what it replaces, one of the days is wrong. */
export function compareDates(ctx: WorkContext, number: PublishedNumber): void {
  const { replaces } = number
  if (replaces === undefined || replaces === number.id) return
  const before = ctx.numbers.get(replaces) ?? ctx.done.results.get(replaces)
  if (before === undefined || before.date <= number.date) return
  report(ctx, number, {
    rule: 'replaces-newer',
    level: 'warning',
    text: words`\`${number.name}\` is of ${number.date} and takes the place of \`${before.id}\`, which is of ${before.date}`,
    hint: words`the later number replaces the older one: turn them round, or mend the date of the note or of the reading (\`on\`)`,
  })
}

/** Two numbers of one day for one older number: which of them counts, nobody said. */
export function doubledReplacements(numbers: readonly PublishedNumber[]): Problem[] {
  const first = new Map<string, PublishedNumber>()
  return numbers.toSorted(byPlace).flatMap((number) => {
    const { replaces, date, file, name } = number
    if (replaces === undefined) return []
    const key = `${date} ${replaces}`
    const before = first.get(key)
    if (before === undefined) first.set(key, number)
    if (before === undefined) return []
    return problemAt(file, number, {
      rule: 'replaced-twice',
      text: words`\`${name}\` takes the place of \`${replaces}\` on ${date}, and so does \`${before.name}\``,
      hint: words`keep \`replaces\` at the one that counts from that day on, or say with \`on\` which was measured later`,
      also: [{ file: before.file, line: before.line, column: before.column }],
    })
  })
}

/** Takes the circles out of `replacements`, and reports each. */
export function breakCircles(
  replacements: Map<string, PublishedNumber>,
  problems: Problem[],
): Map<string, PublishedNumber> {
  for (const id of replacements.keys()) {
    const chain = chainFrom(id, replacements)
    if (!chain.some((number) => number.id === id)) continue
    for (const number of chain) replacements.delete(number.id)
    problems.push(...circleProblem(chain.toSorted(byId)))
  }
  return replacements
}

/** The numbers that stand for `id` one after the other, until one comes again. */
function chainFrom(
  id: string,
  replacements: ReadonlyMap<string, PublishedNumber>,
): PublishedNumber[] {
  const chain: PublishedNumber[] = []
  let next = replacements.get(id)
  while (next !== undefined && !chain.includes(next)) {
    chain.push(next)
    next = replacements.get(next.id)
  }
  return chain
}

function circleProblem(chain: readonly PublishedNumber[]): Problem[] {
  const [first, ...rest] = chain
  if (first === undefined) return []
  const { file, line, column } = first
  const common = {
    level: 'error',
    hint: words`\`replaces\` names an older number, whose place this one takes`,
    file,
    line,
    column,
  } as const
  if (rest.length === 0)
    return [
      {
        ...common,
        rule: 'replaces-itself',
        text: words`\`${first.name}\` cannot take its own place`,
      },
    ]
  const ids = [...chain, first].map(({ id }) => `\`${id}\``).join(' → ')
  return [
    {
      ...common,
      rule: 'circle',
      text: words`these numbers take each other’s place in a circle: ${ids}`,
      also: rest.map((one) => ({ file: one.file, line: one.line, column: one.column })),
    },
  ]
}

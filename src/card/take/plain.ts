/**
 * A block as plain text for a mail or a forum: where it comes from, whose figures, the verdict, what
 * went in and how each figure is known, what comes out, the checks, the working, the sources, and the
 * warnings whole. `sources` are the calculator's own, handed in because a reader's browser has a
 * calculator without them.
 */
import { standingWords } from '../../../calculators/hazard-names.ts'
import type { Source } from '../../../calculators/define.ts'
import { givenIds, usedGiven } from '../../ledger/given.ts'
import type { PublishedBlock } from '../../ledger/published.ts'
import { sourceText } from '../calculator.ts'
import type { CardContext } from '../context.ts'
import { basisWords } from '../findings.ts'
import { firm } from '../firm.ts'
import { rootsOf } from '../rests.ts'
import { cannotTell, levelWords, verdictName, verdictWords } from '../words.ts'
import { inputLines, outputLines } from './figure-lines.ts'
import { provenance } from './provenance.ts'
import { warningsOf } from './warnings.ts'
import { wrap } from './wrap.ts'
import type { Whose } from './whose.ts'
import { words } from '../../words/words.ts'
import { language } from '#words'

export function plainText(
  block: PublishedBlock,
  ctx: CardContext,
  whose: Whose,
  sources: readonly Source[],
): string {
  const parts = [
    [block.title, ...provenance(block, ctx, whose), ...verdictLines(block, ctx)].map((line) =>
      wrap(firm(line)),
    ),
    headed(words`What went in`, inputLines(block, ctx)),
    headed(words`What comes out`, outputLines(block, ctx)),
    headed(words`Checks`, findingLines(block, ctx)),
    headed(
      words`Working`,
      block.working.map((line, index) => wrap(firm(line), `${index + 1}. `)),
    ),
    headed(words`Sources`, sourceLines(block, ctx, sources)),
    headed(words`Warnings`, [
      ...warningsOf(block.hazards).map((line) => wrap(firm(line))),
      wrap(standingWords),
    ]),
  ]
  return `${parts
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join('\n'))
    .join('\n\n')}\n`
}

function headed(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : [title.toLocaleUpperCase(language), ...lines]
}

function verdictLines(block: PublishedBlock, ctx: CardContext): readonly string[] {
  const before = ctx.builder?.block(block.id)
  return [
    words`Verdict: ${verdictWords[verdictName(block)]}`,
    ...(before === undefined
      ? []
      : [words`The builder’s verdict: ${verdictWords[verdictName(before)]}`]),
    ...(verdictName(block) === 'accepted'
      ? [`${words`Accepted because:`} ${block.accepted ?? ''}`]
      : []),
    ...(block.verdict === 'unknown'
      ? [words`Where it says “${cannotTell}”, treat it as not passed.`]
      : []),
  ]
}

function findingLines(block: PublishedBlock, ctx: CardContext): readonly string[] {
  const checks = ctx.calculator(block.calculator)?.checks ?? {}
  return block.findings.map(({ check, level, text, threshold, basis }) => {
    const title = checks[check]?.title ?? check
    const line = `${title}: ${levelWords[level]}. ${text} ${words`Limit: ${threshold}.`} ${basisWords(basis)}`
    return wrap(firm(line), '- ')
  })
}

/** Those of the numbers at the bottom of it, then those of the calculator, each once. */
function sourceLines(
  block: PublishedBlock,
  ctx: CardContext,
  sources: readonly Source[],
): readonly string[] {
  const list = (...parts: readonly (string | undefined)[]): string =>
    parts.filter((part) => part !== undefined).join(', ')
  const ofNumbers = rootsOf(givenIds(usedGiven(block)), ctx).flatMap(({ source }) =>
    source === null ? [] : [list(source.title, source.edition, source.at, source.url)],
  )
  const ofCalculator = sources.map(sourceText)
  return [...new Set([...ofNumbers, ...ofCalculator])].map((line) => wrap(firm(line), '- '))
}

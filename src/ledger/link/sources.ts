/**
 * Sources and instruments by their key in the settings. A key with a space in it is a title written
 * out; any other that the settings do not have is reported.
 */
import { defined } from '../defined.ts'
import type { At, NoteSource } from '../note-source.ts'
import type { PublishedInstrument, PublishedSource } from '../published.ts'
import { didYouMean } from '../report.ts'
import { report, type LinkContext } from './context.ts'
import { words } from '../../words/words.ts'

export function sourceOf(
  ctx: LinkContext,
  note: NoteSource,
  key: string,
  at: At,
  where?: string,
): PublishedSource {
  const { sources } = ctx.site
  const known = sources[key]
  if (isMissing(ctx, key, known))
    report(ctx, note, at, {
      rule: 'unknown-source',
      text: words`\`site.yaml\` has no source called \`${key}\``,
      hint:
        instrumentHint(ctx, key) ??
        didYouMean(key, Object.keys(sources)) ??
        words`add it under \`sources:\`, or write its title out`,
    })
  return {
    key,
    title: known?.title ?? key,
    ...defined({ edition: known?.edition, read: known?.read, url: known?.url, at: where }),
  }
}

export function instrumentOf(
  ctx: LinkContext,
  note: NoteSource,
  key: string,
  at: At,
): PublishedInstrument {
  const { instruments } = ctx.site
  const known = instruments[key]
  if (isMissing(ctx, key, known))
    report(ctx, note, at, {
      rule: 'unknown-instrument',
      text: words`\`site.yaml\` has no instrument called \`${key}\``,
      hint:
        sourceHint(ctx, key) ??
        didYouMean(key, Object.keys(instruments)) ??
        words`add it under \`instruments:\`, or say what it is in words`,
    })
  return { key, title: known?.title ?? key, ...defined({ plusMinus: known?.plusMinus }) }
}

const instrumentHint = ({ site }: LinkContext, key: string): string | undefined =>
  site.instruments[key] === undefined
    ? undefined
    : words`\`${key}\` is an instrument: what was measured is a \`<Reading id="weighed" … with="${key}" />\`, and a part names it, \`mass={weighed}\``

const sourceHint = ({ site }: LinkContext, key: string): string | undefined =>
  site.sources[key] === undefined
    ? undefined
    : words`\`${key}\` is a source: what it says is a \`<Rated … source="${key}" />\``

const isMissing = ({ site }: LinkContext, key: string, known: object | undefined): boolean =>
  known === undefined && site.readable && !/\s/.test(key)

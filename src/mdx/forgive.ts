/**
 * Lets the MDX grammar go on after a fault, instead of throwing at the first.
 *
 * A remark plugin to use after remark-mdx: it wraps the constructs for tags, braces and imports. Where
 * one of them would throw, the fault is noted and its first sign becomes ordinary text; a `<` that
 * cannot begin a tag (`<5 A`, `a <- b`) is text without a fault. No character is moved or changed.
 * A fault that spans lines has already swallowed lists and quotes: the caller parses again with that
 * offset in `literal`.
 */
import type { Data, Processor } from 'unified'
import { paragraphEnd } from './place.ts'
import { matchingBrace, walkTag } from './tag.ts'

export interface Fault {
  readonly kind: 'tag' | 'braces' | 'module'
  /** Offset of the `<`, `{`, `import` or `export`. */
  readonly start: number
  /** Offset where reading stopped; undefined: the text ended. */
  readonly at: number | undefined
  /** Whether it stood on lines of its own, so that the lines below were read with it. */
  readonly block: boolean
  /** The name that is imported twice. */
  readonly twice?: string
  /** Where it ends and how many braces it closes, when these are too many to read. */
  readonly overlong?: { readonly end: number; readonly braces: number }
}

/** MDX tries to read braces anew at each `}` in them: a list of thousands would take minutes. */
export const mostBraces = 400

/** A tag that the grammar allows and the nesting does not. */
export interface OpenTag {
  readonly name: string | undefined
  readonly start: number
  readonly end: number
}

/** What one parse knows and finds. */
export interface Pass {
  readonly text: string
  /** Offsets of signs to take as ordinary text. */
  readonly literal: ReadonlySet<number>
  readonly faults: Fault[]
  /** Offsets of `}` in prose that close nothing. */
  readonly strays: Set<number>
  /** Tags open when the last tag began, and that tag: for a fault of nesting. */
  open: readonly OpenTag[]
  tag: OpenTag | undefined
}

type Extension = NonNullable<Data['micromarkExtensions']>[number]
type Constructs = NonNullable<Extension['text']>
type Listed = NonNullable<Constructs[number]>
type Construct = Exclude<Listed, readonly unknown[]>
type Tokenize = Construct['tokenize']
type State = ReturnType<Tokenize>
type Code = Parameters<State>[0]
type Tree = Exclude<NonNullable<Data['fromMarkdownExtensions']>[number], readonly unknown[]>

const kinds: Readonly<Record<string, Fault['kind']>> = {
  mdxJsxFlowTag: 'tag',
  mdxJsxTextTag: 'tag',
  mdxFlowExpression: 'braces',
  mdxTextExpression: 'braces',
}

const sign = { '<': 60, '{': 123, '}': 125, e: 101, i: 105 } as const

export function forgive(this: Processor, pass: Pass): undefined {
  const data = this.data()
  data.micromarkExtensions = (data.micromarkExtensions ?? []).map((extension) => ({
    ...extension,
    ...(extension.flow && { flow: wrapAll(extension.flow, pass, true) }),
    ...(extension.text && { text: wrapAll(extension.text, pass, false) }),
  }))
  data.micromarkExtensions.push({ text: { [sign['}']]: strayBrace(pass) } })
  data.fromMarkdownExtensions = (data.fromMarkdownExtensions ?? []).map((extension) =>
    Array.isArray(extension)
      ? extension.map((one) => watchTags(one, pass))
      : watchTags(extension, pass),
  )
}

function wrapAll(constructs: Constructs, pass: Pass, block: boolean): Constructs {
  const wrapped: Constructs = { ...constructs }
  // Only blocks have imports; letters in running text begin other things (addresses).
  for (const code of block ? [sign['<'], sign['{'], sign.e, sign.i] : [sign['<'], sign['{']]) {
    const listed = constructs[code]
    if (!listed) continue
    const list = Array.isArray(listed) ? listed : [listed]
    const other = code === sign.e || code === sign.i ? 'module' : undefined
    wrapped[code] = list.map((construct) => {
      const kind = kinds[construct.name ?? ''] ?? other
      return kind ? wrap(construct, kind, pass, block) : construct
    })
  }
  return wrapped
}

function wrap(construct: Construct, kind: Fault['kind'], pass: Pass, block: boolean): Construct {
  const tokenize: Tokenize = function (effects, ok, nok) {
    const start = this.now().offset
    let left = false
    const leaving =
      (state: State): State =>
      (code) => {
        left = true
        return state(code)
      }
    const refuse = leaving(nok)
    const guarded =
      (state: State): State =>
      (code: Code) => {
        if (code === sign['<'] && pass.literal.has(this.now().offset)) return refuse(code)
        let next: ReturnType<State>
        try {
          next = state(code)
        } catch (error) {
          // Also what is no message: code nested so deep that its parser gives up.
          if (left || !(error instanceof Error)) throw error
          note(error, { kind, start, block }, pass)
          return refuse(code)
        }
        return left || !next ? next : guarded(next)
      }
    if (pass.literal.has(start)) return nok
    refuseOverlong({ kind, start }, pass)
    if (kind === 'tag' && !canBeginTag(pass.text, start)) return nok
    return guarded(construct.tokenize.call(this, effects, leaving(ok), refuse))
  }
  return { ...construct, tokenize }
}

/** Stops the parse at something overlong; the caller takes it out of the text and parses again. */
const tooLong = new Error('more braces than are read')

function refuseOverlong({ kind, start }: Pick<Fault, 'kind' | 'start'>, pass: Pass): void {
  if (kind === 'module') return
  const end =
    kind === 'tag'
      ? walkTag(pass.text, start).end
      : (matchingBrace(pass.text, start, paragraphEnd(pass.text, start)) ?? start)
  if (end - start < mostBraces) return
  const braces = pass.text.slice(start, end).split('}').length - 1
  if (braces <= mostBraces) return
  pass.faults.push({ kind, start, at: undefined, block: false, overlong: { end, braces } })
  throw tooLong
}

function note(error: Error, { kind, start, block }: Omit<Fault, 'at' | 'twice'>, pass: Pass): void {
  const at = offsetOf(error)
  // The second tag of a line: `<Show … /> <5 A`. Read again as prose, it is text.
  if (kind === 'tag' && at !== undefined && at > start + 1 && pass.text[at - 1] === '<') {
    if (!canBeginTag(pass.text, at - 1)) return
  }
  const ended = isMessage(error) && error.ruleId === 'unexpected-eof' ? undefined : at
  const cause = error.cause instanceof Error ? error.cause.message : ''
  const twice = /^Identifier '(.+)' has already been declared/.exec(cause)?.[1]
  pass.faults.push({ kind, start, at: ended, block, ...(twice !== undefined && { twice }) })
}

/** `<` begins a tag before a letter, `$`, `_`, `/`, `>`; before `!` it is an HTML comment's. */
function canBeginTag(text: string, offset: number): boolean {
  return /^<(?:[\p{ID_Start}$_/>]|!--|![–—]|!DOCTYPE)/iu.test(text.slice(offset, offset + 12))
}

/** Only looks on: `}` stays text. Escaped ones and those in code never come here. */
function strayBrace(pass: Pass): Construct {
  return {
    name: 'strayBrace',
    tokenize(_effects, _ok, nok) {
      pass.strays.add(this.now().offset)
      return nok
    },
  }
}

/** Keeps what the tree builder knows of open tags, for when it throws. */
function watchTags(extension: Tree, pass: Pass): Tree {
  const { enter } = extension
  if (!enter) return extension
  const watched = { ...enter }
  for (const name of ['mdxJsxFlowTag', 'mdxJsxTextTag'] as const) {
    const original = enter[name]
    if (!original) continue
    watched[name] = function (token) {
      original.call(this, token)
      pass.open = (this.data.mdxJsxTagStack ?? []).map(({ name: tag, start, end }) => ({
        name: tag,
        start: start.offset,
        end: end.offset,
      }))
      pass.tag = { name: undefined, start: token.start.offset, end: token.end.offset }
    }
  }
  return { ...extension, enter: watched }
}

export interface Message extends Error {
  readonly ruleId?: string
}

/** Messages of the grammar, as against faults of a program. */
export function isMessage(error: unknown): error is Message {
  return error instanceof Error && 'ruleId' in error
}

/** Where a message begins. */
export function offsetOf(error: Error): number | undefined {
  const place = 'place' in error ? error.place : undefined
  if (typeof place !== 'object' || place === null) return undefined
  const point: unknown = 'start' in place ? place.start : place
  if (typeof point !== 'object' || point === null || !('offset' in point)) return undefined
  return typeof point.offset === 'number' ? point.offset : undefined
}

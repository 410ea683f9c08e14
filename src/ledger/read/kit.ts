/**
 * The elements that an author writes, and what each of the four kinds of given number takes. A name
 * that begins with a capital and is neither here nor imported is a fault.
 */
import type { PartFigure } from '../note-source.ts'

export const rootKinds = {
  Reading: 'reading',
  Rated: 'rated',
  Assumed: 'assumed',
  Chosen: 'chosen',
} as const

export type RootElement = keyof typeof rootKinds

export const isRoot = (name: string): name is RootElement => Object.hasOwn(rootKinds, name)

/** Elements that hold pictures and words, which are read like any others of the note. */
export const isPhotoElement = (name: string): boolean => name === 'Photo' || name === 'BeforeAfter'

/** Figures of a part. */
export const partFigures: readonly PartFigure[] = [
  'quantity',
  'price',
  'mass',
  'x',
  'z',
  'load',
  'power',
  'duty',
  'surge',
]

export const rootAttributes: Readonly<
  Record<RootElement, { readonly needs: readonly string[]; readonly may: readonly string[] }>
> = {
  Reading: { needs: ['value', 'with'], may: ['id', 'plusMinus', 'at', 'on', 'replaces', 'checks'] },
  Rated: { needs: ['value', 'source'], may: ['id', 'plusMinus', 'at', 'on', 'replaces', 'checks'] },
  Assumed: {
    needs: ['value', 'because'],
    may: ['id', 'plusMinus', 'settle', 'on', 'replaces', 'checks'],
  },
  Chosen: { needs: ['value', 'because'], may: ['id', 'on', 'replaces', 'checks'] },
}

/** What an element must say and may say; a <Calc> takes its calculator's inputs besides. */
export const elementAttributes = {
  ...rootAttributes,
  Show: { needs: ['value'], may: ['unit', 'digits', 'id'] },
  Nominal: { needs: [], may: [] },
  Quoted: { needs: ['source'], may: [] },
  Calc: { needs: ['id', 'use'], may: ['title', 'accept'] },
  Part: {
    needs: ['id', 'what'],
    may: ['size', ...partFigures, 'status', 'used', 'on', 'priced', 'source', 'at', 'note'],
  },
  Photo: { needs: [], may: [] },
  BeforeAfter: { needs: [], may: [] },
} as const satisfies Readonly<
  Record<string, { readonly needs: readonly string[]; readonly may: readonly string[] }>
>

/** The elements in the order in which the list of what can be written has them. */
export const kitElements: readonly string[] = Object.keys(elementAttributes)

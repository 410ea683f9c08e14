/**
 * A new note before anything is written into it. In: a title, the day, the notes that are there. Out:
 * the file's name and its text, or what stands against it. It begins as a draft, so that no reader
 * meets empty headings; what is to be filled in stands in comments, which nobody sees.
 */
import { phaseWords } from '../ledger/phases.ts'
import { words } from '../words/words.ts'

export interface NoteThere {
  readonly slug: string
  /** Undefined where its head cannot be read. */
  readonly meta:
    | {
        readonly date: string
        readonly phase: string
        readonly was?: readonly string[] | undefined
      }
    | undefined
}

export type Skeleton =
  | { readonly ok: true; readonly name: string; readonly phase: string; readonly text: string }
  | { readonly ok: false; readonly why: string }

export function skeleton(title: string, date: string, notes: readonly NoteThere[]): Skeleton {
  const name = title.replace(/\s+/g, ' ').trim()
  if (name === '')
    return { ok: false, why: words`a note needs a title: ${'npm run new -- "Title"'}` }
  if (/[{}]/.test(name))
    return { ok: false, why: words`\`${name}\`: a title takes words only, no braces` }
  const last = lastNote(notes)
  const phase = last?.phase ?? 'plan'
  const slug = slugOfTitle(name) || `${phase}-${date}`
  const twin = notes.find((note) => note.slug.toLowerCase() === slug)
  if (twin !== undefined)
    return {
      ok: false,
      why: words`notes/${twin.slug}.mdx is there already, and stays as it is: choose another title`,
    }
  const renamed = notes.find(({ meta }) => meta?.was?.includes(slug))
  if (renamed !== undefined)
    return {
      ok: false,
      why: words`\`${slug}\` is an older name of notes/${renamed.slug}.mdx, which links still lead to: choose another title`,
    }
  return {
    ok: true,
    name: `${slug}.mdx`,
    phase,
    text: textOf(name, date, phase, last !== undefined),
  }
}

/** The latest day; of one day, the last by name: the order of the site. */
function lastNote(notes: readonly NoteThere[]): NoteThere['meta'] {
  const key = ({ slug, meta }: NoteThere): string => `${meta?.date ?? ''} ${slug}`
  return notes
    .filter(({ meta }) => meta !== undefined)
    .toSorted((a, b) => (key(a) < key(b) ? -1 : 1))
    .at(-1)?.meta
}

/** Letters that do not come apart into a plain one and a mark, and those that two letters stand for. */
const spelled: Readonly<Record<string, string>> = {
  ä: 'ae',
  ö: 'oe',
  ü: 'ue',
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  ø: 'oe',
  å: 'aa',
  ł: 'l',
  đ: 'd',
  ð: 'd',
  þ: 'th',
  ı: 'i',
}

const longestSlug = 60

/** `Kühlkreis, zweiter Anlauf` -> `kuehlkreis-zweiter-anlauf`; '' where no letter of it can stand in an address. */
export function slugOfTitle(title: string): string {
  const plain = title
    .normalize('NFC')
    .toLowerCase()
    .replace(/['’ʼ]/g, '')
    .replace(/./gu, (sign) => spelled[sign] ?? sign)
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
  if (plain.length <= longestSlug) return plain
  const cut = plain.slice(0, longestSlug + 1)
  const word = cut.lastIndexOf('-')
  return cut.slice(0, word > longestSlug / 2 ? word : longestSlug)
}

/** As few signs as will do: what YAML could take for something else than words stands in quotes. */
function yamlText(name: string): string {
  const plain = /^\p{L}[\p{L}\p{N} ,.'’()–/-]*$/u.test(name)
  return plain && !/^(?:true|false|yes|no|on|off|null|y|n)$/i.test(name)
    ? name
    : JSON.stringify(name)
}

const textOf = (title: string, date: string, phase: string, asBefore: boolean): string => `---
title: ${yamlText(title)}
date: ${date}
phase: ${phase} # ${asBefore ? words`${phaseWords(phase)}, as in the last note` : phaseWords(phase)}
status: doing # planned | doing | done | redone | abandoned
draft: true # ${words`take this line out when readers may see the note`}
---

## ${words`Goal`}

{/* ${words`What should be true when this is done, and how you will know.`} */}

## ${words`Parts`}

{/* ${words`Each where it is fitted:`} <Part id="pump" what="${words`Coolant pump`}" price="…" mass="…" /> */}

## ${words`Numbers`}

{/* ${numberWays()} */}

## ${words`What I did`}

{/* ${words`Pictures lie beside this file: ![what it shows](./pump.jpg)`} */}

## ${words`Measured`}

{/* <Reading id="pumpDraw" value="1.5 A" with="clampMeter" at="${words`14.0 V, warm`}" /> */}

## ${words`Safety`}

{/* ${words`What was off, locked and proven dead; what you wore; who looked at it.`} */}

## ${words`Changed`}

{/* ${words`What came out otherwise than planned, and which number it replaces.`} */}

## ${words`Next`}

{/* - [ ] ${words`one line for each thing that is left to do`} */}
`

/** Each way with what it is for before it, one below the other. */
function numberWays(): string {
  const ways = [
    [
      words`What a sheet says:`,
      '<Rated id="inletLimit" value="65 °C" source="controllerSheet" at="p. 7" />',
    ],
    [words`What you guess:`, '<Assumed id="supply" value="2.4 m" because="…" />'],
    [words`What you decide:`, '<Chosen id="bore" value="19 mm" because="…" />'],
    [
      words`What works it out:`,
      words`${'<Calc id="…" use="…" />'}, to copy from the page of a calculator`,
    ],
    [words`To use one:`, '{inletLimit}'],
  ] as const
  const widest = Math.max(...ways.map(([what]) => what.length)) + 1
  return ways.map(([what, way]) => `${what.padEnd(widest)}${way}`).join('\n    ')
}

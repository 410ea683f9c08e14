/**
 * Which file a note means by a picture's address. In: the address as typed and the files of the content
 * folder. Out: the file's path there, or what is wrong with the address. What is in the file is looked
 * at in `src/photos/`.
 *
 * A picture lies in the content folder and is written relative to its note (`./pump.jpg`); the build
 * makes it small and takes out what the camera wrote into it. From elsewhere none is fetched: the page
 * would tell a stranger who reads it, and break when that stranger goes.
 */
import { posix } from 'node:path'
import { heicHint, type PictureFault } from '../../photos/facts.ts'
import { nearestName } from '../../quantity/nearest.ts'
import { decodedAddress, decodedPart } from '../decoded.ts'
import { words } from '../../words/words.ts'

const kinds = ['avif', 'gif', 'jpeg', 'jpg', 'png', 'svg', 'tif', 'tiff', 'webp']

export type PictureFound =
  | {
      /** Within the content folder, `/` between parts. */
      readonly path: string
      /** Other files whose names differ from it in capitals only. */
      readonly twins: readonly string[]
    }
  | { readonly fault: PictureFault }

/** Whether an address is that of a picture beside a note, by its ending. */
export const isPictureAddress = (url: string): boolean =>
  /\.(?:avif|gif|hei[cf]|jpe?g|png|svg|tiff?|webp)(?:[?#][^/]*)?$/i.test(url) &&
  !/^(?:[a-z][a-z\d+.-]*:|\/\/)/i.test(url)

/** `files`: paths within the content folder, `/` between parts. `file`: the note's. */
export function findPicture(url: string, file: string, files: readonly string[]): PictureFound {
  const fault = addressFault(url)
  if (fault !== undefined) return { fault }
  const path = readings(url)
    .map((typed) => pathIn(posix.normalize(posix.join(posix.dirname(file), typed)), files))
    .find((one) => one !== undefined)
  const typed = decodedAddress(url)
  if (path === undefined) {
    const due = posix.normalize(posix.join(posix.dirname(file), typed))
    return { fault: missing(typed, due, file, files) }
  }
  const kind = posix.extname(path).slice(1).toLowerCase()
  if (kinds.includes(kind))
    return {
      path,
      twins: (listOf(files).loose.get(loose(path)) ?? []).filter((one) => one !== path),
    }
  return {
    fault: {
      rule: 'not-a-picture',
      text: words`\`${typed}\` is not a picture that browsers show`,
      allowed: kinds.join(', '),
      hint: /^hei[cf]$/.test(kind) ? heicHint : words`save it as JPEG or PNG`,
    },
  }
}

/** What may be meant: a file's name may hold `#`, `%` or `?`, and an address may have them escaped. */
function readings(url: string): string[] {
  const [before = ''] = url.split(/[?#]/)
  return [...new Set([url, decodedPart(url), decodedAddress(url), before, decodedPart(before)])]
}

interface List {
  readonly names: ReadonlySet<string>
  /** By composed letters: a file copied from some machines has `u` and two dots for `ü`. */
  readonly composed: ReadonlyMap<string, string>
  readonly loose: ReadonlyMap<string, readonly string[]>
}

const lists = new WeakMap<readonly string[], List>()
const loose = (path: string): string => path.normalize('NFC').toLowerCase()

function listOf(files: readonly string[]): List {
  const there = lists.get(files)
  if (there !== undefined) return there
  const names = new Map<string, string[]>()
  for (const file of files) names.set(loose(file), [...(names.get(loose(file)) ?? []), file])
  const made: List = {
    names: new Set(files),
    composed: new Map(files.map((file) => [file.normalize('NFC'), file])),
    loose: names,
  }
  lists.set(files, made)
  return made
}

function pathIn(path: string, files: readonly string[]): string | undefined {
  const { names, composed } = listOf(files)
  return names.has(path) ? path : composed.get(path.normalize('NFC'))
}

function addressFault(url: string): PictureFault | undefined {
  if (url === '')
    return { rule: 'no-picture', text: words`a picture without a file`, hint: example }
  if (/^data:/i.test(url))
    return {
      rule: 'picture-elsewhere',
      text: words`a picture written into its address (\`data:…\`)`,
      hint: words`save it as a file beside the note: ${example}`,
    }
  if (/^(?:[a-z][a-z\d+.-]*:)?\/\//i.test(url) || /^[a-z][a-z\d+.-]+:/i.test(url))
    return {
      rule: 'picture-elsewhere',
      text: words`the picture \`${url}\` lies on another site: a page asks no other site for anything`,
      hint: words`save a copy you may publish beside the note: ${example}`,
    }
  if (url.startsWith('/') || url.includes('\\'))
    return {
      rule: 'picture-elsewhere',
      text: words`the picture \`${url}\` is not written from its note`,
      hint: words`put it beside the note: ${example}`,
    }
  return undefined
}

export const example = words`\`![what it shows](./pump.jpg)\``

function missing(
  typed: string,
  path: string,
  file: string,
  files: readonly string[],
): PictureFault {
  const pictures = files.filter((one) => kinds.includes(posix.extname(one).slice(1).toLowerCase()))
  const name = posix.basename(path)
  // The same name in another folder, or in other letters, before a name that is merely alike.
  const near =
    pictures.find((one) => posix.basename(one).toLowerCase() === name.toLowerCase()) ??
    pictures.find(
      (one) =>
        posix.basename(one) ===
        nearestName(
          name,
          pictures.map((two) => posix.basename(two)),
        ),
    )
  const relative = near === undefined ? undefined : posix.relative(posix.dirname(file), near)
  return {
    rule: 'no-picture',
    text: words`there is no picture \`${typed}\` in the content folder`,
    hint:
      relative === undefined
        ? words`put it beside the note: ${example}`
        : words`did you mean \`${relative.startsWith('.') ? relative : `./${relative}`}\`?`,
  }
}

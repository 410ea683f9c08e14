/**
 * Whether a picture that a note names can be published. In: its address as typed and the files of the
 * content folder. Out: what is wrong with it, or undefined.
 *
 * A picture lies in the content folder and is written relative to its note (`./pump.jpg`); the build
 * makes it small and takes out what the camera wrote into it. From elsewhere none is fetched: the page
 * would tell a stranger who reads it, and break when that stranger goes.
 */
import { posix } from 'node:path'
import { nearestName } from '../../quantity/nearest.ts'
import type { Problem } from '../problems.ts'

const kinds = ['avif', 'gif', 'jpeg', 'jpg', 'png', 'svg', 'tiff', 'webp']

export type PictureFault = Pick<Problem, 'rule' | 'text' | 'allowed' | 'hint'>

/** `files`: paths within the content folder, `/` between parts. `file`: the note's. */
export function pictureFault(
  url: string,
  file: string,
  files: readonly string[],
): PictureFault | undefined {
  if (url === '') return { rule: 'no-picture', text: 'a picture without a file', hint: example }
  if (/^data:/i.test(url))
    return {
      rule: 'picture-elsewhere',
      text: 'a picture written into its address (`data:…`)',
      hint: `save it as a file beside the note: ${example}`,
    }
  if (/^(?:[a-z][a-z\d+.-]*:)?\/\//i.test(url) || /^[a-z][a-z\d+.-]+:/i.test(url))
    return {
      rule: 'picture-elsewhere',
      text: `the picture \`${url}\` lies on another site: a page asks no other site for anything`,
      hint: `save a copy you may publish beside the note: ${example}`,
    }
  if (url.startsWith('/') || url.includes('\\'))
    return {
      rule: 'picture-elsewhere',
      text: `the picture \`${url}\` is not written from its note`,
      hint: `put it beside the note: ${example}`,
    }
  const [typed = ''] = url.split(/[?#]/)
  const path = posix.normalize(posix.join(posix.dirname(file), decoded(typed)))
  if (!files.includes(path)) return missing(typed, path, file, files)
  const kind = posix.extname(path).slice(1).toLowerCase()
  if (kinds.includes(kind)) return undefined
  return {
    rule: 'not-a-picture',
    text: `\`${typed}\` is not a picture that browsers show`,
    allowed: kinds.join(', '),
    hint: /^hei[cf]$/.test(kind)
      ? 'a phone saves this kind by itself: export it as JPEG'
      : 'save it as JPEG or PNG',
  }
}

const example = '`![what it shows](./pump.jpg)`'

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
    text: `there is no picture \`${typed}\` in the content folder`,
    hint:
      relative === undefined
        ? `put it beside the note: ${example}`
        : `did you mean \`${relative.startsWith('.') ? relative : `./${relative}`}\`?`,
  }
}

/** An address as people read it; as it is where it is not well formed. */
export function decoded(url: string): string {
  try {
    return decodeURI(url)
  } catch {
    return url
  }
}

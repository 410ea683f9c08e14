/**
 * The file of figures that a page was handed (`src/card/page-figures.ts`): whether there is one, and its
 * text, fetched once. Asked for at the first press, so that it comes together with the script that reads
 * it. Every page loads this file, so it is short.
 */

/** Of the figures beside this page; undefined where there are none. */
export const edition = (): string | undefined => document.documentElement.dataset.figures

let asked: Promise<string> | undefined

/** Rejected where it cannot be had; the next call asks again. */
export function handedText(): Promise<string> {
  asked ??= fetchText()
  asked.catch(() => (asked = undefined))
  return asked
}

async function fetchText(): Promise<string> {
  // The edition keeps a browser from answering with the file of an older one.
  const response = await fetch(`figures.json?${edition() ?? ''}`)
  if (!response.ok) throw new Error(String(response.status))
  return response.text()
}

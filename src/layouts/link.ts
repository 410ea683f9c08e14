/** A link within a sentence, as HTML: the sentence says where it stands. In: address and words. */
import { escape } from '../card/index.ts'

export const linkHtml = (href: string, text: string): string =>
  `<a href="${escape(href)}">${escape(text)}</a>`

/** A catalogue in which every text of the kit stands between marks, as a language of its own. */
import { texts as english } from '../../src/words/en.ts'

export const [open, close] = ['⟦', '⟧'] as const

export const language = 'de'

export const texts: Readonly<Record<string, string>> = Object.fromEntries(
  Object.keys(english).map((key) => [key, `${open}${key}${close}`]),
)

/**
 * Which of two texts goes with a number, by the rules of the catalogue's language. In: the number, the
 * text for one and the text for more, each with the number in it. Out: one of them.
 *
 * The first is also that for 21 in some languages, and for 0 in others: it says the number, never “a”.
 */
import { language } from '#words'

let rules: Intl.PluralRules | undefined

export function counted(number: number, one: string, more: string): string {
  rules ??= new Intl.PluralRules(language)
  return rules.select(number) === 'one' ? one : more
}

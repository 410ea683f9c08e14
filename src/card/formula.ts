/**
 * A formula in TeX as MathML, at build time only (the browser never loads this). A mistake in the TeX
 * throws. Style attributes are taken out, since the site's content policy allows none.
 */
import temml from 'temml'

export function formulaHtml(tex: string): string {
  return temml
    .renderToString(tex, { displayMode: true, throwOnError: true })
    .replace(/ style="[^"]*"/g, '')
}

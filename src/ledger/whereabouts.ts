/**
 * Where the site will be: its host and the path below which it lies, set once. In: the settings as read
 * and the environment, whose `SITE_URL` and `BASE_PATH` go before `site.yaml`. Out: the settings with
 * `address` as the host alone and `base` with `/` at both ends, and what is wrong.
 *
 * An address may bring the path along: `https://example.org/my-truck/` sets both.
 */
import type { Problem } from './problems.ts'
import type { SiteRead, SiteSettings } from './site-file.ts'
import { words } from '../words/words.ts'

export interface Environment {
  readonly SITE_URL?: string | undefined
  readonly BASE_PATH?: string | undefined
}

interface Given {
  /** As messages call it. */
  readonly from: string
  readonly text: string
}

export function withWhereabouts(read: SiteRead, env: Environment, file: string): SiteRead {
  if (read.readable === undefined) return read
  const address = given('SITE_URL', env.SITE_URL, 'address', read.readable.address)
  const base = given(
    'BASE_PATH',
    env.BASE_PATH,
    'base',
    read.readable.base === '/' ? undefined : read.readable.base,
  )
  const faults: string[] = []
  const host = address && hostOf(address, faults)
  const path = pathOf(host, address, base, faults)
  const place = (settings: SiteSettings): SiteSettings => ({
    ...settings,
    base: path,
    address: host?.origin,
  })
  const problems: Problem[] = faults.map((text) => ({
    rule: 'bad-whereabouts',
    level: 'error',
    text,
    hint: words`one of them is enough: \`address: https://example.org/my-truck/\`, or \`SITE_URL\` of the same kind`,
    file,
    line: 1,
    column: 1,
  }))
  return {
    ...read,
    site: read.site && place(read.site),
    readable: place(read.readable),
    problems: [...read.problems, ...problems],
  }
}

function given(
  variable: string,
  ofShell: string | undefined,
  setting: string,
  ofFile: string | undefined,
): Given | undefined {
  if (ofShell !== undefined && ofShell !== '') return { from: variable, text: ofShell }
  return ofFile === undefined ? undefined : { from: setting, text: ofFile }
}

function hostOf({ from, text }: Given, faults: string[]): URL | undefined {
  const url = URL.canParse(text) ? new URL(text) : undefined
  if (url !== undefined && /^https?:$/.test(url.protocol) && url.search === '' && url.hash === '')
    return url
  faults.push(words`\`${from}\`: \`${text}\` is no web address, such as https://example.org`)
  return undefined
}

/** Of `/`, `kit`, `/kit`, `/kit/`: with a slash at both ends. */
function slashed(path: string): string {
  const inner = path.replace(/^\/+|\/+$/g, '')
  return inner === '' ? '/' : `/${inner}/`
}

function pathOf(
  host: URL | undefined,
  address: Given | undefined,
  base: Given | undefined,
  faults: string[],
): string {
  const ofHost = host === undefined ? '/' : slashed(host.pathname)
  const ofBase = base === undefined ? '/' : slashed(base.text)
  const path = ofHost === '/' || base?.from === 'BASE_PATH' ? ofBase : ofHost
  // A variable of the shell goes before the file; two that are of one kind must agree.
  const ofOneKind = (address?.from === 'SITE_URL') === (base?.from === 'BASE_PATH')
  if (base !== undefined && ofHost !== '/' && ofOneKind && ofHost !== ofBase)
    faults.push(
      words`\`${address?.from ?? ''}\` says the site lies at \`${ofHost}\`, \`${base.from}\` says \`${ofBase}\``,
    )
  if (!/^\/(?:[A-Za-z0-9._~-]+\/)*$/.test(path) || /\/\.{1,2}\//.test(path)) {
    faults.push(
      words`the path \`${path}\` of the site: letters without accents, digits, \`-\`, \`_\`, \`.\` and \`~\` only`,
    )
    return '/'
  }
  return path
}

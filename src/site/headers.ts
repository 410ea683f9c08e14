/**
 * What a host may send along with the pages, in the plain form that many hosts read: a path, and below it
 * `Name: value`. In: the content policies of all pages, the base path. Out: the text of `_headers`.
 *
 * Every page carries its own policy already. Here are all hashes of the site in one, and what a page
 * cannot say itself (`frame-ancestors`). The search runs WebAssembly in a worker, which has the policy
 * that its file is sent with; pages still forbid it by their own.
 */
const perSource = new Map([
  ['script-src', ["'self'", "'wasm-unsafe-eval'"]],
  ['style-src', ["'self'"]],
])

/** The policy that a page carries; undefined where it has none. */
export function policyOf(html: string): string | undefined {
  const tag = /<meta http-equiv="content-security-policy" content="([^"]*)"/i.exec(html)?.[1]
  return tag?.replaceAll('&#39;', "'").replaceAll('&quot;', '"')
}

export function headersText(policies: Iterable<string>, base: string): string {
  const found = new Map<string, Set<string>>()
  for (const policy of policies)
    for (const directive of policy.split(';')) {
      const [name = '', ...values] = directive.trim().split(/\s+/)
      if (name === '') continue
      const all = found.get(name) ?? new Set(perSource.get(name) ?? [])
      for (const value of values) all.add(value)
      found.set(name, all)
    }
  const directives = [...found].map(([name, values]) => `${name} ${inOrder(values).join(' ')}`)
  const policy = [...directives, "frame-ancestors 'none'"].join('; ')
  return `${[
    `${base}*`,
    `  Content-Security-Policy: ${policy}`,
    '  X-Content-Type-Options: nosniff',
    '  X-Frame-Options: DENY',
    '  Referrer-Policy: strict-origin-when-cross-origin',
    '  Cross-Origin-Opener-Policy: same-origin',
    '  Permissions-Policy: camera=(), microphone=(), geolocation=()',
    `${base}_astro/*`,
    '  Cache-Control: public, max-age=31536000, immutable',
    `${base}photos/*`,
    '  Cache-Control: public, max-age=31536000, immutable',
    `${base}offline-worker.js`,
    '  Cache-Control: no-cache',
  ].join('\n')}\n`
}

/** Words first, hashes sorted: the order of the pages does not matter. */
const inOrder = (values: ReadonlySet<string>): string[] => {
  const hash = (value: string): boolean => /^'sha\d+-/.test(value)
  return [...[...values].filter((one) => !hash(one)), ...[...values].filter(hash).sort()]
}

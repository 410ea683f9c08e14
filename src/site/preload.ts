/**
 * The few lines that every `import()` of a page goes through, in place of the bundler's own, which are
 * a kilobyte: they also wait for styles of a part, and no part of this kit has styles of its own.
 */
import type { Plugin } from 'vite'

const helper = '\0vite/preload-helper.js'

export function leanPreload(): Plugin {
  let base = '/'
  return {
    name: 'worked-notes:lean-preload',
    enforce: 'pre',
    apply: 'build',
    configResolved(config) {
      base = config.base
    },
    load(id) {
      if (id !== helper) return undefined
      return `export const __vitePreload = (load, parts = []) => {
  for (const part of parts) {
    const link = document.createElement('link')
    link.rel = 'modulepreload'
    link.href = ${JSON.stringify(base)} + part
    document.head.append(link)
  }
  return load()
}`
    },
  }
}

/**
 * The few lines that every `import()` of a page goes through, in place of the bundler's own, which are
 * a kilobyte: they also wait for styles of a part, and no part of this kit has styles of its own.
 */
import type { Plugin } from 'vite'

const helper = '\0vite/preload-helper.js'

export function leanPreload(): Plugin {
  return {
    name: 'worked-notes:lean-preload',
    enforce: 'pre',
    apply: 'build',
    load(id) {
      if (id !== helper) return undefined
      // From the part's own folder, so that the site may lie below any path.
      return `const here = import.meta.url
export const __vitePreload = (load, parts = []) => {
  for (const part of parts) {
    const link = document.createElement('link')
    link.rel = 'modulepreload'
    link.href = new URL('../' + part, here)
    document.head.append(link)
  }
  return load()
}`
    },
  }
}

/**
 * Lets the reader's browser keep the pages that were read, where the builder switched that on. In: the
 * page as it is. The page itself was fetched before anything could keep it, so it is named to the keeper.
 */
import { basePath } from './base.ts'
import { edition } from './handed.ts'

export async function startOffline(): Promise<void> {
  if (!('serviceWorker' in navigator)) return
  const { serviceWorker } = navigator
  try {
    await serviceWorker.register(`${basePath()}offline-worker.js`, { updateViaCache: 'none' })
    const { active } = await serviceWorker.ready
    const parts = performance.getEntriesByType('resource').map(({ name }) => name)
    // Asked for at the first change only, which may be without a network.
    const figures = edition() === undefined ? [] : [new URL('figures.json', location.href).href]
    active?.postMessage({ keep: [location.href, ...parts, ...figures] })
  } catch {
    // A browser that keeps nothing: the page is whole without it.
  }
}

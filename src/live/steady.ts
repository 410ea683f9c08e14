/**
 * Keeps what has the focus where it is on the screen while the page round it is written anew: cards
 * above it grow and shrink with the figures. Browsers do so by themselves only for what is in the flow,
 * and not all of them.
 */
let follower: (() => void) | undefined

/** What stands over the page puts itself beside its place again after each writing. */
export function followWriting(move: (() => void) | undefined): void {
  follower = move
}

export function steady(write: () => void): void {
  const held = document.activeElement
  const before = held?.getBoundingClientRect().top ?? 0
  write()
  follower?.()
  if (held === null || held === document.body || !held.isConnected) return
  // Out of sight it holds nothing: the reader looks elsewhere.
  if (before < 0 || before > innerHeight) return
  const moved = held.getBoundingClientRect().top - before
  if (Math.abs(moved) >= 0.5) scrollBy({ top: moved, behavior: 'instant' })
}

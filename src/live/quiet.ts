/** Work put off until no key was pressed for a moment, and then until the browser has time. */
const pause = 400

/** Milliseconds without a key after which a wrong entry is told. */
export const patience = 700

/** Each call of what comes back puts `run` off again. */
export function afterQuiet(run: () => void): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined
  return () => {
    clearTimeout(timer)
    timer = setTimeout(() => {
      if ('requestIdleCallback' in globalThis) requestIdleCallback(run, { timeout: 300 })
      else run()
    }, pause)
  }
}

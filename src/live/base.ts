/**
 * The path below which the site lies, with a slash at its end. Pages say it relative to themselves, so
 * that one output works wherever it is put; only the page of what is not found says it from the root.
 */
export function basePath(): string {
  const said = document.documentElement.dataset.base ?? '/'
  return said.startsWith('/') ? said : new URL(said, location.href).pathname
}

/** Where a reader's own figures are kept in the browser. */
export const figuresKey = (): string => `worked-notes figures ${basePath()}`

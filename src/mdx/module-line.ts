/**
 * Whether a line that begins with `import` or `export` is meant as one.
 *
 * A paragraph may well begin "import duty on the cells was …"; only what has the shape of a statement
 * (names, `from`, a quoted path) is taken for one.
 */
const quote = `["'“”„‘’‚]`
const name = String.raw`[\p{ID_Start}$_][\p{ID_Continue}$]*`
const importShape = new RegExp(
  String.raw`^import\s*(?:${quote}|\{|\*\s*as\b|${name}\s*(?:,\s*[{*].*|\s+from)?\s*${quote})`,
  'u',
)
const exportShape = /^export\s*(?:\{|\*|(?:default|const|let|var|function|class|async)\s)/

export function looksLikeModule(line: string): boolean {
  return importShape.test(line) || exportShape.test(line)
}

/** `note/block.field…` -> the block and its field; undefined for a number that is of no block. */
export function blockInput(
  id: string,
): { readonly block: string; readonly key: string } | undefined {
  const dot = id.indexOf('.', id.indexOf('/'))
  if (dot < 0) return undefined
  return { block: id.slice(0, dot), key: id.slice(dot + 1).split('.')[0] ?? '' }
}

/** The value of an attribute, as it stands in HTML, as text. */
export function attributeText(value: string): string {
  if (!value.includes('&')) return value
  return value
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&#x26;', '&')
    .replaceAll('&#38;', '&')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&')
}

/** Addresses as people read them; as they are where they are not well formed. */
export const decodedAddress = (url: string): string => readBy(decodeURI, url)

/** One part of an address, whose `%2F` and `%23` are signs of a name. */
export const decodedPart = (text: string): string => readBy(decodeURIComponent, text)

function readBy(read: (text: string) => string, text: string): string {
  try {
    return read(text)
  } catch {
    return text
  }
}

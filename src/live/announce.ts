/** Tells what changed elsewhere on the page to those who cannot see it, and briefly to all. */
export function announce(text: string): void {
  const host = document.querySelector('work-strip') ?? document.body
  let place = host.querySelector<HTMLElement>(':scope > .own-announce')
  if (place === null) {
    place = document.createElement('p')
    place.className = 'own-announce hidden-words on-screen'
    place.setAttribute('role', 'status')
    host.append(place)
  }
  const region = place
  // A region is heard when its text changes after it is there.
  setTimeout(() => {
    region.textContent = text
  }, 30)
}

/**
 * On a page that was opened from a disk, shows the line that says what such a copy cannot do. Browsers
 * run no module from a disk but what stands in the page itself: so this one imports nothing, and is small
 * enough to be written into it.
 */
if (location.protocol === 'file:')
  for (const line of document.querySelectorAll<HTMLElement>('.from-disk')) line.hidden = false

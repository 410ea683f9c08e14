/**
 * `<work-card data-block="note/name">`: puts a button under a finished card. Everything else is
 * fetched at the first press; until then, and without script, the card is what the build wrote.
 */
export class WorkCard extends HTMLElement {
  connectedCallback() {
    if (this.querySelector('.try-bar')) return
    const bar = document.createElement('div')
    bar.className = 'try-bar on-screen'
    bar.innerHTML =
      '<button type="button" aria-expanded="false">Try your figures</button> <span role="status"></span>'
    const [button, said] = bar.children
    button?.addEventListener('click', () => {
      if (said) said.textContent = ''
      button.setAttribute('aria-busy', 'true')
      import('./try.ts')
        .then(({ toggle }) => toggle(this))
        .catch((error: unknown) => {
          if (said)
            said.textContent = `This cannot be worked here (${String(error)}). The page stands as it is.`
        })
        .finally(() => button.removeAttribute('aria-busy'))
    })
    this.append(bar)
  }
}

if (!customElements.get('work-card')) customElements.define('work-card', WorkCard)

/**
 * `<work-search>`: the field for searching the site. Empty until a script fills it; what searches is
 * fetched at the first question.
 */
import { words } from '../words/words.ts'
export class WorkSearch extends HTMLElement {
  connectedCallback() {
    this.innerHTML = `<form role="search"><label><span class="hidden-words">${words`Search these notes`}</span><input type="search" name="q" placeholder="${words`Search`}" autocomplete="off" enterkeyhint="search"></label><button class="plain">${words`Search`}</button></form>`
    const form = this.querySelector('form')
    const input = this.querySelector('input')
    form?.addEventListener('submit', (event) => {
      event.preventDefault()
      const asked = input?.value.trim() ?? ''
      import('./search.ts')
        .then(({ showFound }) => showFound(asked))
        .catch(() => {
          // Without a network, and never searched before: nothing to say it with but the field itself.
          input?.setCustomValidity(words`The search cannot be fetched now.`)
          input?.reportValidity()
          input?.setCustomValidity('')
        })
    })
  }
}

if (!customElements.get('work-search')) customElements.define('work-search', WorkSearch)

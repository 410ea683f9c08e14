/** Loaded before a command (`node --import`): its words come from the marked catalogue. */
import { registerHooks } from 'node:module'

registerHooks({
  resolve: (specifier, context, next) =>
    specifier === '#words'
      ? { url: new URL('marked-words.ts', import.meta.url).href, shortCircuit: true }
      : next(specifier, context),
})

/**
 * What the kit has to say about a note: facts with their place. `src/cli/` and the dev overlay print
 * them; tests compare them whole.
 */
export interface Place {
  /** As the builder knows it: relative to the content folder's parent, `/` between parts. */
  readonly file: string
  /** From 1. */
  readonly line: number
  readonly column: number
}

export interface Problem extends Place {
  /** Fault first, permanent, kebab-case: `wrong-dimension`. */
  readonly rule: string
  readonly level: 'error' | 'warning'
  /** What is wrong, with what was read in backquotes; a sentence without full stop. */
  readonly text: string
  /** What is allowed here. */
  readonly allowed?: string
  /** The likely slip, or what to write instead. */
  readonly hint?: string
  /** The other place, for doubles and circles. */
  readonly also?: readonly Place[]
}

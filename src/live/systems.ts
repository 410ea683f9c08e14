/** The units that the reader chose for the whole site, as `<html data-units>` says. */
import type { UnitSystem } from '../ledger/published.ts'

/** `metric`, `us`, or `both`, which begins with the builder's first. Undefined: as the builder wrote it. */
export function systemsOf(
  chosen: string | undefined,
  first: string | undefined,
): readonly UnitSystem[] | undefined {
  if (chosen === 'both') return first === 'us' ? ['us', 'metric'] : ['metric', 'us']
  return chosen === 'metric' || chosen === 'us' ? [chosen] : undefined
}

/** In: the site's own. */
export const chosenSystems = ([first]: readonly UnitSystem[]): readonly UnitSystem[] | undefined =>
  systemsOf(document.documentElement.dataset.units, first)

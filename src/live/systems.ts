/** The units that the reader chose for the whole site, as `<html data-units>` says. */
import type { UnitSystem } from '../ledger/published.ts'

/** In: the site's own, since “both” begins with its first. Undefined: as the builder wrote it. */
export function chosenSystems([first]: readonly UnitSystem[]): readonly UnitSystem[] | undefined {
  const chosen = document.documentElement.dataset.units
  if (chosen === 'both') return first === 'us' ? ['us', 'metric'] : ['metric', 'us']
  return chosen === 'metric' || chosen === 'us' ? [chosen] : undefined
}

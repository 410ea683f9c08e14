/**
 * Hazards by name: `DANGER High voltage; WARNING Poison`, gravest first. Without the caution texts, so
 * that a card which only names its hazards does not bring them along. Unknown ids throw: a figure must
 * not leave without its warnings.
 */
import { hazardNames, type HazardId } from '../../../calculators/hazard-names.ts'
import { signalWords } from '../words.ts'

const order = ['DANGER', 'WARNING', 'CAUTION', 'NOTICE']

const isHazard = (id: string): id is HazardId => Object.hasOwn(hazardNames, id)

export function inOrder(ids: readonly string[]): readonly HazardId[] {
  const known = [...new Set(ids)].map((id) => {
    if (!isHazard(id)) throw new Error(`no hazard \`${id}\``)
    return id
  })
  const rank = (id: HazardId): number => order.indexOf(hazardNames[id].signal)
  return known.toSorted((a, b) => rank(a) - rank(b))
}

export function hazardLine(ids: readonly string[]): string {
  return inOrder(ids)
    .map((id) => `${signalWords[hazardNames[id].signal]} ${hazardNames[id].title}`)
    .join('; ')
}

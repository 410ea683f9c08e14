/**
 * A small change of one input: a tenth of it where a tenth means something, else a step. A temperature
 * or a gauge pressure has no tenth (its zero is a convention), nor has a signed position; an efficiency
 * of 96 % cannot have a tenth more. Never outside the hard range.
 */
import { dimensions } from '../../quantity/index.ts'
import { hardRange, isWhole, usualRange, type NumberPlace } from './places.ts'

export interface Step {
  readonly how: 'share' | 'step'
  /** SI, above 0. */
  readonly size: number
}

export const share = 0.1
const temperatureStep = 5

export function stepOf(place: NumberPlace, now: number): Step {
  const { field } = place
  const { flavour } = dimensions[field.of]
  const [low, high] = hardRange(field)
  const usual = usualRange(field)
  const part = share * (usual[1] - usual[0])
  if (isWhole(place)) return { how: 'step', size: 1 }
  if (flavour === 'temperature')
    return { how: 'step', size: Math.min(temperatureStep, share * (high - low)) }
  if (flavour === 'gauge' || low < 0) return { how: 'step', size: part }
  const tenth = share * now
  if (tenth > 0 && now + tenth <= high && now - tenth >= low) return { how: 'share', size: tenth }
  return { how: 'step', size: part }
}

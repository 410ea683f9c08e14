/** The phases of a conversion. In: a phase as a note's head has it. Out: its title, for readers. */
import { words } from '../words/words.ts'

/** The phases of a conversion in the order of the work; a note's `phase` is one of them. */
export const phases: Readonly<Record<string, string>> = {
  plan: words`Plan and rules`,
  survey: words`Donor survey`,
  target: words`Target, motor and gearing`,
  strip: words`Strip-out`,
  adapter: words`Adapter and mounts`,
  pack: words`Pack and boxes`,
  'high-voltage': words`High-voltage side`,
  cooling: words`Cooling loop`,
  'twelve-volt': words`12 V side`,
  charging: words`Charging`,
  chassis: words`Mass, brakes, suspension`,
  cabin: words`Cabin and controls`,
  commissioning: words`Commissioning`,
  certification: words`Certification`,
  road: words`Road test and ownership`,
}

export const phaseWords = (phase: string): string => phases[phase] ?? phase

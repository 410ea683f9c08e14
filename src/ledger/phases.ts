/** The phases of a conversion. In: a phase as a note's head has it. Out: its title, for readers. */

/** The phases of a conversion in the order of the work; a note's `phase` is one of them. */
export const phases: Readonly<Record<string, string>> = {
  plan: 'Plan and rules',
  survey: 'Donor survey',
  target: 'Target, motor and gearing',
  strip: 'Strip-out',
  adapter: 'Adapter and mounts',
  pack: 'Pack and boxes',
  'high-voltage': 'High-voltage side',
  cooling: 'Cooling loop',
  'twelve-volt': '12 V side',
  charging: 'Charging',
  chassis: 'Mass, brakes, suspension',
  cabin: 'Cabin and controls',
  commissioning: 'Commissioning',
  certification: 'Certification',
  road: 'Road test and ownership',
}

export const phaseWords = (phase: string): string => phases[phase] ?? phase

/**
 * Every text of the kit in English, made by `npm run words` from where it is used. For another language
 * copy this file, say the language, and translate what stands behind each colon: `{0}`, `{1}` are
 * values, and may stand in another order. The README says how it is chosen.
 */
/** As in `lang="…"` (BCP 47). */
export const language = 'en'

export const texts: Readonly<Record<string, string>> = {
  // calculators/auxiliary/cabin-heater.ts
  fitted: 'fitted',
  'not fitted': 'not fitted',
  'not known': 'not known',
  'Heater power': 'Heater power',
  'On its plate.': 'On its plate.',
  at: 'at',
  'The voltage on its plate.': 'The voltage on its plate.',
  'Highest voltage of its supply': 'Highest voltage of its supply',
  'The full pack, or the 12 V side on charge.': 'The full pack, or the 12 V side on charge.',
  Element: 'Element',
  'A PTC element limits itself; wire does not.': 'A PTC element limits itself; wire does not.',
  'resistance wire': 'resistance wire',
  'PTC, ceramic': 'PTC, ceramic',
  'Fuse fitted': 'Fuse fitted',
  'Its own, not the main fuse.': 'Its own, not the main fuse.',
  'Fuse is made for': 'Fuse is made for',
  'Its DC voltage; an AC figure does not count.': 'Its DC voltage; an AC figure does not count.',
  'Contactor breaks': 'Contactor breaks',
  'Its DC voltage at this current.': 'Its DC voltage at this current.',
  'Wire carries': 'Wire carries',
  'From its table, with derating.': 'From its table, with derating.',
  'Thermal cut-out that resets itself': 'Thermal cut-out that resets itself',
  'Opens when the element runs hot, closes again when cool.':
    'Opens when the element runs hot, closes again when cool.',
  'not looked at': 'not looked at',
  'Thermal fuse or hand-reset limit': 'Thermal fuse or hand-reset limit',
  'Opens for good, apart from the cut-out.': 'Opens for good, apart from the cut-out.',
  'Interlock with the blower': 'Interlock with the blower',
  'No heat without air: by the blower’s current or an air switch, not by its knob.':
    'No heat without air: by the blower’s current or an air switch, not by its knob.',
  'Air of the blower': 'Air of the blower',
  'Through the heater, at its lowest speed.': 'Through the heater, at its lowest speed.',
  'Heated drive': 'Heated drive',
  'How long it is on in a winter trip.': 'How long it is on in a winter trip.',
  'On for': 'On for',
  'Share of that time, by thermostat.': 'Share of that time, by thermostat.',
  'an old body loses what it gets': 'an old body loses what it gets',
  'Consumption of the drive': 'Consumption of the drive',
  'Without the heater.': 'Without the heater.',
  'Usable energy of the pack': 'Usable energy of the pack',
  'In the cold.': 'In the cold.',
  'Cabin heater and demist': 'Cabin heater and demist',
  'Current and fuse of an electric cabin heater at the highest voltage, whether its protection is complete, and what it takes from the range.':
    'Current and fuse of an electric cabin heater at the highest voltage, whether its protection is complete, and what it takes from the range.',
  'Draws at most': 'Draws at most',
  'Heat at most': 'Heat at most',
  Fuse: 'Fuse',
  'Current in hand below it': 'Current in hand below it',
  'Air gets warmer by': 'Air gets warmer by',
  Takes: 'Takes',
  'Costs in distance': 'Costs in distance',
  'Of the range': 'Of the range',
  'Wire is taken as a fixed resistance. A PTC element is taken at its rated power; cold it draws up to twice that for seconds, which its sheet tells and a slow fuse rides.':
    'Wire is taken as a fixed resistance. A PTC element is taken at its rated power; cold it draws up to twice that for seconds, which its sheet tells and a slow fuse rides.',
  'Up to 32 V the ratings are those of blade fuses, above those of cartridge fuses.':
    'Up to 32 V the ratings are those of blade fuses, above those of cartridge fuses.',
  'The energy is that of the rated power; on a falling pack voltage a wire element takes less.':
    'The energy is that of the rated power; on a falling pack voltage a wire element takes less.',
  'Air of 1.2 kg/m³; all heat goes into it.': 'Air of 1.2 kg/m³; all heat goes into it.',
  'Fuse and contactor voltage': 'Fuse and contactor voltage',
  'Fuse between heater and wire': 'Fuse between heater and wire',
  Overheating: 'Overheating',
  Range: 'Range',
  'thermal cut-out': 'thermal cut-out',
  'thermal fuse': 'thermal fuse',
  'blower interlock': 'blower interlock',
  'The trip’s heating takes {0}, {1} of the pack': 'The trip’s heating takes {0}, {1} of the pack',
  'The trip’s heating takes {0}, {1} of the pack or {2}':
    'The trip’s heating takes {0}, {1} of the pack or {2}',
  'The fuse and the contactor is made for less than {0} DC: it arcs and burns instead of opening. Fit one that breaks it.':
    'The fuse and the contactor is made for less than {0} DC: it arcs and burns instead of opening. Fit one that breaks it.',
  'The fuse is made for less than {0} DC: it arcs and burns instead of opening. Fit one that breaks it.':
    'The fuse is made for less than {0} DC: it arcs and burns instead of opening. Fit one that breaks it.',
  'The contactor is made for less than {0} DC: it arcs and burns instead of opening. Fit one that breaks it.':
    'The contactor is made for less than {0} DC: it arcs and burns instead of opening. Fit one that breaks it.',
  'The DC voltages that fuse and contactor break are not both given: read them off the parts.':
    'The DC voltages that fuse and contactor break are not both given: read them off the parts.',
  'Fuse and contactor break {0} DC.': 'Fuse and contactor break {0} DC.',
  'at least {0} DC each (stop)': 'at least {0} DC each (stop)',
  'The heater draws {0}, more than the fuse of {1}: it blows in the cold. The next standard is {2}.':
    'The heater draws {0}, more than the fuse of {1}: it blows in the cold. The next standard is {2}.',
  'A fuse of {0} does not protect a wire that carries {1}: thicker wire.':
    'A fuse of {0} does not protect a wire that carries {1}: thicker wire.',
  '{0} is beyond the list of ratings: split the heater.':
    '{0} is beyond the list of ratings: split the heater.',
  'It takes a fuse of {0} of its own; whether the wire stands that is not known.':
    'It takes a fuse of {0} of its own; whether the wire stands that is not known.',
  'The fuse of {0} is loaded above 80 % and tires: {1} on a wire that carries as much.':
    'The fuse of {0} is loaded above 80 % and tires: {1} on a wire that carries as much.',
  'The heater draws {0}; a fuse of {1} carries that and protects the wire.':
    'The heater draws {0}; a fuse of {1} carries that and protects the wire.',
  'from {0} (watch), {1} (stop) up to what the wire carries (stop)':
    'from {0} (watch), {1} (stop) up to what the wire carries (stop)',
  'Cut-out, thermal fuse and blower interlock are fitted: prove each with the blower stopped.':
    'Cut-out, thermal fuse and blower interlock are fitted: prove each with the blower stopped.',
  'Not known: {0}. Open it and look.': 'Not known: {0}. Open it and look.',
  'Nothing stops it when the blower does: it glows. Fit a cut-out, a thermal fuse apart from it, and an interlock.':
    'Nothing stops it when the blower does: it glows. Fit a cut-out, a thermal fuse apart from it, and an interlock.',
  'Not fitted: {0}. {1}': 'Not fitted: {0}. {1}',
  'A cut-out that resets itself can weld shut.': 'A cut-out that resets itself can weld shut.',
  'One failure is then enough to overheat it.': 'One failure is then enough to overheat it.',
  'cut-out, thermal fuse and blower interlock (watch), at least one (stop)':
    'cut-out, thermal fuse and blower interlock (watch), at least one (stop)',
  'The usable energy of the pack is not given.': 'The usable energy of the pack is not given.',
  '{0}: warm it while plugged in, heat seat and screen instead.':
    '{0}: warm it while plugged in, heat seat and screen instead.',
  'at most 20 % of the usable energy (watch)': 'at most 20 % of the usable energy (watch)',
  'I / 0.8 = {0}, next standard {1}': 'I / 0.8 = {0}, next standard {1}',
  // calculators/auxiliary/cable-drop.ts
  'Cable size and voltage drop': 'Cable size and voltage drop',
  'Works out what a cable loses on the way and whether it may carry the current, with the rating’s own conditions beside it.':
    'Works out what a cable loses on the way and whether it may carry the current, with the rating’s own conditions beside it.',
  Current: 'Current',
  'Continuous, or the mean square over a drive.': 'Continuous, or the mean square over a drive.',
  'Length, one way': 'Length, one way',
  'Along the cable, not as the crow flies.': 'Along the cable, not as the crow flies.',
  Cable: 'Cable',
  'Copper area.': 'Copper area.',
  'Supply voltage': 'Supply voltage',
  'At the source end.': 'At the source end.',
  Return: 'Return',
  'What carries the current back.': 'What carries the current back.',
  'a second cable of the same size': 'a second cable of the same size',
  'the body': 'the body',
  'counting a return cable is the worse case for the drop':
    'counting a return cable is the worse case for the drop',
  'Resistance of the body': 'Resistance of the body',
  'Earth stud to earth stud, only for a body return; measured with a few amperes.':
    'Earth stud to earth stud, only for a body return; measured with a few amperes.',
  'two clean bolted joints and some sheet steel': 'two clean bolted joints and some sheet steel',
  Copper: 'Copper',
  'Flexible cable resists up to 16 % more than its area says.':
    'Flexible cable resists up to 16 % more than its area says.',
  'flexible, limits of IEC 60228 class 5': 'flexible, limits of IEC 60228 class 5',
  'solid copper of the full area': 'solid copper of the full area',
  'vehicle cable is fine-stranded': 'vehicle cable is fine-stranded',
  'Conductor temperature': 'Conductor temperature',
  'In use.': 'In use.',
  'a loaded cable in a warm place': 'a loaded cable in a warm place',
  'Critical circuit': 'Critical circuit',
  'Lamps, pumps, coils, controllers, traction.': 'Lamps, pumps, coils, controllers, traction.',
  yes: 'yes',
  no: 'no',
  'the stricter limit': 'the stricter limit',
  'Rating taken from': 'Rating taken from',
  'The same cable is printed with half or double, as the conditions are.':
    'The same cable is printed with half or double, as the conditions are.',
  '33 CFR 183.425, outside engine spaces': '33 CFR 183.425, outside engine spaces',
  '33 CFR 183.425, in engine spaces': '33 CFR 183.425, in engine spaces',
  'FAA AC 43.13-1B, in bundles': 'FAA AC 43.13-1B, in bundles',
  'loom table, PVC': 'loom table, PVC',
  'the cable’s own sheet': 'the cable’s own sheet',
  'Insulation class': 'Insulation class',
  'Column of the table; PVC loom wire is 70 °C.': 'Column of the table; PVC loom wire is 70 °C.',
  'Rating from the sheet': 'Rating from the sheet',
  'Continuous.': 'Continuous.',
  'Conditions of that rating': 'Conditions of that rating',
  'Air temperature, free or bundled, conductor temperature.':
    'Air temperature, free or bundled, conductor temperature.',
  'Derating for bundle and heat': 'Derating for bundle and heat',
  '33 CFR for bundles at 50 V and more: 70 % with 3 conductors, 60 % with 4 to 6, 50 % with 7 to 24.':
    '33 CFR for bundles at 50 V and more: 70 % with 3 conductors, 60 % with 4 to 6, 50 % with 7 to 24.',
  'it runs as its table supposes': 'it runs as its table supposes',
  'Fuse at the source': 'Fuse at the source',
  'The one this cable hangs on.': 'The one this cable hangs on.',
  'Voltage drop': 'Voltage drop',
  'Drop of supply': 'Drop of supply',
  Loss: 'Loss',
  'Resistance there and back': 'Resistance there and back',
  'The cable carries': 'The cable carries',
  'Use of its rating': 'Use of its rating',
  'Conditions of the rating': 'Conditions of the rating',
  'Next size up': 'Next size up',
  'Drop it leaves': 'Drop it leaves',
  'Smallest size for the drop alone': 'Smallest size for the drop alone',
  'Direct current; joints and fuses are not counted.':
    'Direct current; joints and fuses are not counted.',
  'Flexible cable: class 5 limits of IEC 60228 at 0.5 to 150 mm², between them by interpolation.':
    'Flexible cable: class 5 limits of IEC 60228 at 0.5 to 150 mm², between them by interpolation.',
  '33 CFR 183.425 is for circuits under 50 V, 18 AWG to 4/0; the aircraft table for 24 AWG to 4/0; the loom table for 0.65 to 3 mm². Between two printed sizes the thinner one counts. For anything else take the cable’s own sheet.':
    '33 CFR 183.425 is for circuits under 50 V, 18 AWG to 4/0; the aircraft table for 24 AWG to 4/0; the loom table for 0.65 to 3 mm². Between two printed sizes the thinner one counts. For anything else take the cable’s own sheet.',
  'The smallest size for the drop may still be too thin for the current: look at the rating as well.':
    'The smallest size for the drop may still be too thin for the current: look at the rating as well.',
  'Current against rating': 'Current against rating',
  'Rating with its conditions': 'Rating with its conditions',
  'Fuse protects the cable': 'Fuse protects the cable',
  'Body as return': 'Body as return',
  'The cable loses {0}, {1} of the supply': 'The cable loses {0}, {1} of the supply',
  'no standard size is thick enough: shorten the run':
    'no standard size is thick enough: shorten the run',
  'take {0} or more': 'take {0} or more',
  '{0}; for less, {1}.': '{0}; for less, {1}.',
  '{0}: too much; {1}.': '{0}: too much; {1}.',
  'No rating fits this cable, insulation and voltage: name the table and the insulation class, or give the rating of its own sheet.':
    'No rating fits this cable, insulation and voltage: name the table and the insulation class, or give the rating of its own sheet.',
  'The current is {0} of the {1} the cable carries':
    'The current is {0} of the {1} the cable carries',
  '{0}: little is left for heat; the next size gives room.':
    '{0}: little is left for heat; the next size gives room.',
  '{0}: it overheats. Take a thicker one.': '{0}: it overheats. Take a thicker one.',
  'There is no rating yet.': 'There is no rating yet.',
  'The rating stands without its conditions: the same cable is printed with half or double. Write down air temperature and how it lies.':
    'The rating stands without its conditions: the same cable is printed with half or double. Write down air temperature and how it lies.',
  'The rating holds for: {0}.': 'The rating holds for: {0}.',
  'The fuse at the source is not given: every cable needs one.':
    'The fuse at the source is not given: every cable needs one.',
  'The current is more than the {0} fuse carries: it opens in use.':
    'The current is more than the {0} fuse carries: it opens in use.',
  'The fuse cannot be judged without the cable’s rating.':
    'The fuse cannot be judged without the cable’s rating.',
  'The {0} fuse is not above the {1} the cable carries.':
    'The {0} fuse is not above the {1} the cable carries.',
  'The {0} fuse is above the {1} the cable carries: the cable burns first. Fit a smaller fuse or a thicker cable.':
    'The {0} fuse is above the {1} the cable carries: the cable burns first. Fit a smaller fuse or a thicker cable.',
  'A cable carries the current back.': 'A cable carries the current back.',
  'The body must never carry traction current: it puts the pack on everything one touches. Run a return cable.':
    'The body must never carry traction current: it puts the pack on everything one touches. Run a return cable.',
  'The body carries the current back; keep its studs clean and bright.':
    'The body carries the current back; keep its studs clean and bright.',
  'at most 3 % of the supply (watch), 5 % (stop)': 'at most 3 % of the supply (watch), 5 % (stop)',
  'at most 10 % of the supply (stop)': 'at most 10 % of the supply (stop)',
  'at most 80 % of the rating (watch), 100 % (stop)':
    'at most 80 % of the rating (watch), 100 % (stop)',
  'conditions stated (watch without)': 'conditions stated (watch without)',
  'at least the current, at most the cable’s rating (stop)':
    'at least the current, at most the cable’s rating (stop)',
  'no body return above 60 V (stop)': 'no body return above 60 V (stop)',
  // calculators/auxiliary/key-off-drain.ts
  'What draws': 'What draws',
  item: 'item',
  'Clock, alarm, tracker, battery management, charger on standby: pull fuses one by one to tell them apart.':
    'Clock, alarm, tracker, battery management, charger on standby: pull fuses one by one to tell them apart.',
  Item: 'Item',
  'What it is.': 'What it is.',
  Draws: 'Draws',
  'When everything has gone to sleep, half an hour after locking.':
    'When everything has gone to sleep, half an hour after locking.',
  'Share of the parked time.': 'Share of the parked time.',
  'on all the time is the worst case': 'on all the time is the worst case',
  'DC-DC converter when off': 'DC-DC converter when off',
  'Whether its output still hangs on the battery.':
    'Whether its output still hangs on the battery.',
  'taken off by a relay, or none fitted': 'taken off by a relay, or none fitted',
  'stays on the battery': 'stays on the battery',
  'Back-feed resistance': 'Back-feed resistance',
  'Of its output, off: battery voltage over the current into it. Several in parallel: all together.':
    'Of its output, off: battery voltage over the current into it. Several in parallel: all together.',
  '12 V battery': '12 V battery',
  'Decides what it loses by itself.': 'Decides what it loses by itself.',
  'lead-acid': 'lead-acid',
  'lithium iron phosphate': 'lithium iron phosphate',
  'Battery capacity': 'Battery capacity',
  'Printed on it.': 'Printed on it.',
  'Left of that by age': 'Left of that by age',
  'By a capacity test, if there is one.': 'By a capacity test, if there is one.',
  'neither new nor worn out': 'neither new nor worn out',
  'Charged when parked': 'Charged when parked',
  'After a usual drive.': 'After a usual drive.',
  'a converter seldom fills it whole': 'a converter seldom fills it whole',
  'May go down to': 'May go down to',
  'Where contactors still close and the battery takes no harm.':
    'Where contactors still close and the battery takes no harm.',
  'lead-acid ages fast below half': 'lead-acid ages fast below half',
  'Battery at rest': 'Battery at rest',
  'For the current into the converter.': 'For the current into the converter.',
  'a full lead-acid battery at rest': 'a full lead-acid battery at rest',
  'Loses by itself in a month': 'Loses by itself in a month',
  'Of its capacity. Left out: lead-acid 5 %, lithium 3 %.':
    'Of its capacity. Left out: lead-acid 5 %, lithium 3 %.',
  'DC-DC converter, off': 'DC-DC converter, off',
  'Key-off drain and days parked': 'Key-off drain and days parked',
  'Adds up what draws with the key off, back through the DC-DC converter too, and says how many days the car can stand.':
    'Adds up what draws with the key off, back through the DC-DC converter too, and says how many days the car can stand.',
  Drain: 'Drain',
  'Back into the converter': 'Back into the converter',
  'The battery’s own loss': 'The battery’s own loss',
  'Can stand for': 'Can stand for',
  'Charge to use up': 'Charge to use up',
  Largest: 'Largest',
  'Drain that gives 21 days': 'Drain that gives 21 days',
  Mean: 'Mean',
  Share: 'Share',
  'Small currents: the whole capacity counts, no Peukert. In the cold the battery holds its charge and gives less current for the contactor.':
    'Small currents: the whole capacity counts, no Peukert. In the cold the battery holds its charge and gives less current for the contactor.',
  'The converter is taken as a resistance at the battery’s rest voltage; read it there.':
    'The converter is taken as a resistance at the battery’s rest voltage; read it there.',
  Days: 'Days',
  nothing: 'nothing',
  'What flows back into the DC-DC converter is not known: off and disconnected on the traction side, read the current from the battery into its output.':
    'What flows back into the DC-DC converter is not known: off and disconnected on the traction side, read the current from the battery into its output.',
  'What else draws is not listed: measure the whole drain at the battery’s negative lead.':
    'What else draws is not listed: measure the whole drain at the battery’s negative lead.',
  '{0} are drawn with the key off.': '{0} are drawn with the key off.',
  '{0} are drawn with the key off, most by “{1}”: put it behind a relay or a switch.':
    '{0} are drawn with the key off, most by “{1}”: put it behind a relay or a switch.',
  'at most 25 mA (watch), 50 mA (stop)': 'at most 25 mA (watch), 50 mA (stop)',
  'The converter is off the battery.': 'The converter is off the battery.',
  '{0} flow back into the converter.': '{0} flow back into the converter.',
  '{0} flow back into the converter, always: take its output off with a relay that opens with the key.':
    '{0} flow back into the converter, always: take its output off with a relay that opens with the key.',
  'at most 5 mA (watch), 50 mA (stop)': 'at most 5 mA (watch), 50 mA (stop)',
  'It is parked as low as it may go, or lower: charge it first.':
    'It is parked as low as it may go, or lower: charge it first.',
  'It can stand for {0}.': 'It can stand for {0}.',
  'It can stand for {0}; for three weeks the drain may be {1}. Fit a maintainer or an isolator. Never work a contactor by hand in the high-voltage box to get home.':
    'It can stand for {0}; for three weeks the drain may be {1}. Fit a maintainer or an isolator. Never work a contactor by hand in the high-voltage box to get home.',
  'at least 21 days (watch), 7 days (stop)': 'at least 21 days (watch), 7 days (stop)',
  // calculators/auxiliary/motor-circuit.ts
  'no mini blade fuse fits between.': 'no mini blade fuse fits between.',
  'no medium blade fuse fits between.': 'no medium blade fuse fits between.',
  'no maxi blade fuse fits between.': 'no maxi blade fuse fits between.',
  'Fuse and wire of a small motor': 'Fuse and wire of a small motor',
  'Finds the fuse between what a pump or fan draws and what its wire carries; checks start, relay and voltage drop.':
    'Finds the fuse between what a pump or fan draws and what its wire carries; checks start, relay and voltage drop.',
  'Running current': 'Running current',
  'Measured on charge, pump full and warm.': 'Measured on charge, pump full and warm.',
  'Start current': 'Start current',
  'The highest reading as it starts; often two to six times the running current.':
    'The highest reading as it starts; often two to six times the running current.',
  'Start lasts': 'Start lasts',
  'Until the current is back near the running one.':
    'Until the current is back near the running one.',
  'small motors are up to speed by then': 'small motors are up to speed by then',
  Wire: 'Wire',
  'The thinnest behind the fuse.': 'The thinnest behind the fuse.',
  Insulation: 'Insulation',
  'Printed on the wire.': 'Printed on the wire.',
  'PVC, 70 °C, in the loom table': 'PVC, 70 °C, in the loom table',
  '90 °C, in an engine space': '90 °C, in an engine space',
  '105 °C, in an engine space': '105 °C, in an engine space',
  '125 °C, in an engine space': '125 °C, in an engine space',
  'unmarked wire is taken as plain PVC, the lowest class':
    'unmarked wire is taken as plain PVC, the lowest class',
  'Wire rating from its sheet': 'Wire rating from its sheet',
  'Instead of the table; needed outside it.': 'Instead of the table; needed outside it.',
  'What a tight bundle or a hotter place leaves of the rating.':
    'What a tight bundle or a hotter place leaves of the rating.',
  'Continuous share of a fuse rating': 'Continuous share of a fuse rating',
  'Less in a hot engine bay.': 'Less in a hot engine bay.',
  'common practice near room temperature': 'common practice near room temperature',
  'Fuse style': 'Fuse style',
  'Decides which ratings there are.': 'Decides which ratings there are.',
  'blade, mini': 'blade, mini',
  'blade, medium': 'blade, medium',
  'blade, maxi': 'blade, maxi',
  'the common blade fuse': 'the common blade fuse',
  'With the converter charging.': 'With the converter charging.',
  'a 12 V system on charge': 'a 12 V system on charge',
  'Wire length, one way': 'Wire length, one way',
  'The return is taken as the same wire.': 'The return is taken as the same wire.',
  'Wire temperature': 'Wire temperature',
  'Hot copper resists more.': 'Hot copper resists more.',
  'a warm engine bay': 'a warm engine bay',
  'Switched by': 'Switched by',
  'What carries the motor current.': 'What carries the motor current.',
  'a relay': 'a relay',
  'the ignition switch itself': 'the ignition switch itself',
  'a switch or output of its own': 'a switch or output of its own',
  'not known yet': 'not known yet',
  'Contact rating': 'Contact rating',
  'Printed on the relay or switch, for DC.': 'Printed on the relay or switch, for DC.',
  'Load on the ignition switch': 'Load on the ignition switch',
  'Relay coils.': 'Relay coils.',
  'one relay coil': 'one relay coil',
  'The wire carries': 'The wire carries',
  'Largest fuse for this wire': 'Largest fuse for this wire',
  'Start current over fuse rating': 'Start current over fuse rating',
  'Fuse may open at the start current after': 'Fuse may open at the start current after',
  'Running current in hand': 'Running current in hand',
  'What decides the fuse': 'What decides the fuse',
  'Wire ratings: loom table for PVC of 0.65 to 3 mm² (the thickest listed counts beyond); 33 CFR 183.425 in an engine space for 18 AWG and thicker at 90 to 125 °C. Between two sizes the thinner counts.':
    'Wire ratings: loom table for PVC of 0.65 to 3 mm² (the thickest listed counts beyond); 33 CFR 183.425 in an engine space for 18 AWG and thicker at 90 to 125 °C. Between two sizes the thinner counts.',
  'Blade fuses break about 1000 A at 32 V DC: never use one on a traction pack.':
    'Blade fuses break about 1000 A at 32 V DC: never use one on a traction pack.',
  'Between 110 and 135 % of a fuse nothing is listed: the shortest time there is a model, one heated element that keeps both points. Above 600 % it opens at once.':
    'Between 110 and 135 % of a fuse nothing is listed: the shortest time there is a model, one heated element that keeps both points. Above 600 % it opens at once.',
  'A stalled motor is not covered.': 'A stalled motor is not covered.',
  'Fuse between motor and wire': 'Fuse between motor and wire',
  'Start surge': 'Start surge',
  'Sizes to choose from': 'Sizes to choose from',
  'Relay or switch contact': 'Relay or switch contact',
  'The rating of the wire is not known, so no fuse can be named.':
    'The rating of the wire is not known, so no fuse can be named.',
  'No rating lies between what the motor draws and what the wire carries.':
    'No rating lies between what the motor draws and what the wire carries.',
  'Every rating the wire allows may open on the start.':
    'Every rating the wire allows may open on the start.',
  'The running current decides; the start is not known.':
    'The running current decides; the start is not known.',
  'The running current decides.': 'The running current decides.',
  'The start decides: a smaller rating may open before the motor is up to speed.':
    'The start decides: a smaller rating may open before the motor is up to speed.',
  'A larger fuse style is needed.': 'A larger fuse style is needed.',
  'It takes a {0} fuse and a wire that carries as much.':
    'It takes a {0} fuse and a wire that carries as much.',
  'The tables have no rating for this wire and insulation: enter the one from its sheet.':
    'The tables have no rating for this wire and insulation: enter the one from its sheet.',
  'The motor asks for a fuse of at least {0}, but the wire carries {1}: {2} {3}':
    'The motor asks for a fuse of at least {0}, but the wire carries {1}: {2} {3}',
  'A fuse of at least {0} would fit the wire, which carries {1}, but for the start.':
    'A fuse of at least {0} would fit the wire, which carries {1}, but for the start.',
  'The {0} fuse is above {1} and the wire carries {2}.':
    'The {0} fuse is above {1} and the wire carries {2}.',
  'The start current is not known: read it with a meter that holds the peak.':
    'The start current is not known: read it with a meter that holds the peak.',
  'The start current of {0} is below the running one: check which is which.':
    'The start current of {0} is below the running one: check which is which.',
  'Without a fuse the start cannot be judged.': 'Without a fuse the start cannot be judged.',
  'No fuse for this wire rides the start of {0}. {1}':
    'No fuse for this wire rides the start of {0}. {1}',
  'The start of {0} for {1} is {2} of the fuse, which may open after {3}: marginal. {4}':
    'The start of {0} for {1} is {2} of the fuse, which may open after {3}: marginal. {4}',
  'The start of {0} for {1} is {2} of the fuse, which opens after {3} at the soonest.':
    'The start of {0} for {1} is {2} of the fuse, which opens after {3} at the soonest.',
  'The start of {0} for {1} is {2} of the fuse, which carries that for hours.':
    'The start of {0} for {1} is {2} of the fuse, which carries that for hours.',
  'Which sizes fit depends on the wire’s rating.': 'Which sizes fit depends on the wire’s rating.',
  'There is none to choose.': 'There is none to choose.',
  'Only {0} fits between motor and wire: a thicker wire gives room.':
    'Only {0} fits between motor and wire: a thicker wire gives room.',
  'Between motor and wire there are {0}.': 'Between motor and wire there are {0}.',
  'There is no relay; see the ignition switch.': 'There is no relay; see the ignition switch.',
  'The contact rating is not known: read it from the relay’s case.':
    'The contact rating is not known: read it from the relay’s case.',
  'The motor takes {0} of the contact’s {1}': 'The motor takes {0} of the contact’s {1}',
  '{0}: take a larger relay.': '{0}: take a larger relay.',
  '{0}: fit a relay rated for it.': '{0}: fit a relay rated for it.',
  'It is not said what switches the motor: trace the feed.':
    'It is not said what switches the motor: trace the feed.',
  'This puts {0} on the ignition switch': 'This puts {0} on the ignition switch',
  '{0}; an old one is worn: use a relay.': '{0}; an old one is worn: use a relay.',
  '{0}: fit a relay.': '{0}: fit a relay.',
  'The drop is not known: give the length of the wire.':
    'The drop is not known: give the length of the wire.',
  'The wire loses {0}, {1} of the supply': 'The wire loses {0}, {1} of the supply',
  '{0}: take a thicker wire.': '{0}: take a thicker wire.',
  '{0}: take a thicker or shorter wire.': '{0}: take a thicker or shorter wire.',
  'running current at most {0} of the fuse, the fuse at most what the wire carries (stop)':
    'running current at most {0} of the fuse, the fuse at most what the wire carries (stop)',
  'shortest opening time at least {0} times the start (watch), at least the start (stop)':
    'shortest opening time at least {0} times the start (watch), at least the start (stop)',
  'two or more standard sizes (watch with one)': 'two or more standard sizes (watch with one)',
  'at most 70 % of the contact rating (watch), 100 % (stop)':
    'at most 70 % of the contact rating (watch), 100 % (stop)',
  'at most 1 A added (watch), 3 A (stop)': 'at most 1 A added (watch), 3 A (stop)',
  'fuse ≥ I_run / f = {0} / {1} = {2}': 'fuse ≥ I_run / f = {0} / {1} = {2}',
  'fuse ≤ k I_wire = {0}': 'fuse ≤ k I_wire = {0}',
  'fuse = {0}': 'fuse = {0}',
  'Start surge against the fuse': 'Start surge against the fuse',
  Time: 'Time',
  'may open from here': 'may open from here',
  'open by here': 'open by here',
  start: 'start',
  wire: 'wire',
  'The start must lie below and left of the solid line.':
    'The start must lie below and left of the solid line.',
  // calculators/auxiliary/relay-and-switch.ts
  Coils: 'Coils',
  coil: 'coil',
  'Every relay and contactor that the switch now feeds.':
    'Every relay and contactor that the switch now feeds.',
  Coil: 'Coil',
  'Such as pump relay.': 'Such as pump relay.',
  'Coil resistance': 'Coil resistance',
  'Between 85 and 86, cold. A diode inside: read it both ways, the higher counts.':
    'Between 85 and 86, cold. A diode inside: read it both ways, the higher counts.',
  'Coil current': 'Coil current',
  'Instead of the resistance: a contactor with an economiser draws its pull-in current first.':
    'Instead of the resistance: a contactor with an economiser draws its pull-in current first.',
  'How many': 'How many',
  'Of the same kind.': 'Of the same kind.',
  'one of each row': 'one of each row',
  Suppression: 'Suppression',
  'What catches the spark when the coil is switched off.':
    'What catches the spark when the coil is switched off.',
  'resistor, either way round': 'resistor, either way round',
  'diode, polarity checked': 'diode, polarity checked',
  'diode, polarity not checked': 'diode, polarity not checked',
  'diode, wired the wrong way round': 'diode, wired the wrong way round',
  none: 'none',
  'a 12 V system on charge, the high end': 'a 12 V system on charge, the high end',
  'Load that stays on the switch': 'Load that stays on the switch',
  'Original loads still fed through it: gauges, wipers, indicators.':
    'Original loads still fed through it: gauges, wipers, indicators.',
  'Rating of the switch': 'Rating of the switch',
  'For DC, if it is known.': 'For DC, if it is known.',
  'Drop across the closed switch': 'Drop across the closed switch',
  'Measured with everything on, from its feed to its output terminal.':
    'Measured with everything on, from its feed to its output terminal.',
  'Relays on the ignition switch': 'Relays on the ignition switch',
  'What relay and contactor coils add to an old ignition switch, what it then carries, and whether each coil’s spark is caught.':
    'What relay and contactor coils add to an old ignition switch, what it then carries, and whether each coil’s spark is caught.',
  'Coils add': 'Coils add',
  'The switch carries': 'The switch carries',
  'Share of its rating': 'Share of its rating',
  'Resistance of the switch': 'Resistance of the switch',
  'Heat in the switch': 'Heat in the switch',
  Heaviest: 'Heaviest',
  'Warms by': 'Warms by',
  'Cold coils: a warm coil draws up to a fifth less. An economised contactor draws its pull-in current for some tenths of a second and then much less: enter the pull-in current.':
    'Cold coils: a warm coil draws up to a fifth less. An economised contactor draws its pull-in current for some tenths of a second and then much less: enter the pull-in current.',
  'The drop across the switch is what counts in the end: a worn contact of any rating gets hot.':
    'The drop across the switch is what counts in the end: a worn contact of any rating gets hot.',
  'Added to the ignition switch': 'Added to the ignition switch',
  'What the switch stands': 'What the switch stands',
  'Sparks of the coils': 'Sparks of the coils',
  'Neither resistance nor current is given for {0}: measure one.':
    'Neither resistance nor current is given for {0}: measure one.',
  'The coils add {0}.': 'The coils add {0}.',
  'The coils add {0}, most of it “{1}”: let the switch work one small relay and that relay feed the others from a fused supply.':
    'The coils add {0}, most of it “{1}”: let the switch work one small relay and that relay feed the others from a fused supply.',
  'at most 1 A (watch), 3 A (stop)': 'at most 1 A (watch), 3 A (stop)',
  'Its rating is known, what it carries is not: say which load stays on it, or measure the drop across it.':
    'Its rating is known, what it carries is not: say which load stays on it, or measure the drop across it.',
  'Old switches seldom have a known rating: measure the drop across it with everything on.':
    'Old switches seldom have a known rating: measure the drop across it with everything on.',
  'The switch carries {0}, {1} of its rating.': 'The switch carries {0}, {1} of its rating.',
  '{0} are lost across it.': '{0} are lost across it.',
  'Take load off it with a relay, or clean or replace it.':
    'Take load off it with a relay, or clean or replace it.',
  'at most 80 % of its rating (watch), all of it (stop); 0.2 V across it (watch), 0.4 V (stop)':
    'at most 80 % of its rating (watch), all of it (stop); 0.2 V across it (watch), 0.4 V (stop)',
  '{0}: the diode is a short circuit this way round. Swap 85 and 86; in a positive-earth vehicle the other way.':
    '{0}: the diode is a short circuit this way round. Swap 85 and 86; in a positive-earth vehicle the other way.',
  'Not known for {0}: look at the symbol on its side, and where there is a diode which of 85 and 86 is plus.':
    'Not known for {0}: look at the symbol on its side, and where there is a diode which of 85 and 86 is plus.',
  '{0}: nothing catches the spark. It burns the switch’s contacts and upsets electronics; take a type with a resistor, or fit a diode.':
    '{0}: nothing catches the spark. It burns the switch’s contacts and upsets electronics; take a type with a resistor, or fit a diode.',
  'Every coil has its spark caught, polarity checked.':
    'Every coil has its spark caught, polarity checked.',
  'a resistor or a diode the right way round on every coil (watch); none reversed (stop)':
    'a resistor or a diode the right way round on every coil (watch); none reversed (stop)',
  // calculators/auxiliary/twelve-volt-budget.ts
  '12 V budget and reserve': '12 V budget and reserve',
  'Adds up the 12 V loads of the worst drive, holds them against the DC-DC converter, and works out how long the battery keeps the important ones going without it.':
    'Adds up the 12 V loads of the worst drive, holds them against the DC-DC converter, and works out how long the battery keeps the important ones going without it.',
  Loads: 'Loads',
  load: 'load',
  'Everything that is on in a night drive in the rain: lamps, blower, pump, fan, contactor coils, controller.':
    'Everything that is on in a night drive in the rain: lamps, blower, pump, fan, contactor coils, controller.',
  Load: 'Load',
  'While it is on; measured if you can.': 'While it is on; measured if you can.',
  Power: 'Power',
  'Instead of the current; of two the larger counts.':
    'Instead of the current; of two the larger counts.',
  'Share of the drive.': 'Share of the drive.',
  'Needed to get home': 'Needed to get home',
  'Lamps, wipers, contactor, controller, brakes.': 'Lamps, wipers, contactor, controller, brakes.',
  'no, can be switched off': 'no, can be switched off',
  'a load that is not marked is counted': 'a load that is not marked is counted',
  'Start multiple': 'Start multiple',
  'Start current over running current, for motors.':
    'Start current over running current, for motors.',
  'no start surge is given': 'no start surge is given',
  'With the converter running.': 'With the converter running.',
  'Converter rating': 'Converter rating',
  'Continuous output, from its sheet.': 'Continuous output, from its sheet.',
  'Converter derating': 'Converter derating',
  'What its sheet leaves at the temperature where it sits.':
    'What its sheet leaves at the temperature where it sits.',
  'its sheet gives the full rating at this temperature':
    'its sheet gives the full rating at this temperature',
  'Converter efficiency': 'Converter efficiency',
  'For what it takes from the traction pack.': 'For what it takes from the traction pack.',
  'typical of isolated converters': 'typical of isolated converters',
  'Without one a failed converter opens the contactor and puts the lamps out.':
    'Without one a failed converter opens the contactor and puts the lamps out.',
  'Rated over': 'Rated over',
  'The discharge time the capacity is printed for.':
    'The discharge time the capacity is printed for.',
  'vehicle batteries are rated over 20 hours': 'vehicle batteries are rated over 20 hours',
  'Usable share': 'Usable share',
  'Age, cold, state of charge and low voltage take the rest.':
    'Age, cold, state of charge and low voltage take the rest.',
  'common practice for a lead-acid battery that is neither new nor full':
    'common practice for a lead-acid battery that is neither new nor full',
  'Peukert exponent': 'Peukert exponent',
  'Of a lead-acid battery; lithium is taken as 1.':
    'Of a lead-acid battery; lithium is taken as 1.',
  'flooded lead-acid batteries lie between 1.15 and 1.25':
    'flooded lead-acid batteries lie between 1.15 and 1.25',
  'Mean current': 'Mean current',
  'Mean power': 'Mean power',
  'All on at once': 'All on at once',
  'Peak current': 'Peak current',
  'Share of the converter': 'Share of the converter',
  'Taken from the traction pack': 'Taken from the traction pack',
  'Reserve with the needed loads': 'Reserve with the needed loads',
  'Reserve with all loads': 'Reserve with all loads',
  On: 'On',
  'Currents are taken at the supply voltage; on battery alone lamps draw less and electronics a little more.':
    'Currents are taken at the supply voltage; on battery alone lamps draw less and electronics a little more.',
  'Peukert’s law holds for lead-acid batteries near room temperature; below freezing expect half.':
    'Peukert’s law holds for lead-acid batteries near room temperature; below freezing expect half.',
  'Below the rated current the plain charge counts: a battery never gives more than is printed.':
    'Below the rated current the plain charge counts: a battery never gives more than is printed.',
  'The peak has every load on and the one largest start on top.':
    'The peak has every load on and the one largest start on top.',
  'Every load has a draw': 'Every load has a draw',
  Converter: 'Converter',
  Peak: 'Peak',
  'A 12 V battery is fitted': 'A 12 V battery is fitted',
  'Reserve without the converter': 'Reserve without the converter',
  'Every load has a current or a power.': 'Every load has a current or a power.',
  'No current or power is given for {0}: measure it.':
    'No current or power is given for {0}: measure it.',
  'The converter’s rating or a load is missing.': 'The converter’s rating or a load is missing.',
  'The loads take {0}, {1} of the converter': 'The loads take {0}, {1} of the converter',
  '{0}: nothing is left for a hot day or the next load.':
    '{0}: nothing is left for a hot day or the next load.',
  '{0}: the battery runs flat while driving. Fit a larger one or shed loads.':
    '{0}: the battery runs flat while driving. Fit a larger one or shed loads.',
  'The peak is {0}, the converter gives {1}': 'The peak is {0}, the converter gives {1}',
  '{0} and there is no battery to help: the voltage collapses.':
    '{0} and there is no battery to help: the voltage collapses.',
  '{0}: the battery has to help for that time.': '{0}: the battery has to help for that time.',
  'There is no 12 V battery: a failed converter opens the contactor and puts the lamps out at once. Fit one.':
    'There is no 12 V battery: a failed converter opens the contactor and puts the lamps out at once. Fit one.',
  'The battery’s capacity is not given.': 'The battery’s capacity is not given.',
  'A {0} battery is fitted.': 'A {0} battery is fitted.',
  'Without a battery there is no reserve at all.': 'Without a battery there is no reserve at all.',
  'No load is marked as needed to get home: mark lamps, wipers and contactor.':
    'No load is marked as needed to get home: mark lamps, wipers and contactor.',
  'The reserve is not known: a load or the battery’s capacity is missing.':
    'The reserve is not known: a load or the battery’s capacity is missing.',
  'With the converter dead the needed loads last {0}, all of them {1}':
    'With the converter dead the needed loads last {0}, all of them {1}',
  '{0}: fit a larger battery or a warning that comes early.':
    '{0}: fit a larger battery or a warning that comes early.',
  '{0}: fit a larger battery.': '{0}: fit a larger battery.',
  'a current or a power for each (else cannot tell)':
    'a current or a power for each (else cannot tell)',
  'at most 80 % of the converter (watch), 100 % (stop)':
    'at most 80 % of the converter (watch), 100 % (stop)',
  'at most the converter’s rating (watch; stop without a battery)':
    'at most the converter’s rating (watch; stop without a battery)',
  'fitted (stop)': 'fitted (stop)',
  'at least 30 min (watch), 15 min (stop)': 'at least 30 min (watch), 15 min (stop)',
  'share = {0} / ({1} × {2}) = {3}': 'share = {0} / ({1} × {2}) = {3}',
  // calculators/cell-fields.ts
  'Cells in series': 'Cells in series',
  'As built.': 'As built.',
  'Cells in parallel': 'Cells in parallel',
  'one string': 'one string',
  // calculators/coolant-fields.ts
  'It is liquid here and freezes at {0}.': 'It is liquid here and freezes at {0}.',
  'It freezes at {0} and is given at {1}: slush does not flow. Use a stronger mix.':
    'It freezes at {0} and is given at {1}: slush does not flow. Use a stronger mix.',
  'Say how strong the mix is, and whether by volume or by mass.':
    'Say how strong the mix is, and whether by volume or by mass.',
  'No property table reaches this mix or temperature.':
    'No property table reaches this mix or temperature.',
  'liquid; {0} to {1}, at most {2} glycol': 'liquid; {0} to {1}, at most {2} glycol',
  Coolant: 'Coolant',
  'The glycol, not its colour: the sheet names it.':
    'The glycol, not its colour: the sheet names it.',
  'ethylene glycol and water': 'ethylene glycol and water',
  'propylene glycol and water': 'propylene glycol and water',
  water: 'water',
  'Glycol in the mix': 'Glycol in the mix',
  'Leave out for water.': 'Leave out for water.',
  'Strength is': 'Strength is',
  'Jugs and hydrometers go by volume.': 'Jugs and hydrometers go by volume.',
  'by volume': 'by volume',
  'by mass': 'by mass',
  // calculators/coolant.ts
  'water, IAPWS': 'water, IAPWS',
  'ethylene glycol by volume, ASHRAE 2001': 'ethylene glycol by volume, ASHRAE 2001',
  'ethylene glycol by mass, IIR 2010': 'ethylene glycol by mass, IIR 2010',
  'propylene glycol by volume, ASHRAE 2001': 'propylene glycol by volume, ASHRAE 2001',
  'propylene glycol by mass, IIR 2010': 'propylene glycol by mass, IIR 2010',
  // calculators/cooling/coolant-mix.ts
  'Give the strength wanted, or the freezing point wanted.':
    'Give the strength wanted, or the freezing point wanted.',
  'No mix up to 60 % freezes at the temperature wanted.':
    'No mix up to 60 % freezes at the temperature wanted.',
  'Say how strong the coolant in the loop is and whether by volume or by mass, or drain it all and leave its amount out.':
    'Say how strong the coolant in the loop is and whether by volume or by mass, or drain it all and leave its amount out.',
  'More coolant is given as being in the loop than the loop holds.':
    'More coolant is given as being in the loop than the loop holds.',
  'This concentrate is not stronger than the mix wanted: it cannot be reached. Use neat antifreeze.':
    'This concentrate is not stronger than the mix wanted: it cannot be reached. Use neat antifreeze.',
  concentrate: 'concentrate',
  'silicate or other inorganic (about 2 years)': 'silicate or other inorganic (about 2 years)',
  'organic acid (about 5 years)': 'organic acid (about 5 years)',
  'Coolant mix': 'Coolant mix',
  'How much antifreeze and water to put in, for an empty loop or one that is filled already, and when the mix freezes.':
    'How much antifreeze and water to put in, for an empty loop or one that is filled already, and when the mix freezes.',
  'Loop volume': 'Loop volume',
  'Hoses, parts and tank to its mark.': 'Hoses, parts and tank to its mark.',
  Glycol: 'Glycol',
  'ethylene glycol': 'ethylene glycol',
  'propylene glycol': 'propylene glycol',
  'Strength wanted, by volume': 'Strength wanted, by volume',
  'Usually 40 to 50 %; left out, it is worked from the freezing point.':
    'Usually 40 to 50 %; left out, it is worked from the freezing point.',
  'Freezing point wanted': 'Freezing point wanted',
  'Used when no strength is given.': 'Used when no strength is given.',
  'Coldest to be expected': 'Coldest to be expected',
  'Where the vehicle stands overnight.': 'Where the vehicle stands overnight.',
  'Glycol in the concentrate, by volume': 'Glycol in the concentrate, by volume',
  'Neat antifreeze about 95 %; ready-mixed about 50 %.':
    'Neat antifreeze about 95 %; ready-mixed about 50 %.',
  'neat antifreeze holds about 5 % water and inhibitors':
    'neat antifreeze holds about 5 % water and inhibitors',
  'Coolant already in the loop': 'Coolant already in the loop',
  'What is left in it now; left out for an empty loop.':
    'What is left in it now; left out for an empty loop.',
  'Its strength': 'Its strength',
  'By hydrometer or refractometer; 0 for water.': 'By hydrometer or refractometer; 0 for water.',
  'Its strength is': 'Its strength is',
  'Hydrometers go by volume.': 'Hydrometers go by volume.',
  'Inhibitor family of the new coolant': 'Inhibitor family of the new coolant',
  'On the sheet; colours prove nothing.': 'On the sheet; colours prove nothing.',
  'Family of what is in the loop': 'Family of what is in the loop',
  'As for the new one.': 'As for the new one.',
  'plain water': 'plain water',
  'the other glycol': 'the other glycol',
  unknown: 'unknown',
  Water: 'Water',
  'What the concentrate is thinned with.': 'What the concentrate is thinned with.',
  distilled: 'distilled',
  deionised: 'deionised',
  'tap, tested: chloride under 40, sulphate under 100, hardness under 170 mg/L':
    'tap, tested: chloride under 40, sulphate under 100, hardness under 170 mg/L',
  'tap, not tested': 'tap, not tested',
  'Working temperature': 'Working temperature',
  'Where thickness and specific heat are compared with water.':
    'Where thickness and specific heat are compared with water.',
  'a warm loop': 'a warm loop',
  'Concentrate to add': 'Concentrate to add',
  'Water to add': 'Water to add',
  'To drain first': 'To drain first',
  'To add if nothing is drained': 'To add if nothing is drained',
  'Of what': 'Of what',
  'Strength by volume': 'Strength by volume',
  'Strength by mass': 'Strength by mass',
  'Freezes at': 'Freezes at',
  'Viscosity, warm': 'Viscosity, warm',
  'Times as thick as water': 'Times as thick as water',
  'Specific heat against water': 'Specific heat against water',
  'Volumes are added as if mixing lost nothing (it loses under 1 %), and what is drained is as strong as the rest.':
    'Volumes are added as if mixing lost nothing (it loses under 1 %), and what is drained is as strong as the rest.',
  'Freezing points are those of the ASHRAE 2001 tables, up to 60 % by volume; other tables differ by up to 2.5 K. A used coolant may freeze as new and protect nothing: its inhibitors age.':
    'Freezing points are those of the ASHRAE 2001 tables, up to 60 % by volume; other tables differ by up to 2.5 K. A used coolant may freeze as new and protect nothing: its inhibitors age.',
  Amounts: 'Amounts',
  'Strength of the mix': 'Strength of the mix',
  Frost: 'Frost',
  'Mixing families': 'Mixing families',
  '{0} concentrate and {1} water fill the loop.': '{0} concentrate and {1} water fill the loop.',
  'Drain {0}, then add {1} concentrate and {2} water.':
    'Drain {0}, then add {1} concentrate and {2} water.',
  'the loop’s {0}': 'the loop’s {0}',
  'Frost cannot be judged: it needs the mix and the coldest temperature to be expected.':
    'Frost cannot be judged: it needs the mix and the coldest temperature to be expected.',
  'The mix freezes at {0} and {1} is expected: make it stronger.':
    'The mix freezes at {0} and {1} is expected: make it stronger.',
  'The mix freezes at {0}, {1} below the coldest expected.':
    'The mix freezes at {0}, {1} below the coldest expected.',
  'at least {0} below the coldest; stop above it': 'at least {0} below the coldest; stop above it',
  'Two glycols in one loop gel, or protect nothing: drain all of it and flush before filling.':
    'Two glycols in one loop gel, or protect nothing: drain all of it and flush before filling.',
  'Two inhibitor families in one loop gel, or protect nothing: drain all of it and flush before filling.':
    'Two inhibitor families in one loop gel, or protect nothing: drain all of it and flush before filling.',
  'What is in the loop may not suit the new coolant: find out both families, or drain all of it and flush.':
    'What is in the loop may not suit the new coolant: find out both families, or drain all of it and flush.',
  'No two families meet. Label the tank with kind, strength and date.':
    'No two families meet. Label the tank with kind, strength and date.',
  'one family in the loop': 'one family in the loop',
  'Untested tap water can pit aluminium: use distilled or deionised water, or have it tested.':
    'Untested tap water can pit aluminium: use distilled or deionised water, or have it tested.',
  'Say which water is used; distilled or deionised is the usual choice.':
    'Say which water is used; distilled or deionised is the usual choice.',
  'No water is added.': 'No water is added.',
  'This water suits aluminium.': 'This water suits aluminium.',
  'chloride under 40, sulphate under 100, hardness under 170 mg/L':
    'chloride under 40, sulphate under 100, hardness under 170 mg/L',
  'A freezing point of {0} takes x = {1} by volume':
    'A freezing point of {0} takes x = {1} by volume',
  'x = {0} by volume freezes at {1}': 'x = {0} by volume freezes at {1}',
  'By mass: {0}': 'By mass: {0}',
  'In the loop: A = {0} at x_1 = {1} by volume': 'In the loop: A = {0} at x_1 = {1} by volume',
  'Without draining: V_a = {0} of {1}, if there is room for it':
    'Without draining: V_a = {0} of {1}, if there is room for it',
  'At {0}: μ = {1}, {2} times water’s; c = {3} of water’s':
    'At {0}: μ = {1}, {2} times water’s; c = {3} of water’s',
  '40 to 50 % by volume; stop below 25 % and above 60 %':
    '40 to 50 % by volume; stop below 25 % and above 60 %',
  'The strength cannot be told.': 'The strength cannot be told.',
  '{0} by volume': '{0} by volume',
  '{0} is too thin: its inhibitors no longer protect and bacteria feed on it. Use at least 25 %.':
    '{0} is too thin: its inhibitors no longer protect and bacteria feed on it. Use at least 25 %.',
  '{0} is too strong: it carries less heat and frost protection falls again. Use at most 60 %.':
    '{0} is too strong: it carries less heat and frost protection falls again. Use at most 60 %.',
  '{0} is thin for frost and for its inhibitors: 40 to 50 % is usual.':
    '{0} is thin for frost and for its inhibitors: 40 to 50 % is usual.',
  '{0} is thick and carries less heat: 40 to 50 % is usual unless the frost demands it.':
    '{0} is thick and carries less heat: 40 to 50 % is usual unless the frost demands it.',
  '{0} is usual.': '{0} is usual.',
  // calculators/cooling/heat-and-rise.ts
  'Heat and coolant rise': 'Heat and coolant rise',
  'How much heat a controller, motor or charger puts into the coolant, and how much warmer the coolant gets on the way through.':
    'How much heat a controller, motor or charger puts into the coolant, and how much warmer the coolant gets on the way through.',
  'Power going in': 'Power going in',
  'Electrical power into the part, in the worst case: the slow laden hill.':
    'Electrical power into the part, in the worst case: the slow laden hill.',
  Efficiency: 'Efficiency',
  'Controller 95 to 98 %, motor with controller 85 to 92 %.':
    'Controller 95 to 98 %, motor with controller 85 to 92 %.',
  'Heat it loses': 'Heat it loses',
  'If the sheet states the loss; it is then used instead of power and efficiency.':
    'If the sheet states the loss; it is then used instead of power and efficiency.',
  'Other parts on the loop': 'Other parts on the loop',
  part: 'part',
  'What else heats the same coolant at the same time.':
    'What else heats the same coolant at the same time.',
  Part: 'Part',
  Heat: 'Heat',
  'What it puts into the coolant.': 'What it puts into the coolant.',
  Duty: 'Duty',
  'Share of the time at this heat; only the mean heat depends on it.':
    'Share of the time at this heat; only the mean heat depends on it.',
  'the worst case: it never rests': 'the worst case: it never rests',
  'Coolant flow': 'Coolant flow',
  'What really flows: a bucket test or the pump-and-loop result, not the figure on the box.':
    'What really flows: a bucket test or the pump-and-loop result, not the figure on the box.',
  'Coolant temperature': 'Coolant temperature',
  'Where the density and specific heat are taken.':
    'Where the density and specific heat are taken.',
  'Least flow the sheet asks for': 'Least flow the sheet asks for',
  'From the sheet of the cold plate or controller.':
    'From the sheet of the cold plate or controller.',
  'Length of the peak': 'Length of the peak',
  'For the energy of one peak.': 'For the energy of one peak.',
  'Heat into the coolant': 'Heat into the coolant',
  'Heat, mean over time': 'Heat, mean over time',
  'Coolant rise': 'Coolant rise',
  'Heat capacity rate': 'Heat capacity rate',
  'Energy of the peak': 'Energy of the peak',
  'Steady heat and one stream of coolant. Power is what goes in; a shaft power must first be divided by the efficiency.':
    'Steady heat and one stream of coolant. Power is what goes in; a shaft power must first be divided by the efficiency.',
  'Density and specific heat are taken at one temperature, between freezing (not below −35 °C) and 100 °C, up to 60 % glycol; outside, there is no result. Published tables differ by up to 4 %.':
    'Density and specific heat are taken at one temperature, between freezing (not below −35 °C) and 100 °C, up to 60 % glycol; outside, there is no result. Published tables differ by up to 4 %.',
  'Least flow': 'Least flow',
  'Coolant properties': 'Coolant properties',
  'The rise cannot be told: it needs the heat and a coolant whose properties are known.':
    'The rise cannot be told: it needs the heat and a coolant whose properties are known.',
  'The coolant leaves {0} warmer.': 'The coolant leaves {0} warmer.',
  'The coolant leaves {0} warmer: more flow is needed, or less heat in one loop.':
    'The coolant leaves {0} warmer: more flow is needed, or less heat in one loop.',
  'at most {0}; stop above {1}': 'at most {0}; stop above {1}',
  'The heat is the stated loss; no efficiency is used.':
    'The heat is the stated loss; no efficiency is used.',
  'Loss and efficiency are both given: the stated {0} is used, not the {1} that the efficiency gives.':
    'Loss and efficiency are both given: the stated {0} is used, not the {1} that the efficiency gives.',
  'There is no heat to work with: give power and efficiency, or the loss.':
    'There is no heat to work with: give power and efficiency, or the loss.',
  '{0} is optimistic away from the best point: give the loss from the sheet at this current, or take less.':
    '{0} is optimistic away from the best point: give the loss from the sheet at this current, or take less.',
  '{0} is within what such parts reach.': '{0} is within what such parts reach.',
  'at most 98 %, unless the loss is stated': 'at most 98 %, unless the loss is stated',
  '{0} by volume is too strong: it carries less heat and its freezing point rises again. Thin it with water.':
    '{0} by volume is too strong: it carries less heat and its freezing point rises again. Thin it with water.',
  'Plain water is too thin for corrosion inhibitors to work, in warm places too.':
    'Plain water is too thin for corrosion inhibitors to work, in warm places too.',
  '{0} by volume is too thin for corrosion inhibitors to work, in warm places too.':
    '{0} by volume is too thin for corrosion inhibitors to work, in warm places too.',
  '{0} by volume keeps its inhibitors working.': '{0} by volume keeps its inhibitors working.',
  '25 to 60 % by volume; stop above': '25 to 60 % by volume; stop above',
  'The least flow of the part is not given: look on its sheet.':
    'The least flow of the part is not given: look on its sheet.',
  '{0} is below what the sheet asks for: a larger bore, fewer elbows or a stronger pump.':
    '{0} is below what the sheet asks for: a larger bore, fewer elbows or a stronger pump.',
  '{0} is enough for the sheet.': '{0} is enough for the sheet.',
  'the sheet’s least flow': 'the sheet’s least flow',
  'at least {0}': 'at least {0}',
  'Q_1 = cannot tell: give power and efficiency, or the loss':
    'Q_1 = cannot tell: give power and efficiency, or the loss',
  'Q_1 = {0}, as stated': 'Q_1 = {0}, as stated',
  'At {0}: ρ = {1}, c = {2} ({3})': 'At {0}: ρ = {1}, c = {2} ({3})',
  'C = cannot tell: the properties of the coolant are not known':
    'C = cannot tell: the properties of the coolant are not known',
  // calculators/cooling/heat-soak.ts
  'Mass that warms up': 'Mass that warms up',
  'The part with its plate or housing, without the coolant.':
    'The part with its plate or housing, without the coolant.',
  'Specific heat': 'Specific heat',
  'Aluminium 0.9, iron 0.46, copper 0.39.': 'Aluminium 0.9, iron 0.46, copper 0.39.',
  'mostly iron: the careful end, aluminium takes up twice that':
    'mostly iron: the careful end, aluminium takes up twice that',
  'Temperature at the start': 'Temperature at the start',
  'Hottest it may be when setting off: think of the second trip of the day.':
    'Hottest it may be when setting off: think of the second trip of the day.',
  Limit: 'Limit',
  'Where it cuts back, at the place its sheet measures.':
    'Where it cuts back, at the place its sheet measures.',
  Drive: 'Drive',
  stage: 'stage',
  'In the order driven: lane, hill, crawl, parked and charging.':
    'In the order driven: lane, hill, crawl, parked and charging.',
  Stage: 'Stage',
  'Such as slow hill.': 'Such as slow hill.',
  Lasts: 'Lasts',
  'How long.': 'How long.',
  'What the part loses in this stage.': 'What the part loses in this stage.',
  'Coolant or air': 'Coolant or air',
  'What it gives its heat to: coolant at its inlet, or air.':
    'What it gives its heat to: coolant at its inlet, or air.',
  Conductance: 'Conductance',
  'Heat over temperature difference, from its sheet (one over K/W) or a steady reading; a stopped pump leaves a few W/K.':
    'Heat over temperature difference, from its sheet (one over K/W) or a steady reading; a stopped pump leaves a few W/K.',
  'Conductivity of the metal': 'Conductivity of the metal',
  'Aluminium 100 to 200, iron 50, copper 390.': 'Aluminium 100 to 200, iron 50, copper 390.',
  'iron: the careful end': 'iron: the careful end',
  'Cooled surface': 'Cooled surface',
  'Of the face on the plate, or of the finned surface.':
    'Of the face on the plate, or of the finned surface.',
  'Depth of metal': 'Depth of metal',
  'From the source of heat to the cooled surface; for a solid body volume over surface.':
    'From the source of heat to the cooled surface; for a solid body volume over surface.',
  'a base plate and the housing on it': 'a base plate and the housing on it',
  'Heat over a drive': 'Heat over a drive',
  'How hot a controller or motor gets over a drive of stages, in which stage it is hottest, and after how long it reaches its limit.':
    'How hot a controller or motor gets over a drive of stages, in which stage it is hottest, and after how long it reaches its limit.',
  Hottest: 'Hottest',
  When: 'When',
  'Below the limit by': 'Below the limit by',
  'Reaches its limit after': 'Reaches its limit after',
  'Reaches it in': 'Reaches it in',
  'At the end of the drive': 'At the end of the drive',
  'Heat capacity': 'Heat capacity',
  'Biot number': 'Biot number',
  Stages: 'Stages',
  'At its end': 'At its end',
  'Would settle at': 'Would settle at',
  'Time constant': 'Time constant',
  'One temperature for the whole lump; what sits deeper, a chip or a winding, is hotter by its own heat over its own conductance.':
    'One temperature for the whole lump; what sits deeper, a chip or a winding, is hotter by its own heat over its own conductance.',
  'Heat, surroundings and conductance are constant within a stage. A coolant that warms up along the drive is worked as several stages.':
    'Heat, surroundings and conductance are constant within a stage. A coolant that warms up along the drive is worked as several stages.',
  'At a Biot number of 0.1 or more the body is not one lump: the figures are then an estimate, and the check cannot tell.':
    'At a Biot number of 0.1 or more the body is not one lump: the figures are then an estimate, and the check cannot tell.',
  'If the worst stage lasts': 'If the worst stage lasts',
  'One lump': 'One lump',
  'setting off': 'setting off',
  'end of {0}': 'end of {0}',
  'no stage': 'no stage',
  'It reaches {0} after {1}, in “{2}”, and would get to {3}: it cuts back. More conductance, less power there, or a shorter stage.':
    'It reaches {0} after {1}, in “{2}”, and would get to {3}: it cuts back. More conductance, less power there, or a shorter stage.',
  'It is hottest at {0} ({1}): within {2} of its limit. A hotter day takes that.':
    'It is hottest at {0} ({1}): within {2} of its limit. A hotter day takes that.',
  'It is hottest at {0} ({1}).': 'It is hottest at {0} ({1}).',
  'at most {0} (watch), below {1} (stop)': 'at most {0} (watch), below {1} (stop)',
  'However long a stage lasts, it settles below the limit.':
    'However long a stage lasts, it settles below the limit.',
  'Only its short time keeps “{0}” below the limit: it would settle at no temperature at all. Do not count on it in a queue.':
    'Only its short time keeps “{0}” below the limit: it would settle at no temperature at all. Do not count on it in a queue.',
  'Only its short time keeps “{0}” below the limit: it would settle at {1}. Do not count on it in a queue.':
    'Only its short time keeps “{0}” below the limit: it would settle at {1}. Do not count on it in a queue.',
  'every stage settles below the limit': 'every stage settles below the limit',
  'Whether it is one lump cannot be told without the cooled surface.':
    'Whether it is one lump cannot be told without the cooled surface.',
  'Bi is {0}: the metal is near enough one temperature.':
    'Bi is {0}: the metal is near enough one temperature.',
  'Bi is {0}: the surface lags behind the source of heat, which is hotter than worked here. Measure at the source.':
    'Bi is {0}: the surface lags behind the source of heat, which is hotter than worked here. Measure at the source.',
  'Biot number below 0.1': 'Biot number below 0.1',
  'Temperature over the drive': 'Temperature over the drive',
  Temperature: 'Temperature',
  'the part': 'the part',
  'coolant or air': 'coolant or air',
  limit: 'limit',
  'Where the line meets the limit, the part cuts back.':
    'Where the line meets the limit, the part cuts back.',
  // calculators/cooling/hose-bend.ts
  Hose: 'Hose',
  'Decides how tight it may be bent when its sheet is missing.':
    'Decides how tight it may be bent when its sheet is missing.',
  'coolant hose, textile-reinforced': 'coolant hose, textile-reinforced',
  'rubber hose with one wire braid': 'rubber hose with one wire braid',
  'Outside diameter': 'Outside diameter',
  'Of the hose, measured.': 'Of the hose, measured.',
  Bore: 'Bore',
  'Inside diameter.': 'Inside diameter.',
  'Radius at the inside of the bend': 'Radius at the inside of the bend',
  'As it lies; half the diameter of the round thing that fits in the corner.':
    'As it lies; half the diameter of the round thing that fits in the corner.',
  Bend: 'Bend',
  'All bends of this radius together.': 'All bends of this radius together.',
  'Straight parts': 'Straight parts',
  'With what sits on the spigots.': 'With what sits on the spigots.',
  'Hose is cut to': 'Hose is cut to',
  'Its length on the bench.': 'Its length on the bench.',
  'Least radius from its sheet': 'Least radius from its sheet',
  'Wins over any table.': 'Wins over any table.',
  Spigot: 'Spigot',
  'Outside diameter behind the bead, where the clamp sits.':
    'Outside diameter behind the bead, where the clamp sits.',
  'its sheet': 'its sheet',
  'five diameters, SAE J20': 'five diameters, SAE J20',
  'AC 43.13-1B for size {0}': 'AC 43.13-1B for size {0}',
  'Hose bend, length and clamp': 'Hose bend, length and clamp',
  'Whether a hose can follow its route without kinking, how long to cut it, how often to support it, and which clamp fits.':
    'Whether a hose can follow its route without kinking, how long to cut it, how often to support it, and which clamp fits.',
  'Least radius': 'Least radius',
  'Radius in hand': 'Radius in hand',
  'Along the bend': 'Along the bend',
  'Way along the middle': 'Way along the middle',
  'Cut to at least': 'Cut to at least',
  'and at most': 'and at most',
  Slack: 'Slack',
  'Supports between the ends': 'Supports between the ends',
  'Stretched onto the spigot': 'Stretched onto the spigot',
  'Diameter under the clamp': 'Diameter under the clamp',
  'Clamp, SAE size': 'Clamp, SAE size',
  'It still closes by': 'It still closes by',
  'It still opens by': 'It still opens by',
  'All sizes that reach': 'All sizes that reach',
  'For plain coolant hose nobody publishes one radius for all: its sheet comes first. Five diameters is what SAE J20 bends it to when cold, as summarised publicly.':
    'For plain coolant hose nobody publishes one radius for all: its sheet comes first. Five diameters is what SAE J20 bends it to when cold, as summarised publicly.',
  'The table for wire braid is read as the radius at the inside of the bend.':
    'The table for wire braid is read as the radius at the inside of the bend.',
  'A hose kinks sooner hot, under suction, twisted, or where a bend starts right at a spigot: leave it two diameters of straight.':
    'A hose kinks sooner hot, under suction, twisted, or where a bend starts right at a spigot: leave it two diameters of straight.',
  'Moulded bends are not bent further and need none of this.':
    'Moulded bends are not bent further and need none of this.',
  'Bend radius': 'Bend radius',
  'Hose on the spigot': 'Hose on the spigot',
  Clamp: 'Clamp',
  'The bore is not less than the outside diameter: measure both again.':
    'The bore is not less than the outside diameter: measure both again.',
  'The spigot’s diameter is not given.': 'The spigot’s diameter is not given.',
  'The table ends below this bore: take the radius from the hose’s sheet.':
    'The table ends below this bore: take the radius from the hose’s sheet.',
  '{0} is {1} diameters; the least is {2} ({3}).': '{0} is {1} diameters; the least is {2} ({3}).',
  '{0} is {1} diameters, less than {2} ({3}): it kinks and flattens. A wider sweep, a moulded bend or an elbow fitting.':
    '{0} is {1} diameters, less than {2} ({3}): it kinks and flattens. A wider sweep, a moulded bend or an elbow fitting.',
  '{0} is {1} diameters, less than {2} ({3}): it may kink when hot. A wider sweep, a moulded bend or an elbow fitting, or its sheet.':
    '{0} is {1} diameters, less than {2} ({3}): it may kink when hot. A wider sweep, a moulded bend or an elbow fitting, or its sheet.',
  'at least {0} (stop)': 'at least {0} (stop)',
  'at least {0}, 5 diameters (watch), 3 diameters (stop)':
    'at least {0}, 5 diameters (watch), 3 diameters (stop)',
  'Cut it to between {0} and {1}, then enter the length.':
    'Cut it to between {0} and {1}, then enter the length.',
  'It has {0} of slack.': 'It has {0} of slack.',
  'It has {0} of slack and does not reach. Cut one of at least {1}.':
    'It has {0} of slack and does not reach. Cut one of at least {1}.',
  'It has {0} of slack: it pulls at the spigots when it shrinks under pressure or the motor rocks. Cut one of at least {1}.':
    'It has {0} of slack: it pulls at the spigots when it shrinks under pressure or the motor rocks. Cut one of at least {1}.',
  'It has {0} of slack: it hangs or humps and rubs. Shorten it to {1} or clip it up.':
    'It has {0} of slack: it hangs or humps and rubs. Shorten it to {1} or clip it up.',
  '5 to 8 % (watch), not below 0 (stop)': '5 to 8 % (watch), not below 0 (stop)',
  'The spigot is {0} smaller than the bore: a clamp only folds the hose. Take the size smaller or another spigot.':
    'The spigot is {0} smaller than the bore: a clamp only folds the hose. Take the size smaller or another spigot.',
  'The hose is stretched by {0}: it thins and splits at its end. Take the size larger.':
    'The hose is stretched by {0}: it thins and splits at its end. Take the size larger.',
  'The hose is stretched by {0} onto the spigot.': 'The hose is stretched by {0} onto the spigot.',
  'spigot not smaller than the bore (stop), at most 10 % larger (watch)':
    'spigot not smaller than the bore (stop), at most 10 % larger (watch)',
  'No worm-drive size of the table reaches {0}: use a spring or ear clamp of that size.':
    'No worm-drive size of the table reaches {0}: use a spring or ear clamp of that size.',
  'Size {0} fits {1} and still closes by {2}.': 'Size {0} fits {1} and still closes by {2}.',
  'Size {0} reaches {1} only at the end of its range: use a spring clamp.':
    'Size {0} reaches {1} only at the end of its range: use a spring clamp.',
  'a tenth of its range in hand at both ends': 'a tenth of its range in hand at both ends',
  'L_w = {0} + {1} = {2}; with 5 to 8 % slack {3} to {4}':
    'L_w = {0} + {1} = {2}; with 5 to 8 % slack {3} to {4}',
  // calculators/cooling/hose-suitability.ts
  'Tube, hose and clamp': 'Tube, hose and clamp',
  'Whether a hose stands the heat and pressure of the loop, its clamp suits it, and its drips can do no harm.':
    'Whether a hose stands the heat and pressure of the loop, its clamp suits it, and its drips can do no harm.',
  Material: 'Material',
  'As printed on the hose or its sheet.': 'As printed on the hose or its sheet.',
  'clear flexible PVC': 'clear flexible PVC',
  'EPDM rubber, reinforced': 'EPDM rubber, reinforced',
  'silicone, reinforced': 'silicone, reinforced',
  polyurethane: 'polyurethane',
  'nylon air line': 'nylon air line',
  'aluminium or copper line': 'aluminium or copper line',
  'Rated pressure': 'Rated pressure',
  'At room temperature, from the hose or its sheet.':
    'At room temperature, from the hose or its sheet.',
  'The rating is': 'The rating is',
  'A burst pressure is three to four times a working pressure.':
    'A burst pressure is three to four times a working pressure.',
  'a working pressure': 'a working pressure',
  'a burst pressure': 'a burst pressure',
  'not stated': 'not stated',
  'Burst over working pressure': 'Burst over working pressure',
  'Used for a burst pressure only.': 'Used for a burst pressure only.',
  'hose notes give 3 to 4; the careful end': 'hose notes give 3 to 4; the careful end',
  'Rating left when hot, from its sheet': 'Rating left when hot, from its sheet',
  'At the hotter of coolant and bay. Better than any table.':
    'At the hotter of coolant and bay. Better than any table.',
  'Hottest its sheet allows': 'Hottest its sheet allows',
  'For hot water and glycol, not for air. Wins over the material’s usual limit.':
    'For hot water and glycol, not for air. Wins over the material’s usual limit.',
  'Hottest coolant': 'Hottest coolant',
  'On the worst day and hill.': 'On the worst day and hill.',
  'Hottest air round the hose': 'Hottest air round the hose',
  'Under the bonnet, beside the charger or heater.':
    'Under the bonnet, beside the charger or heater.',
  'Cap opens at': 'Cap opens at',
  'Stamped on it; zero for an open tank.': 'Stamped on it; zero for an open tank.',
  'Pump’s shut-off pressure': 'Pump’s shut-off pressure',
  'What it reaches against a blocked hose.': 'What it reaches against a blocked hose.',
  'Height of coolant above the hose': 'Height of coolant above the hose',
  'From the hose’s lowest place to the tank’s full mark.':
    'From the hose’s lowest place to the tank’s full mark.',
  'What holds it on the barb.': 'What holds it on the barb.',
  'constant-tension spring': 'constant-tension spring',
  'lined worm-drive': 'lined worm-drive',
  'plain perforated worm-drive': 'plain perforated worm-drive',
  'crimped ear': 'crimped ear',
  'cable tie, wire or none': 'cable tie, wire or none',
  'threaded or brazed fitting': 'threaded or brazed fitting',
  'Bead or barb on the spigot': 'Bead or barb on the spigot',
  'A ridge that the hose has to climb.': 'A ridge that the hose has to climb.',
  'Drips onto high voltage': 'Drips onto high voltage',
  'Follow a drop from every joint and along the hose, also on a slope.':
    'Follow a drop from every joint and along the hose, also on a slope.',
  'cannot reach it': 'cannot reach it',
  'only past a tray or shield': 'only past a tray or shield',
  'can reach it': 'can reach it',
  'Hottest at the hose': 'Hottest at the hose',
  'Rating left when hot': 'Rating left when hot',
  'Usable pressure': 'Usable pressure',
  'Pressure the loop can reach': 'Pressure the loop can reach',
  Margin: 'Margin',
  'The table for PVC is published for rigid pipe as far as is known; flexible tube is softer. The hose’s own sheet is better.':
    'The table for PVC is published for rigid pipe as far as is known; flexible tube is softer. The hose’s own sheet is better.',
  'For rubber no loss of rating is published: within its usual temperature the rating is taken whole, above it as unknown.':
    'For rubber no loss of rating is published: within its usual temperature the rating is taken whole, above it as unknown.',
  'A hose on the suction side can also collapse, and cold barbs shrink and weep; neither is worked here.':
    'A hose on the suction side can also collapse, and cold barbs shrink and weep; neither is worked here.',
  'Where the derating comes from': 'Where the derating comes from',
  'Pressure in hand': 'Pressure in hand',
  'Clamp and spigot': 'Clamp and spigot',
  'It yellows, stiffens and creeps off barbs: for bench and first fill.':
    'It yellows, stiffens and creeps off barbs: for bench and first fill.',
  'at most {0} (watch), {1} (stop)': 'at most {0} (watch), {1} (stop)',
  'at most {0}, by its sheet (stop)': 'at most {0}, by its sheet (stop)',
  'Nothing holds the hose that keeps its grip when hot: fit a constant-tension spring or lined worm clamp.':
    'Nothing holds the hose that keeps its grip when hot: fit a constant-tension spring or lined worm clamp.',
  'A plain worm clamp bites into this soft hose and squeezes it out: fit a lined or constant-tension one.':
    'A plain worm clamp bites into this soft hose and squeezes it out: fit a lined or constant-tension one.',
  'A plain worm clamp comes loose as the hose flows cold: fit a lined or constant-tension one, or nip it up after the first heat and again later.':
    'A plain worm clamp comes loose as the hose flows cold: fit a lined or constant-tension one, or nip it up after the first heat and again later.',
  'Without a bead the hose creeps off: have a bead rolled, or fit beaded spigots.':
    'Without a bead the hose creeps off: have a bead rolled, or fit beaded spigots.',
  'A fitting holds it: use the one its sheet names.':
    'A fitting holds it: use the one its sheet names.',
  'This kind of clamp keeps its grip; set it {0} to {1} behind the bead.':
    'This kind of clamp keeps its grip; set it {0} to {1} behind the bead.',
  'No drop can reach a high-voltage joint.': 'No drop can reach a high-voltage joint.',
  'Only a tray or shield keeps drops from a high-voltage joint: prove it with water on a slope, or re-route.':
    'Only a tray or shield keeps drops from a high-voltage joint: prove it with water on a slope, or re-route.',
  'A drop can reach a high-voltage joint: re-route the hose.':
    'A drop can reach a high-voltage joint: re-route the hose.',
  'Nobody has followed the drops yet: do so from every joint before filling.':
    'Nobody has followed the drops yet: do so from every joint before filling.',
  'This material softens in hot glycol unless its maker says otherwise: enter the hottest its sheet allows for water and glycol.':
    'This material softens in hot glycol unless its maker says otherwise: enter the hottest its sheet allows for water and glycol.',
  'It gets {0} at most.': 'It gets {0} at most.',
  'It gets {0}: near the end of what this material stands. Take reinforced EPDM or silicone, or cool the loop.':
    'It gets {0}: near the end of what this material stands. Take reinforced EPDM or silicone, or cool the loop.',
  'It gets {0}: too hot for it. Take reinforced EPDM or silicone, or cool the loop.':
    'It gets {0}: too hot for it. Take reinforced EPDM or silicone, or cool the loop.',
  'the hottest temperature of its own sheet': 'the hottest temperature of its own sheet',
  'Nothing is known of its strength at {0}: enter what its sheet leaves of the rating.':
    'Nothing is known of its strength at {0}: enter what its sheet leaves of the rating.',
  'Its sheet leaves {0} of the rating.': 'Its sheet leaves {0} of the rating.',
  '{0} of the rating is left at {1} by a table for rigid PVC pipe; flexible tube may keep less. Ask for the hose’s own sheet.':
    '{0} of the rating is left at {1} by a table for rigid PVC pipe; flexible tube may keep less. Ask for the hose’s own sheet.',
  'The rating is taken whole at {0}.': 'The rating is taken whole at {0}.',
  'from the hose’s own sheet (watch: table for rigid pipe)':
    'from the hose’s own sheet (watch: table for rigid pipe)',
  'The loop has no pressure at all: enter cap, pump and height.':
    'The loop has no pressure at all: enter cap, pump and height.',
  'The loop can reach {0}; the hose’s rating is not given.':
    'The loop can reach {0}; the hose’s rating is not given.',
  'The loop can reach {0}; it is not stated whether the hose’s {1} is a working or a burst pressure. Ask its maker.':
    'The loop can reach {0}; it is not stated whether the hose’s {1} is a working or a burst pressure. Ask its maker.',
  'The loop can reach {0}; what the hose stands when hot is not known.':
    'The loop can reach {0}; what the hose stands when hot is not known.',
  'The hot hose stands {0}, {1} times the {2} that the loop can reach.':
    'The hot hose stands {0}, {1} times the {2} that the loop can reach.',
  'The hot hose stands {0}, only {1} times the {2} that the loop can reach. Take a stronger hose or a lower cap.':
    'The hot hose stands {0}, only {1} times the {2} that the loop can reach. Take a stronger hose or a lower cap.',
  'at least 3 times the loop’s pressure (watch), 2 times (stop)':
    'at least 3 times the loop’s pressure (watch), 2 times (stop)',
  'a clamp that keeps its tension, behind a bead (watch); no clamp (stop)':
    'a clamp that keeps its tension, behind a bead (watch); no clamp (stop)',
  'no path (shield: watch; open: stop)': 'no path (shield: watch; open: stop)',
  'k = {0} by its sheet': 'k = {0} by its sheet',
  'k = {0} by the table for rigid pipe': 'k = {0} by the table for rigid pipe',
  'k = {0} within its usual temperature': 'k = {0} within its usual temperature',
  // calculators/cooling/leak-test.ts
  'Leak test by pressure': 'Leak test by pressure',
  'Tells a leak from cooling air when a coolant loop is pumped up and watched, and holds the test pressure against the weakest part.':
    'Tells a leak from cooling air when a coolant loop is pumped up and watched, and holds the test pressure against the weakest part.',
  'Pressure at the start': 'Pressure at the start',
  'Read after a minute, when the pumped air has cooled.':
    'Read after a minute, when the pumped air has cooled.',
  'Pressure at the end': 'Pressure at the end',
  'On the same gauge.': 'On the same gauge.',
  'Held for': 'Held for',
  'Between the two readings.': 'Between the two readings.',
  'Of the tank with the trapped air, by touch probe.':
    'Of the tank with the trapped air, by touch probe.',
  'Temperature at the end': 'Temperature at the end',
  'At the same place.': 'At the same place.',
  'Smallest change the gauge shows': 'Smallest change the gauge shows',
  'Half a division of its scale.': 'Half a division of its scale.',
  'half a division of a hand pump’s gauge': 'half a division of a hand pump’s gauge',
  'Weakest part is rated for': 'Weakest part is rated for',
  'The least of cold plate, pump, radiator, tank and hose, from their sheets.':
    'The least of cold plate, pump, radiator, tank and hose, from their sheets.',
  'Stamped on it; leave out for an open tank.': 'Stamped on it; leave out for an open tank.',
  Altitude: 'Altitude',
  'Of the workshop.': 'Of the workshop.',
  'at sea level; 1000 m change the correction by a twentieth':
    'at sea level; 1000 m change the correction by a twentieth',
  'To expect without a leak': 'To expect without a leak',
  'Drop from cooling': 'Drop from cooling',
  'Drop that is left': 'Drop that is left',
  'Lost in 15 minutes': 'Lost in 15 minutes',
  'Highest pressure to test at': 'Highest pressure to test at',
  'For air trapped above the coolant at the temperature that was measured; its volume is taken as fixed. Hoses that give and coolant that shrinks lower the pressure further and look like a leak.':
    'For air trapped above the coolant at the temperature that was measured; its volume is taken as fixed. Hoses that give and coolant that shrinks lower the pressure further and look like a leak.',
  'The loss is scaled to 15 minutes in proportion to time.':
    'The loss is scaled to 15 minutes in proportion to time.',
  'A pressure test finds what leaks cold. It is repeated hot, and dry paper under every joint shows where.':
    'A pressure test finds what leaks cold. It is repeated hot, and dry paper under every joint shows where.',
  'Test pressure and ratings': 'Test pressure and ratings',
  'Loss beyond cooling': 'Loss beyond cooling',
  'Long enough': 'Long enough',
  'Temperature steady': 'Temperature steady',
  '{0} is above what the weakest part or the cap is made for, {1}: let it down and test lower.':
    '{0} is above what the weakest part or the cap is made for, {1}: let it down and test lower.',
  'The weakest part’s rating is not given: look it up before pumping.':
    'The weakest part’s rating is not given: look it up before pumping.',
  '{0} is within the ratings and more than a coolant loop is commonly tested at.':
    '{0} is within the ratings and more than a coolant loop is commonly tested at.',
  '{0} is within every rating.': '{0} is within every rating.',
  'at most the weakest rating and the cap (stop), and {0} (watch)':
    'at most the weakest rating and the cap (stop), and {0} (watch)',
  'at most the weakest rating and the cap (stop), and {0} (watch): here {1}':
    'at most the weakest rating and the cap (stop), and {0} (watch): here {1}',
  'The pressure is {0} and should be {1}: it rose, so the trapped air was not at the temperature measured. Repeat it in the shade.':
    'The pressure is {0} and should be {1}: it rose, so the trapped air was not at the temperature measured. Repeat it in the shade.',
  'The gauge shows no less than {0}, which is more than the limit in this time: hold it longer or use a finer gauge.':
    'The gauge shows no less than {0}, which is more than the limit in this time: hold it longer or use a finer gauge.',
  'It reads {0}; {1} is to be expected from the temperature.':
    'It reads {0}; {1} is to be expected from the temperature.',
  'It reads {0} where {1} is to be expected: {2} in 15 minutes goes somewhere. Look for it with paper and soap at every joint, tighten, repeat.':
    'It reads {0} where {1} is to be expected: {2} in 15 minutes goes somewhere. Look for it with paper and soap at every joint, tighten, repeat.',
  'at most 2 % of the starting pressure in 15 minutes (watch), 5 % (stop)':
    'at most 2 % of the starting pressure in 15 minutes (watch), 5 % (stop)',
  'It was held for {0}.': 'It was held for {0}.',
  'It was held for {0}: a slow leak needs 15 minutes to show.':
    'It was held for {0}: a slow leak needs 15 minutes to show.',
  'at least 15 minutes': 'at least 15 minutes',
  'The temperature changed by {0}.': 'The temperature changed by {0}.',
  'The temperature changed by {0}: the correction is larger than the leak looked for. Wait until it is steady.':
    'The temperature changed by {0}: the correction is larger than the leak looked for. Wait until it is steady.',
  'at most {0} between the readings': 'at most {0} between the readings',
  // calculators/cooling/loop-heights.ts
  Wheelbase: 'Wheelbase',
  'Front axle to rear axle.': 'Front axle to rear axle.',
  'Front, measured stance to ride height': 'Front, measured stance to ride height',
  'How much higher the body sits over the front axle on its wheels than when the heights were taken.':
    'How much higher the body sits over the front axle on its wheels than when the heights were taken.',
  'Rear, measured stance to ride height': 'Rear, measured stance to ride height',
  'How much higher the body sits over the rear axle on its wheels than when the heights were taken.':
    'How much higher the body sits over the rear axle on its wheels than when the heights were taken.',
  'Parking slope': 'Parking slope',
  'Steepest place where it is parked; nose-up and nose-down are both worked.':
    'Steepest place where it is parked; nose-up and nose-down are both worked.',
  'a steep drive': 'a steep drive',
  'Points of the loop': 'Points of the loop',
  point: 'point',
  'In the order in which the coolant runs: tank, pump, every port and every high place of a hose.':
    'In the order in which the coolant runs: tank, pump, every port and every high place of a hose.',
  Name: 'Name',
  'Such as hose under seat.': 'Such as hose under seat.',
  Role: 'Role',
  'What sits there.': 'What sits there.',
  'tank, low mark': 'tank, low mark',
  'pump inlet': 'pump inlet',
  'port of a part': 'port of a part',
  'crest of a hose': 'crest of a hose',
  'other place': 'other place',
  'Behind the front axle': 'Behind the front axle',
  'Ahead of the axle negative.': 'Ahead of the axle negative.',
  Height: 'Height',
  'Above level ground, at the highest wet place; for the tank its low mark.':
    'Above level ground, at the highest wet place; for the tank its low mark.',
  'To the left': 'To the left',
  'From the middle, to the right negative. Where tank and point have it, leaning 5° is worked too.':
    'From the middle, to the right negative. Where tank and point have it, leaning 5° is worked too.',
  Bleed: 'Bleed',
  'Whether air can be let out there. Left out: no.':
    'Whether air can be let out there. Left out: no.',
  'at ride height': 'at ride height',
  'parked nose-up': 'parked nose-up',
  'parked nose-down': 'parked nose-down',
  'leaning to the right': 'leaning to the right',
  'leaning to the left': 'leaning to the left',
  'Heights of the coolant loop': 'Heights of the coolant loop',
  'Whether the tank stays above the whole loop at ride height and on slopes, feeds the pump, and where air can collect.':
    'Whether the tank stays above the whole loop at ride height and on slopes, feeds the pump, and where air can collect.',
  Heights: 'Heights',
  Point: 'Point',
  'As measured': 'As measured',
  'At ride height': 'At ride height',
  'Nose-up': 'Nose-up',
  'Nose-down': 'Nose-down',
  'Tank above it, worst': 'Tank above it, worst',
  'Tank above the loop, worst': 'Tank above the loop, worst',
  Where: 'Where',
  'Tank above the loop, as measured': 'Tank above the loop, as measured',
  'Tank above the loop, at ride height': 'Tank above the loop, at ride height',
  'Tank above the pump inlet, at ride height': 'Tank above the pump inlet, at ride height',
  'Tank above the pump inlet, worst': 'Tank above the pump inlet, worst',
  'Tail-up pitch at ride height': 'Tail-up pitch at ride height',
  'Crests without a bleed': 'Crests without a bleed',
  'x runs rearward, y to the left, z up; the body pitches (θ, tail up), then leans (φ, right side down), about the front axle; only differences of height matter.':
    'x runs rearward, y to the left, z up; the body pitches (θ, tail up), then leans (φ, right side down), about the front axle; only differences of height matter.',
  'The body turns as a whole: springs do not settle further on the slope.':
    'The body turns as a whole: springs do not settle further on the slope.',
  'Coolant at rest, tank at its low mark; a running pump and a closed cap change pressures, not where air collects.':
    'Coolant at rest, tank at its low mark; a running pump and a closed cap change pressures, not where air collects.',
  'Slopes along and leaning across are worked one at a time.':
    'Slopes along and leaning across are worked one at a time.',
  'Tank above the loop at ride height': 'Tank above the loop at ride height',
  'Tank above the loop on slopes': 'Tank above the loop on slopes',
  'Pump below the tank': 'Pump below the tank',
  'Crests that hold air': 'Crests that hold air',
  'More than one point is the tank’s low mark: keep the one that feeds the pump.':
    'More than one point is the tank’s low mark: keep the one that feeds the pump.',
  'No point is the tank’s low mark: enter it.': 'No point is the tank’s low mark: enter it.',
  'At ride height the tank’s low mark is {0} below “{1}”':
    'At ride height the tank’s low mark is {0} below “{1}”',
  'At ride height the tank’s low mark is {0} above “{1}”':
    'At ride height the tank’s low mark is {0} above “{1}”',
  'When {0} the tank’s low mark is {1} below “{2}”':
    'When {0} the tank’s low mark is {1} below “{2}”',
  'When {0} the tank’s low mark is {1} above “{2}”':
    'When {0} the tank’s low mark is {1} above “{2}”',
  'Leaning 5° either way is included.': 'Leaning 5° either way is included.',
  'Leaning is worked only for the points that have a sideways place.':
    'Leaning is worked only for the points that have a sideways place.',
  'Leaning is not worked: no sideways places are given.':
    'Leaning is not worked: no sideways places are given.',
  'Only the tank is given: enter pump, ports and crests.':
    'Only the tank is given: enter pump, ports and crests.',
  '{0}, the highest other point.': '{0}, the highest other point.',
  '{0}: air will stay there. Raise the tank or lower the hose.':
    '{0}: air will stay there. Raise the tank or lower the hose.',
  'at least {0} above (watch), {1} (stop)': 'at least {0} above (watch), {1} (stop)',
  '{0}, the least of all slopes.': '{0}, the least of all slopes.',
  '{0}; it has a bleed: open it again after parking so.':
    '{0}; it has a bleed: open it again after parking so.',
  '{0}: air can move there. Move the tank towards it, raise the tank, or fit a bleed there.':
    '{0}: air can move there. Move the tank towards it, raise the tank, or fit a bleed there.',
  'on {0} either way at least {1} above (watch), {2} (stop; watch at a bleed)':
    'on {0} either way at least {1} above (watch), {2} (stop; watch at a bleed)',
  'No point is the pump inlet: enter it.': 'No point is the pump inlet: enter it.',
  '{0}, at its least.': '{0}, at its least.',
  '{0}, at its least: the pump may draw air and run dry. Mount it lower or raise the tank.':
    '{0}, at its least: the pump may draw air and run dry. Mount it lower or raise the tank.',
  'pump at least {0} below the low mark (watch), {1} (stop)':
    'pump at least {0} below the low mark (watch), {1} (stop)',
  'Air collects at {0}: fit a bleed there, or route it without a hump.':
    'Air collects at {0}: fit a bleed there, or route it without a hump.',
  'Too few points to find a crest: enter the loop’s high places in order.':
    'Too few points to find a crest: enter the loop’s high places in order.',
  'No place is higher than its neighbours without a bleed.':
    'No place is higher than its neighbours without a bleed.',
  'no crest without a bleed (watch)': 'no crest without a bleed (watch)',
  'sin θ_0 = (Δz_r − Δz_f) / L = ({0} − {1}) / {2}; θ_0 = {3} tail up':
    'sin θ_0 = (Δz_r − Δz_f) / L = ({0} − {1}) / {2}; θ_0 = {3} tail up',
  'Worst {0}: θ = {1}, φ = {2}': 'Worst {0}: θ = {1}, φ = {2}',
  'm_min = z′ of the tank − z′ of the other = {0}':
    'm_min = z′ of the tank − z′ of the other = {0}',
  'The loop from the side': 'The loop from the side',
  'as measured': 'as measured',
  'tank’s low mark': 'tank’s low mark',
  'At ride height nothing may reach the line of the tank’s low mark. Front is to the left.':
    'At ride height nothing may reach the line of the tank’s low mark. Front is to the left.',
  // calculators/cooling/loop-volume.ts
  Hoses: 'Hoses',
  hose: 'hose',
  'All of them, also the one to the tank.': 'All of them, also the one to the tank.',
  'From where to where.': 'From where to where.',
  Length: 'Length',
  'Between the ends of the spigots.': 'Between the ends of the spigots.',
  Parts: 'Parts',
  'Radiator, cold plates, pump, heater, and the tank up to its cold mark.':
    'Radiator, cold plates, pump, heater, and the tank up to its cold mark.',
  Holds: 'Holds',
  'From its sheet, or filled from a measuring jug.':
    'From its sheet, or filled from a measuring jug.',
  'Coldest coolant': 'Coldest coolant',
  'The cold mark has to be wet here; filling it warm is worked from this too.':
    'The cold mark has to be wet here; filling it warm is worked from this too.',
  'a frosty morning': 'a frosty morning',
  'On the worst hill.': 'On the worst hill.',
  'Went in': 'Went in',
  'By the jug, into an empty loop, up to the cold mark.':
    'By the jug, into an empty loop, up to the cold mark.',
  'Air space of the tank': 'Air space of the tank',
  'From the cold mark to the cap, or to the overflow bottle’s brim.':
    'From the cold mark to the cap, or to the overflow bottle’s brim.',
  'Loop volume, fill and expansion': 'Loop volume, fill and expansion',
  'Adds up what the loop holds, tells from the litres that went in whether air is trapped, and how much air space the tank needs when the coolant expands.':
    'Adds up what the loop holds, tells from the litres that went in whether air is trapped, and how much air space the tank needs when the coolant expands.',
  'Loop holds': 'Loop holds',
  'of it in hoses': 'of it in hoses',
  'Glycol in it': 'Glycol in it',
  'Still missing': 'Still missing',
  Expansion: 'Expansion',
  'Expansion of volume': 'Expansion of volume',
  'Air space needed': 'Air space needed',
  'Air space in hand': 'Air space in hand',
  'What holds it': 'What holds it',
  'Hoses are taken as round and not swollen; a rubber hose under pressure holds a little more.':
    'Hoses are taken as round and not swollen; a rubber hose under pressure holds a little more.',
  'Only the coolant expands: the metal and rubber round it take up about a tenth of that.':
    'Only the coolant expands: the metal and rubber round it take up about a tenth of that.',
  'All coolant is taken to reach the hottest temperature at once, which is the careful end.':
    'All coolant is taken to reach the hottest temperature at once, which is the careful end.',
  'Something to fill': 'Something to fill',
  Fill: 'Fill',
  'No hose and no part with a volume is given.': 'No hose and no part with a volume is given.',
  'Hoses and parts hold {0}.': 'Hoses and parts hold {0}.',
  'at least one hose or part': 'at least one hose or part',
  'What went in is not known: fill from a measuring jug and note it.':
    'What went in is not known: fill from a measuring jug and note it.',
  '{0} of the loop went in: something that holds coolant is not in the list, or it was not empty.':
    '{0} of the loop went in: something that holds coolant is not in the list, or it was not empty.',
  '{0} of {1} went in.': '{0} of {1} went in.',
  '{0} did not go in: that much air is inside. Nose up, bleed, squeeze the hoses, run the pump in short bursts, top up.':
    '{0} did not go in: that much air is inside. Nose up, bleed, squeeze the hoses, run the pump in short bursts, top up.',
  'at least 97 % (watch), 92 % (stop); at most 105 % (watch)':
    'at least 97 % (watch), 92 % (stop); at most 105 % (watch)',
  'The air space of the tank, the volume or the expansion is not known.':
    'The air space of the tank, the volume or the expansion is not known.',
  'The coolant rises by {0}; the tank has {1} of air.':
    'The coolant rises by {0}; the tank has {1} of air.',
  'The coolant rises by {0} and the tank has {1} of air: it comes out of the cap. A tank with {2} of air, or a lower cold mark.':
    'The coolant rises by {0} and the tank has {1} of air: it comes out of the cap. A tank with {2} of air, or a lower cold mark.',
  'The coolant rises by {0} and the tank has {1} of air: little is left. A tank with {2} of air, or a lower cold mark.':
    'The coolant rises by {0} and the tank has {1} of air: little is left. A tank with {2} of air, or a lower cold mark.',
  'coldest coolant': 'coldest coolant',
  'hottest coolant': 'hottest coolant',
  'at least 1.5 times the expansion (watch), once (stop)':
    'at least 1.5 times the expansion (watch), once (stop)',
  // calculators/cooling/pump-and-loop.ts
  'The pump is not given: shut-off pressure and free flow, or two points.':
    'The pump is not given: shut-off pressure and free flow, or two points.',
  'It needs two points.': 'It needs two points.',
  'Two points have the same flow.': 'Two points have the same flow.',
  'The pump’s pressure rises with flow: leave out the points before its highest.':
    'The pump’s pressure rises with flow: leave out the points before its highest.',
  'Give both voltages or neither.': 'Give both voltages or neither.',
  'Nothing resists the flow: give hoses and parts.':
    'Nothing resists the flow: give hoses and parts.',
  'The coolant’s properties are not known.': 'The coolant’s properties are not known.',
  'The crossing lies before the first point: add points at less flow.':
    'The crossing lies before the first point: add points at less flow.',
  'The crossing lies past the last point: add points at more flow.':
    'The crossing lies past the last point: add points at more flow.',
  'No crossing was found.': 'No crossing was found.',
  'Pump and loop': 'Pump and loop',
  'What really flows: the crossing of the pump’s curve with the resistance of hoses and parts, warm and at a cold start.':
    'What really flows: the crossing of the pump’s curve with the resistance of hoses and parts, warm and at a cold start.',
  'With what is in them.': 'With what is in them.',
  'Along the hose.': 'Along the hose.',
  '90° bends': '90° bends',
  'Swept bends, K 0.4 each.': 'Swept bends, K 0.4 each.',
  Elbows: 'Elbows',
  'Sharp barb elbows, K 1.5 each.': 'Sharp barb elbows, K 1.5 each.',
  'Other fittings, ΣK': 'Other fittings, ΣK',
  'Tee through 0.6, into its branch 1.8.': 'Tee through 0.6, into its branch 1.8.',
  Leg: 'Leg',
  'Which hose feeds the pump.': 'Which hose feeds the pump.',
  'feeds the pump': 'feeds the pump',
  'rest of the loop': 'rest of the loop',
  'Roughness inside': 'Roughness inside',
  'Of the hose wall.': 'Of the hose wall.',
  'a smooth tube': 'a smooth tube',
  'Cold plates, radiator, heater, from their sheets.':
    'Cold plates, radiator, heater, from their sheets.',
  'Pressure drop': 'Pressure drop',
  'At the flow beside it.': 'At the flow beside it.',
  'at flow': 'at flow',
  'Where its sheet states it.': 'Where its sheet states it.',
  'That its sheet asks for.': 'That its sheet asks for.',
  'Pump: shut-off pressure': 'Pump: shut-off pressure',
  'At no flow; a head of water as mH2O.': 'At no flow; a head of water as mH2O.',
  'Pump: free flow': 'Pump: free flow',
  'Against no pressure.': 'Against no pressure.',
  'Pump curve': 'Pump curve',
  'From its sheet; instead of the two figures.': 'From its sheet; instead of the two figures.',
  Flow: 'Flow',
  'Of one point.': 'Of one point.',
  Pressure: 'Pressure',
  'At that flow.': 'At that flow.',
  'Voltage of the curve': 'Voltage of the curve',
  'On its sheet.': 'On its sheet.',
  'Voltage at the pump': 'Voltage at the pump',
  'Leave out both to use the curve as it is.': 'Leave out both to use the curve as it is.',
  'Coolant, warm': 'Coolant, warm',
  'Working temperature.': 'Working temperature.',
  'Coolant, cold start': 'Coolant, cold start',
  'The coldest morning.': 'The coldest morning.',
  'Flow wanted': 'Flow wanted',
  'For a controller 6 to 12 L/min.': 'For a controller 6 to 12 L/min.',
  'Flow, low end': 'Flow, low end',
  'Flow, high end': 'Flow, high end',
  'Loop pressure': 'Loop pressure',
  'Velocity, fastest hose': 'Velocity, fastest hose',
  'Velocity, slowest hose': 'Velocity, slowest hose',
  'Velocity, suction leg': 'Velocity, suction leg',
  'Reynolds number, fastest hose': 'Reynolds number, fastest hose',
  'Flow at a cold start': 'Flow at a cold start',
  'Flow at a cold start, low end': 'Flow at a cold start, low end',
  'Largest restriction': 'Largest restriction',
  'Who resists': 'Who resists',
  Drop: 'Drop',
  'One closed loop without branches, full of liquid: heights cancel, and air is not reckoned with. Pump and part figures are taken as if measured with this coolant; both go with density, so the flow hardly depends on it.':
    'One closed loop without branches, full of liquid: heights cancel, and air is not reckoned with. Pump and part figures are taken as if measured with this coolant; both go with density, so the flow hardly depends on it.',
  'Between Reynolds 2040 and 4000 flow is neither laminar nor turbulent; friction is interpolated and both ends of the flow are given.':
    'Between Reynolds 2040 and 4000 flow is neither laminar nor turbulent; friction is interpolated and both ends of the flow are given.',
  'Parts are scaled with the square of flow, from the warm coolant. Cold, their drop lies between that and that times the ratio of viscosities: both are worked and the lower flow is judged. What thick coolant takes from a small pump is not in it.':
    'Parts are scaled with the square of flow, from the warm coolant. Cold, their drop lies between that and that times the ratio of viscosities: both are worked and the lower flow is judged. What thick coolant takes from a small pump is not in it.',
  'That pump speed follows voltage is a model; a pump with its own speed control does not obey it: leave the voltages out.':
    'That pump speed follows voltage is a model; a pump with its own speed control does not obey it: leave the voltages out.',
  'Slowest hose': 'Slowest hose',
  'Fastest hose': 'Fastest hose',
  'Suction leg': 'Suction leg',
  'Cold start': 'Cold start',
  'Laminar or turbulent': 'Laminar or turbulent',
  'It needs hoses and a flow.': 'It needs hoses and a flow.',
  'It cannot be told.': 'It cannot be told.',
  'Give the flow wanted, or the least flow on each part’s sheet.':
    'Give the flow wanted, or the least flow on each part’s sheet.',
  '{0} is what is asked for, or more.': '{0} is what is asked for, or more.',
  '{0} is less than the sheet of {1} asks for: a larger bore, fewer elbows or a stronger pump.':
    '{0} is less than the sheet of {1} asks for: a larger bore, fewer elbows or a stronger pump.',
  '{0} is {1} of the flow wanted: a larger bore, fewer elbows or a stronger pump.':
    '{0} is {1} of the flow wanted: a larger bore, fewer elbows or a stronger pump.',
  'at least {0} (sheet, stop)': 'at least {0} (sheet, stop)',
  '{0} wanted (watch), 80 % of it (stop)': '{0} wanted (watch), 80 % of it (stop)',
  'the flow wanted or the sheet’s least flow': 'the flow wanted or the sheet’s least flow',
  '{0} in the slowest hose may not carry bubbles down: bleed its high points.':
    '{0} in the slowest hose may not carry bubbles down: bleed its high points.',
  '{0} in the slowest hose carries bubbles.': '{0} in the slowest hose carries bubbles.',
  '{0} in the fastest hose wastes pressure: a larger bore.':
    '{0} in the fastest hose wastes pressure: a larger bore.',
  '{0} in the fastest hose is moderate.': '{0} in the fastest hose is moderate.',
  'at most {0}': 'at most {0}',
  'Mark the hose that feeds the pump.': 'Mark the hose that feeds the pump.',
  '{0} into the pump draws air: a larger or shorter hose.':
    '{0} into the pump draws air: a larger or shorter hose.',
  '{0} into the pump is slow enough.': '{0} into the pump is slow enough.',
  'At {0} it is {1} if parts resist with viscosity, {2} if not, and {3} warm: keep the power low until it is warm.':
    'At {0} it is {1} if parts resist with viscosity, {2} if not, and {3} warm: keep the power low until it is warm.',
  'At {0} it is {1} if parts resist with viscosity, {2} if not, and {3} warm.':
    'At {0} it is {1} if parts resist with viscosity, {2} if not, and {3} warm.',
  'temperature of a cold start': 'temperature of a cold start',
  'warm one': 'warm one',
  'low end at least 50 % of the warm flow': 'low end at least 50 % of the warm flow',
  '{0}: neither; {1} to {2} may flow. Measure it.':
    '{0}: neither; {1} to {2} may flow. Measure it.',
  'Every hose is one or the other.': 'Every hose is one or the other.',
  'Reynolds number not between {0} and {1}': 'Reynolds number not between {0} and {1}',
  'The curve is carried to {0} of its voltage, too far for a guess: measure.':
    'The curve is carried to {0} of its voltage, too far for a guess: measure.',
  'The pump’s curve, at {0} of its voltage, crosses the loop’s.':
    'The pump’s curve, at {0} of its voltage, crosses the loop’s.',
  'a crossing on the curve; 75 to 125 % of its voltage':
    'a crossing on the curve; 75 to 125 % of its voltage',
  'Pump: cubic through its points': 'Pump: cubic through its points',
  'Pump: p = {0} × (1 − (V̇ / {1})²)': 'Pump: p = {0} × (1 − (V̇ / {1})²)',
  'With voltage: flow × {0}, pressure × {1}': 'With voltage: flow × {0}, pressure × {1}',
  'V̇ = cannot tell': 'V̇ = cannot tell',
  'At {0}: ρ = {1}, μ = {2} ({3})': 'At {0}: ρ = {1}, μ = {2} ({3})',
  'Sum: p = {0}': 'Sum: p = {0}',
  'All turbulent: {0}; laminar as far as can be: {1}':
    'All turbulent: {0}; laminar as far as can be: {1}',
  'At {0}: V̇ = {1}, with viscosity in the parts {2}':
    'At {0}: V̇ = {1}, with viscosity in the parts {2}',
  pump: 'pump',
  'loop, warm': 'loop, warm',
  'loop, cold': 'loop, cold',
  warm: 'warm',
  cold: 'cold',
  wanted: 'wanted',
  'The flow is where the pump’s curve meets the loop’s.':
    'The flow is where the pump’s curve meets the loop’s.',
  // calculators/cooling/pump-inlet.ts
  'Hottest coolant at the pump': 'Hottest coolant at the pump',
  'The highest pass.': 'The highest pass.',
  'at sea level; give the highest road you drive': 'at sea level; give the highest road you drive',
  'Pressure under the cap': 'Pressure under the cap',
  'Hot and closed; zero for an open tank.': 'Hot and closed; zero for an open tank.',
  'an open tank, or a cap that has just been off': 'an open tank, or a cap that has just been off',
  'Tank level above the pump inlet': 'Tank level above the pump inlet',
  'At the low mark; negative where the pump sits higher.':
    'At the low mark; negative where the pump sits higher.',
  'Loss of the suction side': 'Loss of the suction side',
  'Between tank and pump with what lies there; or leave out and give the hose.':
    'Between tank and pump with what lies there; or leave out and give the hose.',
  'For the loss of the hose.': 'For the loss of the hose.',
  'Suction hose, bore': 'Suction hose, bore',
  'Suction hose, length': 'Suction hose, length',
  'From tank to pump.': 'From tank to pump.',
  'Suction fittings, ΣK': 'Suction fittings, ΣK',
  'Outlet of the tank 0.5, sharp elbow 1.5, bend 0.4.':
    'Outlet of the tank 0.5, sharp elbow 1.5, bend 0.4.',
  'the tank’s outlet and one sharp elbow': 'the tank’s outlet and one sharp elbow',
  'Suction head the pump asks for': 'Suction head the pump asks for',
  'NPSH on its sheet, at this flow.': 'NPSH on its sheet, at this flow.',
  'small circulation pumps seldom ask for more (recalled); their sheet governs':
    'small circulation pumps seldom ask for more (recalled); their sheet governs',
  'Pressure at the pump inlet': 'Pressure at the pump inlet',
  'Whether the coolant reaches the pump as liquid: suction head available when hot and high up, with the cap tight and with it open.':
    'Whether the coolant reaches the pump as liquid: suction head available when hot and high up, with the cap tight and with it open.',
  'Suction head available': 'Suction head available',
  'Suction head in hand': 'Suction head in hand',
  'Available with the cap open': 'Available with the cap open',
  'At the pump inlet': 'At the pump inlet',
  'Water boils at': 'Water boils at',
  'At the inlet with the cap open': 'At the inlet with the cap open',
  'Loss of the suction side, used': 'Loss of the suction side, used',
  'The vapour pressure is that of water. Glycol boils later: at 50 % by volume its vapour pressure is about three quarters of that, so this is the careful end.':
    'The vapour pressure is that of water. Glycol boils later: at 50 % by volume its vapour pressure is about three quarters of that, so this is the careful end.',
  'The air’s pressure is the standard atmosphere’s; weather takes or gives 3 %.':
    'The air’s pressure is the standard atmosphere’s; weather takes or gives 3 %.',
  'The pressure at the inlet is that of the coolant brought to rest; flowing past, it is lower by ρv²/2, which is 0.5 kPa at 1 m/s and 2 kPa at 2 m/s.':
    'The pressure at the inlet is that of the coolant brought to rest; flowing past, it is lower by ρv²/2, which is 0.5 kPa at 1 m/s and 2 kPa at 2 m/s.',
  'The pump is taken to draw from the tank through one hose. Where the tank joins the loop elsewhere, the loss is that between its joint and the pump.':
    'The pump is taken to draw from the tank through one hose. Where the tank joins the loop elsewhere, the loss is that between its joint and the pump.',
  'Suction head': 'Suction head',
  'With the cap open or leaking': 'With the cap open or leaking',
  'Suction at the inlet': 'Suction at the inlet',
  'The loss of the suction side is not known: give it, or flow, bore and length of the hose.':
    'The loss of the suction side is not known: give it, or flow, bore and length of the hose.',
  'It cannot be told without the coolant’s density.':
    'It cannot be told without the coolant’s density.',
  '{0} is there and the pump asks for {1}; water boils at {2} here.':
    '{0} is there and the pump asks for {1}; water boils at {2} here.',
  '{0} is there and the pump asks for {1}: it draws vapour, rattles and wears. Raise the tank, shorten and widen the suction hose, cooler coolant, or a pressure cap.':
    '{0} is there and the pump asks for {1}: it draws vapour, rattles and wears. Raise the tank, shorten and widen the suction hose, cooler coolant, or a pressure cap.',
  '{0} is there and the pump asks for {1}: little is in hand. Raise the tank, shorten and widen the suction hose, cooler coolant, or a pressure cap.':
    '{0} is there and the pump asks for {1}: little is in hand. Raise the tank, shorten and widen the suction hose, cooler coolant, or a pressure cap.',
  'at least {0} (watch), {1} (stop)': 'at least {0} (watch), {1} (stop)',
  'With the cap open {0} is left, enough for the pump.':
    'With the cap open {0} is left, enough for the pump.',
  'With the cap open or leaking only {0} is left: the pump depends on its cap. Replace the cap when in doubt, and never open it hot.':
    'With the cap open or leaking only {0} is left: the pump depends on its cap. Replace the cap when in doubt, and never open it hot.',
  'The inlet stands at {0} with the cap open: nothing is sucked in.':
    'The inlet stands at {0} with the cap open: nothing is sucked in.',
  'The inlet stands at {0} with the cap open: it collapses soft hose and draws air past clamps and seals. Spring-supported hose, a wider bore, a higher tank.':
    'The inlet stands at {0} with the cap open: it collapses soft hose and draws air past clamps and seals. Spring-supported hose, a wider bore, a higher tank.',
  'The inlet stands at {0} with the cap open: it draws air past clamps and seals. Spring-supported hose, a wider bore, a higher tank.':
    'The inlet stands at {0} with the cap open: it draws air past clamps and seals. Spring-supported hose, a wider bore, a higher tank.',
  'Suction hose: v = {0}, Δp = (f L/d + ΣK) ρv²/2 = {1}':
    'Suction hose: v = {0}, Δp = (f L/d + ΣK) ρv²/2 = {1}',
  'p_air({0}) = {1}, with the cap {2}; p_v({3}) = {4}':
    'p_air({0}) = {1}, with the cap {2}; p_v({3}) = {4}',
  'With the cap open: {0}': 'With the cap open: {0}',
  // calculators/cooling/radiator-and-fan.ts
  'Core width': 'Core width',
  'Of the finned face, without tanks.': 'Of the finned face, without tanks.',
  'Core height': 'Core height',
  'Share of road speed at the face': 'Share of road speed at the face',
  'Sealed duct 25 to 35 %, buried behind slats 8 %.':
    'Sealed duct 25 to 35 %, buried behind slats 8 %.',
  '10 to 20 % reach the face behind a classic grille':
    '10 to 20 % reach the face behind a classic grille',
  Cases: 'Cases',
  case: 'case',
  'At least the slow laden hill on the hottest day, a crawl, and parked if the charger is cooled too.':
    'At least the slow laden hill on the hottest day, a crawl, and parked if the charger is cooled too.',
  'All heat that goes into the coolant, held for long.':
    'All heat that goes into the coolant, held for long.',
  'Road speed': 'Road speed',
  'Zero for parked.': 'Zero for parked.',
  Fan: 'Fan',
  'Whether the fan runs.': 'Whether the fan runs.',
  on: 'on',
  off: 'off',
  'Fan’s face velocity': 'Fan’s face velocity',
  'Its air flow through this core over the face area. Left out: no fan.':
    'Its air flow through this core over the face area. Left out: no fan.',
  'Natural draught': 'Natural draught',
  'Face velocity at a standstill without fan.': 'Face velocity at a standstill without fan.',
  'warm air rises slowly through an upright core (model)':
    'warm air rises slowly through an upright core (model)',
  'Outside air': 'Outside air',
  'The hottest day it has to work on.': 'The hottest day it has to work on.',
  'a hot summer day': 'a hot summer day',
  'Of the highest hill: thin air carries less.': 'Of the highest hill: thin air carries less.',
  'sea level; 1000 m takes 11 % of the air': 'sea level; 1000 m takes 11 % of the air',
  'Air density, if worked out': 'Air density, if worked out',
  'From the air density page, at the outside temperature above; wins over the altitude.':
    'From the air density page, at the outside temperature above; wins over the altitude.',
  'Hot air drawn back in': 'Hot air drawn back in',
  'How much warmer than outside the air enters the core; a conductance measured against outside air has it in already.':
    'How much warmer than outside the air enters the core; a conductance measured against outside air has it in already.',
  'edges sealed, nothing hot in front': 'edges sealed, nothing hot in front',
  'In the loop as built: a bucket test beats a box.':
    'In the loop as built: a bucket test beats a box.',
  'Part’s inlet limit': 'Part’s inlet limit',
  'Hottest coolant its sheet allows into the part that comes first behind the radiator.':
    'Hottest coolant its sheet allows into the part that comes first behind the radiator.',
  'Core’s heat transfer': 'Core’s heat transfer',
  'Per face area, at a face velocity of 1 m/s.': 'Per face area, at a face velocity of 1 m/s.',
  'a core 25 to 32 mm thick (model, not measured)':
    'a core 25 to 32 mm thick (model, not measured)',
  'Measured conductance': 'Measured conductance',
  'Heat over the difference between coolant into the radiator and outside air, at this flow.':
    'Heat over the difference between coolant into the radiator and outside air, at this flow.',
  'Road speed of that measurement': 'Road speed of that measurement',
  'When the air at the face was not measured, fan off.':
    'When the air at the face was not measured, fan off.',
  'Face velocity of that measurement': 'Face velocity of that measurement',
  'Measured at the face, or the fan’s at a standstill; wins over the road speed.':
    'Measured at the face, or the fan’s at a standstill; wins over the road speed.',
  'The glycol’s share and whether it is by volume or mass are not given: enter both.':
    'The glycol’s share and whether it is by volume or mass are not given: enter both.',
  'No properties are known for this coolant: enter a mix of at most 60 %.':
    'No properties are known for this coolant: enter a mix of at most 60 %.',
  'A measured conductance says nothing without the air it was measured in: enter the face velocity, or the road speed.':
    'A measured conductance says nothing without the air it was measured in: enter the face velocity, or the road speed.',
  'The measured conductance is more than air and coolant can carry at the speed and flow entered: more air reaches the core, or a reading is wrong. Check both.':
    'The measured conductance is more than air and coolant can carry at the speed and flow entered: more air reaches the core, or a reading is wrong. Check both.',
  'Radiator, and whether it needs a fan': 'Radiator, and whether it needs a fan',
  'How hot the coolant gets that reaches the part behind the radiator, on each kind of road, and whether a fan is needed.':
    'How hot the coolant gets that reaches the part behind the radiator, on each kind of road, and whether a fan is needed.',
  'Case by case': 'Case by case',
  Case: 'Case',
  'Face velocity': 'Face velocity',
  'Core’s UA': 'Core’s UA',
  Effectiveness: 'Effectiveness',
  'Into radiator': 'Into radiator',
  'Into part': 'Into part',
  'Worst case': 'Worst case',
  'Coolant into the part, worst case': 'Coolant into the part, worst case',
  'Coolant into the radiator, worst case': 'Coolant into the radiator, worst case',
  'Conductance, worst case': 'Conductance, worst case',
  'Core’s UA, worst case': 'Core’s UA, worst case',
  'Effectiveness, worst case': 'Effectiveness, worst case',
  'In hand below the limit': 'In hand below the limit',
  'Fan needed': 'Fan needed',
  'Face velocity that keeps 10 K in hand': 'Face velocity that keeps 10 K in hand',
  'Coolant’s capacity rate': 'Coolant’s capacity rate',
  'Density of the entering air': 'Density of the entering air',
  'Steady state: every case is held until nothing changes any more. Heat stored by a hill and felt in the crawl after it is not in.':
    'Steady state: every case is held until nothing changes any more. Heat stored by a hill and felt in the crawl after it is not in.',
  'The part comes straight behind the radiator; each part in between warms the coolant further.':
    'The part comes straight behind the radiator; each part in between warms the coolant further.',
  'UA is a model until measured; a measured one is scaled with face velocity by the same exponent.':
    'UA is a model until measured; a measured one is scaled with face velocity by the same exponent.',
  'A conductance measured at a road speed may mean a poorer core or less air: each case takes the worse.':
    'A conductance measured at a road speed may mean a poorer core or less air: each case takes the worse.',
  'Fan and road air do not add, the stronger counts; a fan that stands still holds air back, which is not in.':
    'Fan and road air do not add, the stronger counts; a fan that stands still holds air back, which is not in.',
  'Face velocities above 8 m/s are taken as 8 m/s; coolant properties are those at 50 °C.':
    'Face velocities above 8 m/s are taken as 8 m/s; coolant properties are those at 50 °C.',
  'Coolant into the part': 'Coolant into the part',
  'Fan in air that is good already': 'Fan in air that is good already',
  'Measured or model': 'Measured or model',
  'Within the model': 'Within the model',
  'yes, but no face velocity up to 8 m/s is enough for {0}: more core or coolant flow':
    'yes, but no face velocity up to 8 m/s is enough for {0}: more core or coolant flow',
  'measure first, or fit one for {0}': 'measure first, or fit one for {0}',
  'yes, for {0}': 'yes, for {0}',
  'A case runs the fan, whose face velocity is not given: enter it or switch the fan off there.':
    'A case runs the fan, whose face velocity is not given: enter it or switch the fan off there.',
  'In the case “{0}” the coolant reaches the part at {1}, limit {2}':
    'In the case “{0}” the coolant reaches the part at {1}, limit {2}',
  'No face velocity up to {0} is enough: take a larger core or more coolant flow.':
    'No face velocity up to {0} is enough: take a larger core or more coolant flow.',
  'A face velocity of {0} would keep {1} in hand.':
    'A face velocity of {0} would keep {1} in hand.',
  'the core has {0} of the model’s UA': 'the core has {0} of the model’s UA',
  'either the core has {0} of the model’s UA or {1} of the road speed reach it; each case takes the worse':
    'either the core has {0} of the model’s UA or {1} of the road speed reach it; each case takes the worse',
  'The inlet temperature cannot be told until the inputs below are put right.':
    'The inlet temperature cannot be told until the inputs below are put right.',
  '{0}: {1} in hand.': '{0}: {1} in hand.',
  '{0}: only {1} in hand. Measure on the worst hill, or fit a fan.':
    '{0}: only {1} in hand. Measure on the worst hill, or fit a fan.',
  '{0}: too hot.': '{0}: too hot.',
  'at most {0}, {1} below the limit (watch); below {2} (stop)':
    'at most {0}, {1} below the limit (watch); below {2} (stop)',
  'A case runs a fan that is not described: enter its face velocity.':
    'A case runs a fan that is not described: enter its face velocity.',
  'No fan is fitted.': 'No fan is fitted.',
  '{0} of the road speed reach the face already: a fan in the way may make it worse at speed. Prove it with yarn tufts.':
    '{0} of the road speed reach the face already: a fan in the way may make it worse at speed. Prove it with yarn tufts.',
  '{0} of the road speed reach the face: the fan takes little away.':
    '{0} of the road speed reach the face: the fan takes little away.',
  'with a fan at most 25 % of the road speed (watch)':
    'with a fan at most 25 % of the road speed (watch)',
  'There is no conductance to judge.': 'There is no conductance to judge.',
  'The conductance is measured: {0}.': 'The conductance is measured: {0}.',
  'UA is a model; with 40 % less conductance the part would still get {0}.':
    'UA is a model; with 40 % less conductance the part would still get {0}.',
  'UA is a model; with 40 % less conductance the part would get {0}. Measure heat and temperatures on the road and enter the conductance.':
    'UA is a model; with 40 % less conductance the part would get {0}. Measure heat and temperatures on the road and enter the conductance.',
  'unmeasured: with 40 % less conductance below {0} (watch)':
    'unmeasured: with 40 % less conductance below {0} (watch)',
  'All that the model needs is given.': 'All that the model needs is given.',
  'coolant, fan and measurement fully described': 'coolant, fan and measurement fully described',
  'Cannot tell: see the checks.': 'Cannot tell: see the checks.',
  'Worst case: {0}': 'Worst case: {0}',
  'C_c = ρ_c c_c V̇ = {0} at {1}': 'C_c = ρ_c c_c V̇ = {0} at {1}',
  'UA from the measured {0}, scaled to {1}: {2}': 'UA from the measured {0}, scaled to {1}: {2}',
  'Coolant into the part, with the worst case’s heat':
    'Coolant into the part, with the worst case’s heat',
  'no fan': 'no fan',
  'fan on': 'fan on',
  'part’s limit': 'part’s limit',
  'The slower the road, the hotter the coolant; a fan holds it down from standstill on.':
    'The slower the road, the hotter the coolant; a fan holds it down from standstill on.',
  // calculators/hazard-names.ts
  'This is arithmetic. Local codes and licensed practice decide; the work must be inspected and tested before use.':
    'This is arithmetic. Local codes and licensed practice decide; the work must be inspected and tested before use.',
  'High voltage': 'High voltage',
  'Stored energy': 'Stored energy',
  'Arc and short circuit': 'Arc and short circuit',
  'Burns and arcs below 60 V': 'Burns and arcs below 60 V',
  'Moving vehicle': 'Moving vehicle',
  'Unexpected start and runaway': 'Unexpected start and runaway',
  'Loss of drive in traffic': 'Loss of drive in traffic',
  Poison: 'Poison',
  'Hot liquid under pressure': 'Hot liquid under pressure',
  'Coolant on high voltage': 'Coolant on high voltage',
  'Wiring fire': 'Wiring fire',
  'Cell fire and gas': 'Cell fire and gas',
  'Toxic gas and re-ignition': 'Toxic gas and re-ignition',
  'Hydrogen and acid': 'Hydrogen and acid',
  'Welding and grinding': 'Welding and grinding',
  Crush: 'Crush',
  'Loss of brakes': 'Loss of brakes',
  'Fan starts by itself': 'Fan starts by itself',
  'Loss of the 12 V supply': 'Loss of the 12 V supply',
  'Insulation tester': 'Insulation tester',
  'Earth and residual current protection': 'Earth and residual current protection',
  'Motor overspeed': 'Motor overspeed',
  'Not an approval': 'Not an approval',
  'Dry running': 'Dry running',
  'Range is not a promise': 'Range is not a promise',
  // calculators/hazards.ts
  'More than 60 V DC or 30 V AC is on these conductors.':
    'More than 60 V DC or 30 V AC is on these conductors.',
  'Touching them kills.': 'Touching them kills.',
  'Treat them as live until you have measured them dead at the terminals with a CAT III 1000 V meter. Wear tested Class 0 gloves with leather over them. Never work alone.':
    'Treat them as live until you have measured them dead at the terminals with a CAT III 1000 V meter. Wear tested Class 0 gloves with leather over them. Never work alone.',
  'Controller capacitors, and a permanent-magnet motor that is turned, put voltage back on the terminals after isolation.':
    'Controller capacitors, and a permanent-magnet motor that is turned, put voltage back on the terminals after isolation.',
  'Terminals believed dead give a fatal shock.': 'Terminals believed dead give a fatal shock.',
  'Isolate, wait, then measure at the terminals before touching; keep the driven wheels still.':
    'Isolate, wait, then measure at the terminals before touching; keep the driven wheels still.',
  'A dropped spanner across cells or busbars passes thousands of amperes.':
    'A dropped spanner across cells or busbars passes thousands of amperes.',
  'Molten metal, burns and fire.': 'Molten metal, burns and fire.',
  'Insulated tools, no rings or watch, and a cover over everything you are not working on.':
    'Insulated tools, no rings or watch, and a cover over everything you are not working on.',
  'A 12 V battery or a few cells will weld a ring or a tool.':
    'A 12 V battery or a few cells will weld a ring or a tool.',
  'Deep burns and fire, without any shock to warn you.':
    'Deep burns and fire, without any shock to warn you.',
  'Take the earth lead off first, cover the positive post, take off rings and watch.':
    'Take the earth lead off first, cover the positive post, take off rings and watch.',
  'A powered vehicle can drive off while you test it.':
    'A powered vehicle can drive off while you test it.',
  'People are run over or crushed.': 'People are run over or crushed.',
  'Driven wheels off the ground, chocks on the others, a second person at the isolator.':
    'Driven wheels off the ground, chocks on the others, a second person at the isolator.',
  'A failed controller or a throttle fault can command full torque; an electric motor gives no sound that it is ready.':
    'A failed controller or a throttle fault can command full torque; an electric motor gives no sound that it is ready.',
  'The vehicle moves without a driver who expects it.':
    'The vehicle moves without a driver who expects it.',
  'Prove the interlocks and the emergency isolator before first power; keep the isolator in reach.':
    'Prove the interlocks and the emergency isolator before first power; keep the isolator in reach.',
  'A cut-back, a trip or a blown fuse takes the drive away without notice.':
    'A cut-back, a trip or a blown fuse takes the drive away without notice.',
  'The vehicle stops where others do not expect it.':
    'The vehicle stops where others do not expect it.',
  'Fit a warning before the limit is reached, and keep lamps and brakes working without the drive.':
    'Fit a warning before the limit is reached, and keep lamps and brakes working without the drive.',
  'Ethylene glycol tastes sweet.': 'Ethylene glycol tastes sweet.',
  'Spoonfuls kill pets and children.': 'Spoonfuls kill pets and children.',
  'Wipe up every drip, cap and label the containers, hand the old coolant to a disposal point.':
    'Wipe up every drip, cap and label the containers, hand the old coolant to a disposal point.',
  'A warm loop is under pressure, and so is a loop on test air.':
    'A warm loop is under pressure, and so is a loop on test air.',
  'Scalds, and hoses or caps that fly off.': 'Scalds, and hoses or caps that fly off.',
  'Open the cap cold. Use a regulator and a relief valve on any test air, and stay below the weakest rating.':
    'Open the cap cold. Use a regulator and a relief valve on any test air, and stay below the weakest rating.',
  'Coolant conducts.': 'Coolant conducts.',
  'A leak onto a joint or connector bridges insulation: shock and fire.':
    'A leak onto a joint or connector bridges insulation: shock and fire.',
  'Route hoses so that no drip can reach a high-voltage joint; test isolation after every leak, before power.':
    'Route hoses so that no drip can reach a high-voltage joint; test isolation after every leak, before power.',
  'The fuse protects the wire, not the load.': 'The fuse protects the wire, not the load.',
  'A wire behind too large a fuse burns before the fuse opens.':
    'A wire behind too large a fuse burns before the fuse opens.',
  'Put the fuse at the source end, never larger than the wire carries; never fit a larger fuse to stop it blowing.':
    'Put the fuse at the source end, never larger than the wire carries; never fit a larger fuse to stop it blowing.',
  'Damaged, overcharged or frozen-charged lithium cells burn and give off toxic gas.':
    'Damaged, overcharged or frozen-charged lithium cells burn and give off toxic gas.',
  'A fire that restarts and cannot be smothered.': 'A fire that restarts and cannot be smothered.',
  'Charge in sight, with a smoke detector, outdoors or beside a clear exit; never charge below the cell sheet’s limit.':
    'Charge in sight, with a smoke detector, outdoors or beside a clear exit; never charge below the cell sheet’s limit.',
  'A pack that has burnt or vented gives off toxic gas and can light again hours or days later.':
    'A pack that has burnt or vented gives off toxic gas and can light again hours or days later.',
  'Poisoning and a second fire.': 'Poisoning and a second fire.',
  'Keep away and upwind, call the fire service and say that it is a lithium battery, keep it outdoors and apart afterwards.':
    'Keep away and upwind, call the fire service and say that it is a lithium battery, keep it outdoors and apart afterwards.',
  'A lead-acid battery on charge gives off hydrogen and holds sulphuric acid.':
    'A lead-acid battery on charge gives off hydrogen and holds sulphuric acid.',
  'Explosion, burns, blindness.': 'Explosion, burns, blindness.',
  'Ventilate, no sparks or flame near it, eye protection, connect and disconnect with the charger off.':
    'Ventilate, no sparks or flame near it, eye protection, connect and disconnect with the charger off.',
  'Sparks reach fuel, vapour in an empty tank, and cells.':
    'Sparks reach fuel, vapour in an empty tank, and cells.',
  'Explosion and fire.': 'Explosion and fire.',
  'Fuel system and cells out of the building first, battery disconnected, extinguisher and a fire watch afterwards.':
    'Fuel system and cells out of the building first, battery disconnected, extinguisher and a fire watch afterwards.',
  'A vehicle on a jack, or a pack on a hoist, falls.':
    'A vehicle on a jack, or a pack on a hoist, falls.',
  'Crushed limbs or death.': 'Crushed limbs or death.',
  'Rated stands on firm ground, rated lifting gear, nobody beneath. Measure ride height with the vehicle on its wheels.':
    'Rated stands on firm ground, rated lifting gear, nobody beneath. Measure ride height with the vehicle on its wheels.',
  'Added mass, a missing vacuum source or regeneration changes how the vehicle stops.':
    'Added mass, a missing vacuum source or regeneration changes how the vehicle stops.',
  'It does not stop in the distance the driver expects.':
    'It does not stop in the distance the driver expects.',
  'Have the brakes tested at the new mass, on a roller, before the road.':
    'Have the brakes tested at the new mass, on a roller, before the road.',
  'A thermostat or a controller starts the fan without notice, also with the key off.':
    'A thermostat or a controller starts the fan without notice, also with the key off.',
  'Cut fingers.': 'Cut fingers.',
  'Pull the fan fuse before reaching in; fit a guard.':
    'Pull the fan fuse before reaching in; fit a guard.',
  'Lamps, wipers and the contactor all hang on the 12 V side.':
    'Lamps, wipers and the contactor all hang on the 12 V side.',
  'Losing it loses drive and lights together, at night, in traffic.':
    'Losing it loses drive and lights together, at night, in traffic.',
  'Keep a 12 V battery, and fit a low-voltage warning the driver can see.':
    'Keep a 12 V battery, and fit a low-voltage warning the driver can see.',
  'An insulation tester puts 500 V or more on everything it is connected to.':
    'An insulation tester puts 500 V or more on everything it is connected to.',
  'Shock, and destroyed electronics.': 'Shock, and destroyed electronics.',
  'Do not use it on a connected controller or battery management unless the maker allows it. Test wet as well as dry.':
    'Do not use it on a connected controller or battery management unless the maker allows it. Test wet as well as dry.',
  'A vehicle on charge is mains equipment.': 'A vehicle on charge is mains equipment.',
  'A broken earth leaves the body live.': 'A broken earth leaves the body live.',
  'Prove the earth from plug to body before each new outlet; use an outlet with residual current protection that local rules ask for.':
    'Prove the earth from plug to body before each new outlet; use an outlet with residual current protection that local rules ask for.',
  'A rotor beyond its rated speed bursts.': 'A rotor beyond its rated speed bursts.',
  'Fragments leave the housing.': 'Fragments leave the housing.',
  'Limit the speed in the controller, and mind the change down.':
    'Limit the speed in the controller, and mind the change down.',
  'No figure here makes a vehicle legal.': 'No figure here makes a vehicle legal.',
  'Rules differ by place and change.': 'Rules differ by place and change.',
  'Ask the inspector and the insurer before cutting metal, and note the date of the answer.':
    'Ask the inspector and the insurer before cutting metal, and note the date of the answer.',
  'A circulation pump is cooled and lubricated by its coolant.':
    'A circulation pump is cooled and lubricated by its coolant.',
  'It is ruined within minutes when run dry.': 'It is ruined within minutes when run dry.',
  'Fill and bleed before the first power; feed it from a tank above it.':
    'Fill and bleed before the first power; feed it from a tank above it.',
  'Wind, cold, tyres and speed move it by a third.':
    'Wind, cold, tyres and speed move it by a third.',
  'You are left at the roadside.': 'You are left at the roadside.',
  'Keep a fifth in hand until you have measured your own route in winter.':
    'Keep a fifth in hand until you have measured your own route in winter.',
  // calculators/project/cost-rollup.ts
  'survey and planning': 'survey and planning',
  'motor and controller': 'motor and controller',
  'strip-out': 'strip-out',
  'adapter and mounts': 'adapter and mounts',
  'battery pack and boxes': 'battery pack and boxes',
  'high-voltage parts': 'high-voltage parts',
  cooling: 'cooling',
  '12 V side': '12 V side',
  charging: 'charging',
  'brakes, springs, tyres': 'brakes, springs, tyres',
  'cabin and instruments': 'cabin and instruments',
  'tools and safety gear': 'tools and safety gear',
  'tests, approval, insurance': 'tests, approval, insurance',
  sundries: 'sundries',
  Items: 'Items',
  'All in one currency; for a sum in another enter it at the day’s rate and write rate and date in the name.':
    'All in one currency; for a sum in another enter it at the day’s rate and write rate and date in the name.',
  'What it is, new or used.': 'What it is, new or used.',
  Phase: 'Phase',
  'Where it belongs.': 'Where it belongs.',
  Status: 'Status',
  'Ordered means you cannot get out of it any more.':
    'Ordered means you cannot get out of it any more.',
  planned: 'planned',
  'ordered, not paid': 'ordered, not paid',
  paid: 'paid',
  'already owned, not counted': 'already owned, not counted',
  'sold, money in': 'sold, money in',
  Cost: 'Cost',
  'For one, with delivery and duty.': 'For one, with delivery and duty.',
  'Cells, metres, pieces.': 'Cells, metres, pieces.',
  one: 'one',
  'Set aside': 'Set aside',
  'For what was forgotten, broken or came out dearer.':
    'For what was forgotten, broken or came out dearer.',
  'Set aside as a share': 'Set aside as a share',
  'Of what is still to pay, where no sum is set aside.':
    'Of what is still to pay, where no sum is set aside.',
  Budget: 'Budget',
  'All you mean to spend.': 'All you mean to spend.',
  'Usable energy': 'Usable energy',
  'Of the pack.': 'Of the pack.',
  'Measured if you can.': 'Measured if you can.',
  'Cost by phase': 'Cost by phase',
  'Adds up what is paid, ordered and planned by phase, and says whether enough is set aside.':
    'Adds up what is paid, ordered and planned by phase, and says whether enough is set aside.',
  'All together, less what was sold': 'All together, less what was sold',
  Paid: 'Paid',
  'Ordered, not paid': 'Ordered, not paid',
  Planned: 'Planned',
  'Money in': 'Money in',
  'Still to pay': 'Still to pay',
  'Set aside, of what is still to pay': 'Set aside, of what is still to pay',
  'Left of the budget, with all set aside spent': 'Left of the budget, with all set aside spent',
  'For each usable kWh': 'For each usable kWh',
  'For each unit of range': 'For each unit of range',
  'Dearest phase': 'Dearest phase',
  'By phase': 'By phase',
  Ordered: 'Ordered',
  Together: 'Together',
  'Of all spending': 'Of all spending',
  'In money of the day each item was bought or priced: old prices are not brought up to date.':
    'In money of the day each item was bought or priced: old prices are not brought up to date.',
  'What was already owned, and your hours, are not counted.':
    'What was already owned, and your hours, are not counted.',
  'Keep receipts private: they carry names and addresses.':
    'Keep receipts private: they carry names and addresses.',
  'Enough set aside': 'Enough set aside',
  'Within the budget': 'Within the budget',
  'Nothing is left to pay on this list.': 'Nothing is left to pay on this list.',
  '{0} is set aside for {1} still to pay, {2}': '{0} is set aside for {1} still to pay, {2}',
  '{0}: put {1} more aside, or plan less. Brakes, tyres, tests and tools are what lists forget.':
    '{0}: put {1} more aside, or plan less. Brakes, tyres, tests and tools are what lists forget.',
  'No budget is given.': 'No budget is given.',
  '{0} of {1} would be left.': '{0} of {1} would be left.',
  'With all that is set aside spent you would be {0} over {1}.':
    'With all that is set aside spent you would be {0} over {1}.',
  'The list alone is over {0}; with what is set aside by {1}. Decide now what to leave out.':
    'The list alone is over {0}; with what is set aside by {1}. Decide now what to leave out.',
  'at least 15 % of what is still to pay (watch), 5 % (stop)':
    'at least 15 % of what is still to pay (watch), 5 % (stop)',
  'list and what is set aside at most the budget (watch)':
    'list and what is set aside at most the budget (watch)',
  'Phase, in the order of the table': 'Phase, in the order of the table',
  phases: 'phases',
  'Where the money goes: the highest point is where saving is worth the trouble.':
    'Where the money goes: the highest point is where saving is worth the trouble.',
  // calculators/project/prediction-check.ts
  Predicted: 'Predicted',
  'In any unit; in a note write 1 here and the measured one as a ratio, {bucket / loop.flow}.':
    'In any unit; in a note write 1 here and the measured one as a ratio, {bucket / loop.flow}.',
  Measured: 'Measured',
  'In the same unit as the prediction.': 'In the same unit as the prediction.',
  'Instrument, ±': 'Instrument, ±',
  'Of the reading: its accuracy and how well you read it.':
    'Of the reading: its accuracy and how well you read it.',
  'a common workshop meter, read once': 'a common workshop meter, read once',
  'Prediction, ±': 'Prediction, ±',
  'Of the prediction, from what went into it.': 'Of the prediction, from what went into it.',
  'Work back': 'Work back',
  'Which part’s figure the reading corrects.': 'Which part’s figure the reading corrects.',
  'conductance of a radiator, from heat and temperatures':
    'conductance of a radiator, from heat and temperatures',
  'resistance of a coolant loop, from a bucket': 'resistance of a coolant loop, from a bucket',
  'resistance of a pack, from sag': 'resistance of a pack, from sag',
  'only the comparison is asked for': 'only the comparison is asked for',
  'Into the coolant while you measured.': 'Into the coolant while you measured.',
  'Heat, ±': 'Heat, ±',
  'Losses are seldom known better.': 'Losses are seldom known better.',
  'heat from losses': 'heat from losses',
  'Coolant into the radiator': 'Coolant into the radiator',
  'When it had stopped changing.': 'When it had stopped changing.',
  Air: 'Air',
  'In front of the radiator, in the shade.': 'In front of the radiator, in the shade.',
  'Each temperature, ±': 'Each temperature, ±',
  'Of the thermometer.': 'Of the thermometer.',
  'a digital probe': 'a digital probe',
  Bucket: 'Bucket',
  'Volume caught from the return.': 'Volume caught from the return.',
  'Volume, ±': 'Volume, ±',
  'A marked bucket; weigh it for better.': 'A marked bucket; weigh it for better.',
  'a marked bucket': 'a marked bucket',
  In: 'In',
  'Stopwatch.': 'Stopwatch.',
  'Stopwatch, ±': 'Stopwatch, ±',
  'Start and stop by hand.': 'Start and stop by hand.',
  'by hand': 'by hand',
  'Pressure across the loop': 'Pressure across the loop',
  'A gauge across the pump, or its curve at that flow.':
    'A gauge across the pump, or its curve at that flow.',
  'Pressure, ±': 'Pressure, ±',
  'A curve from a sheet is seldom better.': 'A curve from a sheet is seldom better.',
  'from a curve': 'from a curve',
  Sag: 'Sag',
  'Voltage lost when the current steps up, read within seconds.':
    'Voltage lost when the current steps up, read within seconds.',
  'Sag, ±': 'Sag, ±',
  'Two readings: 1.4 times the meter’s last digit or accuracy.':
    'Two readings: 1.4 times the meter’s last digit or accuracy.',
  'two readings of a 0.1 V display': 'two readings of a 0.1 V display',
  'Step of current': 'Step of current',
  'Current after less current before.': 'Current after less current before.',
  'Current, ±': 'Current, ±',
  'A clamp meter on DC drifts: zero it.': 'A clamp meter on DC drifts: zero it.',
  'a clamp meter': 'a clamp meter',
  'Radiator and fan, heat-soak: enter it as the measured conductance':
    'Radiator and fan, heat-soak: enter it as the measured conductance',
  'Pump and loop, heat and rise, radiator: enter the measured flow':
    'Pump and loop, heat and rise, radiator: enter the measured flow',
  'Cell current and sag, main fuse, cell heating': 'Cell current and sag, main fuse, cell heating',
  'Prediction and measurement': 'Prediction and measurement',
  'How far a prediction was off, whether the instrument can tell, and what the reading makes of the part’s figure.':
    'How far a prediction was off, whether the instrument can tell, and what the reading makes of the part’s figure.',
  'Measured over or under the prediction': 'Measured over or under the prediction',
  '± of that': '± of that',
  'Radiator conductance': 'Radiator conductance',
  'Radiator conductance, ±': 'Radiator conductance, ±',
  'Flow by the bucket': 'Flow by the bucket',
  'Flow by the bucket, ±': 'Flow by the bucket, ±',
  'Loop resistance, kPa for each (L/min)²': 'Loop resistance, kPa for each (L/min)²',
  'Loop resistance, ±': 'Loop resistance, ±',
  'Pack resistance': 'Pack resistance',
  'Pack resistance, ±': 'Pack resistance, ±',
  'Work again': 'Work again',
  'All ± are of the same kind (all limits, or all standard uncertainties) and independent of each other: they add as squares.':
    'All ± are of the same kind (all limits, or all standard uncertainties) and independent of each other: they add as squares.',
  'Predicted and measured under the same conditions: load, speed, air, state of charge.':
    'Predicted and measured under the same conditions: load, speed, air, state of charge.',
  'Radiator: everything steady, thermostat and fan as they were. Loop: turbulent flow, so the pressure goes with the square.':
    'Radiator: everything steady, thermostat and fan as they were. Loop: turbulent flow, so the pressure goes with the square.',
  'Pack: within seconds of the step; after minutes the sag holds more than resistance.':
    'Pack: within seconds of the step; after minutes the sag holds more than resistance.',
  'Two thermometers are taken as independent; one thermometer used twice is better than shown.':
    'Two thermometers are taken as independent; one thermometer used twice is better than shown.',
  Prediction: 'Prediction',
  'What is worked back': 'What is worked back',
  'A prediction of nothing cannot be compared: enter it.':
    'A prediction of nothing cannot be compared: enter it.',
  'Measured is {0} under the prediction, ± {1}': 'Measured is {0} under the prediction, ± {1}',
  'Measured is {0} over the prediction, ± {1}': 'Measured is {0} over the prediction, ± {1}',
  '{0}: the ± is larger than the difference, so this instrument cannot tell. Read again with a better one, or more often.':
    '{0}: the ± is larger than the difference, so this instrument cannot tell. Read again with a better one, or more often.',
  '{0}: put the reading in the prediction’s place and work again what rests on it.':
    '{0}: put the reading in the prediction’s place and work again what rests on it.',
  '{0}: model or instrument is wrong. Read again another way before you build on either.':
    '{0}: model or instrument is wrong. Read again another way before you build on either.',
  'Nothing is worked back.': 'Nothing is worked back.',
  'Enter heat, coolant and air; the coolant must be warmer than the air.':
    'Enter heat, coolant and air; the coolant must be warmer than the air.',
  'Enter bucket, seconds and the pressure across the loop.':
    'Enter bucket, seconds and the pressure across the loop.',
  'Enter sag and step of current.': 'Enter sag and step of current.',
  'The radiator gives off {0} ± {1}': 'The radiator gives off {0} ± {1}',
  'The loop takes {0} ± {1} kPa for each (L/min)²':
    'The loop takes {0} ± {1} kPa for each (L/min)²',
  'The pack has {0} ± {1}': 'The pack has {0} ± {1}',
  '{0}. Work again: {1}.': '{0}. Work again: {1}.',
  '{0}: ± {1}. Try both ends in what rests on it. {2}.':
    '{0}: ± {1}. Try both ends in what rests on it. {2}.',
  '{0}: ± {1} tells too little. Measure at more load, longer, or with a better instrument.':
    '{0}: ± {1} tells too little. Measure at more load, longer, or with a better instrument.',
  'within 10 % (watch), 25 % (stop), and wider than its ±':
    'within 10 % (watch), 25 % (stop), and wider than its ±',
  'known to ± 10 % (watch), ± 25 % (cannot tell)': 'known to ± 10 % (watch), ± 25 % (cannot tell)',
  // calculators/ratio-fields.ts
  Ratio: 'Ratio',
  'Motor turns for one turn of its output.': 'Motor turns for one turn of its output.',
  'Axle ratio': 'Axle ratio',
  'Turns of the shaft for one turn of the wheels.':
    'Turns of the shaft for one turn of the wheels.',
  // calculators/tables/aircraft-ampacity.ts
  'Current capacity and resistance of copper wire in bundles':
    'Current capacity and resistance of copper wire in bundles',
  Gauge: 'Gauge',
  '105 °C wire': '105 °C wire',
  '150 °C wire': '150 °C wire',
  '200 °C wire': '200 °C wire',
  'Resistance at 20 °C, tin-plated, per 1000 ft': 'Resistance at 20 °C, tin-plated, per 1000 ft',
  'Area in circular mils': 'Area in circular mils',
  // calculators/tables/aircraft-fuses.ts
  'DC wire and circuit protector chart': 'DC wire and circuit protector chart',
  'Circuit breaker': 'Circuit breaker',
  // calculators/tables/awg.ts
  'American wire gauge, solid copper': 'American wire gauge, solid copper',
  Diameter: 'Diameter',
  Area: 'Area',
  'Resistance at 20 °C': 'Resistance at 20 °C',
  'Diameter is 0.005 in × 92 to the power (36 − n)/39, n being 0 to −3 for 1/0 to 4/0. Stranded wire resists 1 to 3 % more.':
    'Diameter is 0.005 in × 92 to the power (36 − n)/39, n being 0 to −3 for 1/0 to 4/0. Stranded wire resists 1 to 3 % more.',
  // calculators/tables/blade-fuse-ratings.ts
  'Ratings of blade fuses': 'Ratings of blade fuses',
  'Mini (F)': 'Mini (F)',
  'Medium (C)': 'Medium (C)',
  'Maxi (E)': 'Maxi (E)',
  'For 32 V DC and a fault of about 1000 A: never on a traction pack.':
    'For 32 V DC and a fault of about 1000 A: never on a traction pack.',
  // calculators/tables/blade-fuse-times.ts
  'Opening times of blade fuses': 'Opening times of blade fuses',
  'Of its rating': 'Of its rating',
  'Not before': 'Not before',
  'Mini open by': 'Mini open by',
  'Medium open by': 'Medium open by',
  'Maxi open by': 'Maxi open by',
  'At 110 % it carries for 100 h or more. The longest times and the 0.02 s at 600 % are the least sure; a maxi is slower than “not before”.':
    'At 110 % it carries for 100 h or more. The longest times and the 0.02 s at 600 % are the least sure; a maxi is slower than “not before”.',
  // calculators/tables/boat-ampacity.ts
  'Allowable amperage of conductors in boats, under 50 V':
    'Allowable amperage of conductors in boats, under 50 V',
  '60 °C insulation': '60 °C insulation',
  'In an engine space (50 °C) the value is multiplied by the factor of note 1.':
    'In an engine space (50 °C) the value is multiplied by the factor of note 1.',
  // calculators/tables/boat-engine-space.ts
  'Amperage left in an engine space at 50 °C': 'Amperage left in an engine space at 50 °C',
  Factor: 'Factor',
  '0.85 at 105 °C was read in a wire chart that quotes the rule; the other factors are recalled. All six are within 0.01 of √((T − 50)/(T − 30)), what a conductor’s heating leaves at 50 instead of 30 °C.':
    '0.85 at 105 °C was read in a wire chart that quotes the rule; the other factors are recalled. All six are within 0.01 of √((T − 50)/(T − 30)), what a conductor’s heating leaves at 50 instead of 30 °C.',
  // calculators/tables/bolts-iso-898-1.ts
  'Steel bolts, coarse thread: stress area, proof and breaking load':
    'Steel bolts, coarse thread: stress area, proof and breaking load',
  Thread: 'Thread',
  Pitch: 'Pitch',
  'Stress area': 'Stress area',
  'Proof load 4.6': 'Proof load 4.6',
  'Proof load 5.8': 'Proof load 5.8',
  'Proof load 8.8': 'Proof load 8.8',
  'Proof load 10.9': 'Proof load 10.9',
  'Proof load 12.9': 'Proof load 12.9',
  'Breaking load 8.8': 'Breaking load 8.8',
  'Breaking load 10.9': 'Breaking load 10.9',
  'Breaking load 12.9': 'Breaking load 12.9',
  'At room temperature. Hot-dip galvanised M8 and M10 with undersized threads hold less (ISO 10684, annex A).':
    'At room temperature. Hot-dip galvanised M8 and M10 with undersized threads hold less (ISO 10684, annex A).',
  // calculators/tables/bolts-sae-j429.ts
  'Inch bolts, coarse thread: stress area and proof load':
    'Inch bolts, coarse thread: stress area and proof load',
  'Threads per inch': 'Threads per inch',
  'Proof load grade 2': 'Proof load grade 2',
  'Proof load grade 5': 'Proof load grade 5',
  'Proof load grade 8': 'Proof load grade 8',
  'The three loads of 1/2-13 were hard to read in the copy seen; they are proof stress times area, rounded as the others are.':
    'The three loads of 1/2-13 were hard to read in the copy seen; they are proof stress times area, rounded as the others are.',
  // calculators/tables/breaker-ratings.ts
  'Ratings of circuit breakers': 'Ratings of circuit breakers',
  'North America': 'North America',
  // calculators/tables/bundle-diameters.ts
  'Bundles of equal wires': 'Bundles of equal wires',
  'Wires, up to': 'Wires, up to',
  'Bundle over one wire': 'Bundle over one wire',
  // calculators/tables/charge-cable-codes.ts
  'Resistor codes of charge cables': 'Resistor codes of charge cables',
  Resistor: 'Resistor',
  'Counts from': 'Counts from',
  to: 'to',
  'Single phase': 'Single phase',
  'Three phases': 'Three phases',
  'Below 75 Ω is a fault; above 2200 Ω no cable is seen. On a boundary the calculators take the smaller current.':
    'Below 75 Ω is a fault; above 2200 Ω no cable is seen. On a boundary the calculators take the smaller current.',
  // calculators/tables/clearance-holes.ts
  'Clearance holes and tap drills': 'Clearance holes and tap drills',
  Fine: 'Fine',
  Medium: 'Medium',
  Coarse: 'Coarse',
  'Tap drill': 'Tap drill',
  // calculators/tables/flexible-copper.ts
  'Copper conductors: the most they may resist': 'Copper conductors: the most they may resist',
  'Nominal area': 'Nominal area',
  'Class 1 and 2, plain': 'Class 1 and 2, plain',
  'Class 5, plain': 'Class 5, plain',
  'Class 5, tinned': 'Class 5, tinned',
  'Read in four copies that agree. The calculators use class 5, plain, for flexible cable.':
    'Read in four copies that agree. The calculators use class 5, plain, for flexible cable.',
  // calculators/tables/gland-holes.ts
  'Holes for metric cable glands': 'Holes for metric cable glands',
  Gland: 'Gland',
  Hole: 'Hole',
  'Thinnest cable, usually': 'Thinnest cable, usually',
  'Thickest cable, usually': 'Thickest cable, usually',
  // calculators/tables/hose-bend-radii.ts
  'Least bend radius of wire-braided rubber hose': 'Least bend radius of wire-braided rubber hose',
  Size: 'Size',
  'Least bend radius': 'Least bend radius',
  'Approved there for hydraulic, coolant, fuel and oil lines.':
    'Approved there for hydraulic, coolant, fuel and oil lines.',
  // calculators/tables/hose-clamps.ts
  'Worm-drive hose clamps': 'Worm-drive hose clamps',
  'Closes to': 'Closes to',
  'Opens to': 'Opens to',
  'Band about 14 mm wide. Metric clamps (DIN 3017) have other ranges, stamped on them.':
    'Band about 14 mm wide. Metric clamps (DIN 3017) have other ranges, stamped on them.',
  // calculators/tables/loom-wire.ts
  'PVC loom cable, continuous': 'PVC loom cable, continuous',
  Carries: 'Carries',
  Resistance: 'Resistance',
  'A “6 mm” cable of this trade is named by its outside: 3 mm is 0.85 mm², 4 mm 1.85 mm², 5 mm 2.9 mm², 6 mm 4.6 mm².':
    'A “6 mm” cable of this trade is named by its outside: 3 mm is 0.85 mm², 4 mm 1.85 mm², 5 mm 2.9 mm², 6 mm 4.6 mm².',
  // calculators/tables/nut-factors.ts
  dry: 'dry',
  zinc: 'zinc',
  oiled: 'oiled',
  phosphate: 'phosphate',
  grease: 'grease',
  stainless: 'stainless',
  'Nut factor K by surface': 'Nut factor K by surface',
  Surface: 'Surface',
  'K used': 'K used',
  Lowest: 'Lowest',
  Highest: 'Highest',
  // calculators/tables/standard-atmosphere.ts
  'Standard atmosphere: temperature, pressure and density at an altitude':
    'Standard atmosphere: temperature, pressure and density at an altitude',
  Density: 'Density',
  'Share of sea level’s density': 'Share of sea level’s density',
  'Dry air. The computed values agree with a library’s table of the same standard to 0.01 %.':
    'Dry air. The computed values agree with a library’s table of the same standard to 0.01 %.',
  // calculators/tables/traction-fuse-ratings.ts
  'Ratings of traction fuses': 'Ratings of traction fuses',
  Rating: 'Rating',
  From: 'From',
  'makers’ lists': 'makers’ lists',
  // calculators/tables/tyre-sizes.ts
  'Tyre sizes: free diameter and revolutions': 'Tyre sizes: free diameter and revolutions',
  'Free diameter': 'Free diameter',
  'Free circumference': 'Free circumference',
  'Revolutions per km, free': 'Revolutions per km, free',
  'Revolutions per km, rolling at 97 %': 'Revolutions per km, rolling at 97 %',
  'A worn tyre is up to 16 mm smaller. A tyre under load rolls at 96 to 97 % of its free circumference (recalled).':
    'A worn tyre is up to 16 mm smaller. A tyre under load rolls at 96 to 97 % of its free circumference (recalled).',
  // calculators/tables/vapour-pressure.ts
  'Vapour pressure of water': 'Vapour pressure of water',
  'Boils at': 'Boils at',
  'Agrees with IAPWS-IF97 to 0.05 %. Glycol and water boil at a lower pressure than water alone.':
    'Agrees with IAPWS-IF97 to 0.05 %. Glycol and water boil at a lower pressure than water alone.',
  // calculators/tables/vehicle-wire.ts
  'Road-vehicle cable: the most it may resist': 'Road-vehicle cable: the most it may resist',
  'From memory, and not used by any calculator: they work with IEC 60228 class 5, which allows a little more.':
    'From memory, and not used by any calculator: they work with IEC 60228 class 5, which allows a little more.',
  // calculators/threads.ts
  'SAE grade 2, no lines on the head': 'SAE grade 2, no lines on the head',
  'SAE grade 5, three lines': 'SAE grade 5, three lines',
  'SAE grade 8, six lines': 'SAE grade 8, six lines',
  'stainless A2-70 or A4-70': 'stainless A2-70 or A4-70',
  // calculators/traction/cell-current.ts
  'The steady power is not given.': 'The steady power is not given.',
  'The steady current is not given.': 'The steady current is not given.',
  'The peak power is not given.': 'The peak power is not given.',
  'The peak current is not given.': 'The peak current is not given.',
  'Cell current, sag and heat': 'Cell current, sag and heat',
  'Works out current, voltage under load and heat of the cells, from a current or a power, and holds them against the cell’s sheet.':
    'Works out current, voltage under load and heat of the cells, from a current or a power, and holds them against the cell’s sheet.',
  'Cell capacity': 'Cell capacity',
  'Rated.': 'Rated.',
  'Cell voltage at rest': 'Cell voltage at rest',
  'At the charge you ask about; nearly empty is the hard case.':
    'At the charge you ask about; nearly empty is the hard case.',
  'Lowest cell voltage': 'Lowest cell voltage',
  'Under load, from its sheet.': 'Under load, from its sheet.',
  'Cell resistance': 'Cell resistance',
  'DC, over ten seconds or so: an AC reading at 1 kHz is about half of it.':
    'DC, over ten seconds or so: an AC reading at 1 kHz is about half of it.',
  'Resistance is for': 'Resistance is for',
  'The cell temperature it was read at.': 'The cell temperature it was read at.',
  'sheets give it at room temperature': 'sheets give it at room temperature',
  'Cell temperature': 'Cell temperature',
  'Of the hottest cell while driving, or of a cold start.':
    'Of the hottest cell while driving, or of a cold start.',
  'Hottest allowed': 'Hottest allowed',
  'When discharging, from its sheet.': 'When discharging, from its sheet.',
  'sheets end at 55 to 60 °C': 'sheets end at 55 to 60 °C',
  'Links, cable, contactors and fuse': 'Links, cable, contactors and fuse',
  'Everything else up to the controller.': 'Everything else up to the controller.',
  'only the cells are asked about': 'only the cells are asked about',
  'The drive asks for': 'The drive asks for',
  'A controller limits battery current; a hill asks for power.':
    'A controller limits battery current; a hill asks for power.',
  'a current': 'a current',
  'a power': 'a power',
  'Steady current': 'Steady current',
  'For minutes and longer.': 'For minutes and longer.',
  'The controller’s battery limit.': 'The controller’s battery limit.',
  'Steady power': 'Steady power',
  'At the controller’s terminals, for minutes and longer.':
    'At the controller’s terminals, for minutes and longer.',
  'Peak power': 'Peak power',
  'At the controller’s terminals.': 'At the controller’s terminals.',
  'Peak lasts': 'Peak lasts',
  'The longest in use.': 'The longest in use.',
  'one long overtaking or hill': 'one long overtaking or hill',
  'Cell’s steady limit, in capacities an hour': 'Cell’s steady limit, in capacities an hour',
  'The C-rate on its sheet: 1 empties it in an hour.':
    'The C-rate on its sheet: 1 empties it in an hour.',
  'Cell’s pulse limit, in capacities an hour': 'Cell’s pulse limit, in capacities an hour',
  'The pulse C-rate on its sheet.': 'The pulse C-rate on its sheet.',
  'Pulse allowed for': 'Pulse allowed for',
  'Beside the pulse limit on the sheet.': 'Beside the pulse limit on the sheet.',
  'Pack voltage at rest': 'Pack voltage at rest',
  'Steady current drawn': 'Steady current drawn',
  'Steady, capacities an hour': 'Steady, capacities an hour',
  'Peak current drawn': 'Peak current drawn',
  'Peak, capacities an hour': 'Peak, capacities an hour',
  'Sag at peak': 'Sag at peak',
  'Sag of voltage at rest': 'Sag of voltage at rest',
  'Voltage at peak': 'Voltage at peak',
  'Cell voltage at peak': 'Cell voltage at peak',
  'Heat, steady': 'Heat, steady',
  'Heat at peak': 'Heat at peak',
  'Power at peak': 'Power at peak',
  'Largest power there is': 'Largest power there is',
  'Steady current the cells allow': 'Steady current the cells allow',
  'Current that brings a cell to its lowest voltage':
    'Current that brings a cell to its lowest voltage',
  'One resistance stands for all: it grows with the length of a pulse, with cold and age and near empty.':
    'One resistance stands for all: it grows with the length of a pulse, with cold and age and near empty.',
  'Cells in parallel are taken to share alike; an unlike one carries more.':
    'Cells in parallel are taken to share alike; an unlike one carries more.',
  'Discharge only. Charging and regenerating have lower limits, and below the sheet’s temperature none.':
    'Discharge only. Charging and regenerating have lower limits, and below the sheet’s temperature none.',
  'Resistance at this temperature': 'Resistance at this temperature',
  'The cells cannot give {0}: the most there is, at half voltage, is {1}.':
    'The cells cannot give {0}: the most there is, at half voltage, is {1}.',
  'steady power': 'steady power',
  'peak power': 'peak power',
  'steady current': 'steady current',
  'peak current': 'peak current',
  'steady limit in capacities an hour': 'steady limit in capacities an hour',
  'pulse limit': 'pulse limit',
  'lowest cell voltage': 'lowest cell voltage',
  'cell voltage at rest': 'cell voltage at rest',
  'Steady, the cells give {0}, {1}; they may give {2}':
    'Steady, the cells give {0}, {1}; they may give {2}',
  '{0}: lower the limit or take {1} in parallel.': '{0}: lower the limit or take {1} in parallel.',
  'The peak of {0} is {1}': 'The peak of {0} is {1}',
  '{0}, within the steady limit.': '{0}, within the steady limit.',
  '{0}, above the steady limit; what pulse the cell allows, and for how long, is not given.':
    '{0}, above the steady limit; what pulse the cell allows, and for how long, is not given.',
  '{0} for {1}': '{0} for {1}',
  '{0} for {1}, within the pulse of {2}: let the cells rest between.':
    '{0} for {1}, within the pulse of {2}: let the cells rest between.',
  '{0} for {1}, beyond the pulse of {2}: lower the limit.':
    '{0} for {1}, beyond the pulse of {2}: lower the limit.',
  'At peak the voltage sags by {0}, {1}': 'At peak the voltage sags by {0}, {1}',
  '{0}: power and range suffer.': '{0}: power and range suffer.',
  '{0}: too small a pack for this peak.': '{0}: too small a pack for this peak.',
  'A cell is at its lowest voltage, {0}, with {1}; the peak is {2}':
    'A cell is at its lowest voltage, {0}, with {1}; the peak is {2}',
  '{0}: the management opens the contactor on the road.':
    '{0}: the management opens the contactor on the road.',
  'The cell is at {0}': 'The cell is at {0}',
  '{0}, above the {1} of its sheet: cut back until it is cooler.':
    '{0}, above the {1} of its sheet: cut back until it is cooler.',
  '{0}: it ages fast. Cool it or ask less.': '{0}: it ages fast. Cool it or ask less.',
  'The resistance was read near this temperature or colder.':
    'The resistance was read near this temperature or colder.',
  'The resistance is for {0}, the cell is at {1}: cold cells have several times as much. Use the figure for the cold.':
    'The resistance is for {0}, the cell is at {1}: cold cells have several times as much. Use the figure for the cold.',
  'at most {0} (stop)': 'at most {0} (stop)',
  'at most {0} (watch), the sheet’s pulse and its time (stop)':
    'at most {0} (watch), the sheet’s pulse and its time (stop)',
  'at most 8 % (watch), 15 % (stop)': 'at most 8 % (watch), 15 % (stop)',
  'at least {0} a cell (stop)': 'at least {0} a cell (stop)',
  'read no more than {0} above the cell’s temperature (watch)':
    'read no more than {0} above the cell’s temperature (watch)',
  'I = (U − √(U² − 4 R P)) / 2R with P = {0}: {1}; P_max = U² / 4R = {2}':
    'I = (U − √(U² − 4 R P)) / 2R with P = {0}: {1}; P_max = U² / 4R = {2}',
  'C = I / (N_p q) = {0} / {1} = {2} an hour': 'C = I / (N_p q) = {0} / {1} = {2} an hour',
  'Voltage under load': 'Voltage under load',
  'Pack voltage': 'Pack voltage',
  'at the controller': 'at the controller',
  'steady limit of the cells': 'steady limit of the cells',
  peak: 'peak',
  'The peak must lie left of the lowest cell voltage.':
    'The peak must lie left of the lowest cell voltage.',
  // calculators/traction/cell-heating.ts
  'Cell warming and cold start': 'Cell warming and cold start',
  'Follows the temperature of the cells over a drive, and says from when they may be charged and what current they give cold.':
    'Follows the temperature of the cells over a drive, and says from when they may be charged and what current they give cold.',
  'Cell mass': 'Cell mass',
  'One cell.': 'One cell.',
  'Specific heat of a cell': 'Specific heat of a cell',
  'Lithium cells are measured at 0.8 to 1.13 kJ/(kg·K).':
    'Lithium cells are measured at 0.8 to 1.13 kJ/(kg·K).',
  'the middle of what is published': 'the middle of what is published',
  'Box loses to the air': 'Box loses to the air',
  'About 5 to 8 W/K a square metre for bare steel, 1 W/K with 30 mm of foam.':
    'About 5 to 8 W/K a square metre for bare steel, 1 W/K with 30 mm of foam.',
  'a bare box of about a square metre (model)': 'a bare box of about a square metre (model)',
  'Air round the box': 'Air round the box',
  'Outside air for a box under the bed.': 'Outside air for a box under the bed.',
  'Cells at the start': 'Cells at the start',
  'After a night outside, that of the air.': 'After a night outside, that of the air.',
  'RMS current of the drive': 'RMS current of the drive',
  'Root mean square of the pack current: more than its mean.':
    'Root mean square of the pack current: more than its mean.',
  'Drive lasts': 'Drive lasts',
  'Without a stop.': 'Without a stop.',
  'DC; used when there are no readings by temperature.':
    'DC; used when there are no readings by temperature.',
  'Resistance by temperature': 'Resistance by temperature',
  reading: 'reading',
  'From the sheet or your own test; instead of the single figure.':
    'From the sheet or your own test; instead of the single figure.',
  'Soaked through.': 'Soaked through.',
  'DC, at that temperature.': 'DC, at that temperature.',
  'Charging allowed from': 'Charging allowed from',
  'From the cell’s sheet.': 'From the cell’s sheet.',
  'the limit of common iron phosphate sheets': 'the limit of common iron phosphate sheets',
  'Discharging allowed from': 'Discharging allowed from',
  Regenerating: 'Regenerating',
  'It charges the cells.': 'It charges the cells.',
  'held back while the cells are cold': 'held back while the cells are cold',
  'from the start': 'from the start',
  'At the start.': 'At the start.',
  'Under load, cold, from its sheet.': 'Under load, cold, from its sheet.',
  'Peak current pulling away': 'Peak current pulling away',
  'Heat capacity of the cells': 'Heat capacity of the cells',
  'Heat at the start': 'Heat at the start',
  'Cells on arrival': 'Cells on arrival',
  'Hottest on the way': 'Hottest on the way',
  'Coldest on the way': 'Coldest on the way',
  Rise: 'Rise',
  'Time constant of the box': 'Time constant of the box',
  'Charging allowed after': 'Charging allowed after',
  'Most current at the start': 'Most current at the start',
  'All cells are one lump at one temperature. The middle of a tight block is warmer, a cell at the wall colder: charging goes by the coldest, cutting back by the hottest.':
    'All cells are one lump at one temperature. The middle of a tight block is warmer, a cell at the wall colder: charging goes by the coldest, cutting back by the hottest.',
  'Heat is I²r alone; heat of reaction and of the links is left out. Between readings the resistance follows a straight line in its logarithm, outside them it is held.':
    'Heat is I²r alone; heat of reaction and of the links is left out. Between readings the resistance follows a straight line in its logarithm, outside them it is held.',
  'Without readings one resistance stands for the whole drive: cold cells then warm faster than is said here.':
    'Without readings one resistance stands for the whole drive: cold cells then warm faster than is said here.',
  'Discharging at the start': 'Discharging at the start',
  'Regenerating while cold': 'Regenerating while cold',
  'Charging on arrival': 'Charging on arrival',
  'Pulling away cold': 'Pulling away cold',
  'Resistance over the drive': 'Resistance over the drive',
  'On paper the cells pass {0}: this current is far too high for them.':
    'On paper the cells pass {0}: this current is far too high for them.',
  'lowest temperature for discharging': 'lowest temperature for discharging',
  'lowest for charging': 'lowest for charging',
  'The cells start at {0}; they may be discharged from {1}':
    'The cells start at {0}; they may be discharged from {1}',
  '{0}: warm them first.': '{0}: warm them first.',
  'The cells are never below {0}: charging is allowed.':
    'The cells are never below {0}: charging is allowed.',
  'The cells are at {0} on the way, below {1}; whether the drive regenerates then is not said.':
    'The cells are at {0} on the way, below {1}; whether the drive regenerates then is not said.',
  'Regenerating charges cells at {0}, below {1}: they plate lithium, unseen and for ever. Hold it back until they are warm.':
    'Regenerating charges cells at {0}, below {1}: they plate lithium, unseen and for ever. Hold it back until they are warm.',
  'Nothing charges the cells while they are below {0}.':
    'Nothing charges the cells while they are below {0}.',
  'On arrival the cells are at {0}; they may be charged from {1}':
    'On arrival the cells are at {0}; they may be charged from {1}',
  '{0}: do not plug in before they are warmed. The charger must refuse by itself.':
    '{0}: do not plug in before they are warmed. The charger must refuse by itself.',
  '{0}: the coldest cell may be below. Plug in at once, at a low current.':
    '{0}: the coldest cell may be below. Plug in at once, at a low current.',
  'The cells reach {0}': 'The cells reach {0}',
  '{0}, above the {1} of their sheet: ask less or cool them.':
    '{0}, above the {1} of their sheet: ask less or cool them.',
  '{0}: they age fast, and the middle ones are hotter.':
    '{0}: they age fast, and the middle ones are hotter.',
  'What current the cells give cold is not known: give voltage at rest, lowest voltage and peak.':
    'What current the cells give cold is not known: give voltage at rest, lowest voltage and peak.',
  'No resistance is known near {0}: measure it cold.':
    'No resistance is known near {0}: measure it cold.',
  'At {0} the cells give {1} before one is too low; pulling away takes {2}':
    'At {0} the cells give {1} before one is too low; pulling away takes {2}',
  '{0}: go gently at first.': '{0}: go gently at first.',
  '{0}: the management opens the contactor. Lower the limit while cold.':
    '{0}: the management opens the contactor. Lower the limit while cold.',
  'The resistance is known over the whole drive.': 'The resistance is known over the whole drive.',
  'The resistance is not known from {0} to {1}: it is held at the nearest reading. Give it by temperature.':
    'The resistance is not known from {0} to {1}: it is held at the nearest reading. Give it by temperature.',
  'none below {0} (stop)': 'none below {0} (stop)',
  'at least {0} above {1} (watch), at least {2} (stop)':
    'at least {0} above {1} (watch), at least {2} (stop)',
  'at most 80 % (watch), 100 % (stop) of what the cells give cold':
    'at most 80 % (watch), 100 % (stop) of what the cells give cold',
  'a reading within {0} of start and arrival, or readings round them (watch)':
    'a reading within {0} of start and arrival, or readings round them (watch)',
  'T_end = T_air + Q / UA + (T_0 − T_air − Q / UA) e^(−t/τ) with Q / UA = {0}, τ = {1}, t = {2}: {3}':
    'T_end = T_air + Q / UA + (T_0 − T_air − Q / UA) e^(−t/τ) with Q / UA = {0}, τ = {1}, t = {2}: {3}',
  'C dT/dt = Q(T) − UA (T − T_air) followed for {0} in {1} steps: {2}':
    'C dT/dt = Q(T) − UA (T − T_air) followed for {0} in {1} steps: {2}',
  'Cells over the drive': 'Cells over the drive',
  cells: 'cells',
  'charging from here': 'charging from here',
  'hottest allowed': 'hottest allowed',
  air: 'air',
  'Below the lower line nothing may charge the cells.':
    'Below the lower line nothing may charge the cells.',
  // calculators/traction/cell-spread.ts
  'Cell spread and capacity': 'Cell spread and capacity',
  'Compares the cells of a pack at rest, on charge and on discharge, and finds the weakest and what capacity is left.':
    'Compares the cells of a pack at rest, on charge and on discharge, and finds the weakest and what capacity is left.',
  Cells: 'Cells',
  cell: 'cell',
  'Read within minutes of each other with one meter.':
    'Read within minutes of each other with one meter.',
  Cell: 'Cell',
  'Its number in the pack.': 'Its number in the pack.',
  'At rest': 'At rest',
  'An hour or more after the last current.': 'An hour or more after the last current.',
  'On charge': 'On charge',
  'Near the end of a charge.': 'Near the end of a charge.',
  'On discharge': 'On discharge',
  'Under a steady load, all at the same moment.': 'Under a steady load, all at the same moment.',
  Capacity: 'Capacity',
  'Measured, full to empty.': 'Measured, full to empty.',
  'Rated capacity': 'Rated capacity',
  'From the cell’s sheet, new.': 'From the cell’s sheet, new.',
  'Lowest allowed': 'Lowest allowed',
  'Highest allowed': 'Highest allowed',
  Chemistry: 'Chemistry',
  'Decides how much a voltage at rest tells.': 'Decides how much a voltage at rest tells.',
  another: 'another',
  'Spread at rest': 'Spread at rest',
  'Spread on charge': 'Spread on charge',
  'Spread on discharge': 'Spread on discharge',
  'Weakest cell': 'Weakest cell',
  'Highest cell': 'Highest cell',
  'Capacity of the smallest cell': 'Capacity of the smallest cell',
  'Of rated': 'Of rated',
  'Off the mean at rest': 'Off the mean at rest',
  'Capacity of rated': 'Capacity of rated',
  'Spreads hold for cells at one temperature, read within minutes of each other.':
    'Spreads hold for cells at one temperature, read within minutes of each other.',
  'On charge and discharge the spread grows with the current: compare like with like, year by year.':
    'On charge and discharge the spread grows with the current: compare like with like, year by year.',
  'Cells in parallel count as one.': 'Cells in parallel count as one.',
  'Within the sheet': 'Within the sheet',
  'A reading that tells': 'A reading that tells',
  'Spread under current': 'Spread under current',
  'Capacity left': 'Capacity left',
  'lowest voltage allowed': 'lowest voltage allowed',
  highest: 'highest',
  'Every reading lies between {0} and {1}.': 'Every reading lies between {0} and {1}.',
  '“{0}” is outside {1} to {2}: take the pack out of use and look at that cell; one that was run flat must not be charged again.':
    '“{0}” is outside {1} to {2}: take the pack out of use and look at that cell; one that was run flat must not be charged again.',
  'At rest the cells lie within {0}': 'At rest the cells lie within {0}',
  '{0}: balance them, and read again in a month.': '{0}: balance them, and read again in a month.',
  '{0}: balance them before the next drive; if it comes back, a cell or a joint is bad.':
    '{0}: balance them before the next drive; if it comes back, a cell or a joint is bad.',
  'Most cells are in the flat middle of iron phosphate, where they read alike whatever they hold: read them nearly full or nearly empty.':
    'Most cells are in the flat middle of iron phosphate, where they read alike whatever they hold: read them nearly full or nearly empty.',
  'At these voltages a difference shows.': 'At these voltages a difference shows.',
  'Under current the cells lie within {0}': 'Under current the cells lie within {0}',
  '{0}: find the weak cell or joint; {1} first.': '{0}: find the weak cell or joint; {1} first.',
  'Not every cell is read both on charge and on discharge.':
    'Not every cell is read both on charge and on discharge.',
  '{0}: look at {1} and its joints.': '{0}: look at {1} and its joints.',
  'Measured capacities, or the rated one, are missing.':
    'Measured capacities, or the rated one, are missing.',
  '{0} holds {1}, {2} of rated; the pack holds no more':
    '{0} holds {1}, {2} of rated; the pack holds no more',
  '{0}: plan for another cell.': '{0}: plan for another cell.',
  '{0}: replace it.': '{0}: replace it.',
  '{0} to {1} (stop)': '{0} to {1} (stop)',
  'at most 10 mV (watch), 30 mV (stop)': 'at most 10 mV (watch), 30 mV (stop)',
  'iron phosphate: most cells outside 3.25 to 3.34 V (watch)':
    'iron phosphate: most cells outside 3.25 to 3.34 V (watch)',
  'at most 50 mV (watch), 100 mV (stop)': 'at most 50 mV (watch), 100 mV (stop)',
  'at least 80 % of rated (watch), 70 % (stop)': 'at least 80 % of rated (watch), 70 % (stop)',
  'on charge {0}, on discharge {1}': 'on charge {0}, on discharge {1}',
  'Cells at rest': 'Cells at rest',
  'Cell, in the order of the list': 'Cell, in the order of the list',
  'Off the mean': 'Off the mean',
  'A cell that lies alone is the one to look at.': 'A cell that lies alone is the one to look at.',
  // calculators/traction/charge-pilot.ts
  'A: no vehicle seen': 'A: no vehicle seen',
  'B: connected, not asking': 'B: connected, not asking',
  'C: asking for current': 'C: asking for current',
  'D: asking, ventilation needed': 'D: asking, ventilation needed',
  'Charge pilot and cable code': 'Charge pilot and cable code',
  'Reads the duty of the control pilot and the resistor of the cable, and holds the charger’s setting against the least of pilot, cable and breaker.':
    'Reads the duty of the control pilot and the resistor of the cable, and holds the charger’s setting against the least of pilot, cable and breaker.',
  'Pilot duty': 'Pilot duty',
  'Share of the time the 1 kHz pilot is positive.':
    'Share of the time the 1 kHz pilot is positive.',
  'A loose cable carries a code; the code of a fixed one is not for the vehicle.':
    'A loose cable carries a code; the code of a fixed one is not for the vehicle.',
  'loose, plugged in at both ends': 'loose, plugged in at both ends',
  'fixed to the station': 'fixed to the station',
  'Proximity to earth': 'Proximity to earth',
  'PP to PE of the loose cable, unplugged.': 'PP to PE of the loose cable, unplugged.',
  'Pilot, positive peak': 'Pilot, positive peak',
  'CP to PE on a scope or pilot tester; a plain meter reads its mean.':
    'CP to PE on a scope or pilot tester; a plain meter reads its mean.',
  Phases: 'Phases',
  'Of the supply.': 'Of the supply.',
  three: 'three',
  'most chargers of conversions': 'most chargers of conversions',
  'Between live conductors: 120, 230, 240, or 400 V for three phases.':
    'Between live conductors: 120, 230, 240, or 400 V for three phases.',
  'common single-phase supply': 'common single-phase supply',
  Breaker: 'Breaker',
  'Of the station’s circuit.': 'Of the station’s circuit.',
  'Charger is set to': 'Charger is set to',
  'What it draws from each phase.': 'What it draws from each phase.',
  'Pilot allows': 'Pilot allows',
  'Cable allows': 'Cable allows',
  'Breaker allows for hours': 'Breaker allows for hours',
  'Charger may draw': 'Charger may draw',
  'Limited by': 'Limited by',
  'In hand': 'In hand',
  'Power then': 'Power then',
  'Vehicle state': 'Vehicle state',
  'D in per cent. From 3 to 7 % the station speaks digitally and its current is not in the duty.':
    'D in per cent. From 3 to 7 % the station speaks digitally and its current is not in the duty.',
  'Below 3 % and above 97 % nothing may be drawn; from 7 to 8 % the signal is not defined.':
    'Below 3 % and above 97 % nothing may be drawn; from 7 to 8 % the signal is not defined.',
  'The proximity of the North American inlet tells that the plug is latched, not a current: take its cable as fixed.':
    'The proximity of the North American inlet tells that the plug is latched, not a current: take its cable as fixed.',
  'Cable code': 'Cable code',
  'Charger setting': 'Charger setting',
  'the pilot': 'the pilot',
  'the cable': 'the cable',
  'the breaker': 'the breaker',
  'The duty of the pilot is not read.': 'The duty of the pilot is not read.',
  'A duty of {0} allows {1}.': 'A duty of {0} allows {1}.',
  'A duty of {0} asks for digital communication: a charger without it must draw nothing.':
    'A duty of {0} asks for digital communication: a charger without it must draw nothing.',
  'A duty of {0} allows no charging: the station is not ready or faulty.':
    'A duty of {0} allows no charging: the station is not ready or faulty.',
  'The cable is fixed: the pilot speaks for it.': 'The cable is fixed: the pilot speaks for it.',
  'The cable’s resistor is not measured.': 'The cable’s resistor is not measured.',
  '{0} is below every code: a short between PP and PE.':
    '{0} is below every code: a short between PP and PE.',
  '{0} is above every code: no cable, or a broken contact.':
    '{0} is above every code: no cable, or a broken contact.',
  '{0} is read as {1}, {2}': '{0} is read as {1}, {2}',
  '{0}, but is more than a tenth off: clean the contacts, or find out what is in that plug.':
    '{0}, but is more than a tenth off: clean the contacts, or find out what is in that plug.',
  'The pilot’s voltage is not read.': 'The pilot’s voltage is not read.',
  'The pilot’s peak of {0} is no state of the standard: look for a short to earth, a bad diode or a wrong resistor.':
    'The pilot’s peak of {0} is no state of the standard: look for a short to earth, a bad diode or a wrong resistor.',
  'The pilot’s peak of {0} is state {1}.': 'The pilot’s peak of {0} is state {1}.',
  'The pilot’s peak of {0} is state {1}; most stations give no current then.':
    'The pilot’s peak of {0} is state {1}; most stations give no current then.',
  'The charger is set to {0} and may draw {1}: set it down.':
    'The charger is set to {0} and may draw {1}: set it down.',
  'Whether {0} is allowed is not known: read pilot and cable.':
    'Whether {0} is allowed is not known: read pilot and cable.',
  'The charger is set to {0} and may draw {1}.': 'The charger is set to {0} and may draw {1}.',
  '8 to 97 % (stop)': '8 to 97 % (stop)',
  '75 to 2200 Ω (stop), within 10 % of 100, 220, 680 or 1500 Ω (watch)':
    '75 to 2200 Ω (stop), within 10 % of 100, 220, 680 or 1500 Ω (watch)',
  'within 1 V of 9 or 6 V (watch at 12 and 3 V, else stop)':
    'within 1 V of 9 or 6 V (watch at 12 and 3 V, else stop)',
  'at most pilot, cable and 80 % of the breaker (stop)':
    'at most pilot, cable and 80 % of the breaker (stop)',
  'no duty read': 'no duty read',
  'duty {0}: {1}': 'duty {0}: {1}',
  'least of pilot {0}, cable {1}, breaker {2}: {3}':
    'least of pilot {0}, cable {1}, breaker {2}: {3}',
  fixed: 'fixed',
  'Pilot duty and current': 'Pilot duty and current',
  available: 'available',
  charger: 'charger',
  'breaker, for hours': 'breaker, for hours',
  read: 'read',
  'The charger’s line must lie below the point that was read.':
    'The charger’s line must lie below the point that was read.',
  // calculators/traction/charge-time.ts
  'Charge time and supply': 'Charge time and supply',
  'Works out how long a charge takes and what it draws, and holds it against breaker, outlet and pack.':
    'Works out how long a charge takes and what it draws, and holds it against breaker, outlet and pack.',
  'Pack energy': 'Pack energy',
  'Nominal, all of it.': 'Nominal, all of it.',
  'Charge in it now.': 'Charge in it now.',
  To: 'To',
  'Where you stop.': 'Where you stop.',
  'Charger takes from the supply': 'Charger takes from the supply',
  'Its input, not its output.': 'Its input, not its output.',
  'Efficiency, supply to cells': 'Efficiency, supply to cells',
  'Charger, cable and cells.': 'Charger, cable and cells.',
  'common for a charger of some kilowatts': 'common for a charger of some kilowatts',
  'Last stretch at falling current': 'Last stretch at falling current',
  'Added for topping and balancing when you charge full.':
    'Added for topping and balancing when you charge full.',
  'there is hardly any below 95 %': 'there is hardly any below 95 %',
  'Of the charger.': 'Of the charger.',
  'Current on the charger’s plate': 'Current on the charger’s plate',
  'Counts for the breaker if it is higher than the power says.':
    'Counts for the breaker if it is higher than the power says.',
  'Of the circuit, with nothing else on it.': 'Of the circuit, with nothing else on it.',
  'Electrical code': 'Electrical code',
  'Decides breaker sizes and how the 80 % is judged.':
    'Decides breaker sizes and how the 80 % is judged.',
  'North American': 'North American',
  'IEC countries': 'IEC countries',
  'its rule for hours is the stricter': 'its rule for hours is the stricter',
  'Connected by': 'Connected by',
  'What stands between breaker and vehicle.': 'What stands between breaker and vehicle.',
  'a charging station wired in': 'a charging station wired in',
  'a socket rated for the whole circuit': 'a socket rated for the whole circuit',
  'a British 13 A socket': 'a British 13 A socket',
  'a British 13 A socket marked EV': 'a British 13 A socket marked EV',
  'a continental household socket': 'a continental household socket',
  'Extension lead': 'Extension lead',
  'Between outlet and vehicle.': 'Between outlet and vehicle.',
  'one or more': 'one or more',
  'Charger stops at': 'Charger stops at',
  'Its end voltage as it is set.': 'Its end voltage as it is set.',
  'Pack voltage, full': 'Pack voltage, full',
  'Cells in series times their full voltage.': 'Cells in series times their full voltage.',
  'Price of energy': 'Price of energy',
  'At the meter.': 'At the meter.',
  'Charge takes': 'Charge takes',
  'From the meter': 'From the meter',
  'Supply current': 'Supply current',
  'Of the breaker': 'Of the breaker',
  'Breaker carries for hours': 'Breaker carries for hours',
  'In hand there': 'In hand there',
  'Smallest breaker for it': 'Smallest breaker for it',
  'Heat to carry off': 'Heat to carry off',
  'Constant power; near full the current falls and the last stretch has to be added. Power factor one.':
    'Constant power; near full the current falls and the last stretch has to be added. Power factor one.',
  'Outlet figures are for hours; the local code and a licensed electrician decide.':
    'Outlet figures are for hours; the local code and a licensed electrician decide.',
  'Cells below their charging temperature must not be charged at all.':
    'Cells below their charging temperature must not be charged at all.',
  'From and to': 'From and to',
  'Breaker for hours': 'Breaker for hours',
  'Outlet for hours': 'Outlet for hours',
  'Charger matches the pack': 'Charger matches the pack',
  'Charging goes up: {0} to {1} is no charge.': 'Charging goes up: {0} to {1} is no charge.',
  'The charge takes {0}.': 'The charge takes {0}.',
  'The charger draws {0}, {1} of the {2} breaker': 'The charger draws {0}, {1} of the {2} breaker',
  'turn the charger down.': 'turn the charger down.',
  'it takes a {0} circuit, or a charger turned down to {1}.':
    'it takes a {0} circuit, or a charger turned down to {1}.',
  '{0}; how long is not known.': '{0}; how long is not known.',
  '{0} for {1}: {2}': '{0} for {1}: {2}',
  '{0}, and it is warm: {1}': '{0}, and it is warm: {1}',
  'It is not said what the vehicle is plugged into.':
    'It is not said what the vehicle is plugged into.',
  'The connection is rated for the whole circuit.':
    'The connection is rated for the whole circuit.',
  'A household socket carries {0} for hours; the charger draws {1}':
    'A household socket carries {0} for hours; the charger draws {1}',
  '{0}: it burns its contacts. Turn the charger down.':
    '{0}: it burns its contacts. Turn the charger down.',
  '{0}: it is not made for this. Feel the plug every time.':
    '{0}: it is not made for this. Feel the plug every time.',
  'It is not said whether an extension lead is used.':
    'It is not said whether an extension lead is used.',
  'There is no extension lead.': 'There is no extension lead.',
  'An extension lead overheats over hours, rolled up or at its joints: plug in directly.':
    'An extension lead overheats over hours, rolled up or at its joints: plug in directly.',
  'Whether the charger is set for this pack is not known: give both full voltages.':
    'Whether the charger is set for this pack is not known: give both full voltages.',
  'The charger stops at {0}, the pack is full at {1}':
    'The charger stops at {0}, the pack is full at {1}',
  '{0}: it overcharges the cells. Set it down.': '{0}: it overcharges the cells. Set it down.',
  '{0}: it never fills and may not balance. Set for another count of cells?':
    '{0}: it never fills and may not balance. Set for another count of cells?',
  'to a higher charge than from (stop)': 'to a higher charge than from (stop)',
  'at most 80 % (stop from 3 h, watch below), 100 % (stop)':
    'at most 80 % (stop from 3 h, watch below), 100 % (stop)',
  'at most 80 % (watch), 100 % (stop)': 'at most 80 % (watch), 100 % (stop)',
  'household sockets: at most 10 A for hours (stop), made for vehicles (watch)':
    'household sockets: at most 10 A for hours (stop), made for vehicles (watch)',
  'none (stop)': 'none (stop)',
  'not above the full pack (stop), within 1 % below (watch)':
    'not above the full pack (stop), within 1 % below (watch)',
  // calculators/traction/isolation-resistance.ts
  'Isolation resistance': 'Isolation resistance',
  'Works out the resistance between the traction circuit and the chassis, by two voltmeter readings and a known resistor or by an insulation tester, and holds it against the limit per volt.':
    'Works out the resistance between the traction circuit and the chassis, by two voltmeter readings and a known resistor or by an insulation tester, and holds it against the limit per volt.',
  'Highest working voltage': 'Highest working voltage',
  'Pack fully charged, on regeneration.': 'Pack fully charged, on regeneration.',
  Circuit: 'Circuit',
  'With an AC motor on an inverter the two are joined.':
    'With an AC motor on an inverter the two are joined.',
  'direct current only': 'direct current only',
  'direct and alternating current joined': 'direct and alternating current joined',
  'Contactors during the test': 'Contactors during the test',
  'Open contactors leave most of the circuit out.':
    'Open contactors leave most of the circuit out.',
  closed: 'closed',
  open: 'open',
  Condition: 'Condition',
  'A dry reading says nothing of a wet road.': 'A dry reading says nothing of a wet road.',
  'new build, dry': 'new build, dry',
  'in use, dry': 'in use, dry',
  'wet, or after rain': 'wet, or after rain',
  'Pack voltage at the test': 'Pack voltage at the test',
  'Between the two poles, just before the other readings.':
    'Between the two poles, just before the other readings.',
  'Negative pole to chassis': 'Negative pole to chassis',
  'If the meter shows nothing, enter its smallest step.':
    'If the meter shows nothing, enter its smallest step.',
  'Positive pole to chassis': 'Positive pole to chassis',
  'Higher reading again, with the resistor across it':
    'Higher reading again, with the resistor across it',
  'The known resistor between chassis and the pole that read higher.':
    'The known resistor between chassis and the pole that read higher.',
  'Known resistor': 'Known resistor',
  'From 100 to 500 Ω for each volt of the pack.': 'From 100 to 500 Ω for each volt of the pack.',
  'Resistor power rating': 'Resistor power rating',
  'From its sheet.': 'From its sheet.',
  'Resistor voltage rating': 'Resistor voltage rating',
  'From its sheet; a small film resistor is often for 250 V only.':
    'From its sheet; a small film resistor is often for 250 V only.',
  'Voltmeter resistance': 'Voltmeter resistance',
  'From its manual.': 'From its manual.',
  'usual for a digital multimeter': 'usual for a digital multimeter',
  'Insulation tester reading': 'Insulation tester reading',
  'The lower of the two poles against chassis.': 'The lower of the two poles against chassis.',
  'Insulation tester voltage': 'Insulation tester voltage',
  'Not below the highest pack voltage.': 'Not below the highest pack voltage.',
  'Per volt': 'Per volt',
  'Leak at the highest voltage': 'Leak at the highest voltage',
  'Most the known resistor may take': 'Most the known resistor may take',
  Method: 'Method',
  'The method gives the smaller of the leaks of the two poles; the meter’s own resistance cancels when the same meter reads both times.':
    'The method gives the smaller of the leaks of the two poles; the meter’s own resistance cancels when the same meter reads both times.',
  'With readings by both methods the lower result counts.':
    'With readings by both methods the lower result counts.',
  'A rule of 29 mA allows only 34 Ω for each volt, whatever the voltage: keeping it does not make up for the limit per volt.':
    'A rule of 29 mA allows only 34 Ω for each volt, whatever the voltage: keeping it does not make up for the limit per volt.',
  'Wait until the readings stand still: filter capacitors to chassis charge slowly.':
    'Wait until the readings stand still: filter capacitors to chassis charge slowly.',
  'Isolation per volt': 'Isolation per volt',
  'Whole circuit connected': 'Whole circuit connected',
  'Readings agree': 'Readings agree',
  Voltmeter: 'Voltmeter',
  'Level of a new build': 'Level of a new build',
  'two voltmeter readings and a known resistor': 'two voltmeter readings and a known resistor',
  'insulation tester': 'insulation tester',
  'The readings do not agree, but they give only {0}, {1}: do not power the circuit. Measure again.':
    'The readings do not agree, but they give only {0}, {1}: do not power the circuit. Measure again.',
  'There is no isolation reading that can be used: take the three voltmeter readings, or use an insulation tester.':
    'There is no isolation reading that can be used: take the three voltmeter readings, or use an insulation tester.',
  'Isolation is {0}, {1}': 'Isolation is {0}, {1}',
  '{0}, below the {1} for this circuit: do not power it. Part the circuit and find the leak.':
    '{0}, below the {1} for this circuit: do not power it. Part the circuit and find the leak.',
  '{0}, but not the whole circuit is known to have been connected: measure with the contactors closed.':
    '{0}, but not the whole circuit is known to have been connected: measure with the contactors closed.',
  '{0}, but the test voltage is not known to reach the pack’s {1}: measure at a higher one.':
    '{0}, but the test voltage is not known to reach the pack’s {1}: measure at a higher one.',
  '{0}: enough for a direct-current circuit, too little once it is joined to alternating current. Find what leaks.':
    '{0}: enough for a direct-current circuit, too little once it is joined to alternating current. Find what leaks.',
  'The contactors were closed, so the whole circuit was measured.':
    'The contactors were closed, so the whole circuit was measured.',
  'The contactors were open: what lies beyond them was not measured. Repeat with them closed.':
    'The contactors were open: what lies beyond them was not measured. Repeat with them closed.',
  'It is not said whether the contactors were closed.':
    'It is not said whether the contactors were closed.',
  'The voltmeter method was not used; the tester reading stands alone.':
    'The voltmeter method was not used; the tester reading stands alone.',
  'The voltmeter method needs the pack voltage, both poles to chassis, the resistor and the reading with it.':
    'The voltmeter method needs the pack voltage, both poles to chassis, the resistor and the reading with it.',
  'The lower pole should read {0} by the other readings, and does within {1}.':
    'The lower pole should read {0} by the other readings, and does within {1}.',
  'The readings contradict each other: with the resistor the voltage must fall, and each pole must read less than the pack. Measure again.':
    'The readings contradict each other: with the resistor the voltage must fall, and each pole must read less than the pack. Measure again.',
  'By the other readings the lower pole should read {0}; it reads {1}. Wait until they stand still and measure again.':
    'By the other readings the lower pole should read {0}; it reads {1}. Wait until they stand still and measure again.',
  'No resistor was used.': 'No resistor was used.',
  'The known resistor is not given.': 'The known resistor is not given.',
  'The resistor is only {0} and may take {1}: it makes the fault it looks for. Use at least {2}.':
    'The resistor is only {0} and may take {1}: it makes the fault it looks for. Use at least {2}.',
  'If the other pole leaks hard the resistor takes {0} at {1}: look up its power and voltage ratings.':
    'If the other pole leaks hard the resistor takes {0} at {1}: look up its power and voltage ratings.',
  'The resistor may take {0} of its {1} and {2} of its {3}':
    'The resistor may take {0} of its {1} and {2} of its {3}',
  '{0}: use one rated for it.': '{0}: use one rated for it.',
  '{0}: it gets hot; connect it only while you read.':
    '{0}: it gets hot; connect it only while you read.',
  'No voltmeter reading is used.': 'No voltmeter reading is used.',
  'The meter has {0}.': 'The meter has {0}.',
  'The meter has only {0}: it cancels only if the same meter reads each time. Use a digital one.':
    'The meter has only {0}: it cancels only if the same meter reads each time. Use a digital one.',
  'Neither method has a reading.': 'Neither method has a reading.',
  'No tester was used; the voltmeter method works at the pack’s own voltage.':
    'No tester was used; the voltmeter method works at the pack’s own voltage.',
  'The tester’s voltage is not given.': 'The tester’s voltage is not given.',
  'The tester’s {0} is not below the pack.': 'The tester’s {0} is not below the pack.',
  'The tester’s {0} is below the pack’s {1}: insulation may hold there and fail in use.':
    'The tester’s {0} is below the pack’s {1}: insulation may hold there and fail in use.',
  'There is no reading to judge.': 'There is no reading to judge.',
  'It reads {0}': 'It reads {0}',
  '{0}; it is not said whether dry or wet, new or in use.':
    '{0}; it is not said whether dry or wet, new or in use.',
  '{0}: a new dry build has more than 1 MΩ. Something already leaks; find it now.':
    '{0}: a new dry build has more than 1 MΩ. Something already leaks; find it now.',
  '{0} wet; compare with the dry reading.': '{0} wet; compare with the dry reading.',
  '{0} dry; repeat it after rain.': '{0} dry; repeat it after rain.',
  'at least 500 Ω/V, direct and alternating current joined (stop)':
    'at least 500 Ω/V, direct and alternating current joined (stop)',
  'at least 500 Ω/V (watch), 100 Ω/V, direct current only (stop)':
    'at least 500 Ω/V (watch), 100 Ω/V, direct current only (stop)',
  'contactors closed (else cannot tell)': 'contactors closed (else cannot tell)',
  'lower pole within 5 % of the pack voltage of what the others give (else cannot tell)':
    'lower pole within 5 % of the pack voltage of what the others give (else cannot tell)',
  'at least 100 Ω/V (stop), at most half its power (watch), all of its power and voltage (stop)':
    'at least 100 Ω/V (stop), at most half its power (watch), all of its power and voltage (stop)',
  'at least 10 MΩ (watch)': 'at least 10 MΩ (watch)',
  'not below the highest pack voltage (else cannot tell)':
    'not below the highest pack voltage (else cannot tell)',
  'more than 1 MΩ on a new dry build (watch)': 'more than 1 MΩ on a new dry build (watch)',
  'No reading to work with.': 'No reading to work with.',
  // calculators/traction/joint-check.ts
  'Joint resistance and hot spots': 'Joint resistance and hot spots',
  'Turns millivolts across bolted joints into milliohms, finds the one that is unlike the rest, and says how hot it gets at the peak.':
    'Turns millivolts across bolted joints into milliohms, finds the one that is unlike the rest, and says how hot it gets at the peak.',
  Joints: 'Joints',
  joint: 'joint',
  'Alike: the same lug, bolt and terminal.': 'Alike: the same lug, bolt and terminal.',
  Joint: 'Joint',
  'Between which cells.': 'Between which cells.',
  'Terminal to lug, not bolt to bolt, with the current flowing.':
    'Terminal to lug, not bolt to bolt, with the current flowing.',
  At: 'At',
  'Through this joint at that moment.': 'Through this joint at that moment.',
  'After ten minutes of that current.': 'After ten minutes of that current.',
  'Air in the box': 'Air in the box',
  'For the rise at the peak.': 'For the rise at the peak.',
  'The most the drive takes.': 'The most the drive takes.',
  'Worst joint': 'Worst joint',
  'Its resistance': 'Its resistance',
  'Median of all': 'Median of all',
  'Worst over median': 'Worst over median',
  'Its heat at the peak': 'Its heat at the peak',
  'Hottest joint': 'Hottest joint',
  'Over the median of all': 'Over the median of all',
  'Its rise over the air, held at the peak': 'Its rise over the air, held at the peak',
  'All joints together': 'All joints together',
  'Over median': 'Over median',
  'Heat at the peak': 'Heat at the peak',
  'Over median temperature': 'Over median temperature',
  'The rise at the peak is that of a peak held until nothing warms further: a short one stays below.':
    'The rise at the peak is that of a peak held until nothing warms further: a short one stays below.',
  'The limits are for a bolted joint of a traction cell; small screw terminals have their own.':
    'The limits are for a bolted joint of a traction cell; small screw terminals have their own.',
  'A shiny lug reads cold under an infrared thermometer: put tape or matt paint on it.':
    'A shiny lug reads cold under an infrared thermometer: put tape or matt paint on it.',
  'Unlike the rest': 'Unlike the rest',
  'Hotter than the rest': 'Hotter than the rest',
  'Enough current to read': 'Enough current to read',
  'take it apart, clean, put it together to the sheet’s torque, and measure again':
    'take it apart, clean, put it together to the sheet’s torque, and measure again',
  '{0} has {1} and makes {2} at the peak': '{0} has {1} and makes {2} at the peak',
  '{0}: do not drive; {1}.': '{0}: do not drive; {1}.',
  'There is no median to hold the joints against: measure three or more alike, with more current.':
    'There is no median to hold the joints against: measure three or more alike, with more current.',
  '{0} has {1} times the median of {2}': '{0} has {1} times the median of {2}',
  '{0}: something is wrong with it; {1}.': '{0}: something is wrong with it; {1}.',
  'Fewer than three joints have a temperature: take them after ten minutes of current.':
    'Fewer than three joints have a temperature: take them after ten minutes of current.',
  '{0} is {1} over the median of all': '{0} is {1} over the median of all',
  '{0} is {1} over the median of all; held at the peak it would be {2} over the air':
    '{0} is {1} over the median of all; held at the peak it would be {2} over the air',
  'The middle joint dropped {0}': 'The middle joint dropped {0}',
  '{0}: too little for a common meter. Measure with more current.':
    '{0}: too little for a common meter. Measure with more current.',
  'at most 0.1 mΩ (watch), 0.3 mΩ (stop)': 'at most 0.1 mΩ (watch), 0.3 mΩ (stop)',
  'at most 1.3 times the median (watch), twice (stop)':
    'at most 1.3 times the median (watch), twice (stop)',
  'at most {0} over the median (watch), {1} (stop)':
    'at most {0} over the median (watch), {1} (stop)',
  'at least 1 mV in the middle (watch)': 'at least 1 mV in the middle (watch)',
  'median {0}; worst over median {1}': 'median {0}; worst over median {1}',
  'Joint, in the order of the list': 'Joint, in the order of the list',
  joints: 'joints',
  '1.3 times the median': '1.3 times the median',
  'Good joints lie in one row; the one that stands out is loose or dirty.':
    'Good joints lie in one row; the one that stands out is loose or dirty.',
  // calculators/traction/main-fuse.ts
  'Main fuse, cable and contactor': 'Main fuse, cable and contactor',
  'Works out what a short circuit drives at the pack terminals and at the far end of the cable, and holds fuse, cable and contactor against it and against the drive.':
    'Works out what a short circuit drives at the pack terminals and at the far end of the cable, and holds fuse, cable and contactor against it and against the drive.',
  'Highest pack voltage': 'Highest pack voltage',
  'Fully charged, regenerating.': 'Fully charged, regenerating.',
  'Lowest pack voltage': 'Lowest pack voltage',
  'Nearly empty.': 'Nearly empty.',
  'Lowest cell resistance': 'Lowest cell resistance',
  'New and warm.': 'New and warm.',
  'Highest cell resistance': 'Highest cell resistance',
  'Old and cold.': 'Old and cold.',
  'Links and joints in the pack': 'Links and joints in the pack',
  'Up to the terminals.': 'Up to the terminals.',
  'gives the higher current': 'gives the higher current',
  'Traction cable': 'Traction cable',
  'Cable length, out and back': 'Cable length, out and back',
  'Of the longest loop.': 'Of the longest loop.',
  'Fuse, contactors and joints outside': 'Fuse, contactors and joints outside',
  'For a far short.': 'For a far short.',
  'fuse, two contactors, lugs': 'fuse, two contactors, lugs',
  'Loop inductance': 'Loop inductance',
  'About 1 µH a metre, cables side by side.': 'About 1 µH a metre, cables side by side.',
  'Cable insulation': 'Cable insulation',
  'Sets how hot a short may make it.': 'Sets how hot a short may make it.',
  'PVC, 70 °C': 'PVC, 70 °C',
  'cross-linked, 90 °C or more': 'cross-linked, 90 °C or more',
  'the lower of the two': 'the lower of the two',
  'Cable carries': 'Cable carries',
  'Continuous, as laid, from its sheet.': 'Continuous, as laid, from its sheet.',
  'Weakest other part carries': 'Weakest other part carries',
  'Continuous: contactor, plug, links.': 'Continuous: contactor, plug, links.',
  'Over the hardest half hour.': 'Over the hardest half hour.',
  'The controller’s battery current limit.': 'The controller’s battery current limit.',
  'Fuse rating': 'Fuse rating',
  'On its body.': 'On its body.',
  'Fuse voltage, DC': 'Fuse voltage, DC',
  'The DC figure.': 'The DC figure.',
  'Fuse and contactor rated for': 'Fuse and contactor rated for',
  'AC figures do not count.': 'AC figures do not count.',
  'DC, both of them': 'DC, both of them',
  'AC only, one or both': 'AC only, one or both',
  'Fuse breaks up to': 'Fuse breaks up to',
  'Interrupting rating at its DC voltage.': 'Interrupting rating at its DC voltage.',
  'Fuse breaks from': 'Fuse breaks from',
  'Minimum breaking current; below it the fuse arcs on.':
    'Minimum breaking current; below it the fuse arcs on.',
  'Fuse tested at L/R': 'Fuse tested at L/R',
  'Beside the DC voltage on its sheet.': 'Beside the DC voltage on its sheet.',
  'Fuse clearing integral': 'Fuse clearing integral',
  'Total, melting and arcing, at pack voltage.': 'Total, melting and arcing, at pack voltage.',
  'Fuse melts, in the peak’s time, at': 'Fuse melts, in the peak’s time, at',
  'Off its curve; or give the curve.': 'Off its curve; or give the curve.',
  'Melting curve': 'Melting curve',
  'Points off the sheet.': 'Points off the sheet.',
  'Read off it.': 'Read off it.',
  'Fuse sits': 'Fuse sits',
  'Along the cable.': 'Along the cable.',
  'at the pack terminal': 'at the pack terminal',
  'in the middle of the pack': 'in the middle of the pack',
  'Contactor voltage, DC': 'Contactor voltage, DC',
  'At which it breaks.': 'At which it breaks.',
  'At pack voltage; not what it carries.': 'At pack voltage; not what it carries.',
  'Contactor polarity': 'Contactor polarity',
  'Some break in one direction only.': 'Some break in one direction only.',
  'breaks both ways': 'breaks both ways',
  'polarised, current one way only': 'polarised, current one way only',
  'polarised, and the drive regenerates': 'polarised, and the drive regenerates',
  'polarised, regenerating allowed by its maker': 'polarised, regenerating allowed by its maker',
  'Short circuit at the pack terminals': 'Short circuit at the pack terminals',
  'Lowest pack resistance': 'Lowest pack resistance',
  'Breaking rating in hand': 'Breaking rating in hand',
  'Least far short circuit': 'Least far short circuit',
  'Fuse melts on it in': 'Fuse melts on it in',
  'Who clears the least short': 'Who clears the least short',
  'Longest L/R': 'Longest L/R',
  'L/R at the least short': 'L/R at the least short',
  'RMS current of fuse rating': 'RMS current of fuse rating',
  'RMS current in hand': 'RMS current in hand',
  'Melts in the peak’s time at': 'Melts in the peak’s time at',
  'Peak of melting current': 'Peak of melting current',
  'Smallest fuse for the drive': 'Smallest fuse for the drive',
  'Largest fuse for cable and parts': 'Largest fuse for cable and parts',
  'Most the fuse lets through': 'Most the fuse lets through',
  'Cable stands': 'Cable stands',
  'Cells are taken as a voltage behind a plain resistance; real cells give somewhat more in the first milliseconds and less after.':
    'Cells are taken as a voltage behind a plain resistance; real cells give somewhat more in the first milliseconds and less after.',
  'A capacitor bank in the controller adds to a short between pack and controller and is not counted.':
    'A capacitor bank in the controller adds to a short between pack and controller and is not counted.',
  'Strings in parallel with a fuse each: give one string for its fuse, all of them for the main one.':
    'Strings in parallel with a fuse each: give one string for its fuse, all of them for the main one.',
  'The heat a cable stands holds for shorts up to 5 s; slower ones are covered by the fuse being no larger than the cable’s rating.':
    'The heat a cable stands holds for shorts up to 5 s; slower ones are covered by the fuse being no larger than the cable’s rating.',
  'The longest L/R is taken with the lowest pack resistance and the cable cold, the other at the least short.':
    'The longest L/R is taken with the lowest pack resistance and the cable cold, the other at the least short.',
  'Fuse voltage': 'Fuse voltage',
  'Rated for DC': 'Rated for DC',
  'Short circuit at the terminals': 'Short circuit at the terminals',
  'Contactor voltage': 'Contactor voltage',
  'Fuse protects cable and parts': 'Fuse protects cable and parts',
  'Drive on the fuse': 'Drive on the fuse',
  'Peaks on the fuse': 'Peaks on the fuse',
  'Least short circuit': 'Least short circuit',
  'Inductance of the loop': 'Inductance of the loop',
  'Cable through the short': 'Cable through the short',
  'Contactor breaks what the fuse leaves': 'Contactor breaks what the fuse leaves',
  'Place of the fuse': 'Place of the fuse',
  'the fuse': 'the fuse',
  'the contactor, if it is told to open': 'the contactor, if it is told to open',
  'nobody for certain': 'nobody for certain',
  '{0}: it arcs on. Fit one for more.': '{0}: it arcs on. Fit one for more.',
  'at least {0} DC (stop)': 'at least {0} DC (stop)',
  'lowest pack voltage': 'lowest pack voltage',
  'lowest cell resistance': 'lowest cell resistance',
  'current the fuse breaks from': 'current the fuse breaks from',
  'current it breaks up to': 'current it breaks up to',
  'Fuse and contactor have DC ratings.': 'Fuse and contactor have DC ratings.',
  'A part rated for AC only cannot put out a DC arc: change it.':
    'A part rated for AC only cannot put out a DC arc: change it.',
  'Whether both have DC ratings is not known.': 'Whether both have DC ratings is not known.',
  'A short at the terminals drives {0}': 'A short at the terminals drives {0}',
  '{0}; what the fuse can break is not known.': '{0}; what the fuse can break is not known.',
  '{0}; the fuse breaks {1}.': '{0}; the fuse breaks {1}.',
  '{0}, and the fuse breaks only {1}: it bursts. Fit one that breaks more.':
    '{0}, and the fuse breaks only {1}: it bursts. Fit one that breaks more.',
  'The {0} fuse is larger than the {1} that cable or parts carry: {2}':
    'The {0} fuse is larger than the {1} that cable or parts carry: {2}',
  'take a smaller fuse or thicker cable.': 'take a smaller fuse or thicker cable.',
  'at most {0}, or thicker cable.': 'at most {0}, or thicker cable.',
  'What cable and parts carry is not all known.': 'What cable and parts carry is not all known.',
  'The {0} fuse is no larger than the {1} that cable and parts carry.':
    'The {0} fuse is no larger than the {1} that cable and parts carry.',
  'The drive takes {0} of the fuse': 'The drive takes {0} of the fuse',
  'take a larger one.': 'take a larger one.',
  '{0} would do, with cable for it.': '{0} would do, with cable for it.',
  '{0} and ages it: {1}': '{0} and ages it: {1}',
  '{0}: it opens on the road. {1}': '{0}: it opens on the road. {1}',
  'Read off the fuse’s curve what melts it in the time of the peak of {0} for {1}.':
    'Read off the fuse’s curve what melts it in the time of the peak of {0} for {1}.',
  'On the peak of {0} for {1} the fuse is at {2} of what melts it':
    'On the peak of {0} for {1} the fuse is at {2} of what melts it',
  '{0}: repeated, that wears it out.': '{0}: repeated, that wears it out.',
  '{0}: it may open. Lower the limit or take a slower fuse.':
    '{0}: it may open. Lower the limit or take a slower fuse.',
  'Not known: give lowest voltage, highest cell resistance, cable, length.':
    'Not known: give lowest voltage, highest cell resistance, cable, length.',
  'An empty, cold pack drives only {0} at the far end':
    'An empty, cold pack drives only {0} at the far end',
  '{0}; what the fuse breaks from is not known.': '{0}; what the fuse breaks from is not known.',
  '{0}; the fuse breaks from {1}.': '{0}; the fuse breaks from {1}.',
  '{0}, less than the {1} the fuse needs: a current limit must open the contactor.':
    '{0}, less than the {1} the fuse needs: a current limit must open the contactor.',
  '{0}, less than the {1} the fuse needs, and no contactor is known to break that.':
    '{0}, less than the {1} the fuse needs, and no contactor is known to break that.',
  'Not known: give inductance, cable, length and the fuse’s L/R.':
    'Not known: give inductance, cable, length and the fuse’s L/R.',
  'L/R is {0}, the fuse was tested at {1}': 'L/R is {0}, the fuse was tested at {1}',
  '{0}: lay both cables together, or ask its maker.':
    '{0}: lay both cables together, or ask its maker.',
  'The fuse lets {0} through, the cable stands {1}':
    'The fuse lets {0} through, the cable stands {1}',
  '{0}: take thicker cable or a faster fuse.': '{0}: take thicker cable or a faster fuse.',
  'Not known: give clearing integral, curve out to the least short, and cable.':
    'Not known: give clearing integral, curve out to the least short, and cable.',
  'What the contactor breaks is not known.': 'What the contactor breaks is not known.',
  'The contactor breaks {0}': 'The contactor breaks {0}',
  '{0}, less than the peak of {1}: it welds or burns. Fit a larger one.':
    '{0}, less than the peak of {1}: it welds or burns. Fit a larger one.',
  '{0}; the fuse’s minimum is not known.': '{0}; the fuse’s minimum is not known.',
  '{0}, and the fuse takes over from {1}.': '{0}, and the fuse takes over from {1}.',
  '{0}, but the fuse only breaks from {1}: between the two nobody does.':
    '{0}, but the fuse only breaks from {1}: between the two nobody does.',
  'It is not said whether the contactor is polarised.':
    'It is not said whether the contactor is polarised.',
  'A polarised contactor may not open while regenerating: ask its maker or change it.':
    'A polarised contactor may not open while regenerating: ask its maker or change it.',
  'The contactor breaks whichever way the current goes.':
    'The contactor breaks whichever way the current goes.',
  'It is not said where the fuse sits.': 'It is not said where the fuse sits.',
  'The cable before the fuse is unprotected: put it at the pack.':
    'The cable before the fuse is unprotected: put it at the pack.',
  'The fuse sits at its source.': 'The fuse sits at its source.',
  'The fuse’s DC voltage is not known.': 'The fuse’s DC voltage is not known.',
  'The fuse is for {0} DC, the pack reaches {1}': 'The fuse is for {0} DC, the pack reaches {1}',
  'DC ratings on both (stop)': 'DC ratings on both (stop)',
  'more than {0} (stop)': 'more than {0} (stop)',
  'The contactor’s DC voltage is not known.': 'The contactor’s DC voltage is not known.',
  'The contactor is for {0} DC, the pack reaches {1}':
    'The contactor is for {0} DC, the pack reaches {1}',
  'fuse at most what cable and every part carry (stop)':
    'fuse at most what cable and every part carry (stop)',
  'at most 70 % (watch), 85 % (stop)': 'at most 70 % (watch), 85 % (stop)',
  'at most 50 % (watch), 80 % (stop)': 'at most 50 % (watch), 80 % (stop)',
  'at least the fuse’s minimum (stop; watch with a contactor)':
    'at least the fuse’s minimum (stop; watch with a contactor)',
  'at most what the fuse was tested at (stop)': 'at most what the fuse was tested at (stop)',
  'at most k²A² of the cable (stop)': 'at most k²A² of the cable (stop)',
  'at least the fuse’s minimum (watch), the peak (stop)':
    'at least the fuse’s minimum (watch), the peak (stop)',
  'both ways if the drive regenerates (watch)': 'both ways if the drive regenerates (watch)',
  'at the source (stop)': 'at the source (stop)',
  'Fuse, cable and drive': 'Fuse, cable and drive',
  'fuse melts': 'fuse melts',
  'cable burns': 'cable burns',
  'short at the terminals': 'short at the terminals',
  'least short': 'least short',
  'The peak belongs well left of the fuse’s curve, the cable’s line right of it.':
    'The peak belongs well left of the fuse’s curve, the cable’s line right of it.',
  // calculators/traction/pack-layout.ts
  'Pack layout and voltage window': 'Pack layout and voltage window',
  'Works out voltages, energy and mass of a pack and holds its window against every part on the traction bus.':
    'Works out voltages, energy and mass of a pack and holds its window against every part on the traction bus.',
  'They add their voltages.': 'They add their voltages.',
  'They add their ampere-hours.': 'They add their ampere-hours.',
  'Cell voltage, lowest used': 'Cell voltage, lowest used',
  'Where you stop discharging; not below the sheet’s limit.':
    'Where you stop discharging; not below the sheet’s limit.',
  'Cell voltage, nominal': 'Cell voltage, nominal',
  'From its sheet: about 3.2 V for iron phosphate, 3.65 V for nickel manganese cobalt.':
    'From its sheet: about 3.2 V for iron phosphate, 3.65 V for nickel manganese cobalt.',
  'Cell voltage, full': 'Cell voltage, full',
  'Where the charger stops, from its sheet.': 'Where the charger stops, from its sheet.',
  'Rated, new.': 'Rated, new.',
  'One cell, without links and box.': 'One cell, without links and box.',
  'What you plan to draw.': 'What you plan to draw.',
  'common practice': 'common practice',
  'Usable energy wanted': 'Usable energy wanted',
  'From range and consumption; tells how many cells in parallel it takes.':
    'From range and consumption; tells how many cells in parallel it takes.',
  'Parts on the traction bus': 'Parts on the traction bus',
  'Controller, charger, DC-DC converter, heater, contactors.':
    'Controller, charger, DC-DC converter, heater, contactors.',
  'Works from': 'Works from',
  'Where it cuts out; leave it out if it has no lower limit.':
    'Where it cuts out; leave it out if it has no lower limit.',
  'Highest voltage': 'Highest voltage',
  'The most it may ever see, from its sheet.': 'The most it may ever see, from its sheet.',
  'Lowest voltage': 'Lowest voltage',
  'Nominal voltage': 'Nominal voltage',
  Energy: 'Energy',
  'Mass of cells': 'Mass of cells',
  'Energy by mass': 'Energy by mass',
  'Highest voltage of the tightest part': 'Highest voltage of the tightest part',
  'Tightest part': 'Tightest part',
  'Most cells in series for these parts': 'Most cells in series for these parts',
  'Cells in parallel for the energy wanted': 'Cells in parallel for the energy wanted',
  'Highest, used': 'Highest, used',
  'In hand above': 'In hand above',
  'In hand below': 'In hand below',
  'The lowest voltage is at rest: under load it is lower by the sag.':
    'The lowest voltage is at rest: under load it is lower by the sag.',
  'Energy is nominal voltage times rated capacity; cold, age and high current take from it.':
    'Energy is nominal voltage times rated capacity; cold, age and high current take from it.',
  'Mass is that of the cells alone; box, links and management come on top.':
    'Mass is that of the cells alone; box, links and management come on top.',
  'Cell voltages and counts': 'Cell voltages and counts',
  'Cells come whole: correct the counts.': 'Cells come whole: correct the counts.',
  'Lowest, nominal and full voltage of the cell are in order.':
    'Lowest, nominal and full voltage of the cell are in order.',
  'Lowest, nominal and full voltage of the cell are not in rising order: read its sheet again.':
    'Lowest, nominal and full voltage of the cell are not in rising order: read its sheet again.',
  'voltage “{0}” works from': 'voltage “{0}” works from',
  'highest voltage it may see': 'highest voltage it may see',
  'No part is listed.': 'No part is listed.',
  'Full, the pack is at {0}, {1} of what “{2}” may see':
    'Full, the pack is at {0}, {1} of what “{2}” may see',
  'at most {0} cells in series keep it below 97 %':
    'at most {0} cells in series keep it below 97 %',
  '{0}, regenerating on a hill more: {1}.': '{0}, regenerating on a hill more: {1}.',
  '{0}: it fails or trips. Here {1}.': '{0}: it fails or trips. Here {1}.',
  '“{0}” cuts out {1} above the {2} of an empty pack: the last of the energy cannot be used.':
    '“{0}” cuts out {1} above the {2} of an empty pack: the last of the energy cannot be used.',
  'No part has its lower limit given.': 'No part has its lower limit given.',
  'Every part with a lower limit works down to {0}.':
    'Every part with a lower limit works down to {0}.',
  'At {0} the pack stays within the 60 V line; it still burns and arcs.':
    'At {0} the pack stays within the 60 V line; it still burns and arcs.',
  'Named {0}, the pack is high voltage when charged: {1}. Build it as such.':
    'Named {0}, the pack is high voltage when charged: {1}. Build it as such.',
  'At {0} the pack is high voltage, and all rules for that apply.':
    'At {0} the pack is high voltage, and all rules for that apply.',
  'whole cells, lowest < nominal < full (stop)': 'whole cells, lowest < nominal < full (stop)',
  'at most 97 % (watch), 100 % (stop) of each part':
    'at most 97 % (watch), 100 % (stop) of each part',
  'the empty pack at or above each part’s lower limit (watch)':
    'the empty pack at or above each part’s lower limit (watch)',
  'not hidden by the nominal voltage: 60 V (watch)':
    'not hidden by the nominal voltage: 60 V (watch)',
  'E = U_nom N_p q = {0} × {1} × {2} = {3}; usable {4}':
    'E = U_nom N_p q = {0} × {1} × {2} = {3}; usable {4}',
  // calculators/traction/pre-charge.ts
  'Pre-charge and discharge': 'Pre-charge and discharge',
  'Works out how long the capacitors take to charge through the resistor, what the resistor must stand, what the contactor meets when it closes, and how long the terminals stay live afterwards.':
    'Works out how long the capacitors take to charge through the resistor, what the resistor must stand, what the contactor meets when it closes, and how long the terminals stay live afterwards.',
  'Fully charged.': 'Fully charged.',
  Capacitance: 'Capacitance',
  'Of the controller and everything else on its terminals.':
    'Of the controller and everything else on its terminals.',
  'Pre-charge resistor': 'Pre-charge resistor',
  'From the controller’s sheet, or chosen.': 'From the controller’s sheet, or chosen.',
  'The contactor closes': 'The contactor closes',
  'On a reading of the voltage, or after a set time whatever the voltage is.':
    'On a reading of the voltage, or after a set time whatever the voltage is.',
  'on a voltage reading': 'on a voltage reading',
  'after a set time': 'after a set time',
  'Closes at this share of the pack voltage': 'Closes at this share of the pack voltage',
  'Only for closing on a reading.': 'Only for closing on a reading.',
  'Closes after': 'Closes after',
  'Only for closing after a set time.': 'Only for closing after a set time.',
  'Gives up after': 'Gives up after',
  'When the voltage has not come up; from the controller’s settings.':
    'When the voltage has not come up; from the controller’s settings.',
  'Tries a minute': 'Tries a minute',
  'An impatient driver turning the key.': 'An impatient driver turning the key.',
  'somebody trying again and again': 'somebody trying again and again',
  'Resistor pulse energy': 'Resistor pulse energy',
  'For one pulse of this length, from its sheet.': 'For one pulse of this length, from its sheet.',
  'Resistor continuous power': 'Resistor continuous power',
  'On the heat sink it really has.': 'On the heat sink it really has.',
  'Load beside the capacitor': 'Load beside the capacitor',
  'A converter, heater or bleed resistor that draws while it charges; leave out if nothing does.':
    'A converter, heater or bleed resistor that draws while it charges; leave out if nothing does.',
  'Pack, cable and contactor loop': 'Pack, cable and contactor loop',
  'What limits the current when the contactor closes.':
    'What limits the current when the contactor closes.',
  'Contactor make rating': 'Contactor make rating',
  'The current it may close onto, from its sheet; not the one it carries.':
    'The current it may close onto, from its sheet; not the one it carries.',
  'Discharge resistor': 'Discharge resistor',
  'What empties the capacitors after switching off.':
    'What empties the capacitors after switching off.',
  'Resistor stays across the open contactor': 'Resistor stays across the open contactor',
  'Without a relay of its own it keeps the controller live for ever.':
    'Without a relay of its own it keeps the controller live for ever.',
  'no, its own relay opens it': 'no, its own relay opens it',
  'yes, always connected': 'yes, always connected',
  'To 95 %': 'To 95 %',
  'To 99 %': 'To 99 %',
  'Contactor closes after': 'Contactor closes after',
  'Voltage reached then': 'Voltage reached then',
  'Voltage it would settle at': 'Voltage it would settle at',
  'Step at closing': 'Step at closing',
  'Current at closing': 'Current at closing',
  'Energy in the capacitors': 'Energy in the capacitors',
  'Heat in the resistor, one charge': 'Heat in the resistor, one charge',
  'Peak power in the resistor': 'Peak power in the resistor',
  'Average power': 'Average power',
  'Discharge to 60 V': 'Discharge to 60 V',
  'Energy left at 60 V': 'Energy left at 60 V',
  'The pack holds its voltage, the capacitance is constant and the load is a plain resistance; a converter draws more as its voltage falls.':
    'The pack holds its voltage, the capacitance is constant and the load is a plain resistance; a converter draws more as its voltage falls.',
  'The current at closing leaves out inductance, so it is on the high side.':
    'The current at closing leaves out inductance, so it is on the high side.',
  'A shorted controller keeps the peak power on the resistor until the time-out; a fuse must part it.':
    'A shorted controller keeps the peak power on the resistor until the time-out; a fuse must part it.',
  'Discharge counts the discharge resistor alone. A turning permanent-magnet motor charges the capacitors again.':
    'Discharge counts the discharge resistor alone. A turning permanent-magnet motor charges the capacitors again.',
  'Voltage comes up': 'Voltage comes up',
  'Voltage at closing': 'Voltage at closing',
  'How closing is decided': 'How closing is decided',
  'Time to close': 'Time to close',
  'Time-out': 'Time-out',
  'Resistor pulse': 'Resistor pulse',
  'Resistor under repeated tries': 'Resistor under repeated tries',
  'Resistor parted when off': 'Resistor parted when off',
  'Nothing else is said to draw, so the capacitors come up to {0}':
    'Nothing else is said to draw, so the capacitors come up to {0}',
  'With {0} beside the capacitors the voltage stays at {1}, {2} of the pack':
    'With {0} beside the capacitors the voltage stays at {1}, {2} of the pack',
  '{0}, for ever: switch that load on after closing, or use a smaller resistor.':
    '{0}, for ever: switch that load on after closing, or use a smaller resistor.',
  'The set time is not given.': 'The set time is not given.',
  'The voltage never reaches the {0} the contactor waits for.':
    'The voltage never reaches the {0} the contactor waits for.',
  'It closes at {0} with {1} left across the contacts':
    'It closes at {0} with {1} left across the contacts',
  '{0}: wait longer.': '{0}: wait longer.',
  '{0}: the contacts will weld. Wait longer.': '{0}: the contacts will weld. Wait longer.',
  'The contactor closes on a clock, whatever the voltage is: with a load or a short behind it, it closes onto full voltage. Read the voltage first.':
    'The contactor closes on a clock, whatever the voltage is: with a load or a short behind it, it closes onto full voltage. Read the voltage first.',
  'The contactor closes only when the voltage has been read.':
    'The contactor closes only when the voltage has been read.',
  'It never closes.': 'It never closes.',
  'It takes {0} to close': 'It takes {0} to close',
  '{0}: the resistor takes a hard pulse and a relay may not follow. Use a larger one.':
    '{0}: the resistor takes a hard pulse and a relay may not follow. Use a larger one.',
  '{0}: drivers will try again too soon. Use a smaller resistor.':
    '{0}: drivers will try again too soon. Use a smaller resistor.',
  'The clock ends the charge after {0}.': 'The clock ends the charge after {0}.',
  'The time-out is not given: without one a fault keeps the resistor hot.':
    'The time-out is not given: without one a fault keeps the resistor hot.',
  'It gives up after {0}': 'It gives up after {0}',
  '{0}; the voltage has not come up by then.': '{0}; the voltage has not come up by then.',
  '{0}, later than the {1} it needs.': '{0}, later than the {1} it needs.',
  '{0}, before the {1} it needs: it never closes.':
    '{0}, before the {1} it needs: it never closes.',
  'What is left at closing is not known.': 'What is left at closing is not known.',
  'The {0} that is left drives a current that cannot be judged: give the loop’s resistance and the contactor’s make rating.':
    'The {0} that is left drives a current that cannot be judged: give the loop’s resistance and the contactor’s make rating.',
  'Closing drives up to {0}; the contactor may close onto {1}':
    'Closing drives up to {0}; the contactor may close onto {1}',
  '{0}: close nearer to full voltage.': '{0}: close nearer to full voltage.',
  '{0}: close a little later.': '{0}: close a little later.',
  'It never closes, and no time-out ends the heating: give the time-out.':
    'It never closes, and no time-out ends the heating: give the time-out.',
  'One charge puts {0} into the resistor: look up its pulse energy.':
    'One charge puts {0} into the resistor: look up its pulse energy.',
  'One charge puts {0} into the resistor, which stands {1}':
    'One charge puts {0} into the resistor, which stands {1}',
  '{0}: take a wirewound one of twice the energy.':
    '{0}: take a wirewound one of twice the energy.',
  '{0}: it will burn out.': '{0}: it will burn out.',
  'The resistor’s continuous power is not given.': 'The resistor’s continuous power is not given.',
  '{0} tries a minute put {1} on a resistor for {2}':
    '{0} tries a minute put {1} on a resistor for {2}',
  '{0}: limit the tries or take a larger one.': '{0}: limit the tries or take a larger one.',
  '{0}: it gets hot; limit the tries.': '{0}: it gets hot; limit the tries.',
  '{0} are left then': '{0} are left then',
  'The pack does not exceed 60 V; the capacitors hold {0}, enough to burn.':
    'The pack does not exceed 60 V; the capacitors hold {0}, enough to burn.',
  'No discharge resistor is given: the terminals stay live for an unknown time. Measure.':
    'No discharge resistor is given: the terminals stay live for an unknown time. Measure.',
  'It takes {0} to 60 V; {1}': 'It takes {0} to 60 V; {1}',
  '{0}. Measure before touching.': '{0}. Measure before touching.',
  '{0}: put the waiting time on a label.': '{0}: put the waiting time on a label.',
  '{0}: fit a smaller discharge resistor.': '{0}: fit a smaller discharge resistor.',
  'It is not said whether the resistor is parted when the vehicle is off.':
    'It is not said whether the resistor is parted when the vehicle is off.',
  'The resistor has its own relay and is parted when off.':
    'The resistor has its own relay and is parted when off.',
  'The resistor bridges the open contactor: the controller is live whenever the pack is. Give it a relay of its own.':
    'The resistor bridges the open contactor: the controller is live whenever the pack is. Give it a relay of its own.',
  'must come above {0} of the pack (stop)': 'must come above {0} of the pack (stop)',
  'at least 95 % of the pack (watch), 90 % (stop)':
    'at least 95 % of the pack (watch), 90 % (stop)',
  'closing on a voltage reading (watch on a clock)':
    'closing on a voltage reading (watch on a clock)',
  '0.2 to 5 s (watch)': '0.2 to 5 s (watch)',
  'longer than the time to close (stop)': 'longer than the time to close (stop)',
  'at most 80 % of the make rating (watch), 100 % (stop)':
    'at most 80 % of the make rating (watch), 100 % (stop)',
  'rated for twice the energy of a charge (watch), once (stop)':
    'rated for twice the energy of a charge (watch), once (stop)',
  'at most half the continuous power (watch), all of it (stop)':
    'at most half the continuous power (watch), all of it (stop)',
  'to 60 V within 60 s (watch), 300 s (stop)': 'to 60 V within 60 s (watch), 300 s (stop)',
  'none across the open contactor (stop)': 'none across the open contactor (stop)',
  't = −τ ln(1 − a U/U∞) = {0} at a = {1}': 't = −τ ln(1 − a U/U∞) = {0} at a = {1}',
  'Voltage of the capacitors': 'Voltage of the capacitors',
  Voltage: 'Voltage',
  capacitors: 'capacitors',
  pack: 'pack',
  'closing threshold': 'closing threshold',
  closes: 'closes',
  'What is missing to the pack line when the contactor closes drives the current of that instant.':
    'What is missing to the pack line when the contactor closes drives the current of that instant.',
  // calculators/vehicle/air-density.ts
  'Air density': 'Air density',
  'How dense the air is on the day, and what share of sea level’s air is left to cool a radiator and to drag on the body.':
    'How dense the air is on the day, and what share of sea level’s air is left to cool a radiator and to drag on the body.',
  'Height of the road above the sea, from a map.': 'Height of the road above the sea, from a map.',
  'Air temperature': 'Air temperature',
  'In the shade, on the day in question; for cooling the hottest.':
    'In the shade, on the day in question; for cooling the hottest.',
  'Relative humidity': 'Relative humidity',
  'Moist air is the lighter one.': 'Moist air is the lighter one.',
  'at 20 °C all of it is worth less than 1 %': 'at 20 °C all of it is worth less than 1 %',
  'Barometer at the place': 'Barometer at the place',
  'Read on the spot, not reduced to sea level. Left out: the standard atmosphere’s at the altitude.':
    'Read on the spot, not reduced to sea level. Left out: the standard atmosphere’s at the altitude.',
  'Share of sea level’s air': 'Share of sea level’s air',
  'Part of it water vapour': 'Part of it water vapour',
  'As thin as a standard day at': 'As thin as a standard day at',
  'Drag of 1 m² of CdA at 100 km/h': 'Drag of 1 m² of CdA at 100 km/h',
  'Pressure of the standard atmosphere, within about 3 % of any real day; a barometer at the place is better.':
    'Pressure of the standard atmosphere, within about 3 % of any real day; a barometer at the place is better.',
  'e_s is the vapour pressure of water (IAPWS); below freezing that of supercooled water, which weighs a quarter of a per cent at most.':
    'e_s is the vapour pressure of water (IAPWS); below freezing that of supercooled water, which weighs a quarter of a per cent at most.',
  'The share compares with 1.225 kg/m³, the standard day of 15 °C at sea level: a hot day is thin at the coast too.':
    'The share compares with 1.225 kg/m³, the standard day of 15 °C at sea level: a hot day is thin at the coast too.',
  'Air left for cooling': 'Air left for cooling',
  'Barometer fits the altitude': 'Barometer fits the altitude',
  '{0} of sea level’s air is left.': '{0} of sea level’s air is left.',
  '{0} of sea level’s air is left: radiator, fan and air-cooled motor give about that share of their rating. Work the cooling with this density.':
    '{0} of sea level’s air is left: radiator, fan and air-cooled motor give about that share of their rating. Work the cooling with this density.',
  'Only {0} of sea level’s air is left: no air-cooled part may be taken at its rating. Work the cooling with this density and ask the makers for their figures at {1}.':
    'Only {0} of sea level’s air is left: no air-cooled part may be taken at its rating. Work the cooling with this density and ask the makers for their figures at {1}.',
  'at least {0} of {1}, as at {2} (watch), 70 % (stop)':
    'at least {0} of {1}, as at {2} (watch), 70 % (stop)',
  'No barometer reading is given; the standard pressure of the altitude is taken.':
    'No barometer reading is given; the standard pressure of the altitude is taken.',
  'The barometer is {0} off the standard pressure of the altitude, as weather makes it.':
    'The barometer is {0} off the standard pressure of the altitude, as weather makes it.',
  'The barometer says {0} where {1} are usual at {2}. {3}':
    'The barometer says {0} where {1} are usual at {2}. {3}',
  'It looks like a pressure reduced to sea level: read it on the spot.':
    'It looks like a pressure reduced to sea level: read it on the spot.',
  'Check reading and altitude.': 'Check reading and altitude.',
  'within 5 % of the standard pressure at the altitude (watch)':
    'within 5 % of the standard pressure at the altitude (watch)',
  'p = standard atmosphere at {0} = {1}': 'p = standard atmosphere at {0} = {1}',
  'p = {0} (barometer)': 'p = {0} (barometer)',
  'ρ = (p − e) / (R_d T) + e / (R_v T) at {0} = {1}':
    'ρ = (p − e) / (R_d T) + e / (R_v T) at {0} = {1}',
  'Air density against altitude': 'Air density against altitude',
  'this temperature': 'this temperature',
  'at freezing': 'at freezing',
  here: 'here',
  'rated to here': 'rated to here',
  'A hot day thins the air as much as a climb of several hundred metres.':
    'A hot day thins the air as much as a climb of several hundred metres.',
  // calculators/vehicle/axle-balance.ts
  'Such as rear box.': 'Such as rear box.',
  Mass: 'Mass',
  'Weighed if at all possible.': 'Weighed if at all possible.',
  'Of its middle; ahead of the axle negative.': 'Of its middle; ahead of the axle negative.',
  'Of its middle above the ground; only for the height of the centre of gravity.':
    'Of its middle above the ground; only for the height of the centre of gravity.',
  'Front axle before': 'Front axle before',
  'The donor weighed axle by axle, level, empty, before anything came out.':
    'The donor weighed axle by axle, level, empty, before anything came out.',
  'Rear axle before': 'Rear axle before',
  'On the same weighbridge, the same day.': 'On the same weighbridge, the same day.',
  'Height of the centre of gravity before': 'Height of the centre of gravity before',
  'Only if it was measured; then every item needs its height too.':
    'Only if it was measured; then every item needs its height too.',
  'Taken out': 'Taken out',
  'part taken out': 'part taken out',
  'Engine, tank, exhaust and all that came out.': 'Engine, tank, exhaust and all that came out.',
  'Put in': 'Put in',
  'part put in': 'part put in',
  'Motor, boxes, charger, brackets, coolant, cable.':
    'Motor, boxes, charger, brackets, coolant, cable.',
  'People and load': 'People and load',
  'Each seat taken and the load, where it will ride.':
    'Each seat taken and the load, where it will ride.',
  'Front axle rating': 'Front axle rating',
  'On the plate; springs added later do not raise it.':
    'On the plate; springs added later do not raise it.',
  'Rear axle rating': 'Rear axle rating',
  'Gross vehicle rating': 'Gross vehicle rating',
  'On the plate.': 'On the plate.',
  'Load of one front tyre': 'Load of one front tyre',
  'From its load index, at the pressure it is run at.':
    'From its load index, at the pressure it is run at.',
  'Load of one rear tyre': 'Load of one rear tyre',
  'From its load index; for twins the twin rating.':
    'From its load index; for twins the twin rating.',
  'Rear wheels': 'Rear wheels',
  'How many tyres carry the rear axle.': 'How many tyres carry the rear axle.',
  two: 'two',
  'four, twin tyres': 'four, twin tyres',
  'cars and light pickups have two': 'cars and light pickups have two',
  'Mass and axle balance': 'Mass and axle balance',
  'What each axle carries after the conversion, empty and laden, against its rating, and how far the balance moved.':
    'What each axle carries after the conversion, empty and laden, against its rating, and how far the balance moved.',
  'Empty, after': 'Empty, after',
  'Heavier than before by': 'Heavier than before by',
  'Front axle, empty': 'Front axle, empty',
  'Rear axle, empty': 'Rear axle, empty',
  'Front share before': 'Front share before',
  'Front share, empty': 'Front share, empty',
  'Front share moved by': 'Front share moved by',
  Laden: 'Laden',
  'Front axle, laden': 'Front axle, laden',
  'Rear axle, laden': 'Rear axle, laden',
  'Front share, laden': 'Front share, laden',
  'Front rating used': 'Front rating used',
  'Rear rating used': 'Rear rating used',
  'Gross rating used': 'Gross rating used',
  'Front rating left': 'Front rating left',
  'Rear rating left': 'Rear rating left',
  'People and load the rating leaves': 'People and load the rating leaves',
  'Centre of gravity behind the front axle, laden':
    'Centre of gravity behind the front axle, laden',
  'Centre of gravity behind the front axle, empty':
    'Centre of gravity behind the front axle, empty',
  'Height of the centre of gravity, laden': 'Height of the centre of gravity, laden',
  'Height of the centre of gravity, empty': 'Height of the centre of gravity, empty',
  'What each item does': 'What each item does',
  'On the front axle': 'On the front axle',
  'On the rear axle': 'On the rear axle',
  'At rest on level ground; brakes, hills and a trailer’s nose shift load between the axles.':
    'At rest on level ground; brakes, hills and a trailer’s nose shift load between the axles.',
  'A worked figure is a forecast: weigh both axles again before the inspection.':
    'A worked figure is a forecast: weigh both axles again before the inspection.',
  'Left and right are not worked; a box on one side needs a weighing by corners.':
    'Left and right are not worked; a box on one side needs a weighing by corners.',
  'Sum is possible': 'Sum is possible',
  'Balance moved': 'Balance moved',
  'Front tyres': 'Front tyres',
  'Rear tyres': 'Rear tyres',
  'Weight on the steered axle': 'Weight on the steered axle',
  '{0} cannot be judged until the sum is put right.':
    '{0} cannot be judged until the sum is put right.',
  '{0} carries {1}; its rating is not given. Read it off the plate.':
    '{0} carries {1}; its rating is not given. Read it off the plate.',
  '{0} carries {1}, {2} of {3}': '{0} carries {1}, {2} of {3}',
  '{0}: {1} left.': '{0}: {1} left.',
  '{0}: nothing is left for luggage or a scale’s error. Move or save mass.':
    '{0}: nothing is left for luggage or a scale’s error. Move or save mass.',
  '{0}: {1} too much. Move or save mass; helper springs do not raise a rating.':
    '{0}: {1} too much. Move or save mass; helper springs do not raise a rating.',
  '{0} carry {1} of {2}': '{0} carry {1} of {2}',
  '{0}: little is in hand. Fit tyres of a higher load index.':
    '{0}: little is in hand. Fit tyres of a higher load index.',
  '{0}: overloaded. Fit tyres of a higher load index or take load off.':
    '{0}: overloaded. Fit tyres of a higher load index or take load off.',
  'The front axle': 'The front axle',
  'The rear axle': 'The rear axle',
  'The vehicle': 'The vehicle',
  'The front tyres': 'The front tyres',
  'The load rating of the front tyres is not given. Read the load index on the sidewall.':
    'The load rating of the front tyres is not given. Read the load index on the sidewall.',
  'The rear tyres': 'The rear tyres',
  'The load rating of the rear tyres is not given. Read the load index on the sidewall.':
    'The load rating of the rear tyres is not given. Read the load index on the sidewall.',
  'Before {0}, after {1} empty, {2} laden.': 'Before {0}, after {1} empty, {2} laden.',
  'An axle comes out at or below zero: a mass or a place is wrong, or the vehicle tips on its other axle. Check the lists.':
    'An axle comes out at or below zero: a mass or a place is wrong, or the vehicle tips on its other axle. Check the lists.',
  'each axle above {0}, empty and laden': 'each axle above {0}, empty and laden',
  'at most 95 % of the rating (watch), 100 % (stop)':
    'at most 95 % of the rating (watch), 100 % (stop)',
  'The balance cannot be told until the sum is put right.':
    'The balance cannot be told until the sum is put right.',
  'The front carries {0} empty, before {1}.': 'The front carries {0} empty, before {1}.',
  'It stays near the donor’s.': 'It stays near the donor’s.',
  'It moved rearward: handling and brake balance change. Move mass forward, or have brakes and springs set to it.':
    'It moved rearward: handling and brake balance change. Move mass forward, or have brakes and springs set to it.',
  'It moved rearward: handling and brake balance change. Move mass forward, or have the change reviewed by an engineer.':
    'It moved rearward: handling and brake balance change. Move mass forward, or have the change reviewed by an engineer.',
  'It moved forward: handling and brake balance change. Move mass rearward, or have brakes and springs set to it.':
    'It moved forward: handling and brake balance change. Move mass rearward, or have brakes and springs set to it.',
  'It moved forward: handling and brake balance change. Move mass rearward, or have the change reviewed by an engineer.':
    'It moved forward: handling and brake balance change. Move mass rearward, or have the change reviewed by an engineer.',
  'at most 3 points of the front share (watch), 6 points (stop)':
    'at most 3 points of the front share (watch), 6 points (stop)',
  'at least 110 % of the axle load (watch), 100 % (stop)':
    'at least 110 % of the axle load (watch), 100 % (stop)',
  'The steered axle cannot be judged until the sum is put right.':
    'The steered axle cannot be judged until the sum is put right.',
  'The front axle keeps {0} of the laden mass.': 'The front axle keeps {0} of the laden mass.',
  'The front axle keeps only {0} of the laden mass: it steers and brakes little, above all uphill. Move mass forward.':
    'The front axle keeps only {0} of the laden mass: it steers and brakes little, above all uphill. Move mass forward.',
  'at least 30 % of the laden mass on the front axle (watch), 20 % (stop)':
    'at least 30 % of the laden mass on the front axle (watch), 20 % (stop)',
  'R = R_0 + Σ ± m x / L with L = {0}: {1} + {2} = {3}':
    'R = R_0 + Σ ± m x / L with L = {0}: {1} + {2} = {3}',
  'F = M − R = {0} − {1} = {2}, front share {3}': 'F = M − R = {0} − {1} = {2}, front share {3}',
  'laden: R_l = {0} + {1} = {2}': 'laden: R_l = {0} + {1} = {2}',
  'Loads seen from the side': 'Loads seen from the side',
  before: 'before',
  empty: 'empty',
  laden: 'laden',
  items: 'items',
  'front rating': 'front rating',
  'rear rating': 'rear rating',
  'centre of gravity': 'centre of gravity',
  'Bars at both axles before, empty and laden; each item stands where it sits, what came out hangs down. Front is to the left.':
    'Bars at both axles before, empty and laden; each item stands where it sits, what came out hangs down. Front is to the left.',
  // calculators/vehicle/battery-restraint.ts
  'As a multiple of the box’s weight; the local code decides.':
    'As a multiple of the box’s weight; the local code decides.',
  'Mass of the full box': 'Mass of the full box',
  'Cells, box, lid, busbars, cooling.': 'Cells, box, lid, busbars, cooling.',
  'Centre of gravity off the bolted plane': 'Centre of gravity off the bolted plane',
  'Above it for a box that stands, below it for one that hangs.':
    'Above it for a box that stands, below it for one that hangs.',
  'The box': 'The box',
  'Whether the floor carries it or the bolts do.': 'Whether the floor carries it or the bolts do.',
  'stands on the floor': 'stands on the floor',
  'hangs under it': 'hangs under it',
  Bolts: 'Bolts',
  bolt: 'bolt',
  'Each bolt’s place from the box’s centre of gravity, seen from above.':
    'Each bolt’s place from the box’s centre of gravity, seen from above.',
  'Such as rear left.': 'Such as rear left.',
  Rearward: 'Rearward',
  'Ahead of the centre of gravity negative.': 'Ahead of the centre of gravity negative.',
  'To the right negative.': 'To the right negative.',
  'Bolt size': 'Bolt size',
  'Coarse thread.': 'Coarse thread.',
  'Property class': 'Property class',
  'Stamped on the head; an unmarked bolt is taken as 4.6.':
    'Stamped on the head; an unmarked bolt is taken as 4.6.',
  'Proof load from the bolt’s sheet': 'Proof load from the bolt’s sheet',
  'Instead of the table, for inch, stainless or galvanised bolts.':
    'Instead of the table, for inch, stainless or galvanised bolts.',
  Forward: 'Forward',
  'an Australian guideline asks 20 g': 'an Australian guideline asks 20 g',
  Sideways: 'Sideways',
  'recalled from the same guideline': 'recalled from the same guideline',
  'Up and down': 'Up and down',
  'recalled; a roll-over pulls the box up': 'recalled; a roll-over pulls the box up',
  'Thickness of the metal pulled on': 'Thickness of the metal pulled on',
  'Sound metal only: floor, rail or bracket where the bolt goes through.':
    'Sound metal only: floor, rail or bracket where the bolt goes through.',
  'Tensile strength of that metal': 'Tensile strength of that metal',
  'Least value of its grade.': 'Least value of its grade.',
  'the softest deep-drawing body steel (recalled: EN 10130, DC01)':
    'the softest deep-drawing body steel (recalled: EN 10130, DC01)',
  'Width of the washer or plate behind it': 'Width of the washer or plate behind it',
  'Across; thick enough not to dish. The bolt head’s own width if there is none.':
    'Across; thick enough not to dish. The bolt head’s own width if there is none.',
  'Hole to the nearest edge': 'Hole to the nearest edge',
  'From the middle of the hole to the edge of the metal it pulls on.':
    'From the middle of the hole to the edge of the metal it pulls on.',
  forward: 'forward',
  rearward: 'rearward',
  'to the left': 'to the left',
  'to the right': 'to the right',
  up: 'up',
  down: 'down',
  'Battery restraint, bolts only': 'Battery restraint, bolts only',
  'What the worst bolt of a battery box takes in a crash, and whether the metal it pulls on holds. Box, frame, straps and welds are not worked.':
    'What the worst bolt of a battery box takes in a crash, and whether the metal it pulls on holds. Box, frame, straps and welds are not worked.',
  'Worst direction': 'Worst direction',
  'Worst bolt': 'Worst bolt',
  'Its pull': 'Its pull',
  'Its shear': 'Its shear',
  'Both together': 'Both together',
  'If all bolts shared alike': 'If all bolts shared alike',
  'Proof load of the bolt': 'Proof load of the bolt',
  'Bolt holds times the load': 'Bolt holds times the load',
  'Bolt of this class that holds 1.5 times': 'Bolt of this class that holds 1.5 times',
  'That bolt holds times the load': 'That bolt holds times the load',
  'Strongest pull on the metal': 'Strongest pull on the metal',
  'Metal lets the washer through at': 'Metal lets the washer through at',
  'Metal holds the pull times': 'Metal holds the pull times',
  'Washer or plate needed': 'Washer or plate needed',
  'Strongest shear on the metal': 'Strongest shear on the metal',
  'Hole tears at': 'Hole tears at',
  'Metal holds the shear times': 'Metal holds the shear times',
  'Direction by direction': 'Direction by direction',
  Direction: 'Direction',
  'Load on the box': 'Load on the box',
  Pull: 'Pull',
  Shear: 'Shear',
  'Holds times': 'Holds times',
  'Upright bolts in one level plane, a stiff box; friction, tightening and straps are left out. Bolts through side walls are not covered.':
    'Upright bolts in one level plane, a stiff box; friction, tightening and straps are left out. Bolts through side walls are not covered.',
  'Shear is taken through the thread; all bolts share it, which needs close holes.':
    'Shear is taken through the thread; all bolts share it, which needs close holes.',
  'Only bolts and the metal at the hole: box walls, brackets, welds, spot welds and rails can fail first.':
    'Only bolts and the metal at the hole: box walls, brackets, welds, spot welds and rails can fail first.',
  'Quasi-static loads. An engineer signs a restraint, not this page.':
    'Quasi-static loads. An engineer signs a restraint, not this page.',
  'Loads designed for': 'Loads designed for',
  'Bolts hold against tipping': 'Bolts hold against tipping',
  'Pull through the metal': 'Pull through the metal',
  'Tear at the hole': 'Tear at the hole',
  'none up to M20: more bolts, wider apart': 'none up to M20: more bolts, wider apart',
  sideways: 'sideways',
  'up and down': 'up and down',
  'A proof load of {0} is needed.': 'A proof load of {0} is needed.',
  'Needed in class {0}: {1}.': 'Needed in class {0}: {1}.',
  'It cannot be told while the bolts do not hold against tipping.':
    'It cannot be told while the bolts do not hold against tipping.',
  'Designed for {0} g forward, {1} g sideways, {2} g rearward, {3} g up and down. Hold it against the local code.':
    'Designed for {0} g forward, {1} g sideways, {2} g rearward, {3} g up and down. Hold it against the local code.',
  'Designed for less than the usual load: {0}. Enter the load the local code names, with its clause, or design for the usual one.':
    'Designed for less than the usual load: {0}. Enter the load the local code names, with its clause, or design for the usual one.',
  '20 g forward (stop); 15 g sideways, 10 g rearward, 10 g up and down (watch)':
    '20 g forward (stop); 15 g sideways, 10 g rearward, 10 g up and down (watch)',
  '{0} bolts hold the box against tipping both ways.':
    '{0} bolts hold the box against tipping both ways.',
  'Fewer than three bolts, or all in one line: nothing holds the box against tipping. Spread them out.':
    'Fewer than three bolts, or all in one line: nothing holds the box against tipping. Spread them out.',
  'three bolts or more, not in one line': 'three bolts or more, not in one line',
  'The worst bolt ({0}) takes {1} pull and {2} shear, together {3}; its proof load is {4}, {5} times that.{6}':
    'The worst bolt ({0}) takes {1} pull and {2} shear, together {3}; its proof load is {4}, {5} times that.{6}',
  'proof load at least 1.5 times the load (watch), 1 times (stop)':
    'proof load at least 1.5 times the load (watch), 1 times (stop)',
  'No bolt is pulled.': 'No bolt is pulled.',
  'The metal lets the washer through at {0}, {1} times the strongest pull of {2}.{3}':
    'The metal lets the washer through at {0}, {1} times the strongest pull of {2}.{3}',
  'Put a plate of {0} or wider behind it, or bolt to thicker metal.':
    'Put a plate of {0} or wider behind it, or bolt to thicker metal.',
  'at least 1.5 times the pull (watch), 1 times (stop)':
    'at least 1.5 times the pull (watch), 1 times (stop)',
  'No bolt is sheared.': 'No bolt is sheared.',
  'The hole tears at {0}, {1} times the strongest shear of {2}.{3}':
    'The hole tears at {0}, {1} times the strongest shear of {2}.{3}',
  'Use thicker metal, a doubler welded or bolted on, or more bolts.':
    'Use thicker metal, a doubler welded or bolted on, or more bolts.',
  'at least 1.5 times the shear (watch), 1 times (stop)':
    'at least 1.5 times the shear (watch), 1 times (stop)',
  'Cannot tell: the bolts do not hold the box against tipping.':
    'Cannot tell: the bolts do not hold the box against tipping.',
  'shared alike: F / n_b = {0} / {1} = {2}': 'shared alike: F / n_b = {0} / {1} = {2}',
  'tipping moment F h = {0} × {1} = {2}': 'tipping moment F h = {0} × {1} = {2}',
  'worst bolt “{0}”: N = {1}, V = {2}': 'worst bolt “{0}”: N = {1}, V = {2}',
  'The bolts from above': 'The bolts from above',
  'Behind the box’s centre of gravity': 'Behind the box’s centre of gravity',
  bolts: 'bolts',
  '{0} (worst)': '{0} (worst)',
  'The wider the bolts stand around the centre of gravity, the less the worst one takes. The front is to the left.':
    'The wider the bolts stand around the centre of gravity, the less the worst one takes. The front is to the left.',
  // calculators/vehicle/brake-energy.ts
  'Discs or drums of both wheels, the rubbed part only; weigh one worn to its limit.':
    'Discs or drums of both wheels, the rubbed part only; weigh one worn to its limit.',
  'Laden mass after the conversion': 'Laden mass after the conversion',
  'As the inspection weighs it, or heavier.': 'As the inspection weighs it, or heavier.',
  'Speed of the stops': 'Speed of the stops',
  'The highest it is driven at.': 'The highest it is driven at.',
  'Stops one after the other': 'Stops one after the other',
  'Without time to cool; regeneration does not count, it may be off.':
    'Without time to cool; regeneration does not count, it may be off.',
  'a fast road with a jam': 'a fast road with a jam',
  'Iron of the front brakes': 'Iron of the front brakes',
  'Iron of the rear brakes': 'Iron of the rear brakes',
  'Braking done by the front': 'Braking done by the front',
  'From the roller test at full pedal.': 'From the roller test at full pedal.',
  'a car with its engine in front; the conversion may lower it':
    'a car with its engine in front; the conversion may lower it',
  'Specific heat of the iron': 'Specific heat of the iron',
  'Grey iron 0.46; an aluminium drum’s liner counts as iron.':
    'Grey iron 0.46; an aluminium drum’s liner counts as iron.',
  'grey cast iron': 'grey cast iron',
  'Brakes warm from before': 'Brakes warm from before',
  'Before the first stop.': 'Before the first stop.',
  'ordinary driving on a hot day': 'ordinary driving on a hot day',
  'Brake servo': 'Brake servo',
  'An electric servo and plain hydraulics need no vacuum.':
    'An electric servo and plain hydraulics need no vacuum.',
  'vacuum servo': 'vacuum servo',
  'none, or not by vacuum': 'none, or not by vacuum',
  'Vacuum tank': 'Vacuum tank',
  'With hoses and the servo’s front chamber.': 'With hoses and the servo’s front chamber.',
  'Servo volume of a full stroke': 'Servo volume of a full stroke',
  'Area of the diaphragm times its stroke; both diaphragms of a tandem.':
    'Area of the diaphragm times its stroke; both diaphragms of a tandem.',
  'Pump starts at': 'Pump starts at',
  'Vacuum at the switch: the worst moment to lose the pump.':
    'Vacuum at the switch: the worst moment to lose the pump.',
  'Pump stops at': 'Pump stops at',
  'Vacuum at which the switch opens.': 'Vacuum at which the switch opens.',
  'Vacuum lost in 15 s, pump off': 'Vacuum lost in 15 s, pump off',
  'From 66.7 kPa (20 inHg), brakes released.': 'From 66.7 kPa (20 inHg), brakes released.',
  'Highest road': 'Highest road',
  'Thin air gives a pump less to work with.': 'Thin air gives a pump less to work with.',
  'near sea level': 'near sea level',
  'Roller reading, front axle': 'Roller reading, front axle',
  'Both front wheels together, service brake.': 'Both front wheels together, service brake.',
  'Roller reading, rear axle': 'Roller reading, rear axle',
  'Both rear wheels together, service brake.': 'Both rear wheels together, service brake.',
  'Roller reading, parking brake': 'Roller reading, parking brake',
  'Both wheels together.': 'Both wheels together.',
  'First used': 'First used',
  'The British inspection asks more of younger cars; ask what applies to yours.':
    'The British inspection asks more of younger cars; ask what applies to yours.',
  'before September 2010': 'before September 2010',
  'from September 2010': 'from September 2010',
  'an old donor': 'an old donor',
  'Brake heat, vacuum reserve and braking': 'Brake heat, vacuum reserve and braking',
  'How hot the brakes get at the new mass, whether the servo has vacuum for three stops without its pump, and whether the roller readings satisfy the inspection.':
    'How hot the brakes get at the new mass, whether the servo has vacuum for three stops without its pump, and whether the roller readings satisfy the inspection.',
  'Energy of one stop': 'Energy of one stop',
  'Front warms by': 'Front warms by',
  'Rear warms by': 'Rear warms by',
  'Front brakes after it': 'Front brakes after it',
  'Rear brakes after it': 'Rear brakes after it',
  'Vacuum when the pump is lost': 'Vacuum when the pump is lost',
  'Vacuum after three full strokes': 'Vacuum after three full strokes',
  'Full strokes down to 40 kPa': 'Full strokes down to 40 kPa',
  'Tank needed for three': 'Tank needed for three',
  'Air pressure at the highest road': 'Air pressure at the highest road',
  'Braking efficiency at the new mass': 'Braking efficiency at the new mass',
  'Front’s part on the roller': 'Front’s part on the roller',
  'Roller reading missing': 'Roller reading missing',
  'Parking brake at the new mass': 'Parking brake at the new mass',
  'Stroke by stroke without the pump': 'Stroke by stroke without the pump',
  'Full strokes': 'Full strokes',
  'Vacuum left': 'Vacuum left',
  'All energy goes into the iron and none into air, tyres or motor: the worst case of stops in quick succession. A long descent is not covered.':
    'All energy goes into the iron and none into air, tyres or motor: the worst case of stops in quick succession. A long descent is not covered.',
  'Full strokes, slow enough that the air keeps its temperature; half strokes take half.':
    'Full strokes, slow enough that the air keeps its temperature; half strokes take half.',
  'The roller shows what locks on its drums; a decelerometer on the road may show more.':
    'The roller shows what locks on its drums; a decelerometer on the road may show more.',
  'Percentages are those of the British inspection as a yardstick; the local one decides.':
    'Percentages are those of the British inspection as a yardstick; the local one decides.',
  'Brake temperature': 'Brake temperature',
  'Vacuum after three strokes': 'Vacuum after three strokes',
  'Vacuum when the pump starts': 'Vacuum when the pump starts',
  'Pump reaches its cut-out': 'Pump reaches its cut-out',
  'Vacuum leak': 'Vacuum leak',
  'Service brake': 'Service brake',
  'Parking brake': 'Parking brake',
  '{0} stop from {1} takes the front brakes to {2}':
    '{0} stop from {1} takes the front brakes to {2}',
  '{0} stops from {1} take the front brakes to {2}':
    '{0} stops from {1} take the front brakes to {2}',
  '{0} stop from {1} takes the rear brakes to {2}':
    '{0} stop from {1} takes the rear brakes to {2}',
  '{0} stops from {1} take the rear brakes to {2}':
    '{0} stops from {1} take the rear brakes to {2}',
  'There is no vacuum servo.': 'There is no vacuum servo.',
  'pump’s start': 'pump’s start',
  'pump’s stop': 'pump’s stop',
  'Linings fade there. Fit larger or vented discs, drive slower, or carry less; do not count on regeneration.':
    'Linings fade there. Fit larger or vented discs, drive slower, or carry less; do not count on regeneration.',
  'Tank, servo volume or the pump’s starting point is not given: the reserve cannot be told.':
    'Tank, servo volume or the pump’s starting point is not given: the reserve cannot be told.',
  'After three full strokes without the pump {0} are left.':
    'After three full strokes without the pump {0} are left.',
  'After three full strokes without the pump only {0} are left and the pedal goes hard. {1}':
    'After three full strokes without the pump only {0} are left and the pedal goes hard. {1}',
  'Let the pump start at more vacuum.': 'Let the pump start at more vacuum.',
  'Fit a tank of {0} or more, with a check valve.':
    'Fit a tank of {0} or more, with a check valve.',
  'at least {0} after three full strokes (stop)': 'at least {0} after three full strokes (stop)',
  'The vacuum at which the pump starts is not given.':
    'The vacuum at which the pump starts is not given.',
  'The pump starts at {0}.': 'The pump starts at {0}.',
  'The pump starts at {0}, the low end of what servos are made for. Set it to {1} if the pump allows.':
    'The pump starts at {0}, the low end of what servos are made for. Set it to {1} if the pump allows.',
  'The pump starts at {0}: the servo runs below what it is made for. Set the switch higher.':
    'The pump starts at {0}: the servo runs below what it is made for. Set the switch higher.',
  'The vacuum at which the pump stops is not given.':
    'The vacuum at which the pump stops is not given.',
  'The pump stops at {0}, but the air has only {1} at {2}: it never stops and burns out. Set it lower or fit a time limit with a warning.':
    'The pump stops at {0}, but the air has only {1} at {2}: it never stops and burns out. Set it lower or fit a time limit with a warning.',
  'The pump stops at {0}, but the air has only {1} at {2}: it may not stop. Set it lower or fit a time limit with a warning.':
    'The pump stops at {0}, but the air has only {1} at {2}: it may not stop. Set it lower or fit a time limit with a warning.',
  'The pump stops at {0}, {1} of the air’s pressure at the highest road.':
    'The pump stops at {0}, {1} of the air’s pressure at the highest road.',
  'cut-out at most 90 % of the air’s pressure there (watch), 100 % (stop)':
    'cut-out at most 90 % of the air’s pressure there (watch), 100 % (stop)',
  'The leak test is not done yet: pump to {0}, stop it, and read the gauge after 15 s.':
    'The leak test is not done yet: pump to {0}, stop it, and read the gauge after 15 s.',
  'The system loses {0} in 15 s.': 'The system loses {0} in 15 s.',
  'The system loses {0} in 15 s: find the leak at check valve, hoses and servo before driving.':
    'The system loses {0} in 15 s: find the leak at check valve, hoses and servo before driving.',
  'at most {0} in 15 s (watch), twice that (stop)':
    'at most {0} in 15 s (watch), twice that (stop)',
  'Roller readings of both axles are not given: have the brakes tested at the new mass.':
    'Roller readings of both axles are not given: have the brakes tested at the new mass.',
  'The service brake reaches {0} of the new weight.':
    'The service brake reaches {0} of the new weight.',
  'The service brake reaches {0} of the new weight: enough for an old vehicle only, and less than a younger one has to show.':
    'The service brake reaches {0} of the new weight: enough for an old vehicle only, and less than a younger one has to show.',
  'The service brake reaches {0} of the new weight and {1} are asked: {2} are missing. Uprate the brakes before the road.':
    'The service brake reaches {0} of the new weight and {1} are asked: {2} are missing. Uprate the brakes before the road.',
  'at least 58 % (watch), {0} (stop)': 'at least 58 % (watch), {0} (stop)',
  'The parking brake’s reading is not given. A motor does not hold a parked vehicle.':
    'The parking brake’s reading is not given. A motor does not hold a parked vehicle.',
  'The parking brake reaches {0} of the new weight.':
    'The parking brake reaches {0} of the new weight.',
  'The parking brake reaches only {0} of the new weight. Adjust or uprate it: a motor does not hold a parked vehicle.':
    'The parking brake reaches only {0} of the new weight. Adjust or uprate it: a motor does not hold a parked vehicle.',
  'at least 16 % (stop)': 'at least 16 % (stop)',
  'Vacuum without the pump': 'Vacuum without the pump',
  'vacuum left': 'vacuum left',
  'servo still helps': 'servo still helps',
  'Each full stroke takes the same share of what is left; a larger tank makes the share smaller.':
    'Each full stroke takes the same share of what is left; a larger tank makes the share smaller.',
  'Brake temperature, stop after stop': 'Brake temperature, stop after stop',
  Stops: 'Stops',
  Iron: 'Iron',
  front: 'front',
  rear: 'rear',
  'linings fade': 'linings fade',
  'Without time to cool every stop adds the same rise.':
    'Without time to cool every stop adds the same rise.',
  // calculators/vehicle/coast-down.ts
  'Mass as it rolled': 'Mass as it rolled',
  'Weighed with the people who were in it.': 'Weighed with the people who were in it.',
  'Turning parts, as a share of the mass': 'Turning parts, as a share of the mass',
  'Wheels, tyres, axle; with the motor turning along it is more.':
    'Wheels, tyres, axle; with the motor turning along it is more.',
  '3 to 5 % with the motor uncoupled (common practice)':
    '3 to 5 % with the motor uncoupled (common practice)',
  'During the runs.': 'During the runs.',
  'Of the road.': 'Of the road.',
  'From the air density page; wins over altitude and temperature.':
    'From the air density page; wins over altitude and temperature.',
  'Wind along the road': 'Wind along the road',
  'Its strength at bonnet height. Left out: worked from the two ways where they tell it.':
    'Its strength at bonnet height. Left out: worked from the two ways where they tell it.',
  Readings: 'Readings',
  'Run by run, each in the order of time: at this second it did this speed.':
    'Run by run, each in the order of time: at this second it did this speed.',
  Run: 'Run',
  'The same name for all readings of one run.': 'The same name for all readings of one run.',
  Way: 'Way',
  'There, or back on the same stretch.': 'There, or back on the same stretch.',
  there: 'there',
  back: 'back',
  'Since the run’s start.': 'Since the run’s start.',
  Speed: 'Speed',
  'From a satellite receiver, not the speedometer.':
    'From a satellite receiver, not the speedometer.',
  'Run “{0}” goes both there and back: give each way its own name.':
    'Run “{0}” goes both there and back: give each way its own name.',
  'Run “{0}” has fewer than three readings.': 'Run “{0}” has fewer than three readings.',
  'Run “{0}”: the times do not go up.': 'Run “{0}”: the times do not go up.',
  'Run “{0}”: the speed does not go down; a gust, a slope or a slip of the pen.':
    'Run “{0}”: the speed does not go down; a gust, a slope or a slip of the pen.',
  'Coast-down': 'Coast-down',
  'Drag area and rolling resistance of the finished vehicle, from speeds and times while it rolls out in neutral.':
    'Drag area and rolling resistance of the finished vehicle, from speeds and times while it rolls out in neutral.',
  'Drag coefficient times area': 'Drag coefficient times area',
  'CdA ± (k = 2)': 'CdA ± (k = 2)',
  'Rolling resistance coefficient': 'Rolling resistance coefficient',
  'Crr ± (k = 2)': 'Crr ± (k = 2)',
  'r² of the fit': 'r² of the fit',
  'There and back differ by': 'There and back differ by',
  'Headwind on the way there, from the fit': 'Headwind on the way there, from the fit',
  'Rise of the road on the way there, from the fit':
    'Rise of the road on the way there, from the fit',
  'Worked run times are off by, at most': 'Worked run times are off by, at most',
  'Force at 80 km/h in that air': 'Force at 80 km/h in that air',
  'Run by run': 'Run by run',
  'Worked back': 'Worked back',
  'In neutral or with the clutch out, steering straight, brakes free, tyres warm, on a dry level road; the motor’s and gearbox’s drag otherwise counts as rolling.':
    'In neutral or with the clutch out, steering straight, brakes free, tyres warm, on a dry level road; the motor’s and gearbox’s drag otherwise counts as rolling.',
  'Rolling resistance is taken as the same at every speed, the wind as steady and along the road.':
    'Rolling resistance is taken as the same at every speed, the wind as steady and along the road.',
  'The ± comes from the scatter about the fit; errors of mass, air density and of the speed sensor come on top.':
    'The ± comes from the scatter about the fit; errors of mass, air density and of the speed sensor come on top.',
  'A wide span of speeds, such as 90 to 20 km/h, tells drag and rolling apart; a narrow one does not.':
    'A wide span of speeds, such as 90 to 20 km/h, tells drag and rolling apart; a narrow one does not.',
  'There and back agree': 'There and back agree',
  'Readings follow the fit': 'Readings follow the fit',
  'Sharpness of the result': 'Sharpness of the result',
  'Rolling resistance plausible': 'Rolling resistance plausible',
  'Runs worked back': 'Runs worked back',
  'It cannot be told until the readings give a fit.':
    'It cannot be told until the readings give a fit.',
  'The readings are too few or too much alike to tell drag from rolling. Roll from a higher to a lower speed, with more readings.':
    'The readings are too few or too much alike to tell drag from rolling. Roll from a higher to a lower speed, with more readings.',
  'The fit gives a negative drag or rolling resistance: wind, slope or readings are at fault. Repeat on a calm day.':
    'The fit gives a negative drag or rolling resistance: wind, slope or readings are at fault. Repeat on a calm day.',
  '{0} readings of {1} run are used.': '{0} readings of {1} run are used.',
  '{0} readings of {1} runs are used.': '{0} readings of {1} runs are used.',
  'three readings a run, times rising, speeds falling, drag and rolling above zero':
    'three readings a run, times rising, speeds falling, drag and rolling above zero',
  'All runs go one way: wind and slope cannot be told from drag. Run back on the same stretch.':
    'All runs go one way: wind and slope cannot be told from drag. Run back on the same stretch.',
  'At the middle speed the slowing there and back differs by {0}.{1}':
    'At the middle speed the slowing there and back differs by {0}.{1}',
  'Wind or slope is strong: find a calmer day or a flatter road.':
    'Wind or slope is strong: find a calmer day or a flatter road.',
  'within 10 % (watch), 25 % (stop)': 'within 10 % (watch), 25 % (stop)',
  'r² is {0}.{1}': 'r² is {0}.{1}',
  'The readings scatter: gusts, bends, a brake that drags, or a slip of the pen.':
    'The readings scatter: gusts, bends, a brake that drags, or a slip of the pen.',
  'r² at least 0.98 (watch)': 'r² at least 0.98 (watch)',
  'CdA is {0} ± {1}, Crr {2} ± {3}.{4}': 'CdA is {0} ± {1}, Crr {2} ± {3}.{4}',
  'More runs over a wider span of speeds make them sharper.':
    'More runs over a wider span of speeds make them sharper.',
  'each within 10 % (watch), 25 % (stop)': 'each within 10 % (watch), 25 % (stop)',
  'Crr {0} is that of a road tyre.': 'Crr {0} is that of a road tyre.',
  'Crr {0} is less than any road tyre has: a slope, a tailwind or a wrong mass. Do not use it.':
    'Crr {0} is less than any road tyre has: a slope, a tailwind or a wrong mass. Do not use it.',
  'Crr {0} is more than a tyre takes: check tyre pressure, dragging brakes and bearings, and that it rolled in neutral.':
    'Crr {0} is more than a tyre takes: check tyre pressure, dragging brakes and bearings, and that it rolled in neutral.',
  '0.006 to 0.03 (stop)': '0.006 to 0.03 (stop)',
  'Worked back with the result, each run’s time comes out within {0}.{1}':
    'Worked back with the result, each run’s time comes out within {0}.{1}',
  'One run does not belong to the others: look at it, or leave it out and say so.':
    'One run does not belong to the others: look at it, or leave it out and say so.',
  'each run within 5 % (watch)': 'each run within 5 % (watch)',
  'F at {0} = m g Crr + ½ ρ CdA v² = {1}': 'F at {0} = m g Crr + ½ ρ CdA v² = {1}',
  'Speed while rolling out': 'Speed while rolling out',
  'fit, calm and level': 'fit, calm and level',
  'Steep at first, where the air brakes, then nearly straight, where the tyres do.':
    'Steep at first, where the air brakes, then nearly straight, where the tyres do.',
  // calculators/vehicle/gearing.ts
  'Tyre size': 'Tyre size',
  'As on the sidewall: 155/80 R 13, 185 R 14, 31x10.50 R 15. Inch cross-ply sizes need the radius.':
    'As on the sidewall: 155/80 R 13, 185 R 14, 31x10.50 R 15. Inch cross-ply sizes need the radius.',
  'Rolling radius': 'Rolling radius',
  'Roll ten turns and divide the distance by 62.8; or 256.1 m over the revolutions per mile. Wins over the size.':
    'Roll ten turns and divide the distance by 62.8; or 256.1 m over the revolutions per mile. Wins over the size.',
  'Rolling share of the free circumference': 'Rolling share of the free circumference',
  'How much shorter the loaded tyre rolls than the free one.':
    'How much shorter the loaded tyre rolls than the free one.',
  '96 to 97 % is usual for radials (recalled)': '96 to 97 % is usual for radials (recalled)',
  Gears: 'Gears',
  gear: 'gear',
  'Each that will be used; a fixed drive is one gear of ratio 1.':
    'Each that will be used; a fixed drive is one gear of ratio 1.',
  'Such as second.': 'Such as second.',
  'Motor’s highest speed': 'Motor’s highest speed',
  'From its sheet; also what its bearings, coupling and the gearbox input stand.':
    'From its sheet; also what its bearings, coupling and the gearbox input stand.',
  'Highest road speed wanted': 'Highest road speed wanted',
  'Downhill too.': 'Downhill too.',
  'Gearing and motor speed': 'Gearing and motor speed',
  'How fast the motor turns at each road speed and gear, what the gears allow, and which change down is forbidden.':
    'How fast the motor turns at each road speed and gear, what the gears allow, and which change down is forbidden.',
  'Rolling circumference': 'Rolling circumference',
  'Wheels turn at': 'Wheels turn at',
  'Motor turns at, in the longest gear': 'Motor turns at, in the longest gear',
  'Of its highest speed': 'Of its highest speed',
  'Road speed at the motor’s highest': 'Road speed at the motor’s highest',
  'Road speed at 90 % of it': 'Road speed at 90 % of it',
  'Highest ratio of gear and axle together for the wanted speed':
    'Highest ratio of gear and axle together for the wanted speed',
  'Longest gear': 'Longest gear',
  'Gear by gear': 'Gear by gear',
  Gear: 'Gear',
  'Ratio in all': 'Ratio in all',
  'Motor at the wanted speed': 'Motor at the wanted speed',
  'Of its highest': 'Of its highest',
  'Never faster than': 'Never faster than',
  'Per 1000 rpm': 'Per 1000 rpm',
  'No slip in tyre, clutch or converter.': 'No slip in tyre, clutch or converter.',
  'A tyre size tells the free tyre; wear, pressure and speed move the rolling radius by 2 to 3 %. A size without a ratio is taken as 82 % high.':
    'A tyre size tells the free tyre; wear, pressure and speed move the rolling radius by 2 to 3 %. A size without a ratio is taken as 82 % high.',
  'Only speed is worked; whether the motor has the torque is in hill start and road load.':
    'Only speed is worked; whether the motor has the torque is in hill start and road load.',
  'Tyre known': 'Tyre known',
  'Motor speed at the wanted road speed': 'Motor speed at the wanted road speed',
  'Change down': 'Change down',
  'At {0} in {1} the motor turns {2}, {3} of its highest':
    'At {0} in {1} the motor turns {2}, {3} of its highest',
  'Neither tyre size nor rolling radius is given: enter one.':
    'Neither tyre size nor rolling radius is given: enter one.',
  '“{0}” does not read as a metric size, so its diameter is not known. Measure the rolling radius.':
    '“{0}” does not read as a metric size, so its diameter is not known. Measure the rolling radius.',
  'The measured radius {0} and the size’s {1} are {2} apart: the measured one counts. Check the measuring and the size.':
    'The measured radius {0} and the size’s {1} are {2} apart: the measured one counts. Check the measuring and the size.',
  '“{0}” does not read as a metric size; the measured radius counts.':
    '“{0}” does not read as a metric size; the measured radius counts.',
  'The size names no height, so 82 % of the width is taken: {0}. Measure the rolling radius.':
    'The size names no height, so 82 % of the width is taken: {0}. Measure the rolling radius.',
  'The tyre rolls on a radius of {0}.': 'The tyre rolls on a radius of {0}.',
  'size and measured radius within 3 % (watch)': 'size and measured radius within 3 % (watch)',
  'The motor’s speed cannot be told without the tyre.':
    'The motor’s speed cannot be told without the tyre.',
  '{0}: a hill or a tailwind takes it over. Limit it in the controller, or gear it {1} in all.':
    '{0}: a hill or a tailwind takes it over. Limit it in the controller, or gear it {1} in all.',
  '{0}: it bursts. Gear it no higher than {1} in all, or stay below {2}.':
    '{0}: it bursts. Gear it no higher than {1} in all, or stay below {2}.',
  'at most 90 % of the highest motor speed (watch), 100 % (stop)':
    'at most 90 % of the highest motor speed (watch), 100 % (stop)',
  'Changes down cannot be judged without the tyre.':
    'Changes down cannot be judged without the tyre.',
  'At the wanted speed a wrong change down overspeeds the motor; the wheels force it, no limiter helps. Never faster than {0}: mark it at the lever or lock the gear out.':
    'At the wanted speed a wrong change down overspeeds the motor; the wheels force it, no limiter helps. Never faster than {0}: mark it at the lever or lock the gear out.',
  '{0} in {1}': '{0} in {1}',
  'No change down at the wanted speed takes the motor over its highest.':
    'No change down at the wanted speed takes the motor over its highest.',
  'every gear at most 100 % at the wanted speed (watch)':
    'every gear at most 100 % at the wanted speed (watch)',
  'Cannot tell: the tyre is not known.': 'Cannot tell: the tyre is not known.',
  'r = {0} (measured)': 'r = {0} (measured)',
  'v_max = 2 π r n_max / (i_g i_a) = {0} at {1}': 'v_max = 2 π r n_max / (i_g i_a) = {0} at {1}',
  'Motor speed against road speed': 'Motor speed against road speed',
  'Motor speed': 'Motor speed',
  'motor’s highest': 'motor’s highest',
  'A gear whose line has crossed the motor’s limit before the wanted speed must not be engaged there.':
    'A gear whose line has crossed the motor’s limit before the wanted speed must not be engaged there.',
  // calculators/vehicle/hill-start.ts
  'Laden mass': 'Laden mass',
  'With people, load and trailer.': 'With people, load and trailer.',
  'From the gearing page or a roll of ten turns.': 'From the gearing page or a roll of ten turns.',
  'Such as first.': 'Such as first.',
  'Motor’s peak torque': 'Motor’s peak torque',
  'At standstill, with this controller’s current.':
    'At standstill, with this controller’s current.',
  'Motor’s peak power': 'Motor’s peak power',
  'At the shaft, with this pack.': 'At the shaft, with this pack.',
  'Motor’s continuous power': 'Motor’s continuous power',
  'At the shaft, for an hour or more; not the peak.':
    'At the shaft, for an hour or more; not the peak.',
  'Grade it has to start on': 'Grade it has to start on',
  'Rise over run of the steepest ramp.': 'Rise over run of the steepest ramp.',
  'the usual yardstick for a road vehicle': 'the usual yardstick for a road vehicle',
  'Long grade': 'Long grade',
  'The longest hill on the route.': 'The longest hill on the route.',
  'main roads seldom rise more for long': 'main roads seldom rise more for long',
  'Speed up the long grade': 'Speed up the long grade',
  'That it has to hold.': 'That it has to hold.',
  'slower is a hindrance to others': 'slower is a hindrance to others',
  'From a coast-down, or Cd times frontal area.': 'From a coast-down, or Cd times frontal area.',
  'an upright vehicle; on a slow hill it matters little':
    'an upright vehicle; on a slow hill it matters little',
  'Road 0.010 to 0.018; grass or soft track 0.05 and more.':
    'Road 0.010 to 0.018; grass or soft track 0.05 and more.',
  'an old tyre on tarmac': 'an old tyre on tarmac',
  'Driveline efficiency': 'Driveline efficiency',
  'Motor shaft to wheels, in low gear.': 'Motor shaft to wheels, in low gear.',
  'with a gearbox and an axle 88 to 93 % is usual':
    'with a gearbox and an axle 88 to 93 % is usual',
  'Of the hill’s top: thin air drags less and cools less.':
    'Of the hill’s top: thin air drags less and cools less.',
  'For the drag only.': 'For the drag only.',
  'a mild day': 'a mild day',
  'Driven wheels': 'Driven wheels',
  'Uphill the front grows light and the rear heavy.':
    'Uphill the front grows light and the rear heavy.',
  'all four': 'all four',
  'Mass on the driven axle': 'Mass on the driven axle',
  'Laden, on the level, from the axle balance; of the mass above, trailer included.':
    'Laden, on the level, from the axle balance; of the mass above, trailer included.',
  'Height of the centre of gravity over the wheelbase':
    'Height of the centre of gravity over the wheelbase',
  'How strongly a hill shifts load to the rear.': 'How strongly a hill shifts load to the rear.',
  'about 0.6 m over 2.6 m (common practice)': 'about 0.6 m over 2.6 m (common practice)',
  'Grip of the surface': 'Grip of the surface',
  'Dry tarmac 0.8, wet 0.5, wet grass 0.3, snow 0.2.':
    'Dry tarmac 0.8, wet 0.5, wet grass 0.3, snow 0.2.',
  'wet tarmac': 'wet tarmac',
  'Hill start and long climb': 'Hill start and long climb',
  'On what grade the motor can start the laden vehicle in its lowest gear, whether the tyres hold, and whether it climbs a long hill on continuous power.':
    'On what grade the motor can start the laden vehicle in its lowest gear, whether the tyres hold, and whether it climbs a long hill on continuous power.',
  'Force to start': 'Force to start',
  'Torque to start, lowest gear': 'Torque to start, lowest gear',
  'Of the peak torque': 'Of the peak torque',
  'Peak force at the wheels, lowest gear': 'Peak force at the wheels, lowest gear',
  'Steepest start by torque': 'Steepest start by torque',
  'Steepest start by grip': 'Steepest start by grip',
  'Ratio of gear and axle together needed': 'Ratio of gear and axle together needed',
  'Force on the long grade': 'Force on the long grade',
  'Shaft power on the long grade': 'Shaft power on the long grade',
  'Of the continuous power': 'Of the continuous power',
  'Speed held up it on continuous power': 'Speed held up it on continuous power',
  'Grade held for long at that speed': 'Grade held for long at that speed',
  'Peak force': 'Peak force',
  'Steepest start': 'Steepest start',
  'Full pull up to': 'Full pull up to',
  'Just balanced: nothing is left to accelerate at the limit, and a kerb or pothole takes more.':
    'Just balanced: nothing is left to accelerate at the limit, and a kerb or pothole takes more.',
  'Peak torque is held up to the speed where it gives the peak power, then the power is held: read the motor’s own curve.':
    'Peak torque is held up to the speed where it gives the peak power, then the power is held: read the motor’s own curve.',
  'Grades above 45° are shown as 100 %. Slip of a worn clutch, and heating at stall, are not in.':
    'Grades above 45° are shown as 100 %. Slip of a worn clutch, and heating at stall, are not in.',
  'Thin air changes the drag here; what it does to cooling the motor maker says.':
    'Thin air changes the drag here; what it does to cooling the motor maker says.',
  'Start in the lowest gear': 'Start in the lowest gear',
  'Driven wheels hold': 'Driven wheels hold',
  'Long climb on continuous power': 'Long climb on continuous power',
  'Motor’s rating at this altitude': 'Motor’s rating at this altitude',
  '{0} need {1} of {2} in {3}; it starts on up to {4}':
    '{0} need {1} of {2} in {3}; it starts on up to {4}',
  '{0} at {1} take {2} at the shaft': '{0} at {1} take {2} at the shaft',
  'It holds {0} there, or {1} at this speed': 'It holds {0} there, or {1} at this speed',
  '{0}. On the steepest ramps it will not move off: a ratio of {1} in all, more controller current or less mass is needed.':
    '{0}. On the steepest ramps it will not move off: a ratio of {1} in all, more controller current or less mass is needed.',
  '{0}. It will not leave a ramp or a trailer: a ratio of {1} in all, more controller current or less mass is needed.':
    '{0}. It will not leave a ramp or a trailer: a ratio of {1} in all, more controller current or less mass is needed.',
  'at least {0} (watch), three quarters of it, {1} (stop)':
    'at least {0} (watch), three quarters of it, {1} (stop)',
  'Driven wheels and the mass on them are not given: whether they hold cannot be told.':
    'Driven wheels and the mass on them are not given: whether they hold cannot be told.',
  'At a grip of {0} the driven wheels hold up to {1}.':
    'At a grip of {0} the driven wheels hold up to {1}.',
  'At a grip of {0} the driven wheels slip above {1}, whatever the motor gives. Move load onto them, or keep off such hills in the wet.':
    'At a grip of {0} the driven wheels slip above {1}, whatever the motor gives. Move load onto them, or keep off such hills in the wet.',
  'at least {0} (watch)': 'at least {0} (watch)',
  '{0}; the motor’s continuous power is not given. Take it from the sheet, not the peak figure.':
    '{0}; the motor’s continuous power is not given. Take it from the sheet, not the peak figure.',
  '{0}, {1} of the continuous power.': '{0}, {1} of the continuous power.',
  '{0}, {1} of the continuous power: {2} {3}.': '{0}, {1} of the continuous power: {2} {3}.',
  'short hills only.': 'short hills only.',
  'it cuts back or overheats.': 'it cuts back or overheats.',
  'continuous power': 'continuous power',
  'at most 100 % of the continuous power (watch), 125 % (stop)':
    'at most 100 % of the continuous power (watch), 125 % (stop)',
  'Ratings hold at this altitude.': 'Ratings hold at this altitude.',
  'At {0} the thinner air cools motor and controller less than their ratings suppose. Ask the makers for the derating; about 1 % for each {1} above {2} is common for air cooling.':
    'At {0} the thinner air cools motor and controller less than their ratings suppose. Ask the makers for the derating; about 1 % for each {1} above {2} is common for air cooling.',
  'At {0} the ratings say nothing. Ask the makers.':
    'At {0} the ratings say nothing. Ask the makers.',
  'up to {0} (watch), {1} (cannot tell)': 'up to {0} (watch), {1} (cannot tell)',
  'F_c = {0} at {1} and {2} in air of {3}': 'F_c = {0} at {1} and {2} in air of {3}',
  'Pull against speed': 'Pull against speed',
  'Force at the wheels': 'Force at the wheels',
  level: 'level',
  'long grade': 'long grade',
  'start grade': 'start grade',
  'Peak pull in each gear against what the road takes; where a gear lies below a hill’s line it slows down there.':
    'Peak pull in each gear against what the road takes; where a gear lies below a hill’s line it slows down there.',
  // calculators/vehicle/regen-limit.ts
  'Lightest mass': 'Lightest mass',
  'Driver alone: the lightest slows hardest.': 'Driver alone: the lightest slows hardest.',
  'Highest speed it regenerates at': 'Highest speed it regenerates at',
  'Where the current is largest.': 'Where the current is largest.',
  'Regeneration torque at the motor': 'Regeneration torque at the motor',
  'As set in the controller, with the pedal released; with the brake pedal if it adds some.':
    'As set in the controller, with the pedal released; with the brake pedal if it adds some.',
  'Regeneration power limit': 'Regeneration power limit',
  'At the shaft, as set in the controller. Left out: torque alone limits.':
    'At the shaft, as set in the controller. Left out: torque alone limits.',
  'Ratio of gear and axle together': 'Ratio of gear and axle together',
  'In the lowest gear it is driven in with regeneration on.':
    'In the lowest gear it is driven in with regeneration on.',
  'From the gearing page.': 'From the gearing page.',
  'Road and air at this speed': 'Road and air at this speed',
  'From the road load page; it slows the vehicle too.':
    'From the road load page; it slows the vehicle too.',
  'left out; it adds 0.1 to 0.4 m/s² (common practice)':
    'left out; it adds 0.1 to 0.4 m/s² (common practice)',
  'Wheels to motor shaft.': 'Wheels to motor shaft.',
  'Motor and controller efficiency': 'Motor and controller efficiency',
  'Shaft to pack; a high value is the cautious one here.':
    'Shaft to pack; a high value is the cautious one here.',
  'the best case, which loads the cells most': 'the best case, which loads the cells most',
  'Pack voltage while regenerating': 'Pack voltage while regenerating',
  'The lowest it will have: the current is largest then.':
    'The lowest it will have: the current is largest then.',
  'Charge current the cells take': 'Charge current the cells take',
  'Of the whole pack, for seconds, at the coldest it is driven: 0 A below freezing for most cells.':
    'Of the whole pack, for seconds, at the coldest it is driven: 0 A below freezing for most cells.',
  'Stop lamp in regeneration': 'Stop lamp in regeneration',
  'Whether the controller lights it without the pedal.':
    'Whether the controller lights it without the pedal.',
  lights: 'lights',
  'stays off': 'stays off',
  'Driven axle': 'Driven axle',
  'Braking takes load off the rear.': 'Braking takes load off the rear.',
  'As light as above, on the level, from the axle balance. With all four driven it is not used.':
    'As light as above, on the level, from the axle balance. With all four driven it is not used.',
  'How strongly braking shifts load to the front.':
    'How strongly braking shifts load to the front.',
  'Dry tarmac 0.8, wet 0.5, snow 0.2.': 'Dry tarmac 0.8, wet 0.5, snow 0.2.',
  'a greasy winter road': 'a greasy winter road',
  'Charge at the top of the hill': 'Charge at the top of the hill',
  'Fullest it ever starts a descent with.': 'Fullest it ever starts a descent with.',
  'Nominal; with the descent it tells whether the pack fills on the way.':
    'Nominal; with the descent it tells whether the pack fills on the way.',
  'Height of the descent': 'Height of the descent',
  'From top to bottom, off a map.': 'From top to bottom, off a map.',
  'Regeneration limit and stop lamp': 'Regeneration limit and stop lamp',
  'How hard regeneration slows the vehicle, whether the stop lamp has to light, whether the driven axle holds, and whether the cells may take the current.':
    'How hard regeneration slows the vehicle, whether the stop lamp has to light, whether the driven axle holds, and whether the cells may take the current.',
  'Strongest slowing': 'Strongest slowing',
  'Slowing at the highest speed': 'Slowing at the highest speed',
  'The stop lamp': 'The stop lamp',
  'Strongest force at the driven wheels': 'Strongest force at the driven wheels',
  'Grip of the driven axle used': 'Grip of the driven axle used',
  'Shaft power at the highest speed': 'Shaft power at the highest speed',
  'Into the pack': 'Into the pack',
  'Current into the pack': 'Current into the pack',
  'Of what the cells take': 'Of what the cells take',
  'Torque that keeps the lamp off': 'Torque that keeps the lamp off',
  'Torque at half the grip': 'Torque at half the grip',
  'Shaft power the cells take': 'Shaft power the cells take',
  'Won back on the descent, at most': 'Won back on the descent, at most',
  'Room in the pack': 'Room in the pack',
  'Straight, level road; in a bend less grip is left for braking.':
    'Straight, level road; in a bend less grip is left for braking.',
  'Regeneration alone: with the foot on the pedal the friction brakes come on top.':
    'Regeneration alone: with the foot on the pedal the friction brakes come on top.',
  'The lamp rule binds makers of passenger cars; elsewhere ask. It counts the slowing of the vehicle when the pedal is released.':
    'The lamp rule binds makers of passenger cars; elsewhere ask. It counts the slowing of the vehicle when the pedal is released.',
  'The energy of a descent leaves out what road and air take, so it is the most that can come back; taken at the lightest mass, a laden vehicle gives more.':
    'The energy of a descent leaves out what road and air take, so it is the most that can come back; taken at the lightest mass, a laden vehicle gives more.',
  'Stop lamp': 'Stop lamp',
  'Current into the cells': 'Current into the cells',
  'Driven axle holds': 'Driven axle holds',
  'Full pack at the top of a hill': 'Full pack at the top of a hill',
  'has to stay off': 'has to stay off',
  'may light': 'may light',
  'has to light': 'has to light',
  'Released, it slows at {0}': 'Released, it slows at {0}',
  '{0}; the lamp {1}. Find out what the controller does with it.':
    '{0}; the lamp {1}. Find out what the controller does with it.',
  '{0} and the stop lamp stays off: those behind are not warned. Light it, or set at most {1}.':
    '{0} and the stop lamp stays off: those behind are not warned. Light it, or set at most {1}.',
  '{0}, and the lamp lights although it has to stay off below {1}. Raise its threshold.':
    '{0}, and the lamp lights although it has to stay off below {1}. Raise its threshold.',
  '{0} without a stop lamp, which may light there. Light it: others see the car slow late.':
    '{0} without a stop lamp, which may light there. Light it: others see the car slow late.',
  '{0}; the lamp {1} and does so.': '{0}; the lamp {1} and does so.',
  'lamp off up to {0}, may light to {1} (watch), has to light above (stop)':
    'lamp off up to {0}, may light to {1} (watch), has to light above (stop)',
  '{0} go into the pack; the cells’ charge limit is not given. Take it from the sheet at the coldest cell temperature.':
    '{0} go into the pack; the cells’ charge limit is not given. Take it from the sheet at the coldest cell temperature.',
  '{0} go into the pack, which takes {1}.': '{0} go into the pack, which takes {1}.',
  '{0} go into a pack that takes {1}. Limit the shaft power to {2}, and to nothing when the cells are frozen.':
    '{0} go into a pack that takes {1}. Limit the shaft power to {2}, and to nothing when the cells are frozen.',
  'at most what the cell sheet allows at that temperature (stop)':
    'at most what the cell sheet allows at that temperature (stop)',
  'So hard a slowing lifts the driven axle off the road. Set less torque.':
    'So hard a slowing lifts the driven axle off the road. Set less torque.',
  'The mass on the driven axle is not given: whether it holds cannot be told.':
    'The mass on the driven axle is not given: whether it holds cannot be told.',
  'At a grip of {0} the driven axle uses {1} of it.':
    'At a grip of {0} the driven axle uses {1} of it.',
  'At a grip of {0} the driven axle uses {1} of it: little is left for a bend.':
    'At a grip of {0} the driven axle uses {1} of it: little is left for a bend.',
  'At a grip of {0} the driven axle would need {1} of it: it locks, and the car does not steer.':
    'At a grip of {0} the driven axle would need {1} of it: it locks, and the car does not steer.',
  'At a grip of {0} the driven axle would need {1} of it: it locks, and the tail comes round.':
    'At a grip of {0} the driven axle would need {1} of it: it locks, and the tail comes round.',
  'Set at most {0}, or a switch for slippery roads.':
    'Set at most {0}, or a switch for slippery roads.',
  'at most 50 % of the grip (watch), 100 % (stop)':
    'at most 50 % of the grip (watch), 100 % (stop)',
  'The charge at the top of the hill is not given. A full pack takes no regeneration.':
    'The charge at the top of the hill is not given. A full pack takes no regeneration.',
  'At {0} the pack has room.': 'At {0} the pack has room.',
  '{0}: regeneration fades away on the hill. The friction brakes have to do it all; charge less before it.':
    '{0}: regeneration fades away on the hill. The friction brakes have to do it all; charge less before it.',
  'The descent can bring back {0} and the pack has room for {1}':
    'The descent can bring back {0} and the pack has room for {1}',
  'At {0} the pack takes next to nothing': 'At {0} the pack takes next to nothing',
  'below 95 % charge, and room for the descent (watch)':
    'below 95 % charge, and room for the descent (watch)',
  'P_s = F v η_d = {0} at {1}': 'P_s = F v η_d = {0} at {1}',
  'E_b = m g H η_d η_m = {0}, room {1}': 'E_b = m g H η_d η_m = {0}, room {1}',
  'Slowing with the pedal released': 'Slowing with the pedal released',
  Slowing: 'Slowing',
  regeneration: 'regeneration',
  'lamp off below': 'lamp off below',
  'lamp on above': 'lamp on above',
  'Where the line is above the upper limit the stop lamp has to be on.':
    'Where the line is above the upper limit the stop lamp has to be on.',
  // calculators/vehicle/road-load.ts
  'Wh/mi per lb': 'Wh/mi per lb',
  'Road load, consumption and range': 'Road load, consumption and range',
  'What force the road and the air take at a steady speed, what that asks of motor and battery, and how far the pack goes.':
    'What force the road and the air take at a steady speed, what that asks of motor and battery, and how far the pack goes.',
  'As it rolls, with people and load; a weighbridge ticket beats a brochure.':
    'As it rolls, with people and load; a weighbridge ticket beats a brochure.',
  'Drag coefficient': 'Drag coefficient',
  'Saloon 0.22 to 0.4, light van 0.35 to 0.5, old pickup 0.5 to 0.6.':
    'Saloon 0.22 to 0.4, light van 0.35 to 0.5, old pickup 0.5 to 0.6.',
  'Frontal area': 'Frontal area',
  'About 0.80 to 0.85 of width times height.': 'About 0.80 to 0.85 of width times height.',
  'Passenger tyre about 0.010, light-truck or bias-ply 0.013 to 0.018, at the right pressure.':
    'Passenger tyre about 0.010, light-truck or bias-ply 0.013 to 0.018, at the right pressure.',
  'Steady speed': 'Steady speed',
  'The speed to be held, against which the motor’s rating is checked.':
    'The speed to be held, against which the motor’s rating is checked.',
  'Speeds for the table': 'Speeds for the table',
  speed: 'speed',
  'Left out: a half, three quarters, one and one and a quarter times the steady speed.':
    'Left out: a half, three quarters, one and one and a quarter times the steady speed.',
  'What it is: town, lane, main road.': 'What it is: town, lane, main road.',
  'A steady speed.': 'A steady speed.',
  Grade: 'Grade',
  'Rise over run, uphill positive. Left out: level.':
    'Rise over run, uphill positive. Left out: level.',
  Headwind: 'Headwind',
  'From ahead positive, from behind negative. Left out: still air.':
    'From ahead positive, from behind negative. Left out: still air.',
  'Cold air is denser and drags more.': 'Cold air is denser and drags more.',
  'a mild day; air 10 K colder drags 3.5 % more': 'a mild day; air 10 K colder drags 3.5 % more',
  'Height above the sea; thin air drags less.': 'Height above the sea; thin air drags less.',
  'sea level, where the air drags most': 'sea level, where the air drags most',
  'Motor shaft to wheels: gearbox, axle, joints.': 'Motor shaft to wheels: gearbox, axle, joints.',
  'Battery to motor shaft, both together, at this speed; lower at a crawl.':
    'Battery to motor shaft, both together, at this speed; lower at a crawl.',
  'at cruise 82 to 90 % is usual': 'at cruise 82 to 90 % is usual',
  'Auxiliary power': 'Auxiliary power',
  'From the traction battery for lamps, pumps, heater.':
    'From the traction battery for lamps, pumps, heater.',
  'lamps, wipers and pumps by day, without a cabin heater':
    'lamps, wipers and pumps by day, without a cabin heater',
  'Battery energy': 'Battery energy',
  'Nominal energy of the whole pack.': 'Nominal energy of the whole pack.',
  'Share of the nominal energy that is used between full and the lower stop.':
    'Share of the nominal energy that is used between full and the lower stop.',
  '80 to 85 % is the usual window': '80 to 85 % is the usual window',
  'Route factor': 'Route factor',
  'How much more the real route takes than this steady speed: stops, hills, wind.':
    'How much more the real route takes than this steady speed: stops, hills, wind.',
  'stops and hills usually cost 10 to 30 %': 'stops and hills usually cost 10 to 30 %',
  'Winter factor': 'Winter factor',
  'How much more the same trip takes in winter.': 'How much more the same trip takes in winter.',
  'one commute took 211 Wh/mi at 21 °C and 270 Wh/mi at −3 °C':
    'one commute took 211 Wh/mi at 21 °C and 270 Wh/mi at −3 °C',
  'At the shaft, for an hour or more, from its sheet; not the peak.':
    'At the shaft, for an hour or more, from its sheet; not the peak.',
  'Distance needed': 'Distance needed',
  'The longest trip without charging that has to work.':
    'The longest trip without charging that has to work.',
  'Drag of the air': 'Drag of the air',
  'Rolling resistance': 'Rolling resistance',
  'Force of the grade': 'Force of the grade',
  'Power at the motor shaft': 'Power at the motor shaft',
  'Power from the battery': 'Power from the battery',
  'Consumption at this speed': 'Consumption at this speed',
  'Range in winter': 'Range in winter',
  'At other speeds': 'At other speeds',
  Force: 'Force',
  Shaft: 'Shaft',
  Battery: 'Battery',
  Consumption: 'Consumption',
  'In winter': 'In winter',
  'Steady speed on a straight road, wind along it; stops, hills and gusts come in through the route factor only.':
    'Steady speed on a straight road, wind along it; stops, hills and gusts come in through the route factor only.',
  'Where the hill pushes the vehicle, no energy is counted as won back and no range is given.':
    'Where the hill pushes the vehicle, no energy is counted as won back and no range is given.',
  'Air pressure is the standard atmosphere’s at the altitude, the air is dry; a density that is given wins.':
    'Air pressure is the standard atmosphere’s at the altitude, the air is dry; a density that is given wins.',
  'Efficiencies fall at low speed and high torque: take them for the speed in question.':
    'Efficiencies fall at low speed and high torque: take them for the speed in question.',
  'Range against need': 'Range against need',
  'Consumption plausible': 'Consumption plausible',
  'Vehicle is driven, not pushed': 'Vehicle is driven, not pushed',
  'this speed': 'this speed',
  '{0} × this speed': '{0} × this speed',
  'The shaft gives {0}': 'The shaft gives {0}',
  'On the level this is {0} with the route factor, {1} {2} of laden mass':
    'On the level this is {0} with the route factor, {1} {2} of laden mass',
  '{0}, {1} of its continuous {2}.': '{0}, {1} of its continuous {2}.',
  '{0}, {1} of its continuous {2}: nothing is left for headwind or a hill. Hold a lower speed or gear for it.':
    '{0}, {1} of its continuous {2}: nothing is left for headwind or a hill. Hold a lower speed or gear for it.',
  '{0}, {1} of its continuous {2}: it will overheat or cut back at this speed. Slow down, or choose a larger motor.':
    '{0}, {1} of its continuous {2}: it will overheat or cut back at this speed. Slow down, or choose a larger motor.',
  'at most 80 % of the continuous power (watch), 100 % (stop)':
    'at most 80 % of the continuous power (watch), 100 % (stop)',
  'There is no range to judge, because the hill pushes the vehicle. Work it out on the level.':
    'There is no range to judge, because the hill pushes the vehicle. Work it out on the level.',
  'The range is {0}, in winter {1}; the distance needed is not given.':
    'The range is {0}, in winter {1}; the distance needed is not given.',
  '{0} are needed of {1}, in winter of {2}.': '{0} are needed of {1}, in winter of {2}.',
  '{0} are needed and the range is {1}. Charge on the way, slow down, or fit more cells.':
    '{0} are needed and the range is {1}. Charge on the way, slow down, or fit more cells.',
  '{0} are needed of {1}, but in winter of {2} only: plan a charge for the cold months.':
    '{0} are needed of {1}, but in winter of {2} only: plan a charge for the cold months.',
  '{0} are needed of {1}: less than a fifth is in hand. Measure the route before relying on it.':
    '{0} are needed of {1}: less than a fifth is in hand. Measure the route before relying on it.',
  'at most 80 % of the range, also in winter (watch), 100 % of the range (stop)':
    'at most 80 % of the range, also in winter (watch), 100 % of the range (stop)',
  '{0}: more than converted vehicles take. Check mass, area, drag and tyres.':
    '{0}: more than converted vehicles take. Check mass, area, drag and tyres.',
  '{0}: less than converted vehicles take. Check mass, area, drag and tyres.':
    '{0}: less than converted vehicles take. Check mass, area, drag and tyres.',
  '{0} to 0.20 {1} (watch); the lower end from {2}':
    '{0} to 0.20 {1} (watch); the lower end from {2}',
  'The motor has to push with {0} at the wheels.': 'The motor has to push with {0} at the wheels.',
  'Hill or tailwind push with {0} more than the road takes: consumption and range cannot be told, and energy won back is not counted. Enter a level road.':
    'Hill or tailwind push with {0} more than the road takes: consumption and range cannot be told, and energy won back is not counted. Enter a level road.',
  'force at the wheels above {0}': 'force at the wheels above {0}',
  'Range against speed': 'Range against speed',
  range: 'range',
  'in winter': 'in winter',
  'distance needed': 'distance needed',
  'Range falls with speed, because the drag of the air grows with its square.':
    'Range falls with speed, because the drag of the air grows with its square.',
  // calculators/wire.ts
  'conventional PVC cable of 0.65 to 3 mm², continuous (cable table of the towing-electrics trade)':
    'conventional PVC cable of 0.65 to 3 mm², continuous (cable table of the towing-electrics trade)',
  '30 °C around it, circuits under 50 V (33 CFR 183.425, table 5)':
    '30 °C around it, circuits under 50 V (33 CFR 183.425, table 5)',
  'an engine space at 50 °C, circuits under 50 V (33 CFR 183.425, table 5, note 1)':
    'an engine space at 50 °C, circuits under 50 V (33 CFR 183.425, table 5, note 1)',
  'bundles at 70 °C around them (FAA AC 43.13-1B, table 11-9)':
    'bundles at 70 °C around them (FAA AC 43.13-1B, table 11-9)',
  // calculators/workshop/adapter-alignment.ts
  'Zero at the top; plus when the plunger is pushed in.':
    'Zero at the top; plus when the plunger is pushed in.',
  'Bore, top': 'Bore, top',
  'Bore, right': 'Bore, right',
  'Bore, bottom': 'Bore, bottom',
  'Bore, left': 'Bore, left',
  'Droop of the indicator arm': 'Droop of the indicator arm',
  'What the same arm reads under a stiff straight bar, zeroed above it: usually minus. In a bore it shows the other way round.':
    'What the same arm reads under a stiff straight bar, zeroed above it: usually minus. In a bore it shows the other way round.',
  'a short stiff arm': 'a short stiff arm',
  'Bore, total reading': 'Bore, total reading',
  'Instead of the four readings: largest less smallest over one turn.':
    'Instead of the four readings: largest less smallest over one turn.',
  'Face, total reading': 'Face, total reading',
  'Shaft pushed one way before each reading.': 'Shaft pushed one way before each reading.',
  'Diameter swept on the face': 'Diameter swept on the face',
  'Twice the distance of the plunger from the shaft’s middle.':
    'Twice the distance of the plunger from the shaft’s middle.',
  'Flywheel face to block, original': 'Flywheel face to block, original',
  'Before the engine came out.': 'Before the engine came out.',
  'The same with the adapter': 'The same with the adapter',
  'Flywheel face to the same plane.': 'Flywheel face to the same plane.',
  'Gap between the shaft ends': 'Gap between the shaft ends',
  'Clay on the end, bolt up, take apart, measure.':
    'Clay on the end, bolt up, take apart, measure.',
  'Register, hole': 'Register, hole',
  'Inside diameter of the recess.': 'Inside diameter of the recess.',
  'Register, spigot': 'Register, spigot',
  'Outside diameter that goes into it.': 'Outside diameter that goes into it.',
  'Adapter alignment': 'Adapter alignment',
  'Whether motor, adapter and gearbox are in line, how far to move the plate, and whether the shafts have room.':
    'Whether motor, adapter and gearbox are in line, how far to move the plate, and whether the shafts have room.',
  'Bore, total indicator reading': 'Bore, total indicator reading',
  'Off the shaft’s middle': 'Off the shaft’s middle',
  'Move the plate up (minus: down)': 'Move the plate up (minus: down)',
  'Move the plate right (minus: left)': 'Move the plate right (minus: left)',
  'Face out of square, over 100 mm': 'Face out of square, over 100 mm',
  'Flywheel further out than it was': 'Flywheel further out than it was',
  'Play of the register': 'Play of the register',
  'Indicator on the shaft, plunger on the bore or face of the plate, one whole turn, seen from the shaft’s side.':
    'Indicator on the shaft, plunger on the bore or face of the plate, one whole turn, seen from the shaft’s side.',
  'A shaft with two bearings of its own joined rigidly to another with two: nothing gives. A coupling that gives has its own limits on its sheet.':
    'A shaft with two bearings of its own joined rigidly to another with two: nothing gives. A coupling that gives has its own limits on its sheet.',
  'Large flywheel housings are allowed more by their makers (0.20 mm on a 410 mm bore).':
    'Large flywheel housings are allowed more by their makers (0.20 mm on a 410 mm bore).',
  'The shaft must run true itself: read it first against a fixed point.':
    'The shaft must run true itself: read it first against a fixed point.',
  'Bore in line': 'Bore in line',
  'Face square': 'Face square',
  'Flywheel where it was': 'Flywheel where it was',
  'Shaft ends apart': 'Shaft ends apart',
  'Register fits': 'Register fits',
  'Enter four readings on the bore, or the total reading.':
    'Enter four readings on the bore, or the total reading.',
  'The bore reads {0} in all, so it is {1} off the shaft’s middle':
    'The bore reads {0} in all, so it is {1} off the shaft’s middle',
  '{0} up': '{0} up',
  '{0} down': '{0} down',
  '{0} to the right': '{0} to the right',
  '{0} to the left': '{0} to the left',
  '{0}. Take four readings to see which way, dowel it, and read again.':
    '{0}. Take four readings to see which way, dowel it, and read again.',
  '{0}. Move the plate {1}, dowel it, and read again.':
    '{0}. Move the plate {1}, dowel it, and read again.',
  'Enter the reading on the face and the diameter it was swept on.':
    'Enter the reading on the face and the diameter it was swept on.',
  'The face is {0} out of square over {1}': 'The face is {0} out of square over {1}',
  '{0}: look for burrs and paint under the plate, then have it skimmed. Bearings and coupling wear.':
    '{0}: look for burrs and paint under the plate, then have it skimmed. Bearings and coupling wear.',
  'Enter where the flywheel face stood and where it stands now.':
    'Enter where the flywheel face stood and where it stands now.',
  'The flywheel stands {0} further in than it did':
    'The flywheel stands {0} further in than it did',
  'The flywheel stands {0} further out than it did':
    'The flywheel stands {0} further out than it did',
  '{0}: clutch travel and starter ring change. Shim or machine the hub.':
    '{0}: clutch travel and starter ring change. Shim or machine the hub.',
  'Measure the gap between the shaft ends with clay.':
    'Measure the gap between the shaft ends with clay.',
  'The shaft ends are {0} apart': 'The shaft ends are {0} apart',
  '{0}: a warm shaft bottoms in the pilot and pushes on the motor’s bearings. Make room.':
    '{0}: a warm shaft bottoms in the pilot and pushes on the motor’s bearings. Make room.',
  '{0}: little room when warm.': '{0}: little room when warm.',
  '{0}: see that the spline and the pilot are still held.':
    '{0}: see that the spline and the pilot are still held.',
  'Enter hole and spigot of the register, or dowel the plate where it reads true.':
    'Enter hole and spigot of the register, or dowel the plate where it reads true.',
  'The register has {0} of interference': 'The register has {0} of interference',
  'The register has {0} of play': 'The register has {0} of play',
  '{0}: it must be pressed or warmed together; never pull it in with the bolts.':
    '{0}: it must be pressed or warmed together; never pull it in with the bolts.',
  '{0}: the plate can sit half of it off. Dowel it where it reads true.':
    '{0}: the plate can sit half of it off. Dowel it where it reads true.',
  'at most {0} over {1} (watch), {2} (stop)': 'at most {0} over {1} (watch), {2} (stop)',
  'within {0} of where it was (watch), {1} (stop)':
    'within {0} of where it was (watch), {1} (stop)',
  '{0} to {1} (watch), at least {2} (stop)': '{0} to {1} (watch), at least {2} (stop)',
  '{0} to {1} of play (watch), {2} (stop)': '{0} to {1} of play (watch), {2} (stop)',
  'TIR = largest − smallest of {0}, {1}, {2}, {3}, droop {4} taken off = {5}':
    'TIR = largest − smallest of {0}, {1}, {2}, {3}, droop {4} taken off = {5}',
  'τ = TIR_f / D = {0} / {1}: {2} over {3}': 'τ = TIR_f / D = {0} / {1}: {2} over {3}',
  // calculators/workshop/fastener-torque.ts
  'Class or grade': 'Class or grade',
  'Stamped on the head; an unmarked metric bolt is taken as 4.6.':
    'Stamped on the head; an unmarked metric bolt is taken as 4.6.',
  'Of the thread as it goes in.': 'Of the thread as it goes in.',
  'plain steel, dry': 'plain steel, dry',
  'zinc plated, dry': 'zinc plated, dry',
  'phosphated and oiled': 'phosphated and oiled',
  'grease or anti-seize': 'grease or anti-seize',
  'stainless, dry': 'stainless, dry',
  'Nut factor': 'Nut factor',
  'From the lubricant’s or coating’s sheet; else that of the surface.':
    'From the lubricant’s or coating’s sheet; else that of the surface.',
  'Share of the proof load': 'Share of the proof load',
  '75 % for a bolt that will come out again, 90 % for one that stays.':
    '75 % for a bolt that will come out again, 90 % for one that stays.',
  'a bolt that will come out again': 'a bolt that will come out again',
  'What it holds': 'What it holds',
  'On a terminal of a cell or a part only that part’s sheet counts.':
    'On a terminal of a cell or a part only that part’s sheet counts.',
  'steel or aluminium parts': 'steel or aluminium parts',
  'a lug on a terminal': 'a lug on a terminal',
  'It goes into': 'It goes into',
  'What the thread is cut in.': 'What the thread is cut in.',
  'a full nut of its class': 'a full nut of its class',
  'a thread in steel': 'a thread in steel',
  'a thread in aluminium': 'a thread in aluminium',
  'Torque on the part’s sheet': 'Torque on the part’s sheet',
  'Wins over everything worked here.': 'Wins over everything worked here.',
  'Torque you mean to use': 'Torque you mean to use',
  'As set on the wrench, with its unit.': 'As set on the wrench, with its unit.',
  'Bolt length': 'Bolt length',
  'Under the head.': 'Under the head.',
  Stack: 'Stack',
  'All lugs, plates and washers between head and thread.':
    'All lugs, plates and washers between head and thread.',
  'Thread there is': 'Thread there is',
  'Full thread in the hole, or the height of the nut.':
    'Full thread in the hole, or the height of the nut.',
  'Fastener torque and engagement': 'Fastener torque and engagement',
  'How tight to make a bolt, whether enough thread holds it, and whether a torque is in the wrong unit.':
    'How tight to make a bolt, whether enough thread holds it, and whether a torque is in the wrong unit.',
  Torque: 'Torque',
  'The same in inch-pounds': 'The same in inch-pounds',
  'Clamp at that torque': 'Clamp at that torque',
  'Clamp, at least': 'Clamp, at least',
  'Clamp, at most': 'Clamp, at most',
  'Of the proof load': 'Of the proof load',
  'Thread that holds': 'Thread that holds',
  'Thread that should hold': 'Thread that should hold',
  'Shortest bolt for this stack': 'Shortest bolt for this stack',
  'Longest bolt before it bottoms': 'Longest bolt before it bottoms',
  'Coarse threads, new clean bolts, tightened once at the nut or the head with a wrench in order.':
    'Coarse threads, new clean bolts, tightened once at the nut or the head with a wrench in order.',
  'The same torque gives a clamp 30 % either way; where that matters, measure the stretch or the turn.':
    'The same torque gives a clamp 30 % either way; where that matters, measure the stretch or the turn.',
  'Joints with a gasket, a plastic or a soft part have their own torque on a sheet.':
    'Joints with a gasket, a plastic or a soft part have their own torque on a sheet.',
  'Stainless is worked from the 0.2 % proof stress of class 70; dry stainless on stainless can seize.':
    'Stainless is worked from the 0.2 % proof stress of class 70; dry stainless on stainless can seize.',
  'A bolt bottoms in a blind hole only; for a through hole give the thickness as the thread there is.':
    'A bolt bottoms in a blind hole only; for a through hole give the thickness as the thread there is.',
  'The part’s own sheet': 'The part’s own sheet',
  'Unit of the torque': 'Unit of the torque',
  'Torque meant': 'Torque meant',
  'Stress of the bolt': 'Stress of the bolt',
  'Thread engagement': 'Thread engagement',
  'A terminal takes the torque on its own sheet and no other: look it up. A bolt chart strips it.':
    'A terminal takes the torque on its own sheet and no other: look it up. A bolt chart strips it.',
  'The sheet’s {0} is used.': 'The sheet’s {0} is used.',
  'Not a terminal, and no sheet says otherwise: worked from the bolt.':
    'Not a terminal, and no sheet says otherwise: worked from the bolt.',
  'The sheet’s {0} is used, not the bolt’s.': 'The sheet’s {0} is used, not the bolt’s.',
  'There is no torque to hold one against: see the sheet.':
    'There is no torque to hold one against: see the sheet.',
  'Set the wrench to {0}, and read its scale twice.':
    'Set the wrench to {0}, and read its scale twice.',
  'You mean {0} where {1} is due': 'You mean {0} where {1} is due',
  '{0}: about twelve times off. That looks like pound-inches and pound-feet mixed up (or kgf·m and N·m).':
    '{0}: about twelve times off. That looks like pound-inches and pound-feet mixed up (or kgf·m and N·m).',
  '{0}: 1.36 times off. That looks like N·m and lb·ft mixed up; read the scale again.':
    '{0}: 1.36 times off. That looks like N·m and lb·ft mixed up; read the scale again.',
  '{0}: no slip of units.': '{0}: no slip of units.',
  'No torque of yours is given; {0} is due.': 'No torque of yours is given; {0} is due.',
  'You mean {0} of the torque due': 'You mean {0} of the torque due',
  '{0}: the thread or the bolt gives way. Set the wrench to {1}.':
    '{0}: the thread or the bolt gives way. Set the wrench to {1}.',
  '{0}: more than is due. Set the wrench to {1}.': '{0}: more than is due. Set the wrench to {1}.',
  '{0}: it works loose. Set the wrench to {1}.': '{0}: it works loose. Set the wrench to {1}.',
  'Metric threads have classes like 8.8 and inch threads have SAE grades: look at the head again.':
    'Metric threads have classes like 8.8 and inch threads have SAE grades: look at the head again.',
  'Without a torque there is no clamp to judge: see the sheet.':
    'Without a torque there is no clamp to judge: see the sheet.',
  'The clamp is {0} ({1} to {2}), {3} of the proof load':
    'The clamp is {0} ({1} to {2}), {3} of the proof load',
  '{0}: a slippery thread takes it past proof. Use it once, or go back to 75 %.':
    '{0}: a slippery thread takes it past proof. Use it once, or go back to 75 %.',
  '{0}: the bolt stretches. Use a stronger bolt or less torque.':
    '{0}: the bolt stretches. Use a stronger bolt or less torque.',
  'Enter bolt length, stack and the depth of thread: {0} of thread should hold.':
    'Enter bolt length, stack and the depth of thread: {0} of thread should hold.',
  '{0} of thread holds; {1} should': '{0} of thread holds; {1} should',
  'The bolt is longer than the {0} there are: it bottoms, reads tight and clamps nothing. Use a shorter bolt.':
    'The bolt is longer than the {0} there are: it bottoms, reads tight and clamps nothing. Use a shorter bolt.',
  'Use a bolt of {0} or longer.': 'Use a bolt of {0} or longer.',
  'The hole has too little thread: use an insert, a nut behind, or more material.':
    'The hole has too little thread: use an insert, a nut behind, or more material.',
  '{0}: it strips.': '{0}: it strips.',
  'a terminal needs its own sheet': 'a terminal needs its own sheet',
  'not 9 to 14 times off either way (stop), 1.28 to 1.43 times (watch)':
    'not 9 to 14 times off either way (stop), 1.28 to 1.43 times (watch)',
  'within 10 % of the torque due (watch); above it by more on a sheet, or past proof (stop)':
    'within 10 % of the torque due (watch); above it by more on a sheet, or past proof (stop)',
  'at most 80 % of the proof load (watch), 100 % (stop)':
    'at most 80 % of the proof load (watch), 100 % (stop)',
  'at least {0} (watch), four fifths of it (stop), and not bottomed (stop)':
    'at least {0} (watch), four fifths of it (stop), and not bottomed (stop)',
  'T = the sheet’s; none given': 'T = the sheet’s; none given',
  // calculators/workshop/panel-hole.ts
  'The hole is for': 'The hole is for',
  'What sits in it.': 'What sits in it.',
  'a rubber grommet': 'a rubber grommet',
  'a metric cable gland': 'a metric cable gland',
  'a bolt to pass through': 'a bolt to pass through',
  'a thread to be cut': 'a thread to be cut',
  'Wires through it': 'Wires through it',
  'Outside diameters, over the insulation, with any sleeve.':
    'Outside diameters, over the insulation, with any sleeve.',
  'Over the insulation.': 'Over the insulation.',
  'Alike.': 'Alike.',
  Panel: 'Panel',
  'Thickness where the hole is.': 'Thickness where the hole is.',
  'Grommet, bore': 'Grommet, bore',
  'The hole through it.': 'The hole through it.',
  'Grommet, groove': 'Grommet, groove',
  'Diameter at the bottom of the groove.': 'Diameter at the bottom of the groove.',
  'Grommet, groove width': 'Grommet, groove width',
  'Panel thickness it is made for.': 'Panel thickness it is made for.',
  'Metric size; left out, the smallest that usually takes the cable.':
    'Metric size; left out, the smallest that usually takes the cable.',
  'Gland, thinnest cable': 'Gland, thinnest cable',
  'Gland, thickest cable': 'Gland, thickest cable',
  'Of the bolt or to be cut, coarse.': 'Of the bolt or to be cut, coarse.',
  Fit: 'Fit',
  'Coarse where parts do not quite meet.': 'Coarse where parts do not quite meet.',
  fine: 'fine',
  medium: 'medium',
  coarse: 'coarse',
  'general work': 'general work',
  'Panel of': 'Panel of',
  'For a thread cut in it.': 'For a thread cut in it.',
  steel: 'steel',
  aluminium: 'aluminium',
  'bodies mostly are': 'bodies mostly are',
  'Made with': 'Made with',
  'Step drills make round holes in thin sheet.': 'Step drills make round holes in thin sheet.',
  'metric step drill, 4 to 40 mm in steps of 2 mm':
    'metric step drill, 4 to 40 mm in steps of 2 mm',
  'inch step drill, 3/16 to 1 3/8 in in steps of 1/16 in':
    'inch step drill, 3/16 to 1 3/8 in in steps of 1/16 in',
  'twist drill or hole saw, to 0.1 mm': 'twist drill or hole saw, to 0.1 mm',
  'Holes in panels': 'Holes in panels',
  'The hole for a grommet, a gland, a bolt or a thread, the drill for it, and whether the wires go through.':
    'The hole for a grommet, a gland, a bolt or a thread, the drill for it, and whether the wires go through.',
  'Wires together': 'Wires together',
  'Hole due': 'Hole due',
  'Nearest size of the tool': 'Nearest size of the tool',
  'Larger than due': 'Larger than due',
  'Of the opening taken': 'Of the opening taken',
  'Equal wires: exact for 1 to 13, and for full rings of 19, 37 and 61; between those the next row, which they certainly fit.':
    'Equal wires: exact for 1 to 13, and for full rings of 19, 37 and 61; between those the next row, which they certainly fit.',
  'Different wires: the trade estimate, never less than the two thickest side by side, never more than as many of the thickest.':
    'Different wires: the trade estimate, never less than the two thickest side by side, never more than as many of the thickest.',
  'Ties, tape and a bend at the hole need room as well.':
    'Ties, tape and a bend at the hole need room as well.',
  'Which cable a gland grips is on its sheet only.':
    'Which cable a gland grips is on its sheet only.',
  'Wires go through': 'Wires go through',
  'The tool makes that hole': 'The tool makes that hole',
  'Fits the panel': 'Fits the panel',
  'No wires go through this hole.': 'No wires go through this hole.',
  'Enter the wires.': 'Enter the wires.',
  'More than 61 wires: split the loom.': 'More than 61 wires: split the loom.',
  'The wires are {0} across': 'The wires are {0} across',
  'The wires are at most {0} across': 'The wires are at most {0} across',
  'The wires are about {0} across': 'The wires are about {0} across',
  '{0}: enter the grommet’s bore.': '{0}: enter the grommet’s bore.',
  '{0}: no gland of the list takes that. Split them, or enter the range on the gland’s sheet.':
    '{0}: no gland of the list takes that. Split them, or enter the range on the gland’s sheet.',
  '{0}; {1} is the most that goes through. Take a larger one.':
    '{0}; {1} is the most that goes through. Take a larger one.',
  '{0}; the gland grips nothing under {1}. Take a smaller one.':
    '{0}; the gland grips nothing under {1}. Take a smaller one.',
  '{0} and fit, but a gland seals one round cable: water runs in between single wires. Use an insert with one hole each.':
    '{0} and fit, but a gland seals one round cable: water runs in between single wires. Use an insert with one hole each.',
  '{0}, {1} of the bore: they jam and chafe. Take a larger one.':
    '{0}, {1} of the bore: they jam and chafe. Take a larger one.',
  '{0} and go through {1}.': '{0} and go through {1}.',
  'grommet’s bore': 'grommet’s bore',
  'diameter in its groove': 'diameter in its groove',
  'thinnest cable of the gland': 'thinnest cable of the gland',
  thickest: 'thickest',
  'Measure the grommet at the bottom of its groove: that is the hole.':
    'Measure the grommet at the bottom of its groove: that is the hole.',
  'Choose a gland.': 'Choose a gland.',
  'Choose the thread.': 'Choose the thread.',
  'The hole is {0}, larger than that drill goes: use a punch or a hole saw.':
    'The hole is {0}, larger than that drill goes: use a punch or a hole saw.',
  'The hole is {0}; the nearest size is {1}, {2} smaller':
    'The hole is {0}; the nearest size is {1}, {2} smaller',
  'The hole is {0}; the nearest size is {1}, {2} larger':
    'The hole is {0}; the nearest size is {1}, {2} larger',
  '{0}: open it with a file or a reamer, or use another tool.':
    '{0}: open it with a file or a reamer, or use another tool.',
  '{0}: too loose. Stop a step earlier and open it up, or use another tool.':
    '{0}: too loose. Stop a step earlier and open it up, or use another tool.',
  '{0}: a little loose. Stop a step earlier and open it up if it matters.':
    '{0}: a little loose. Stop a step earlier and open it up if it matters.',
  'Measure the width of the groove: it must match the panel.':
    'Measure the width of the groove: it must match the panel.',
  'The groove is {0} wide and the panel {1}': 'The groove is {0} wide and the panel {1}',
  '{0}: it will not stay in. Take one for that panel.':
    '{0}: it will not stay in. Take one for that panel.',
  '{0}: it sits loose. Take one for that panel.': '{0}: it sits loose. Take one for that panel.',
  '{0}: it sits tight. Take one for that panel.': '{0}: it sits tight. Take one for that panel.',
  'The panel gives {0} of thread; {1} should hold':
    'The panel gives {0} of thread; {1} should hold',
  '{0}: use a threaded insert, a weld nut or a bolt with a nut behind.':
    '{0}: use a threaded insert, a weld nut or a bolt with a nut behind.',
  'The panel is {0}: anything does here.': 'The panel is {0}: anything does here.',
  'at most 90 % of the bore across (watch), all of it (stop)':
    'at most 90 % of the bore across (watch), all of it (stop)',
  'within the range of the gland (stop), one round cable (watch)':
    'within the range of the gland (stop), one round cable (watch)',
  '{0} to {1} over the hole due (watch), {2} (stop)':
    '{0} to {1} over the hole due (watch), {2} (stop)',
  'at least 1.0 diameters of thread in steel, 1.5 in aluminium (watch), four fifths (stop)':
    'at least 1.0 diameters of thread in steel, 1.5 in aluminium (watch), four fifths (stop)',
  'panel 0.7 to 1.05 of the groove (watch), at most 1.2 (stop)':
    'panel 0.7 to 1.05 of the groove (watch), at most 1.2 (stop)',
  // calculators/wrong-way.ts
  'The {0}, {1}, is above the {2}, {3}: check which is which.':
    'The {0}, {1}, is above the {2}, {3}: check which is which.',
  // src/card/ask-link.ts
  'Ask about this block': 'Ask about this block',
  // src/card/block-page.ts
  'One block of {0}, {1}, edition {2}': 'One block of {0}, {1}, edition {2}',
  'Back to its place in {0}': 'Back to its place in {0}',
  'in {0}': 'in {0}',
  'of {0}': 'of {0}',
  Value: 'Value',
  How: 'How',
  'Where from': 'Where from',
  Number: 'Number',
  'The numbers that it rests on, down to the last.':
    'The numbers that it rests on, down to the last.',
  // src/card/calculator.ts
  '{0} to {1}': '{0} to {1}',
  'another word': 'another word',
  'Looked up for this kit.': 'Looked up for this kit.',
  'Recalled, to be confirmed.': 'Recalled, to be confirmed.',
  'A simplification chosen here.': 'A simplification chosen here.',
  // src/card/card.ts
  'To settle it: {0}': 'To settle it: {0}',
  'Rests on {0} guess': 'Rests on {0} guess',
  'Rests on {0} guesses': 'Rests on {0} guesses',
  'Your figures, of no note.': 'Your figures, of no note.',
  'Your figures. The builder’s verdict: {0}': 'Your figures. The builder’s verdict: {0}',
  'Accepted because:': 'Accepted because:',
  'Where it says “{0}”, treat it as not passed.': 'Where it says “{0}”, treat it as not passed.',
  'This block by itself': 'This block by itself',
  'What went in': 'What went in',
  'What comes out': 'What comes out',
  Working: 'Working',
  Checks: 'Checks',
  '{0}: formula, limits and outside checks': '{0}: formula, limits and outside checks',
  // src/card/figures.ts
  'now {0}': 'now {0}',
  'the builder’s {0}': 'the builder’s {0}',
  'from {0}': 'from {0}',
  // src/card/findings.ts
  'Limit: {0}.': 'Limit: {0}.',
  // src/card/handed.ts
  '<{0}> has nothing to show: the kit’s plugin did not run on this page. Notes are built with `npm run build` or `npm run dev`.':
    '<{0}> has nothing to show: the kit’s plugin did not run on this page. Notes are built with `npm run build` or `npm run dev`.',
  // src/card/hazards.ts
  'Reviewed {0}.': 'Reviewed {0}.',
  // src/card/matters-words.ts
  '{0} percentage point': '{0} percentage point',
  '{0} percentage points': '{0} percentage points',
  'it is outside that now': 'it is outside that now',
  'cut off where the field ends': 'cut off where the field ends',
  'Over its usual range, {0}, it cannot be told at either end.':
    'Over its usual range, {0}, it cannot be told at either end.',
  'Over its usual range, {0}, it goes from {1} to {2}.':
    'Over its usual range, {0}, it goes from {1} to {2}.',
  'Over its ± {0}, {1}, it cannot be told at either end.':
    'Over its ± {0}, {1}, it cannot be told at either end.',
  'Over its ± {0}, {1}, it goes from {2} to {3}.': 'Over its ± {0}, {1}, it goes from {2} to {3}.',
  '{0} more or less does not move it.': '{0} more or less does not move it.',
  'as much': 'as much',
  '{0} more leaves no result': '{0} more leaves no result',
  '{0} more does not move it': '{0} more does not move it',
  '{0} more raises it by {1}': '{0} more raises it by {1}',
  '{0} more lowers it by {1}': '{0} more lowers it by {1}',
  '{0} less leaves no result': '{0} less leaves no result',
  '{0} less does not move it': '{0} less does not move it',
  '{0} less raises it by {1}': '{0} less raises it by {1}',
  '{0} less lowers it by {1}': '{0} less lowers it by {1}',
  '{0} more than now': '{0} more than now',
  '{0} less than now': '{0} less than now',
  '{0}; and {1} more': '{0}; and {1} more',
  // src/card/matters.ts
  'What moves it most': 'What moves it most',
  'Nothing can be moved before this is known: {0}.':
    'Nothing can be moved before this is known: {0}.',
  '{0} cannot be told as things stand.': '{0} cannot be told as things stand.',
  '{0} is {1} now, the line across each bar.': '{0} is {1} now, the line across each bar.',
  'It has no number to move.': 'It has no number to move.',
  'No input, moved alone, is seen to move it.': 'No input, moved alone, is seen to move it.',
  'Each input is moved alone, the rest stays as it is.':
    'Each input is moved alone, the rest stays as it is.',
  'Does not move it over its range: {0}.': 'Does not move it over its range: {0}.',
  'Cannot tell how far it moves with: {0}. At both ends of the range there is no result.':
    'Cannot tell how far it moves with: {0}. At both ends of the range there is no result.',
  'A temperature, a gauge pressure, a position and a count move by a fixed step, since a tenth of them means little; so does what has no tenth left before its end.':
    'A temperature, a gauge pressure, a position and a count move by a fixed step, since a tenth of them means little; so does what has no tenth left before its end.',
  'There are too many inputs for one press: {0} are left out.':
    'There are too many inputs for one press: {0} are left out.',
  // src/card/moves-chart.ts
  '{0} at {1}': '{0} at {1}',
  'How far each input moves “{0}”; the same stands in words below.':
    'How far each input moves “{0}”; the same stands in words below.',
  // src/card/note-list.ts
  'last changed {0}': 'last changed {0}',
  '{0} note': '{0} note',
  '{0} notes': '{0} notes',
  '{0} calculation': '{0} calculation',
  '{0} calculations': '{0} calculations',
  'All {0} open guesses': 'All {0} open guesses',
  '{0}, among all that is assumed': '{0}, among all that is assumed',
  // src/card/number-list.ts
  'How it came': 'How it came',
  Source: 'Source',
  Note: 'Note',
  '{0} number stands in these notes. Each leads to its story.':
    '{0} number stands in these notes. Each leads to its story.',
  '{0} numbers stand in these notes. Each leads to its story.':
    '{0} numbers stand in these notes. Each leads to its story.',
  // src/card/number.ts
  'your figures; the builder’s {0}': 'your figures; the builder’s {0}',
  // src/card/origin.ts
  'Read {0}.': 'Read {0}.',
  'Measured {0}.': 'Measured {0}.',
  'Instrument: {0}': 'Instrument: {0}',
  'Worked out by {0} from what went in.': 'Worked out by {0} from what went in.',
  'Compared with the prediction, {0}.': 'Compared with the prediction, {0}.',
  '{0} before rounding': '{0} before rounding',
  'Compared with the prediction: the same as {0}.':
    'Compared with the prediction: the same as {0}.',
  'Compared with the prediction: {0} below {1}.': 'Compared with the prediction: {0} below {1}.',
  'Compared with the prediction: {0} above {1}.': 'Compared with the prediction: {0} above {1}.',
  'changed {0} in {1}: {2}': 'changed {0} in {1}: {2}',
  'changed {0} in {1} because {2}: {3}': 'changed {0} in {1} because {2}: {3}',
  'Replaced {0} in {1}: {2}.': 'Replaced {0} in {1}: {2}.',
  'Replaced {0} in {1} because {2}: {3}.': 'Replaced {0} in {1} because {2}: {3}.',
  'Now {0}': 'Now {0}',
  'Was {0} when this was written': 'Was {0} when this was written',
  'Given by name.': 'Given by name.',
  'Because {0}': 'Because {0}',
  'From {0} it takes the place of {1}.': 'From {0} it takes the place of {1}.',
  // src/card/outside.ts
  Result: 'Result',
  'Printed there': 'Printed there',
  'Worked here': 'Worked here',
  Difference: 'Difference',
  Allowed: 'Allowed',
  'outside what is allowed': 'outside what is allowed',
  'not reported': 'not reported',
  'expected {0}': 'expected {0}',
  'used {0} time here': 'used {0} time here',
  'used {0} times here': 'used {0} times here',
  '{0} outside case': '{0} outside case',
  '{0} outside cases': '{0} outside cases',
  // src/card/part-list.ts
  'No part is listed in these notes yet.': 'No part is listed in these notes yet.',
  '{0} part': '{0} part',
  '{0} parts': '{0} parts',
  '{0}, {1} of them fitted.': '{0}, {1} of them fitted.',
  '{0}, {1} of them fitted, each with its mass.': '{0}, {1} of them fitted, each with its mass.',
  '{0}, {1} of them fitted. Of these {2} have no mass and are in no sum of masses.':
    '{0}, {1} of them fitted. Of these {2} have no mass and are in no sum of masses.',
  'Each row leads to where the part is written up.':
    'Each row leads to where the part is written up.',
  'Price of one': 'Price of one',
  'Mass of one': 'Mass of one',
  'together {0}': 'together {0}',
  used: 'used',
  'Each currency is added up by itself: no rate of exchange is kept here.':
    'Each currency is added up by itself: no rate of exchange is kept here.',
  'Owned before, and counted as nothing: {0}.': 'Owned before, and counted as nothing: {0}.',
  'Without a price, so that it all comes to more: {0}.':
    'Without a price, so that it all comes to more: {0}.',
  Sold: 'Sold',
  'With {0} of what is still to be paid put by, {1}, it comes to {2}.':
    'With {0} of what is still to be paid put by, {1}, it comes to {2}.',
  '{0} price in it is a guess.': '{0} price in it is a guess.',
  '{0} prices in it are guesses.': '{0} prices in it are guesses.',
  'In {0}': 'In {0}',
  'All of it': 'All of it',
  'What was sold counts against what was spent.': 'What was sold counts against what was spent.',
  // src/card/part.ts
  ordered: 'ordered',
  'bought, not fitted yet': 'bought, not fitted yet',
  'fitted, already owned': 'fitted, already owned',
  'paid for, a spare': 'paid for, a spare',
  'taken out': 'taken out',
  'taken out and sold': 'taken out and sold',
  'part, {0}': 'part, {0}',
  // src/card/picture.ts
  'no picture yet: {0}': 'no picture yet: {0}',
  'upper left': 'upper left',
  'upper middle': 'upper middle',
  'upper right': 'upper right',
  'middle left': 'middle left',
  middle: 'middle',
  'middle right': 'middle right',
  'lower left': 'lower left',
  'lower middle': 'lower middle',
  'lower right': 'lower right',
  Before: 'Before',
  After: 'After',
  // src/card/plot-table.ts
  gap: 'gap',
  'The numbers of this drawing': 'The numbers of this drawing',
  'Faint: the builder’s.': 'Faint: the builder’s.',
  // src/card/redirect.ts
  'Wall sheet: {0}': 'Wall sheet: {0}',
  'This note has another name now': 'This note has another name now',
  'It is at {0}.': 'It is at {0}.',
  // src/card/remedies.ts
  'What would pass': 'What would pass',
  'Found by working this card again with one choice changed. It speaks of this card’s checks only; local codes and licensed practice come first.':
    'Found by working this card again with one choice changed. It speaks of this card’s checks only; local codes and licensed practice come first.',
  'Nothing can be judged before this is known: {0}.':
    'Nothing can be judged before this is known: {0}.',
  'It passes as it is: there is nothing to change.':
    'It passes as it is: there is nothing to change.',
  'Any one of these choices, changed alone, would make it pass:':
    'Any one of these choices, changed alone, would make it pass:',
  'These cannot do it alone: {0}.': 'These cannot do it alone: {0}.',
  'Not offered, since no choice: {0}.': 'Not offered, since no choice: {0}.',
  'Not tried, there are too many for one press: {0}.':
    'Not tried, there are too many for one press: {0}.',
  'Nothing on this card is the builder’s choice: what it rests on has to change.':
    'Nothing on this card is the builder’s choice: what it rests on has to change.',
  'Nothing that is left to choose on this card can change it.':
    'Nothing that is left to choose on this card can change it.',
  'No choice on this card, changed alone, was found to make it pass; tried: {0}.':
    'No choice on this card, changed alone, was found to make it pass; tried: {0}.',
  'worked out on another card': 'worked out on another card',
  'not given now': 'not given now',
  'The first made size is {0}.': 'The first made size is {0}.',
  'That is outside its usual range.': 'That is outside its usual range.',
  'At {0}, {1} further on: {2}. {3}': 'At {0}, {1} further on: {2}. {3}',
  '{0} or thicker': '{0} or thicker',
  '{0} or more': '{0} or more',
  '{0} or thinner': '{0} or thinner',
  '{0} or less': '{0} or less',
  'any value that the field allows': 'any value that the field allows',
  'Or {0}.': 'Or {0}.',
  'It makes {0} worse than now.': 'It makes {0} worse than now.',
  // src/card/sheet.ts
  'Wall sheet of {0}, {1}': 'Wall sheet of {0}, {1}',
  '{0}, edition {1}. A print with another edition is stale.':
    '{0}, edition {1}. A print with another edition is stale.',
  What: 'What',
  Figure: 'Figure',
  'was {0}': 'was {0}',
  marked: 'marked',
  '“Cannot tell” counts as not passed.': '“Cannot tell” counts as not passed.',
  'Rests on {0} guess.': 'Rests on {0} guess.',
  'Rests on {0} guesses.': 'Rests on {0} guesses.',
  '{0} check passed.': '{0} check passed.',
  '{0} checks passed.': '{0} checks passed.',
  'Also {0}: {1}.': 'Also {0}: {1}.',
  'Done by': 'Done by',
  'Checked by': 'Checked by',
  // src/card/source-list.ts
  'No figure of these notes names a source yet.': 'No figure of these notes names a source yet.',
  Read: 'Read',
  'What it says': 'What it says',
  '“{0}”, mentioned in {1}, nothing rests on it': '“{0}”, mentioned in {1}, nothing rests on it',
  'no day given': 'no day given',
  'linked from {0}': 'linked from {0}',
  'linked from {0} on {1}': 'linked from {0} on {1}',
  // src/card/stories.ts
  'line {0}': 'line {0}',
  'Rests on': 'Rests on',
  Place: 'Place',
  'Where every number of this note comes from. What a block was given by name stands under that name, and what comes out of it is worked in its card. Places are lines of {0}.':
    'Where every number of this note comes from. What a block was given by name stands under that name, and what comes out of it is worked in its card. Places are lines of {0}.',
  'In the text': 'In the text',
  // src/card/take/ask.ts
  'Question: {0} ({1})': 'Question: {0} ({1})',
  '{0}: {1} (builder: {2})': '{0}: {1} (builder: {2})',
  'My question:': 'My question:',
  'Verdict: {0}': 'Verdict: {0}',
  '{0} changed figure left out: no room.': '{0} changed figure left out: no room.',
  '{0} changed figures left out: no room.': '{0} changed figures left out: no room.',
  // src/card/take/changed.ts
  'left out': 'left out',
  // src/card/take/csv.ts
  'the builder’s': 'the builder’s',
  'a reader’s own': 'a reader’s own',
  'moved by a reader’s figures': 'moved by a reader’s figures',
  // src/card/take/figure-lines.ts
  'row {0}': 'row {0}',
  // src/card/take/known-by.ts
  'the reader’s own figure': 'the reader’s own figure',
  'in “{0}”': 'in “{0}”',
  'measured {0}': 'measured {0}',
  'measured {0} with {1}': 'measured {0} with {1}',
  '{0} by “{1}”': '{0} by “{1}”',
  // src/card/take/mdx.ts
  'Every figure here is a literal without its source: give it one of your own.':
    'Every figure here is a literal without its source: give it one of your own.',
  'Guesses, or resting on guesses: {0}.': 'Guesses, or resting on guesses: {0}.',
  'Left to what the calculator assumes: {0}.': 'Left to what the calculator assumes: {0}.',
  'Cannot be told, and is for you to give: {0}.': 'Cannot be told, and is for you to give: {0}.',
  // src/card/take/parts-csv.ts
  new: 'new',
  // src/card/take/plain.ts
  Sources: 'Sources',
  Warnings: 'Warnings',
  'The builder’s verdict: {0}': 'The builder’s verdict: {0}',
  // src/card/take/provenance.ts
  'Note: {0}, edition {1}': 'Note: {0}, edition {1}',
  // src/card/take/whose.ts
  'A reader’s figures, of no note: nobody has built it so.':
    'A reader’s figures, of no note: nobody has built it so.',
  'The builder’s figures.': 'The builder’s figures.',
  'A reader’s figures, not the builder’s: {0} figure changed.':
    'A reader’s figures, not the builder’s: {0} figure changed.',
  'A reader’s figures, not the builder’s: {0} figures changed.':
    'A reader’s figures, not the builder’s: {0} figures changed.',
  // src/card/tally.ts
  '{0} open guess': '{0} open guess',
  '{0} open guesses': '{0} open guesses',
  '{0} input left at its usual value': '{0} input left at its usual value',
  '{0} inputs left at usual values': '{0} inputs left at usual values',
  // src/card/tasks.ts
  'to do': 'to do',
  done: 'done',
  'carried on in another note': 'carried on in another note',
  'open question': 'open question',
  'carried on {0} in {1}': 'carried on {0} in {1}',
  'closed {0} in {1}': 'closed {0} in {1}',
  'Nothing is open in these notes.': 'Nothing is open in these notes.',
  '{0} task is open.': '{0} task is open.',
  '{0} tasks are open.': '{0} tasks are open.',
  '{0} question is open.': '{0} question is open.',
  '{0} questions are open.': '{0} questions are open.',
  '{0} task': '{0} task',
  '{0} tasks': '{0} tasks',
  '{0} question': '{0} question',
  '{0} questions': '{0} questions',
  '{0} are open.': '{0} are open.',
  'All {0} of them, by phase': 'All {0} of them, by phase',
  'By phase, with what is done': 'By phase, with what is done',
  'To do': 'To do',
  'Written in': 'Written in',
  'Done on': 'Done on',
  By: 'By',
  'opened in {0}': 'opened in {0}',
  // src/card/title-block.ts
  '{0}. {1}. {2}, edition {3}.': '{0}. {1}. {2}, edition {3}.',
  Vehicle: 'Vehicle',
  Date: 'Date',
  Edition: 'Edition',
  Numbers: 'Numbers',
  // src/card/usage.ts
  'a name': 'a name',
  // src/card/words.ts
  'cannot tell': 'cannot tell',
  measured: 'measured',
  'from a sheet': 'from a sheet',
  'a guess': 'a guess',
  chosen: 'chosen',
  'worked out': 'worked out',
  'worked out from measurements': 'worked out from measurements',
  'worked out, as firm as a sheet': 'worked out, as firm as a sheet',
  'worked out from choices': 'worked out from choices',
  'worked out, rests on a guess': 'worked out, rests on a guess',
  pass: 'pass',
  watch: 'watch',
  stop: 'stop',
  'pass, provisional': 'pass, provisional',
  'STOP, accepted by the builder': 'STOP, accepted by the builder',
  'under way': 'under way',
  'done again': 'done again',
  'given up': 'given up',
  'Under way': 'Under way',
  Done: 'Done',
  'Done again': 'Done again',
  'Given up': 'Given up',
  DANGER: 'DANGER',
  WARNING: 'WARNING',
  CAUTION: 'CAUTION',
  NOTICE: 'NOTICE',
  'Draft, not published.': 'Draft, not published.',
  January: 'January',
  February: 'February',
  March: 'March',
  April: 'April',
  May: 'May',
  June: 'June',
  July: 'July',
  August: 'August',
  September: 'September',
  October: 'October',
  November: 'November',
  December: 'December',
  '{0} {1} {2}': '{0} {1} {2}',
  'how many': 'how many',
  'price of one': 'price of one',
  'price of all': 'price of all',
  'mass of one': 'mass of one',
  'mass of all': 'mass of all',
  'behind the front axle': 'behind the front axle',
  height: 'height',
  'current of one': 'current of one',
  'current of all': 'current of all',
  'power of one': 'power of one',
  'power of all': 'power of all',
  'on for': 'on for',
  'start multiple': 'start multiple',
  // src/cli/check.ts
  '{0} draft checked and left out': '{0} draft checked and left out',
  '{0} drafts checked and left out': '{0} drafts checked and left out',
  // src/cli/dev.ts
  'writing mode at {0} (stop with Ctrl+C)': 'writing mode at {0} (stop with Ctrl+C)',
  // src/cli/new.ts
  '{0} is there already, and stays as it is': '{0} is there already, and stays as it is',
  '{0}: phase {1}, a draft until you take out `draft: true`':
    '{0}: phase {1}, a draft until you take out `draft: true`',
  'cannot make sense of `{0}`; allowed: {1}': 'cannot make sense of `{0}`; allowed: {1}',
  'the clock of this machine says {0}: give the day, --date YYYY-MM-DD':
    'the clock of this machine says {0}: give the day, --date YYYY-MM-DD',
  'there is no folder {0}: name the one with your site.yaml, --content DIR':
    'there is no folder {0}: name the one with your site.yaml, --content DIR',
  // src/cli/options.ts
  '--format is text or json, not `{0}`': '--format is text or json, not `{0}`',
  '--port is a number up to 65535, not `{0}`': '--port is a number up to 65535, not `{0}`',
  // src/cli/print.ts
  'allowed: {0}': 'allowed: {0}',
  'also at {0}': 'also at {0}',
  // src/cli/start.ts
  'the site is at {0} (stop with Ctrl+C)': 'the site is at {0} (stop with Ctrl+C)',
  // src/cli/verify.ts
  'verified: everything shown is what its numbers give':
    'verified: everything shown is what its numbers give',
  '{0} difference': '{0} difference',
  '{0} differences': '{0} differences',
  // src/cli/words.ts
  'name one file, as in {0}': 'name one file, as in {0}',
  '{0} text in {1}': '{0} text in {1}',
  '{0} texts in {1}': '{0} texts in {1}',
  '{0} cannot be read: {1}': '{0} cannot be read: {1}',
  '{0} has no {1} or no {2}: a translation is a copy of src/words/en.ts':
    '{0} has no {1} or no {2}: a translation is a copy of src/words/en.ts',
  // src/layouts/Legend.astro
  'within every limit that is checked': 'within every limit that is checked',
  'the same, but it rests on a guess': 'the same, but it rests on a guess',
  'near a limit': 'near a limit',
  'past a limit': 'past a limit',
  'something needed is not known': 'something needed is not known',
  // src/layouts/Page.astro
  'Written by {0}.': 'Written by {0}.',
  'Every figure of these pages, in one file: {0}, or for a spreadsheet {1}.':
    'Every figure of these pages, in one file: {0}, or for a spreadsheet {1}.',
  'Where they were read: {0}.': 'Where they were read: {0}.',
  sources: 'sources',
  'This is arithmetic: local codes and licensed practice decide.':
    'This is arithmetic: local codes and licensed practice decide.',
  'Skip to the page': 'Skip to the page',
  Site: 'Site',
  Notes: 'Notes',
  Open: 'Open',
  Calculators: 'Calculators',
  Tables: 'Tables',
  Writing: 'Writing',
  'You read a copy on a disk: it is whole, but figures can be changed, other units chosen and the notes searched only where they are served as a site.':
    'You read a copy on a disk: it is whole, but figures can be changed, other units chosen and the notes searched only where they are served as a site.',
  // src/layouts/Writing.astro
  'What can be written': 'What can be written',
  'Elements, calculators and units of these notes, with examples that are worked out.':
    'Elements, calculators and units of these notes, with examples that are worked out.',
  // src/ledger/cells.ts
  '`{0}[{1}]` was not given `{2}`': '`{0}[{1}]` was not given `{2}`',
  '`{0}` has {1} row, {2}': '`{0}` has {1} row, {2}',
  '`{0}` has {1} rows, 0 to {2}': '`{0}` has {1} rows, 0 to {2}',
  'rows are counted from 0: `{0}[{1}].{2}` is in the last':
    'rows are counted from 0: `{0}[{1}].{2}` is in the last',
  '`{0}` has no rows: `{1}` cannot tell': '`{0}` has no rows: `{1}` cannot tell',
  '`{0}` has no rows': '`{0}` has no rows',
  // src/ledger/dates.ts
  'a date is written YYYY-MM-DD, such as 2026-03-14':
    'a date is written YYYY-MM-DD, such as 2026-03-14',
  'there is no such day: {0} has {1} days': 'there is no such day: {0} has {1} days',
  'there is no such month: 01 to 12 are written in the middle, as in 2026-03-14':
    'there is no such month: 01 to 12 are written in the middle, as in 2026-03-14',
  // src/ledger/drafts.ts
  'this takes something from `{0}`, which is a draft':
    'this takes something from `{0}`, which is a draft',
  '`{0}` stands in `{1}`, which is a draft: what is published cannot rest on it':
    '`{0}` stands in `{1}`, which is a draft: what is published cannot rest on it',
  'publish the draft as well (take out `draft: true`), or make this note a draft too':
    'publish the draft as well (take out `draft: true`), or make this note a draft too',
  'a link to `{0}`, which is a draft: readers would find nothing there':
    'a link to `{0}`, which is a draft: readers would find nothing there',
  'publish the draft as well (take out `draft: true`), or leave the words without the link':
    'publish the draft as well (take out `draft: true`), or leave the words without the link',
  // src/ledger/headlines.ts
  '`headline`: this note has no number called `{0}`':
    '`headline`: this note has no number called `{0}`',
  // src/ledger/input.ts
  '“{0}” cannot be `{1}`': '“{0}” cannot be `{1}`',
  '“{0}” is empty: `{1}` was read': '“{0}” is empty: `{1}` was read',
  'any words': 'any words',
  '“{0}” has {1} row': '“{0}” has {1} row',
  '“{0}” has {1} rows': '“{0}” has {1} rows',
  '{0} to {1} rows, one for each {2}': '{0} to {1} rows, one for each {2}',
  // src/ledger/judge.ts
  '`{0}` is a stop that no reason covers: {1}': '`{0}` is a stop that no reason covers: {1}',
  '`{0}` is a stop: {1}': '`{0}` is a stop: {1}',
  'change what it rests on, or publish it with your reason: `accept="…"`':
    'change what it rests on, or publish it with your reason: `accept="…"`',
  '`{0}` accepts a stop, and there is none': '`{0}` accepts a stop, and there is none',
  'take the `accept` out, so that a later stop is seen':
    'take the `accept` out, so that a later stop is seen',
  // src/ledger/link/blocks.ts
  'there is no calculator `{0}`': 'there is no calculator `{0}`',
  'there are: {0}': 'there are: {0}',
  'did you mean {0}?': 'did you mean {0}?',
  'the calculator `{0}` has no input `{1}`': 'the calculator `{0}` has no input `{1}`',
  // src/ledger/link/fields.ts
  '`{0}` is a block; say which number of it': '`{0}` is a block; say which number of it',
  '`{0}` was not given `{1}`': '`{0}` was not given `{1}`',
  '`{0}` is a word, not a number': '`{0}` is a word, not a number',
  'the calculator `{0}` has no `{1}`': 'the calculator `{0}` has no `{1}`',
  '`{0}` is a table; say which row and column of it':
    '`{0}` is a table; say which row and column of it',
  'such as `{0}[0].{1}`': 'such as `{0}[0].{1}`',
  '`{0}` has words in a column `{1}`': '`{0}` has words in a column `{1}`',
  '`{0}` has no numbers in a column `{1}`': '`{0}` has no numbers in a column `{1}`',
  // src/ledger/link/inputs.ts
  '`{0}` is one number, not a list': '`{0}` is one number, not a list',
  '`{0}` is one word, not a list': '`{0}` is one word, not a list',
  '`{0}` takes a word, not a number': '`{0}` takes a word, not a number',
  'chosen in this block': 'chosen in this block',
  'typed into this block, without a source': 'typed into this block, without a source',
  'said in the site’s settings': 'said in the site’s settings',
  '`{0}` does not say `{1}`: {2}': '`{0}` does not say `{1}`: {2}',
  // src/ledger/link/lists.ts
  'a table inside <Calc> with the columns {0}': 'a table inside <Calc> with the columns {0}',
  '`{0}` has no list of {1}: {2}': '`{0}` has no list of {1}: {2}',
  '`{0}` is a list: one row for each {1}': '`{0}` is a list: one row for each {1}',
  '`{0}` has {1} row': '`{0}` has {1} row',
  '`{0}` has {1} rows': '`{0}` has {1} rows',
  'a {0} has no `{1}`': 'a {0} has no `{1}`',
  // src/ledger/link/part-figures.ts
  'it was given no figures': 'it was given no figures',
  '`{0}` is a part; say which figure of it': '`{0}` is a part; say which figure of it',
  'the part `{0}` was not given `{1}`': 'the part `{0}` was not given `{1}`',
  // src/ledger/link/part-rows.ts
  '`{0}={{1}}`: a <Part> does not say what a {2} needs ({3})':
    '`{0}={{1}}`: a <Part> does not say what a {2} needs ({3})',
  'write the rows out, in a table inside <Calc>': 'write the rows out, in a table inside <Calc>',
  '`{0}={{1}}`: no such part up to {2} has what a {3} needs':
    '`{0}={{1}}`: no such part up to {2} has what a {3} needs',
  'parts that are {0} and have {1}': 'parts that are {0} and have {1}',
  'the part `{0}` ({1}) is left out of `{2}`: it does not say {3}':
    'the part `{0}` ({1}) is left out of `{2}`: it does not say {3}',
  'the part `{0}` ({1}) is left out of `{2}`: it is `owned`, so it was on the vehicle when that was weighed':
    'the part `{0}` ({1}) is left out of `{2}`: it is `owned`, so it was on the vehicle when that was weighed',
  'take its `x` out if that is so; if it came on since then, `status="fitted" price="$0"`':
    'take its `x` out if that is so; if it came on since then, `status="fitted" price="$0"`',
  // src/ledger/link/part.ts
  'as many as are fitted': 'as many as are fitted',
  'typed at the part, without a source': 'typed at the part, without a source',
  'planned, and not asked for yet': 'planned, and not asked for yet',
  'the order': 'the order',
  'the receipt': 'the receipt',
  // src/ledger/link/resolve.ts
  'the note `{0}` has no number or block called `{1}`':
    'the note `{0}` has no number or block called `{1}`',
  '`{0}` is a number; it has no `{1}`': '`{0}` is a number; it has no `{1}`',
  '`{0}` is a whole note; say which number of it': '`{0}` is a whole note; say which number of it',
  '`{0}` takes one name, not a sum': '`{0}` takes one name, not a sum',
  // src/ledger/link/sources.ts
  '`site.yaml` has no source called `{0}`': '`site.yaml` has no source called `{0}`',
  'add it under `sources:`, or write its title out':
    'add it under `sources:`, or write its title out',
  '`site.yaml` has no instrument called `{0}`': '`site.yaml` has no instrument called `{0}`',
  'add it under `instruments:`, or say what it is in words':
    'add it under `instruments:`, or say what it is in words',
  '`{0}` is an instrument: what was measured is a `<Reading id="weighed" … with="{1}" />`, and a part names it, `mass={weighed}`':
    '`{0}` is an instrument: what was measured is a `<Reading id="weighed" … with="{1}" />`, and a part names it, `mass={weighed}`',
  '`{0}` is a source: what it says is a `<Rated … source="{1}" />`':
    '`{0}` is a source: what it says is a `<Rated … source="{1}" />`',
  // src/ledger/link/tables.ts
  'the table’s columns ({0}) fit no list of `{1}`':
    'the table’s columns ({0}) fit no list of `{1}`',
  '`{0}` takes no list of parts': '`{0}` takes no list of parts',
  '`{0}` is given twice, as an attribute and as a table':
    '`{0}` is given twice, as an attribute and as a table',
  'the table’s columns ({0}) fit {1}': 'the table’s columns ({0}) fit {1}',
  'say which list it is: `{0}={[{ {1} }]}`, one pair of braces for each row':
    'say which list it is: `{0}={[{ {1} }]}`, one pair of braces for each row',
  // src/ledger/link/tasks.ts
  '`{0} in` names the note it stands in': '`{0} in` names the note it stands in',
  'the item says `closed in` and is not ticked': 'the item says `closed in` and is not ticked',
  'write `- [x]`, or take the words out': 'write `- [x]`, or take the words out',
  '`opened in` names a note of {0}, which is later than this one':
    '`opened in` names a note of {0}, which is later than this one',
  'the later note closes what the earlier one opened: turn the two round':
    'the later note closes what the earlier one opened: turn the two round',
  'the note `{0}` has no list of tasks, so nothing was opened in it':
    'the note `{0}` has no list of tasks, so nothing was opened in it',
  '`opened in` names the earlier note in which the item stands as `- [ ]`; the note that did it is named by `closed in`':
    '`opened in` names the earlier note in which the item stands as `- [ ]`; the note that did it is named by `closed in`',
  'the note `{0}` has no task `{1}`': 'the note `{0}` has no task `{1}`',
  'write it in the same words': 'write it in the same words',
  'did you mean `{0}`?': 'did you mean `{0}`?',
  // src/ledger/link/unknown.ts
  'there is no note `{0}`': 'there is no note `{0}`',
  'it has another name now: `./{0}.mdx`': 'it has another name now: `./{0}.mdx`',
  "the note `{0}` has one: `import { {1} } from './{2}.mdx'`":
    "the note `{0}` has one: `import { {1} } from './{2}.mdx'`",
  'no number, block or import is called `{0}`': 'no number, block or import is called `{0}`',
  'give a number this name with `id`, or import it from the note that has it':
    'give a number this name with `id`, or import it from the note that has it',
  // src/ledger/links.ts
  'a link without an address': 'a link without an address',
  'a link to `{0}`: a page cannot lead there': 'a link to `{0}`: a page cannot lead there',
  'a link to `{0}`: there is no such note': 'a link to `{0}`: there is no such note',
  'this note': 'this note',
  'the note `{0}`': 'the note `{0}`',
  'a link to `#{0}`: {1} has no heading, number or block there':
    'a link to `#{0}`: {1} has no heading, number or block there',
  'a heading is addressed in small letters with dashes: `#what-i-did`; a number by its name':
    'a heading is addressed in small letters with dashes: `#what-i-did`; a number by its name',
  'did you mean `#{0}`?': 'did you mean `#{0}`?',
  'a link to `{0}`: nothing is put on the site there':
    'a link to `{0}`: nothing is put on the site there',
  'a note is `./its-name.mdx`, a page of the site begins with a slash, such as `/numbers/`':
    'a note is `./its-name.mdx`, a page of the site begins with a slash, such as `/numbers/`',
  'write `./{0}`': 'write `./{0}`',
  '`was: {0}` is what the note is called now': '`was: {0}` is what the note is called now',
  '`was: {0}` is said by two notes: its address can lead to one only':
    '`was: {0}` is said by two notes: its address can lead to one only',
  '`was: {0}`: there is a note of that name, and its address is its own':
    '`was: {0}`: there is a note of that name, and its address is its own',
  'take it out of this note': 'take it out of this note',
  // src/ledger/load.ts
  '`{0}` becomes an address: small letters, digits and dashes only':
    '`{0}` becomes an address: small letters, digits and dashes only',
  'every note is a draft: there is nothing to publish yet':
    'every note is a draft: there is nothing to publish yet',
  'take out `draft: true` where a note is ready': 'take out `draft: true` where a note is ready',
  'the content folder has no `{0}`': 'the content folder has no `{0}`',
  'write one with at least `title: …` and `vehicle: …`':
    'write one with at least `title: …` and `vehicle: …`',
  '`{0}` is not read: a note is a file that ends in `.mdx`':
    '`{0}` is not read: a note is a file that ends in `.mdx`',
  'rename it to `{0}.mdx`': 'rename it to `{0}.mdx`',
  'the content folder has no notes': 'the content folder has no notes',
  'put the first one into `notes/`, for example `notes/donor.mdx`':
    'put the first one into `notes/`, for example `notes/donor.mdx`',
  '`{0}` cannot be read: it is a folder, a link that leads nowhere, or not yours to read':
    '`{0}` cannot be read: it is a folder, a link that leads nowhere, or not yours to read',
  'put the note itself there': 'put the note itself there',
  // src/ledger/names.ts
  'an id must not be empty': 'an id must not be empty',
  '`{0}` is a reserved word of the language behind the braces':
    '`{0}` is a reserved word of the language behind the braces',
  '`parts` already means the parts of all notes': '`parts` already means the parts of all notes',
  '`{0}` already means something in every note': '`{0}` already means something in every note',
  '`{0}` begins with a digit; in `{{1}}` it would be read as a number':
    '`{0}` begins with a digit; in `{{1}}` it would be read as a number',
  '`{0}` would be read as a sum in `{{1}}`; a name is letters and digits without spaces or dashes':
    '`{0}` would be read as a sum in `{{1}}`; a name is letters and digits without spaces or dashes',
  // src/ledger/override.ts
  'your figure': 'your figure',
  // src/ledger/page-links.ts
  'write `writing: true` into `site.yaml`: it is only there with that':
    'write `writing: true` into `site.yaml`: it is only there with that',
  'write `/{0}/`': 'write `/{0}/`',
  'all notes are on `/`': 'all notes are on `/`',
  'a link to `{0}`: addresses of pages end in a slash':
    'a link to `{0}`: addresses of pages end in a slash',
  'write `{0}/`': 'write `{0}/`',
  'a link to `{0}`: the site has no such page': 'a link to `{0}`: the site has no such page',
  // src/ledger/part-kinds.ts
  'a sum of money': 'a sum of money',
  'a number': 'a number',
  'as many times what it draws otherwise: `surge="2.5"`':
    'as many times what it draws otherwise: `surge="2.5"`',
  '`{0}.{1}` is `{2}`, for as many as there are; {3} is due':
    '`{0}.{1}` is `{2}`, for as many as there are; {3} is due',
  '`{0}.{1}` is `{2}`; {3} is due': '`{0}.{1}` is `{2}`; {3} is due',
  '`{0}.{1}` is `{2}`, which is not more than nothing':
    '`{0}.{1}` is `{2}`, which is not more than nothing',
  'what was sold has `status="sold"` and the price it fetched':
    'what was sold has `status="sold"` and the price it fetched',
  // src/ledger/phases.ts
  'Plan and rules': 'Plan and rules',
  'Donor survey': 'Donor survey',
  'Target, motor and gearing': 'Target, motor and gearing',
  'Strip-out': 'Strip-out',
  'Adapter and mounts': 'Adapter and mounts',
  'Pack and boxes': 'Pack and boxes',
  'High-voltage side': 'High-voltage side',
  'Cooling loop': 'Cooling loop',
  Charging: 'Charging',
  'Mass, brakes, suspension': 'Mass, brakes, suspension',
  'Cabin and controls': 'Cabin and controls',
  Commissioning: 'Commissioning',
  Certification: 'Certification',
  'Road test and ownership': 'Road test and ownership',
  // src/ledger/questions.ts
  'a mail address, such as `name@example.org`, or an https address with `{title}` and `{text}` where the words go':
    'a mail address, such as `name@example.org`, or an https address with `{title}` and `{text}` where the words go',
  'it has more than {0} characters; due is {1}': 'it has more than {0} characters; due is {1}',
  '{0} was read; write the mail address alone': '{0} was read; write the mail address alone',
  '{0} was read; an address begins with `https://`':
    '{0} was read; an address begins with `https://`',
  '{0} was read; due is {1}': '{0} was read; due is {1}',
  '`{0}` was read': '`{0}` was read',
  '{0}; {1} must stand where the words go': '{0}; {1} must stand where the words go',
  '{0}; `{1}` is none of `{title}` and `{text}`': '{0}; `{1}` is none of `{title}` and `{text}`',
  '{0}; that is no web address': '{0}; that is no web address',
  // src/ledger/range.ts
  'a plain number': 'a plain number',
  'a value in {0}': 'a value in {0}',
  'a value in {0} or {1}': 'a value in {0} or {1}',
  '`{0}` is below what “{1}” can be': '`{0}` is below what “{1}” can be',
  '`{0}` is above what “{1}” can be': '`{0}` is above what “{1}” can be',
  'unusual for “{0}”: it is mostly {1} to {2}': 'unusual for “{0}”: it is mostly {1} to {2}',
  // src/ledger/read.ts
  expression: 'expression',
  // src/ledger/read/attributes.ts
  '`{…}` inside <{0}>: write each attribute out': '`{…}` inside <{0}>: write each attribute out',
  '<{0}> has `{1}` a second time': '<{0}> has `{1}` a second time',
  'keep one of the two': 'keep one of the two',
  '`{0}` is a text in quotes': '`{0}` is a text in quotes',
  // src/ledger/read/calc.ts
  '<Calc> has no `id`: its results need a name': '<Calc> has no `id`: its results need a name',
  '<Calc> holds a table of parts and no other text':
    '<Calc> holds a table of parts and no other text',
  'leave a blank line before and after the table, and put the words outside':
    'leave a blank line before and after the table, and put the words outside',
  '<Calc> does not say which calculator: `use="…"`':
    '<Calc> does not say which calculator: `use="…"`',
  '`accept` needs the reason': '`accept` needs the reason',
  // src/ledger/read/declare.ts
  'an `id` is a plain text: `id="pumpDraw"`': 'an `id` is a plain text: `id="pumpDraw"`',
  '`{0}` would do': '`{0}` would do',
  'the name `{0}` is already taken in this note': 'the name `{0}` is already taken in this note',
  'two numbers need two names': 'two numbers need two names',
  // src/ledger/read/headings.ts
  'the name `{0}` is also the address of a heading in this note':
    'the name `{0}` is also the address of a heading in this note',
  'choose another name, or word the heading differently':
    'choose another name, or word the heading differently',
  // src/ledger/read/imports.ts
  'there is no file `{0}`': 'there is no file `{0}`',
  '`{0}` is imported and also given to a number here':
    '`{0}` is imported and also given to a number here',
  'import it under another name: `{ {0} as other }`':
    'import it under another name: `{ {0} as other }`',
  '`{0}` is a number of the ledger: an export cannot use it':
    '`{0}` is a number of the ledger: an export cannot use it',
  export: 'export',
  // src/ledger/read/inputs.ts
  value: 'value',
  'parts stand twice in one list': 'parts stand twice in one list',
  '`parts.all` holds every part, `parts` what is fitted':
    '`parts.all` holds every part, `parts` what is fitted',
  'a list of parts is written `[{ name: "…", length: "2 m" }, …]`':
    'a list of parts is written `[{ name: "…", length: "2 m" }, …]`',
  'a part is written `{ name: "…", length: "2 m" }`, each field with its value':
    'a part is written `{ name: "…", length: "2 m" }`, each field with its value',
  // src/ledger/read/links.ts
  'alternative text': 'alternative text',
  title: 'title',
  address: 'address',
  'braces in the {0} of a link or picture: nothing is worked out there':
    'braces in the {0} of a link or picture: nothing is worked out there',
  // src/ledger/read/names.ts
  '`{0}` is a number of the ledger and `{1}` is not: one {2} never mixes the two':
    '`{0}` is a number of the ledger and `{1}` is not: one {2} never mixes the two',
  'a note has no clock and no functions: sums are written with names, `{supply + back}`; what is worked out otherwise belongs in a block, {0}, what is shown otherwise in {1}':
    'a note has no clock and no functions: sums are written with names, `{supply + back}`; what is worked out otherwise belongs in a block, {0}, what is shown otherwise in {1}',
  'the parts of the notes are rows of a list of a <Calc>: `added={parts}`, or `parts.out`, `parts.planned`, `parts.all`':
    'the parts of the notes are rows of a list of a <Calc>: `added={parts}`, or `parts.out`, `parts.planned`, `parts.all`',
  'write this name also where it says `{0}`, which is refused':
    'write this name also where it says `{0}`, which is refused',
  // src/ledger/read/others.ts
  attribute: 'attribute',
  '<{0}> is not one of the kit’s elements: a number of the ledger cannot stand in its attributes':
    '<{0}> is not one of the kit’s elements: a number of the ledger cannot stand in its attributes',
  'put the number between the tags': 'put the number between the tags',
  '<a> with `{0}`: nobody makes it an address of the site':
    '<a> with `{0}`: nobody makes it an address of the site',
  'write `[words]({0})`': 'write `[words]({0})`',
  '<{0}> with `{1}`: nobody puts it on the site': '<{0}> with `{1}`: nobody puts it on the site',
  'write {0}': 'write {0}',
  '<img> with `{0}`: nobody puts it on the site': '<img> with `{0}`: nobody puts it on the site',
  'there is no element <{0}>': 'there is no element <{0}>',
  'import it, or write `\\<{0}` if you mean the sign':
    'import it, or write `\\<{0}` if you mean the sign',
  'did you mean <{0}>?': 'did you mean <{0}>?',
  // src/ledger/read/part.ts
  '<Part> holds no text': '<Part> holds no text',
  '`<Part … />`, with the words outside, or in `note="…"`':
    '`<Part … />`, with the words outside, or in `note="…"`',
  '<Part> has no `id`: its figures need a name': '<Part> has no `id`: its figures need a name',
  '<Part> does not say what it is: `what="…"`': '<Part> does not say what it is: `what="…"`',
  '`priced` says where a price comes from, and <Part> has no `price`':
    '`priced` says where a price comes from, and <Part> has no `price`',
  'write `price="$89"` as well, or take `priced` out':
    'write `price="$89"` as well, or take `priced` out',
  '<Part> has no `{0}`': '<Part> has no `{0}`',
  '`status="{0}"` is not where a part can be': '`status="{0}"` is not where a part can be',
  '`used` stands alone, or says `yes` or `no`': '`used` stands alone, or says `yes` or `no`',
  '`<Part … used />` for a second-hand one': '`<Part … used />` for a second-hand one',
  '`on="{0}"` is not a date': '`on="{0}"` is not a date',
  '`{0}` is one number': '`{0}` is one number',
  '`{0}="…"` with a unit, or `{1}={aName}`': '`{0}="…"` with a unit, or `{1}={aName}`',
  // src/ledger/read/photo.ts
  '<{0}> has no `{1}`': '<{0}> has no `{1}`',
  'its pictures, captions and marks stand between the tags':
    'its pictures, captions and marks stand between the tags',
  '<{0}> in a line of words': '<{0}> in a line of words',
  'give it lines of its own, with an empty line before and after':
    'give it lines of its own, with an empty line before and after',
  '{0} holds something that is no picture, caption or mark':
    '{0} holds something that is no picture, caption or mark',
  '{0} holds something that is no picture, caption':
    '{0} holds something that is no picture, caption',
  'a caption stands behind its picture; put everything else outside':
    'a caption stands behind its picture; put everything else outside',
  '<BeforeAfter> holds a list': '<BeforeAfter> holds a list',
  '<BeforeAfter> holds {0}: two are due, first before, then after':
    '<BeforeAfter> holds {0}: two are due, first before, then after',
  'marks go with <Photo>': 'marks go with <Photo>',
  'no picture': 'no picture',
  'one picture': 'one picture',
  '{0} pictures': '{0} pictures',
  '<Photo> holds {0}: one is due': '<Photo> holds {0}: one is due',
  '<BeforeAfter> takes two': '<BeforeAfter> takes two',
  '<Photo> holds two lists': '<Photo> holds two lists',
  'put all marks into one': 'put all marks into one',
  'per cent from the left, then from the top: `40 % 25 %: the filler neck`':
    'per cent from the left, then from the top: `40 % 25 %: the filler neck`',
  'a mark does not begin with its place': 'a mark does not begin with its place',
  '`{0}` has a comma where numbers here have a point':
    '`{0}` has a comma where numbers here have a point',
  '`{0}` is not on the picture': '`{0}` is not on the picture',
  'from 0 % to 100 %': 'from 0 % to 100 %',
  'the mark at `{0}` says nothing': 'the mark at `{0}` says nothing',
  // src/ledger/read/picture-uses.ts
  '`{0}` and `{1}` differ in capitals only: on many machines they are one file':
    '`{0}` and `{1}` differ in capitals only: on many machines they are one file',
  'give one of them another name': 'give one of them another name',
  'a picture without words for who cannot see it': 'a picture without words for who cannot see it',
  '`{0}` is a file’s name and does not say what the picture shows':
    '`{0}` is a file’s name and does not say what the picture shows',
  'say what it shows: `![the pump, its inlet below the tank](./pump.jpg)`':
    'say what it shows: `![the pump, its inlet below the tank](./pump.jpg)`',
  '`{0}` is read as words: the file’s name has spaces':
    '`{0}` is read as words: the file’s name has spaces',
  'write `![{0}]({1})`': 'write `![{0}]({1})`',
  '`{0}` is named in program text: the site would show it as the camera wrote it, with place and owner':
    '`{0}` is named in program text: the site would show it as the camera wrote it, with place and owner',
  // src/ledger/read/pictures.ts
  '`{0}` is not a picture that browsers show': '`{0}` is not a picture that browsers show',
  'save it as JPEG or PNG': 'save it as JPEG or PNG',
  'a picture without a file': 'a picture without a file',
  'a picture written into its address (`data:…`)': 'a picture written into its address (`data:…`)',
  'save it as a file beside the note: {0}': 'save it as a file beside the note: {0}',
  'the picture `{0}` lies on another site: a page asks no other site for anything':
    'the picture `{0}` lies on another site: a page asks no other site for anything',
  'save a copy you may publish beside the note: {0}':
    'save a copy you may publish beside the note: {0}',
  'the picture `{0}` is not written from its note':
    'the picture `{0}` is not written from its note',
  'put it beside the note: {0}': 'put it beside the note: {0}',
  '`![what it shows](./pump.jpg)`': '`![what it shows](./pump.jpg)`',
  'there is no picture `{0}` in the content folder':
    'there is no picture `{0}` in the content folder',
  // src/ledger/read/root-table.ts
  'the table in <{0}> has the columns {1}': 'the table in <{0}> has the columns {1}',
  '`name` and `value`, and where wanted `±`, `at`, `what`':
    '`name` and `value`, and where wanted `±`, `at`, `what`',
  'a row of the table lacks its name or its value':
    'a row of the table lacks its name or its value',
  // src/ledger/read/roots.ts
  '<{0}> holds a value, or a table of them, and no other text':
    '<{0}> holds a value, or a table of them, and no other text',
  '`<{0} … />`, with the words outside': '`<{0} … />`, with the words outside',
  'a <{0}> is given, not worked out: its `value` is a text with a unit':
    'a <{0}> is given, not worked out: its `value` is a text with a unit',
  '`value="2.4 m"`; a sum needs no element: `{a + b}`':
    '`value="2.4 m"`; a sum needs no element: `{a + b}`',
  '`{0}` takes a name in braces: `{1}={pump.flow}`':
    '`{0}` takes a name in braces: `{1}={pump.flow}`',
  '`{0}` is of one number, and this <{1}> holds a table of them':
    '`{0}` is of one number, and this <{1}> holds a table of them',
  'give it in the table (columns `name`, `value`, `±`), or write that number as an element of its own':
    'give it in the table (columns `name`, `value`, `±`), or write that number as an element of its own',
  'its value with a unit: `value="1.5 A"`': 'its value with a unit: `value="1.5 A"`',
  'the instrument it was read with: `with="clampMeter"`':
    'the instrument it was read with: `with="clampMeter"`',
  'where it was read: `source="controllerSheet"`, and `at="p. 7"`':
    'where it was read: `source="controllerSheet"`, and `at="p. 7"`',
  'the reason: `because="…"`': 'the reason: `because="…"`',
  '<{0}> does not say {1}': '<{0}> does not say {1}',
  '<Rated> does not say where in the source it stands':
    '<Rated> does not say where in the source it stands',
  '`at="p. 7"`, or the table or clause': '`at="p. 7"`, or the table or clause',
  // src/ledger/read/show.ts
  '<Show> takes a name in braces: `value={pump.flow}`':
    '<Show> takes a name in braces: `value={pump.flow}`',
  '`digits` is a whole number from 1 to 12': '`digits` is a whole number from 1 to 12',
  '<Show> has no `{0}`': '<Show> has no `{0}`',
  // src/ledger/read/sums.ts
  '`+ - * /` over names and plain numbers': '`+ - * /` over names and plain numbers',
  'a name is followed by something that is not a field of it':
    'a name is followed by something that is not a field of it',
  'a call: functions are not run in a note': 'a call: functions are not run in a note',
  'use a calculator: {0}': 'use a calculator: {0}',
  'something that is not a sum of names and numbers':
    'something that is not a sum of names and numbers',
  'a text in a sum: {0}': 'a text in a sum: {0}',
  'give the quantity a name with <Chosen> or <Assumed> and use the name':
    'give the quantity a name with <Chosen> or <Assumed> and use the name',
  '{0} is too large to be a number here': '{0} is too large to be a number here',
  '`{0}` is not arithmetic on numbers': '`{0}` is not arithmetic on numbers',
  'an unfinished sum': 'an unfinished sum',
  'multiply the name with itself: `{a * a}`': 'multiply the name with itself: `{a * a}`',
  '`{0}` is not worked out between names': '`{0}` is not worked out between names',
  '`|` means nothing between numbers': '`|` means nothing between numbers',
  'a comma between names': 'a comma between names',
  // src/ledger/read/tables.ts
  'this table has no line of dashes under its headings, and is read as words':
    'this table has no line of dashes under its headings, and is read as words',
  'write `{0}` below the headings': 'write `{0}` below the headings',
  // src/ledger/read/tasks.ts
  '`{0}` does not link to a note, so nothing is {1} by it':
    '`{0}` does not link to a note, so nothing is {1} by it',
  'write `{0} in [its title](./other-note.mdx)`': 'write `{0} in [its title](./other-note.mdx)`',
  // src/ledger/read/words.ts
  'nothing can rest on a <Nominal>: it takes no attributes':
    'nothing can rest on a <Nominal>: it takes no attributes',
  '<Quoted> does not say who is quoted: `source="…"`':
    '<Quoted> does not say who is quoted: `source="…"`',
  // src/ledger/report.ts
  'did you mean `{0}{1}{2}`?': 'did you mean `{0}{1}{2}`?',
  // src/ledger/severity.ts
  error: 'error',
  warning: 'warning',
  '{0} error': '{0} error',
  '{0} errors': '{0} errors',
  '{0} warning': '{0} warning',
  '{0} warnings': '{0} warnings',
  // src/ledger/shows.ts
  'a unit such as {0}': 'a unit such as {0}',
  '`unit="{0}"` is not a unit known here': '`unit="{0}"` is not a unit known here',
  '`unit="{0}"` does not fit `{1}`, which is {2}': '`unit="{0}"` does not fit `{1}`, which is {2}',
  // src/ledger/site-file.ts
  'units are `metric`, `us`, or a list of both, the first shown first':
    'units are `metric`, `us`, or a list of both, the first shown first',
  'the address of the site, such as https://example.org':
    'the address of the site, such as https://example.org',
  'the base path begins with `/`': 'the base path begins with `/`',
  '`true` or `false` is due here': '`true` or `false` is due here',
  'a share is due here, such as `15 %`': 'a share is due here, such as `15 %`',
  'an older name of the note is due here, as in its address: small letters, digits and dashes':
    'an older name of the note is due here, as in its address: small letters, digits and dashes',
  'a note needs a `title`': 'a note needs a `title`',
  'the title is empty': 'the title is empty',
  'a note needs a `date`, such as 2026-03-14': 'a note needs a `date`, such as 2026-03-14',
  'a phase is one of {0}': 'a phase is one of {0}',
  'a status is one of {0}': 'a status is one of {0}',
  'a text is due here': 'a text is due here',
  'a list is due here, each entry on its line after a dash':
    'a list is due here, each entry on its line after a dash',
  'entries are due here, `name: value`': 'entries are due here, `name: value`',
  'it is missing': 'it is missing',
  'it is empty': 'it is empty',
  'it is no web address, such as https://example.org':
    'it is no web address, such as https://example.org',
  'it cannot be read': 'it cannot be read',
  'this file is empty': 'this file is empty',
  'the note has no head': 'the note has no head',
  'a note begins with its head between two lines `---`: title, date, phase, status; `npm run new -- "Title"` writes one':
    'a note begins with its head between two lines `---`: title, date, phase, status; `npm run new -- "Title"` writes one',
  'the head of a note has no entry `{0}`; it knows {1}':
    'the head of a note has no entry `{0}`; it knows {1}',
  'braces in `{0}`: nothing is worked out in the head of a note':
    'braces in `{0}`: nothing is worked out in the head of a note',
  'write the words only': 'write the words only',
  '`changed` is {0}, before the note’s own `date`, {1}':
    '`changed` is {0}, before the note’s own `date`, {1}',
  '`date` is the day of the work, `changed` the day of the latest change':
    '`date` is the day of the work, `changed` the day of the latest change',
  '{0}; `{1}` was read': '{0}; `{1}` was read',
  'this line cannot be read as settings (`name: value`)':
    'this line cannot be read as settings (`name: value`)',
  'put a text with a colon or a quote in quotation marks, and indent with spaces only':
    'put a text with a colon or a quote in quotation marks, and indent with spaces only',
  'the settings know no {0} here': 'the settings know no {0} here',
  'a text with a comma, a colon or a brace in it stands in quotation marks':
    'a text with a comma, a colon or a brace in it stands in quotation marks',
  // src/ledger/size.ts
  '{0} number': '{0} number',
  '{0} numbers': '{0} numbers',
  '{0} block': '{0} block',
  '{0} blocks': '{0} blocks',
  // src/ledger/untold.ts
  'not worked out': 'not worked out',
  // src/ledger/whereabouts.ts
  'one of them is enough: `address: https://example.org/my-truck/`, or `SITE_URL` of the same kind':
    'one of them is enough: `address: https://example.org/my-truck/`, or `SITE_URL` of the same kind',
  '`{0}`: `{1}` is no web address, such as https://example.org':
    '`{0}`: `{1}` is no web address, such as https://example.org',
  '`{0}` says the site lies at `{1}`, `{2}` says `{3}`':
    '`{0}` says the site lies at `{1}`, `{2}` says `{3}`',
  'the path `{0}` of the site: letters without accents, digits, `-`, `_`, `.` and `~` only':
    'the path `{0}` of the site: letters without accents, digits, `-`, `_`, `.` and `~` only',
  // src/ledger/work/circles.ts
  'these numbers rest on each other in a circle: {0}':
    'these numbers rest on each other in a circle: {0}',
  'one of them has to be given: measured, read from a sheet, assumed or chosen':
    'one of them has to be given: measured, read from a sheet, assumed or chosen',
  // src/ledger/work/compute.ts
  'the calculator `{0}` gives no number for {1} from these inputs; that is a fault of the kit, not of the note':
    'the calculator `{0}` gives no number for {1} from these inputs; that is a fault of the kit, not of the note',
  'the calculator `{0}` failed on these inputs; that is a fault of the kit, not of the note':
    'the calculator `{0}` failed on these inputs; that is a fault of the kit, not of the note',
  'Cannot tell: {0}: {1}.': 'Cannot tell: {0}: {1}.',
  'Cannot tell: {0} not known.': 'Cannot tell: {0} not known.',
  'Cannot tell.': 'Cannot tell.',
  // src/ledger/work/currency.ts
  '`{0}` is in {1}': '`{0}` is in {1}',
  '`{0}` can add up one currency, and has sums in {1}: {2}':
    '`{0}` can add up one currency, and has sums in {1}: {2}',
  'no rate of exchange is kept here: give all in one, at the day’s rate':
    'no rate of exchange is kept here: give all in one, at the day’s rate',
  'sums in {0}, and no rate of exchange is kept here':
    'sums in {0}, and no rate of exchange is kept here',
  Money: 'Money',
  // src/ledger/work/kinds.ts
  '{0} is due, and this is {1}': '{0} is due, and this is {1}',
  '{0}: `{1}` is {2}': '{0}: `{1}` is {2}',
  '{0} is {1} and cannot take the place of {2}, which is {3}':
    '{0} is {1} and cannot take the place of {2}, which is {3}',
  '{0} is {1} and cannot be compared with {2}, which is {3}':
    '{0} is {1} and cannot be compared with {2}, which is {3}',
  // src/ledger/work/plus-minus.ts
  'the ±': 'the ±',
  'the ± `{0}` is not of the same kind as the value `{1}`':
    'the ± `{0}` is not of the same kind as the value `{1}`',
  // src/ledger/work/replacements.ts
  '`{0}` is of {1} and takes the place of `{2}`, which is of {3}':
    '`{0}` is of {1} and takes the place of `{2}`, which is of {3}',
  'the later number replaces the older one: turn them round, or mend the date of the note or of the reading (`on`)':
    'the later number replaces the older one: turn them round, or mend the date of the note or of the reading (`on`)',
  '`{0}` takes the place of `{1}` on {2}, and so does `{3}`':
    '`{0}` takes the place of `{1}` on {2}, and so does `{3}`',
  'keep `replaces` at the one that counts from that day on, or say with `on` which was measured later':
    'keep `replaces` at the one that counts from that day on, or say with `on` which was measured later',
  '`replaces` names an older number, whose place this one takes':
    '`replaces` names an older number, whose place this one takes',
  '`{0}` cannot take its own place': '`{0}` cannot take its own place',
  'these numbers take each other’s place in a circle: {0}':
    'these numbers take each other’s place in a circle: {0}',
  // src/live/alone.ts
  Start: 'Start',
  'Or from what one of the notes gives it.': 'Or from what one of the notes gives it.',
  '{0} with figures of your own': '{0} with figures of your own',
  'Your figures, of no note. Nothing of it is kept, and nothing leaves the browser.':
    'Your figures, of no note. Nothing of it is kept, and nothing leaves the browser.',
  'Your figures for {0}': 'Your figures for {0}',
  'An entry is missing or wrong. These are the figures from before it.':
    'An entry is missing or wrong. These are the figures from before it.',
  'Empty it': 'Empty it',
  'Verdict with your figures: {0}.': 'Verdict with your figures: {0}.',
  '{0} entry to put right.': '{0} entry to put right.',
  '{0} entries to put right.': '{0} entries to put right.',
  '{0} field still to fill in.': '{0} field still to fill in.',
  '{0} fields still to fill in.': '{0} fields still to fill in.',
  'What matters most': 'What matters most',
  'Take it along': 'Take it along',
  // src/live/cards.ts
  'An entry is wrong. These are the figures from before it.':
    'An entry is wrong. These are the figures from before it.',
  // src/live/field.ts
  'Unit of {0}': 'Unit of {0}',
  // src/live/form.ts
  'In {0}.': 'In {0}.',
  'May be left empty.': 'May be left empty.',
  'Remove {0} {1}': 'Remove {0} {1}',
  'Add a {0}': 'Add a {0}',
  'Back to the builder’s figures': 'Back to the builder’s figures',
  '{0} more, as they usually are': '{0} more, as they usually are',
  'Work it out': 'Work it out',
  // src/live/judge.ts
  'Something is needed here.': 'Something is needed here.',
  // src/live/matters.ts
  'Result to look at': 'Result to look at',
  'Cannot tell: something it needs is not known.': 'Cannot tell: something it needs is not known.',
  // src/live/number-table.ts
  '{0} of {1} shown': '{0} of {1} shown',
  // src/live/page.ts
  'this page has no figures to work with': 'this page has no figures to work with',
  'its figures could not be fetched': 'its figures could not be fetched',
  'its figures could not be read': 'its figures could not be read',
  'the notes have changed since it was opened; load it again':
    'the notes have changed since it was opened; load it again',
  // src/live/panel.ts
  'The builder’s: {0}, {1}': 'The builder’s: {0}, {1}',
  'Take mine back': 'Take mine back',
  'Where it comes from': 'Where it comes from',
  Close: 'Close',
  'It is worked out. Change what it rests on:': 'It is worked out. Change what it rests on:',
  'This is one row of a list: “Try your figures” under its card changes the list.':
    'This is one row of a list: “Try your figures” under its card changes the list.',
  Yours: 'Yours',
  'Here it changes this block only.': 'Here it changes this block only.',
  'Change {0} everywhere': 'Change {0} everywhere',
  // src/live/reader.ts
  '{0}: {1}, before {2}.': '{0}: {1}, before {2}.',
  // src/live/reason.ts
  'a part of the page could not be fetched; load it again when the network is back':
    'a part of the page could not be fetched; load it again when the network is back',
  // src/live/search-box.ts
  'Search these notes': 'Search these notes',
  Search: 'Search',
  'The search cannot be fetched now.': 'The search cannot be fetched now.',
  // src/live/search.ts
  Found: 'Found',
  'Searching for “{0}” …': 'Searching for “{0}” …',
  'numbers and parts': 'numbers and parts',
  pages: 'pages',
  'Could not be searched now: {0}.': 'Could not be searched now: {0}.',
  'Nothing found for “{0}”.': 'Nothing found for “{0}”.',
  '{0} found for “{1}”; {2} more by name.': '{0} found for “{1}”; {2} more by name.',
  '{0} found for “{1}”.': '{0} found for “{1}”.',
  'Numbers, blocks and parts': 'Numbers, blocks and parts',
  Pages: 'Pages',
  // src/live/start.ts
  'Try your figures': 'Try your figures',
  'Use it with your own figures': 'Use it with your own figures',
  'This cannot be worked here: {0}. The page stands as it is.':
    'This cannot be worked here: {0}. The page stands as it is.',
  // src/live/strip.ts
  'Your figures': 'Your figures',
  '{0} figure of yours is in force.': '{0} figure of yours is in force.',
  '{0} figures of yours are in force.': '{0} figures of yours are in force.',
  'This page shows the builder’s.': 'This page shows the builder’s.',
  'This browser keeps nothing: they hold until you leave the page.':
    'This browser keeps nothing: they hold until you leave the page.',
  'Take all back': 'Take all back',
  'Link with these figures': 'Link with these figures',
  'Print with these figures': 'Print with these figures',
  'Whoever opens it is asked first.': 'Whoever opens it is asked first.',
  'This sheet shows the builder’s figures all the same.':
    'This sheet shows the builder’s figures all the same.',
  'What rests on them is not the builder’s either, and nobody has built it so.':
    'What rests on them is not the builder’s either, and nobody has built it so.',
  'Printed with {0} figure of a reader.': 'Printed with {0} figure of a reader.',
  'Printed with {0} figures of a reader.': 'Printed with {0} figures of a reader.',
  'It does not fit any more and is not used.': 'It does not fit any more and is not used.',
  'Take back {0}': 'Take back {0}',
  'Take back': 'Take back',
  'Taken back: the builder’s figure stands again.':
    'Taken back: the builder’s figure stands again.',
  'All taken back: these are the builder’s figures.':
    'All taken back: these are the builder’s figures.',
  'This link brings figures, but they cannot be worked here: {0}. The page shows the builder’s.':
    'This link brings figures, but they cannot be worked here: {0}. The page shows the builder’s.',
  'The figures of the link are in force.': 'The figures of the link are in force.',
  'Figures that came with the link': 'Figures that came with the link',
  'is not in this edition any more': 'is not in this edition any more',
  'see its note': 'see its note',
  'The link was made with edition {0} of this note; this is edition {1}.':
    'The link was made with edition {0} of this note; this is edition {1}.',
  '{0} figure does not fit any more:': '{0} figure does not fit any more:',
  '{0} figures do not fit any more:': '{0} figures do not fit any more:',
  '{0} entry could not be read.': '{0} entry could not be read.',
  '{0} entries could not be read.': '{0} entries could not be read.',
  'This link was made by another version of the kit, and cannot be read here. The page shows the builder’s figures.':
    'This link was made by another version of the kit, and cannot be read here. The page shows the builder’s figures.',
  'Use these figures': 'Use these figures',
  'Leave them': 'Leave them',
  'This link brings {0} figure of somebody else, not the builder’s and not yours.':
    'This link brings {0} figure of somebody else, not the builder’s and not yours.',
  'This link brings {0} figures of somebody else, not the builder’s and not yours.':
    'This link brings {0} figures of somebody else, not the builder’s and not yours.',
  'The page shows the builder’s until you use them.':
    'The page shows the builder’s until you use them.',
  // src/live/take.ts
  'Numbers of this note': 'Numbers of this note',
  'Its numbers': 'Its numbers',
  'Copy as text': 'Copy as text',
  'Copy for a note of your own': 'Copy for a note of your own',
  'What was copied': 'What was copied',
  'Copied.': 'Copied.',
  'This browser does not copy by itself: the text is selected below.':
    'This browser does not copy by itself: the text is selected below.',
  // src/live/targets.ts
  'This is of another form now.': 'This is of another form now.',
  'a value in {0} is due': 'a value in {0} is due',
  'no rows': 'no rows',
  // src/live/try.ts
  'Verdict: {0}. These are the builder’s figures.':
    'Verdict: {0}. These are the builder’s figures.',
  'Verdict with your figures: {0}. With the builder’s: {1}.':
    'Verdict with your figures: {0}. With the builder’s: {1}.',
  'One entry to put right. The card still shows the figures before.':
    'One entry to put right. The card still shows the figures before.',
  '{0} entry to put right. The card still shows the figures before.':
    '{0} entry to put right. The card still shows the figures before.',
  '{0} entries to put right. The card still shows the figures before.':
    '{0} entries to put right. The card still shows the figures before.',
  // src/live/units.ts
  'Other units cannot be fetched now.': 'Other units cannot be fetched now.',
  Units: 'Units',
  'as written': 'as written',
  metric: 'metric',
  US: 'US',
  both: 'both',
  // src/mdx/decode.ts
  'the file is saved as UTF-16': 'the file is saved as UTF-16',
  'a byte here is not UTF-8 text (perhaps `{0}` saved in an older encoding)':
    'a byte here is not UTF-8 text (perhaps `{0}` saved in an older encoding)',
  'text saved as UTF-8': 'text saved as UTF-8',
  'open the file in an editor and save it with the encoding UTF-8':
    'open the file in an editor and save it with the encoding UTF-8',
  // src/mdx/explain.ts
  '{0} pairs of braces in one place, more than the {1} that are read':
    '{0} pairs of braces in one place, more than the {1} that are read',
  'write a list of parts as a table inside the element, and a long one in several elements':
    'write a list of parts as a table inside the element, and a long one in several elements',
  '`{0}` does not begin a comment here': '`{0}` does not begin a comment here',
  'write `{/* … */}`': 'write `{/* … */}`',
  'an address in angle brackets is read as a tag: `{0}`':
    'an address in angle brackets is read as a tag: `{0}`',
  'write `[words]({0}{1})`': 'write `[words]({0}{1})`',
  'the value of `{0}` has no quotes: `{1}={2}`': 'the value of `{0}` has no quotes: `{1}={2}`',
  'write `{0}="{1}"`': 'write `{0}="{1}"`',
  'the quote after `{0}=` is never closed': 'the quote after `{0}=` is never closed',
  'write the same straight quote `"` at the end of the value':
    'write the same straight quote `"` at the end of the value',
  '`{0}` begins a tag that has no end': '`{0}` begins a tag that has no end',
  'end it with `{0}`; for “less than” write `\\<`':
    'end it with `{0}`; for “less than” write `\\<`',
  '`{0}` cannot stand here in the tag `{1}`': '`{0}` cannot stand here in the tag `{1}`',
  'the tag `{0}` cannot be read': 'the tag `{0}` cannot be read',
  'for “less than” write `\\<`': 'for “less than” write `\\<`',
  'take out the `{0}`: words of a tag stand apart by spaces only':
    'take out the `{0}`: words of a tag stand apart by spaces only',
  'write `{0}="…"`, with `=` for `:`': 'write `{0}="…"`, with `=` for `:`',
  'a value ends at its next straight quote: inside it write “curly” ones, and `in` for inches':
    'a value ends at its next straight quote: inside it write “curly” ones, and `in` for inches',
  'a tag ends with `/>`': 'a tag ends with `/>`',
  'a tag is `<Name word="value" />`; for “less than” write `\\<`':
    'a tag is `<Name word="value" />`; for “less than” write `\\<`',
  '`{` opens braces that are never closed': '`{` opens braces that are never closed',
  'close them, as in `{pumpDraw}`, or write `\\{` for a brace as text':
    'close them, as in `{pumpDraw}`, or write `\\{` for a brace as text',
  'write `\\{` for a brace as text': 'write `\\{` for a brace as text',
  'a list in braces cannot be read from `{0}` on': 'a list in braces cannot be read from `{0}` on',
  'write it as `{[{ name: "value" }, { name: "value" }]}`, with a comma between entries':
    'write it as `{[{ name: "value" }, { name: "value" }]}`, with a comma between entries',
  '`{{0}}` does not name a heading': '`{{0}}` does not name a heading',
  'take it out: a heading gets its id from its words':
    'take it out: a heading gets its id from its words',
  '{0}; {1}': '{0}; {1}',
  '`{{0}}` is neither a name nor a sum of names': '`{{0}}` is neither a name nor a sum of names',
  'give `{0}` a name first, as in `<Chosen id="given" value="{1}" because="…" />`, and put the name into the sum; {2}':
    'give `{0}` a name first, as in `<Chosen id="given" value="{1}" because="…" />`, and put the name into the sum; {2}',
  'a name begins with a letter; a value goes into an element, as in `<Reading value="{0}" />`; {1}':
    'a name begins with a letter; a value goes into an element, as in `<Reading value="{0}" />`; {1}',
  '`{{0}}` has a space in its name': '`{{0}}` has a space in its name',
  'did you mean `{{0}}`? {1}': 'did you mean `{{0}}`? {1}',
  'write a name, as in `{pumpDraw}`, or a sum, as in `{supply + back}`; {0}':
    'write a name, as in `{pumpDraw}`, or a sum, as in `{supply + back}`; {0}',
  '`{0}` has a decimal comma': '`{0}` has a decimal comma',
  'write `{0}`': 'write `{0}`',
  '`{0}` is imported a second time': '`{0}` is imported a second time',
  'keep one of the two, or give it another name: `{0} as {1}There`':
    'keep one of the two, or give it another name: `{0} as {1}There`',
  '`{0}` is not apart from the text below it': '`{0}` is not apart from the text below it',
  'leave an empty line before `{0}`': 'leave an empty line before `{0}`',
  '`{0}` cannot be read': '`{0}` cannot be read',
  "write `import { pumpDraw } from './other-note.mdx'`, with straight quotes":
    "write `import { pumpDraw } from './other-note.mdx'`, with straight quotes",
  // src/mdx/frontmatter.ts
  'the head of the note stands between `+++` lines':
    'the head of the note stands between `+++` lines',
  'write `---` lines instead': 'write `---` lines instead',
  'a no-break space stands in `{0}`, where a plain one is due':
    'a no-break space stands in `{0}`, where a plain one is due',
  'delete it and type the space anew': 'delete it and type the space anew',
  'the head of the note cannot be read': 'the head of the note cannot be read',
  'write one `name: value` a line, with quotes round a value that has a colon':
    'write one `name: value` a line, with quotes round a value that has a colon',
  '`{0}` was read where the three hyphens of the head are due':
    '`{0}` was read where the three hyphens of the head are due',
  'write `---` alone on a line before its first entry, and again after its last':
    'write `---` alone on a line before its first entry, and again after its last',
  'the head of the note begins with `---` and never ends':
    'the head of the note begins with `---` and never ends',
  'write a line `---` after its last entry': 'write a line `---` after its last entry',
  'write `{0}: "{1}"`': 'write `{0}: "{1}"`',
  '`{0}` gives an entry a second time': '`{0}` gives an entry a second time',
  'a line of the head begins with a tab': 'a line of the head begins with a tab',
  'use spaces': 'use spaces',
  '`{0}` has a second colon': '`{0}` has a second colon',
  '`{0}` begins its value with a sign of the format':
    '`{0}` begins its value with a sign of the format',
  '`{0}` is indented otherwise than its neighbours':
    '`{0}` is indented otherwise than its neighbours',
  'line the entries up': 'line the entries up',
  'a quote, bracket or colon is missing at `{0}`': 'a quote, bracket or colon is missing at `{0}`',
  'close what is open': 'close what is open',
  '`{0}` is no entry': '`{0}` is no entry',
  'write `name: value`': 'write `name: value`',
  // src/mdx/nesting.ts
  'write `</{0}>`': 'write `</{0}>`',
  '{0} closes a tag and holds more than its name': '{0} closes a tag and holds more than its name',
  'take it out, or open the tag before it': 'take it out, or open the tag before it',
  '{0} closes nothing': '{0} closes nothing',
  '{0} closes a tag that was opened outside this paragraph, list or emphasis':
    '{0} closes a tag that was opened outside this paragraph, list or emphasis',
  'open and close the tag inside the same one': 'open and close the tag inside the same one',
  '{0} stands where `</{1}>` is due': '{0} stands where `</{1}>` is due',
  'close `<{0}>` first, or end it with `/>`': 'close `<{0}>` first, or end it with `/>`',
  'the note cannot be read': 'the note cannot be read',
  'take out the last change and try again': 'take out the last change and try again',
  '`<{0}>` is never closed, or not in the paragraph, list or table it began in':
    '`<{0}>` is never closed, or not in the paragraph, list or table it began in',
  'write `<{0} />`': 'write `<{0} />`',
  'end it with `/>`, or write `</{0}>` where it ends':
    'end it with `/>`, or write `</{0}>` where it ends',
  // src/mdx/parse.ts
  'write `\\}` for a brace as text, or open the braces, as in `{pumpDraw}`':
    'write `\\}` for a brace as text, or open the braces, as in `{pumpDraw}`',
  '`}` closes no braces': '`}` closes no braces',
  // src/mdx/prose.ts
  'nothing says where {0} comes from (torque, current, voltage, pressure)':
    'nothing says where {0} comes from (torque, current, voltage, pressure)',
  'nothing says where {0} come from (torque, current, voltage, pressure)':
    'nothing says where {0} come from (torque, current, voltage, pressure)',
  'nothing says where {0} comes from': 'nothing says where {0} comes from',
  'nothing says where {0} come from': 'nothing says where {0} come from',
  'a number of its own kind (`<Reading>`, `<Rated>`, `<Assumed>`, `<Chosen>`, `<Calc>`), `<Nominal>` round the name of a size, `<Quoted>` round a figure that is only mentioned':
    'a number of its own kind (`<Reading>`, `<Rated>`, `<Assumed>`, `<Chosen>`, `<Calc>`), `<Nominal>` round the name of a size, `<Quoted>` round a figure that is only mentioned',
  'write in place of each:': 'write in place of each:',
  // src/mdx/shape.ts
  'a space between `<` and `{0}`: this is read as words':
    'a space between `<` and `{0}`: this is read as words',
  'write `<{0}`': 'write `<{0}`',
  '`{0}` is read as words, not as the box of a task':
    '`{0}` is read as words, not as the box of a task',
  'write `- [ ] words`, or `- [x] words` where it is done':
    'write `- [ ] words`, or `- [x] words` where it is done',
  'a task with nothing behind its box `{0}`': 'a task with nothing behind its box `{0}`',
  'write what is to be done behind it, or take the line out':
    'write what is to be done behind it, or take the line out',
  '`{0}` stands in no column: the head of the table has {1}':
    '`{0}` stands in no column: the head of the table has {1}',
  'give the column a heading, or take the cell out; a `|` inside a cell is written `\\|`':
    'give the column a heading, or take the cell out; a `|` inside a cell is written `\\|`',
  '`{0}` is read as prose': '`{0}` is read as prose',
  "write `import { pumpDraw } from './other-note.mdx'`: a small `i`, the path in quotes":
    "write `import { pumpDraw } from './other-note.mdx'`: a small `i`, the path in quotes",
  'put it at the very beginning of a line of its own, with an empty line before and after':
    'put it at the very beginning of a line of its own, with an empty line before and after',
  '`{0}` alone on its line ends the paragraph': '`{0}` alone on its line ends the paragraph',
  'put it on the same line as a word of its sentence, or leave an empty line before and after':
    'put it on the same line as a word of its sentence, or leave an empty line before and after',
  'quotes in `{{0}}`: that is a word and no name': 'quotes in `{{0}}`: that is a word and no name',
  'write `{{0}}` for the number of that name, or the word without braces':
    'write `{{0}}` for the number of that name, or the word without braces',
  'write a name in them, as in `{pumpDraw}`, or `\\{\\}` for braces as text':
    'write a name in them, as in `{pumpDraw}`, or `\\{\\}` for braces as text',
  '`{}` is empty': '`{}` is empty',
  // src/mdx/sum-slips.ts
  '`{0}` in `{{1}}` is a unit, and a name brings its own':
    '`{0}` in `{{1}}` is a unit, and a name brings its own',
  'write `{{0}}`, or in a unit of your choice `<Show value={{1}} unit="{2}" />`':
    'write `{{0}}`, or in a unit of your choice `<Show value={{1}} unit="{2}" />`',
  '`{{0}}` has no sign between its number and its name':
    '`{{0}}` has no sign between its number and its name',
  'write `{{0} * {1}}`': 'write `{{0} * {1}}`',
  'write `{0}` for it': 'write `{0}` for it',
  // src/pages/404.astro
  'The note may have been renamed. {0} stand on the first page, and {1} on another.':
    'The note may have been renamed. {0} stand on the first page, and {1} on another.',
  'All notes': 'All notes',
  'all numbers': 'all numbers',
  'There is no such page': 'There is no such page',
  // src/pages/calculators/[id].astro
  'plain number': 'plain number',
  Formula: 'Formula',
  'In a note': 'In a note',
  'With all that it needs, to copy and to change. Put a name in braces where a number of yours has one, also in a cell of a table.':
    'With all that it needs, to copy and to change. Put a name in braces where a number of yours has one, also in a cell of a table.',
  'What goes in': 'What goes in',
  Input: 'Input',
  Usual: 'Usual',
  'What it is': 'What it is',
  'one of {0}': 'one of {0}',
  'a list, {0} to {1} rows': 'a list, {0} to {1} rows',
  'Left out: {0}, because {1}.': 'Left out: {0}, because {1}.',
  'May be left out.': 'May be left out.',
  words: 'words',
  'a table, its rows counted from 0': 'a table, its rows counted from 0',
  'What it checks': 'What it checks',
  Check: 'Check',
  'Who says so': 'Who says so',
  '{0}. A stop here cannot be accepted.': '{0}. A stop here cannot be accepted.',
  'Where it holds': 'Where it holds',
  'Tables it works with': 'Tables it works with',
  'Held against outside cases': 'Held against outside cases',
  'Worked again when this page was made. A difference counts against the digits that the source prints.':
    'Worked again when this page was made. A difference counts against the digits that the source prints.',
  'Used in these notes': 'Used in these notes',
  // src/pages/calculators/index.astro
  Cooling: 'Cooling',
  '12 V and auxiliaries': '12 V and auxiliaries',
  'Traction battery and drive': 'Traction battery and drive',
  Workshop: 'Workshop',
  'The project': 'The project',
  'Each says what it takes, what it gives, where it holds, who says so, and how closely it meets cases that were worked elsewhere. The {0} they work with stand by themselves.':
    'Each says what it takes, what it gives, where it holds, who says so, and how closely it meets cases that were worked elsewhere. The {0} they work with stand by themselves.',
  'standard tables': 'standard tables',
  'What works the figures out: formulas, limits, sources, and the outside cases each is held against.':
    'What works the figures out: formulas, limits, sources, and the outside cases each is held against.',
  // src/pages/index.astro
  'Still open': 'Still open',
  'Open guesses': 'Open guesses',
  'How to read the figures': 'How to read the figures',
  'Each figure carries a mark that says how it came, and leads to its story.':
    'Each figure carries a mark that says how it came, and leads to its story.',
  // src/pages/notes/[slug].astro
  '{0}, {1}.': '{0}, {1}.',
  '{0}, {1}; last changed {2}.': '{0}, {1}; last changed {2}.',
  'Wall sheet of this note': 'Wall sheet of this note',
  '{0}, with the figure that stands for it': '{0}, with the figure that stands for it',
  '{0}, note {1} of {2}.': '{0}, note {1} of {2}.',
  'About this note': 'About this note',
  'Rests on other notes': 'Rests on other notes',
  'Where the numbers come from': 'Where the numbers come from',
  'For a spreadsheet: {0}': 'For a spreadsheet: {0}',
  '{0}: steps, figures and boxes to tick, to print.':
    '{0}: steps, figures and boxes to tick, to print.',
  'Notes before and after': 'Notes before and after',
  // src/pages/notes/[slug]/[block].astro
  'Sources of the calculator': 'Sources of the calculator',
  // src/pages/notes/[slug]/wall-sheet.astro
  'First of all': 'First of all',
  'Steps and figures': 'Steps and figures',
  Tasks: 'Tasks',
  Signed: 'Signed',
  // src/pages/numbers/index.astro
  'All of them with their sources: {0} for a spreadsheet, {1} for a program.':
    'All of them with their sources: {0} for a spreadsheet, {1} for a program.',
  'Every number of these notes, how it came and where from.':
    'Every number of these notes, how it came and where from.',
  Words: 'Words',
  all: 'all',
  Filter: 'Filter',
  // src/pages/open/index.astro
  'What is still to be done and to be found out, by phase.':
    'What is still to be done and to be found out, by phase.',
  'Open tasks and questions': 'Open tasks and questions',
  // src/pages/parts/index.astro
  'Every part of this conversion: what, how many, what it cost and where it is.':
    'Every part of this conversion: what, how many, what it cost and where it is.',
  'What it costs': 'What it costs',
  // src/pages/sources/index.astro
  'What was read, when, and the figures taken from it.':
    'What was read, when, and the figures taken from it.',
  'What the figures of these notes were read from, the day it was read, and what it said. A source may say something else by now; what was read that day stands here.':
    'What the figures of these notes were read from, the day it was read, and what it said. A source may say something else by now; what was read that day stands here.',
  'Links that lead off this site': 'Links that lead off this site',
  'Their pages are other people’s, and may have changed since.':
    'Their pages are other people’s, and may have changed since.',
  // src/pages/tables/[id].astro
  'Standard tables': 'Standard tables',
  'Calculators that work with it': 'Calculators that work with it',
  // src/pages/tables/index.astro
  'read by {0} calculator': 'read by {0} calculator',
  'read by {0} calculators': 'read by {0} calculators',
  'The tables that the calculators work with: wire, fuses, threads, hose, air and water.':
    'The tables that the calculators work with: wire, fuses, threads, hose, air and water.',
  'What standards and handbooks print, as these calculators use it, each with its source and how far it can be trusted. Before a figure decides anything, hold it against your own copy.':
    'What standards and handbooks print, as these calculators use it, each with its source and how far it can be trusted. Before a figure decides anything, hold it against your own copy.',
  'read by no calculator': 'read by no calculator',
  // src/photos/drawing.ts
  '<{0}> stands in <style>': '<{0}> stands in <style>',
  '`{0}` is not a drawing: it has no <svg>': '`{0}` is not a drawing: it has no <svg>',
  '`{0}` does not say how large it is: its <svg> has no `viewBox`':
    '`{0}` does not say how large it is: its <svg> has no `viewBox`',
  '`\\` in a style or an attribute': '`\\` in a style or an attribute',
  'its style': 'its style',
  '`{0}` names a folder of the machine it was drawn on: `{1}`':
    '`{0}` names a folder of the machine it was drawn on: `{1}`',
  'take it out and save as plain SVG, or save the drawing as PNG':
    'take it out and save as plain SVG, or save the drawing as PNG',
  '`{0}` is not a whole drawing: {1}': '`{0}` is not a whole drawing: {1}',
  'open it in the program it was drawn with and save it once more':
    'open it in the program it was drawn with and save it once more',
  '`{0}` holds {1}: a drawing on the site runs nothing':
    '`{0}` holds {1}: a drawing on the site runs nothing',
  'save it as plain SVG, or as PNG': 'save it as plain SVG, or as PNG',
  '`{0}` holds {1}: a drawing on the site asks for no other file and holds none':
    '`{0}` holds {1}: a drawing on the site asks for no other file and holds none',
  // src/photos/facts.ts
  'a phone saves this kind by itself: share or export it as JPEG, and set its camera to JPEG for the next ones':
    'a phone saves this kind by itself: share or export it as JPEG, and set its camera to JPEG for the next ones',
  // src/photos/left.ts
  'is `{0}` as it came; a note shows it with `![what it shows](./…)`':
    'is `{0}` as it came; a note shows it with `![what it shows](./…)`',
  'is a TIFF, which may hold any record': 'is a TIFF, which may hold any record',
  'EXIF (place, time, camera)': 'EXIF (place, time, camera)',
  'XMP (owner, program)': 'XMP (owner, program)',
  'IPTC (owner, place)': 'IPTC (owner, place)',
  'a record of a picture program': 'a record of a picture program',
  'a colour profile (camera or screen)': 'a colour profile (camera or screen)',
  'a comment': 'a comment',
  'a note that it is to be turned': 'a note that it is to be turned',
  'still holds {0}': 'still holds {0}',
  'is a picture that cannot be read': 'is a picture that cannot be read',
  // src/photos/look.ts
  '`{0}` has {1} megabytes': '`{0}` has {1} megabytes',
  '`{0}` is a folder': '`{0}` is a folder',
  '`{0}` cannot be opened on this machine': '`{0}` cannot be opened on this machine',
  'allow the file to be read': 'allow the file to be read',
  '`{0}` is {1} × {2} pixels ({3} megapixels)': '`{0}` is {1} × {2} pixels ({3} megapixels)',
  '`{0}` ends in the middle of the picture: only a part of the file is here':
    '`{0}` ends in the middle of the picture: only a part of the file is here',
  'copy it again from the phone or the camera': 'copy it again from the phone or the camera',
  '`{0}` begins like a picture ({1}) and cannot be read to its end':
    '`{0}` begins like a picture ({1}) and cannot be read to its end',
  'copy it again from the phone or the camera, or open it in a picture program and save it as JPEG':
    'copy it again from the phone or the camera, or open it in a picture program and save it as JPEG',
  'up to {0} megapixels and {1} megabytes, a drawing up to {2}':
    'up to {0} megapixels and {1} megabytes, a drawing up to {2}',
  'save a smaller copy and name that one': 'save a smaller copy and name that one',
  '`{0}` is a photo ({1}) inside': '`{0}` is a photo ({1}) inside',
  'let its name end in `.{0}`': 'let its name end in `.{0}`',
  '`{0}` is empty': '`{0}` is empty',
  '`{0}` is a phone’s HEIC inside, which browsers do not show':
    '`{0}` is a phone’s HEIC inside, which browsers do not show',
  '`{0}` is a film inside': '`{0}` is a film inside',
  'save one picture of it as JPEG': 'save one picture of it as JPEG',
  '`{0}` is a PDF inside': '`{0}` is a PDF inside',
  'save the page as PNG': 'save the page as PNG',
  '`{0}` is an archive inside': '`{0}` is an archive inside',
  'unpack it and name the picture in it': 'unpack it and name the picture in it',
  '`{0}` is a drawing (SVG) inside': '`{0}` is a drawing (SVG) inside',
  'let its name end in `.svg`': 'let its name end in `.svg`',
  '`{0}` holds text and no picture': '`{0}` holds text and no picture',
  'a renamed file stays what it was: find the picture itself':
    'a renamed file stays what it was: find the picture itself',
  '`{0}` holds no picture that can be read': '`{0}` holds no picture that can be read',
  // src/photos/make.ts
  '{0} changed while the site was built: build it once more':
    '{0} changed while the site was built: build it once more',
  // src/photos/of-notes.ts
  '`{0}` moves: only its first picture is shown': '`{0}` moves: only its first picture is shown',
  'save the picture that matters as JPEG or PNG': 'save the picture that matters as JPEG or PNG',
  // src/photos/xml.ts
  '{0} in line {1}': '{0} in line {1}',
  'a stray `&` or a name of its own': 'a stray `&` or a name of its own',
  'words outside the drawing': 'words outside the drawing',
  'a tag that does not end, or a declaration': 'a tag that does not end, or a declaration',
  '</{0}> closes nothing': '</{0}> closes nothing',
  'a second drawing': 'a second drawing',
  'an attribute that stands twice': 'an attribute that stands twice',
  '<{0}> is not closed': '<{0}> is not closed',
  // src/quantity/combine.ts
  'plain numbers': 'plain numbers',
  'the result of `{0}` is too large to be a number':
    'the result of `{0}` is too large to be a number',
  '{0} cannot be turned into its negative': '{0} cannot be turned into its negative',
  '{0} cannot be added to {1}': '{0} cannot be added to {1}',
  '{0} cannot be taken from {1}': '{0} cannot be taken from {1}',
  'the pressure of the air lies between gauge and absolute':
    'the pressure of the air lies between gauge and absolute',
  'one of the two must be a difference, as `6 K` or `11 Δ°F`':
    'one of the two must be a difference, as `6 K` or `11 Δ°F`',
  'one of the two must be a pressure difference, as `30 kPa`':
    'one of the two must be a pressure difference, as `30 kPa`',
  '{0} is a point on a scale and cannot be multiplied':
    '{0} is a point on a scale and cannot be multiplied',
  '{0} is a point on a scale and cannot be divided':
    '{0} is a point on a scale and cannot be divided',
  'take the difference of two temperatures first': 'take the difference of two temperatures first',
  'take the difference of two pressures first': 'take the difference of two pressures first',
  '{0} is divided by zero': '{0} is divided by zero',
  // src/quantity/dimensions.ts
  'a fraction': 'a fraction',
  'an angle': 'an angle',
  'a length': 'a length',
  'an area': 'an area',
  'a wire size': 'a wire size',
  'a volume': 'a volume',
  'a time': 'a time',
  'a frequency': 'a frequency',
  'a speed': 'a speed',
  'an acceleration': 'an acceleration',
  'a speed of rotation': 'a speed of rotation',
  'a mass': 'a mass',
  'a force': 'a force',
  'a torque': 'a torque',
  'a spring rate': 'a spring rate',
  'a moment of inertia': 'a moment of inertia',
  'a pressure difference': 'a pressure difference',
  'a gauge pressure': 'a gauge pressure',
  'an absolute pressure': 'an absolute pressure',
  'a temperature': 'a temperature',
  'a temperature difference': 'a temperature difference',
  'an energy': 'an energy',
  'an energy per distance': 'an energy per distance',
  'an energy per mass': 'an energy per mass',
  'a density': 'a density',
  'a concentration': 'a concentration',
  'a viscosity': 'a viscosity',
  'a kinematic viscosity': 'a kinematic viscosity',
  'a flow': 'a flow',
  'a mass flow': 'a mass flow',
  'a specific heat': 'a specific heat',
  'a heat capacity': 'a heat capacity',
  'a thermal conductance': 'a thermal conductance',
  'a thermal resistance': 'a thermal resistance',
  'a thermal conductivity': 'a thermal conductivity',
  'a heat transfer coefficient': 'a heat transfer coefficient',
  'a voltage': 'a voltage',
  'a charge': 'a charge',
  'a resistance': 'a resistance',
  'a resistance per length': 'a resistance per length',
  'a resistance per volt': 'a resistance per volt',
  'a capacitance': 'a capacitance',
  'an inductance': 'an inductance',
  'a melting integral': 'a melting integral',
  'a price per energy': 'a price per energy',
  'a cost per distance': 'a cost per distance',
  // src/quantity/explain.ts
  '`{0}` does not say whether it is a diameter or an area, and trade sizes of wire in mm differ':
    '`{0}` does not say whether it is a diameter or an area, and trade sizes of wire in mm differ',
  'write `{0} mm²` if that is the area of the metal':
    'write `{0} mm²` if that is the area of the metal',
  '`{0}` is a temperature difference; a temperature is due':
    '`{0}` is a temperature difference; a temperature is due',
  '`{0}` is a temperature; a temperature difference is due':
    '`{0}` is a temperature; a temperature difference is due',
  '`{0}` does not say gauge or absolute; {1} is due':
    '`{0}` does not say gauge or absolute; {1} is due',
  "write `{0} {1} gauge` from the air's pressure or `{2} {3} abs` from vacuum":
    "write `{0} {1} gauge` from the air's pressure or `{2} {3} abs` from vacuum",
  '`{0}` is {1}; a pressure difference is due': '`{0}` is {1}; a pressure difference is due',
  '`{0}` looks like {1} ({2}); {3} is due': '`{0}` looks like {1} ({2}); {3} is due',
  '`{0}` looks like {1}; {2} is due': '`{0}` looks like {1}; {2} is due',
  'did you mean `{0} {1}`?': 'did you mean `{0} {1}`?',
  'a pressure': 'a pressure',
  // src/quantity/number.ts
  'nothing is written here': 'nothing is written here',
  '{0} does not say one number': '{0} does not say one number',
  '{0} holds a ±': '{0} holds a ±',
  'write the ± in a place of its own': 'write the ± in a place of its own',
  '{0} does not begin with a number': '{0} does not begin with a number',
  '`{0}` has more than one point': '`{0}` has more than one point',
  '{0} is a range, not one number': '{0} is a range, not one number',
  'pick one of the two': 'pick one of the two',
  '`{0}` is not a number that can be worked with': '`{0}` is not a number that can be worked with',
  // src/quantity/parse.ts
  '`{0} …` is too long for a number with a unit': '`{0} …` is too long for a number with a unit',
  '`{0}` is not a size of the American wire gauge':
    '`{0}` is not a size of the American wire gauge',
  'the sizes run from 40 to 1, then 1/0 to 4/0': 'the sizes run from 40 to 1, then 1/0 to 4/0',
  '`{0}` holds more than one number': '`{0}` holds more than one number',
  'write one number and its unit': 'write one number and its unit',
  '`{0}` could be in °C or in coulombs': '`{0}` could be in °C or in coulombs',
  '`{0}` could be in °F or in farads': '`{0}` could be in °F or in farads',
  '`{0}` can be read in two ways': '`{0}` can be read in two ways',
  '`{0}` is not a unit known here': '`{0}` is not a unit known here',
  '`{0}` is read as {1} {2}': '`{0}` is read as {1} {2}',
  '`{0}` has no unit; {1} is due': '`{0}` has no unit; {1} is due',
  '`{0}` without % is more than the whole': '`{0}` without % is more than the whole',
  'did you mean `{0} %`?': 'did you mean `{0} %`?',
  '`{0}` is read as {1}: write `{2}`, or `{3}` if the comma is a decimal one':
    '`{0}` is read as {1}: write `{2}`, or `{3}` if the comma is a decimal one',
  '`{0}` is below vacuum': '`{0}` is below vacuum',
  '`{0}` is below absolute zero': '`{0}` is below absolute zero',
  '`{0}` is read as {1} mg/L, which holds in water':
    '`{0}` is read as {1} mg/L, which holds in water',
  '{0}: % or a number up to 1': '{0}: % or a number up to 1',
  // src/site/build.ts
  'another build of this site is running (process {0}): waiting for it':
    'another build of this site is running (process {0}): waiting for it',
  '{0}: nothing was built, and the old site stands as it was':
    '{0}: nothing was built, and the old site stands as it was',
  '{0}: the old site stands as it was': '{0}: the old site stands as it was',
  '{0} picture of the new site would give away what is not the picture: the old site stands as it was':
    '{0} picture of the new site would give away what is not the picture: the old site stands as it was',
  '{0} pictures of the new site would give away what is not the picture: the old site stands as it was':
    '{0} pictures of the new site would give away what is not the picture: the old site stands as it was',
  'built and verified: {0} in {1}': 'built and verified: {0} in {1}',
  'no feed, no list of pages and no pictures for links: they need the address of the site (`address` in site.yaml, or SITE_URL)':
    'no feed, no list of pages and no pictures for links: they need the address of the site (`address` in site.yaml, or SITE_URL)',
  'left out: {0} draft': 'left out: {0} draft',
  'left out: {0} drafts': 'left out: {0} drafts',
  // src/site/dead-links.ts
  'a link to `{0}` leads nowhere': 'a link to `{0}` leads nowhere',
  'a link to `{0}`: there is no such place on that page':
    'a link to `{0}`: there is no such place on that page',
  // src/site/differences.ts
  'this line': 'this line',
  '{0} is not what working it again gives: it reads {1}, working gives {2}':
    '{0} is not what working it again gives: it reads {1}, working gives {2}',
  // src/site/disk.ts
  'the disk is full': 'the disk is full',
  'the share of the disk that you may use is full':
    'the share of the disk that you may use is full',
  'the disk can only be read': 'the disk can only be read',
  'the folder may not be written to': 'the folder may not be written to',
  // src/site/failures.ts
  'there is nothing here that could have `{0}`': 'there is nothing here that could have `{0}`',
  '`{0}` is nothing that can be called': '`{0}` is nothing that can be called',
  '`{0}` is no list': '`{0}` is no list',
  'nothing is called `{0}`': 'nothing is called `{0}`',
  '`{0}` is used before it is given': '`{0}` is used before it is given',
  'a list is empty': 'a list is empty',
  'it calls itself without end': 'it calls itself without end',
  '`{0}` fails when the page is made: {1}': '`{0}` fails when the page is made: {1}',
  'what stands in braces is JavaScript; numbers are worked by the kit alone: `{name}`':
    'what stands in braces is JavaScript; numbers are worked by the kit alone: `{name}`',
  // src/site/fault.ts
  '{0} (more of it in {1})': '{0} (more of it in {1})',
  'no page can be made of `{0}`': 'no page can be made of `{0}`',
  // src/site/feed/atom.ts
  '{0} in place of {1}': '{0} in place of {1}',
  'Verdict changed: {0}, was {1}, now {2}': 'Verdict changed: {0}, was {1}, now {2}',
  'From {0} on the verdict of {1}, in “{2}”, is {3}; it was {4}. What is new:':
    'From {0} on the verdict of {1}, in “{2}”, is {3}; it was {4}. What is new:',
  'The block as it stands now:': 'The block as it stands now:',
  // src/site/handed-out.ts
  'this is not what the kit hands to a reader’s browser':
    'this is not what the kit hands to a reader’s browser',
  'in the figures for the reader’s browser {0} is not what the record has':
    'in the figures for the reader’s browser {0} is not what the record has',
  'the figures for the reader’s browser are written otherwise':
    'the figures for the reader’s browser are written otherwise',
  'the site': 'the site',
  'a note': 'a note',
  'a source': 'a source',
  'the edition': 'the edition',
  // src/site/integration.ts
  'something published takes from {0}, which is a draft':
    'something published takes from {0}, which is a draft',
  // src/site/logger.ts
  'there is no page `{0}` now: its note has another name, or cannot be read':
    'there is no page `{0}` now: its note has another name, or cannot be read',
  '`{0}` cannot be made': '`{0}` cannot be made',
  'warning: {0}': 'warning: {0}',
  // src/site/made.ts
  'this file of the site is not there': 'this file of the site is not there',
  // src/site/offline/worker.ts
  'Saved copy. The network does not answer: figures and verdicts may be others by now. Look again before you rely on one.':
    'Saved copy. The network does not answer: figures and verdicts may be others by now. Look again before you rely on one.',
  'Saved copy of {0}, of notes last changed {1}. The network does not answer: figures and verdicts may be others by now. Look again before you rely on one.':
    'Saved copy of {0}, of notes last changed {1}. The network does not answer: figures and verdicts may be others by now. Look again before you rely on one.',
  'No copy of this page': 'No copy of this page',
  'The network does not answer, and this page was not read before.':
    'The network does not answer, and this page was not read before.',
  'The notes': 'The notes',
  // src/site/own-files.ts
  'the new site has {0} of its own, and what is so called in `{1}` no build made: move it elsewhere':
    'the new site has {0} of its own, and what is so called in `{1}` no build made: move it elsewhere',
  '{0} holds other files and no site of this kit: name an empty or a new folder':
    '{0} holds other files and no site of this kit: name an empty or a new folder',
  '`{0}` holds what no build of this kit made, and a build would replace it: {1}. Move it elsewhere (names at the top that begin with a dot, `CNAME` and `robots.txt` may stay)':
    '`{0}` holds what no build of this kit made, and a build would replace it: {1}. Move it elsewhere (names at the top that begin with a dot, `CNAME` and `robots.txt` may stay)',
  '{0} and {1} more': '{0} and {1} more',
  // src/site/page.ts
  'cannot be shown yet': 'cannot be shown yet',
  '(quoted from {0})': '(quoted from {0})',
  // src/site/places.ts
  'name another folder, such as `--out ../my-site`':
    'name another folder, such as `--out ../my-site`',
  '`{0}` is the folder of the notes': '`{0}` is the folder of the notes',
  '`{0}` has the folder of the notes in it, and a build replaces the whole folder':
    '`{0}` has the folder of the notes in it, and a build replaces the whole folder',
  '`{0}` lies in the folder of the notes, where the next build would read it as theirs':
    '`{0}` lies in the folder of the notes, where the next build would read it as theirs',
  '`{0}` belongs to the kit itself': '`{0}` belongs to the kit itself',
  '`{0}` is a file: the site is a folder, name one with `--out`':
    '`{0}` is a file: the site is a folder, name one with `--out`',
  // src/site/printed.ts
  'the table': 'the table',
  'the entry of `{0}`': 'the entry of `{0}`',
  'the list of what can be written': 'the list of what can be written',
  'the table of sources': 'the table of sources',
  'the card `{0}`': 'the card `{0}`',
  'the task `{0}`': 'the task `{0}`',
  'the count of verdicts': 'the count of verdicts',
  'the table of the numbers’ stories': 'the table of the numbers’ stories',
  'the title block': 'the title block',
  'the strip at the foot': 'the strip at the foot',
  'the head of the page': 'the head of the page',
  'what is said of hazards': 'what is said of hazards',
  'the table of what it rests on': 'the table of what it rests on',
  'the list of sources': 'the list of sources',
  'the way back to the note': 'the way back to the note',
  'the table of steps': 'the table of steps',
  'the list of tasks': 'the list of tasks',
  'the lines to sign': 'the lines to sign',
  'the list of outside cases': 'the list of outside cases',
  'the list of uses': 'the list of uses',
  'what its form starts from': 'what its form starts from',
  'the count of numbers': 'the count of numbers',
  'the table of all numbers': 'the table of all numbers',
  'the count of parts': 'the count of parts',
  'the tables of parts': 'the tables of parts',
  'what it costs': 'what it costs',
  'the count of what is open': 'the count of what is open',
  'the tables of tasks': 'the tables of tasks',
  'the list of what is done': 'the list of what is done',
  'the entry of the note `{0}`': 'the entry of the note `{0}`',
  'the count of notes': 'the count of notes',
  'what is open': 'what is open',
  'the list of guesses': 'the list of guesses',
  // src/site/search/names.ts
  '{0}, now {1}': '{0}, now {1}',
  // src/site/social/headline.ts
  '{0}; verdict: {1}': '{0}; verdict: {1}',
  // src/site/social/pictures.ts
  'the picture for links leaves {0} of the title out: its font does not have them':
    'the picture for links leaves {0} of the title out: its font does not have them',
  'the page shows the whole title; the font has Latin, Greek and Cyrillic letters and most signs':
    'the page shows the whole title; the font has Latin, Greek and Cyrillic letters and most signs',
  // src/site/verify.ts
  'there is no numbers.json: this is not a finished site':
    'there is no numbers.json: this is not a finished site',
  'the numbers of this page are not there': 'the numbers of this page are not there',
  'the figures for the reader’s browser are not there':
    'the figures for the reader’s browser are not there',
  'numbers.json is not what the kit writes (format 1)':
    'numbers.json is not what the kit writes (format 1)',
  'the note `{0}` has no page': 'the note `{0}` has no page',
  'the block `{0}` has no page of its own': 'the block `{0}` has no page of its own',
  'the note `{0}` has no wall sheet': 'the note `{0}` has no wall sheet',
  'the page of an older name does not lead to the new one':
    'the page of an older name does not lead to the new one',
  'there is no page here to have figures': 'there is no page here to have figures',
  'the page says another edition than its figures have':
    'the page says another edition than its figures have',
  '{0} is not what working it again gives': '{0} is not what working it again gives',
  'the warning `{0}` does not stand before the card `{1}`':
    'the warning `{0}` does not stand before the card `{1}`',
  'the verdict of `{0}` is another': 'the verdict of `{0}` is another',
  'prints a number `{0}` that numbers.json does not have':
    'prints a number `{0}` that numbers.json does not have',
  '`{0}` prints something else than {1}': '`{0}` prints something else than {1}',
  // src/site/watch.ts
  '{0}: the pages stand as they were': '{0}: the pages stand as they were',
  'mended: {0}': 'mended: {0}',
  'something cannot be read just now ({0})': 'something cannot be read just now ({0})',
  // src/site/words.ts
  'measured:': 'measured:',
  'rests on': 'rests on',
  // src/site/wrong.ts
  '{0} place of the new site is not what its numbers give':
    '{0} place of the new site is not what its numbers give',
  '{0} places of the new site are not what its numbers give':
    '{0} places of the new site are not what its numbers give',
  '{0} link of the new site leads nowhere': '{0} link of the new site leads nowhere',
  '{0} links of the new site lead nowhere': '{0} links of the new site lead nowhere',
  // src/words/compare.ts
  'missing, and shown in English:': 'missing, and shown in English:',
  'no longer used:': 'no longer used:',
  'to be mended:': 'to be mended:',
  '{0} of {1} text is there': '{0} of {1} text is there',
  '{0} of {1} texts are there': '{0} of {1} texts are there',
  'nothing stands there': 'nothing stands there',
  '{0} is left out': '{0} is left out',
  '{0} stands for no value of this text': '{0} stands for no value of this text',
  '{0} cannot stand in this text': '{0} cannot stand in this text',
  // src/words/lists.ts
  '{0} or {1}': '{0} or {1}',
  '{0} and {1}': '{0} and {1}',
  // src/writing/list.ts
  'Plain Markdown, and what stands here. Each example is worked out by the same rules as a note; its numbers are invented, and none of them is among those of the notes.':
    'Plain Markdown, and what stands here. Each example is worked out by the same rules as a note; its numbers are invented, and none of them is among those of the notes.',
  'Where the numbers of the examples come from': 'Where the numbers of the examples come from',
  'Such a table ends each note.': 'Such a table ends each note.',
  'Each with all that it needs, to copy and to change. Its page has the inputs, ranges, limits and sources.':
    'Each with all that it needs, to copy and to change. Its page has the inputs, ranges, limits and sources.',
  'Units can be multiplied, divided and raised: {0}. An {1} at the end and {2} for {3} are understood.':
    'Units can be multiplied, divided and raised: {0}. An {1} at the end and {2} for {3} are understood.',
  Elements: 'Elements',
  'How numbers are typed': 'How numbers are typed',
  'It must say {0}.': 'It must say {0}.',
  'It may say {0}.': 'It may say {0}.',
  'It takes no words of its own: what it holds stands between its tags.':
    'It takes no words of its own: what it holds stands between its tags.',
  '{0}, as it is typed': '{0}, as it is typed',
  '{0}, to copy': '{0}, to copy',
  // src/writing/messages.ts
  'Allowed: {0}.': 'Allowed: {0}.',
  'all of them': 'all of them',
  Messages: 'Messages',
  'and {0} more, in the terminal': 'and {0} more, in the terminal',
  '{0} message about other files: {1}': '{0} message about other files: {1}',
  '{0} messages about other files: {1}': '{0} messages about other files: {1}',
  // src/writing/purposes.ts
  'What you measured, and with what. `with` takes the name of an instrument in `site.yaml`, or words.':
    'What you measured, and with what. `with` takes the name of an instrument in `site.yaml`, or words.',
  'What a sheet, a standard or a handbook says. `source` takes the name of a source in `site.yaml`, or words; `at` is the page or the clause.':
    'What a sheet, a standard or a handbook says. `source` takes the name of a source in `site.yaml`, or words; `at` is the page or the clause.',
  'A guess, with its reason, and where you can with how it could be settled.':
    'A guess, with its reason, and where you can with how it could be settled.',
  'What you decided, and why.': 'What you decided, and why.',
  "One use of a calculator. All else that it takes are the calculator's inputs: a text with a unit, a word, or a name in braces.":
    "One use of a calculator. All else that it takes are the calculator's inputs: a text with a unit, a word, or a name in braces.",
  'A number in another unit or with other digits, or a sum that gets a name.':
    'A number in another unit or with other digits, or a sum that gets a name.',
  'The name of a size, on which nothing rests.': 'The name of a size, on which nothing rests.',
  'A figure that is only mentioned.': 'A figure that is only mentioned.',
  'A part, once, where it is fitted. Its figures have names, too: `pump.mass`.':
    'A part, once, where it is fitted. Its figures have names, too: `pump.mass`.',
  'A picture with its caption and with marks; each mark begins with its place, from the left and from the top.':
    'A picture with its caption and with marks; each mark begins with its place, from the left and from the top.',
  'Two pictures of one place.': 'Two pictures of one place.',
  'Names and sums': 'Names and sums',
  'A name in braces is its number: in words, lists, tables and headings, and in the inputs of a `<Calc>`. Names and plain numbers may be added, taken away, multiplied and divided.':
    'A name in braces is its number: in words, lists, tables and headings, and in the inputs of a `<Calc>`. Names and plain numbers may be added, taken away, multiplied and divided.',
  'Several numbers at once': 'Several numbers at once',
  'A table inside an element makes a number of each row. Leave an empty line before and after it.':
    'A table inside an element makes a number of each row. Leave an empty line before and after it.',
  "A number that takes another's place": "A number that takes another's place",
  'From its date on it stands in for the other, and everything that rests on the other moves.':
    'From its date on it stands in for the other, and everything that rests on the other moves.',
  'Lists of tasks are gathered on a page of their own; a finished one has an `x`.':
    'Lists of tasks are gathered on a page of their own; a finished one has an `x`.',
  Pictures: 'Pictures',
  'The file lies beside the note. What it shows stands in the brackets, for those who cannot see it.':
    'The file lies beside the note. What it shows stands in the brackets, for those who cannot see it.',
  // src/writing/skeleton.ts
  'a note needs a title: {0}': 'a note needs a title: {0}',
  '`{0}`: a title takes words only, no braces': '`{0}`: a title takes words only, no braces',
  'notes/{0}.mdx is there already, and stays as it is: choose another title':
    'notes/{0}.mdx is there already, and stays as it is: choose another title',
  '`{0}` is an older name of notes/{1}.mdx, which links still lead to: choose another title':
    '`{0}` is an older name of notes/{1}.mdx, which links still lead to: choose another title',
  '{0}, as in the last note': '{0}, as in the last note',
  'take this line out when readers may see the note':
    'take this line out when readers may see the note',
  Goal: 'Goal',
  'What should be true when this is done, and how you will know.':
    'What should be true when this is done, and how you will know.',
  'Each where it is fitted:': 'Each where it is fitted:',
  'Coolant pump': 'Coolant pump',
  'What I did': 'What I did',
  'Pictures lie beside this file: ![what it shows](./pump.jpg)':
    'Pictures lie beside this file: ![what it shows](./pump.jpg)',
  '14.0 V, warm': '14.0 V, warm',
  Safety: 'Safety',
  'What was off, locked and proven dead; what you wore; who looked at it.':
    'What was off, locked and proven dead; what you wore; who looked at it.',
  Changed: 'Changed',
  'What came out otherwise than planned, and which number it replaces.':
    'What came out otherwise than planned, and which number it replaces.',
  Next: 'Next',
  'one line for each thing that is left to do': 'one line for each thing that is left to do',
  'What a sheet says:': 'What a sheet says:',
  'What you guess:': 'What you guess:',
  'What you decide:': 'What you decide:',
  'What works it out:': 'What works it out:',
  '{0}, to copy from the page of a calculator': '{0}, to copy from the page of a calculator',
  'To use one:': 'To use one:',
  // src/writing/units.ts
  For: 'For',
  Type: 'Type',
  Or: 'Or',
  'read as {0}': 'read as {0}',
  Typed: 'Typed',
  'What becomes of it': 'What becomes of it',
}

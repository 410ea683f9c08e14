#!/bin/sh
# Writes gnu-units.csv: every unit of src/quantity as GNU Units works it out, for tests/quantity/.
#
# Made with GNU Units 2.22 (data file definitions.units of that release). Run it with `units` on the
# PATH:  sh tests/reference/gnu-units.sh > tests/reference/gnu-units.csv
# Columns: quantity as this kit writes it, the expression given to GNU Units, its value in SI, its SI
# base units as GNU Units prints them. GNU Units has no feet of water, gauge or absolute marks, nor
# temperature differences: those stand as `ft water`, the bare pressure unit, `K` and `degF`.
set -eu
LC_ALL=C.UTF-8
export LC_ALL

row() {
  # A unit by itself is answered with its definition, `=` and the reduced form.
  reduced=$(units --terse --digits 15 --strict "$2" | sed 's/.* = //')
  value=${reduced%% *}
  case $reduced in *[Ee]rror*) echo "$2: $reduced" >&2 && exit 1 ;; esac
  case $reduced in
    *' '*) base=${reduced#* } ;;
    *) base='' ;;
  esac
  printf '%s,%s,%s,%s\n' "$1" "$2" "$value" "$base"
}

# prefixed UNIT GNU-NAME PREFIXES…
prefixed() {
  unit=$1
  gnu=$2
  shift 2
  for prefix in "$@"; do
    case $prefix in
      p) word=pico ;; n) word=nano ;; µ) word=micro ;; m) word=milli ;; c) word=centi ;;
      d) word=deci ;; h) word=hecto ;; k) word=kilo ;; M) word=mega ;; G) word=giga ;;
    esac
    row "1 $prefix$unit" "$word$gnu"
  done
}

echo 'quantity,expression,value,base'

while IFS='|' read -r unit expression; do
  row "1 $unit" "$expression"
done <<'LIST'
m|m
kg|kg
s|s
A|A
K|K
rad|radian
US$|US$
g|gram
t|tonne
lb|lb
oz|oz
in|inch
ft|foot
yd|yard
mi|mile
mil|mil
kcmil|kcmil
min|minute
h|hour
d|day
rev|turn
°|degree
rpm|rpm
Hz|hertz
mph|mph
N|newton
kgf|kgf
lbf|lbf
Pa|pascal
bar|bar
atm|atm
torr|torr
psi|psi
mH2O|m water
cmH2O|cm water
mmH2O|mm water
inH2O|inch water
ftH2O|foot water
mmHg|mm Hg
inHg|inch Hg
J|joule
W|watt
Wh|watt hour
hp|horsepower
PS|metrichorsepower
BTU|btu
L|liter
cc|cc
gal|gallon
qt|quart
impgal|brgallon
cfm|cfm
P|poise
St|stokes
C|coulomb
Ah|ampere hour
V|volt
VA|volt ampere
Ω|ohm
S|siemens
F|farad
H|henry
%|percent
ppm|ppm
Δ°C|K
Δ°F|degF
kPa gauge|kPa
psi gauge|psi
bar gauge|bar
kPa abs|kPa
psi abs|psi
bar abs|bar
m²|m^2
ft²|ft^2
mm²|mm^2
cm²|cm^2
in²|in^2
m³|m^3
cm³|cm^3
in³|in^3
ft³|ft^3
km/h|km/hour
m/s|m/s
ft/min|ft/min
ft/s|ft/s
m/s²|m/s^2
ft/s²|ft/s^2
rad/s|radian/s
rev/mi|turn/mile
N·m|N m
lb·ft|lbf ft
lb·in|lbf inch
ft·lbf|ft lbf
in·lbf|inch lbf
N/m|N/m
N/mm|N/mm
lbf/in|lbf/inch
kg·m²|kg m^2
lb·ft²|lb ft^2
kgf/cm²|kgf/cm^2
J/m|J/m
Wh/km|watt hour/km
Wh/mi|watt hour/mile
kWh/100 km|kilowatt hour/(100 km)
kWh/100 mi|kilowatt hour/(100 mile)
mi/kWh|mile/kilowatt hour
J/kg|J/kg
Wh/kg|watt hour/kg
Wh/lb|watt hour/lb
kg/m³|kg/m^3
kg/L|kg/liter
g/cm³|g/cm^3
lb/ft³|lb/ft^3
lb/gal|lb/gallon
mg/L|mg/liter
Pa·s|Pa s
mPa·s|milli Pa s
m²/s|m^2/s
mm²/s|mm^2/s
m³/s|m^3/s
m³/h|m^3/hour
L/s|liter/s
L/min|liter/minute
L/h|liter/hour
gal/min|gallon/minute
gal/h|gallon/hour
impgal/min|brgallon/minute
ft³/min|ft^3/minute
kg/s|kg/s
kg/min|kg/minute
kg/h|kg/hour
lb/min|lb/minute
g/s|g/s
J/(kg·K)|J/(kg K)
kJ/(kg·K)|kilojoule/(kg K)
BTU/(lb·Δ°F)|btu/(lb degF)
J/K|J/K
kJ/K|kilojoule/K
BTU/Δ°F|btu/degF
BTU/h|btu/hour
W/K|W/K
BTU/(h·Δ°F)|btu/(hour degF)
K/W|K/W
W/(m·K)|W/(m K)
BTU/(h·ft·Δ°F)|btu/(hour ft degF)
W/(m²·K)|W/(m^2 K)
BTU/(h·ft²·Δ°F)|btu/(hour ft^2 degF)
Ω/m|ohm/m
mΩ/m|milliohm/m
Ω/km|ohm/km
mΩ/ft|milliohm/ft
Ω/V|ohm/volt
1/K|1/K
A²s|A^2 s
US$/J|US$/J
US$/kWh|US$/(kilowatt hour)
US$/m|US$/m
US$/km|US$/km
US$/mi|US$/mile
LIST

prefixed m meter n µ m c d k
prefixed g gram µ m
prefixed s second n µ m
prefixed L liter µ m c d
prefixed bar bar m
prefixed Pa pascal m h k M G
prefixed P poise m c
prefixed St stokes c
prefixed K kelvin m
prefixed t tonne k
for pair in A:ampere V:volt W:watt Ω:ohm S:siemens F:farad H:henry C:coulomb J:joule N:newton Hz:hertz; do
  prefixed "${pair%%:*}" "${pair#*:}" p n µ m k M G
done
prefixed Wh 'watt hour' p n µ m k M G
prefixed Ah 'ampere hour' p n µ m k M G
prefixed VA 'volt ampere' p n µ m k M G

# Points on a scale, at more than one point.
for degrees in -40 0 25 65 100; do row "$degrees °C" "tempC($degrees)"; done
for degrees in -40 0 32 150 212; do row "$degrees °F" "tempF($degrees)"; done

# Wire gauge: the diameter is GNU Units' own, the area a circle's.
for gauge in 40 30 22 20 18 16 14 12 10 8 6 4 2 1; do
  row "$gauge AWG" "(pi/4) wiregauge($gauge)^2"
done
row '1/0 AWG' '(pi/4) wiregauge(0)^2'
row '2/0 AWG' '(pi/4) wiregauge(g00)^2'
row '3/0 AWG' '(pi/4) wiregauge(g000)^2'
row '4/0 AWG' '(pi/4) wiregauge(g0000)^2'

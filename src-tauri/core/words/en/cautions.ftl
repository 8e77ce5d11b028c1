# Cautions that stand at the head of a screen, a report or a tag.

caution-unplug-first = Unplug it first. Pull the plug out of the wall; the switch is not enough.
caution-stored-charge = Capacitors keep their charge after the plug is out. Discharge them through a resistor, then measure that the charge is gone before you touch anything inside.
caution-qualified = Work on the line side, and any test with the unit plugged in, is for a qualified person only.
caution-codes = Local codes come first. Where they ask for more than this, do what they ask.
caution-not-checked = These checks look at the line side only. Fire, hot parts, plate voltage inside and faults that cannot be seen were not checked.
# The 5 % and the contact are those of the body-impedance table (body_impedance_ac.csv).
caution-body-figures = Currents are worked out for the 5 % of people with the lowest body impedance, with dry skin and a large contact. Wet skin is worse.
caution-series-lamp = A series lamp or a variable autotransformer limits the current into a fault. It does not prevent a shock.

## What ends a shock in the outlet: both names, unless the region says which is usual there (guards/*.ftl).

-a-guard = a GFCI or RCD
-a-guard-short = a GFCI/RCD
-guard = GFCI or RCD

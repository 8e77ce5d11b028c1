# What has to be shown after a repair. Limits: data/proof.csv, each with its source and mark.

proof-caution-live = Lines that need the unit plugged in come last, by a qualified person, behind { -a-guard }, one hand, and only when no line before them has failed.
proof-nothing-chosen = Nothing was chosen to be repaired yet, so there is nothing to prove.
proof-all-passed = Every line is passed.
proof-still-live = It cannot be marked ready: with this repair it is still live as found, or puts the supply on the earth wire.
proof-never-live = Do not plug it in for a test: straight at an outlet it is live even after this repair. The lines that need the plug in are left out.
proof-progress = { $open } open, { $passed } passed, { $failed } failed.
proof-found-worse = It cannot be marked ready: a later inspection finds it { $found }, and the repair was to leave it { $left }.
proof-held-back = It cannot be marked ready. Since the repair: { $why }
proof-not-ready = It cannot be marked ready. Open or failed: { $lines }.

proof-mark-open = Open
proof-mark-passed = Passed
proof-mark-failed = Failed
proof-holds = it holds
proof-holds-not = it does not hold
proof-position = { $position }: { $read }

proof-limit-yes = It has to hold.
proof-limit-least = At least { $limit }; above the range of the meter is enough.
proof-limit-most = At most { $limit }.
proof-limit-lead = At most { $limit }, the earth wire’s own resistance counted in.
proof-source = { $source } ({ $mark }).
source-appliance_testing = In-service testing of appliances
source-ul_101 = UL 101, leakage current of appliances
source-typical_values = Trade practice
source-class_y_limit = The limit that was chosen for class Y, stricter than the standard’s
source-mark-verified = as quoted in print
source-mark-memory = from memory
source-mark-common = common practice, no source
source-mark-computed = computed
source-mark-assumption = our own choice

proof-who-anyone = Anybody, with the plug out
proof-who-qualified = A qualified person, with the plug out
proof-who-qualified_live = A qualified person only: the unit is plugged in
proof-who-electrician = Whoever may work on the building’s wiring

## Lines: what is to be shown, how, and what to mind

proof-earth_bond = Earth bond
proof-earth_bond-how = Plug out. Ohms from the earth pin to bare chassis metal, while the cord is bent along its length and at both ends; enter the highest.
proof-earth_bond-caution = Zero the leads first. Paint under the lug is the usual fault.
proof-cord_pull = Cord pull
proof-cord_pull-how = Plug out. A firm pull and a twist at the strain relief: no conductor and no joint moves inside.
proof-cord_pull-caution = A knot is no strain relief.
proof-wide_blade_near_leg = Wide blade to the common leg
proof-wide_blade_near_leg-how = Plug out. Ohms from the wide or neutral blade to the circuit common, with the switch on, and off too where it does not open this leg; enter the higher.
proof-wide_blade_near_leg-caution = Read the other blade too: through the heaters it reads more.
proof-hot_blade_open_off = Hot blade open when switched off
proof-hot_blade_open_off-how = Plug out, switch off. Ohms across the switch, from the hot blade to the leg behind it; above the range of the meter is what is wanted.
proof-hot_blade_open_off-caution = A capacitor across the switch lets the reading climb: wait until it stands.
proof-chassis_volts_loaded = Chassis voltage under load
proof-chassis_volts_loaded-how = Straight at a protected outlet: volts from the metal to a proven earth across 1500 Ω beside 0.15 µF, in each position of plug and switch.
proof-chassis_volts_loaded-caution = With an earth wire: in a test lead whose earth is opened, for through the bond it always reads low; nobody else touches it. Not behind an isolating transformer, where a low reading shows nothing. Stop at the first reading above the limit.
proof-leakage_first = Leakage, plug the first way round
proof-leakage_first-how = By a leakage tester, or the loaded volts over 1495 Ω at 60 Hz; the worse of switch on and off. With an earth wire: its earth opened in the test lead, or the current measured in it.
proof-leakage_first-caution = The unit has to stand on something that insulates, with no aerial and no cable on it.
proof-leakage_second = Leakage, plug the other way round
proof-leakage_second-how = The same with the plug turned round, or through a reversing lead where it goes in one way only.
proof-leakage_second-caution = Never turn round a set whose chassis is on the line and whose plug goes in one way only.
proof-fuse_leg = Fuse in the hot leg
proof-fuse_leg-how = Plug out. With the fuse out, ohms from the hot blade to the switch: OL, above the range. With the fuse in: next to nothing.
proof-fuse_leg-caution = On a plug that goes in both ways the fuse can stand in the neutral: it then opens and leaves the set hot.
proof-front_transformer = The transformer in front isolates
proof-front_transformer-how = Transformer unplugged. Ohms from each output contact to each input pin and to its earth; enter the lowest. OL, above the range, is what is wanted.
proof-front_transformer-caution = A few ohms or any reading at all: it is an autotransformer, or its output is earthed, and isolates nothing. This unit alone on it, and only ever behind it.
proof-device_test = The device trips
proof-device_test-how = The unit not plugged in. Press the test button of the { -guard } with a lamp at the outlet: it trips and the lamp goes out.
proof-device_test-caution = One that does not trip protects nobody, whatever else is shown.
proof-lost_barrier = Nothing comes off by hand
proof-lost_barrier-how = Plug out. Pull every knob, push every sleeve, lift the back: nothing that covers live metal comes off without a tool.
proof-lost_barrier-caution = Grub screws sit deep or are sealed.
proof-outlet_proven = The outlet it goes to
proof-outlet_proven-how = By meter against an earth that is known: which contact is hot, that the other is not, that the earth is one.
proof-outlet_proven-caution = A three-lamp tester cannot see an earth that is hot together with the neutral.
proof-insulation = Insulation
proof-insulation-how = Plug out, switch on, everything that could be hurt disconnected: 500 V d.c. from both pins together to the chassis.
proof-insulation-caution = Only where the chassis is on windings of its own. Discharge afterwards.

## The re-inspection beside the first

proof-compared = At first it was { $before }, at worst { $before_current }; now it is { $now }, at worst { $now_current }.
proof-compared-better = That is better.
proof-compared-worse = That is worse: find out what was changed, and do not plug it in.
proof-compared-same = The class is the same.

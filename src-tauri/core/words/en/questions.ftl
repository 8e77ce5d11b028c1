# What the inspector is asked: the question, why it matters, how to look, and a caution where there is a real one.
# Pins A and B are explained wherever an answer names them, so each screen and each printed sheet stands alone.

-pins-a-and-b = Pin B is the wide blade or the neutral pin where the plug tells; pin A is the other. On equal pins, mark one with tape and call it B.
-cover-off-caution = Unplug it first. Capacitors keep their charge: discharge them through a resistor, then measure that the charge is gone before you touch anything inside.
-look-only-caution = Look only. Leave the back on and keep your fingers out: parts inside can hold a charge after it is unplugged.

## From outside

question-plug = What is on the end of the cord?
question-plug-why = Two equal pins let either wire of the outlet reach the metal. A wide blade or an earth pin helps only if the wires behind it are right.
question-plug-how = Look at the cord’s own plug, not at an adaptor. Hold the pins side by side: is one wider? Look for a third pin, a stub or a hole where one was, or earth clips on the sides (those plugs go in both ways). If a separate box feeds the unit, inspect that box as its own unit.

question-bare_metal = Where can you touch bare metal?
question-bare_metal-why = A shock needs metal to touch. One bare grub screw on a knob can be joined to the line.
question-bare_metal-how = Go round the whole unit and tick each place: grub screws and shafts; screws underneath and behind; trim, grille and speaker frame; jacks and sockets; tonearm and turntable; metal cabinet. Bare metal of sockets, jacks and terminals counts. Painted metal counts too. Metal that is held or leaned on in use, such as a control panel under the hand, counts with the jacks; a tonearm counts with the pickups. Answer “none” only when every place is ticked.
question-bare_metal-caution = Unplug it before you put a finger on anything.

place-shafts = Grub screws and shafts of the knobs
place-screws = Screws underneath and behind
place-trim = Trim, grille and speaker frame
place-sockets = Jacks, sockets and terminals
place-tonearm = Tonearm and turntable
place-cabinet = Metal cabinet or panel

question-back = Is the back in place?
question-back-why = In many sets the back is the insulation. Without it, a hand can reach the chassis.
question-back-how = Look for a full back and bottom, with all their screws or clips. A board with holes big enough for a finger counts as missing.
question-back-caution = If the back is missing, keep your fingers out: parts inside can hold a charge after it is unplugged.

question-terminals = Are there terminals or lead-out wires for other gear?
question-terminals-why = An aerial or earth terminal is often one capacitor away from the line. Speaker and pickup terminals can carry plate voltage.
question-terminals-how = Look at the back and underneath for screws, spring clips, small sockets and loose wires. Read the marks beside them: aerial, antenna, earth, ground, pickup, phono, speaker. Tick all that you find.
question-terminals-caution = Unplug it before you touch a terminal or a loose wire, and clip nothing to it to find out.

question-selector = Is there a ground or hum switch?
question-selector-why = Such a switch joins the chassis, through a capacitor, to one supply wire or the other. One of the two is hot.
question-selector-how = Look near the power switch for a second switch marked ground, polarity or hum. A power switch with two “on” positions can be one. A switch or plug for the supply voltage is not one.
question-selector-caution = Unplug it before you move this switch.

question-earth_lift = Is there an earth-lift switch?
question-earth_lift-why = It can cut the chassis off from the earth wire. A unit with one counts as not earthed, for it may be lifted. If the set has no separate transformer, its earthed position puts the line on the earth wire, and that counts: do not power it.
question-earth_lift-how = Look at the back, near the cord and the sockets, for a switch marked lift, earth lift or ground lift.
question-earth_lift-caution = Unplug it before you move this switch.

question-kind = What kind of unit is it?
question-kind-why = Some kinds were mostly built without a transformer. It is a hint and proves nothing.
question-kind-how = Choose the nearest. A radio with a record player in one cabinet counts as a console radio.

question-rating_plate = What supply does the rating plate name?
question-rating_plate-why = A set marked AC/DC seldom has a transformer. It is a hint and proves nothing: plates outlive rebuilds.
question-rating_plate-how = Look on the back, underneath and inside the lid for a plate, a paper label or a stamp. Look for AC, DC, AC/DC, universal, a wave sign, or battery voltages.

question-iron_seen = How much iron can you see?
question-iron_seen-why = A power transformer is large and heavy. Iron alone proves no isolation: it may be a motor, an output transformer or an autotransformer.
question-iron_seen-how = Shine a torch through the slots of the back. Look for stacked metal plates with a coil in the middle. Motors and output transformers count. Lift a corner: a heavy end is a hint.
question-iron_seen-caution = { -look-only-caution }

question-tube_list = Which tubes are in it?
question-tube_list-why = Heaters that together need the line voltage point to a string straight across the line, without a transformer.
question-tube_list-how = Read the types printed on the tubes or on a layout label inside. Enter each one as printed, and the same type twice if it is there twice.
question-tube_list-caution = { -look-only-caution } Do not pull tubes to read them.

question-tube_count = How many tubes are in it?
question-tube_count-why = The number of tubes hints at how the heaters are fed. It proves nothing.
question-tube_count-how = Count through the slots of the back. Count empty tube sockets too. Dial lamps do not count.
question-tube_count-caution = { -look-only-caution }

question-tingle = Has anybody felt a tingle or a shock from it?
question-tingle-why = A tingle means that current has already gone through a person. No tingle proves nothing.
question-tingle-how = Ask the owner or the player: ever a tingle, a bite or a shock, from the unit, the strings or a microphone?
question-tingle-caution = Do not plug it in and touch it to find out.

question-rewired = Has anybody reworked it?
question-rewired-why = After a rework, plates and diagrams may no longer be true.
question-rewired-how = Look for a newer cord or plug, tape, fresh screws, added holes or sockets, and parts newer than the rest. Ask the owner.

question-cord = What state is the cord in?
question-cord-why = A bad cord can shock or start a fire by itself, whatever is inside.
question-cord-how = Look along its whole length, above all at the plug and where it goes in. Look for cracks, bare copper, tape, joins, sticky or hard rubber, frayed cloth. Choose the worst that you find.
question-cord-caution = Unplug it before you handle or bend the cord.

question-cord_wires = How many wires are in the cord?
question-cord_wires-why = Three wires to a two-pin plug mean a resistance cord. The third wire is no earth, and it runs hot.
question-cord_wires-how = Look where the cord goes in and at the plug. Count the wires in the cord, then the pins of the plug. A thick cloth cord with two pins is worth a second look.
question-cord_wires-caution = Unplug it first. Do not cut or strip the cord to count: old cloth cords can hold asbestos.

question-accessory_outlet = Is there an outlet on it for other gear?
question-accessory_outlet-why = Gear plugged in there shares this unit’s cord, switch and faults.
question-accessory_outlet-how = Look at the back for a supply outlet that another plug fits into, perhaps marked phono motor or AC outlet.
question-accessory_outlet-caution = Unplug it first, and plug nothing into it to find out.

## With the cover off, or with a meter

question-metal_joined = What is the bare metal joined to?
question-metal_joined-why = Bare metal that is joined to nothing inside cannot carry the line to your hand.
question-metal_joined-how = Trace each bare part with the cover off, or measure on the lowest ohms range from the part to the chassis and to the circuit common (the wire that the minus of the filter capacitors goes to). Press the probe through paint. If a resistor or capacitor joins them, it counts as joined. With several parts, answer for the worst: common, then chassis, then neither.
question-metal_joined-caution = { -cover-off-caution }

question-transformer = Is there a power transformer, and what does it feed?
question-transformer-why = Only separate windings isolate. A transformer that feeds the heaters alone, or an autotransformer, leaves the rest on the line.
question-transformer-how = Follow both primary leads end to end. In an isolating set they meet the cord, fuse and switch and nothing else. Output transformers and chokes are not power transformers. If you lose sight of any lead, answer that you could not trace it.
question-transformer-caution = { -cover-off-caution }

question-common_to_chassis = How is the circuit common joined to the chassis?
question-common_to_chassis-why = If the common is on the line and on the chassis, so is the metal.
question-common_to_chassis-how = Find the circuit common: the wire that the minus of the filter capacitors goes to. Follow it to the chassis. Look for solder or a lug on the metal, or for a resistor and a capacitor side by side.
question-common_to_chassis-caution = { -cover-off-caution }

question-common_leg = Which pin is the circuit common wired to?
question-common_leg-why = It tells which wire of the outlet ends up on the circuit common.
question-common_leg-how = Follow the circuit common (the wire that the minus of the filter capacitors goes to) back to the plug. A switch or fuse on the way does not matter. { -pins-a-and-b }
question-common_leg-caution = { -cover-off-caution }

question-switch_leg = Which leg does the power switch open?
question-switch_leg-why = A switch in one leg leaves the other joined to the outlet. A set that is switched off can still be live.
question-switch_leg-how = Follow both wires of the cord. See which goes through the switch; it is often on the back of the volume control. { -pins-a-and-b }
question-switch_leg-caution = { -cover-off-caution }

question-line_capacitor = Is there a capacitor from the line to the chassis?
question-line_capacitor-why = It leaks some line current to the metal all the time. If it shorts, the metal is live.
question-line_capacitor-how = Look where the cord comes in: a capacitor from either wire, the fuse or the switch to a lug on the chassis. One from the circuit common to the chassis, beside a resistor, does not count here. { -pins-a-and-b }
question-line_capacitor-caution = { -cover-off-caution }

question-line_capacitor_class = What kind of capacitor is it?
question-line_capacitor_class-why = A class Y capacitor is made and tested for line to metal. An ordinary one can fail shorted.
question-line_capacitor_class-how = Read the marks on its body: Y1, Y2 or Y4. X1/Y2 counts as Y; X alone does not. Old paper and film capacitors with only a value and a voltage are ordinary. If there are two and one of them is ordinary, answer ordinary. Photograph the mark.
question-line_capacitor_class-caution = { -cover-off-caution }

question-earth_wire = Is the cord’s earth wire on the chassis?
question-earth_wire-why = The earth wire carries leakage and fault current away, but only if it truly reaches the metal.
question-earth_wire-how = Follow the green, or green and yellow, wire from the cord. It counts only if it comes from a whole earth pin or clip and is bolted or soldered to the bare metal of the chassis. No earth wire, no whole earth pin on the plug, a wire that is cut or that goes elsewhere: not on the chassis. If the plug is missing, or the wire goes through a switch, you cannot tell.
question-earth_wire-caution = { -cover-off-caution }

question-fuse = Which leg is the fuse in?
question-fuse-why = When a fuse blows in the leg that the circuit common is on, the set goes dead but its metal can still be live.
question-fuse-how = Follow both wires of the cord to the first fuse. A fuse in the plug counts for its pin. With a fuse in both legs, answer for the leg that the circuit common is on. { -pins-a-and-b }
question-fuse-caution = { -cover-off-caution }

question-filter_capacitors = How do the filter capacitors look?
question-filter_capacitors-why = A swollen or leaking one can burst, or short and overheat the rectifier and transformer.
question-filter_capacitors-how = Look at the large metal cans and the cardboard tubes. Look for bulged ends, crust, wet or waxy spots and open vents. One that looks sound can still be bad.
question-filter_capacitors-caution = { -cover-off-caution }

question-materials = Do you see any of these old materials?
question-materials-why = Some old parts harm through dust, fumes or skin contact, with the power off.
# 1979: end of PCB manufacture (US EPA 530-F-20-005, seen in print).
question-materials-how = Look for grey-white fibre board or felt near hot tubes (asbestos could be in it), stacks of square finned plates (selenium), oil-filled metal cans from before 1979 (PCB could be in them), and glowing or browned dial paint (radium could be in it). The eye cannot prove any of them. Tick all that could be there.
question-materials-caution = Look, do not touch. No dusting, sanding, scraping or compressed air, and do not sniff. { -cover-off-caution }

## Values

value-line_capacitor = What is the value of the line capacitor?
value-line_capacitor-why = It sets how much current the metal leaks. A larger value leaks more.
# 20 %: how far the engine lets a marked value be off (its own assumption).
value-line_capacitor-how = Read the value or the colour code on its body. Better: with one lead lifted, measure it with a capacitance meter. Say whether it is marked or measured; a marked value counts as up to 20 % off. With two of them, enter the larger.
value-line_capacitor-caution = { -cover-off-caution }

value-network_capacitor = What is the value of the capacitor from common to chassis?
value-network_capacitor-why = It sets most of the current that reaches the chassis from the line. A larger value leaks more.
value-network_capacitor-how = Find the capacitor that joins the circuit common to the chassis, beside a resistor. Read its value, or lift one lead and measure it. Say whether it is marked or measured.
value-network_capacitor-caution = { -cover-off-caution }

value-aerial_capacitor = What is the value of the aerial capacitor?
value-aerial_capacitor-why = It is all that stands between the aerial terminal and the circuit common. A larger value leaks more.
value-aerial_capacitor-how = Follow the aerial terminal inward to the first capacitor. Read its value, or lift one lead and measure it. Say whether it is marked or measured.
value-aerial_capacitor-caution = { -cover-off-caution }

value-network_resistor = What is the value of the resistor from common to chassis?
value-network_resistor-why = It passes line current to the chassis beside the capacitor. A smaller value leaks more.
value-network_resistor-how = Find the resistor beside that capacitor. Read its colour bands, or lift one lead and measure it. Old resistors drift, so measuring is better. Say whether it is marked or measured.
value-network_resistor-caution = { -cover-off-caution }

value-rated = What supply is it rated for?
value-rated-why = The wrong volts or hertz can overheat it and start a fire.
value-rated-how = Read volts, hertz (or cycles) and watts from the rating plate. Enter what you find and leave the rest empty. If it has a voltage switch or plug, enter the voltage that is set now.

## Meter readings

reading-ohms_a_chassis_on = What do you read from pin A to the chassis, switch on?
reading-ohms_a_chassis_off = What do you read from pin A to the chassis, switch off?
reading-ohms_b_chassis_on = What do you read from pin B to the chassis, switch on?
reading-ohms_b_chassis_off = What do you read from pin B to the chassis, switch off?
reading-ohms_earth_chassis = What do you read from the earth pin to the chassis?
reading-ohms_a_part_on = What do you read from pin A to the bare metal, switch on?
reading-ohms_a_part_off = What do you read from pin A to the bare metal, switch off?
reading-ohms_b_part_on = What do you read from pin B to the bare metal, switch on?
reading-ohms_b_part_off = What do you read from pin B to the bare metal, switch off?
reading-ohms_earth_part = What do you read from the earth pin to the bare metal?
reading-ohms_a_b_on = What do you read from pin to pin, switch on?
reading-ohms_a_b_off = What do you read from pin to pin, switch off?
reading-insulation_megohms = What does the insulation tester read, in megohms?
reading-touch_test_volts = What does the touch test read, in volts?

reading-insulation_megohms-caution = This puts a high test voltage on the unit and charges it. For a qualified person only, unplugged; discharge it afterwards.
reading-touch_test_volts-caution = This is a live test, for a qualified person only. Local codes come first.

# Warnings that hold beside the class. Each is one thing to do or not to do; -why says what is behind it.
# An overlay holds as soon as one arrangement that is still possible has it, hence "could".

overlay-live_inside = Never take off a knob, back or cover, and never clip an earth, an aerial or test gear to it, while it is plugged in.
overlay-live_inside-why = Knobs, back and covers could be all that keeps line voltage from your hand.

overlay-line_on_earth = Do not power it: a supply conductor inside could be joined to the earth wire.
overlay-line_on_earth-why = Plugged in, it could trip the breaker or send current down the earth wire. With the earth lost, the metal could be live.
overlay-line_on_earth-name = a conductor on the earth wire

overlay-prove_outlet = Have the outlet and any adaptor proved before you plug it in.
overlay-prove_outlet-why = An outlet or adaptor with hot on its earth contact makes this unit live. A three-lamp tester cannot see it; a voltage detector, or a meter to a known earth, can. That is a live test, for a qualified person.

overlay-earth_carries_leakage = The earth wire could be carrying { $current } of leakage. Never lift or cut the earth.
overlay-earth_carries_fault = The earth wire could be carrying a supply conductor. Never lift or cut the earth, and do not power it.
overlay-earth_carries_leakage-why = With the earth lost, that current goes through the person who touches the metal instead.

overlay-aerial_terminal = Never connect its aerial or earth terminal to an earth.
overlay-aerial_terminal-why = The terminal could be joined to the line through one old capacitor. If that shorts, the earth lead and all that is on it can be live.

overlay-b_plus_on_terminals = Do not touch the pickup or speaker terminals, or connect anything to them, while it is plugged in.
overlay-b_plus_on_terminals-why = They may carry plate voltage, and can hold a charge after it is unplugged.

overlay-resistance_cord = The third wire in the cord is no earth. It runs hot: never shorten, coil or cover the cord.
overlay-resistance_cord-why = It is a resistor that takes up part of the line voltage. Shortened, it overloads the tubes; coiled or covered, it can burn. Old cloth cords can hold asbestos.

overlay-damaged_cord = Replace the cord before any power.
overlay-damaged_cord-why = Cracks and joins can shock whoever handles the cord, and can start a fire.
overlay-damaged_cord-name = the damaged cord

overlay-aged_cord = Look closely at the old cord, at the plug and where it goes in. Replace it if it is cracked, sticky or hard.
overlay-aged_cord-why = Old rubber hardens and crumbles, often under cloth where you cannot see it.

overlay-no_fuse = It has no fuse. Only the breaker at the wall limits a short inside.
overlay-no_fuse-why = A breaker lets through far more current than this unit can bear. A short could start a fire before it trips.

overlay-fuse_in_common_leg = The fuse could be in the wrong leg: blown, it leaves the set dead but still joined to the other leg. Unplug it before you look.
overlay-fuse_in_common_leg-why = The fuse could be in the leg of the circuit common, or in that of pin B. With it blown, the other leg still feeds the common through the heaters or windings.

overlay-accessory_outlet = Anything plugged into its outlet shares this unit’s faults. Leave it empty until the unit is proved.
overlay-accessory_outlet-why = The outlet hangs on the same cord and perhaps the same switch, and seldom has an earth.

overlay-filter_capacitors = Do not power it: a filter capacitor is swollen or leaking.
overlay-filter_capacitors-why = It can burst, or short and burn out the rectifier and transformer. Replace it first.
overlay-filter_capacitors-name = the failed filter capacitor

overlay-stored_charge = Unplug it, discharge the capacitors through a resistor, and measure that the charge is gone before you touch anything inside.
overlay-stored_charge-why = Filter capacitors can hold plate voltage long after the plug is out.

# asbestos, selenium, radium: US EPA, UK HSE and NIOSH pages (seen in print).

overlay-asbestos = Treat the fibre board, felt or old cloth cord as asbestos. Leave it alone if it is sound.
overlay-asbestos-why = It cannot be told by eye, and the dust harms the lungs. No dusting, sanding or compressed air. Removal is for trained people.

overlay-selenium = Stop and air the room if the finned rectifier smells foul or smokes. Do not sniff at it.
overlay-selenium-why = A failing selenium rectifier gives off poisonous fumes. It is better replaced, with a series resistor to hold the voltage down.

overlay-pcb = Treat the oil in the old metal can as PCB. Do not open it; wear gloves and bag it.
# 1979 and “mostly”: US EPA 530-F-20-005 (seen in print).
overlay-pcb-why = Oil-filled capacitors from before 1979 mostly hold it, unless they are marked “No PCBs”. Local hazardous-waste rules say where it goes.

overlay-radium = Treat the dial paint as radium. Leave the glass on; do not open, scrape or lick it. Wash your hands.
overlay-radium-why = The paint stays radioactive after it has stopped glowing. The harm is in swallowed or breathed dust.

overlay-wrong_supply = Do not power it here: it is rated for another supply.
overlay-wrong_supply-why = The wrong volts or hertz can overheat heaters, transformer and motor, and start a fire.
overlay-wrong_supply-name = another supply

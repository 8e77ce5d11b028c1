# What the inspector can answer, and the name by which lists call each finding.

answer-cant_tell = Can’t tell

## Answers, outside

answer-plug-two_equal_blades = Two pins, both alike
answer-plug-two_polarised_blades = Two pins, one wider: fits one way only
answer-plug-three_pins = Earth pin there: fits one way only
answer-plug-earth_pin_missing = Earth pin cut or broken off
answer-plug-three_pins_reversible = Earthed, but goes in both ways
answer-plug-battery_only = No cord and no inlet: battery only
answer-plug-outside_supply = A separate supply feeds it
answer-plug-no_plug = Cord or plug cut off or missing

answer-bare_metal-none_anywhere = None anywhere
answer-bare_metal-screws_or_shafts = Screws, grub screws or shafts
answer-bare_metal-panel_or_cabinet = Panel, trim, grille, turntable or cabinet
answer-bare_metal-instrument_jack = Instrument or microphone jack, or metal held in use
answer-bare_metal-socket_or_pickup = Another socket, a pickup or a tonearm

answer-back-fitted = In place and whole
answer-back-missing = Missing, broken or loose

answer-terminals-none = None
answer-terminals-aerial_or_earth = For an aerial or an earth
answer-terminals-pickup_or_speaker = For a pickup or a speaker

answer-selector-absent = No
answer-selector-present = Yes

answer-earth_lift-present = Yes
answer-earth_lift-absent = No

answer-kind-table_radio = Table radio
answer-kind-console_radio = Console radio, stands on the floor
answer-kind-portable_radio = Portable radio
answer-kind-record_player = Record player
answer-kind-instrument_amplifier = Instrument amplifier
answer-kind-other = Something else

answer-rating_plate-ac_dc = AC/DC or universal
answer-rating_plate-ac_only = AC only
answer-rating_plate-ac_dc_battery = AC/DC and battery
answer-rating_plate-battery = Battery only
answer-rating_plate-none = No plate, label or stamp

answer-iron_seen-none_visible = None that I can see
answer-iron_seen-small = Small, like a matchbox
answer-iron_seen-large = Large, like a fist or more

answer-tingle-reported = Yes, somebody felt it
answer-tingle-not_reported = Asked: nobody did

answer-rewired-looks_original = Looks original
answer-rewired-reworked = Reworked

answer-cord-sound = Sound, modern plastic
answer-cord-cracked = Cracked, bare, sticky or hard
answer-cord-spliced = Spliced or taped
answer-cord-cloth_or_rubber = Old cloth or rubber, no damage seen

answer-cord_wires-ordinary = As many wires as pins
answer-cord_wires-three_wires_two_pins = Three wires, but two pins

answer-accessory_outlet-present = Yes
answer-accessory_outlet-absent = No

## Answers, cover off or meter

answer-metal_joined-chassis = To the chassis
answer-metal_joined-common = To the circuit common
answer-metal_joined-no = To neither: traced or measured

answer-transformer-none = No power transformer
answer-transformer-heaters_only_traced = Feeds the heaters only: traced
answer-transformer-separate_traced = Separate windings: both leads traced
answer-transformer-shared_lead = Shares a lead with line and set
answer-transformer-motor_winding = Fed from a winding on the motor
answer-transformer-not_traced = There, but I could not trace it

answer-common_to_chassis-direct = Directly, by wire or solder
answer-common_to_chassis-through_network = Through a resistor and a capacitor
answer-common_to_chassis-not_joined = Not joined

answer-common_leg-pin_a = Pin A
answer-common_leg-pin_b = Pin B
answer-common_leg-neither = Neither: a winding or rectifier between

answer-switch_leg-pin_a = The leg of pin A
answer-switch_leg-pin_b = The leg of pin B
answer-switch_leg-both = Both legs
answer-switch_leg-none = No switch in the line

answer-line_capacitor-none = None
answer-line_capacitor-pin_a_leg = From the leg of pin A
answer-line_capacitor-pin_b_leg = From the leg of pin B
answer-line_capacitor-both_legs = One from each leg
answer-line_capacitor-on_selector = On the ground or hum switch

answer-line_capacitor_class-ordinary = Ordinary: no Y mark
answer-line_capacitor_class-class_y = Class Y: mark photographed

answer-earth_wire-on_chassis = Yes, bolted or soldered to it
answer-earth_wire-not_on_chassis = No, or there is no earth wire

answer-fuse-pin_a_leg = The leg of pin A
answer-fuse-pin_b_leg = The leg of pin B
answer-fuse-none = No fuse

answer-filter_capacitors-sound = They look sound
answer-filter_capacitors-swollen_or_leaking = Swollen or leaking

answer-materials-none = None of these
answer-materials-asbestos = Fibre board or felt: could be asbestos
answer-materials-selenium = Stack of finned plates: selenium
answer-materials-pcb = Oil-filled can: could be PCB
answer-materials-radium = Glowing or brown dial paint: radium?

## Names of findings in lists: they follow "rests on", "look again at"

finding-plug = the plug
finding-bare_metal = the bare metal that can be touched
finding-back = the back
finding-terminals = the terminals
finding-selector = the ground or hum switch
finding-earth_lift = the earth-lift switch
finding-metal_joined = what the bare metal is joined to
finding-transformer = the power transformer
finding-common_to_chassis = how the common joins the chassis
finding-common_leg = which pin the common is on
finding-switch_leg = which leg the switch opens
finding-line_capacitor = the capacitor from line to chassis
finding-line_capacitor_class = the kind of line capacitor
finding-earth_wire = the earth wire
finding-kind = the kind of unit
finding-rating_plate = the rating plate
finding-iron_seen = the iron you saw
finding-tube_list = the list of tubes
finding-tube_count = the number of tubes
finding-tubes = the tubes
finding-meter = the meter used
finding-tingle = whether anybody felt a tingle
finding-rewired = the signs of rework
finding-cord = the state of the cord
finding-cord_wires = the wires in the cord
finding-accessory_outlet = the accessory outlet
finding-fuse = the fuse
finding-filter_capacitors = the filter capacitors
finding-materials = the old materials

finding-value-line_capacitor = the value of the line capacitor
finding-value-network_capacitor = the value of the common-to-chassis capacitor
finding-value-aerial_capacitor = the value of the aerial capacitor
finding-value-network_resistor = the value of the common-to-chassis resistor
finding-value-rated = the supply it is rated for

finding-ohms_a_chassis_on = the reading from pin A to the chassis, switch on
finding-ohms_a_chassis_off = the reading from pin A to the chassis, switch off
finding-ohms_b_chassis_on = the reading from pin B to the chassis, switch on
finding-ohms_b_chassis_off = the reading from pin B to the chassis, switch off
finding-ohms_earth_chassis = the reading from the earth pin to the chassis
finding-ohms_a_part_on = the reading from pin A to the bare metal, switch on
finding-ohms_a_part_off = the reading from pin A to the bare metal, switch off
finding-ohms_b_part_on = the reading from pin B to the bare metal, switch on
finding-ohms_b_part_off = the reading from pin B to the bare metal, switch off
finding-ohms_earth_part = the reading from the earth pin to the bare metal
finding-ohms_a_b_on = the reading from pin to pin, switch on
finding-ohms_a_b_off = the reading from pin to pin, switch off
finding-insulation_megohms = the insulation test
finding-touch_test_volts = the touch test

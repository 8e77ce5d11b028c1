# Single failures as noun phrases (they fill $fault), what each does, and the factors of an arrangement for the technician.

-near-leg = the leg that the circuit common is on

## Faults

fault-lost_barrier = a lost knob, back or cover
fault-lost_barrier-what = The chassis behind it can be touched.
fault-stray_far = a loose wire on the far leg touching the chassis
fault-stray_far-what = The wire that feeds the far leg lies on the chassis, ahead of the switch, so switching off does not help.
fault-stray_near = a loose wire on the near leg touching the chassis
fault-stray_near-what = The wire that feeds the near leg lies on the chassis, ahead of the switch, so switching off does not help.
fault-near_capacitor_shorted = a shorted capacitor from the near leg to the chassis
fault-near_capacitor_shorted-what = The near leg is then joined straight to the chassis.
fault-far_capacitor_shorted = a shorted capacitor from the far leg to the chassis
fault-far_capacitor_shorted-what = The far leg is then joined straight to the chassis.
fault-selector_capacitor_shorted = a shorted capacitor on the ground switch
fault-selector_capacitor_shorted-what = The leg that the switch points to is then joined straight to the chassis.
fault-network_capacitor_shorted = a shorted capacitor from the circuit common to the chassis
fault-network_capacitor_shorted-what = The chassis is then joined straight to the circuit common, which is on the line.
fault-aerial_capacitor_shorted = a shorted aerial capacitor
fault-aerial_capacitor_shorted-what = The aerial or earth terminal is then joined straight to the circuit common.
fault-insulation_breakdown = insulation broken down inside
fault-insulation_breakdown-what = What held the line off the chassis lets it through.
fault-earth_open = a broken earth wire
fault-earth_open-what = Current that the earth wire carried away goes through the person who touches the metal.
fault-outlet_reversed = an outlet wired backwards
fault-outlet_reversed-what = Hot and neutral are swapped, so a plug that fits one way only puts hot on the wrong leg.
fault-neutral_open = a broken neutral in the supply
fault-neutral_open-what = The set may go dead, but its neutral side is pulled up towards hot by other loads.

fault-feed_earthed = the isolated supply joined to earth
fault-feed_earthed-what = The insulation of the isolating transformer in front has failed, or a second unit on it joins one of its conductors to earth. The other conductor is then at all of the supply voltage.

# Joins two faults into one phrase; the result fills $fault.
fault-two = { $first } and { $second }

## The two legs of the line side

leg-near = Near leg: { -near-leg }. In a set with an isolating transformer, the leg of pin B.
leg-far = Far leg: the other one.

## Isolation

isolation-line_tied = Line tied: the circuit common is on a supply conductor, and the chassis is the common.
isolation-line_rectified = Line rectified: a bridge or full-wave doubler between line and common. The chassis is live either way round.
isolation-line_floated = Line floated: the common is on a supply conductor, and a resistor and capacitor join it to the chassis.
isolation-line_insulated = Line insulated: the common is on a supply conductor, and no part joins it to the chassis.
isolation-heater_transformer = Heater transformer: a transformer or motor winding feeds the heaters only. The rest is line tied.
isolation-autotransformer = Autotransformer: iron without isolation. The chassis is on its common end.
isolation-isolating = Isolating transformer: separate windings. The chassis is the set’s own common.
isolation-no_line = No line inside: batteries only.

## Cord

cord-two_pin_reversible = Two pins; goes in both ways round.
cord-two_pin_polarised = Two pins, polarised; goes in one way only.
cord-three_pin_earthed = Earth pin, joined to the chassis; goes in one way only.
cord-three_pin_unearthed = Earth pin, but no earth wire on the chassis; goes in one way only.
cord-three_pin_cut = Earth pin cut off; goes in both ways round, without an earth.
cord-three_pin_reversible_earthed = Earthed plug that goes in both ways round; chassis on the earth wire.
cord-three_pin_reversible_unearthed = Earthed plug that goes in both ways round; no earth wire on the chassis.

## Which pin feeds the near leg

near_pin-a = Pin A feeds the near leg.
near_pin-b = Pin B feeds the near leg.

## Line capacitor

line_capacitor-none = No capacitor from line to chassis.
line_capacitor-near_leg = Capacitor from the near leg to the chassis.
line_capacitor-far_leg = Capacitor from the far leg to the chassis.
line_capacitor-both_legs = Capacitors from both legs to the chassis.
line_capacitor-selector = Capacitor to the chassis from the leg that a panel switch chooses.

line_capacitor_class-ordinary = Ordinary capacitor: it can fail shorted.
line_capacitor_class-class_y = Class Y capacitor: made for line to metal, not counted to short by itself.

## Switch

switch_leg-near = The switch opens the near leg; the far leg stays joined to the outlet.
switch_leg-far = The switch opens the far leg; the near leg stays joined to the outlet.
switch_leg-both = The switch opens both legs.
switch_leg-none = No switch in the line: on whenever it is plugged in.

## Reach

reach-closed = Closed: with knobs, back and covers on, nothing joined to the circuit can be touched.
reach-aerial_terminal = Closed, but an aerial or earth terminal goes to the common through a capacitor.
reach-exposed = Metal on the chassis can be touched.
reach-handheld = Metal on the chassis is held in use: strings, microphone, control panel.
reach-common_exposed = Metal on the circuit common can be touched: pickup shield, jack sleeve, footswitch cable.

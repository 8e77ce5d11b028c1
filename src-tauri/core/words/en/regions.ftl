# Parts of the world. Plugs: data/plugs.csv. Colours of wires: data/wire_colours.csv. What a region calls its protection: common practice.

region-name-north_america = United States and Canada
region-name-europe = Europe (mainland)
region-name-britain = Britain and Ireland
region-name-japan = Japan
region-name-australia = Australia and New Zealand
region-supply = Outlets: { $supplies }.
region-one-supply = { $volts } { $hertz }
region-plugs-north_america = Plugs: NEMA 1-15 with two flat blades, the wider one neutral where it is polarised; NEMA 5-15 with an earth pin (seen in print).
region-plugs-europe = Plugs: two round pins, CEE 7/16 or 7/4 with earth contacts, which go in both ways round; CEE 7/6 with the earth pin in the outlet goes in one way, and still nobody can count on which pin is neutral (seen in print).
region-plugs-britain = Plugs: BS 1363 with three flat pins and a fuse in the plug, 3 or 13 A; goes in one way (seen in print). Old round pins are other plugs.
region-plugs-japan = Plugs: JIS C 8303 with two flat blades, mostly equal, so they go in both ways round; earth by a wire of its own (sources disagree on the blades).
region-plugs-australia = Plugs: AS/NZS 3112 with two slanted blades and an upright earth pin; goes in one way (seen in print).
region-wires = Wires of new cords: line { $line }; neutral { $neutral }; earth { $earth }. Old cords have other colours, and in some red or black was the earth: measure.
region-protection-north_america = Protection in the outlet: a GFCI, which trips at 4 to 6 mA (UL 943, as quoted).
region-protection-europe = Protection in the outlet: an RCD of 30 mA. It trips between 15 and 30 mA (IEC 61008-1, seen in print).
region-protection-britain = Protection in the outlet: an RCD of 30 mA. It trips between 15 and 30 mA (IEC 61008-1, seen in print).
region-protection-japan = Protection in the outlet: an earth-leakage breaker, an RCD; mostly of 30 or 15 mA (from memory).
region-protection-australia = Protection in the outlet: an RCD of 30 mA. It trips between 15 and 30 mA (IEC 61008-1, seen in print).

# Where figures come from, as a report lists them, with how each was seen.
figure-source-iec_60479_1 = IEC 60479-1 (TS 2005, 2018): effects of current on human beings, tables 1 to 12, figures 3 and 20. Seen: from memory and as quoted in textbooks and manuals; the standard itself was not read.
figure-source-iec_60990 = IEC 60990: methods of measurement of touch current, figures 3 to 5. Seen: components of figures 3 and 4 as quoted in manuals; figure 5 from memory.
figure-source-ieee_80 = IEEE Std 80: guide for AC substation grounding, equations for tolerable body current. Seen: from memory; body resistance as quoted in textbooks.
figure-source-ul_943 = UL 943: ground-fault circuit interrupters, class A trip time. Seen: formula as quoted by makers of such devices.
figure-source-iec_61008 = IEC 61008-1 and 61009-1: residual current operated circuit-breakers, maximum break times. Seen: as quoted in instrument manuals; the value at two times from memory.
figure-source-ul_101 = UL 101 (formerly ANSI C101.1): leakage current of appliances. Seen: as quoted in service manuals and in UL 8750.
figure-source-iec_62368_1 = IEC 62368-1: energy source limits ES1 and ES2. Seen: from memory.
figure-source-shock_surveys = Dalziel 1961, Dalziel and Lee 1968, and a survey of 50/60 Hz shock data. Seen: tables and abstracts as reproduced in print.
figure-source-ansi_c84_1 = ANSI C84.1: voltage ratings of 60 Hz systems. Seen: from memory.
figure-source-iec_60038 = IEC 60038: standard voltages. Seen: as quoted in print.
figure-source-stored_energy = Limits of stored energy and charge: hazard classes of capacitors (DOE, NFPA 70E), 45 µC of IEC 61010-1 and IEC 60335-1, 34 V at plug pins of IEC 60335-1. Seen: classes and 45 µC as quoted in print; NFPA 70E from memory.
figure-source-appliance_testing = In-service testing of appliances: 500 V d.c., 1 MΩ with an earth wire, 2 MΩ without. Seen: as published by test houses.
figure-source-heater_measurements = Measured cold and hot resistance of indirectly heated tubes (12AX7 6.8, 6SN7GTB 6.6, 50CA10 7.1). Seen: public circuit-simulation library and published measurements.
figure-source-fuse_standards = UL 248-14 and IEC 60127: what fuses carry, hold and open at. Seen: carrying and opening currents as quoted in print; times from memory.
figure-source-transformer_guides = Guides of transformer makers: direct current of a rectifier over the current of its winding. Seen: from memory.
figure-source-typical_values = Values usual in old sets: line capacitors, floating-bus networks, windings. Seen: published service notes where marked verified, else common practice.
figure-source-model = Choices of this model, where nothing has to be known but something has to stand. Seen: our own choice.

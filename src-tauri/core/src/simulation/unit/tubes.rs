//! Tube line-ups of physical units, with the heater figures printed in tube manuals.

/// One tube.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tube {
    /// Type designation.
    pub designation: &'static str,
    /// Heater, V.
    pub volts: f64,
    /// Heater, A.
    pub amperes: f64,
}

/// The tubes of one unit.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct LineUp {
    /// The tubes.
    pub tubes: &'static [Tube],
    /// What is in series with the heater string, Ω; 0 where nothing is.
    pub dropper_ohm: f64,
}

impl LineUp {
    /// Resistance of the hot string with its dropper, Ω: the sum of V / I (computed).
    pub fn string_ohm(&self) -> f64 {
        self.tubes.iter().map(|tube| tube.volts / tube.amperes).sum::<f64>() + self.dropper_ohm
    }
}

const fn tube(designation: &'static str, volts: f64, amperes: f64) -> Tube {
    Tube { designation, volts, amperes }
}

/// Series strings for 100 to 130 V. Line-ups and heater ratings: memory, tube manuals; droppers
/// computed in the project's table of cold and hot heaters.
pub(super) const LOW_LINE_STRINGS: &[LineUp] = &[
    LineUp {
        tubes: &[
            tube("12SA7", 12.6, 0.15),
            tube("12SK7", 12.6, 0.15),
            tube("12SQ7", 12.6, 0.15),
            tube("50L6GT", 50.0, 0.15),
            tube("35Z5GT", 35.0, 0.15),
        ],
        dropper_ohm: 0.0,
    },
    LineUp {
        tubes: &[
            tube("12BE6", 12.6, 0.15),
            tube("12BA6", 12.6, 0.15),
            tube("12AV6", 12.6, 0.15),
            tube("50C5", 50.0, 0.15),
            tube("35W4", 35.0, 0.15),
        ],
        dropper_ohm: 0.0,
    },
    LineUp {
        tubes: &[
            tube("6A7", 6.3, 0.3),
            tube("6D6", 6.3, 0.3),
            tube("75", 6.3, 0.3),
            tube("43", 25.0, 0.3),
            tube("25Z5", 25.0, 0.3),
        ],
        dropper_ohm: 160.0,
    },
];

/// Series strings for 200 V and up. Same sources.
pub(super) const HIGH_LINE_STRINGS: &[LineUp] = &[
    LineUp {
        tubes: &[
            tube("UCH42", 14.0, 0.1),
            tube("UF41", 12.6, 0.1),
            tube("UBC41", 14.0, 0.1),
            tube("UL41", 45.0, 0.1),
            tube("UY41", 31.0, 0.1),
        ],
        dropper_ohm: 1034.0,
    },
    LineUp { tubes: &[tube("VCL11", 90.0, 0.05), tube("VY2", 30.0, 0.05)], dropper_ohm: 2000.0 },
];

/// Heaters side by side on a winding. Same sources.
pub(super) const WINDING_LINE_UPS: &[LineUp] = &[
    LineUp {
        tubes: &[
            tube("6SA7", 6.3, 0.3),
            tube("6SK7", 6.3, 0.3),
            tube("6SQ7", 6.3, 0.3),
            tube("6V6GT", 6.3, 0.45),
            tube("5Y3GT", 5.0, 2.0),
        ],
        dropper_ohm: 0.0,
    },
    LineUp { tubes: &[tube("6AV6", 6.3, 0.3), tube("6AQ5", 6.3, 0.45)], dropper_ohm: 0.0 },
];

/// Battery filaments. Same sources.
pub(super) const BATTERY_LINE_UPS: &[LineUp] = &[LineUp {
    tubes: &[
        tube("1R5", 1.4, 0.05),
        tube("1U4", 1.4, 0.05),
        tube("1U5", 1.4, 0.05),
        tube("3V4", 2.8, 0.05),
    ],
    dropper_ohm: 0.0,
}];

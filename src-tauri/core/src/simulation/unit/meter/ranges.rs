//! How far the parts of a unit go at direct current. Ω unless said.

/// From and to.
pub(super) type Range = (f64, f64);

/// One conductor of a cord (common practice: a few metres of 0.5 to 1 mm², old crimps).
pub(super) const CORD: Range = (0.05, 0.5);
/// A fuse with its holder (common practice: 0.2 to 5 A, clips tarnished).
pub(super) const FUSE: Range = (0.05, 2.0);
/// A closed switch contact in order (common practice).
pub(super) const CONTACT: Range = (0.02, 1.0);
/// A closed switch contact that is burnt (the design's limit for a switch contact).
pub(super) const BURNT_CONTACT: Range = (1.0, 100.0);
/// How often a contact is burnt (assumption).
pub(super) const BURNT: f64 = 0.2;
/// A wire inside where there is no switch (assumption: a few centimetres of wire).
pub(super) const WIRE: f64 = 0.01;
/// Both probes on their spots, each reading (common practice: sharp tips, cleaned metal).
pub(super) const PROBES: Range = (0.0, 0.3);
/// A joint: common to its conductor, common to chassis (common practice: solder, rivet, old screw).
pub(super) const JOINT: Range = (0.01, 1.0);
/// A wire, core or cord open (assumption).
pub(super) const OPEN: f64 = 0.03;

/// A heater against its rating, part (measured: 5 to 10 % is normal).
pub(super) const HEATER_WITHIN: f64 = 0.10;
/// Hot over cold resistance of a heater (measured on a few: 6.6 to 7.1; 5 to 9 are its safe limits).
pub(super) const HOT_OVER_COLD: Range = (5.0, 9.0);
/// Warm over cold (common practice: 2 to 4 half a minute after use; who waits comes lower).
pub(super) const WARM_OVER_COLD: Range = (1.0, 3.0);
/// How often a set was used just before (assumption).
pub(super) const WARM: f64 = 0.3;
/// A dropper against its rating (common practice: nichrome 1.00 to 1.10, counted hot; age may bring as much).
pub(super) const DROPPER: Range = (1.0, 1.1);
/// How often a string is open by a bad tube (assumption).
pub(super) const STRING_OPEN: f64 = 0.10;

/// Primary of a power transformer or tapped winding, 100 to 130 V (common practice: 5 to 50).
pub(super) const PRIMARY: Range = (1.0, 60.0);
/// The same in an instrument amplifier (common practice: 1.5 to 8).
pub(super) const AMPLIFIER_PRIMARY: Range = (0.8, 8.0);
/// Primary of a transformer for heaters alone, 100 to 130 V (common practice: 20 to 150).
pub(super) const HEATER_PRIMARY: Range = (15.0, 150.0);
/// From this up a winding is one for 200 to 250 V, V (the supplies in use leave a gap there).
pub(super) const HIGH_VOLTS: f64 = 150.0;
/// Twice the turns of half the copper (common practice: about four times).
pub(super) const HIGH_WINDING: f64 = 4.0;
/// A motor winding with a heater tap (common practice: phonograph motors, 15 to 80).
pub(super) const TAPPED_MOTOR: Range = (15.0, 80.0);
/// A motor (assumption: phonograph motors and smaller ones).
pub(super) const MOTOR: Range = (15.0, 200.0);
/// A clock motor (assumption: 2 to 3 W).
pub(super) const CLOCK_MOTOR: Range = (400.0, 2000.0);
/// How often the switch that is worked is the motor's own, and the set's stands open (assumption).
pub(super) const WRONG_SWITCH: f64 = 0.15;
/// Primary of an outside supply (assumption: 3 to 30 W).
pub(super) const OUTSIDE_PRIMARY: Range = (30.0, 800.0);

/// A network resistor of age over what it was (common practice: carbon composition drifts upwards).
pub(super) const AGED: Range = (0.8, 2.0);
/// How often that resistor is open (assumption).
pub(super) const RESISTOR_OPEN: f64 = 0.10;
/// The network capacitor when it leaks (common practice: paper capacitors).
pub(super) const NETWORK_LEAK: Range = (10e3, 10e6);
/// How often it leaks (assumption).
pub(super) const NETWORK_LEAKS: f64 = 0.10;
/// How often it is shorted (assumption).
pub(super) const NETWORK_SHORTS: f64 = 0.05;
/// A part failed short (assumption).
pub(super) const SHORT: Range = (0.05, 2.0);
/// Insulation of any kind, damp to dry (common practice: below 1 to 2 MΩ it is rejected).
pub(super) const INSULATION: Range = (0.5e6, 1e9);
/// Insulation in order (common practice: above 20 to 100 MΩ when dry).
pub(super) const SOUND_INSULATION: Range = (100e6, 10e9);
/// Leak of an ordinary capacitor, to the line or to the aerial (common practice: paper capacitors).
pub(super) const ORDINARY_LEAK: Range = (100e3, 1e9);
/// Leak of a class Y capacitor (common practice: film or ceramic).
pub(super) const CLASS_Y_LEAK: Range = (100e6, 100e9);
/// How often an aerial capacitor leaks at all (assumption).
pub(super) const AERIAL_LEAKS: f64 = 0.5;

/// How often a rectifier is silicon and not a cold tube (assumption).
pub(super) const SILICON: f64 = 0.5;
/// What a silicon rectifier shows where it shows anything (assumption: by meter and way round).
pub(super) const SILICON_SHOWS: Range = (300.0, 2e6);
/// A surge resistor (common practice: 0, or 5 to 100).
pub(super) const SURGE: Range = (0.0, 100.0);
/// A half-wave plate supply that charges while it is measured (assumption: the reading climbs).
pub(super) const CHARGING: Range = (1e3, 10e6);
/// How often it does: silicon, the right way round, and not charged up yet (assumption).
pub(super) const CHARGES: f64 = 0.15;

/// The earth wire of a cord, contact to chassis (common practice: up to 1 Ω is accepted in use).
pub(super) const EARTH: Range = (0.05, 1.5);

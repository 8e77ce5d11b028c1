//! What a current through a person does: impedance of the body, contact paths, time/current zones,
//! protective devices, measuring networks and limits.
//!
//! It does not know where the current comes from.

mod impedance;
mod limits;
mod networks;
mod path;
mod protection;
mod stored_charge;
mod tolerable;
mod zones;

pub use impedance::{Area, Body, Impedance, Percentile, Skin};
pub use limits::{
    FIBRILLATION_CHARGE, LET_GO_MA, Limit, STARTLE_MA, TOUCH_LIMIT_MA, TOUCH_LIMIT_VOLTS, limits,
};
pub use networks::{MeasuringNetwork, Readout, TOUCH_TEST_OHM, touch_test_ohms};
pub use path::{Path, Posture};
pub use protection::{
    GFCI_MUST_TRIP_MA, GFCI_NEVER_TRIPS_MA, RCD_USUAL_MA, RcdType, gfci_curve, gfci_trip_s,
    rcd_curve, rcd_trip_s,
};
pub use stored_charge::{BODY_OHM, ChargeLimit, EMPTY, LOW_VOLTS, PLUG_VOLTS, StoredCharge};
pub use tolerable::{BODY_RESISTANCE_OHM, Weight, tolerable_ma};
pub use zones::{Curve, Zone, curve_ma, curve_mark, curve_points, zone};

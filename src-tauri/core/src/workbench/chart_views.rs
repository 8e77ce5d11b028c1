//! Touch current against time as a shell shows it: a picture, and the same as a table.

use serde::Serialize;

use crate::arrangement::{Fault, State};
use crate::body::{Curve, Zone};
use crate::fields::id_enum;

id_enum! {
    /// What may stand between the outlet and the unit, and cut a touch short.
    pub enum Guard {
        /// Ground-fault circuit interrupter, class A.
        Gfci = "gfci",
        /// Residual-current device, 30 mA, general type.
        Rcd30 = "rcd_30",
    }
}

/// A line between two zones.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct ChartLine {
    /// Which one.
    pub id: Curve,
    /// What begins above it, and how far the line was checked.
    pub note: String,
    /// The points that it is straight between on the chart: mA rms and s, from the shortest time on.
    pub points: Vec<[f64; 2]>,
}

/// A zone between two lines.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct ChartZone {
    /// Which one, from the least current up.
    pub id: Zone,
    /// Its name in the standard.
    pub name: String,
    /// What it means, in a few words.
    pub brief: String,
    /// What it means.
    pub what: String,
    /// Where there is room for its name: mA rms and s.
    pub at: [f64; 2],
}

/// A device that cuts a touch short.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct ChartDevice {
    /// Which one.
    pub id: Guard,
    /// Its name.
    pub name: String,
    /// The longest that a current may last, in corners that are straight between on the chart: mA rms
    /// and s, from the current on at which it has to trip.
    pub curve: Vec<[f64; 2]>,
    /// When it trips, what it does not see, and where the curve is from.
    pub notes: Vec<String>,
}

/// A state, as found or after a fault.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct ChartCase {
    /// Plug, switch and ground switch.
    pub state: State,
    /// The faults; none as found, two only where the verdict quotes such a case.
    pub faults: Vec<Fault>,
    /// The same in words.
    pub name: String,
}

/// What a device makes of a current.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct ChartCut {
    /// The device.
    pub device: Guard,
    /// How long the current lasts at most, s; nothing where the device need not trip.
    pub seconds: Option<f64>,
    /// The same in words.
    pub time: String,
    /// The zone it is in then.
    pub zone: Zone,
}

/// A touch current, and every state shown that gives it.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct ChartPoint {
    /// The states.
    pub cases: Vec<ChartCase>,
    /// The current, mA rms; of several that are written alike, the largest.
    pub milliamperes: f64,
    /// The same in words.
    pub figure: String,
    /// How long it is taken to last, s.
    pub seconds: f64,
    /// The zone it is in.
    pub zone: Zone,
    /// The same for each device.
    pub cuts: Vec<ChartCut>,
    /// The verdict quotes this one.
    pub quoted: bool,
}

/// States that have no point on the chart.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct ChartBeside {
    /// The states.
    pub cases: Vec<ChartCase>,
    /// What happens, in a word or two, or the current.
    pub word: String,
    /// Why there is no point.
    pub what: String,
}

/// Touch current against time, for the worst arrangement that is still possible.
#[derive(Clone, Debug, Default, PartialEq, Serialize, ts_rs::TS)]
pub struct ChartView {
    /// Which arrangement it is of, and what holds for it whatever the currents are.
    pub notes: Vec<String>,
    /// The least and the most current on the chart, mA rms.
    pub milliamperes: [f64; 2],
    /// The shortest and the longest time on the chart, s.
    pub seconds: [f64; 2],
    /// The lines, from the least current up; none for a unit without a line side.
    pub lines: Vec<ChartLine>,
    /// The zones between them, one more than lines.
    pub zones: Vec<ChartZone>,
    /// The devices that can be put before it.
    pub devices: Vec<ChartDevice>,
    /// The currents, largest first.
    pub points: Vec<ChartPoint>,
    /// What is shown and has no point.
    pub beside: Vec<ChartBeside>,
    /// What is shown, how long a touch is taken to last, and for which path and whose body it holds.
    pub basis: Vec<String>,
}

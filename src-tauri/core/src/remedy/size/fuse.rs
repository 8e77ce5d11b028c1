//! Which fuse a unit takes, and what a fuse of that number does by either standard.

use super::series::{Series, above};
use super::tables::figure;
use crate::fields::id_enum;

id_enum! {
    /// The standard that a fuse is made to: the same number does not mean the same.
    pub enum FuseStandard {
        /// UL 248-14: carries its rating, opens at 1.35 times of it within an hour.
        Ul = "ul",
        /// IEC 60127: holds 1.5 times its rating for an hour, opens at 2.1 times of it.
        Iec = "iec",
    }
}

/// A fuse.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fuse {
    /// The standard.
    pub standard: FuseStandard,
    /// What was needed before it was rounded up, A.
    pub needed_amperes: f64,
    /// Its rating, A; nothing where none is that large.
    pub amperes: Option<f64>,
    /// What it carries for an hour at least, A.
    pub holds_amperes: f64,
    /// From where on it has to open sooner or later, A: within an hour, or within half an hour.
    pub opens_amperes: f64,
    /// Whether the inrush stays below what it has to open at; else it has to be a slow one.
    pub rides_inrush: bool,
}

/// The fuse for a steady current in A rms, of a unit that draws `inrush_amperes` when it is cold.
///
/// 1.5 times the steady current, next value up; and for UL 248-14 never more load than 75 % of the rating, which is
/// less than that.
pub fn fuse_for(standard: FuseStandard, steady_amperes: f64, inrush_amperes: f64) -> Fuse {
    let (series, holds, opens, least) = match standard {
        FuseStandard::Ul => {
            (Series::FuseUl, 1.0, figure("ul_opens"), steady_amperes / figure("fuse_load"))
        }
        FuseStandard::Iec => {
            (Series::FuseIec, figure("iec_holds"), figure("iec_opens"), steady_amperes)
        }
    };
    let needed_amperes = least.max(steady_amperes * figure("fuse_factor"));
    let amperes = above(series, needed_amperes);
    let rating = amperes.unwrap_or(0.0);
    Fuse {
        standard,
        needed_amperes,
        amperes,
        holds_amperes: rating * holds,
        opens_amperes: rating * opens,
        rides_inrush: inrush_amperes < rating * opens,
    }
}

//! Where a unit will be plugged in: a question of its own, beside what volts are there.

use serde::Serialize;
use serde_json::{Value, json};
use uuid::Uuid;

use super::error::Problem;
use super::repair_views::StandingView;
use super::repairs::RepairWords;
use super::session::Workbench;
use super::views::InspectionView;
use crate::remedy::Setup;
use crate::supply::{Feed, STEP_DOWN_RATIO, Supply};
use crate::words::{Message, volts};

/// One kind of outlet.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct FeedView {
    /// Which.
    pub id: Feed,
    /// What it is called.
    pub name: String,
    /// How it is told from the others, and what it is not.
    pub tell: String,
    /// Where the unit would stand on it.
    pub standing: StandingView,
    /// It is the one that was chosen.
    pub chosen: bool,
}

/// Where the unit will be plugged in.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct FeedsView {
    /// What is asked.
    pub question: String,
    /// Why it matters.
    pub why: String,
    /// The kinds of outlet.
    pub feeds: Vec<FeedView>,
    /// What goes into an autotransformer, V rms: as given, else what is assumed.
    pub input_volts: f64,
    /// The same in words, and whether it is assumed.
    pub input: String,
}

impl Workbench {
    /// Where a unit may be plugged in, and where it would stand there.
    ///
    /// # Errors
    /// There is no such inspection, or the record cannot be read.
    pub fn feeds(&mut self, inspection: Uuid) -> Result<FeedsView, Problem> {
        let case = self.case(inspection)?;
        let supply = case.findings.supply;
        let feeds = Feed::ALL.iter().map(|feed| {
            let here = if *feed == supply.feed { supply } else { supply.fed_by(*feed) };
            let setup = Setup { supply: here, ..case.setup.clone() };
            let standing = self.repairs.stand(&setup);
            let name = Message::new(format!("feed-{}", feed.id()));
            let tell = Message::new(format!("feed-{}-tell", feed.id()));
            FeedView {
                id: *feed,
                name: self.words.say(&name),
                tell: self.words.say(&tell),
                standing: RepairWords::new(&self.words, &setup).standing(&standing),
                chosen: *feed == supply.feed,
            }
        });
        let feeds = feeds.collect();
        let input_volts = supply.input_volts.unwrap_or(supply.volts * STEP_DOWN_RATIO.value);
        let input = match supply.input_volts {
            Some(_) => Message::new("feed-input").text("volts", volts(input_volts)),
            None => Message::new("feed-input-assumed").text("volts", volts(input_volts)),
        };
        Ok(FeedsView {
            question: self.words.say_id("feed-question"),
            why: self.words.say_id("feed-why"),
            feeds,
            input_volts,
            input: self.words.say(&input),
        })
    }

    /// Says where the unit will be plugged in: a feed, or an object of it and `input_volts`; the volts stay.
    ///
    /// # Errors
    /// The feed is not known, or the input is below the output.
    pub fn set_feed(&mut self, inspection: Uuid, feed: Value) -> Result<InspectionView, Problem> {
        let (_, unit) = self.find(inspection)?;
        let mut supply = unit.supply.unwrap_or_else(|| json!({}));
        let given = match feed {
            Value::Object(given) => given,
            other => [("feed".to_owned(), other)].into_iter().collect(),
        };
        if let Value::Object(supply) = &mut supply {
            supply.remove("input_volts");
            supply.extend(given);
        }
        Supply::read(supply.clone(), "supply")?;
        self.set_supply(inspection, supply)
    }
}

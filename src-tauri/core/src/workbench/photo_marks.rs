//! What is drawn on photos, their order, and pairs of before and after.

use std::collections::BTreeSet;

use serde_json::{Value, json};
use uuid::Uuid;

use super::error::Problem;
use super::session::Workbench;
use super::views::InspectionView;
use crate::fields::FieldError;
use crate::photo::{draw_on, read_marks, read_rgb, write_jpeg};
use crate::store::Change;
use crate::words::Message;

impl Workbench {
    /// Sets what is drawn on a photo; an empty list is nothing.
    ///
    /// # Errors
    /// There is no such photo, or a mark is not as it must be.
    pub fn mark_photo(
        &mut self,
        inspection: Uuid,
        photo: Uuid,
        marks: Value,
    ) -> Result<InspectionView, Problem> {
        self.photo(inspection, photo)?;
        let marks = json!(read_marks(marks)?);
        self.set(inspection, Change::PhotoMarked { photo, marks })
    }

    /// Says that a photo shows after what another of the same inspection shows before; without one, that it stands
    /// by itself.
    ///
    /// # Errors
    /// There is no such photo, or the photo of before is none or the same.
    pub fn pair_photo(
        &mut self,
        inspection: Uuid,
        photo: Uuid,
        before: Option<Uuid>,
    ) -> Result<InspectionView, Problem> {
        self.photo(inspection, photo)?;
        let Some(before) = before else {
            return self.set(inspection, Change::photo_unpaired(photo));
        };
        let known = before != photo && self.photo(inspection, before).is_ok();
        if !known {
            return Err(FieldError::new("before", Message::new("takes-other-photo")).into());
        }
        self.set(inspection, Change::PhotoPaired { photo, before })
    }

    /// Sets the order of the photos: every one of them, once.
    ///
    /// # Errors
    /// A photo is missing from the order, is named twice or is none of this inspection.
    pub fn order_photos(
        &mut self,
        inspection: Uuid,
        order: Vec<Uuid>,
    ) -> Result<InspectionView, Problem> {
        self.find(inspection)?;
        let there = self.store.photos(inspection)?;
        let named: BTreeSet<Uuid> = order.iter().copied().collect();
        let are_all = there.iter().all(|photo| named.contains(&photo.id));
        if !are_all || named.len() != order.len() || order.len() != there.len() {
            return Err(FieldError::new("order", Message::new("takes-each-photo-once")).into());
        }
        if there.iter().map(|photo| photo.id).eq(order.iter().copied()) {
            return self.inspection(inspection);
        }
        self.set(inspection, Change::PhotosOrdered(order))
    }

    /// A photo as a JPEG with its marks drawn in, to be given away.
    ///
    /// # Errors
    /// There is no such photo, or it cannot be read.
    pub fn export_photo(&self, inspection: Uuid, photo: Uuid) -> Result<Vec<u8>, Problem> {
        let photo = self.photo(inspection, photo)?;
        let mut picture = read_rgb(&self.photo_bytes(&photo.sha256, false)?)?;
        // What another version drew may be unknown here: the photo is given without it then.
        let marks = read_marks(photo.marks).unwrap_or_default();
        draw_on(&mut picture, &marks);
        Ok(write_jpeg(&picture)?)
    }
}

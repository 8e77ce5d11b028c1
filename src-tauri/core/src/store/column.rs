//! How ids and JSON stand in a column: both as text, so that a file can be read with any SQLite tool.

use rusqlite::types::{FromSql, FromSqlError, FromSqlResult, ToSql, ToSqlOutput, ValueRef};
use serde_json::Value;
use uuid::Uuid;

/// A UUID in lower case with hyphens, which sorts as text like it sorts as a number.
pub(super) struct Id(pub Uuid);

impl ToSql for Id {
    fn to_sql(&self) -> rusqlite::Result<ToSqlOutput<'_>> {
        Ok(ToSqlOutput::from(self.0.hyphenated().to_string()))
    }
}

impl FromSql for Id {
    fn column_result(value: ValueRef<'_>) -> FromSqlResult<Self> {
        let id = Uuid::try_parse(value.as_str()?);
        id.map(Id).map_err(|e| FromSqlError::Other(Box::new(e)))
    }
}

/// A JSON value.
pub(super) struct Json(pub Value);

impl FromSql for Json {
    fn column_result(value: ValueRef<'_>) -> FromSqlResult<Self> {
        let json = serde_json::from_str(value.as_str()?);
        json.map(Json).map_err(|e| FromSqlError::Other(Box::new(e)))
    }
}

/// The text of an optional JSON value.
pub(super) fn json_text(value: Option<&Value>) -> Option<String> {
    value.map(Value::to_string)
}

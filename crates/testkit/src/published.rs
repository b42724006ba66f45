//! Whether what is printed is what a published schema says.

use jsonschema::Validator;
use serde_json::{Value, json};

/// A schema that is held to its word: what it does not name may not be there.
#[derive(Debug)]
pub struct Published {
    validator: Validator,
}

impl Published {
    /// A schema of draft 2020-12.
    ///
    /// # Errors
    /// The text is no JSON or no schema; says why.
    pub fn new(text: &str) -> Result<Self, String> {
        let schema = serde_json::from_str(text).map_err(|problem| problem.to_string())?;
        Self::of(schema)
    }

    /// The schema of one body in a description of addresses (OpenAPI 3.1): `body` is the schema as it stands at the
    /// address, `components` what it refers to.
    ///
    /// # Errors
    /// It is no schema; says why.
    pub fn body(body: &Value, components: &Value) -> Result<Self, String> {
        Self::of(json!({ "allOf": [body], "components": components }))
    }

    fn of(mut schema: Value) -> Result<Self, String> {
        close(&mut schema);
        let validator = jsonschema::draft202012::new(&schema).map_err(|problem| problem.to_string())?;
        Ok(Self { validator })
    }

    /// Where a value is not what the schema says: none where it is.
    #[must_use]
    pub fn complaints(&self, value: &Value) -> Vec<String> {
        let said = |problem: jsonschema::ValidationError<'_>| {
            let text: String = problem.to_string().chars().take(300).collect();
            format!("{}: {text}", problem.instance_path())
        };
        self.validator.iter_errors(value).take(10).map(said).collect()
    }
}

/// Schemas let pass what they do not name, so that a later version may add to it; a test wants to see it.
fn close(schema: &mut Value) {
    match schema {
        Value::Object(members) => {
            let open = !members.contains_key("additionalProperties") && !members.contains_key("allOf");
            if open && members.get("properties").is_some_and(Value::is_object) {
                members.insert("additionalProperties".to_owned(), Value::Bool(false));
            }
            // What is joined of several schemas is closed as a whole: one of them does not know the others' members.
            if let Some(Value::Array(joined)) = members.get_mut("allOf") {
                if joined.len() > 1 {
                    members.insert("unevaluatedProperties".to_owned(), Value::Bool(false));
                } else {
                    joined.iter_mut().for_each(close);
                }
            }
            members.iter_mut().filter(|(name, _)| *name != "allOf").for_each(|(_, inner)| close(inner));
        }
        Value::Array(members) => members.iter_mut().for_each(close),
        _ => {}
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const SCHEMA: &str =
        r#"{"type": "object", "properties": {"bar": {"type": "string"}}, "required": ["bar"]}"#;

    #[test]
    fn what_is_missing_of_another_kind_or_unnamed_is_told_with_its_place() {
        let schema = Published::new(SCHEMA).unwrap();
        assert!(schema.complaints(&json!({"bar": "12"})).is_empty());
        for wrong in [json!({}), json!({"bar": 12}), json!({"bar": "12", "beat": "1"})] {
            assert_eq!(schema.complaints(&wrong).len(), 1, "{wrong}");
        }
        assert!(schema.complaints(&json!({"bar": 12}))[0].starts_with("/bar: "));
    }

    #[test]
    fn a_body_refers_to_the_components() {
        let components = json!({"schemas": {"Bar": serde_json::from_str::<Value>(SCHEMA).unwrap()}});
        let schema = Published::body(&json!({"$ref": "#/components/schemas/Bar"}), &components).unwrap();
        assert!(schema.complaints(&json!({"bar": "12"})).is_empty());
        assert_eq!(schema.complaints(&json!({"beat": "1", "bar": "12"})).len(), 1);
    }
}

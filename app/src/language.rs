//! The texts of the person's language: English is in the page, the others come as a file when somebody reads them.

use bedwright_job::words::Language;
use bedwright_job::words::language::{is_here, take};

/// Fetches the texts of a language where they aren't here yet; whether they are now.
pub async fn bring(language: Language) -> bool {
    if is_here(language) {
        return true;
    }
    let name = ["bedwright-texts-", language.tag()].concat();
    let Some(address) = bedwright_edge::texts::address_of(&name) else { return false };
    match bedwright_edge::texts::text(&address).await {
        Ok(text) => take(language, text).is_ok(),
        Err(_) => false,
    }
}

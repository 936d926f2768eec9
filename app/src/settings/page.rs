//! Language, units, number marks, paper, light and dark.

use bedwright_job::words::{Label, Language};

use super::letterhead::letterhead;
use crate::desk::Desk;
use crate::language::bring;
use crate::parts::choice::pick;
use crate::parts::live::{El, el};
use crate::parts::signal::Held;
use crate::person::{PaperSize, Person, Theme};

/// The settings.
pub fn settings_page(desk: Desk) -> El {
    let ask =
        move |label: Label, group: &str, names: &[Label], read: fn(&Person) -> usize, take: fn(&mut Person, usize)| {
            let names: Vec<&str> = names.iter().map(|name| desk.label(*name)).collect();
            let now = move || Some(desk.person.with(read));
            pick(desk.label(label), group, &names, now, move |at| desk.prefer(|person| take(person, at)))
        };
    el("main", "page")
        .kid(el("h1", "page-title").text(desk.label(Label::Settings)))
        .kid(language(desk))
        .kid(ask(
            Label::Units,
            "units",
            &[Label::UnitsUs, Label::UnitsMetric],
            |person| usize::from(person.metric),
            |person, at| person.metric = at == 1,
        ))
        .kid(ask(
            Label::DecimalMark,
            "decimal",
            &[Label::DecimalPoint, Label::DecimalComma],
            |person| usize::from(person.decimal == ','),
            |person, at| person.decimal = if at == 1 { ',' } else { '.' },
        ))
        .kid(ask(
            Label::Paper,
            "paper",
            &[Label::PaperLetter, Label::PaperA4],
            |person| usize::from(person.paper == PaperSize::A4),
            |person, at| person.paper = if at == 1 { PaperSize::A4 } else { PaperSize::Letter },
        ))
        .kid(ask(
            Label::Theme,
            "theme",
            &[Label::ThemeSystem, Label::ThemeLight, Label::ThemeDark],
            |person| match person.theme {
                Theme::System => 0,
                Theme::Light => 1,
                Theme::Dark => 2,
            },
            |person, at| {
                person.theme = match at {
                    1 => Theme::Light,
                    2 => Theme::Dark,
                    _ => Theme::System,
                }
            },
        ))
        .kid(letterhead(desk))
}

/// The languages, each by its own name.
fn language(desk: Desk) -> El {
    let absent = Held::new(false);
    let now = move || desk.person.with(|person| Language::ALL.iter().position(|there| *there == person.language));
    let choose = move |at: usize| {
        let Some(language) = Language::ALL.get(at).copied() else { return };
        wasm_bindgen_futures::spawn_local(async move {
            let here = bring(language).await;
            absent.set(!here);
            if here {
                desk.prefer(|person| person.language = language);
            }
        });
    };
    el("div", "")
        .kid(pick(desk.label(Label::LanguageTitle), "language", &Language::ALL.map(Language::own_name), now, choose))
        .kid(
            el("p", "entry-message")
                .set("role", "alert")
                .says(move || if absent.get() { desk.label(Label::LanguageNotHere).to_owned() } else { String::new() }),
        )
}

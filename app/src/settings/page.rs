//! Units, number marks, paper, light and dark.

use bedwright_job::words::Label;
use leptos::prelude::*;

use crate::desk::Desk;
use crate::parts::choice::Pick;
use crate::person::{PaperSize, Theme};

/// The settings.
#[component]
pub fn SettingsPage() -> impl IntoView {
    let desk = Desk::of();
    let named = |pairs: &[(bool, Label)]| {
        pairs.iter().map(|(value, label)| (*value, desk.label(*label).to_owned())).collect::<Vec<_>>()
    };
    let papers = [(PaperSize::Letter, Label::PaperLetter), (PaperSize::A4, Label::PaperA4)]
        .map(|(size, label)| (size, desk.label(label).to_owned()))
        .to_vec();
    let themes =
        [(Theme::System, Label::ThemeSystem), (Theme::Light, Label::ThemeLight), (Theme::Dark, Label::ThemeDark)]
            .map(|(theme, label)| (theme, desk.label(label).to_owned()))
            .to_vec();
    let metric = Memo::new(move |_| desk.person.with(|person| person.metric));
    let comma = Memo::new(move |_| desk.person.with(|person| person.decimal == ','));
    let paper = Memo::new(move |_| desk.person.with(|person| person.paper));
    let theme = Memo::new(move |_| desk.person.with(|person| person.theme));
    view! {
        <main class="page settings">
            <h1 class="page-title">{move || desk.label(Label::Settings)}</h1>
            <Pick label=desk.label(Label::Units) group="units" options=named(&[(false, Label::UnitsUs), (true, Label::UnitsMetric)]) value=metric
                on_choose=Callback::new(move |metric| desk.prefer(|person| person.metric = metric)) />
            <Pick label=desk.label(Label::DecimalMark) group="decimal" options=named(&[(false, Label::DecimalPoint), (true, Label::DecimalComma)]) value=comma
                on_choose=Callback::new(move |comma| desk.prefer(|person| person.decimal = if comma { ',' } else { '.' })) />
            <Pick label=desk.label(Label::Paper) group="paper" options=papers value=paper
                on_choose=Callback::new(move |paper| desk.prefer(|person| person.paper = paper)) />
            <Pick label=desk.label(Label::Theme) group="theme" options=themes value=theme
                on_choose=Callback::new(move |theme| desk.prefer(|person| person.theme = theme)) />
        </main>
    }
}

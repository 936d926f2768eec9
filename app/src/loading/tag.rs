//! One vessel's sheet: what every part of the screen works with.

use std::sync::Arc;

use bedwright_calc::quantity::VolumeRate;
use bedwright_job::Edit;
use bedwright_job::answers::VesselAnswers;
use bedwright_job::id::Id;
use bedwright_job::loading::{LoadAnswers, StepRow, load_answers};
use bedwright_job::sections::loading::{Stamp, TagChange, WorkSheet};
use bedwright_job::words::LoadingLabel;
use leptos::prelude::*;

use crate::desk::{Answers, Desk, Water, with_water};
use crate::parts::live::El;
use crate::parts::signal::{Kept, Worked};
use crate::parts::typing::{text_line, typing};

/// A sheet of a vessel. A handle.
#[derive(Clone, Copy)]
pub struct TagSheet {
    /// The desk.
    pub desk: Desk,
    /// Which sheet.
    pub sheet: WorkSheet,
    /// The vessel.
    pub vessel: Kept<Id>,
    /// Its tag.
    pub tag: Kept<String>,
    answers: Answers,
    water: Water,
    of: Worked<Option<Arc<LoadAnswers>>>,
}

impl TagSheet {
    /// That of a vessel of the open job.
    pub fn new(desk: Desk, sheet: WorkSheet, vessel: &Id, tag: &str) -> TagSheet {
        let answers = desk.answers(vessel);
        let name = tag.to_owned();
        let of = Worked::new(move || {
            let answers = answers.get()?;
            Some(Arc::new(load_answers(&*desk.open()?, &name, &answers)))
        });
        TagSheet {
            desk,
            sheet,
            vessel: Kept::new(vessel.clone()),
            tag: Kept::new(tag.to_owned()),
            answers,
            water: desk.water(vessel),
            of,
        }
    }

    /// A fixed text.
    pub fn say(self, label: LoadingLabel) -> &'static str {
        self.desk.label(label)
    }

    /// Both answers, followed.
    #[inline(never)]
    pub fn both(self) -> Option<(Arc<LoadAnswers>, Arc<VesselAnswers>)> {
        self.of.get().zip(self.answers.get())
    }

    /// Reads both answers; the usual value while the vessel isn't there.
    pub fn read<T: Default>(self, read: impl FnOnce(&LoadAnswers, &VesselAnswers) -> T) -> T {
        self.both().map(|(of, answers)| read(&of, &answers)).unwrap_or_default()
    }

    /// The flow the backwash is set to, where known.
    pub fn wash(self) -> Option<VolumeRate> {
        with_water(self.water, |water| {
            let washed = water?.backwash.as_ref()?;
            Some(washed.settings.get(washed.chosen?)?.flow.value)
        })
    }

    /// The steps of this sheet.
    pub fn steps(self) -> Vec<StepRow> {
        self.read(|of, _| match self.sheet {
            WorkSheet::Removal => of.removal.clone(),
            WorkSheet::Loading => of.loading.clone(),
        })
    }

    /// The step of an id as it stands now.
    pub fn step(self, id: &str) -> Option<StepRow> {
        self.steps().into_iter().find(|step| step.id == id)
    }

    /// Whether it was signed.
    pub fn is_signed(self) -> bool {
        self.read(|of, _| of.signed.is_some())
    }

    /// Makes a change.
    pub fn change(self, change: TagChange) {
        self.desk.edit(Edit::Load { vessel: self.vessel.get(), tag: self.tag.get(), change });
    }

    /// Now, by the person at this device.
    pub fn stamp(self) -> Stamp {
        let by = self.desk.person.with_untracked(|person| person.name.trim().to_owned());
        Stamp { at: bedwright_edge::clock::now_local(), by }
    }

    /// The name of the person at this device.
    pub fn person(self) -> String {
        self.desk.person.with(|person| person.name.trim().to_owned())
    }

    /// A text that is typed, with its name beside it.
    pub fn text(
        self,
        label: LoadingLabel,
        text: impl Fn(&LoadAnswers) -> String + 'static,
        change: impl Fn(String) -> TagChange + 'static,
    ) -> El {
        let field = typing(
            self.desk.turned,
            move || self.read(|of, _| text(of)),
            move |text| self.change(change(text)),
            move || self.desk.pause(),
        );
        text_line(self.say(label), field)
    }

    /// Brings the next step into the middle of the screen, once what changed is drawn.
    pub fn show_next(self) {
        bedwright_edge::timer::Timer::after(60, || {
            let next =
                window().document().and_then(|document| document.query_selector(".load-step-next").ok().flatten());
            if let Some(next) = next {
                bedwright_edge::display::bring_to_middle(&next);
            }
        })
        .forget();
    }
}

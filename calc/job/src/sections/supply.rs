//! How the job's material is bought, cut, lifted and stacked, and what the shelf gave instead of what was asked.

use bedwright_calc::supply::lifting::Grip;
use litemap::LiteMap;

use super::Unknown;
use crate::entry::Entry;
use crate::field::SupplyField;

/// What was said of supply.
#[derive(Clone, Debug, PartialEq)]
pub struct Supply {
    /// How materials are bought, by the material's id.
    pub materials: LiteMap<String, MaterialSupply>,
    /// What was typed: stock length, kerf, pallets, the lift.
    pub entries: LiteMap<SupplyField, Entry>,
    /// How well hands hold the packs.
    pub grip: Grip,
    /// What the shelf gave, by the item's key.
    pub lines: LiteMap<String, TakenLine>,
    /// What this version doesn't know.
    pub unknown: Unknown,
}

impl Default for Supply {
    fn default() -> Supply {
        Supply {
            materials: LiteMap::new(),
            entries: LiteMap::new(),
            grip: Grip::Poor,
            lines: LiteMap::new(),
            unknown: Unknown::new(),
        }
    }
}

/// How a material is bought.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct MaterialSupply {
    /// Whether every vessel gets whole packs of its own.
    pub per_vessel: bool,
    /// What was said of its packs, by the pack's id.
    pub packs: LiteMap<String, PackSupply>,
    /// What is left in opened packs.
    pub opened: Option<Entry>,
    /// What this version doesn't know.
    pub unknown: Unknown,
}

/// What was said of a pack.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct PackSupply {
    /// Whether it may be taken; none while nobody said.
    pub offered: Option<bool>,
    /// How many are taken whatever else is best.
    pub locked: Option<u32>,
    /// What this version doesn't know.
    pub unknown: Unknown,
}

/// What the shelf gave for a line.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct TakenLine {
    /// How many were asked for when it was ticked.
    pub asked: Option<u32>,
    /// What was taken instead.
    pub instead: String,
    /// The date on it.
    pub date: String,
    /// What this version doesn't know.
    pub unknown: Unknown,
}

/// A text of what the shelf gave.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum TakenField {
    /// What was taken instead.
    Instead,
    /// The date on it.
    Date,
}

impl TakenLine {
    /// One of its texts.
    #[must_use]
    pub fn text(&self, field: TakenField) -> &str {
        match field {
            TakenField::Instead => &self.instead,
            TakenField::Date => &self.date,
        }
    }
}

/// One change of what was said of supply.
#[derive(Clone, Debug, PartialEq)]
pub enum SupplyEdit {
    /// Whether every vessel gets whole packs of its own.
    PerVessel {
        /// The material's id.
        material: String,
        /// Whether it does now.
        yes: bool,
    },
    /// Whether a pack may be taken.
    Offer {
        /// The material's id.
        material: String,
        /// The pack's id.
        pack: String,
        /// Whether it may now; none for what is usual.
        offered: Option<bool>,
    },
    /// How many of a pack are taken whatever else is best.
    Lock {
        /// The material's id.
        material: String,
        /// The pack's id.
        pack: String,
        /// How many now; none where that is free.
        count: Option<u32>,
    },
    /// What is left in opened packs.
    Opened {
        /// The material's id.
        material: String,
        /// How much now.
        entry: Option<Entry>,
    },
    /// A typed value.
    Entry {
        /// Which.
        field: SupplyField,
        /// What it is now.
        entry: Option<Entry>,
    },
    /// How well hands hold the packs.
    Grip(Grip),
    /// How many were asked for when a line was ticked.
    Asked {
        /// The item's key.
        key: String,
        /// How many; none when the tick was taken off.
        asked: Option<u32>,
    },
    /// A text of what the shelf gave.
    Line {
        /// The item's key.
        key: String,
        /// Which text.
        field: TakenField,
        /// What it says now.
        text: String,
    },
}

impl SupplyEdit {
    /// Whether two changes are of the same typed field.
    pub(crate) fn same_place(&self, other: &SupplyEdit) -> bool {
        match (self, other) {
            (SupplyEdit::Opened { material: a, .. }, SupplyEdit::Opened { material: b, .. }) => a == b,
            (SupplyEdit::Entry { field: a, .. }, SupplyEdit::Entry { field: b, .. }) => a == b,
            (SupplyEdit::Line { key: k, field: a, .. }, SupplyEdit::Line { key: l, field: b, .. }) => k == l && a == b,
            _ => false,
        }
    }
}

impl Supply {
    /// What was said of a material.
    #[must_use]
    pub fn material(&self, id: &str) -> MaterialSupply {
        self.materials.get(id).cloned().unwrap_or_default()
    }

    /// Makes a change and says what takes it back. What says nothing afterwards isn't kept.
    pub(crate) fn change(&mut self, edit: SupplyEdit) -> SupplyEdit {
        let before = match edit {
            SupplyEdit::PerVessel { material, yes } => {
                let yes = std::mem::replace(&mut self.of(&material).per_vessel, yes);
                SupplyEdit::PerVessel { material, yes }
            }
            SupplyEdit::Offer { material, pack, offered } => {
                let offered = std::mem::replace(&mut self.of(&material).of(&pack).offered, offered);
                SupplyEdit::Offer { material, pack, offered }
            }
            SupplyEdit::Lock { material, pack, count } => {
                let count = std::mem::replace(&mut self.of(&material).of(&pack).locked, count);
                SupplyEdit::Lock { material, pack, count }
            }
            SupplyEdit::Opened { material, entry } => {
                let entry = std::mem::replace(&mut self.of(&material).opened, entry);
                SupplyEdit::Opened { material, entry }
            }
            SupplyEdit::Entry { field, entry } => {
                let entry = match entry {
                    Some(entry) => self.entries.insert(field, entry),
                    None => self.entries.remove(&field),
                };
                SupplyEdit::Entry { field, entry }
            }
            SupplyEdit::Grip(grip) => SupplyEdit::Grip(std::mem::replace(&mut self.grip, grip)),
            SupplyEdit::Asked { key, asked } => {
                let asked = std::mem::replace(&mut self.line(&key).asked, asked);
                SupplyEdit::Asked { key, asked }
            }
            SupplyEdit::Line { key, field, text } => {
                let line = self.line(&key);
                let place = match field {
                    TakenField::Instead => &mut line.instead,
                    TakenField::Date => &mut line.date,
                };
                let text = std::mem::replace(place, text);
                SupplyEdit::Line { key, field, text }
            }
        };
        self.tidy();
        before
    }

    fn of(&mut self, material: &str) -> &mut MaterialSupply {
        self.materials.entry(material.to_owned()).or_default()
    }

    fn line(&mut self, key: &str) -> &mut TakenLine {
        self.lines.entry(key.to_owned()).or_default()
    }

    fn tidy(&mut self) {
        for (_, material) in &mut self.materials {
            material.packs.retain(|_, pack| *pack != PackSupply::default());
        }
        self.materials.retain(|_, material| *material != MaterialSupply::default());
        self.lines.retain(|_, line| *line != TakenLine::default());
    }
}

impl MaterialSupply {
    fn of(&mut self, pack: &str) -> &mut PackSupply {
        self.packs.entry(pack.to_owned()).or_default()
    }
}

//! One material: what it may come in, what it costs, what was decided and why.

use std::sync::Arc;

use bedwright_calc::material::Pack;
use bedwright_calc::supply::buying::Bought;
use bedwright_calc::supply::{Item, Money};
use bedwright_job::answers::JobBill;
use bedwright_job::answers::supply::cost_of;
use bedwright_job::entry::{Dimension, Unit};
use bedwright_job::prices::{AmountFault, PriceKind, PriceRow, amount, amount_text, price_key};
use bedwright_job::sections::supply::SupplyEdit;
use bedwright_job::words::SupplyLabel;
use bedwright_job::{Edit, Job};

use crate::desk::{Desk, with_bill};
use crate::parts::live::{El, el, ticked};
use crate::parts::signal::{Held, Kept, Worked};
use crate::parts::typing::{judged, typing};
use crate::vessel::NumberLine;

/// Less than a tenth of a litre isn't spoken of: it is what a bag holds more or less.
const NOTICED_M3: f64 = 1e-4;

/// A material of the bill.
#[derive(Clone, Copy)]
pub(super) struct Material {
    pub(super) desk: Desk,
    pub(super) bill: Worked<Arc<JobBill>>,
    pub(super) id: Kept<String>,
}

impl Material {
    fn read<T: Default>(self, read: impl FnOnce(&Bought) -> T) -> T {
        with_bill(self.bill, |bill| {
            self.id.with(|id| bill.bought.iter().find(|bought| bought.material == *id).map(read).unwrap_or_default())
        })
    }

    fn supply(self, edit: SupplyEdit) {
        self.desk.edit(Edit::Supply(edit));
    }

    /// The material on the page.
    pub(super) fn show(self) -> El {
        let desk = self.desk;
        let say = move |label: SupplyLabel| desk.label(label);
        let name = self.id.with(|id| desk.manner().material(id));
        // Its packs in the order of the catalogue, then those of the job's own.
        let packs = move || {
            let mut ids: Vec<String> =
                self.id.with(|id| Pack::of_material(id).into_iter().map(|pack| pack.id.to_string()).collect());
            for own in
                self.read(|bought| bought.offers.iter().map(|offer| offer.pack.id.to_string()).collect::<Vec<_>>())
            {
                if !ids.contains(&own) {
                    ids.push(own);
                }
            }
            ids
        };
        let heads = [
            SupplyLabel::Offered,
            SupplyLabel::Pack,
            SupplyLabel::Cost,
            SupplyLabel::Alone,
            SupplyLabel::LockAt,
            SupplyLabel::Taken,
        ];
        let heads = heads.map(|label| el("th", "").set("scope", "col").text(say(label))).to_vec();
        let table = el("table", "packs-table")
            .set("aria-label", &name)
            .kid(el("thead", "").kid(el("tr", "").kids(heads)))
            .kid(el("tbody", "").each(packs, move |pack| self.row(pack)));
        let per_vessel = el("label", "packs-each")
            .kid(
                el("input", "")
                    .set("type", "checkbox")
                    .holds("checked", move || self.read(|bought| bought.per_vessel))
                    .on("change", move |event| {
                        self.supply(SupplyEdit::PerVessel { material: self.id.get(), yes: ticked(&event) });
                    }),
            )
            .kid(el("span", "").text(say(SupplyLabel::PerVessel)));
        el("section", "packs-material")
            .kid(el("h2", "rule").text(&name))
            .kid(el("div", "packs-scroll").kid(table))
            .kid(el("p", "packs-decided").set("role", "status").says(move || self.decided()))
            .kid(el("p", "packs-why").says(move || self.why()))
            .kid(el("div", "packs-more").kid(self.opened()).kid(per_vessel))
    }

    /// What is taken, in a line: need, packs, cost, what is left over; and what every vessel on its own would take.
    fn decided(self) -> String {
        let desk = self.desk;
        let (manner, say) = (desk.manner(), move |label: SupplyLabel| desk.label(label));
        let money = |money: Money| cost_text(money, manner.decimal);
        self.read(|bought| {
            let packing = match &bought.pooled {
                Ok(packing) => packing,
                Err(problem) => return manner.problem(problem),
            };
            let counts = bought.counts().unwrap_or_default();
            let taken: Vec<String> = bought
                .offers
                .iter()
                .zip(&counts)
                .filter(|(_, count)| **count > 0)
                .map(|(offer, count)| format!("{count} × {}", manner.pack(&offer.pack)))
                .collect();
            let mut parts = vec![manner.named(&manner.volume(bought.need.value), &taken.join(" + "))];
            let cost = if bought.per_vessel { bought.cost_each() } else { packing.cost };
            parts.extend(cost.map(money));
            if !bought.per_vessel {
                if packing.left_over.volume().value > NOTICED_M3 {
                    parts.push(format!("{} {}", manner.volume(packing.left_over.volume()), say(SupplyLabel::LeftOver)));
                }
                if packing.short_by.volume().value > NOTICED_M3 {
                    let short = manner.volume(packing.short_by.volume());
                    parts.push(format!("{short} {}, {}", say(SupplyLabel::Short), say(SupplyLabel::ShortBed)));
                }
                if packing.from_opened.volume().value > 0.0 {
                    let opened = manner.volume(packing.from_opened.volume());
                    parts.push(format!("{opened} {}", say(SupplyLabel::FromOpened)));
                }
            }
            let (pooled, each) = (packing.packs(), bought.packs_each());
            if let Some(each) = each.filter(|each| *each != pooled) {
                let fewer = each.saturating_sub(pooled);
                let each_cost = bought.cost_each().map(|cost| [" (", &money(cost), ")"].concat()).unwrap_or_default();
                let difference =
                    if fewer > 0 { format!(": {fewer} {}", say(SupplyLabel::Fewer)) } else { String::new() };
                parts.push(format!("{} {each}{each_cost}{difference}", say(SupplyLabel::EachOwn)));
            }
            parts.join(" · ")
        })
    }

    fn why(self) -> String {
        let manner = self.desk.manner();
        self.read(|bought| bought.pooled.as_ref().map(|packing| manner.chosen(packing.chosen)).unwrap_or_default())
    }

    /// One pack: whether it is offered, what it costs, what it would take alone, what is set, what is taken.
    fn row(self, pack: &str) -> El {
        let desk = self.desk;
        let manner = desk.manner();
        let pack = Kept::new(pack.to_owned());
        let catalogue = pack.with(|id| Pack::of(id));
        let name = catalogue.as_ref().map_or_else(|| pack.get(), |pack| manner.pack(pack));
        let about = move |label: SupplyLabel, name: &str| {
            format!("{}: {}, {name}", desk.label(label), self.id.with(|id| manner.material(id)))
        };
        let at = move |bought: &Bought| pack.with(|id| bought.offers.iter().position(|offer| offer.pack.id == *id));
        let offered = move || self.read(|bought| at(bought).is_some());
        let offer = el("input", "")
            .set("type", "checkbox")
            .set("aria-label", &about(SupplyLabel::Offered, &name))
            .holds("checked", offered)
            .on("change", move |event| {
                let (material, pack) = (self.id.get(), pack.get());
                self.supply(SupplyEdit::Offer { material, pack, offered: Some(ticked(&event)) });
            });
        let alone = move || {
            self.read(|bought| {
                let packing = bought.pooled.as_ref().ok()?;
                let alone = packing.alone.get(at(bought)?)?.as_ref()?;
                let cost = alone.cost.map(|cost| cost_text(cost, manner.decimal));
                Some([Some(alone.count.to_string()), cost].into_iter().flatten().collect::<Vec<_>>().join(" · "))
            })
            .unwrap_or_default()
        };
        let taken =
            move || self.read(|bought| Some(bought.counts()?.get(at(bought)?)?.to_string())).unwrap_or_default();
        let cost = self.cost(pack, &about(SupplyLabel::Cost, &name));
        let lock_wrong = Held::new(false);
        let lock = typing(
            desk.turned,
            move || {
                let locked = desk.of_job(|job| {
                    let said = job.supply.body.material(&self.id.get());
                    pack.with(|id| said.packs.get(id.as_str()).and_then(|said| said.locked))
                });
                locked.map(|count| count.to_string()).unwrap_or_default()
            },
            move |text| {
                let text = text.trim();
                let count = text.parse::<u32>().ok();
                let read = count.is_some() || text.is_empty();
                lock_wrong.set(!read);
                if read {
                    self.supply(SupplyEdit::Lock { material: self.id.get(), pack: pack.get(), count });
                }
            },
            move || desk.pause(),
        )
        .set("inputmode", "numeric")
        .set("aria-label", &about(SupplyLabel::LockAt, &name));
        let lock =
            judged(
                lock,
                move || {
                    if lock_wrong.get() { desk.label(SupplyLabel::LockWrong).to_owned() } else { String::new() }
                },
            );
        let cell = |class: &str, label: SupplyLabel| el("td", class).set("data-name", desk.label(label));
        el("tr", "")
            .marks("packs-off", move || !offered())
            .kid(el("td", "packs-tick").kid(el("label", "packs-box").kid(offer)))
            .kid(el("th", "").set("scope", "row").text(&name))
            .kid(cell("", SupplyLabel::Cost).kid(cost))
            .kid(cell("figure", SupplyLabel::Alone).kid(el("span", "").says(alone)))
            .kid(cell("", SupplyLabel::LockAt).kid(el("div", "packs-cost").kids(lock.to_vec())))
            .kid(el("td", "figure packs-taken").says(taken))
    }

    /// What one costs, typed beside it and carried in the job.
    fn cost(self, pack: Kept<String>, name: &str) -> El {
        let desk = self.desk;
        let manner = desk.manner();
        let wrong = Held::new(None::<AmountFault>);
        let item = move || Item::Pack { material: self.id.get().into(), pack: pack.get().into() };
        let known = move |job: &Job| cost_of(job, &item()).map(|cost| amount_text(cost, manner.decimal));
        let put = move |text: String| {
            let read = amount(&text, manner.decimal);
            wrong.set(read.err());
            let Ok(cost) = read else { return };
            let key = price_key(&item());
            let before = desk.open_now().and_then(|job| job.prices.body.row(&key).cloned());
            let mut row = before.map_or_else(|| PriceRow::new(&key, PriceKind::Pack), |row| (*row).clone());
            row.cost = cost;
            desk.edit(Edit::Price { key, row: Some(Arc::new(row)) });
        };
        let input =
            typing(desk.turned, move || desk.of_job(|job| known(job).unwrap_or_default()), put, move || desk.pause())
                .set("inputmode", "decimal")
                .set("aria-label", name)
                .set("placeholder", desk.label(SupplyLabel::NoCost));
        let told = move || wrong.get().map(|fault| manner.amount_fault(fault)).unwrap_or_default();
        el("div", "packs-cost").kids(judged(input, told).to_vec())
    }

    /// What is left in opened packs.
    fn opened(self) -> El {
        let desk = self.desk;
        let entry = move || desk.of_job(|job| job.supply.body.material(&self.id.get()).opened);
        let usual = if desk.manner().metric { Unit::Litre } else { Unit::CubicFoot };
        NumberLine {
            id: format!("opened-{}", self.id.get()),
            label: desk.label(SupplyLabel::Opened),
            hint: desk.label(SupplyLabel::OpenedHint),
            units: Unit::of(Dimension::Volume),
            usual,
            entry: std::rc::Rc::new(entry),
            misread: std::rc::Rc::new(move || entry().and_then(|entry| entry.understood().err())),
            problem: std::rc::Rc::new(|| None),
            put: std::rc::Rc::new(move |entry| self.supply(SupplyEdit::Opened { material: self.id.get(), entry })),
            assumed: std::rc::Rc::new(|| None),
            standing: None,
        }
        .show(desk)
    }
}

/// An amount with two places at least.
fn cost_text(money: Money, decimal: char) -> String {
    let mut text = amount_text(money, decimal);
    let places = text.rsplit_once(decimal).map(|(_, places)| places.len());
    if places.is_none() {
        text.push(decimal);
    }
    for _ in places.unwrap_or(0)..2 {
        text.push('0');
    }
    text
}

//! Packs at least cost and pieces from the least number of stock lengths, against `packs.csv` and `cutting.csv`.

use bedwright_calc::quantity::{Fault, Length, Term, metres};
use bedwright_calc::supply::Money;
use bedwright_calc::supply::cutting::{Stock, cut_plan};
use bedwright_calc::supply::packs::{Chosen, Content, Need, Offer, cheapest_packs};

use crate::Checked;
use crate::table::{Row, rows};

const PACKS: &str = include_str!("../reference/packs.csv");
const CUTTING: &str = include_str!("../reference/cutting.csv");

fn each<T>(row: &Row, column: &str, read: impl Fn(&str) -> T) -> Vec<Option<T>> {
    row.text(column).split(' ').map(|cell| (cell != "-").then(|| read(cell))).collect()
}

fn whole(text: &str) -> u64 {
    text.parse().unwrap_or_else(|_| panic!("“{text}” is no whole number"))
}

/// Cost, rest, shortfall and number of packs of every case, each equal to the last digit; where locked packs can't
/// cover the need, a problem.
#[must_use]
pub fn packings() -> Checked {
    let mut checked = Checked::default();
    for row in rows(PACKS) {
        let id = row.text("id");
        let contents = each(&row, "contents", whole);
        let prices = each(&row, "prices", |text| Money::new(text.parse().unwrap_or_else(|_| panic!("{text}"))));
        let locked = each(&row, "locked", |text| u32::try_from(whole(text)).unwrap());
        let offers: Vec<Offer> = contents
            .into_iter()
            .zip(prices)
            .zip(locked)
            .map(|((content, price), locked)| Offer { content: Content::new(content.unwrap()), price, locked })
            .collect();
        let need = Need {
            content: Content::new(whole(row.text("need"))),
            opened: Content::new(whole(row.text("opened"))),
            minimum: row.text("minimum") == "yes",
        };
        match cheapest_packs(&need, &offers) {
            Ok(packing) => {
                // Where what is left over decides, cost doesn't: the table has none.
                let compared = !matches!(packing.chosen, Chosen::LeastLeftOver { .. });
                let cost = packing.cost.filter(|_| compared);
                let cost = cost.map(|cost| cost.value().normalize().to_string()).unwrap_or_default();
                let found = (cost.as_str(), packing.left_over, packing.short_by, packing.packs());
                let content = |column: &str| Content::new(whole(row.text(column)));
                let wanted = if row.text("packs").is_empty() {
                    None
                } else {
                    let packs = u32::try_from(whole(row.text("packs"))).unwrap();
                    Some((row.text("cost"), content("left_over"), content("short_by"), packs))
                };
                checked.expect(id, Some(found) == wanted, (&packing, wanted));
            }
            Err(problem) => {
                let refused = matches!((problem.term, problem.fault), (Term::Packs, Fault::DoesNotFit { .. }));
                checked.expect(id, refused && row.text("packs").is_empty(), problem);
            }
        }
    }
    checked
}

/// The number of stock lengths of every case, which is proven to be the least.
#[must_use]
pub fn cuts() -> Checked {
    let mut checked = Checked::default();
    let micrometres = |text: &str| metres(whole(text) as f64 / 1e6);
    for row in rows(CUTTING) {
        let id = row.text("id");
        let stock = Stock { length: micrometres(row.text("stock_um")), kerf: micrometres(row.text("kerf_um")) };
        let pieces: Vec<Length> = row.text("pieces_um").split(' ').map(micrometres).collect();
        match cut_plan(&stock, &pieces) {
            Ok(plan) => {
                let wanted = whole(row.text("lengths"));
                checked.expect(id, plan.is_least() && plan.lengths.len() as u64 == wanted, (&plan, wanted));
            }
            Err(problem) => checked.refuse(id, problem),
        }
    }
    checked
}

/// Fifty vessels of six materials, each in four sizes: every material pooled, and for every vessel on its own. Invented;
/// `packs_speed.py` says the same. Gives the cents of all that is pooled, and how many packs every vessel takes alone.
///
/// # Panics
/// When one has no answer.
#[must_use]
pub fn fifty_vessels() -> (u64, u64) {
    let (mut cents, mut alone) = (0, 0);
    for material in 0..6_u64 {
        let size = |content: u64, cents: u64| Offer {
            content: Content::new(content),
            price: format!("{}.{:02}", cents / 100, cents % 100).parse().ok().map(Money::new),
            locked: None,
        };
        let by = 10 * material;
        let offers = [size(500, 1_600 + by), size(1_000, 3_050 + by), size(1_800, 5_200 + 3 * by), size(2_500, 7_450)];
        let needs = (0..50_u64).map(|vessel| 1_000 * (material + 2) + 37 * vessel);
        let of = |content: u64| Need { content: Content::new(content), opened: Content::new(0), minimum: true };
        let pooled = cheapest_packs(&of(needs.clone().sum()), &offers).expect("an answer");
        let cost = pooled.cost.expect("every price is known").value().to_string().replace('.', "");
        cents += whole(&cost);
        for need in needs {
            alone += u64::from(cheapest_packs(&of(need), &offers).expect("an answer").packs());
        }
    }
    (cents, alone)
}

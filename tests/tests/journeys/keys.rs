//! The page by keyboard alone: Tab to a control, type or choose, Enter. Nothing is clicked.

use serde_json::json;
use thirtyfour::prelude::*;

use crate::page::{Page, Role};

/// More controls than any screen has.
const MOST_TABS: usize = 600;

/// How many presses of Tab lie between the focus and a control, as far as the page's order says.
const AHEAD: &str = "
    const focusable = [...document.querySelectorAll('a[href],button,input,select,textarea,summary,[tabindex]')].filter((each) =>
        each.tabIndex >= 0 && !each.disabled && each.checkVisibility()
        && !(each.type === 'radio' && !each.checked && document.querySelector(`input[name='${each.name}']:checked`)));
    const to = focusable.indexOf(arguments[0]), from = focusable.indexOf(document.activeElement);
    return to > from ? to - from : 1;";

#[allow(dead_code)] // Each journey uses some.
impl Page {
    /// Moves the focus on with the Tab key until it stands on a control that was found.
    pub async fn tab_to(&self, control: &WebElement, what: &str) {
        let target = || vec![control.to_json().unwrap()];
        let mut pressed = 0;
        while pressed < MOST_TABS {
            let there =
                self.session().execute("return document.activeElement === arguments[0];", target()).await.unwrap();
            if there.json() == &json!(true) {
                return;
            }
            let ahead = self.session().execute(AHEAD, target()).await.unwrap();
            let ahead = usize::try_from(ahead.json().as_u64().unwrap()).unwrap();
            let focus = self.session().active_element().await.unwrap();
            focus.send_keys(String::from(Key::Tab.value()).repeat(ahead)).await.unwrap();
            pressed += ahead;
        }
        panic!("{what} isn't reached by the Tab key");
    }

    /// Moves the focus to the control of this role and name.
    pub async fn reach(&self, role: Role, name: &str) -> WebElement {
        let control = self.find(role, name).await;
        self.tab_to(&control, name).await;
        control
    }

    /// Types into a field in place of what it held, and leaves it.
    pub async fn type_into(&self, name: &str, text: &str) {
        self.type_into_at(name, 0, text).await;
    }

    /// Types into the field at a place among several of this name.
    pub async fn type_into_at(&self, name: &str, place: usize, text: &str) {
        let field = self.find_at(Role::Textbox, name, place).await;
        self.tab_to(&field, name).await;
        field.send_keys(Key::Control + "a").await.unwrap();
        field.send_keys(Key::Delete + "").await.unwrap();
        field.send_keys(text.to_owned() + Key::Tab).await.unwrap();
    }

    /// Chooses an option of a list with the arrow keys.
    pub async fn choose(&self, name: &str, option: &str) {
        self.choose_at(name, 0, option).await;
    }

    /// Chooses an option of the list at a place among several of this name.
    pub async fn choose_at(&self, name: &str, place: usize, option: &str) {
        let list = self.find_at(Role::Combobox, name, place).await;
        self.tab_to(&list, name).await;
        let far = "const list = arguments[0]; \
                   const to = [...list.options].findIndex((each) => each.text === arguments[1]); \
                   return to < 0 ? null : to - list.selectedIndex;";
        let far = self.session().execute(far, vec![list.to_json().unwrap(), json!(option)]).await.unwrap();
        let far = far.json().as_i64().unwrap_or_else(|| panic!("“{name}” has no “{option}”"));
        let key = if far < 0 { Key::Up } else { Key::Down };
        for _ in 0..far.abs() {
            list.send_keys(key.clone() + "").await.unwrap();
        }
    }

    /// Moves through a group of choices with the arrow keys until this one is taken.
    pub async fn take(&self, name: &str) {
        let wanted = self.find(Role::Radio, name).await;
        let group = "const all = [...document.getElementsByName(arguments[0].name)]; \
                     const now = Math.max(all.findIndex((each) => each.checked), 0); \
                     return [all[now], all.indexOf(arguments[0]) - now];";
        let group = self.session().execute(group, vec![wanted.to_json().unwrap()]).await.unwrap();
        let far = group.json()[1].as_i64().unwrap();
        let elements = self
            .session()
            .execute(
                "const all = [...document.getElementsByName(arguments[0].name)]; return all.find((each) => each.checked) || all[0];",
                vec![wanted.to_json().unwrap()],
            )
            .await
            .unwrap();
        let now = elements.element().unwrap();
        self.tab_to(&now, name).await;
        let key = if far < 0 { Key::Left } else { Key::Right };
        for _ in 0..far.abs() {
            self.session().active_element().await.unwrap().send_keys(key.clone() + "").await.unwrap();
        }
    }

    /// Presses a button, or follows a link, with the Enter key.
    pub async fn enter_on(&self, role: Role, name: &str) {
        let control = self.reach(role, name).await;
        control.send_keys(Key::Enter + "").await.unwrap();
    }

    /// Opens every fold of a name with the Enter key; those that are open stay.
    pub async fn unfold(&self, name: &str) {
        let folds = self.session().find_all(By::Css("summary")).await.unwrap();
        for fold in folds {
            let said = fold.text().await.unwrap_or_default();
            let open = "return arguments[0].parentElement.open || !arguments[0].checkVisibility();";
            let open = self.session().execute(open, vec![fold.to_json().unwrap()]).await.unwrap();
            if said.to_lowercase().contains(&name.to_lowercase()) && open.json() == &json!(false) {
                self.tab_to(&fold, name).await;
                fold.send_keys(Key::Enter + "").await.unwrap();
            }
        }
    }
}

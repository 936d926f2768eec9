//! The smallest page that leptos makes which still does something: a field, and twice its number. It is built by the page's
//! profile and put into the page's frame, so that nothing but the page itself makes the difference.

use leptos::prelude::*;

fn main() {
    leptos::mount::mount_to_body(|| {
        let (text, put) = signal(String::new());
        let twice = move || text.get().parse::<f64>().map_or(String::new(), |number| (number * 2.0).to_string());
        view! {
            <main>
                <input type="text" on:input=move |event| put.set(event_target_value(&event)) />
                <output>{twice}</output>
            </main>
        }
    });
}

//! Values that screens follow: leptos' signals, of which one kind is compiled whatever they hold.
//!
//! What is held lies in a slot whose type leptos doesn't see; leptos is told of a number that counts its changes. Each
//! type of its own signals, memos and stored values is 2 to 7 kB of wasm. A reader is handed the value itself, shared, so
//! that of the looking up nothing is compiled where somebody reads: there are three hundred such places.
use std::any::Any;
use std::cell::RefCell;
use std::marker::PhantomData;
use std::rc::Rc;

use leptos::prelude::*;

/// A value; none while somebody changes it.
type Value = Rc<RefCell<Option<Rc<dyn Any>>>>;

/// What lies at a place.
#[derive(Clone)]
struct Slot {
    value: Value,
    changes: Changes,
}

/// How its followers hear of a change.
#[derive(Clone, Copy)]
enum Changes {
    /// It never changes.
    Never,
    /// Whoever changes it counts.
    Told(RwSignal<u32>),
    /// It is worked out from others.
    Worked(Memo<u32>),
}

type Place = StoredValue<Slot, LocalStorage>;

/// What lies somewhere for as long as the screen it was made on, or the page. A handle.
pub struct Kept<T> {
    place: Place,
    of: PhantomData<fn() -> T>,
}

/// A value that may be followed. A handle.
pub struct Held<T> {
    place: Place,
    of: PhantomData<fn() -> T>,
}

/// A value that is worked out from others, anew when one of them changes; who follows it is told only where it comes
/// out as another. A handle.
pub struct Worked<T> {
    place: Place,
    of: PhantomData<fn() -> T>,
}

impl<T> Clone for Kept<T> {
    fn clone(&self) -> Kept<T> {
        *self
    }
}

impl<T> Copy for Kept<T> {}

impl<T> Clone for Held<T> {
    fn clone(&self) -> Held<T> {
        *self
    }
}

impl<T> Copy for Held<T> {}

impl<T> Clone for Worked<T> {
    fn clone(&self) -> Worked<T> {
        *self
    }
}

impl<T> Copy for Worked<T> {}

fn place(value: Value, changes: Changes) -> Place {
    StoredValue::new_local(Slot { value, changes })
}

fn gone() -> ! {
    wasm_bindgen::throw_str("its screen is gone")
}

fn being_read() -> ! {
    wasm_bindgen::throw_str("it is changed while it is read")
}

/// What lies there now, worked out if need be; nothing where its screen is gone, or while it is being changed.
fn look(place: Place, follow: bool) -> Option<Rc<dyn Any>> {
    let Slot { value, changes } = place.try_get_value()?;
    match changes {
        Changes::Told(changes) if follow => changes.track(),
        Changes::Worked(changes) if follow => drop(changes.try_get()),
        Changes::Worked(changes) => drop(changes.try_get_untracked()),
        Changes::Told(_) | Changes::Never => {}
    }
    let there = value.borrow();
    there.clone()
}

/// The value, as what it is. One compiled copy a type.
#[inline(never)]
fn read<T: 'static>(place: Place, follow: bool) -> Rc<T> {
    match look(place, follow).map(Rc::downcast) {
        Some(Ok(value)) => value,
        _ => gone(),
    }
}

/// Takes the value out to change it. It is put back by [`put`].
#[inline(never)]
fn taken<T: 'static>(place: Place) -> Option<Rc<T>> {
    take(place)?.downcast().ok()
}

fn take(place: Place) -> Option<Rc<dyn Any>> {
    place.try_get_value()?.value.take()
}

/// Puts a value there; nothing where its screen is gone.
#[inline(never)]
fn put(place: Place, value: Rc<dyn Any>) {
    if let Some(slot) = place.try_get_value() {
        slot.value.replace(Some(value));
    }
}

/// Tells those who follow a value that it changed.
#[inline(never)]
fn told(place: Place) {
    if let Some(Slot { changes: Changes::Told(changes), .. }) = place.try_get_value() {
        let _ = changes.try_update(|n| *n = n.wrapping_add(1));
    }
}

/// Counts how often the work came out as something else.
fn counted(work: Box<dyn Fn() -> bool>) -> Memo<u32> {
    let work = Kept::new(work);
    Memo::new(move |was: Option<&u32>| {
        let changed = work.with(|work| work());
        was.copied().unwrap_or_default().wrapping_add(u32::from(changed))
    })
}

impl<T: 'static> Kept<T> {
    /// Puts a value down.
    pub fn new(value: T) -> Kept<T> {
        Kept { place: place(Rc::new(RefCell::new(Some(Rc::new(value)))), Changes::Never), of: PhantomData }
    }

    /// Reads it.
    pub fn with<U>(self, look: impl FnOnce(&T) -> U) -> U {
        look(&read(self.place, false))
    }
}

impl<T: Clone + 'static> Kept<T> {
    /// A copy of it.
    #[inline(never)]
    pub fn get(self) -> T {
        self.with(T::clone)
    }
}

impl<T: 'static> Held<T> {
    /// Holds a value.
    pub fn new(value: T) -> Held<T> {
        let changes = Changes::Told(RwSignal::new(0));
        Held { place: place(Rc::new(RefCell::new(Some(Rc::new(value)))), changes), of: PhantomData }
    }

    /// Follows it without looking at it.
    pub fn track(self) {
        drop(look(self.place, true));
    }

    /// Reads and follows it.
    pub fn with<U>(self, look: impl FnOnce(&T) -> U) -> U {
        look(&read(self.place, true))
    }

    /// Reads it as it is now.
    pub fn with_untracked<U>(self, look: impl FnOnce(&T) -> U) -> U {
        look(&read(self.place, false))
    }

    /// Makes it another. Nothing where its screen is gone.
    #[inline(never)]
    pub fn set(self, value: T) {
        put(self.place, Rc::new(value));
        told(self.place);
    }

    /// Changes it. Nothing where its screen is gone.
    pub fn update<U>(self, change: impl FnOnce(&mut T) -> U) -> Option<U> {
        let done = self.changed(change);
        told(self.place);
        done
    }

    /// Whether the screen it was made on was left.
    pub fn is_gone(self) -> bool {
        self.place.try_get_value().is_none()
    }

    /// Changes it and tells nobody.
    pub fn update_untracked(self, change: impl FnOnce(&mut T)) {
        let _ = self.changed(change);
    }

    fn changed<U>(self, change: impl FnOnce(&mut T) -> U) -> Option<U> {
        let mut value = taken::<T>(self.place)?;
        let done = change(Rc::get_mut(&mut value).unwrap_or_else(|| being_read()));
        put(self.place, value);
        Some(done)
    }
}

impl<T: Clone + 'static> Held<T> {
    /// A copy of it, followed.
    #[inline(never)]
    pub fn get(self) -> T {
        self.with(T::clone)
    }

    /// A copy of it as it is now.
    #[inline(never)]
    pub fn get_untracked(self) -> T {
        self.with_untracked(T::clone)
    }
}

impl<T: PartialEq + 'static> Worked<T> {
    /// Says how it is worked out.
    pub fn new(work: impl Fn() -> T + 'static) -> Worked<T> {
        Worked::boxed(Box::new(work))
    }

    #[inline(never)]
    fn boxed(work: Box<dyn Fn() -> T>) -> Worked<T> {
        let value: Value = Rc::default();
        let kept = value.clone();
        let changes = counted(Box::new(move || {
            let now = work();
            let changed = kept.borrow().as_ref().and_then(|was| was.downcast_ref::<T>()) != Some(&now);
            if changed {
                kept.replace(Some(Rc::new(now)));
            }
            changed
        }));
        Worked { place: place(value, Changes::Worked(changes)), of: PhantomData }
    }

    /// Follows it without looking at it.
    pub fn track(self) {
        drop(look(self.place, true));
    }

    /// Reads and follows it.
    pub fn with<U>(self, look: impl FnOnce(&T) -> U) -> U {
        look(&read(self.place, true))
    }

    /// Reads it as it is now.
    pub fn with_untracked<U>(self, look: impl FnOnce(&T) -> U) -> U {
        look(&read(self.place, false))
    }
}

impl<T: Clone + PartialEq + 'static> Worked<T> {
    /// A copy of it, followed.
    #[inline(never)]
    pub fn get(self) -> T {
        self.with(T::clone)
    }
}

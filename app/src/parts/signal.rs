//! Values that screens follow: leptos' signals, of which one kind is compiled whatever they hold.
//!
//! What is held lies in a cell whose type leptos doesn't see; leptos is told of a number that counts its changes. Each
//! type of its own signals, memos and stored values is 2 to 7 kB of wasm.
use std::any::Any;
use std::cell::RefCell;
use std::marker::PhantomData;
use std::rc::Rc;

use leptos::prelude::*;

type Cell = Rc<dyn Any>;

/// What lies somewhere for as long as the screen it was made on, or the page. A handle.
pub struct Kept<T> {
    place: StoredValue<Cell, LocalStorage>,
    of: PhantomData<fn() -> T>,
}

/// A value that may be followed. A handle.
pub struct Held<T> {
    kept: Kept<T>,
    changes: RwSignal<u32>,
}

/// A value that is worked out from others, anew when one of them changes; who follows it is told only where it comes
/// out as another. A handle.
pub struct Worked<T> {
    kept: Kept<Option<T>>,
    changes: Memo<u32>,
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

fn place(cell: Cell) -> StoredValue<Cell, LocalStorage> {
    StoredValue::new_local(cell)
}

#[inline(never)]
fn there(place: StoredValue<Cell, LocalStorage>) -> Option<Cell> {
    place.try_get_value()
}

fn gone() -> ! {
    wasm_bindgen::throw_str("its screen is gone")
}

#[inline(never)]
fn changed(changes: RwSignal<u32>) {
    let _ = changes.try_update(|n| *n = n.wrapping_add(1));
}

#[inline(never)]
fn followed(changes: RwSignal<u32>) {
    changes.track();
}

#[inline(never)]
fn worked_out(changes: Memo<u32>) {
    let _ = changes.try_get();
}

#[inline(never)]
fn worked_out_untracked(changes: Memo<u32>) {
    let _ = changes.try_get_untracked();
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
        Kept { place: place(Rc::new(RefCell::new(value))), of: PhantomData }
    }

    /// Reads it.
    pub fn with<U>(self, read: impl FnOnce(&T) -> U) -> U {
        match there(self.place).as_ref().and_then(|cell| cell.downcast_ref::<RefCell<T>>()) {
            Some(cell) => read(&cell.borrow()),
            None => gone(),
        }
    }

    /// Changes it; nothing where it is gone.
    fn change<U>(self, change: impl FnOnce(&mut T) -> U) -> Option<U> {
        there(self.place)
            .as_ref()
            .and_then(|cell| cell.downcast_ref::<RefCell<T>>())
            .map(|cell| change(&mut cell.borrow_mut()))
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
        Held { kept: Kept::new(value), changes: RwSignal::new(0) }
    }

    /// Follows it without looking at it.
    pub fn track(self) {
        followed(self.changes);
    }

    /// Reads and follows it.
    pub fn with<U>(self, read: impl FnOnce(&T) -> U) -> U {
        followed(self.changes);
        self.kept.with(read)
    }

    /// Reads it as it is now.
    pub fn with_untracked<U>(self, read: impl FnOnce(&T) -> U) -> U {
        self.kept.with(read)
    }

    /// Makes it another. Nothing where its screen is gone.
    #[inline(never)]
    pub fn set(self, value: T) {
        self.update(|there| *there = value);
    }

    /// Changes it. Nothing where its screen is gone.
    pub fn update<U>(self, change: impl FnOnce(&mut T) -> U) -> Option<U> {
        let done = self.kept.change(change);
        changed(self.changes);
        done
    }

    /// Whether the screen it was made on was left.
    pub fn is_gone(self) -> bool {
        there(self.kept.place).is_none()
    }

    /// Changes it and tells nobody.
    pub fn update_untracked(self, change: impl FnOnce(&mut T)) {
        self.kept.change(change);
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
        let cell: Rc<RefCell<Option<T>>> = Rc::default();
        let kept = Kept { place: place(cell.clone()), of: PhantomData };
        let changes = counted(Box::new(move || {
            let now = Some(work());
            let mut there = cell.borrow_mut();
            let changed = *there != now;
            if changed {
                *there = now;
            }
            changed
        }));
        Worked { kept, changes }
    }

    /// Follows it without looking at it.
    pub fn track(self) {
        worked_out(self.changes);
    }

    /// Reads and follows it.
    pub fn with<U>(self, read: impl FnOnce(&T) -> U) -> U {
        worked_out(self.changes);
        self.read(read)
    }

    /// Reads it as it is now.
    pub fn with_untracked<U>(self, read: impl FnOnce(&T) -> U) -> U {
        worked_out_untracked(self.changes);
        self.read(read)
    }

    fn read<U>(self, read: impl FnOnce(&T) -> U) -> U {
        self.kept.with(|there| there.as_ref().map_or_else(|| gone(), read))
    }
}

impl<T: Clone + PartialEq + 'static> Worked<T> {
    /// A copy of it, followed.
    #[inline(never)]
    pub fn get(self) -> T {
        self.with(T::clone)
    }
}

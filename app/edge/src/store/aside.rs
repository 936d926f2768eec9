//! Copying a text out of the way before something replaces it.

use std::rc::Rc;

use wasm_bindgen_futures::spawn_local;

use super::{ASIDE, Aside, Inner};
use crate::{
    Work,
    fault::Fault,
    storage::{self, Available},
};

impl Inner {
    /// Sets the newest text of a protected key on its way once the kept one is copied.
    pub(super) fn copy_then_keep(self: &Rc<Self>, key: &str) {
        if self.copying.borrow_mut().insert(key.to_owned(), ()).is_some() {
            return;
        }
        let (inner, key) = (Rc::clone(self), key.to_owned());
        spawn_local(async move {
            let outcome = inner.set_aside(&key).await;
            inner.copying.borrow_mut().remove(&key);
            match outcome {
                Ok(_) => inner.keep(&key),
                Err(fault) => {
                    let mut owed = inner.owed.borrow_mut();
                    if inner.local == Available::Yes {
                        owed.local.refuse(&key, fault.clone());
                    }
                    if inner.journal.is_ok() {
                        owed.journal.refuse(&key, fault);
                    }
                }
            }
            inner.retry_later();
            inner.tell();
        });
    }

    /// Boxed: three ask for it, and each would carry a copy of it.
    pub(super) fn set_aside<'a>(&'a self, key: &'a str) -> Work<'a, Result<Vec<String>, Fault>> {
        Box::pin(self.set_aside_now(key))
    }

    async fn set_aside_now(&self, key: &str) -> Result<Vec<String>, Fault> {
        let mut texts = Vec::new();
        if self.local == Available::Yes {
            texts.extend(storage::read(key)?);
        }
        if let Ok(journal) = &self.journal
            && let Some(text) = journal.get(key).await?
            && !texts.contains(&text)
        {
            texts.push(text);
        }
        let mut copies = Vec::new();
        for text in texts {
            copies.push(self.copy(key, &text).await?);
        }
        self.owed.borrow_mut().guarded.remove(key);
        if !copies.is_empty() {
            let aside = Aside { key: key.to_owned(), copies: copies.clone() };
            self.asides.borrow_mut().push(aside.clone());
            let call = self.aside_call.borrow().clone();
            if let Some(call) = call {
                call(aside);
            }
        }
        Ok(copies)
    }

    /// Copies a text under the first key that is free in both places, or finds the copy made before.
    async fn copy(&self, key: &str, text: &str) -> Result<String, Fault> {
        let mut number = 1_u32;
        loop {
            let name = format!("{ASIDE}{number}/{key}");
            number = number.saturating_add(1);
            match self.local_text(&name) {
                Some(taken) if taken == text => return Ok(name),
                Some(_) => continue,
                None => {}
            }
            let journal = match &self.journal {
                Ok(journal) => match journal.put_new(&name, text).await {
                    Ok(false) if journal.get(&name).await?.as_deref() == Some(text) => {
                        return Ok(name);
                    }
                    Ok(false) => continue,
                    Ok(true) => Ok(()),
                    Err(fault) => Err(fault),
                },
                Err(fault) => Err(fault.clone()),
            };
            let local = if self.local == Available::Yes { storage::write(&name, text) } else { Err(Fault::Blocked) };
            return journal.or(local).map(|()| name);
        }
    }
}

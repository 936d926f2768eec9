//! The photo of a loading: a picture that is chosen is drawn anew, kept small, and stays with what is signed; what is no
//! picture, or larger than any, is refused in a sentence, and never in the way of the text.

use std::path::PathBuf;

use base64::Engine;
use serde_json::json;

use crate::browser::{Screen, visit};
use crate::folder::Folder;
use crate::load;
use crate::page::Page;
use crate::site::Site;

/// A picture of this size in which no two dots are alike, as PNG: as hard to make small as a picture can be.
async fn noise(page: &Page, folder: &Folder, wide: u32, high: u32) -> PathBuf {
    let draw = format!(
        "const canvas = document.createElement('canvas'); canvas.width = {wide}; canvas.height = {high}; \
         const context = canvas.getContext('2d'); const dots = context.createImageData({wide}, {high}); let seed = 7; \
         for (let at = 0; at < dots.data.length; at++) {{ seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0; dots.data[at] = at % 4 === 3 ? 255 : seed >>> 24; }} \
         context.putImageData(dots, 0, 0); return canvas.toDataURL('image/png').split(',')[1];"
    );
    let text = page.script(&draw).await;
    let bytes = base64::engine::general_purpose::STANDARD.decode(text.as_str().unwrap()).unwrap();
    let path = folder.path().join("noise.png");
    std::fs::write(&path, bytes).unwrap();
    path
}

/// The picture that is shown, once it is: width and height, and its address.
async fn shown(page: &Page) -> (f64, f64, String) {
    page.until("the picture", "(document.querySelector('.loading-picture') || {}).naturalWidth > 0").await;
    let read = "const picture = document.querySelector('.loading-picture'); return [picture.naturalWidth, picture.naturalHeight, picture.src];";
    let picture = page.script(read).await;
    (picture[0].as_f64().unwrap(), picture[1].as_f64().unwrap(), picture[2].as_str().unwrap().to_owned())
}

/// What the job says of its photo.
const KEPT: &str = "const key = Object.keys(localStorage).find((key) => key.endsWith('/loading')); \
    const section = key && JSON.parse(localStorage.getItem(key)); \
    return ((section?.body?.tags || []).find((tag) => tag.photo) || {}).photo || null;";

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_photo_is_made_small_kept_with_what_is_signed_and_refused_where_it_is_none() {
    let site = Site::serve();
    let folder = Folder::new("photo");
    visit(Screen::Phone, &site.address(), async |page: Page| {
        load::begun(&page, "CF-1").await;

        // What is no picture, whatever it is called.
        let text = folder.path().join("text.png");
        std::fs::write(&text, "no picture at all").unwrap();
        page.pick_file("Take a photo", &text).await;
        page.says("This file is no picture that this browser reads: nothing of it was kept.").await;
        // More than any camera writes: 61 MiB of nothing.
        let huge = folder.path().join("huge.jpg");
        std::fs::File::create(&huge).unwrap().set_len(61 * 1024 * 1024).unwrap();
        page.pick_file("Take a photo", &huge).await;
        page.says("This picture is larger than 60 MB: nothing of it was kept.").await;
        assert_eq!(page.script(KEPT).await, json!(null));
        // The text goes on meanwhile.
        page.enter("What was done another way, and why", "Poured in two goes (invented).").await;
        assert_eq!(page.entered("What was done another way, and why").await, "Poured in two goes (invented).");

        // Five million dots, no two alike: 15 MB as it comes.
        let noise = noise(&page, &folder, 2600, 1950).await;
        let chosen = std::fs::metadata(&noise).unwrap().len();
        page.pick_file("Take a photo", &noise).await;
        let (wide, high, address) = shown(&page).await;
        assert!(address.starts_with("data:image/jpeg;base64,"), "{}", &address[..40]);
        assert!(address.len() <= 400_000, "{} letters", address.len());
        assert!(wide.max(high) <= 1600.0 && (wide / high - 4.0 / 3.0).abs() < 0.01, "{wide} × {high}");
        page.until("it is kept", &format!("(() => {{ {KEPT} }})() !== null")).await;
        let kept = page.script(KEPT).await;
        assert_eq!(kept["bytes"], json!(address.len()));
        println!("a picture of {chosen} bytes is kept in {} letters, {wide} × {high}", address.len());
        // Nothing the camera wrote beside the picture comes along: a JPEG of a canvas has no such part (APP1 of Exif).
        let bytes =
            base64::engine::general_purpose::STANDARD.decode(&address["data:image/jpeg;base64,".len()..]).unwrap();
        assert!(!bytes.windows(6).any(|part| part == b"Exif\0\0"));
        assert_eq!(page.entered("What was done another way, and why").await, "Poured in two goes (invented).");

        // It stays through a reload and is part of what is signed.
        page.reload().await;
        assert_eq!(shown(&page).await.2, address);
        load::to_the_end(&page).await;
        page.press("Sign").await;
        page.says("Signed, so nothing here is changed any more.").await;
        assert_eq!(shown(&page).await.2, address);
        page.reload().await;
        page.says("Signed, so nothing here is changed any more.").await;
        assert_eq!(shown(&page).await.2, address);
        page.no_complaints().await;
    })
    .await;
}

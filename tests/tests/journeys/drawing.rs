//! The section as a file: saved as SVG and as PNG from the vessel's page, from the calculation sheet and from the loading
//! sheet, read back by a program that has nothing but Python's own library, and set in the engine's own fonts.

use std::process::Command;

use serde_json::json;

use crate::browser::{Screen, visit};
use crate::folder::Folder;
use crate::load;
use crate::page::Page;
use crate::paper::{self, Paper};
use crate::site::Site;
use crate::stored;
use crate::unlike;

/// Saves the drawing both ways, and has both read: the name without what follows the dot, the SVG, what the reader said.
async fn saved(page: &Page, folder: &Folder, of: &str) -> (String, String, String) {
    let kept = Folder::new("drawing");
    let mut names = Vec::new();
    for kind in ["svg", "png"] {
        let suffix = if of.is_empty() { String::new() } else { format!(", {of}") };
        page.press(&format!("Drawing as {}{suffix}", kind.to_uppercase())).await;
        let (name, bytes) = folder.taken().await;
        names.push(name.strip_suffix(&format!(".{kind}")).unwrap_or_else(|| panic!("{name}")).to_owned());
        std::fs::write(kept.path().join(format!("drawing.{kind}")), bytes).unwrap();
    }
    assert_eq!(names[0], names[1]);
    let read = Command::new("python3")
        .arg(concat!(env!("CARGO_MANIFEST_DIR"), "/reference/drawing_file.py"))
        .args([kept.path().join("drawing.svg"), kept.path().join("drawing.png")])
        .output()
        .expect("python3 is in the path");
    let said = String::from_utf8(read.stdout).unwrap();
    assert!(read.status.success(), "{said}\n{}", String::from_utf8_lossy(&read.stderr));
    let svg = std::fs::read_to_string(kept.path().join("drawing.svg")).unwrap();
    (names.remove(0), svg, said)
}

/// In the fonts of this engine no text of a file meets another or leaves the picture.
async fn is_legible(page: &Page, svg: &str) {
    let read = format!(
        "const file = new DOMParser().parseFromString({}, 'image/svg+xml'); const svg = document.importNode(file.documentElement, true); \
         document.body.append(svg); const view = svg.viewBox.baseVal; const faults = []; \
         const texts = [...svg.querySelectorAll('text')].map((text) => [text.textContent, text.getBBox()]); \
         texts.forEach(([said, box], at) => {{ \
           if (box.x < -0.5 || box.y < -2 || box.x + box.width > view.width + 0.5 || box.y + box.height > view.height + 2) faults.push(said + ' leaves the picture'); \
           for (const [other, there] of texts.slice(at + 1)) {{ \
             const across = Math.min(box.x + box.width, there.x + there.width) - Math.max(box.x, there.x); \
             const down = Math.min(box.y + 0.8 * box.height, there.y + 0.8 * there.height) - Math.max(box.y + 0.2 * box.height, there.y + 0.2 * there.height); \
             if (across > 0.5 && down > 0.5) faults.push(said + ' meets ' + other); }} }}); \
         svg.remove(); return [texts.length, faults];",
        json!(svg)
    );
    let found = page.script(&read).await;
    assert_eq!(found[1], json!([]), "of {} texts", found[0]);
    assert!(found[0].as_u64().unwrap() > 3);
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn the_drawing_is_saved_as_svg_and_png_from_the_vessels_page_and_the_calculation_sheet() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), async |page: Page| {
        let folder = Folder::new("downloads");
        page.started().await;
        folder.takes_downloads(&page).await;
        let sample = unlike::sample();
        stored::put(&page, &stored::texts(&sample)).await;
        let vessel = &sample.survey.body.vessels[0];
        page.open(&format!("#/jobs/{}/vessels/{}", sample.id, vessel.id)).await;
        page.settled().await;
        let (name, svg, said) = saved(&page, &folder, "").await;
        println!("{name}\n{said}");
        assert!(name.contains("Quillmoss-Laundry") && name.contains("_CF-1"), "{name}");
        assert!(ends_with_a_day(&name), "{name}");
        // What stands on the page stands in the file, with both waters and the layers' names.
        for text in ["inside depth", "freeboard", "datum: rim", "Coconut carbon 12×40 · 2 bags", "riser cut to"] {
            assert!(svg.contains(text), "{text} in {svg}");
        }
        assert_eq!(svg.matches("bed in backwash, water at").count(), 2, "{svg}");
        is_legible(&page, &svg).await;
        page.no_complaints().await;

        // Vessels as unlike as vessels can be, from the calculation sheet: each by its name.
        let job = unlike::vessels();
        stored::put(&page, &stored::texts(&job)).await;
        page.open(&format!("#/jobs/{}/calculation", job.id)).await;
        page.settled().await;
        let named = page
            .script(
                "return [...document.querySelectorAll('.drawing-file button')].map((button) => button.textContent);",
            )
            .await;
        let named: Vec<String> = serde_json::from_value(named).unwrap();
        assert_eq!(named.len(), 2 * job.survey.body.vessels.len());
        for name in named.iter().filter_map(|name| name.strip_prefix("Drawing as SVG, ")) {
            let (_, svg, said) = saved(&page, &folder, name).await;
            println!("{name}: {}", said.lines().last().unwrap());
            is_legible(&page, &svg).await;
        }
        // The picture has a sheet of its own on either paper, before the figures.
        for size in [Paper::A4, Paper::Letter] {
            let sheets = paper::chosen(&page, size).await;
            let pictures = sheets.iter().filter(|sheet| sheet.contains("Section to scale")).count();
            assert_eq!(pictures, job.survey.body.vessels.len(), "{size:?}");
            assert!(sheets[0].contains("Section to scale") && sheets[0].contains("inside depth"), "{}", sheets[0]);
        }
        page.no_complaints().await;
    })
    .await;
}

/// Whether a name ends with a day.
fn ends_with_a_day(name: &str) -> bool {
    let day = name.rsplit('_').next().unwrap_or_default();
    day.len() == 10 && day.split('-').map(str::len).eq([4, 2, 2]) && day.chars().all(|c| c == '-' || c.is_ascii_digit())
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn what_was_signed_stands_on_the_drawing_beside_what_was_planned() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        let folder = Folder::new("downloads");
        load::begun(&page, "CF-1").await;
        folder.takes_downloads(&page).await;
        let (_, svg, _) = saved(&page, &folder, "").await;
        assert!(!svg.contains("as loaded"), "{svg}");
        load::to_the_end(&page).await;
        page.press("Sign").await;
        page.says("Signed, so nothing here is changed any more.").await;
        let (name, svg, said) = saved(&page, &folder, "").await;
        println!("{name}\n{said}");
        assert!(name.contains("_CF-1_"), "{name}");
        assert!(svg.contains("surfaces as loaded, ") && svg.contains(">loaded "), "{svg}");
        assert!(svg.contains("As loaded on "), "{svg}");
        is_legible(&page, &svg).await;
        page.no_complaints().await;
    })
    .await;
}

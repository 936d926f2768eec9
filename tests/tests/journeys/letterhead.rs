//! Company, address and picture, set once: on every paper of a job of this company, on that of no other.

use std::path::Path;

use crate::axe;
use crate::browser::{Screen, visit};
use crate::filter;
use crate::page::{Page, Role};
use crate::site::Site;

/// Waits for the picture, which is read after the sheets stand.
async fn picture_came(page: &Page) {
    let came = "[...document.querySelectorAll('.letterhead img')].some((img) => img.complete)";
    page.until("the picture is drawn", came).await;
}

/// What the letterhead on the first sheet says, and whether its picture is drawn; `none` where there is no letterhead.
async fn head(page: &Page) -> String {
    page.settled().await;
    let read = "const head = document.querySelector('.sheets-shown .letterhead'); if (!head) return 'none'; \
        const picture = head.querySelector('img'); \
        return head.innerText.trim().split('\\n').filter(Boolean).join('|') + \
            (picture ? (picture.complete && picture.naturalWidth > 0 ? '|drawn' : '|waits') : '');";
    page.script(read).await.as_str().unwrap().to_owned()
}

async fn settings(page: &Page) {
    page.open("#/settings").await;
    page.find(Role::Heading, "Letterhead").await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_letterhead_stands_on_the_papers_of_its_company_and_on_no_others() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), async |page: Page| {
        page.started().await;
        settings(&page).await;
        page.enter("Your company", "Invented Filters Ltd").await;
        page.enter("Address", "1 Example Street\nSampletown").await;
        let picture = Path::new(env!("CARGO_MANIFEST_DIR")).join("../public/icons/icon-192.png");
        page.pick_file("Choose a picture", &picture.canonicalize().unwrap()).await;
        page.find(Role::Button, "Remove the picture").await;
        axe::no_barriers(&page).await;
        page.fits_its_width().await;

        // A new job is of this company; its paper says so on the first sheet.
        page.open("#/jobs").await;
        filter::new_job(&page, "With a letterhead").await;
        assert_eq!(page.entered("Your company").await, "Invented Filters Ltd");
        let job = page.fragment().await;
        let sheet = format!("{job}/survey-sheet");
        let whole = "Invented Filters Ltd|1 Example Street|Sampletown|drawn";
        page.open(&sheet).await;
        picture_came(&page).await;
        assert_eq!(head(&page).await, whole);
        page.reload().await;
        picture_came(&page).await;
        assert_eq!(head(&page).await, whole);

        // On the paper of another company it doesn't.
        page.open(&job).await;
        page.enter("Your company", "Another Company").await;
        page.open(&sheet).await;
        assert_eq!(head(&page).await, "none");
        page.open(&job).await;
        page.enter("Your company", "Invented Filters Ltd").await;

        // More of an address than finds room is said, kept, and printed as far as there is room.
        settings(&page).await;
        page.enter("Address", "1\n2\n3\n4\n5\n6\n7").await;
        page.says("Six lines of 60 letters find room on a sheet.").await;
        page.press("Remove the picture").await;
        page.reload().await;
        page.find(Role::Button, "Choose a picture").await;
        assert!(!page.has(Role::Button, "Remove the picture").await);
        assert_eq!(page.entered("Address").await, "1\n2\n3\n4\n5\n6\n7");
        page.open(&sheet).await;
        assert_eq!(head(&page).await, "Invented Filters Ltd|1|2|3|4|5|6");
        page.no_complaints().await;
    })
    .await;
}

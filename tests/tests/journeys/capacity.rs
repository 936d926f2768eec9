//! Six hundred jobs of the sample's size: they fit, the page opens, each opens, and one more change is kept.

use std::time::Instant;

use bedwright_job::id::Id;
use bedwright_job::sample::sample_job;
use bedwright_job::saved::section_text;
use bedwright_job::sections::SectionName;
use serde_json::json;

use crate::browser::{Screen, visit};
use crate::page::{Page, Role};
use crate::site::Site;

/// Puts jobs of the sample's size into local storage, numbered from one number to before another.
async fn put(page: &Page, from: usize, to: usize) {
    for start in (from..to).step_by(50) {
        let mut texts = Vec::new();
        for number in start..to.min(start + 50) {
            let id = Id::new(&format!("capacity-{number:04}"));
            let vessels = [Id::new(&format!("f-{number}")), Id::new(&format!("s-{number}"))];
            let mut job = sample_job(id, vessels, "2026-11-24");
            job.head.body.sample = false;
            job.head.body.title = format!("Job {number:04}");
            for &name in SectionName::ALL.iter().filter(|name| job.revision(**name).is_some()) {
                texts.push((format!("bedwright/job/{}/{}", job.id, name.id()), section_text(&job, name)));
            }
        }
        let put = format!("for (const [key, text] of {}) localStorage.setItem(key, text);", json!(texts));
        page.script(&put).await;
    }
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn six_hundred_jobs_of_the_sample_s_size_fit_and_open() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        let mut there = 0;
        for count in [10, 100, 600] {
            put(&page, there, count).await;
            there = count;
            // Once to bring them into the journal as well, then as any other day.
            page.reload().await;
            page.until("the jobs are there", &format!("document.querySelectorAll('.job-line').length === {count}")).await;
            tokio::time::sleep(std::time::Duration::from_secs(2)).await;
            let begun = Instant::now();
            page.session().refresh().await.unwrap();
            page.until_within(
                std::time::Duration::from_secs(60),
                "the jobs are there",
                &format!("document.querySelectorAll('.job-line').length === {count}"),
            )
            .await;
            println!("{count} jobs: the list stands {:.2} s after the page is asked for", begun.elapsed().as_secs_f64());
        }
        let letters = page
            .script("return Object.entries({ ...localStorage }).reduce((sum, [key, text]) => sum + key.length + text.length, 0);")
            .await;
        println!("600 jobs take {letters} letters of local storage");
        let begun = Instant::now();
        page.go("#/jobs/capacity-0599").await;
        page.find(Role::Button, "Add a vessel").await;
        println!("the last of 600 opens in {:.2} s", begun.elapsed().as_secs_f64());
        page.enter("Notes", "one change more").await;
        page.reload().await;
        assert_eq!(page.entered("Notes").await, "one change more");
        page.open("#/backup").await;
        page.says("Jobs in no backup: 600.").await;
        page.says("million letters used").await;
        page.no_complaints().await;
    })
    .await;
}

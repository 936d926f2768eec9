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

/// Puts jobs of the sample's size into local storage, numbered from one number to before another; how many there are then.
async fn put(page: &Page, from: usize, to: usize) -> usize {
    for start in (from..to).step_by(50) {
        let end = to.min(start + 50);
        let jobs: Vec<Vec<(String, String)>> = (start..end)
            .map(|number| {
                let id = Id::new(&format!("capacity-{number:04}"));
                let vessels = [Id::new(&format!("f-{number}")), Id::new(&format!("s-{number}"))];
                let mut job = sample_job(id, vessels, "2026-11-24");
                job.head.body.sample = false;
                job.head.body.title = format!("Job {number:04}");
                let said = SectionName::ALL.iter().filter(|name| job.revision(**name).is_some());
                said.map(|&name| (format!("bedwright/job/{}/{}", job.id, name.id()), section_text(&job, name)))
                    .collect()
            })
            .collect();
        // A job that has no room is taken out again: half a job is none.
        let put = format!(
            "let whole = 0; for (const job of {}) {{ try {{ for (const [key, text] of job) localStorage.setItem(key, text); whole += 1; }} \
               catch (full) {{ for (const [key] of job) localStorage.removeItem(key); break; }} }} return whole;",
            json!(jobs)
        );
        let whole = page.script(&put).await.as_u64().and_then(|whole| usize::try_from(whole).ok()).unwrap();
        if whole < end - start {
            return start + whole;
        }
    }
    to
}

/// Letters that local storage holds.
async fn letters(page: &Page) -> u64 {
    let all =
        "return Object.entries({ ...localStorage }).reduce((sum, [key, text]) => sum + key.length + text.length, 0);";
    page.script(all).await.as_u64().unwrap()
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn six_hundred_jobs_of_the_sample_s_size_fit_and_open() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        let mut there = 0;
        for count in [10, 100, 600] {
            there = put(&page, there, count).await;
            assert_eq!(there, count, "they fit");
            // Once to bring them into the journal as well, then as any other day.
            page.reload().await;
            page.until("the jobs are there", &format!("document.querySelectorAll('.job-line').length === {count}"))
                .await;
            tokio::time::sleep(std::time::Duration::from_secs(2)).await;
            let begun = Instant::now();
            page.session().refresh().await.unwrap();
            page.until_within(
                std::time::Duration::from_secs(60),
                "the jobs are there",
                &format!("document.querySelectorAll('.job-line').length === {count}"),
            )
            .await;
            println!(
                "{count} jobs: the list stands {:.2} s after the page is asked for",
                begun.elapsed().as_secs_f64()
            );
        }
        let letters = letters(&page).await;
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

/// Until the browser refuses: what is typed past the limit is kept in the second place alone, the page says so, and all of it is
/// there after a reload.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn past_the_limit_a_sentence_says_so_and_nothing_is_lost() {
    const FULL: &str = "The browser's first place is full. What you type is kept in the second place alone.";
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        let patience = std::time::Duration::from_secs(120);
        page.started().await;
        let fit = put(&page, 0, 4000).await;
        assert!((600..4000).contains(&fit), "{fit}");
        println!("{fit} jobs of the sample's size fit: {} letters", letters(&page).await);
        let all = format!("document.querySelectorAll('.job-line').length === {fit}");
        page.session().refresh().await.unwrap();
        page.until_within(patience, "they are there", &all).await;
        // Now they are in the second place too.
        tokio::time::sleep(std::time::Duration::from_secs(4)).await;
        let begun = Instant::now();
        page.session().refresh().await.unwrap();
        page.until_within(patience, "they are there", &all).await;
        println!("{fit} jobs: the list stands {:.2} s after the page is asked for", begun.elapsed().as_secs_f64());
        for number in 1..=3 {
            page.open("#/jobs").await;
            page.press("New job").await;
            page.enter("Job", &format!("Past the limit {number}")).await;
            page.enter("Notes", &"as long as a note may well be ".repeat(60)).await;
        }
        page.says(FULL).await;
        let last = page.fragment().await;
        tokio::time::sleep(std::time::Duration::from_millis(500)).await;
        page.session().refresh().await.unwrap();
        let there = "document.documentElement.dataset.page === 'started' && document.querySelector('main')";
        page.until_within(patience, "it starts", there).await;
        page.find(Role::Button, "Add a vessel").await;
        assert_eq!(page.fragment().await, last);
        assert_eq!(page.entered("Job").await, "Past the limit 3");
        page.open("#/jobs").await;
        page.until_within(
            patience,
            "all are there",
            &format!("document.querySelectorAll('.job-line').length === {}", fit + 3),
        )
        .await;
        page.no_complaints().await;
    })
    .await;
}

//! The page with no connection: the server is really gone, since a switch in the browser would not reach the worker.

use crate::browser::{Screen, visit};
use crate::page::{Page, Role};
use crate::site::Site;

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn the_page_opens_again_without_a_connection() {
    let mut site = Site::serve();
    let address = site.address();
    visit(Screen::Phone, &address, async |page: Page| {
        page.started().await;
        page.ready_offline().await;
        let before = page.names(Role::Heading).await;
        page.no_complaints().await;
        site.stop();
        // Nothing answers there any more.
        assert!(std::net::TcpStream::connect(address.trim_start_matches("http://").trim_end_matches('/')).is_err());
        page.reload().await;
        page.ready_offline().await;
        assert_eq!(page.names(Role::Heading).await, before);
        // It may complain that the worker's own script could not be asked for, and of nothing else.
        let complaints = page.complaints().await;
        assert!(complaints.iter().all(|complaint| complaint.contains("/sw.js")), "{complaints:?}");
    })
    .await;
}

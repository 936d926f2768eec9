//! Runs one wasm test binary: cargo's `runner` for wasm32, without installing a tool.
//!
//! In node, unless the binary asks for a browser; then in the Chromium that `chromedriver` finds.

fn main() -> anyhow::Result<()> {
    wasm_bindgen_cli::wasm_bindgen_test_runner::run_cli_with_args(std::env::args_os())
}

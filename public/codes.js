// The worker that reads codes: it starts the reader and answers one picture at a time.
import start, { codes_in } from "./{{reader_script}}";

const started = start();

self.onmessage = async (event) => {
  const { pixels, wide, high } = event.data;
  try {
    await started;
    self.postMessage({ texts: codes_in(new Uint8Array(pixels), wide, high) });
  } catch (error) {
    self.postMessage({ trouble: String(error) });
  }
};

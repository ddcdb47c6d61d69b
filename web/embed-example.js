"use strict";
// Gives each frame the height that the calculator in it asks for.
addEventListener("message", (event) => {
  const height = event.data?.roofside?.height;
  if (!Number.isFinite(height)) return;
  for (const frame of document.querySelectorAll("iframe")) {
    // Only the frame that the message came from, whatever it says of itself.
    if (frame.contentWindow === event.source) frame.style.height = `${Math.min(height, 20_000)}px`;
  }
});

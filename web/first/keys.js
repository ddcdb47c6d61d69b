"use strict";
// A sign tapped on the key row goes into the field that has the focus. go-app
// hears of a press too late to keep the focus there, and the phone's keypad
// with it.
document.addEventListener("mousedown", (event) => {
  if (event.target instanceof Element && event.target.closest(".key")) event.preventDefault();
});

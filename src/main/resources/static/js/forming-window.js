// Counts the forming window down on the page (heat/_window.html); without it the sentences stand.

import { keptAt } from "./site.js";

const SECOND_MS = 1000;
const places = document.querySelectorAll("[data-part=window-left]");

/** By how much the clock of the device is fast; not known of a page that was kept. */
const fast = (place) => (keptAt ? 0 : opened - Date.parse(place.dataset.now));
const opened = Date.now();

function left(until, place) {
  return Math.floor((Date.parse(until) - (Date.now() - fast(place))) / SECOND_MS);
}

function inWords(seconds) {
  const minutes = Math.floor(seconds / 60);
  return `${minutes} min ${String(seconds % 60).padStart(2, "0")} s`;
}

function show(place) {
  const { bestUntil, closesAt } = place.dataset;
  const most = left(closesAt, place);
  const best = bestUntil ? left(bestUntil, place) : 0;
  if (most <= 0) {
    say(place, "past", "No more severe forming.");
  } else if (best <= 0) {
    say(place, "closing", `${inWords(most)} left`);
  } else {
    say(place, "open", `${inWords(most)} left, best done in ${inWords(best)}`);
  }
}

/** In the freezer the word stays, though the clock may run on there. */
function say(place, word, words) {
  const state = place.parentElement.querySelector("[data-part=window-word]");
  if (word === "past" || place.dataset.inFreezer !== "true") {
    state.textContent = word;
  }
  place.textContent = words;
}

const tick = () => places.forEach(show);

if (places.length > 0) {
  tick();
  setInterval(tick, SECOND_MS);
}

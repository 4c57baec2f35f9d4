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

function words(place) {
  const { bestUntil, closesAt } = place.dataset;
  const most = left(closesAt, place);
  if (most <= 0) {
    return "Past. No more severe forming.";
  }
  const best = bestUntil ? left(bestUntil, place) : 0;
  return `${inWords(most)} left` + (best > 0 ? `, best done in ${inWords(best)}` : ", closing");
}

const tick = () => places.forEach((place) => (place.textContent = words(place)));

if (places.length > 0) {
  tick();
  setInterval(tick, SECOND_MS);
}

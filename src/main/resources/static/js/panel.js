// The strip that says what waits to be sent, and what one can do about it (_shared/waiting.html).

import * as outbox from "./outbox.js";
import * as network from "./network.js";
import * as store from "./store.js";
import { count, fate } from "./fate.js";
import { inWords, isBench, keptAt, root } from "./site.js";

const QUIET_MS = 1000;
const strip = document.getElementById("waiting");
const part = (name) => strip.querySelector(`[data-part=${name}]`);

export async function draw() {
  const entries = await store.all();
  say("count", count(entries));
  say("network", networkWords());
  part("sign-in").hidden = entries.length === 0 || !outbox.state.signedOut;
  part("send").hidden = entries.length === 0;
  part("list").hidden = entries.length === 0;
  part("entries").replaceChildren(...entries.map((entry, i) => line(entry, entries, i)));
  if (entries.some((entry) => entry.refused)) {
    part("list").open = true;
  }
}

/** Set only when it differs, so that a screen reader says it once. */
function say(name, words) {
  if (part(name).textContent !== words) {
    part(name).textContent = words;
  }
}

function networkWords() {
  if (!network.isAway() || !isBench) {
    return "";
  }
  return "The network is away. " + (keptAt ? `This page is as it was on ${inWords(keptAt)}.` : "What you log waits here.");
}

function line(entry, entries, i) {
  const item = part("entry").content.cloneNode(true).firstElementChild;
  const piece = (name) => item.querySelector(`[data-part=${name}]`);
  const { words, refused } = fate(entry, entries.slice(0, i), outbox.state);
  const later = entries.slice(i + 1).some((other) => other.piece === entry.piece);
  piece("words").textContent = `${entry.label}: ${entry.words}`;
  piece("said").textContent = said(entry);
  piece("fate").textContent = words;
  piece("fate").classList.toggle("error", refused);
  piece("piece").href = `${root}pieces/${entry.piece}`;
  offer(piece("again"), refused, () => outbox.tryAgain(entry));
  offer(piece("drop"), refused, () => outbox.drop(entry.number));
  offer(piece("take-back"), !refused && !later, () => outbox.drop(entry.number));
  return item;
}

function said(entry) {
  const { seen, ...typed } = entry.fields;
  const facts = Object.entries(typed).filter(([, value]) => value !== "");
  return [`by ${entry.account}`, `done ${inWords(entry.doneAt)}`]
    .concat(facts.map(([name, value]) => `${name.replace(/^check\./, "")} ${value}`))
    .join(", ");
}

function offer(button, shown, act) {
  button.hidden = !shown;
  button.addEventListener("click", act);
}

export function begin() {
  part("send").addEventListener("click", () => outbox.sendNow());
  // an entry that goes through at once need not be announced
  outbox.onChange((what) => (what.kept ? setTimeout(draw, QUIET_MS) : draw()));
  network.onChange(draw);
}

/** For a page that cannot work offline at all. */
export function sayNotSecure() {
  part("not-secure").hidden = !isBench;
}

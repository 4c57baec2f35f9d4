// What comes next on a piece whose last entry still waits (templates in bench/_offline.html).

import { piecePage } from "./site.js";

const rows = () => [...piecePage.querySelectorAll("tr[data-stage]")];

/** Puts the next step in the place of what the server offered, or that back. */
export function showNextStep(entries) {
  if (!piecePage) {
    return;
  }
  const spot = piecePage.querySelector("[data-part=next-step]");
  const mine = entries.filter((entry) => entry.piece === piecePage.dataset.piece);
  if (mine.at(-1)?.key === spot.dataset.after) {
    return; // what is being typed there stays
  }
  spot.dataset.after = mine.at(-1)?.key ?? "";
  spot.replaceChildren(...(mine.length > 0 ? [step(mine)] : []));
  piecePage.querySelector("[data-part=as-served]").hidden = mine.length > 0;
  head(mine.length);
}

/** What the server wrote over the page was true before the entries that wait. */
function head(waiting) {
  const heading = piecePage.querySelector("h1");
  heading.dataset.served ??= heading.textContent;
  heading.textContent = waiting > 0 ? "Not sent yet" : heading.dataset.served;
}

function step(mine) {
  const last = mine.at(-1);
  if (mine.some((entry) => entry.refused)) {
    return sentence("An entry on this piece was refused. Settle it above before you go on.");
  }
  const at = rows().findIndex((row) => row.dataset.stage === last.stage);
  if (last.action === "freeze") {
    return sentence("It is in the freezer. Nothing is formed until it is out.");
  }
  const row = last.action === "start" ? rows()[at] : rows()[at + 1];
  if (at < 0 || !row) {
    return sentence("The next step is known when the network is back.");
  }
  if (last.action === "start") {
    return row.dataset.alone === "true"
      ? form("finish", row, last)
      : sentence(`“${row.dataset.words}” is finished when the network is back: it is checked first.`);
  }
  return row.dataset.inspected === "true"
    ? sentence("Next it is inspected, when the network is back.")
    : form("start", row, last);
}

function form(action, row, last) {
  const made = document.getElementById("offline-" + action).content.cloneNode(true).firstElementChild;
  const verb = action === "start" ? "Start" : "Finish";
  made.action = last.address.replace(/stages\/.*$/, `stages/${row.dataset.stage}/${action}`);
  made.querySelector("[data-part=caution]").textContent = row.dataset.caution;
  made.querySelector("aside").hidden = row.dataset.caution === "";
  made.querySelector("[type=submit]").textContent = `${verb} ${row.dataset.words}`;
  return made;
}

function sentence(words) {
  const said = document.createElement("p");
  said.textContent = words;
  return said;
}

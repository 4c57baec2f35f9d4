// Entries go through the outbox; what must not wait is switched off while the network is away.

import * as network from "./network.js";
import * as outbox from "./outbox.js";
import * as store from "./store.js";
import { canWait, entryFrom } from "./entry.js";

const SENTENCE = "needs-network";

export function begin() {
  document.addEventListener("submit", (event) => {
    if (canWait(event.target)) {
      event.preventDefault();
      enter(event.target);
    }
  });
  network.onChange(switchOthers);
  switchOthers(network.isAway());
}

async function enter(form) {
  const button = form.querySelector("[type=submit]");
  button.disabled = true;
  try {
    const entry = entryFrom(form);
    const number = await outbox.keep(entry);
    await follow(form, entry, number, (await outbox.sendNow()).get(number));
  } finally {
    button.disabled = false;
  }
}

/** Sent: on to the page that follows. Refused at once: the page itself says why, nothing waits. */
async function follow(form, entry, number, outcome) {
  if (outcome?.sent) {
    location.assign(outcome.sent);
  } else if (outcome?.refused && (await isAlone(entry, number))) {
    sendPlainly(form, number, outcome.token);
  }
}

async function isAlone(entry, number) {
  return (await store.all()).every((other) => other.number === number || other.piece !== entry.piece);
}

/** As without a script; a form made here has no token, and its entry stays in the strip. */
async function sendPlainly(form, number, token) {
  const field = form.elements[token.field];
  if (field) {
    await store.remove(number);
    field.value = token.token;
    form.submit();
  }
}

function switchOthers(away) {
  const forms = [...document.querySelectorAll("main.bench form")].filter((form) => !canWait(form));
  forms.forEach((form) => switchForm(form, away));
  document
    .querySelectorAll("main.bench a.button[href*='/inspection'], main.bench a[data-href]")
    .forEach((link) => switchLink(link, away));
}

function switchForm(form, away) {
  form.querySelectorAll("[type=submit]").forEach((button) => {
    button.disabled = away;
    explain(button, away);
  });
}

/** A link without an address cannot be followed. */
function switchLink(link, away) {
  if (away && link.hasAttribute("href")) {
    link.dataset.href = link.getAttribute("href");
    link.removeAttribute("href");
    link.setAttribute("role", "link");
    link.setAttribute("aria-disabled", "true");
  } else if (!away && link.dataset.href) {
    link.setAttribute("href", link.dataset.href);
    delete link.dataset.href;
    link.removeAttribute("role");
    link.removeAttribute("aria-disabled");
  }
  explain(link, away);
}

function explain(control, away) {
  const said = control.nextElementSibling?.classList.contains(SENTENCE) ? control.nextElementSibling : null;
  if (away && !said) {
    const words = document.createElement("p");
    words.className = SENTENCE + " hint";
    words.textContent = "Needs the network.";
    control.after(words);
  } else if (!away) {
    said?.remove();
  }
}

// Sends what waits: in order, one at a time, in one tab at a time, until it is answered.

import * as store from "./store.js";
import * as network from "./network.js";
import { Away, SignedOut, freshToken, send } from "./send.js";

const FIRST_DELAY_MS = 5000;
const LONGEST_DELAY_MS = 300000;

const tabs = new BroadcastChannel("entries");
const listeners = [];
let delay = FIRST_DELAY_MS;
let timer = null;

/** What the last try has shown: who is signed in (null before the first), or that nobody is. */
export const state = { account: null, signedOut: false };

/** Tells what has changed: {kept: piece}, {sent: piece}, {tried: true} after a round, or nothing known. */
export const onChange = (listener) => listeners.push(listener);

const tellAll = (what) => listeners.forEach((listener) => listener(what));

function changed(what = {}) {
  tabs.postMessage(what);
  tellAll(what);
}

tabs.onmessage = (event) => tellAll(event.data);

export async function keep(entry) {
  const waiting = await store.all();
  if (waiting.some((other) => other.piece === entry.piece)) {
    delete entry.fields.seen; // the page does not show what those before it will do
  }
  const number = await store.add(entry);
  changed({ kept: entry.piece });
  return number;
}

export async function drop(number) {
  await store.remove(number);
  changed();
  return sendNow();
}

/** The person has read why it was refused, so what they had seen before no longer counts. */
export async function tryAgain(entry) {
  delete entry.refused;
  delete entry.fields.seen;
  await store.put(entry);
  changed();
  return sendNow();
}

/** Sends everything that can be sent; resolves to the outcomes by the number of the entry. */
export function sendNow() {
  clearTimeout(timer);
  return navigator.locks.request("send entries", sendAll);
}

async function sendAll() {
  const outcomes = new Map();
  if ((await store.all()).length > 0 || network.isAway()) {
    try {
      await sendEach(outcomes);
      delay = FIRST_DELAY_MS;
    } catch (failure) {
      notedOr(failure);
    }
    changed({ tried: true });
    tryLater();
  }
  return outcomes;
}

async function sendEach(outcomes) {
  const token = await freshToken();
  network.tell(false);
  Object.assign(state, { account: token.account, signedOut: false });
  const stopped = new Set();
  for (const entry of await store.all()) {
    if (entry.refused || entry.account !== token.account || stopped.has(entry.piece)) {
      stopped.add(entry.piece);
    } else {
      const outcome = await send(entry, token);
      await settle(entry, outcome);
      outcomes.set(entry.number, { ...outcome, token });
      if (outcome.refused) {
        stopped.add(entry.piece);
      }
    }
  }
}

async function settle(entry, outcome) {
  if (outcome.sent) {
    await store.remove(entry.number);
    changed({ sent: entry.piece });
  } else {
    await store.put({ ...entry, refused: outcome.refused });
    changed();
  }
}

function notedOr(failure) {
  if (failure instanceof SignedOut) {
    network.tell(false);
    Object.assign(state, { account: null, signedOut: true });
  } else if (failure instanceof Away) {
    network.tell(true);
  } else {
    throw failure;
  }
}

/** Only what the network keeps back is tried again by itself; the rest waits for a person. */
function tryLater() {
  if (network.isAway()) {
    timer = setTimeout(sendNow, delay);
    delay = Math.min(2 * delay, LONGEST_DELAY_MS);
  }
}

window.addEventListener("online", () => {
  delay = FIRST_DELAY_MS;
  sendNow();
});
document.addEventListener("visibilitychange", () => {
  if (document.visibilityState === "visible") {
    sendNow();
  }
});

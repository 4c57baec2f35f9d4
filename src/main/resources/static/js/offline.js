// Work without the network: begins everything that a page needs for it.

import * as forms from "./forms.js";
import * as network from "./network.js";
import * as outbox from "./outbox.js";
import * as panel from "./panel.js";
import * as store from "./store.js";
import { keepListed, listKept } from "./kept-pages.js";
import { showNextStep } from "./next-step.js";
import { account, isBench, keptAt, piecePage, root } from "./site.js";

const canWorkOffline = window.isSecureContext && "serviceWorker" in navigator && "locks" in navigator;

async function begin() {
  await store.all(); // throws where the browser keeps no database, and the plain forms stay
  panel.begin();
  outbox.onChange(follow);
  if (account) {
    forms.begin();
  }
  if (keptAt) {
    network.tell(true);
  }
  await refresh();
  navigator.serviceWorker.register(root + "service-worker.js", { updateViaCache: "none" });
  await outbox.sendNow();
  await (account && isBench && !network.isAway() ? keepListed() : listKept());
}

async function refresh() {
  await panel.draw();
  showNextStep(await store.all());
}

async function follow(what) {
  if (what.kept) {
    return; // it may go through at once
  }
  const waiting = await store.all();
  showNextStep(waiting);
  const piece = piecePage?.dataset.piece;
  const allSent = what.sent && what.sent === piece && waiting.every((entry) => entry.piece !== piece);
  const networkIsBack = what.tried && keptAt && !network.isAway();
  if (allSent || networkIsBack) {
    reloadUnlessTyping();
  }
}

function reloadUnlessTyping() {
  const typed = [...document.querySelectorAll("main input:not([type=hidden])")].some(
    (field) => field.value !== field.defaultValue || field.checked !== field.defaultChecked,
  );
  if (!typed) {
    location.reload();
  }
}

if (canWorkOffline) {
  begin();
} else if (!window.isSecureContext) {
  panel.sayNotSecure();
}

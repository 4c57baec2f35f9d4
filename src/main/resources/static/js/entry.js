// An entry as it waits: what was said, about which piece, by whom, when.

import { account, piecePage } from "./site.js";

const CAN_WAIT = /\/pieces\/(\d+)\/stages\/([^/]+)\/(start|finish|freeze|thaw)$/;

const parts = (form) => CAN_WAIT.exec(new URL(form.action).pathname);

/** Starting and finishing a stage, and the freezer, can wait; a check, an inspection or taking back cannot. */
export const canWait = (form) => form.method === "post" && parts(form) !== null;

export function entryFrom(form) {
  const [, piece, stage, action] = parts(form);
  const fields = Object.fromEntries(new FormData(form));
  delete fields._csrf;
  const words = form.querySelector("[type=submit]").textContent.trim();
  return {
    key: crypto.randomUUID(),
    doneAt: Date.now(),
    account,
    piece,
    stage,
    action,
    address: new URL(form.action).pathname,
    words,
    label: piecePage?.dataset.label ?? "",
    fields,
  };
}

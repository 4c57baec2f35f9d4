// Sends one entry and reads the answer. Throws Away or SignedOut when there is no answer to read.

import { root } from "./site.js";

const PATIENCE_MS = 15000;
const NOT_NOW = [429, 502, 503, 504];

export class Away extends Error {}
export class SignedOut extends Error {}

/** Whatever goes wrong on the way, the entry may or may not have arrived; its key makes both safe. */
async function ask(address, options) {
  let response;
  try {
    response = await fetch(address, { ...options, signal: AbortSignal.timeout(PATIENCE_MS) });
  } catch {
    throw new Away();
  }
  if (NOT_NOW.includes(response.status)) {
    throw new Away();
  }
  return response;
}

/** A fresh token for the form, and who is signed in. */
export async function freshToken() {
  const response = await ask(root + "bench/token", {
    headers: { Accept: "application/json", "X-Requested-With": "XMLHttpRequest" },
    cache: "no-store",
    redirect: "manual",
  });
  if (response.status === 401) {
    throw new SignedOut();
  }
  try {
    const token = await response.json();
    return { ...token, aheadMs: Date.parse(token.now) - Date.now() };
  } catch {
    throw new Away(); // something else than this installation has answered
  }
}

/** {sent: address of the page that follows} or {refused: the server's sentence}. */
export async function send(entry, token) {
  const body = new URLSearchParams(entry.fields);
  body.set("entryKey", entry.key);
  body.set("doneAt", new Date(entry.doneAt + token.aheadMs).toISOString());
  body.set(token.field, token.token);
  const response = await ask(entry.address, {
    method: "POST",
    body,
    headers: { Accept: "text/html, application/problem+json" },
  });
  const page = new URL(response.url).pathname;
  if (page === root + "sign-in") {
    throw new SignedOut();
  }
  if (response.ok && page === `${root}pieces/${entry.piece}`) {
    return { sent: page };
  }
  return { refused: await sentence(response) };
}

async function sentence(response) {
  let problem;
  try {
    problem = await response.json();
  } catch {
    throw new Away();
  }
  if (problem.type?.endsWith(":quicker")) {
    throw new Away(); // two changed the piece at the same moment; the next try decides
  }
  return problem.detail;
}

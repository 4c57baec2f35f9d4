// Has the bench and the pieces that it lists kept before they are needed.

import { root } from "./site.js";

const KEPT = /^(builds\/\d+\/bench|pieces\/\d+)$/;
const FRESH_MS = 600000;

const path = (address) => new URL(address, location.href).pathname;
const isKept = (address) => KEPT.test(path(address).slice(root.length));

/** One after the other, so that a weak network is left to the person. */
export async function keepListed() {
  await navigator.serviceWorker.ready;
  const links = [...document.querySelectorAll("main.bench a[href]")].map((link) => link.href);
  const wanted = new Set([location.href, ...links].filter(isKept).map(path));
  for (const address of wanted) {
    if (!(await isFresh(address))) {
      await fetch(address, { headers: { Accept: "text/html" } }).catch(() => {});
    }
  }
}

async function isFresh(address) {
  const kept = await (await caches.open("pages")).match(address);
  return kept !== undefined && Date.now() - Date.parse(kept.headers.get("Date")) < FRESH_MS;
}

/** On the page that stands in for one that is not kept: those that are. */
export async function listKept() {
  const list = document.querySelector("[data-part=kept-pages]");
  if (!list) {
    return;
  }
  const pages = await caches.open("pages");
  for (const { url } of (await pages.keys()).filter((request) => isKept(request.url))) {
    const html = new DOMParser().parseFromString(await (await pages.match(url)).text(), "text/html");
    const link = document.createElement("a");
    link.href = url;
    link.textContent = html.title.replace(/ · .*/, "");
    const item = document.createElement("li");
    item.append(link);
    list.append(item);
  }
}

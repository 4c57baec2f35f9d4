// Where things are, and whose page this is.

export const root = new URL("../", import.meta.url).pathname;

/** The account that this page was made for; null on a page for nobody in particular. */
export const account = document.querySelector("meta[name=account]")?.content ?? null;

/** The time at which a kept page was true; null for a page that has just come from the server. */
export const keptAt = document.documentElement.dataset.kept ? new Date(document.documentElement.dataset.kept) : null;

/** The piece that this page is about; null on other pages. */
export const piecePage = document.querySelector("main[data-piece]");

/** A page on which work is logged. */
export const isBench = document.querySelector("main.bench") !== null;

/** "Tue 14:10", as the server writes times. */
export function inWords(time) {
  return new Intl.DateTimeFormat("en-GB", { weekday: "short", hour: "2-digit", minute: "2-digit" })
    .format(time)
    .replace(",", "");
}

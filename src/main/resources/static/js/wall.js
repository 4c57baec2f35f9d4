// The wall board is asked for anew by htmx; this says so when the answers fail to come.

const PATIENCE_MS = 15000;

const part = (name) => document.querySelector(`.wall [data-part=${name}]`);
let fresh = performance.now();
let failed = false;

document.body.addEventListener("htmx:afterSwap", () => {
  fresh = performance.now();
  noted(false);
});

document.body.addEventListener("htmx:responseError", (event) => {
  part("sign-in").hidden = event.detail.xhr.status !== 401;
  noted(true);
});

document.body.addEventListener("htmx:sendError", () => noted(true));

setInterval(say, 1000);

function noted(failure) {
  failed = failure;
  say();
}

function say() {
  part("since").textContent = part("as-of").textContent;
  part("stale").hidden = !failed && performance.now() - fresh < PATIENCE_MS;
}

// Whether the network is there, as far as this page can tell.

let gone = !navigator.onLine;
const listeners = [];

export const isAway = () => gone;

export const onChange = (listener) => listeners.push(listener);

export function tell(away) {
  if (away !== gone) {
    gone = away;
    listeners.forEach((listener) => listener(away));
  }
}

window.addEventListener("offline", () => tell(true));

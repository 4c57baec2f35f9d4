// What becomes of an entry that waits, in words.

/**
 * @param entry one of them
 * @param before the entries that were made earlier
 * @param state of the outbox
 * @returns {{words: string, refused: boolean}}
 */
export function fate(entry, before, state) {
  const said = (words, refused = false) => ({ words, refused });
  if (entry.refused) {
    return said(entry.refused, true);
  }
  if (state.account && entry.account !== state.account) {
    return said(`Made by ${entry.account}, and sent only when ${entry.account} signs in here.`);
  }
  const earlier = before.filter((other) => other.piece === entry.piece);
  if (earlier.some((other) => other.refused)) {
    return said("Waits for the refused entry before it.");
  }
  return said(earlier.length > 0 ? "Waits for the entry before it." : "Waits to be sent.");
}

/** The one heading over all of them. */
export function count(entries) {
  const refused = entries.filter((entry) => entry.refused).length;
  const waits = entries.length - refused;
  const sentences = [];
  if (waits > 0) {
    sentences.push(waits === 1 ? "1 entry waits to be sent" : `${waits} entries wait to be sent`);
  }
  if (refused > 0) {
    sentences.push(refused === 1 ? "1 entry was refused" : `${refused} entries were refused`);
  }
  return sentences.join("; ");
}

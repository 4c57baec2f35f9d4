// The entries that wait, in the browser's own database. Sign-out does not touch them.

const NAME = "flangewright";
const ENTRIES = "entries";

let opened = null;

function open() {
  opened ??= new Promise((resolve, reject) => {
    const request = indexedDB.open(NAME, 1);
    request.onupgradeneeded = () =>
      request.result.createObjectStore(ENTRIES, { keyPath: "number", autoIncrement: true });
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  return opened;
}

/** Resolves once the change is on the disk, so that nothing is called kept which is not. */
async function change(work) {
  const transaction = (await open()).transaction(ENTRIES, "readwrite", { durability: "strict" });
  const request = work(transaction.objectStore(ENTRIES));
  return new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve(request.result);
    transaction.onabort = () => reject(transaction.error);
  });
}

/** All of them, oldest first. */
export async function all() {
  const request = (await open()).transaction(ENTRIES).objectStore(ENTRIES).getAll();
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

/** Keeps a new entry; resolves to its number, which gives the order. */
export const add = (entry) => change((entries) => entries.add(entry));

export const put = (entry) => change((entries) => entries.put(entry));

export const remove = (number) => change((entries) => entries.delete(number));

// @ts-check
// Without signal a form is kept on this phone and sent when the signal is back. Its entry has an identity of its own, so the book
// writes it once however often it arrives; it tells how long it waited, not what this phone's clock says. Without this file forms post as usual.
// Forms of one row (the boards of a tally) are sent in the order they were pressed: one that waits makes the next ones wait, one that is refused stops its row.
const shelf = "boardwright-waiting";
const leaves = "boardwright-leaves";
const probe = "/_content/Boardwright.Web/mark.svg";

/** @typedef {{ action: string, fields: [string, string][], words: string, at: number, row?: string, refused?: string, meant?: [string, string][] }} Kept */

/** @returns {Kept[]} */
const kept = () => JSON.parse(localStorage.getItem(shelf) ?? "[]");

/** @param {Kept[]} all */
function keep(all) {
  localStorage.setItem(shelf, JSON.stringify(all));
  show();
}

/** @param {Kept} one @param {Kept} other */
const isSame = (one, other) => one.at === other.at && one.action === other.action && entryOf(one) === entryOf(other);

/** @param {Kept} one */
const entryOf = (one) => one.fields.find(([name]) => name === "_entry")?.[1];

/** How many wait, in the head of every page; each by name on the write page. */
function show() {
  const all = kept();
  const words = [all.length > 0 ? `${all.length} waiting` : "", navigator.onLine ? "" : "no signal"].filter((word) => word !== "").join(", ");
  for (const head of /** @type {NodeListOf<HTMLElement>} */ (document.querySelectorAll("[data-waiting]"))) {
    head.hidden = words === "";
    head.textContent = words;
    head.closest(".now")?.classList.toggle("waits", words !== "");
  }

  const list = /** @type {HTMLElement | null} */ (document.querySelector("[data-waiting-list]"));
  list?.replaceChildren(...all.map(line));
  if (list) {
    list.hidden = all.length === 0;
  }

  document.dispatchEvent(new CustomEvent("boardwright-waiting", { detail: { all, sending } }));
}

/** @param {Kept} one */
function line(one) {
  const words = document.createElement("p");
  words.append(`${one.words}, ${new Date(one.at).toLocaleTimeString([], { hour: "2-digit", minute: "2-digit" })}. ${one.refused ? `Not taken: ${one.refused} ` : ""}`);
  if (one.refused) {
    const again = document.createElement("a");
    again.href = one.action;
    again.textContent = "Write it again";
    const drop = document.createElement("button");
    drop.type = "button";
    drop.className = "key alt";
    drop.textContent = "Throw this one away";
    drop.addEventListener("click", () => { throwAway(one); sendAll(); });
    words.append(again, " ", ...(one.meant ?? []).map(([meant, label]) => meantKey(one, meant, label)), drop);
  }

  return words;
}

/** A key of what may have been meant: the form goes again with it. @param {Kept} one @param {string} meant @param {string} label */
function meantKey(one, meant, label) {
  const key = document.createElement("button");
  key.type = "button";
  key.className = "key alt";
  key.textContent = label;
  key.addEventListener("click", () => {
    const field = meant.slice(0, meant.indexOf("="));
    const fields = /** @type {[string, string][]} */ (one.fields.map(([name, value]) => [name, name === field ? meant.slice(field.length + 1) : value]));
    keep(kept().map((other) => (isSame(one, other) ? { ...other, fields, refused: undefined, meant: undefined } : other)));
    sendAll();
  });
  return key;
}

/** @param {Kept} one */
const throwAway = (one) => keep(kept().filter((other) => !isSame(one, other)));

/** True when the yard's machine answers; a phone that believes in its signal may still be behind a shed. @param {number} most milliseconds to wait */
async function isReached(most) {
  try {
    return navigator.onLine && (await fetch(probe, { cache: "no-store", signal: AbortSignal.timeout(most) })).ok;
  } catch {
    return false;
  }
}

/** Sends one: its page is asked first for a token that is still good. @param {Kept} one @returns {Promise<{ refused: string, meant: [string, string][] } | null>} what was wrong with it, and what may have been meant */
async function send(one) {
  const page = new DOMParser().parseFromString(await (await fetch(one.action, { cache: "no-store" })).text(), "text/html");
  const token = /** @type {HTMLInputElement | null} */ (page.querySelector('input[name="__RequestVerificationToken"]'))?.value ?? "";
  const fields = new URLSearchParams(one.fields.map(([name, value]) =>
    name === "__RequestVerificationToken" ? [name, token] : name === "_waited" ? [name, String(Math.round((Date.now() - one.at) / 1000))] : [name, value]));
  const answer = await fetch(one.action, { method: "POST", body: fields });
  if (answer.redirected) {
    return null;
  }

  const said = new DOMParser().parseFromString(await answer.text(), "text/html");
  const keys = /** @type {HTMLButtonElement[]} */ ([...said.querySelectorAll('button[name="_meant"]')]);
  const why = said.querySelector(".meant")?.previousElementSibling ?? said.querySelector(".refusal");
  const words = [...(why?.childNodes ?? [])].map((part) => part.textContent?.trim() ?? "").filter((part) => part !== "").join(". ");
  return { refused: words === "" ? `the book answered ${answer.status}` : `${words}.`, meant: keys.map((key) => [key.value, key.textContent ?? ""]) };
}

let sending = false;

/** The first that may go now: not refused, and nothing of its row refused before it. */
function next() {
  const stopped = new Set(kept().filter((one) => one.refused && one.row).map((one) => one.row));
  return kept().find((one) => !one.refused && !(one.row && stopped.has(one.row)));
}

async function sendAll() {
  if (sending || next() === undefined || !(await isReached(4000)) || sending) {
    return;
  }

  sending = true;
  /** @type {Set<string>} */
  const rows = new Set();
  try {
    for (let one = next(); one !== undefined; one = next()) {
      show();
      const sent = one;
      const wrong = await send(sent);
      keep(wrong === null ? kept().filter((other) => !isSame(sent, other)) : kept().map((other) => (isSame(sent, other) ? { ...other, ...wrong } : other)));
      if (sent.row) {
        rows.add(sent.row);
      }
    }
  } catch {
    // No signal after all: they wait on.
  } finally {
    sending = false;
    show();
    if (rows.size > 0) {
      document.dispatchEvent(new CustomEvent("boardwright-sent", { detail: { rows: [...rows] } }));
    }
  }
}

/** @param {HTMLFormElement} form @param {HTMLElement | null} submitter */
function shelve(form, submitter) {
  const fields = /** @type {[string, string][]} */ ([...new FormData(form, submitter)].map(([name, value]) => [name, String(value)]));
  const row = form.dataset.row;
  const words = form.dataset.words ?? form.dataset.keeps ?? "an entry";
  keep([...kept(), { action: row ? location.pathname + location.search : location.pathname, fields, words: row ? `${words}, ${row}` : words, at: Date.now(), row }]);
  if (row) {
    form.dispatchEvent(new CustomEvent("boardwright-kept", { bubbles: true }));
    return;
  }

  const said = document.createElement("p");
  said.setAttribute("role", "status");
  said.className = "kept";
  said.textContent = `Kept on this phone: ${form.dataset.keeps}. It is sent when the signal is back.`;
  form.replaceWith(said);
}

document.addEventListener("submit", async (event) => {
  const form = event.target;
  if (!(form instanceof HTMLFormElement) || form.dataset.keeps === undefined || form.dataset.reached !== undefined) {
    return;
  }

  event.preventDefault();
  if (form.dataset.busy !== undefined) {
    return;
  }

  form.dataset.busy = "";
  const submitter = /** @type {HTMLElement | null} */ (event.submitter);
  const row = form.dataset.row;
  const waits = row !== undefined && kept().some((one) => one.row === row);
  if (!waits && (await isReached(row ? 1500 : 4000))) {
    form.dataset.reached = "";
    form.requestSubmit(/** @type {HTMLButtonElement | null} */ (submitter));
  } else {
    shelve(form, submitter);
  }

  delete form.dataset.busy;
  if (waits) {
    sendAll();
  }
});

document.addEventListener("boardwright-drop", (event) => throwAway(/** @type {CustomEvent<Kept>} */ (event).detail));
addEventListener("online", () => { show(); sendAll(); });
addEventListener("offline", show);
show();
sendAll();

// Pages once open, and the forms most likely needed, can be opened again without signal. Browsers allow this on the machine itself and over https only.
if ("serviceWorker" in navigator) {
  navigator.serviceWorker.register("/_content/Boardwright.Web/js/leaves.js", { scope: "/" }).catch(() => undefined);
  const ready = [...document.querySelectorAll("a[data-keep-ready]")].map((link) => /** @type {HTMLAnchorElement} */ (link).href);
  if (ready.length > 0 && navigator.onLine) {
    caches.open(leaves).then((shelfOfPages) => shelfOfPages.addAll(ready)).catch(() => undefined);
  }
}

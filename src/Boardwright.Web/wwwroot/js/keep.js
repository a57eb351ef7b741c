// @ts-check
// Without signal a form is kept on this phone and sent when the signal is back. Its entry has an identity of its own, so the book
// writes it once however often it arrives; it tells how long it waited, not what this phone's clock says. Without this file forms post as usual.
const shelf = "boardwright-waiting";
const leaves = "boardwright-leaves";
const probe = "/_content/Boardwright.Web/mark.svg";

/** @typedef {{ action: string, fields: [string, string][], words: string, at: number, refused?: string }} Kept */

/** @returns {Kept[]} */
const kept = () => JSON.parse(localStorage.getItem(shelf) ?? "[]");

/** @param {Kept[]} all */
function keep(all) {
  localStorage.setItem(shelf, JSON.stringify(all));
  show();
}

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
  list?.replaceChildren(...all.map(row));
  if (list) {
    list.hidden = all.length === 0;
  }
}

/** @param {Kept} one */
function row(one) {
  const line = document.createElement("p");
  line.append(`${one.words}, ${new Date(one.at).toLocaleTimeString([], { hour: "2-digit", minute: "2-digit" })}. ${one.refused ? `Not taken: ${one.refused} ` : ""}`);
  if (one.refused) {
    const again = document.createElement("a");
    again.href = one.action;
    again.textContent = "Write it again";
    const drop = document.createElement("button");
    drop.type = "button";
    drop.className = "key alt";
    drop.textContent = "Throw this one away";
    drop.addEventListener("click", () => keep(kept().filter((other) => other.at !== one.at || other.action !== one.action)));
    line.append(again, " ", drop);
  }

  return line;
}

/** True when the yard's machine answers; a phone that believes in its signal may still be behind a shed. */
async function isReached() {
  try {
    return navigator.onLine && (await fetch(probe, { cache: "no-store", signal: AbortSignal.timeout(4000) })).ok;
  } catch {
    return false;
  }
}

/** Sends one: its page is asked first for a token that is still good. @param {Kept} one @returns {Promise<string | null>} what was wrong with it */
async function send(one) {
  const page = new DOMParser().parseFromString(await (await fetch(one.action, { cache: "no-store" })).text(), "text/html");
  const token = /** @type {HTMLInputElement | null} */ (page.querySelector('input[name="__RequestVerificationToken"]'))?.value ?? "";
  const fields = new URLSearchParams(one.fields.map(([name, value]) =>
    name === "__RequestVerificationToken" ? [name, token] : name === "_waited" ? [name, String(Math.round((Date.now() - one.at) / 1000))] : [name, value]));
  const answer = await fetch(one.action, { method: "POST", body: fields });
  if (answer.redirected) {
    return null;
  }

  const said = new DOMParser().parseFromString(await answer.text(), "text/html").querySelector(".refusal");
  return said?.textContent ?? `the book answered ${answer.status}`;
}

let sending = false;

async function sendAll() {
  if (sending || kept().every((one) => one.refused) || !(await isReached())) {
    return;
  }

  sending = true;
  try {
    for (const one of kept().filter((other) => !other.refused)) {
      const wrong = await send(one);
      const others = kept().filter((other) => other.at !== one.at || other.action !== one.action);
      keep(wrong === null ? others : [...others, { ...one, refused: wrong }]);
    }
  } catch {
    // No signal after all: they wait on.
  } finally {
    sending = false;
  }
}

/** @param {HTMLFormElement} form @param {HTMLElement | null} submitter */
function shelve(form, submitter) {
  const fields = /** @type {[string, string][]} */ ([...new FormData(form, submitter)].map(([name, value]) => [name, String(value)]));
  keep([...kept(), { action: location.pathname, fields, words: form.dataset.keeps ?? "an entry", at: Date.now() }]);
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
  const submitter = /** @type {HTMLElement | null} */ (event.submitter);
  if (await isReached()) {
    form.dataset.reached = "";
    form.requestSubmit(/** @type {HTMLButtonElement | null} */ (submitter));
  } else {
    shelve(form, submitter);
  }
});

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

// @ts-check
// The pads' small comforts. Everything posts without this file: choices are radio buttons, figures are plain inputs.

/** @param {HTMLFormElement} form Shows the width as it is pressed: "4" and "¾" become "4¾". */
function showWidth(form) {
  const shown = form.querySelector("[data-width-shown]");
  const label = (/** @type {string} */ name) =>
    form.querySelector(`input[name="${name}"]:checked`)?.parentElement?.textContent?.trim() ?? "";
  const whole = label("width");
  const part = label("part");
  if (shown) {
    shown.textContent = whole === "" ? "?" : whole + (part === "even" ? "" : part);
  }
}

for (const form of /** @type {NodeListOf<HTMLFormElement>} */ (document.querySelectorAll("form[data-tally]"))) {
  form.addEventListener("change", () => showWidth(form));
  showWidth(form);
}

/** @typedef {{ fields: [string, string][], words: string, at: number, row?: string, refused?: string }} Waiting */

/** @param {HTMLFormElement} form What a length key writes, before it is pressed: "7¾ in × 10 ft". @param {HTMLElement | null} key */
function boardWords(form, key) {
  if (key?.dataset.words) {
    return key.dataset.words;
  }

  const typed = (/** @type {string} */ name) => /** @type {HTMLInputElement | null} */ (form.querySelector(`input[name="${name}"]`))?.value.trim() ?? "";
  const width = typed("other_width") || form.querySelector("[data-width-shown]")?.textContent || "?";
  const length = (key instanceof HTMLButtonElement && key.value) || typed("other_length") || "?";
  return `${width} ${typed("width_unit")} × ${length} ${typed("length_unit")}`;
}

/** An identity for the next press; a page served over plain http has no randomUUID. */
function newEntry() {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = (bytes[6] & 0x0f) | 0x40;
  bytes[8] = (bytes[8] & 0x3f) | 0x80;
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join("-");
}

/** What of this tally waits on the phone: the next board's number, how many wait, and the last press with its undo. @param {HTMLFormElement} form @param {Waiting[]} all @param {boolean} sending */
function showRow(form, all, sending) {
  const mine = all.filter((one) => one.row === form.dataset.row);
  const back = mine.filter((one) => one.words.startsWith("taking back")).length;
  const boards = mine.filter((one) => one.words.startsWith("board")).length;
  const last = mine.at(-1);
  const [number, waiting, box] = [form.querySelector("[data-board]"), form.querySelector("[data-waiting-boards]"), /** @type {HTMLElement | null} */ (document.querySelector("[data-waiting-last]"))];
  if (number && waiting && box) {
    number.textContent = String(Number(form.dataset.boards) + boards - back + 1);
    waiting.textContent = mine.length > 0 ? `, ${mine.length} waiting` : "";
    box.hidden = last === undefined;
    const [words, undo] = [box.querySelector("p"), box.querySelector("button")];
    if (last && words && undo) {
      words.textContent = `Last: ${last.words.replace(`, ${last.row}`, "")}. ${last.refused ? `Not taken: ${last.refused}` : "Waiting on this phone."}`;
      undo.disabled = sending;
      undo.onclick = () => document.dispatchEvent(new CustomEvent("boardwright-drop", { detail: last }));
    }
  }

  // What the book knows as the last board is not the last one pressed.
  for (const same of /** @type {NodeListOf<HTMLElement>} */ (form.querySelectorAll("[data-same]"))) {
    same.hidden = mine.length > 0;
  }

  // The book's own last line would take back another board than the last pressed one.
  for (const line of /** @type {NodeListOf<HTMLElement>} */ (document.querySelectorAll("form.undo[data-row]"))) {
    line.hidden = mine.length > 0;
  }
}

for (const form of /** @type {NodeListOf<HTMLFormElement>} */ (document.querySelectorAll("form[data-tally][data-row]"))) {
  form.addEventListener("submit", (event) => { form.dataset.words = `board ${boardWords(form, /** @type {SubmitEvent} */ (event).submitter)}`; }, { capture: true });
  document.addEventListener("boardwright-waiting", (event) => {
    const { all, sending } = /** @type {CustomEvent<{ all: Waiting[], sending: boolean }>} */ (event).detail;
    showRow(form, all, sending);
  });
  document.addEventListener("boardwright-kept", (event) => {
    const sent = /** @type {HTMLFormElement} */ (event.target);
    const entry = /** @type {HTMLInputElement | null} */ (sent.querySelector('input[name="_entry"]'));
    if (entry) {
      entry.value = newEntry();
    }

    if (sent === form) {
      form.reset();
      showWidth(form);
    }
  });

  // Sent: the book's own numbers again, unless somebody is in the middle of a board.
  document.addEventListener("boardwright-sent", (event) => {
    const { rows } = /** @type {CustomEvent<{ rows: string[] }>} */ (event).detail;
    if (rows.includes(form.dataset.row ?? "") && form.querySelector('input[name="width"]:checked') === null) {
      location.replace(location.href);
    }
  });
}

/** @param {HTMLInputElement} field Asks at once when a figure is out of trend; the server decides. */
function askTrend(field) {
  const value = Number(field.value.replace(",", ""));
  const low = Number(field.dataset.low ?? "NaN");
  const high = Number(field.dataset.high ?? "NaN");
  const finished = field.value.length > 0 && !Number.isNaN(value) && document.activeElement !== field;
  const trend = /** @type {HTMLElement | null} */ (field.closest(".pad-field")?.querySelector("[data-trend]"));
  if (trend) {
    trend.hidden = !finished || !(value < low || value > high);
  }
}

// As before: the value of the entry before, where it is often the same.
for (const key of /** @type {NodeListOf<HTMLButtonElement>} */ (document.querySelectorAll("button[data-again]"))) {
  key.hidden = false;
  key.addEventListener("click", () => {
    const field = /** @type {HTMLInputElement | null} */ (key.closest(".pad-field")?.querySelector("[data-pad-field]"));
    if (field) {
      field.value = key.dataset.again ?? "";
      field.dispatchEvent(new Event("input", { bubbles: true }));
      askTrend(field);
    }
  });
}

for (const pad of /** @type {NodeListOf<HTMLElement>} */ (document.querySelectorAll("[data-number-pad]"))) {
  const form = pad.closest("form");
  const fields = /** @type {HTMLInputElement[]} */ ([...(form?.querySelectorAll("[data-pad-field]") ?? [])]);
  /** @type {HTMLInputElement | undefined} */
  let inHand = fields.find((field) => field.value === "") ?? fields[0];
  if (fields.length === 0) {
    continue;
  }

  pad.hidden = false;
  for (const field of fields) {
    field.inputMode = "none";
    field.addEventListener("focus", () => { inHand = field; });
    field.addEventListener("blur", () => askTrend(field));
  }

  pad.addEventListener("click", (event) => {
    const key = event.target instanceof Element ? event.target.closest("button")?.dataset.key : undefined;
    if (key === undefined || inHand === undefined) {
      return;
    }

    if (key === "⌫") {
      inHand.value = inHand.value.slice(0, -1);
    } else if (key !== "." || !inHand.value.includes(".")) {
      inHand.value += key;
    }

    inHand.dispatchEvent(new Event("input", { bubbles: true }));
    askTrend(inHand);
  });
}

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

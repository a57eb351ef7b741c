// @ts-check
// Numbers set aside for this phone. With signal they are asked for; without, the form shows the next that this phone has not given yet.
const shelf = "boardwright-numbers";

/** @typedef {{ left: Record<string, string[]>, spent: string[] }} Numbers */

/** @returns {Numbers} */
const kept = () => JSON.parse(localStorage.getItem(shelf) ?? '{"left":{},"spent":[]}');

/** @param {Numbers} numbers */
const keep = (numbers) => localStorage.setItem(shelf, JSON.stringify(numbers));

/** @returns {string[]} what stands in forms that wait on this phone */
const waiting = () => JSON.parse(localStorage.getItem("boardwright-waiting") ?? "[]").flatMap((/** @type {{ fields: [string, string][] }} */ one) => one.fields.map(([, value]) => value));

/** Shows the next number in every field that asks for a new one and was not touched. */
function suggest() {
  const { left, spent } = kept();
  const given = new Set([...spent, ...waiting()]);
  for (const field of /** @type {NodeListOf<HTMLInputElement>} */ (document.querySelectorAll("input[data-number]"))) {
    const next = left[field.dataset.number ?? ""]?.find((tag) => !given.has(tag));
    if (next !== undefined && field.placeholder !== "" && field.value === "") {
      field.placeholder = next;
    } else if (next !== undefined && field.value === field.defaultValue) {
      field.value = next;
      field.defaultValue = next;
    }
  }
}

/** Asks for numbers where a person is remembered and the page gives some. */
async function ask() {
  if (document.querySelector("main[data-numbers]") === null || document.querySelector("input[data-number], [data-waiting-list]") === null || !navigator.onLine) {
    return;
  }

  try {
    const answer = await fetch("/phone/numbers", { method: "POST", cache: "no-store", signal: AbortSignal.timeout(4000) });
    if (answer.status === 200) {
      keep({ left: (await answer.json()).left, spent: [] });
    }
  } catch {
    // No signal: those kept serve.
  }
}

document.addEventListener("submit", (event) => {
  const fields = event.target instanceof HTMLFormElement ? /** @type {HTMLInputElement[]} */ ([...event.target.querySelectorAll("input[data-number]")]) : [];
  const tags = fields.map((field) => field.value.trim()).filter((tag) => tag !== "");
  if (tags.length > 0) {
    const numbers = kept();
    keep({ ...numbers, spent: [...numbers.spent, ...tags] });
  }
}, { capture: true });

suggest();
ask().then(suggest);

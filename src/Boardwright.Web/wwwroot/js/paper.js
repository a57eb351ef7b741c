// Which paper a phone shows: "noon" in sunlight is one press and is remembered; dawn follows the phone's own setting.
const key = "boardwright-paper";
const root = document.documentElement;

function show() {
  const noon = localStorage.getItem(key) === "noon";
  const dark = matchMedia("(prefers-color-scheme: dark)").matches;
  root.dataset.theme = noon ? "noon" : dark ? "dawn" : "day";
  for (const sun of document.querySelectorAll("[data-sun]")) {
    sun.setAttribute("aria-pressed", String(noon));
  }
}

document.addEventListener("click", (event) => {
  if (event.target instanceof Element && event.target.closest("[data-sun]")) {
    localStorage.setItem(key, localStorage.getItem(key) === "noon" ? "day" : "noon");
    show();
  }
});

matchMedia("(prefers-color-scheme: dark)").addEventListener("change", show);
show();

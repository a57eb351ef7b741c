// @ts-check
// Which paper a phone shows: "noon" in sunlight is one press and is remembered; day and dawn follow the phone's own setting
// in tokens.css. Runs in the head, before anything is painted.
const key = "boardwright-paper";
const isNoon = () => localStorage.getItem(key) === "noon";

function show() {
  if (isNoon()) {
    document.documentElement.dataset.theme = "noon";
  } else {
    delete document.documentElement.dataset.theme;
  }

  for (const sun of document.querySelectorAll("[data-sun]")) {
    sun.setAttribute("aria-pressed", String(isNoon()));
  }
}

document.addEventListener("click", (event) => {
  if (event.target instanceof Element && event.target.closest("[data-sun]")) {
    localStorage.setItem(key, isNoon() ? "as the phone" : "noon");
    show();
  }
});

document.addEventListener("DOMContentLoaded", show);
show();

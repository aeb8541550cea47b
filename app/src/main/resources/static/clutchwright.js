// What forms and pages need beyond HTML. Every page works without this file.
(() => {
  "use strict";

  // Live pieces send the same token as plain forms do.
  const token = document.querySelector('meta[name="form-token"]');
  document.addEventListener("htmx:configRequest", (event) => {
    if (token && event.detail.verb !== "get") {
      event.detail.headers[token.dataset.header] = token.content;
    }
  });

  // A form that is faulty is swapped in as well, so that its faults are read.
  document.addEventListener("htmx:beforeSwap", (event) => {
    if (event.detail.xhr.status === 422) {
      event.detail.shouldSwap = true;
      event.detail.isError = false;
    }
  });

  // A slider says its value: <input type="range" data-shows="id of an output">.
  document.addEventListener("input", (event) => {
    const shown = event.target.dataset && event.target.dataset.shows;
    if (shown) {
      document.getElementById(shown).textContent = event.target.value;
    }
  });

  // A button opens a dialog: <button data-opens="id of a dialog">; one inside closes it.
  document.addEventListener("click", (event) => {
    const opener = event.target.closest("[data-opens]");
    if (opener) {
      document.getElementById(opener.dataset.opens).showModal();
    }
    const closer = event.target.closest("[data-closes]");
    if (closer) {
      closer.closest("dialog").close();
    }
  });

  // "/" goes to the find box, unless somebody is typing.
  document.addEventListener("keydown", (event) => {
    const typing = event.target.closest("input, textarea, select, [contenteditable]");
    const find = document.getElementById("find");
    if (event.key === "/" && !typing && find && !event.ctrlKey && !event.metaKey && !event.altKey) {
      event.preventDefault();
      find.focus();
      find.select();
    }
  });

  // Faults of a form are read first.
  const faults = document.querySelector(".faults");
  if (faults) {
    faults.focus();
  }
})();

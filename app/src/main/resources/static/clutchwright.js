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

  // New figures take the place of the old ones, unless somebody is typing or has something open.
  const isBusy = () => {
    const typing = document.activeElement;
    const fields = [...document.querySelectorAll("main input, main textarea, main select")];
    return document.querySelector("dialog[open], main .faults")
      || (typing && typing.closest("main form"))
      || fields.some((field) => (field.type === "checkbox" || field.type === "radio"
        ? field.checked !== field.defaultChecked
        : field.options
          ? [...field.options].some((option) => option.selected !== option.defaultSelected)
            && field.selectedIndex > 0
          : field.type !== "hidden" && field.value !== field.defaultValue));
  };
  const showFigures = async (place) => {
    const answer = await fetch(location.href, { headers: { Accept: "text/html" } });
    const main = document.getElementById("main");
    if (!answer.ok) {
      place.remove();
      return;
    }
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    const flash = main.querySelector(".flash");
    const open = [...main.querySelectorAll("details[open]")].map((part) => part.id);
    main.replaceChildren(...page.getElementById("main").childNodes);
    if (flash) {
      main.prepend(flash);
    }
    open.filter((id) => id).forEach((id) => {
      const part = document.getElementById(id);
      if (part) {
        part.open = true;
      }
    });
    window.htmx.process(main);
    document.dispatchEvent(new Event("page:renewed"));
  };
  document.addEventListener("htmx:afterSettle", () => {
    const place = document.getElementById("figures");
    if (!place || place.dataset.state !== "fresh") {
      return;
    }
    if (!isBusy()) {
      showFigures(place);
      return;
    }
    const offer = document.createElement("button");
    offer.className = "quiet";
    offer.textContent = "New figures are there: show them";
    offer.addEventListener("click", () => showFigures(place));
    place.replaceChildren(offer);
    place.removeAttribute("data-state");
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

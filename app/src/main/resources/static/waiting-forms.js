// Makes entries of forms that are tapped: <form data-keeps>. See waiting.js.
//
//   data-keeps="once"   a second tap makes no sense while the first one waits
//   data-words="..."    what is done, on the form or on its button
//   data-day="name"     the field of its day; where the form has none, the day of the tap is added
(() => {
  "use strict";

  const { house, all, put, drop, newKey, send, blocked } = window.waiting;
  const drawn = document.querySelector('meta[name="house"]').dataset.today;
  const tapped = new Map(); // the form and the button of each entry that is on its way
  const resumed = new WeakMap(); // the entry that a form puts right
  const kept = () => [...document.querySelectorAll("form[data-keeps]")];

  // Days. The phone's clock only says how many days the page has been open: its date may be wrong.
  const dayNumber = (time) => Math.round(Date.UTC(time.getFullYear(), time.getMonth(), time.getDate()) / 86400000);
  const opened = dayNumber(new Date());
  const dayNow = () => {
    const day = new Date(`${drawn}T00:00:00Z`);
    day.setUTCDate(day.getUTCDate() + dayNumber(new Date()) - opened);
    return day.toISOString().slice(0, 10);
  };
  const dayField = (form) => form.dataset.day && form.elements.namedItem(form.dataset.day);
  // A day that nobody has touched is the day of the tap, also where the page is of yesterday.
  const turnDay = (form) => {
    const field = dayField(form);
    const began = field && (field.dataset.turned || (field.defaultValue === drawn ? drawn : ""));
    if (began && field.value === began && began !== dayNow()) {
      field.value = dayNow();
      field.dataset.turned = field.value;
    }
  };

  const wordsOf = (form, button) => {
    const typed = [...form.elements]
      .filter((field) => field.matches("textarea, input[type=text], input:not([type])") && field.value.trim())
      .map((field) => {
        const unit = field.parentElement.querySelector(".unit");
        return field.value.trim() + (unit ? ` ${unit.textContent}` : "");
      });
    const boxes = [...form.elements].filter((field) => field.type === "checkbox");
    if (boxes.length) {
      typed.unshift(`${boxes.filter((box) => box.checked).length} of ${boxes.length} ticked`);
    }
    const done = (button && button.dataset.words) || form.dataset.words;
    return typed.length ? `${done}: ${typed.join(", ")}` : done;
  };
  const entryOf = (form, button) => {
    turnDay(form);
    const before = resumed.get(form);
    const fields = [...new FormData(form)].filter(([name, value]) => name !== "_csrf" && typeof value === "string");
    if (button && button.name) {
      fields.push([button.name, button.value]);
    }
    const name = form.dataset.day;
    const day = (name && (fields.find(([field]) => field === name) || [])[1])
      || (before ? before.day : dayNow());
    if (name && !dayField(form)) {
      fields.push([name, day]);
    }
    const last = all().pop();
    return {
      key: before ? before.key : newKey(),
      house,
      action: form.getAttribute("action"),
      fields,
      words: wordsOf(form, button),
      at: Math.max(Date.now(), last ? last.at + 1 : 0),
      day,
      tapDay: dayNow(),
      page: location.pathname + location.search,
      tried: false,
      failures: 0,
      refused: "",
    };
  };

  const setBusy = (form, isBusy) => {
    form.toggleAttribute("data-busy", isBusy);
    form.querySelectorAll("button").forEach((button) => { button.disabled = isBusy; });
  };

  document.addEventListener("submit", (event) => {
    const form = event.target;
    if (!form.matches("form[data-keeps]") || !house || event.defaultPrevented) {
      return;
    }
    if (form.hasAttribute("data-busy")) {
      event.preventDefault();
      return;
    }
    const entry = entryOf(form, event.submitter);
    if (put(entry)) {
      event.preventDefault();
      setBusy(form, true);
      tapped.set(entry.key, { form, button: event.submitter });
      send(entry);
      return;
    }
    // Nothing can be kept: said at once; then as without this file, unless that would lose the page.
    blocked();
    if (!navigator.onLine) {
      event.preventDefault();
    }
  });

  // Not sent for now: whoever tapped learns that it is kept, and the form is ready for another.
  document.addEventListener("waiting:left", (event) => {
    for (const key of event.detail) {
      const { form, button } = tapped.get(key) || {};
      tapped.delete(key);
      if (form && form.isConnected) {
        setBusy(form, false);
        if (button && document.activeElement === document.body) {
          button.focus({ preventScroll: true });
        }
        form.reset();
        turnDay(form);
        const entry = all().find((each) => each.key === key);
        if (entry && !entry.refused) {
          form.dispatchEvent(new CustomEvent("waiting:kept", { bubbles: true, detail: entry }));
        }
      }
    }
  });

  // Refused while its page is still open: shown with its faults and what was typed, as without this
  // file. What is put right a second time stays in the list until it is accepted.
  const show = (page) => {
    const main = document.getElementById("main");
    main.className = page.getElementById("main").className;
    main.replaceChildren(...page.getElementById("main").childNodes);
    window.htmx.process(main);
    document.dispatchEvent(new Event("page:renewed"));
    const first = main.querySelector(".faults, [aria-invalid=true]") || main;
    first.focus();
    first.scrollIntoView({ block: "center" });
  };

  document.addEventListener("waiting:refused", (event) => {
    const { entry, page } = event.detail;
    const { form: tappedForm } = tapped.get(entry.key) || {};
    const before = resumed.has(tappedForm);
    tapped.delete(entry.key);
    show(page);
    if (before) {
      kept().filter((form) => form.getAttribute("action") === entry.action)
        .forEach((form) => resumed.set(form, entry));
    } else {
      drop(entry.key);
    }
  });

  const putRight = () => {
    const key = location.hash.startsWith("#put-right-") ? location.hash.slice(11) : "";
    const entry = all().find((each) => each.key === key && each.house === house);
    const form = entry && kept().find((each) => each.getAttribute("action") === entry.action);
    if (!form) {
      return;
    }
    resumed.set(form, entry);
    for (const field of form.elements) {
      const values = entry.fields.filter(([name]) => name === field.name).map(([, value]) => value);
      if (field.type === "checkbox" || field.type === "radio") {
        field.checked = values.includes(field.value);
      } else if (field.type !== "hidden" && field.type !== "submit" && values.length) {
        field.value = values[0];
      }
    }
    for (let part = form.closest("details"); part; part = part.parentElement.closest("details")) {
      part.open = true;
    }
    form.querySelector("input:not([type=hidden]), textarea, button").focus();
  };

  window.addEventListener("hashchange", putRight);
  document.addEventListener("visibilitychange", () => kept().forEach(turnDay));
  window.addEventListener("pageshow", () => {
    // Back to a page that was left while it sent.
    kept().filter((form) => form.hasAttribute("data-busy")).forEach((form) => setBusy(form, false));
    putRight();
    if (kept().length) {
      const trial = { key: newKey(), words: "x".repeat(2000) };
      if (put(trial)) {
        drop(trial.key);
      } else {
        blocked();
      }
    }
  });
})();

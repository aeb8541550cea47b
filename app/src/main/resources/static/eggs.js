// The screen Eggs. Every page works without this file.
(() => {
  "use strict";

  const typing = (target) => target.closest("input:not([type=radio]):not([type=checkbox]), textarea, select");

  document.querySelectorAll(".script-only").forEach((piece) => { piece.hidden = false; });

  // Ticks eggs by the handful.
  document.addEventListener("click", (event) => {
    const ticker = event.target.closest("[data-tick]");
    if (!ticker) {
      return;
    }
    const boxes = [...document.querySelectorAll("input[name=egg]")];
    const waiting = boxes.filter((box) => box.dataset.waiting);
    const chosen = { all: waiting, six: waiting.slice(0, 6), none: [] }[ticker.dataset.tick];
    boxes.forEach((box) => { box.checked = chosen.includes(box); });
  });

  // A number key presses its button.
  document.addEventListener("keydown", (event) => {
    if (typing(event.target) || event.ctrlKey || event.metaKey || event.altKey) {
      return;
    }
    const keyed = document.querySelector(`[data-key="${CSS.escape(event.key)}"]`);
    if (keyed) {
      event.preventDefault();
      keyed.click();
    }
  });

  // Groups and forms are two ways to say the same: each follows the other. Before others hear of
  // the change, so that what is read back is what is seen.
  const forms = () => [...document.querySelectorAll("input[name=shows]")];
  const radio = (value) => document.querySelector(`input[name=seen][value="${CSS.escape(value)}"]`);
  document.addEventListener("change", (event) => {
    const input = event.target;
    if (input.name === "seen" && input.dataset.forms !== undefined) {
      const shown = input.dataset.forms.split(";");
      forms().forEach((form) => { form.checked = shown.includes(form.value); });
    }
    if (input.name === "shows") {
      if (input.checked) {
        forms()
          .filter((form) => form !== input && form.dataset.locus === input.dataset.locus)
          .forEach((form) => { form.checked = false; });
      }
      const shown = forms().filter((form) => form.checked).map((form) => form.value).sort().join(";");
      const group = [...document.querySelectorAll("input[name=seen][data-forms]")]
        .find((one) => one.dataset.forms.split(";").sort().join(";") === shown);
      (group || radio("ticked")).checked = true;
    }
  }, true);
  document.addEventListener("input", (event) => {
    if (event.target.name === "other" && event.target.value.trim() !== "") {
      radio("ticked").checked = true;
    }
  }, true);

  // Without a signal the next egg cannot be fetched: the form goes on to it by itself.
  document.addEventListener("waiting:kept", (event) => {
    const form = event.target;
    if (!form.matches("form.candle")) {
      return;
    }
    const [number, ...then] = form.dataset.then.split(" ").filter((text) => text);
    const glyph = document.querySelector("p.candling");
    if (glyph) {
      glyph.remove();
    }
    const skip = form.querySelector("a.button");
    if (skip) {
      skip.remove();
    }
    document.getElementById("eggs-left").textContent = `${then.length + (number ? 1 : 0)} to go`;
    const buttons = [...form.querySelectorAll("button[name=finding]")];
    if (!number) {
      document.getElementById("egg").textContent = "Every waiting egg has been looked at";
      buttons.forEach((button) => { button.disabled = true; });
      return;
    }
    buttons.forEach((button) => {
      button.dataset.words = button.dataset.words.replace(/egg \d+/, `egg ${number}`);
    });
    form.elements.namedItem("number").value = number;
    form.dataset.then = then.join(" ");
    document.getElementById("egg").textContent = `Egg ${number}`;
  });

  document.addEventListener("click", (event) => {
    if (event.target.closest("[data-print]")) {
      window.print();
    }
  });
})();

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
})();

// A number and a slider that say the same: <input type="range" data-sets="id of a number field">.
// The slider is hidden where this file does not run, since only the number is sent.
(() => {
  "use strict";

  const number = (slider) => document.getElementById(slider.dataset.sets);

  for (const slider of document.querySelectorAll("input[data-sets]")) {
    slider.hidden = false;
    slider.value = number(slider).value;
  }

  document.addEventListener("input", (event) => {
    if (event.target.dataset.sets) {
      number(event.target).value = event.target.value;
    }
    for (const slider of document.querySelectorAll("input[data-sets]")) {
      if (number(slider) === event.target) {
        slider.value = event.target.value;
      }
    }
  });
})();

// Typed genes are read in the catalogue of the species that is chosen beside them.
(() => {
  "use strict";

  const species = document.querySelector("#ask #species");
  if (species) {
    species.addEventListener("change", () => {
      for (const field of document.querySelectorAll("#ask .gene-field input")) {
        const address = field.getAttribute("hx-get");
        field.setAttribute("hx-get", address.replace(/^\/catalogue\/[^/]+\//, `/catalogue/${species.value}/`));
        window.htmx.process(field);
      }
    });
  }
})();

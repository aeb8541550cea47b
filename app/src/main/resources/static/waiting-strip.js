// Shows what waits to be sent, on every page. See waiting.js.
(() => {
  "use strict";

  const SAYS = {
    sending: "Sending …",
    elsewhere: "Another page of this browser is sending.",
    cut: "No signal. It is sent by itself when there is one.",
    fault: "Clutchwright could not take it just now. It is tried again.",
    other: "Another collection is open at this address now. Nothing is sent to it.",
    blocked: "This browser keeps nothing for this page: without a signal, what you tap is lost.",
  };

  const make = (name, has, ...inside) => {
    const made = Object.assign(document.createElement(name), has);
    made.append(...inside);
    return made;
  };
  const button = (text, what, does) => {
    const made = make("button", { type: "button", className: "quiet" }, text);
    made.setAttribute("aria-label", what ? `${text}: ${what}` : text);
    made.addEventListener("click", does);
    return made;
  };
  const send = (name, detail) => document.dispatchEvent(new CustomEvent(`waiting:${name}`, { detail }));

  const title = make("summary", {});
  const list = make("ul", { className: "lines" });
  const details = make("details", {}, title, list);
  const said = make("p", {});
  said.setAttribute("role", "status");
  const now = button("Send now", "", () => send("send"));
  const ways = make("span", { className: "row" });
  const strip = make("aside", { className: "waiting", hidden: true }, details, make("div", { className: "row says" }, said, ways));
  strip.setAttribute("aria-label", "Waiting to be sent");
  document.querySelector("header.top").after(strip);

  let latest = { state: "seen", sent: [], house: "", entries: [] };
  let asking = "";

  const day = (text) => new Date(`${text}T12:00:00`).toLocaleDateString(undefined, { day: "numeric", month: "short" });
  const when = (entry) => {
    const time = new Date(entry.at).toLocaleTimeString(undefined, { hour: "2-digit", minute: "2-digit" });
    const tapped = `${day(entry.tapDay)}, ${time}`;
    return entry.day === entry.tapDay ? tapped : `for ${day(entry.day)}, written ${tapped}`;
  };
  const stop = (entry) => {
    asking = "";
    draw();
    const line = document.getElementById(`waits-${entry.key}`);
    (line ? line.querySelector("button") : title).focus();
  };
  const line = (entry) => {
    const inside = [make("span", { className: "grow" }, entry.words, " ", make("small", {}, when(entry)))];
    if (asking === entry.key) {
      const arrived = entry.tried && !entry.refused ? " It may have arrived all the same: the journal says." : "";
      inside.push(
        make("span", { className: "soft" }, `Discard it for good?${arrived}`),
        button("Keep", entry.words, () => stop(entry)),
        button("Yes, discard", entry.words, () => {
          send("discard", entry.key);
          stop(entry);
        }),
      );
    } else {
      if (entry.refused) {
        inside.push(
          make("span", { className: "late" }, `Refused: ${entry.refused}`),
          make("a", { href: `${entry.page}#put-right-${entry.key}` }, "Put it right"),
        );
      } else if (entry.house !== latest.house) {
        inside.push(make("span", { className: "soft" }, "Of another collection that was at this address; not sent to this one."));
      }
      inside.push(button("Discard", entry.words, () => {
        asking = entry.key;
        draw();
        document.getElementById(`waits-${entry.key}`).querySelector("button").focus();
      }));
    }
    return make("li", { className: "row", id: `waits-${entry.key}` }, ...inside);
  };

  const sentence = () => {
    const { state, sent } = latest;
    if (SAYS[state]) {
      return SAYS[state];
    }
    return state === "signedOut" ? "Sign in to send." : sent.length ? `Sent: ${sent.join("; ")}.` : "";
  };

  // A form whose tap waits says so beside it, and takes no second one where that makes no sense.
  const mark = (waits) => {
    document.querySelectorAll(".waits-here").forEach((note) => {
      if (!waits.some((entry) => entry.key === note.dataset.key)) {
        note.remove();
      }
    });
    document.querySelectorAll("form[data-keeps=once]").forEach((form) => {
      const its = waits.some((entry) => entry.action === form.getAttribute("action"));
      form.querySelectorAll("button").forEach((each) => { each.disabled = its; });
    });
  };
  document.addEventListener("waiting:kept", (event) => {
    const note = make("p", { className: "waits-here" }, `Kept on this phone, waiting to be sent: ${event.detail.words}`);
    note.dataset.key = event.detail.key;
    event.target.querySelectorAll(".waits-here").forEach((each) => each.remove());
    event.target.append(note);
  });

  const draw = () => {
    const { house, entries, state, sent } = latest;
    const here = entries.filter((entry) => entry.house === house);
    const waits = here.filter((entry) => !entry.refused);
    const refused = here.length - waits.length;
    const others = entries.length - here.length;
    if (!house) {
      // Nobody is signed in: how much waits, not what.
      details.hidden = true;
      said.textContent = entries.length ? `Waiting to be sent: ${entries.length}. Sign in to send.` : "";
      ways.replaceChildren();
      strip.hidden = !entries.length;
      return;
    }
    title.textContent = [
      waits.length ? `Waiting to be sent (${waits.length})` : "",
      refused ? `Refused (${refused})` : "",
      others ? `Of another collection (${others})` : "",
    ].filter((part) => part).join(" · ");
    details.hidden = !entries.length;
    list.replaceChildren(...entries.map(line));
    said.textContent = sentence();
    const offers = [];
    if (state === "signedOut" && waits.length) {
      offers.push(make("a", { href: "/sign-in" }, "Sign in"));
    }
    if (waits.length && state !== "sending" && state !== "other") {
      offers.push(now);
    }
    if (sent.length) {
      offers.push(make("a", { href: location.pathname + location.search }, "Show the page as it is now"));
    }
    ways.replaceChildren(...offers);
    strip.hidden = !entries.length && !said.textContent;
    mark(waits);
  };

  document.addEventListener("waiting:changed", (event) => {
    const before = latest;
    latest = event.detail;
    const isQuiet = ["seen", "done"].includes(latest.state) && !latest.sent.length;
    // What was just said of these entries stands until something else can be said.
    if (isQuiet && (latest.entries.some((entry) => !entry.refused) || before.sent.length || before.state === "blocked")) {
      latest = { ...latest, state: before.state, sent: before.sent };
    }
    if (latest.entries.some((entry) => entry.refused && !before.entries.some((old) => old.key === entry.key && old.refused))) {
      details.open = true;
    }
    // A tap that is answered at once is no reason to move the page.
    if (latest.state === "sending" && strip.hidden) {
      return;
    }
    draw();
  });
  document.addEventListener("page:renewed", draw);
})();

// What is tapped without a signal: kept on this phone, and sent once when the signal is back. Here is
// what is kept and how it is sent; waiting-forms.js makes entries of forms that are tapped, and
// waiting-strip.js shows what waits. Every form works without these files.
//
// An entry is written down in the browser's own store under a key of its own, and then sent. It is
// forgotten only when the answer bears its key; the server writes nothing under a key that it knows.
(() => {
  "use strict";

  const ENTRY = "clutchwright.entry.";
  const LEASE = "clutchwright.sending";
  const PATIENCE = 12000;
  const PAUSES = [3000, 6000, 12000, 30000, 60000];
  const TRIES = 3;

  const meta = document.querySelector('meta[name="house"]');
  const house = meta ? meta.content : "";
  const mine = new Set(); // keys of what was tapped on this page and is not answered yet
  let sending = false;
  let pauses = 0;
  let timer = 0;

  // crypto.randomUUID is for pages of https only.
  const newKey = () => {
    const bytes = crypto.getRandomValues(new Uint8Array(16));
    bytes[6] = (bytes[6] & 0x0f) | 0x40;
    bytes[8] = (bytes[8] & 0x3f) | 0x80;
    const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
    return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join("-");
  };
  const tab = newKey();

  // The browser's store: one item an entry, so that two tabs never overwrite each other.
  const all = () => {
    const found = [];
    try {
      for (let i = 0; i < localStorage.length; i++) {
        if (localStorage.key(i).startsWith(ENTRY)) {
          found.push(JSON.parse(localStorage.getItem(localStorage.key(i))));
        }
      }
    } catch {
      // Blocked: then nothing was kept either.
    }
    return found.sort((a, b) => a.at - b.at);
  };
  const put = (entry) => {
    try {
      localStorage.setItem(ENTRY + entry.key, JSON.stringify(entry));
      return true;
    } catch {
      return false;
    }
  };
  const drop = (key) => localStorage.removeItem(ENTRY + key);
  const isKept = (key) => localStorage.getItem(ENTRY + key) !== null;
  // Notes something about an entry that may be discarded, or sent by another tab, meanwhile.
  const note = (entry) => !isKept(entry.key) || put(entry);
  const waiting = () => all().filter((entry) => !entry.refused && entry.house === house);

  const tell = (name, detail) => document.dispatchEvent(new CustomEvent(`waiting:${name}`, { detail }));
  const changed = (state, sent = []) => tell("changed", { state, sent, house, entries: all() });

  // Sending: one at a time in order, and from one tab. The lease only saves needless requests; that
  // an entry is written once is the server's doing.
  const lease = () => {
    try {
      const held = JSON.parse(localStorage.getItem(LEASE) || "null");
      const left = held ? held.until - Date.now() : 0;
      if (held && held.tab !== tab && left > 0 && left < 3 * PATIENCE) {
        return false;
      }
      localStorage.setItem(LEASE, JSON.stringify({ tab, until: Date.now() + 2 * PATIENCE + 1000 }));
    } catch {
      // Full: all the same.
    }
    return true;
  };
  const release = () => {
    try {
      const held = JSON.parse(localStorage.getItem(LEASE) || "null");
      if (held && held.tab === tab) {
        localStorage.removeItem(LEASE);
      }
    } catch {
      // It runs out.
    }
  };
  // The answer and all of its text, or nothing where the network failed.
  const ask = async (address, how) => {
    const patience = new AbortController();
    const bell = setTimeout(() => patience.abort(), PATIENCE);
    try {
      const answer = await fetch(address, { cache: "no-store", signal: patience.signal, ...how });
      return { status: answer.status, headers: answer.headers, text: await answer.text() };
    } catch {
      return null;
    } finally {
      clearTimeout(bell);
    }
  };
  const parse = (text) => new DOMParser().parseFromString(text, "text/html");
  const reasons = (page) => {
    const texts = (selector) => [...page.querySelectorAll(selector)].map((found) => found.textContent.trim());
    const found = [texts("#main .faults li"), texts("#main .fault"), texts("#main h1, #main p")].find((some) => some.length);
    return (found ? found.join(" ") : "No reason was given.").replace(/\s+/g, " ").slice(0, 300);
  };

  // What came of one entry: taken, refused, signedOut, other, fault or cut.
  const send = async (entry) => {
    const gate = await ask("/ready");
    if (!gate) {
      return { came: "cut" };
    }
    const ready = parse(gate.text).getElementById("ready");
    if (!ready) {
      return { came: gate.status >= 500 ? "fault" : "signedOut" };
    }
    if (ready.dataset.house !== entry.house) {
      return { came: "other" };
    }
    entry.tried = true;
    note(entry);
    const headers = { [ready.dataset.header]: ready.dataset.token, "HX-Request": "true" };
    if (!mine.has(entry.key)) {
      headers["Entry-Later"] = "true";
    }
    const body = new URLSearchParams([...entry.fields, ["entryKey", entry.key]]);
    const answer = await ask(entry.action, { method: "POST", redirect: "manual", headers, body });
    if (!answer) {
      return { came: "cut" };
    }
    if (answer.status < 300 && answer.headers.get("Entry-Taken") === entry.key) {
      return { came: "taken", path: answer.headers.get("HX-Redirect") };
    }
    if (answer.status >= 500) {
      return { came: "fault", page: parse(answer.text) };
    }
    return answer.status >= 400 && ![401, 403, 408, 429].includes(answer.status)
      ? { came: "refused", page: parse(answer.text) }
      : { came: "signedOut" };
  };

  // What comes next after an outcome: nothing to wait for, or why it has to wait.
  const settle = (entry, outcome) => {
    if (outcome.came === "taken") {
      pauses = 0;
      drop(entry.key);
      return "";
    }
    const stuck = outcome.came === "fault" && outcome.page && ++entry.failures >= TRIES;
    if (outcome.came === "refused" || stuck) {
      entry.refused = reasons(outcome.page);
    }
    const isNoted = note(entry);
    return entry.refused ? (isNoted ? "" : "blocked") : outcome.came;
  };
  const sendAll = async () => {
    if (sending || !house) {
      return;
    }
    sending = true;
    clearTimeout(timer);
    let state = "";
    let goTo = "";
    const sent = [];
    while (!state && waiting().length) {
      const entry = waiting()[0];
      if (!lease()) {
        state = "elsewhere";
        break;
      }
      changed("sending");
      const outcome = await send(entry);
      const isLast = waiting().length === 1;
      state = settle(entry, outcome);
      if (outcome.came === "taken") {
        sent.push(entry.words);
        goTo = mine.delete(entry.key) ? outcome.path || location.pathname : "";
      } else if (outcome.came === "refused" && isLast && mine.delete(entry.key)) {
        tell("refused", { entry, page: outcome.page });
      }
    }
    release();
    sending = false;
    // What was tapped here is on record through another tab meanwhile: the page is out of date.
    if ([...mine].some((key) => !isKept(key))) {
      goTo = goTo || location.pathname + location.search;
    }
    if (state === "elsewhere") {
      timer = setTimeout(sendAll, 1000);
    } else {
      tell("left", [...mine]);
      mine.clear();
    }
    if (["cut", "fault", "signedOut", "blocked"].includes(state)) {
      timer = setTimeout(sendAll, PAUSES[Math.min(pauses++, PAUSES.length - 1)]);
    }
    if (goTo) {
      go(goTo);
    } else {
      changed(state || "done", sent);
    }
  };
  const go = (path) => {
    const there = new URL(path, location.href);
    location.assign(path);
    if (there.hash && there.pathname + there.search === location.pathname + location.search) {
      location.reload();
    }
  };

  const again = () => {
    pauses = 0;
    sendAll();
  };
  window.addEventListener("online", again);
  window.addEventListener("pagehide", release);
  window.addEventListener("storage", () => changed("seen"));
  document.addEventListener("waiting:send", again);
  document.addEventListener("waiting:discard", (event) => {
    drop(event.detail);
    changed("seen");
  });
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") {
      again();
    }
  });
  window.addEventListener("pageshow", () => {
    changed("seen");
    again();
  });

  window.waiting = Object.freeze({
    house,
    all,
    put,
    drop,
    newKey,
    blocked: () => changed("blocked"),
    // The entry is in the store already.
    send: (entry) => {
      mine.add(entry.key);
      again();
    },
  });
})();

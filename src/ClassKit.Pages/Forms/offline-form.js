// Keeps what is filled in on this device and saves it as a file. It needs nothing beside this page and sends nothing.
"use strict";
{
  const { identity, form, file } = JSON.parse(document.getElementById("form-data").textContent);
  const place = `classkit.form.${identity}`;
  const state = document.getElementById("kept");
  const fields = [...document.querySelectorAll("[data-field]")];

  // Only a device that keeps what is written can be trusted with it; private windows of some browsers keep nothing.
  const keeps = (() => {
    try {
      localStorage.setItem(`${place}.try`, "yes");
      const kept = localStorage.getItem(`${place}.try`) === "yes";
      localStorage.removeItem(`${place}.try`);
      return kept;
    } catch { return false; }
  })();

  const isChosen = field => field.type !== "radio" || field.checked;
  const filled = () => Object.fromEntries(fields.filter(field => isChosen(field) && field.value.trim() !== "").map(field => [field.dataset.field, field.value.trim()]));

  const fill = values => {
    for (const field of fields) {
      const value = Object.hasOwn(values, field.dataset.field) ? values[field.dataset.field] : field.dataset.usual ?? "";
      if (field.type === "radio") field.checked = field.value === value;
      else field.value = value;
    }
  };

  const keep = () => {
    if (!keeps) return;
    try {
      localStorage.setItem(place, JSON.stringify(filled()));
      state.textContent = "Kept on this device.";
    } catch { state.textContent = "This device is full and keeps no more: save the file now."; }
  };

  // What stands in a section: how many of its questions have an answer.
  const answered = section => {
    const groups = [...section.querySelectorAll("[data-counted]")];
    const has = group => [...group.querySelectorAll("[data-field]")].some(field => isChosen(field) && field.value.trim() !== "");
    return [groups.filter(has).length, groups.length];
  };
  const count = () => {
    for (const counter of document.querySelectorAll("[data-count]")) {
      const [done, all] = answered(document.getElementById(counter.dataset.count));
      counter.textContent = counter.dataset.own === undefined ? `${done} of ${all}` : done === 0 ? "" : `${done} of their own`;
    }
  };

  // Who is in a team, as the choices beside the names say.
  const members = () => {
    for (const line of document.querySelectorAll("[data-members]")) {
      const there = [...document.querySelectorAll("select[data-usual]")].filter(choice => choice.value === line.dataset.members);
      line.textContent = there.map(choice => choice.closest("details").querySelector("summary").firstChild.textContent.trim()).join(", ") || "Nobody";
    }
  };

  const views = [...document.querySelectorAll("button[data-view]")];
  const show = name => {
    for (const view of views) {
      const isShown = view.dataset.view === name;
      view.setAttribute("aria-pressed", String(isShown));
      document.getElementById(view.dataset.view).hidden = !isShown;
    }
    try { localStorage.setItem(`${place}.view`, name); } catch { /* The first view is shown again. */ }
  };

  // SHA-256 (FIPS 180-4): the browser's own is not to be had for files that are opened from a folder.
  const digest = text => {
    const isPrime = n => { for (let d = 2; d * d <= n; d++) if (n % d === 0) return false; return true; };
    const primes = [];
    for (let n = 2; primes.length < 64; n++) if (isPrime(n)) primes.push(n);
    const fraction = root => Math.floor((root - Math.floor(root)) * 2 ** 32) >>> 0;
    const constants = primes.map(prime => fraction(Math.cbrt(prime)));
    const hash = primes.slice(0, 8).map(prime => fraction(Math.sqrt(prime)));
    const bytes = new TextEncoder().encode(text);
    const padded = new Uint8Array(Math.ceil((bytes.length + 9) / 64) * 64);
    padded.set(bytes);
    padded[bytes.length] = 0x80;
    const view = new DataView(padded.buffer);
    view.setUint32(padded.length - 8, Math.floor(bytes.length / 2 ** 29));
    view.setUint32(padded.length - 4, (bytes.length << 3) >>> 0);
    const turn = (word, by) => (word >>> by) | (word << (32 - by));
    for (let at = 0; at < padded.length; at += 64) {
      const words = Array.from({ length: 16 }, (_, i) => view.getUint32(at + i * 4));
      for (let i = 16; i < 64; i++) {
        const [a, b] = [words[i - 15], words[i - 2]];
        words.push((words[i - 16] + (turn(a, 7) ^ turn(a, 18) ^ (a >>> 3)) + words[i - 7] + (turn(b, 17) ^ turn(b, 19) ^ (b >>> 10))) >>> 0);
      }
      let [a, b, c, d, e, f, g, h] = hash;
      for (let i = 0; i < 64; i++) {
        const one = (h + (turn(e, 6) ^ turn(e, 11) ^ turn(e, 25)) + ((e & f) ^ (~e & g)) + constants[i] + words[i]) >>> 0;
        const two = ((turn(a, 2) ^ turn(a, 13) ^ turn(a, 22)) + ((a & b) ^ (a & c) ^ (b & c))) >>> 0;
        [h, g, f, e, d, c, b, a] = [g, f, e, (d + one) >>> 0, c, b, a, (one + two) >>> 0];
      }
      [a, b, c, d, e, f, g, h].forEach((word, i) => { hash[i] = (hash[i] + word) >>> 0; });
    }
    return hash.map(word => word.toString(16).padStart(8, "0")).join("");
  };

  const save = () => {
    const values = filled();
    const content = JSON.stringify({ identity, form, fields: values });
    const text = JSON.stringify({ kind: "classkit-form", version: 1, digest: digest(content), content }, null, 1);
    const who = (values.marker ?? values.team ?? "").toLowerCase().replaceAll(/[^\p{L}\p{N}]+/gu, "-").replaceAll(/^-|-$/g, "");
    const link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
    link.download = `${file}${who ? `-${who}` : ""}.json`;
    document.body.append(link);
    link.click();
    link.remove();
    setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
    // Marks count for whoever has a level in every line; measurements as many as there are.
    const begun = file === "observations" ? [] : [...document.querySelectorAll("[data-count]:not([data-own])")].filter(counter => {
      const [done, all] = answered(document.getElementById(counter.dataset.count));
      return done > 0 && done < all;
    }).map(counter => counter.parentElement.firstChild.textContent.trim());
    document.getElementById("saved").textContent = `${begun.length > 0 ? `Not complete yet: ${begun.join(", ")}. All that is complete is taken in; the rest counts for nobody until every line has a level, here or at the desk. ` : ""}${link.download} lies among your downloads. Bring it to the computer that has the class; what is here stays here as well.`;
  };

  // Whoever wipes the screen must not wipe the marks: it takes a second, other button.
  const [wipe, really, stay] = ["wipe", "wipe-really", "wipe-not"].map(id => document.getElementById(id));
  const ask = open => { wipe.hidden = open; really.hidden = stay.hidden = !open; };
  wipe.addEventListener("click", () => ask(true));
  stay.addEventListener("click", () => ask(false));
  really.addEventListener("click", () => { fill({}); keep(); count(); members(); ask(false); document.getElementById("saved").textContent = "Everything is empty again."; });

  document.getElementById("save").addEventListener("click", save);
  for (const view of views) view.addEventListener("click", () => { show(view.dataset.view); scrollTo(0, 0); });
  document.addEventListener("input", () => { keep(); count(); members(); });
  addEventListener("beforeunload", event => { if (!keeps && Object.keys(filled()).length > 0) event.preventDefault(); });

  let kept = {};
  if (keeps) { try { kept = JSON.parse(localStorage.getItem(place) ?? "{}") ?? {}; } catch { kept = {}; } }
  fill(kept);
  count();
  members();
  state.textContent = !keeps ? "This browser keeps nothing: do not close or reload this page before you have saved the file."
    : Object.keys(kept).length > 0 ? "Taken up where this device left off." : "What you fill in is kept on this device.";
  for (const tool of document.querySelectorAll("[data-script]")) tool.hidden = false;
  if (views.length > 0) {
    let last = null;
    try { last = localStorage.getItem(`${place}.view`); } catch { /* The first one. */ }
    show(views.some(view => view.dataset.view === last) ? last : views[0].dataset.view);
  }
}

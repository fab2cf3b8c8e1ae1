// The desk works without this file. It adds: how far long work is, without a new page; that a form is sent once; files dropped onto a page.
"use strict";

const job = document.querySelector("#job[data-now]");
if (job) {
  const title = document.title.split(" · ").slice(1).join(" · ");
  const look = async () => {
    try {
      const now = await (await fetch(job.dataset.now)).json();
      document.title = `${now.tab} · ${title}`;
      document.querySelector("#job-words").textContent = now.words;
      const bar = document.querySelector("#job-progress");
      if (now.total) { bar.max = now.total; bar.value = now.done; } else bar.removeAttribute("value");
      document.querySelector("#job-lately").replaceChildren(...now.lately.map(line => {
        const [item, text] = [document.createElement("li"), document.createElement("bdi")];
        text.textContent = line;
        item.append(text);
        return item;
      }));
      if (!now.isOpen) { location.reload(); return; }
    } catch {
      document.querySelector("#job-words").textContent = "The desk does not answer. If it was closed, open it again: nothing is lost.";
    }
    setTimeout(look, 400);
  };
  setTimeout(look, 200);
}

// What was typed into one form and not kept is not lost by sending another: whoever presses is told first, and presses again to leave it.
const isTyped = form => form.method === "post" && !form.dataset.sent && form.dataset.typed;
for (const kind of ["input", "change"]) document.addEventListener(kind, event => {
  const form = event.target.form;
  if (form && !event.target.matches("[type=search], [type=file]") && !form.matches(".prep-list form") && !event.target.closest("[data-only-shows]")) form.dataset.typed = "yes";
});
const leaves = (form, button) => {
  const others = [...document.forms].filter(other => other !== form && isTyped(other));
  if (others.length === 0 || form.dataset.leaves) return true;
  form.dataset.leaves = "yes";
  const said = Object.assign(document.createElement("p"), { className: "left-open", textContent: "Something typed elsewhere on this page is not kept yet, and would be lost. Keep that first, or press once more to leave it." });
  said.setAttribute("role", "alert");
  (button ?? form.lastElementChild).after(said);
  return false;
};

// Links, the back button and a closed tab leave a page as well: the browser asks first.
let isSent = false;
window.addEventListener("beforeunload", event => {
  if (!isSent && [...document.forms].some(isTyped)) event.preventDefault();
});

for (const select of document.querySelectorAll("[data-go]")) select.addEventListener("change", () => document.getElementById(select.dataset.go).click());

document.addEventListener("submit", event => {
  const form = event.target;
  if (event.submitter?.formTarget) return;
  if (!leaves(form, event.submitter)) { event.preventDefault(); return; }
  if (form.dataset.sent) { event.preventDefault(); return; }
  form.dataset.sent = "yes";
  isSent = true;
  setTimeout(() => { delete form.dataset.sent; isSent = false; }, 4000);
});

for (const place of document.querySelectorAll(".drop")) {
  const input = place.querySelector("input[type=file]");
  for (const kind of ["dragover", "dragleave", "drop"]) place.addEventListener(kind, event => {
    event.preventDefault();
    place.classList.toggle("over", kind === "dragover");
    if (kind === "drop" && event.dataTransfer.files.length > 0) { input.files = event.dataTransfer.files; input.form.requestSubmit(); }
  });
}

for (const button of document.querySelectorAll("[data-print]")) {
  button.hidden = false;
  button.addEventListener("click", () => document.getElementById(button.dataset.print).contentWindow.print());
}

for (const box of document.querySelectorAll("[data-filter]")) {
  const rows = [...document.querySelectorAll(`#${box.dataset.filter}:not(table) > *, table#${box.dataset.filter} > tbody > tr:not(.group)`)];
  box.closest("[hidden]")?.removeAttribute("hidden");
  box.addEventListener("input", () => {
    const sought = box.value.trim().toLowerCase();
    for (const row of rows) row.hidden = !row.textContent.toLowerCase().includes(sought);
  });
}

for (const link of document.querySelectorAll("[data-line]")) link.addEventListener("click", event => {
  const field = document.getElementById(link.hash.slice(1));
  const lines = field.value.split("\n");
  const from = lines.slice(0, link.dataset.line - 1).join("\n").length + (link.dataset.line > 1 ? 1 : 0);
  event.preventDefault();
  field.focus();
  field.setSelectionRange(from, from + (lines[link.dataset.line - 1] ?? "").length);
  field.scrollTop = (link.dataset.line - 4) * parseFloat(getComputedStyle(field).lineHeight);
});

// What a change would break is said while it is typed.
for (const form of document.querySelectorAll("form[data-look]")) {
  const said = form.querySelector(".looked-over");
  let waiting, asked = 0;
  form.addEventListener("input", () => {
    clearTimeout(waiting);
    waiting = setTimeout(async () => {
      const mine = ++asked;
      const answer = await fetch(form.dataset.look, { method: "POST", body: new URLSearchParams(new FormData(form)) }).catch(() => null);
      if (!answer?.ok || mine !== asked) return;
      const page = new DOMParser().parseFromString(await answer.text(), "text/html");
      said.replaceChildren(...page.body.childNodes);
    }, 500);
  });
}

// The page beside a text follows a while after the last letter.
for (const button of document.querySelectorAll("[data-preview]")) {
  let waiting;
  const show = () => button.form.requestSubmit(button);
  for (const field of button.form.querySelectorAll("textarea, select")) field.addEventListener("input", () => {
    clearTimeout(waiting);
    waiting = setTimeout(show, 1500);
  });
}

// A link that is followed inside a frame opens its page as the list beside it would: heading, ticks and the mark in the list stay in step.
for (const frame of document.querySelectorAll("iframe[data-leads]")) {
  const first = frame.getAttribute("src").split("/").pop();
  frame.addEventListener("load", () => {
    const now = frame.contentDocument?.location.pathname.split("/").pop();
    if (!now || now === first) return;
    const button = [...document.querySelectorAll(`button[name="${frame.dataset.leads}"]`)].find(one => one.value === now);
    if (button) button.click();
    else document.getElementById("open-page").textContent = frame.contentDocument.title;
  });
}

// A page in a frame is as long as it is, where its origin lets that be seen: one scroll bar, not two.
for (const frame of document.querySelectorAll("iframe.sheet[id]")) {
  const fit = () => {
    const page = frame.contentDocument?.documentElement;
    if (page) frame.style.height = `${Math.min(20000, Math.max(400, page.scrollHeight + 4))}px`;
  };
  frame.addEventListener("load", fit);
  fit();
}

// Tells a student what a typed answer means. It needs nothing beside this page, keeps nothing and sends nothing.
"use strict";
{
  const { pattern, folds, zeros, longest, units, parts } = JSON.parse(document.getElementById("self-check-data").textContent);
  const shape = new RegExp(pattern, "iu");
  const grouped = /^(?:[0-9]{1,3}(?:,[0-9]{3})+|[0-9]{1,3}(?:\.[0-9]{3})+|[0-9]{1,2}(?:,[0-9]{2})*,[0-9]{3})$/;
  const zeroPoints = [...zeros].map(zero => zero.codePointAt(0));

  // What keyboards of the world type, brought to the characters that numbers are written with here.
  const digitOf = character => {
    const point = character.codePointAt(0);
    const zero = zeroPoints.find(start => point >= start && point <= start + 9);
    return zero === undefined ? character : String(point - zero);
  };
  const fold = text => [...text].map(character => folds[character] ?? (/\p{Nd}/u.test(character) ? digitOf(character) : character)).join("").trim();

  const plain = whole => whole.replaceAll(/[.,]/g, "");

  // The number with a point for its decimals and nothing between its thousands, in every way it can be read.
  const spellings = number => {
    const at = Math.max(...[".", ",", "\u066B"].map(mark => number.lastIndexOf(mark)));
    if (at < 0) return [number];
    const whole = number.slice(0, at);
    const isDecimal = !whole.includes(number[at]) && (!/[.,]/.test(whole) || grouped.test(whole));
    return [...(isDecimal ? [`${plain(whole)}.${number.slice(at + 1)}`] : []), ...(grouped.test(number) ? [plain(number)] : [])];
  };

  const numbers = (number, exponent) => spellings(number.replaceAll(/[ ']/g, ""))
    .map(spelling => Number(exponent ? `${spelling}e${exponent}` : spelling)).filter(Number.isFinite);

  const lowered = raised => [...raised].map(character => ({ "⁻": "-", "⁺": "" })[character] ?? "⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(character)).join("");

  const magnitudes = ({ whole, top, bottom, number, exponent, mantissa, power, raised }) => {
    if (top !== undefined) return Number(bottom) === 0 ? [] : [Number(whole ?? 0) + Number(top) / Number(bottom)];
    return number !== undefined ? numbers(number, exponent) : numbers(mantissa ?? "1", power ?? lowered(raised));
  };

  // A share of what is read in percent: 0.65 of 65. Nothing else in scripts scales by a hundred.
  const ofPercent = value => value / 100;

  // What the words behind a number make of it: the unit stands first, and the longest that is known counts.
  const inUnit = (value, written, unit) => {
    const words = written.split(/[ /]+/).filter(word => word !== "");
    for (let count = words.length; count > 0; count--) {
      const name = words.slice(0, count).join(" ").replaceAll(/^[ .,;!()[\]]+|[ .,;!()[\]]+$/g, "").toLowerCase();
      if (name.startsWith("%") || ["percent", "per cent", "pct"].includes(name)) return ofPercent(value);
      if (name.startsWith("‰")) return value / 1000;
      const known = Object.entries(units[unit]).find(([other]) => other.toLowerCase() === name);
      if (known) return value * known[1][0] + known[1][1];
    }
    return value;
  };

  // Every number that a text can sensibly mean, the likeliest first; none if it is no number.
  const read = (text, part) => {
    const found = text.length > longest ? undefined : shape.exec(fold(text))?.groups;
    if (!found || (!part.money && /\p{Sc}/u.test(found.head + found.unit))) return [];
    const sign = found.head.includes("-") ? -1 : 1;
    const values = magnitudes(found).map(value => inUnit(sign * value, found.unit, part.unit));
    return part.percent ? [...values, ...values.map(ofPercent)] : values;
  };

  const meaningOf = (values, part) => part.meanings.find(({ low, high }) => values.some(value => value >= low && value <= high));

  // The one small thing that would make a wrong number right.
  const slipIn = (values, part) => {
    const isRight = mend => meaningOf(values.map(mend), part)?.right;
    const unit = Object.entries(units[part.unit]).find(([, [factor, offset]]) => isRight(value => value * factor + offset));
    if (unit) return `Your answer is right in ${unit[0]}; here ${part.unit} is asked.`;
    for (const power of [10, 100, 1000]) {
      const times = isRight(value => value / power) ? `${power} times` : isRight(value => value * power) ? `1/${power} of` : null;
      if (times) return `Your answer is ${times} what it should be: check the units and the percent sign before the method.`;
    }
    return "Look at the numbers once more, or open a hint.";
  };

  const judge = (text, part) => {
    if (text.trim() === "") return { words: part.choice ? "Choose a letter first." : "Type an answer first." };
    const values = read(text, part);
    if (values.length === 0) return { words: `This cannot be read as a number. Type one number${part.unit ? `; ${part.unit} stands beside it` : ""}.` };
    const meaning = meaningOf(values, part);
    if (meaning?.right) return { right: true, words: "Right." };
    const otherwise = () => part.choice ? "Read the question once more, or open a hint." : slipIn(values, part);
    return { tried: true, words: `Not yet. ${meaning?.words ?? otherwise()}` };
  };

  const progress = document.getElementById("progress");
  const sections = [...document.querySelectorAll("[data-part]")];
  const showProgress = () => {
    progress.textContent = `${sections.filter(section => section.dataset.state === "right").length} of ${sections.length} parts right`;
  };

  // Hints come one by one, and the working only after all of them and a try, or when the answer is right.
  for (const exercise of document.querySelectorAll("section.exercise")) {
    const hints = [...exercise.querySelectorAll(".hint")];
    const own = [...exercise.querySelectorAll("[data-part]")];
    const reveal = () => {
      hints.forEach((hint, index) => { hint.hidden = index > 0 && !hints[index - 1].dataset.seen; });
      const allSeen = hints.every(hint => hint.dataset.seen);
      for (const section of own) {
        section.querySelector(".worked-out").hidden = section.dataset.state !== "right" && !(allSeen && section.dataset.tried);
      }
    };
    for (const hint of hints) {
      hint.addEventListener("toggle", () => { if (hint.open) hint.dataset.seen = "yes"; reveal(); });
    }
    for (const section of own) {
      const [input, button, reply] = ["input, select", "button", ".reply"].map(name => section.querySelector(name));
      const check = () => {
        const { right, tried, words } = judge(input.value, parts[section.dataset.part]);
        section.dataset.state = right ? "right" : "not-yet";
        if (tried) section.dataset.tried = "yes";
        reply.textContent = words;
        reveal();
        showProgress();
      };
      button.hidden = false;
      button.addEventListener("click", check);
      input.addEventListener("keydown", event => { if (event.key === "Enter") check(); });
    }
    reveal();
  }
  progress.hidden = false;
  showProgress();
}

// What is shown. Everything that somebody typed goes into the page as text, never as marks.

const screen = document.getElementById("screen");
const where = document.getElementById("where");
const bar = document.getElementById("bar");
const orders = document.getElementById("orders");
const warning = document.getElementById("warning");

/** Questions passed over since the page was opened; they come again. */
const skipped = new Set();
/** Where the way led, for going back. */
const trail = [];
/** Stops that were shown already. */
const told = new Set();
/** The stage whose end was announced last, where the phone keeps nothing. */
let offeredAfter = -1;

// ---- making things

function make(tag, attributes, ...children) {
  const one = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value !== false) {
      one.setAttribute(name, value === true ? "" : value);
    }
  }
  one.append(...children.filter((child) => child !== null));
  return one;
}

const paragraph = (words, kind = "") => (words === "" ? null : make("p", kind === "" ? {} : {class: kind}, words));

function button(words, does, kind = "", pressed = null) {
  const one = make("button", {type: "button", class: kind, ...(pressed === null ? {} : {"aria-pressed": String(pressed)})}, words);
  one.addEventListener("click", does);
  return one;
}

let ids = 0;

/** A field with its label, and a place where it is said what is wrong with what is typed. */
function field(label, value, hint = "", more = {}) {
  const id = "f" + ++ids;
  const input = make("input", {
    id, type: "text", autocomplete: "off", autocapitalize: "off", spellcheck: "false", "aria-describedby": id + "-said", ...more});
  input.value = value;
  const said = make("p", {id: id + "-said", class: "said", "aria-live": "polite"}, hint);
  return {
    input,
    whole: make("div", {class: "field"}, make("label", {for: id}, label), input, said),
    say(words, isWrong) {
      said.textContent = words;
      said.classList.toggle("wrong", isWrong);
      input.setAttribute("aria-invalid", String(isWrong));
    },
  };
}

/** A form whose way on is a button and the Enter key. */
function form(words, does, ...children) {
  const one = make("form", {novalidate: true}, ...children, make("button", {type: "submit", class: "main"}, words));
  one.addEventListener("submit", (event) => {
    event.preventDefault();
    does();
  });
  return one;
}

function cautionBox(id) {
  const caution = D.cautions[id];
  return caution === undefined ? null
    : make("p", {class: "caution"}, make("strong", {}, caution.title + ". "), caution.text);
}

/** Puts a screen in the place of the one before, and the focus on its heading. */
function show(heading, kind, place, ...children) {
  const title = make("h1", {tabindex: "-1"}, heading);
  screen.className = kind;
  screen.replaceChildren(...[...children].filter((child) => child !== null));
  const before = screen.querySelector("[data-before-heading]");
  if (before === null) {
    screen.prepend(title);
  } else {
    before.after(title);
  }
  where.textContent = place;
  document.title = (place === "" ? "" : place + " | ") + D.checklist.title;
  warn();
  window.scrollTo(0, 0);
  title.focus({preventScroll: true});
}

function warn() {
  warning.hidden = !refusesStorage;
  warning.textContent = refusesStorage
    ? "This phone keeps nothing that is typed here. Save the file after each stage, and before you leave the page." : "";
}

function setOrders(...buttons) {
  orders.replaceChildren(...buttons);
  orders.hidden = buttons.length === 0;
}

function usualOrders(...more) {
  setOrders(...more, button("Overview", overview), button("Save", saving));
}

// ---- the beginning

function start(message = "") {
  bar.hidden = true;
  setOrders();
  const before = visit === null ? kept() : {visit, at};
  const site = field("Site, as a short name that stays the same over years", "");
  const name = field("Site, as people call it (may be left out)", "");
  const unitName = field(D.unit.label[0].toUpperCase() + D.unit.label.slice(1) + ", as the tag on it says", "");
  const by = field("Who makes the visit", "");
  const day = field("Day of the visit", today(), "Year, month, day");
  const opening = make("input", {type: "file", id: "opening", accept: ".json,.yaml,.yml"});
  opening.addEventListener("change", () => opening.files.length > 0 && open(opening.files[0]));
  const goOn = before === null ? null : make("section", {},
    make("h2", {}, "A visit is kept on this phone"),
    paragraph(titleOf(before.visit)),
    button("Go on with it", () => {
      ({visit, at} = before);
      keep();
      next();
    }, "main"),
    paragraph("Beginning another one puts it in the place of this one. Save this one first.", "said"));
  const fields = [site, name, unitName, by, day];
  const beginning = form("Begin", () => {
    const wrong = [wrongName(site.input.value.trim()), "", wrongName(unitName.input.value.trim()),
      by.input.value.trim() === "" ? "Something is needed here." : "",
      isDay(day.input.value.trim()) ? "" : "A day is written as 2026-09-14."];
    fields.forEach((one, i) => one.say(wrong[i], wrong[i] !== ""));
    const first = wrong.findIndex((words) => words !== "");
    if (first >= 0) {
      fields[first].input.focus();
      return;
    }
    if (before !== null && !window.confirm("Put a new visit in the place of the one that is kept: " + titleOf(before.visit) + "?")) {
      return;
    }
    trail.length = 0;
    told.clear();
    begin(site.input.value.trim(), name.input.value.trim(), unitName.input.value.trim(), by.input.value.trim(),
      day.input.value.trim());
    next();
  }, ...fields.map((one) => one.whole));
  show(D.checklist.title, "start", "",
    make("p", {class: "wrong", role: "alert"}, message),
    paragraph("It asks the questions of the visit in their order, needs no network, and sends nothing anywhere. It knows which single answers"
      + " forbid firing. The full judgement, of all answers together, is made by gaugeglass assess from the file that you save here."),
    paragraph(D.defers, "said"),
    goOn,
    make("section", {}, make("h2", {}, "A new visit"), beginning),
    make("section", {}, make("h2", {}, "Go on with a saved file"),
      make("label", {for: "opening"}, "An inspection file: one that this page saved (.json), or of gaugeglass walk or blank (.yaml)"), opening));
}

const titleOf = (one) => (text(one[D.site].name) || text(one[D.site].id)) + ", " + text(one.visit.date);

async function open(file) {
  let read;
  const whole = (await file.text()).replace(/^\ufeff/, "");
  try {
    // In YAML every value stays the text that was written, as in the reader of inspection files.
    read = whole.trimStart().startsWith("{") ? JSON.parse(whole) : jsyaml.load(whole, {schema: jsyaml.FAILSAFE_SCHEMA});
  } catch (refused) {
    start("\u201c" + file.name + "\u201d cannot be read: " + (refused.reason ?? "it is no whole file") + ". gaugeglass check says more.");
    return;
  }
  const wrong = whole.startsWith(D.firstLine) && !whole.trimEnd().endsWith(D.lastLine)
    ? "Its end is missing. gaugeglass walk tells what can be done." : wrongWith(read);
  if (wrong !== "") {
    start("\u201c" + file.name + "\u201d cannot be used. " + wrong);
    return;
  }
  trail.length = 0;
  told.clear();
  visit = read;
  at = 0;
  if (visit[D.unit.plural].length === 1) {
    // What was just opened lies in a file already.
    goTo(0, true);
  } else {
    whichUnit();
  }
}

const nameOf = (one) => text(one.id) + (text(one.name) === "" ? "" : ", " + text(one.name));
const isSeveral = () => visit[D.unit.plural].length > 1;

/** Goes on with one of the units; where one is in it stays as it is. */
function goTo(index, isInFile = false) {
  at = index;
  // All of these are about the unit that was left.
  trail.length = 0;
  skipped.clear();
  told.clear();
  offeredAfter = -1;
  unit().checklist = D.checklist.id;
  keep();
  isSaved = isInFile;
  next();
}

/** Which of the units to go on with, or another one; what is said of the site is said for all of them. */
function whichUnit() {
  bar.hidden = true;
  usualOrders();
  const units = visit[D.unit.plural];
  const another = field("Another " + D.unit.label + ", as the tag on it says", "", "What was answered about the site holds for it too.");
  show("Which " + D.unit.label + "?", "question", titleOf(visit),
    ...units.map((one, i) => button(nameOf(one), () => goTo(i), "choice", i === at)),
    form("Add it", () => {
      const id = another.input.value.trim();
      const isDoubled = units.some((one) => text(one.id).toLowerCase() === id.toLowerCase());
      const wrong = wrongName(id) || (isDoubled ? "Another one is called so." : "");
      another.say(wrong, wrong !== "");
      if (wrong === "") {
        units.push({id, checklist: D.checklist.id});
        goTo(units.length - 1);
      } else {
        another.input.focus();
      }
    }, another.whole));
}

// ---- the way

const keyOf = (step) => placeOf(step.question.gives, step.keys);

/** Shows what comes next: a stop, a question, the closed gate, or the end. */
function next() {
  const all = steps();
  const stands = gate(all);
  const fresh = stands.stops.find((stop) => !told.has(stop.card.id + "\n" + keyOf(stop.step)));
  if (fresh !== undefined) {
    told.add(fresh.card.id + "\n" + keyOf(fresh.step));
    stopped(fresh.card, fresh.step);
    return;
  }
  const asked = all.filter((step) => step.status === "open" && !skipped.has(keyOf(step)));
  const before = asked.find((step) => D.stages[step.section.stage].before);
  const step = before ?? (stands.isOpen ? asked[0] : undefined);
  if (refusesStorage && offers(all, step)) {
    return;
  }
  if (step !== undefined) {
    ask(step);
  } else if (!stands.isOpen) {
    closed(stands);
  } else if (all.some((one) => one.status === "open")) {
    skipped.clear();
    next();
  } else {
    finished();
  }
}

/** Where the phone keeps nothing, the file is offered when a stage is over. */
function offers(all, step) {
  const stage = step === undefined ? D.stages.length : step.section.stage;
  const over = all.filter((one) => one.status === "answered" && one.section.stage < stage);
  const last = over.length === 0 ? -1 : Math.max(...over.map((one) => one.section.stage));
  if (last <= offeredAfter) {
    return false;
  }
  offeredAfter = last;
  if (isSaved) {
    return false;
  }
  bar.hidden = true;
  setOrders(button("Overview", overview));
  show("Save the file now", "save", D.stages[last].title,
    paragraph("This stage is over, and this phone keeps nothing by itself."),
    ...savers(),
    button("Go on", next));
  return true;
}

const about = (step) => (step.keys.tag === "" ? "" : D.kinds[D.kinds[step.question.kind].parent || step.question.kind].label
  + " " + step.keys.tag);

function placeWords(step) {
  return [isSeveral() ? nameOf(unit()) : "", D.stages[step.section.stage].title, step.panel.title || step.section.title, about(step)]
    .filter((words) => words !== "").join(" | ");
}

function progress(step) {
  const stage = steps().filter((one) => one.section.stage === step.section.stage && one.status !== "closed");
  const done = stage.filter((one) => one.status === "answered").length;
  bar.hidden = false;
  bar.querySelector("progress").max = Math.max(stage.length, 1);
  bar.querySelector("progress").value = done;
  bar.querySelector("span").textContent = done + " of " + stage.length + " in this stage";
}

// ---- a question

/** Puts a question; with isLeft, how it is after work or another test. */
function ask(step, isLeft = false) {
  const {question, keys, section} = step;
  const current = question.counts ? null : answerTo(question, keys, isLeft);
  const extras = noteFields(current);
  const answer = (values, times) => {
    values.forEach((value, i) => readPart(question.parts[i], value));
    const note = [times, extras.note()].filter((words) => words !== "").join("; ");
    give(step, isLeft, {values: values.map((value) => value.trim()), unread: "", note, photos: extras.photos(), at: clock()});
  };
  progress(step);
  usualOrders(button("Back", back), button("Skip", () => {
    skipped.add(keyOf(step));
    next();
  }));
  show((isLeft ? "As it is now: " : "") + question.ask, "question", placeWords(step),
    make("div", {"data-before-heading": true},
      step.isFirst ? paragraph(section.intro, "intro") : null,
      cautionBox(question.caution)),
    paragraph(step.panel.look, "look"),
    paragraph(question.look, "look"),
    current === null ? null : paragraph("Answered: " + toldAnswer(question, current), "current"),
    question.counts ? counting(step) : taking(step, current, answer),
    cannot(step, isLeft, extras),
    question.counts ? null : extras.whole,
    current !== null && !isLeft
      ? button("It was put right or tested again: answer as it is now", () => ask(step, true)) : null,
    current !== null ? button("Leave it as it is", () => {
      extras.keepWith(step, isLeft, current);
      trail.push(step);
      next();
    }) : null);
}

function toldAnswer(question, answer) {
  return answer.unread !== "" ? "could not be read: " + answer.unread
    : answer.values.map((value, i) => (question.parts[i].form === "choice" ? spoken(asWord(value)) : value)).join(", ");
}

function give(step, isLeft, answer) {
  putAnswer(step.question, step.keys, isLeft, answer);
  forget(step);
  trail.push(step);
  next();
}

/** An answer that is given again is judged again. */
function forget(step) {
  skipped.delete(keyOf(step));
  for (const one of told) {
    if (one.endsWith("\n" + keyOf(step))) {
      told.delete(one);
    }
  }
}

function back() {
  const step = trail.pop();
  if (step === undefined) {
    overview();
  } else {
    ask(step);
  }
}

/** How an answer is given. */
function taking(step, current, answer) {
  const {question} = step;
  const parts = question.parts;
  const readings = [];
  const noted = () => (readings.length === 0 ? "" : "read " + readings.join(", "));
  if (parts.length === 1 && parts[0].form === "choice") {
    const choices = choiceButtons(parts[0], current, (word) => answer([word], noted()));
    return make("div", {},
      question.take === "events" ? hearing(question, answer) : null,
      question.take === "readings" ? reading(readingField(question), "Against time, while it goes on", readings) : null,
      question.take === "typed" ? null : make("h2", {}, "The answer"),
      choices);
  }
  const fields = parts.map((part, i) => partField(part, parts.length === 1 ? "Answer" : part.name,
    current === null || current.unread !== "" ? "" : current.values[i]));
  const typed = form("Keep this answer", () => {
    const wrong = fields.find((one) => !one.check());
    if (wrong !== undefined) {
      wrong.focus();
      return;
    }
    answer(fields.map((one) => one.value()), noted());
  }, ...fields.map((one) => one.whole));
  return make("div", {},
    question.take !== "readings" ? null
      : question.readings === "" ? reading(fields[0], "Against time; the last reading is the answer", readings, false)
        : reading(readingField(question), "Against time, while it goes on", readings),
    typed);
}

/** A field for what is read against time where that is not the answer itself. */
function readingField(question) {
  return partField({form: "reading", dimension: question.readings, span: D.dimensions[question.readings].usual}, "Reading", "");
}

function choiceButtons(part, current, takes) {
  return make("div", {class: "choices"}, ...part.choices.map((choice) =>
    button(spoken(choice.word) + (choice.meaning === "" ? "" : ": " + choice.meaning), () => takes(choice.word), "choice",
      current !== null && current.unread === "" && asWord(current.values[0]) === choice.word)));
}

/** A part that is typed, checked as it is typed; or a choice among several parts. */
function partField(part, label, value) {
  if (part.form === "choice") {
    const name = "c" + ++ids;
    const said = make("p", {class: "said", "aria-live": "polite"});
    const radios = part.choices.map((choice) => {
      const id = "f" + ++ids;
      const radio = make("input", {type: "radio", name, id, value: choice.word, checked: asWord(value) === choice.word});
      return {radio, whole: make("div", {class: "radio"}, radio, make("label", {for: id}, spoken(choice.word)))};
    });
    const chosen = () => radios.find((one) => one.radio.checked)?.radio.value ?? "";
    return {
      whole: make("fieldset", {}, make("legend", {}, label), ...radios.map((one) => one.whole), said),
      value: chosen,
      focus: () => radios[0].radio.focus(),
      check() {
        said.textContent = chosen() === "" ? "One of them is needed." : "";
        return chosen() !== "";
      },
    };
  }
  const one = field(label, value, part.span, part.form === "count" || part.form === "date" ? {inputmode: "numeric"} : {});
  const check = (isLast) => {
    try {
      one.say("= " + readPart(part, one.input.value), false);
      return true;
    } catch (refused) {
      // While somebody types, an answer that is not yet whole is no mistake.
      const isShort = !isLast && one.input.value.trim() === "";
      one.say(isShort ? part.span : refused.message, !isShort);
      return false;
    }
  };
  one.input.addEventListener("input", () => check(false));
  const units = part.form === "quantity" || part.form === "reading" ? make("div", {class: "units", role: "group", "aria-label": "Unit"},
    ...D.dimensions[part.dimension].units.map((unit) => button(unit.symbol, () => {
      const number = /^[-+\d\s.,/\u00bc-\u00be\u2044]*/.exec(one.input.value)[0].trim();
      one.input.value = (number + " " + unit.symbol).trim();
      check(false);
      one.input.focus();
    }, "unit"))) : null;
  const date = part.form === "date" ? make("div", {class: "units"}, button("today", () => {
    one.input.value = visitDay();
    check(false);
  }, "unit")) : null;
  return {
    whole: make("div", {}, one.whole, units, date),
    value: () => one.input.value,
    focus: () => one.input.focus(),
    check: () => check(true),
  };
}

/** Marks made as things are heard; their order is the answer, their times go into the note. */
function hearing(question, answer) {
  const list = make("ol", {class: "heard", "aria-live": "polite"});
  const heard = [];
  let first = 0;
  const mark = (word) => {
    const now = performance.now();
    first = heard.length === 0 ? now : first;
    const words = word + " at " + (Math.floor((now - first) / 100) / 10).toFixed(1) + " s";
    heard.push({word, words});
    list.append(make("li", {}, words));
  };
  const marks = make("div", {class: "marks"}, ...question.events.map((event) =>
    button(event.word + " (key " + event.key + ")", () => mark(event.word), "choice")));
  const whole = make("section", {class: "hearing"},
    make("h2", {}, "Mark it the moment you hear it"),
    marks, list,
    make("div", {class: "two"},
      button("That was all", () => {
        const order = [...new Set(heard.map((one) => one.word))];
        const word = order.length === 0 ? "nothing" : order.length === 1 ? order[0] + "-only" : order.join("-then-");
        answer([word], heard.length === 0 ? "" : "heard " + heard.map((one) => one.words).join(", "));
      }, "main"),
      button("Again", () => {
        heard.length = 0;
        list.replaceChildren();
      })));
  marks.addEventListener("keydown", (event) => {
    const known = question.events.find((one) => one.key === event.key.toLowerCase());
    if (known !== undefined) {
      event.preventDefault();
      mark(known.word);
    }
  });
  return whole;
}

/** Readings against time; all of them go into the note. */
function reading(typed, heading, readings, isOwn = true) {
  const list = make("ol", {class: "heard", "aria-live": "polite"});
  let first = 0;
  return make("section", {class: "hearing"},
    make("h2", {}, heading),
    isOwn ? typed.whole : null,
    button("Mark this reading", () => {
      if (!typed.check()) {
        typed.focus();
        return;
      }
      const now = performance.now();
      first = readings.length === 0 ? now : first;
      readings.push(typed.value().trim() + " at " + Math.floor((now - first) / 1000) + " s");
      list.append(make("li", {}, readings[readings.length - 1]));
      typed.focus();
    }, "choice"),
    list);
}

/** Why something cannot be told; it is not a pass. */
function cannot(step, isLeft, extras) {
  const {question} = step;
  const reason = field("Because", "", "The reason tells the next person what to bring.");
  const keepUnread = (words) => {
    if (words === "") {
      reason.say("A reason is needed.", true);
      reason.input.focus();
      return;
    }
    if (question.counts) {
      putUncounted(question.kind, words);
      forget(step);
      trail.push(step);
      next();
    } else {
      give(step, isLeft, {values: [], unread: words, note: extras.note(), photos: extras.photos(), at: clock()});
    }
  };
  return make("details", {}, make("summary", {}, "Cannot tell, because \u2026"),
    ...question.unread.map((words) => button(words, () => keepUnread(words), "choice")),
    form("Keep that it could not be told", () => keepUnread(reason.input.value.trim()), reason.whole));
}

/** A note and names of photos; they go with the answer. */
function noteFields(current) {
  const note = field("Note", current === null ? "" : current.note, "It goes with the answer.");
  const photos = field("Names of photos, with commas between", current === null ? "" : current.photos.join(", "),
    "As the camera calls them; keep the pictures beside the saved file.");
  const names = () => photos.input.value.split(",").map((name) => name.trim()).filter((name) => name !== "");
  return {
    whole: make("details", {open: current !== null && (current.note !== "" || current.photos.length > 0)},
      make("summary", {}, "Note, photos"), note.whole, photos.whole),
    note: () => note.input.value.trim(),
    photos: names,
    keepWith(step, isLeft, answer) {
      if (answer.note !== note.input.value.trim() || answer.photos.join() !== names().join()) {
        putAnswer(step.question, step.keys, isLeft, {...answer, note: note.input.value.trim(), photos: names(), at: answer.at || clock()});
      }
    },
  };
}

// ---- counting

function counting(step) {
  const kind = D.kinds[step.question.kind];
  const have = pieces(step.question.kind).map((piece) => text(piece.tag));
  const current = count(step.question.kind).number;
  const said = make("p", {class: "said", role: "status"}, have.length === 0 ? "" : "Described already: " + have.join(", ") + ".");
  const numbers = [...Array(kind.most + 1).keys()];
  return make("div", {}, make("div", {class: "numbers"}, ...numbers.map((number) => button(String(number), () => {
    if (number < have.length) {
      said.textContent = "Described already: " + have.join(", ") + ". What was described is not thrown away here; correct it in the file.";
    } else if (number === have.length) {
      counted(step, number, []);
    } else {
      tagging(step, number, have);
    }
  }, "choice", current === number))), said);
}

function tagging(step, number, have) {
  const fields = [];
  for (let i = have.length + 1; i <= number; i++) {
    fields.push(field("Tag of number " + i, step.question.kind + "-" + i, "A name that stays the same over years."));
  }
  show(number + ": what are they called?", "question", placeWords(step),
    form("Keep", () => {
      const used = new Set(have.map((tag) => tag.toLowerCase()));
      const wrong = fields.map((one) => {
        const tag = one.input.value.trim();
        const isDoubled = used.has(tag.toLowerCase());
        used.add(tag.toLowerCase());
        return wrongName(tag) || (isDoubled ? "Another one is called so." : "");
      });
      fields.forEach((one, i) => one.say(wrong[i], wrong[i] !== ""));
      const first = wrong.findIndex((words) => words !== "");
      if (first >= 0) {
        fields[first].input.focus();
      } else {
        counted(step, number, fields.map((one) => one.input.value.trim()));
      }
    }, ...fields.map((one) => one.whole)));
}

function counted(step, number, tags) {
  putCount(step.question.kind, number, tags);
  forget(step);
  trail.push(step);
  next();
}

// ---- what stands against it

function stopWords(card) {
  return [
    make("p", {}, make("strong", {}, "Do: "), card.action),
    ...card.cautions.map(cautionBox),
  ];
}

function stopped(card, step) {
  bar.hidden = true;
  usualOrders();
  show("Do not fire: " + card.title, "stop", placeWords(step),
    paragraph("Seen: " + step.question.ask + " " + toldStep(step)),
    ...stopWords(card),
    button("I have read this", next, "main"),
    button("Answer it again", () => ask(step)));
}

function toldStep(step) {
  if (step.question.counts) {
    const counted = count(step.question.kind);
    return counted.number === null ? "could not be counted: " + counted.unread : String(counted.number);
  }
  const left = answerTo(step.question, step.keys, true);
  const found = answerTo(step.question, step.keys);
  return [found, left].filter((answer) => answer !== null).map((answer) => toldAnswer(step.question, answer)).join(", then ");
}

function questionButton(step, words) {
  const name = about(step);
  return button((name === "" ? "" : name + ": ") + step.question.ask + (words === "" ? "" : " " + words), () => ask(step), "listed");
}

function closed(stands) {
  bar.hidden = true;
  usualOrders(button("Back", back));
  show("The firing stage is closed", "stop", "Before firing",
    paragraph("Nothing is lit while one of these stands. When nothing stands here any more, this page has found nothing in single answers;"
      + " the full judgement is gaugeglass assess."),
    stands.stops.length === 0 ? null : make("h2", {}, "It forbids firing"),
    ...stands.stops.flatMap((stop) => [
      make("h3", {}, stop.card.title), paragraph(stop.card.action), questionButton(stop.step, toldStep(stop.step))]),
    stands.unknown.length === 0 ? null : make("h2", {}, "It could not be told, and firing hangs on it"),
    ...stands.unknown.map((step) => questionButton(step, toldStep(step))),
    stands.open.length === 0 ? null : make("h2", {}, "It is not answered"),
    ...stands.open.map((step) => questionButton(step, "")));
}

function overview() {
  bar.hidden = true;
  const plural = D.unit.plural[0].toUpperCase() + D.unit.plural.slice(1).replaceAll("-", " ");
  setOrders(button("Go on", next), button(plural, whichUnit), button("Save", saving), button("Other visit", () => start()));
  const all = steps();
  const isOpen = gate(all).isOpen;
  const parts = [];
  let heading = "";
  for (const step of all) {
    if (step.status === "closed") {
      continue;
    }
    const title = [D.stages[step.section.stage].title, step.section.title, about(step)].filter((words) => words !== "").join(" | ");
    if (title !== heading) {
      parts.push(make("h2", {}, title));
      heading = title;
    }
    const isReachable = D.stages[step.section.stage].before || isOpen || step.status === "answered";
    const words = step.status === "answered" ? "\u2013 " + toldStep(step)
      : step.status === "waiting" ? "\u2013 waits for an earlier answer" : skipped.has(keyOf(step)) ? "\u2013 skipped" : "\u2013 not answered";
    const one = questionButton(step, words);
    one.disabled = !isReachable || step.status === "waiting";
    one.classList.toggle("done", step.status === "answered");
    parts.push(one);
  }
  show("All questions", "overview", titleOf(visit) + (isSeveral() ? " | " + nameOf(unit()) : ""), ...parts);
}

// ---- saving

const fileText = () => JSON.stringify(visit, null, 2) + "\n";
const fileName = () => (text(visit[D.site].id) + "-" + visitDay()).replace(/[^A-Za-z0-9._-]+/g, "-") + ".json";

function savers() {
  const shownText = make("textarea", {id: "text", readonly: true, rows: "8", spellcheck: "false"});
  shownText.value = fileText();
  return [
    button("Save " + fileName(), () => {
      const address = URL.createObjectURL(new Blob([fileText()], {type: "application/json"}));
      const link = make("a", {href: address, download: fileName()});
      document.body.append(link);
      link.click();
      link.remove();
      isSaved = true;
      setTimeout(() => URL.revokeObjectURL(address), 10000);
    }, "main"),
    make("details", {}, make("summary", {}, "Where saving does not work: the file as text, to copy"),
      make("label", {for: "text"}, "The whole file"), shownText),
  ];
}

function saving() {
  bar.hidden = true;
  setOrders(button("Go on", next), button("Overview", overview));
  show("Save the file", "save", titleOf(visit),
    paragraph("Take it to a computer, with the photos beside it: gaugeglass assess " + fileName() + " gives the full judgement."),
    ...savers());
}

function finished() {
  bar.hidden = true;
  setOrders(button("Overview", overview));
  show("Every question has been put", "save", titleOf(visit),
    button("Go on with another " + D.unit.label, whichUnit),
    paragraph("No single answer forbids firing. That is not the judgement: gaugeglass assess looks at all answers together, and it alone tells"
      + " whether anything stands against firing or release."),
    ...savers());
}

// ---- here it begins

window.addEventListener("beforeunload", (event) => {
  if (refusesStorage && !isSaved) {
    event.preventDefault();
  }
});

// The one thing that the page lets a test of it reach.
window.gaugeglass = Object.freeze({readQuantity: (typed, dimension) => readQuantity(typed, D.dimensions[dimension])});

start();

// The visit: an inspection in the very form in which it is saved, and what the checklist makes of it.
// Nothing is worked out beforehand: the same answers always give the same questions, so a visit that was broken off goes on.

const D = JSON.parse(document.getElementById("data").textContent);
const STORED = "gaugeglass.sheet." + D.checklist.id;
const QUESTION_OF = new Map(D.questions.map((question) => [question.gives, question]));

let visit = null;
let at = 0;
let refusesStorage = false;
let isSaved = true;

// ---- small steps

const isGroup = (value) => value !== null && typeof value === "object" && !Array.isArray(value);
const own = (group, key) => (isGroup(group) && Object.hasOwn(group, key) ? group[key] : undefined);
const text = (value) => (value === null || value === undefined || typeof value === "object" ? "" : String(value).trim());
const spoken = (word) => word.replaceAll("-", " ");
/** A word as the reader of files compares it. */
const asWord = (typed) => typed.toLowerCase().replace(/[ _\u2010\u2011\u2013-]+/g, "-").replace(/^-/, "");

/** The group under a key, made where it is not there. */
function inside(group, key) {
  if (!isGroup(own(group, key))) {
    group[key] = {};
  }
  return group[key];
}

function clock() {
  const now = new Date();
  return String(now.getHours()).padStart(2, "0") + ":" + String(now.getMinutes()).padStart(2, "0");
}

function today() {
  const now = new Date();
  return [now.getFullYear(), String(now.getMonth() + 1).padStart(2, "0"), String(now.getDate()).padStart(2, "0")].join("-");
}

// ---- keeping

function keep() {
  isSaved = false;
  try {
    localStorage.setItem(STORED, JSON.stringify({visit, at}));
    refusesStorage = false;
  } catch {
    refusesStorage = true;
  }
}

/** What was kept before; null where there is nothing, or nothing that can be used. */
function kept() {
  try {
    localStorage.setItem(STORED + ".try", "1");
    localStorage.removeItem(STORED + ".try");
  } catch {
    refusesStorage = true;
    return null;
  }
  try {
    const found = JSON.parse(localStorage.getItem(STORED));
    return isGroup(found) && wrongWith(found.visit) === "" ? found : null;
  } catch {
    return null;
  }
}

/** Why an opened file cannot be gone on with; empty where it can. */
function wrongWith(file) {
  if (!isGroup(file)) {
    return "It is no inspection.";
  }
  if (text(file.format) !== String(D.format)) {
    return "It is not of format " + D.format + ", the one that this page reads.";
  }
  const units = own(file, D.unit.plural);
  if (text(own(own(file, D.site), "id")) === "" || !isDay(text(own(own(file, "visit"), "date")))) {
    return "It names no site, or no day of the visit.";
  }
  if (!Array.isArray(units) || units.length === 0 || !units.every((unit) => text(own(unit, "id")) !== "")) {
    return "It names no " + D.unit.label + ".";
  }
  return "";
}

function begin(site, name, unit, by, date) {
  visit = {
    format: D.format,
    [D.site]: {id: site},
    visit: {date, by, started: clock()},
    [D.unit.plural]: [{id: unit, checklist: D.checklist.id}],
  };
  if (name !== "") {
    visit[D.site].name = name;
  }
  at = 0;
  keep();
}

const unit = () => visit[D.unit.plural][at];
const visitDay = () => text(visit.visit.date);

/** What is wrong with an id or a tag; empty where nothing is. */
function wrongName(name) {
  if (name === "") {
    return "Something is needed here.";
  }
  if (/[/\\]/.test(name) || /[\p{C}\p{Zl}\p{Zp}]/u.test(name)) {
    return "A short name has no stroke, and no character that cannot be seen.";
  }
  if (name.toLowerCase() === "(not listed)") {
    return "This name is kept for those that nobody described.";
  }
  return name.length > 60 ? "A short name has no more than 60 characters." : "";
}

// ---- equipment

/** The pieces of a kind that were there when the visit began. */
function pieces(kind) {
  const each = own(own(unit(), D.kinds[kind].plural), "each");
  return (Array.isArray(each) ? each : []).filter(
    (one) => isGroup(one) && text(one.tag) !== "" && asWord(text(one.present)) !== "as-left");
}

function count(kind) {
  const fitted = own(own(unit(), D.kinds[kind].plural), "fitted");
  if (isGroup(fitted)) {
    return {unread: text(fitted.unread), number: null};
  }
  return {unread: "", number: /^[0-9]+$/.test(text(fitted)) ? Number(text(fitted)) : null};
}

function putCount(kind, number, tags) {
  const roster = inside(unit(), D.kinds[kind].plural);
  roster.fitted = String(number);
  if (tags.length > 0) {
    roster.each = (Array.isArray(roster.each) ? roster.each : []).concat(tags.map((tag) => ({tag})));
  }
  keep();
}

function putUncounted(kind, reason) {
  inside(unit(), D.kinds[kind].plural).fitted = {unread: reason};
  keep();
}

/** Which things a section asks about: a tag and, for a fixed set, the member. */
function keysOf(section) {
  if (section.each === "") {
    return [{tag: "", member: ""}];
  }
  const kind = D.kinds[section.each];
  return pieces(kind.parent || section.each).map((piece) => ({tag: text(piece.tag), member: section.member}));
}

// ---- answers

/** The group of the file in which the answer to a question stands; undefined where it is not there. */
function groupOf(question, keys, isLeft, make) {
  const down = (group, key) => (make ? inside(group, key) : own(group, key));
  const left = (group) => (isLeft ? down(group, "as-left") : group);
  const kind = D.kinds[question.kind];
  switch (kind.placement) {
    case "site":
      return left(visit[D.site]);
    case "unit":
      return down(left(unit()), question.group);
    default: {
      const piece = pieces(kind.parent || question.kind).find((one) => text(one.tag) === keys.tag);
      const described = piece === undefined ? undefined : left(piece);
      return kind.placement === "fixed" && described !== undefined
        ? down(down(described, kind.plural), keys.member)
        : described;
    }
  }
}

/** The answer to a question, each part as typed; null where there is none. */
function answerTo(question, keys, isLeft = false) {
  const written = own(groupOf(question, keys, isLeft, false), question.key);
  if (written === undefined || written === null) {
    return null;
  }
  if (!isGroup(written)) {
    const single = text(written);
    return single === "" ? null : {values: [single], unread: "", note: "", photos: [], at: ""};
  }
  const photos = Array.isArray(written.photos) ? written.photos : [written.photos];
  const answer = {
    values: [],
    unread: text(written.unread),
    note: text(written.note),
    photos: photos.map(text).filter((name) => name !== ""),
    at: text(written.at),
  };
  if (answer.unread === "") {
    answer.values = question.parts.map((part) => text(own(written, question.parts.length === 1 ? "value" : part.key)));
    if (answer.values.includes("")) {
      return null;
    }
  }
  return answer;
}

function putAnswer(question, keys, isLeft, answer) {
  const written = {};
  if (answer.unread !== "") {
    written.unread = answer.unread;
  } else if (question.parts.length === 1) {
    written.value = answer.values[0];
  } else {
    question.parts.forEach((part, i) => {
      written[part.key] = answer.values[i];
    });
  }
  if (answer.note !== "") {
    written.note = answer.note;
  }
  if (answer.photos.length > 0) {
    written.photos = answer.photos;
  }
  written.at = answer.at;
  groupOf(question, keys, isLeft, true)[question.key] = written;
  keep();
}

// ---- what is asked

const placeOf = (gives, keys) => gives + "\n" + keys.tag + "\n" + keys.member;

/** Every question about every thing, in order, with where it stands: open, answered, closed or waiting. */
function steps() {
  const statuses = new Map();
  const all = [];
  D.sections.forEach((section) => {
    keysOf(section).forEach((keys) => {
      section.questions.forEach((index, i) => {
        const question = D.questions[index];
        const status = statusOf(section, question, keys, statuses);
        statuses.set(placeOf(question.gives, keys), status);
        all.push({section, question, keys, status, isFirst: i === 0, panel: section.panels[i]});
      });
    });
  });
  return all;
}

/** Where the question how many there are stands; as if answered where this list does not ask it. */
const ofCount = (kind, statuses) => statuses.get(placeOf(kind + ".fitted", {tag: "", member: ""})) ?? "answered";

function statusOf(section, question, keys, statuses) {
  const counts = section.each === "" ? "answered" : ofCount(D.kinds[section.each].parent || section.each, statuses);
  if (counts === "closed") {
    return "closed";
  }
  let waits = counts === "waiting";
  for (const condition of question.when) {
    const holds = holdsFor(condition, keys, statuses);
    if (holds === "closed") {
      return "closed";
    }
    waits ||= holds === "waiting";
  }
  if (waits) {
    return "waiting";
  }
  if (question.counts) {
    const counted = count(question.kind);
    return counted.number !== null || counted.unread !== "" ? "answered" : "open";
  }
  return answerTo(question, keys) === null ? "open" : "answered";
}

function holdsFor(condition, keys, statuses) {
  const earlier = QUESTION_OF.get(condition.item);
  if (earlier === undefined) {
    return "waiting";
  }
  if (earlier.counts) {
    const counted = count(earlier.kind);
    const asked = ofCount(earlier.kind, statuses);
    if (asked === "closed" || asked === "waiting") {
      return asked;
    }
    if (counted.number === null) {
      return counted.unread === "" ? "waiting" : "open";
    }
    return condition.words.includes(counted.number > 0 ? "some" : "none") ? "open" : "closed";
  }
  const placement = D.kinds[earlier.kind].placement;
  const its = {
    tag: placement === "counted" || placement === "fixed" ? keys.tag : "",
    member: placement === "fixed" ? keys.member : "",
  };
  const status = statuses.get(placeOf(condition.item, its)) ?? "open";
  if (status === "closed" || status === "waiting") {
    return status;
  }
  const answer = answerTo(earlier, its);
  if (answer === null) {
    return "waiting";
  }
  // What could not be read closes nothing: the question may still matter.
  return answer.unread !== "" || answer.values.some((value) => condition.words.includes(asWord(value))) ? "open" : "closed";
}

// ---- what one answer forbids

/** The stops that an answer is by itself. */
function stopsOf(question, keys) {
  const found = [];
  if (question.counts) {
    const counted = count(question.kind);
    if (counted.number !== null) {
      collect(found, question, "", [], {n: BigInt(counted.number), d: 1n});
    }
  } else {
    const answer = answerTo(question, keys, true) ?? answerTo(question, keys);
    if (answer !== null && answer.unread === "") {
      const part = question.parts[0];
      let value = null;
      try {
        value = part.form === "quantity" ? readQuantity(answer.values[0], D.dimensions[part.dimension]).base
          : part.form === "count" ? {n: BigInt(answer.values[0]), d: 1n} : null;
      } catch {
        value = null;
      }
      collect(found, question, keys.member, answer.values.map(asWord), value);
    }
  }
  return found;
}

function collect(found, question, member, words, value) {
  for (const stop of D.stops) {
    if (stop.item !== question.gives || (stop.member !== "" && stop.member !== member)) {
      continue;
    }
    const isFound = stop.words.length > 0
      ? stop.words.length === words.length && stop.words.every((word, i) => word === words[i])
      : value !== null && isWithin(value, stop);
    if (isFound) {
      found.push(D.cards[stop.card]);
    }
  }
}

function isWithin(value, stop) {
  const low = compare(value, given(stop.from));
  const high = compare(value, given(stop.to));
  return (low > 0 || (stop.fromIncluded && low === 0)) && (high < 0 || (stop.toIncluded && high === 0));
}

/** Whether the firing stage may open, and what stands against it. */
function gate(all) {
  const before = (step) => D.stages[step.section.stage].before;
  const live = all.filter((step) => step.status !== "closed");
  const stops = live.filter((step) => step.status === "answered").flatMap((step) =>
    stopsOf(step.question, step.keys).map((card) => ({card, step})));
  const open = live.filter((step) => before(step) && step.status !== "answered");
  const unknown = live.filter((step) => before(step) && step.status === "answered" && step.question.gates && isUnread(step));
  return {isOpen: stops.length + open.length + unknown.length === 0, stops, open, unknown};
}

function isUnread(step) {
  if (step.question.counts) {
    return count(step.question.kind).unread !== "";
  }
  return (answerTo(step.question, step.keys, true) ?? answerTo(step.question, step.keys)).unread !== "";
}

// ---- what is typed

/** Reads one part of an answer; gives what it was understood as, or throws Refused. */
function readPart(part, typed) {
  const written = typed.trim();
  if (written === "") {
    throw new Refused("Nothing is written");
  }
  switch (part.form) {
    case "choice":
      if (!part.choices.some((choice) => choice.word === asWord(written))) {
        throw new Refused("It is not one of the answers");
      }
      return spoken(asWord(written));
    case "reading":
      readQuantity(written, D.dimensions[part.dimension]);
      return written;
    case "quantity": {
      const dimension = D.dimensions[part.dimension];
      const read = readQuantity(written, dimension);
      const usual = dimension.units[part.unit];
      if (compare(read.base, given(part.from)) < 0 || compare(read.base, given(part.to)) > 0) {
        throw new Refused("It is outside what is believed", part.span);
      }
      return written + (read.unit === usual ? "" : " = " + shown(fromBase(read.base, usual)) + " " + usual.symbol);
    }
    case "count": {
      if (!/^[+-]?[0-9]{1,9}$/.test(written)) {
        throw new Refused("It is no whole number", part.span);
      }
      const number = {n: BigInt(written.replace("+", "")), d: 1n};
      if (compare(number, given(part.from)) < 0 || compare(number, given(part.to)) > 0) {
        throw new Refused("It is outside what is believed", part.span);
      }
      return written;
    }
    case "date": {
      const day = written.length === 4 ? written + "-01-01" : written.length === 7 ? written + "-01" : written;
      if (!isDay(day)) {
        throw new Refused("It is not written as a date", "year, month and day such as 2015-08-31; 2015-08 or 2015 will do");
      }
      if (day > visitDay()) {
        throw new Refused("It is later than the visit of " + visitDay());
      }
      return day === written ? written : written + ", taken as " + day;
    }
    default:
      return written;
  }
}

/** Whether the calendar has this day, written as 2015-08-31. */
function isDay(written) {
  if (!/^[0-9]{4}-[0-9]{2}-[0-9]{2}$/.test(written) || Number(written.slice(0, 4)) < 1800) {
    return false;
  }
  const day = new Date(written + "T00:00:00Z");
  return !Number.isNaN(day.getTime()) && day.toISOString().slice(0, 10) === written;
}

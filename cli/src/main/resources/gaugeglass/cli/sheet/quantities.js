// Reads what is typed as the inspection file's reader does: what has one meaning is taken, what could have two is refused.
// Numbers are exact fractions of BigInts, {n, d}, so that a value on a limit is on the limit in any unit.

class Refused extends Error {
  constructor(what, wanted) {
    super(wanted ? what + ". Expected " + wanted + "." : what + ".");
  }
}

const LONGEST = 64;
const MOST_DIGITS = 15;

function fraction(n, d) {
  const sign = d < 0n ? -1n : 1n;
  let a = n < 0n ? -n : n;
  let b = d < 0n ? -d : d;
  while (b > 0n) {
    [a, b] = [b, a % b];
  }
  const common = a === 0n ? 1n : a;
  return {n: (sign * n) / common, d: (sign * d) / common};
}

const given = (pair) => fraction(BigInt(pair[0]), BigInt(pair[1]));
const plus = (a, b) => fraction(a.n * b.d + b.n * a.d, a.d * b.d);
const minus = (a, b) => fraction(a.n * b.d - b.n * a.d, a.d * b.d);
const times = (a, b) => fraction(a.n * b.n, a.d * b.d);
const over = (a, b) => fraction(a.n * b.d, a.d * b.n);

function compare(a, b) {
  const left = a.n * b.d;
  const right = b.n * a.d;
  return left < right ? -1 : left > right ? 1 : 0;
}

const isDigit = (c) => c >= "0" && c <= "9";
const isLetter = (c) => (c >= "a" && c <= "z") || (c >= "A" && c <= "Z");

// The typographic forms that phones put in the place of a sign.
const SIGNS = new Map([..."\u2010\u2011\u2012\u2013\u2212"].map((c) => [c, "-"]).concat(
  [..."\u2044\u2215"].map((c) => [c, "/"]),
  [..."`\u2032\u2018\u2019\u201b\u00b4"].map((c) => [c, "'"]),
  [..."\u2033\u201c\u201d\u201e\u201f"].map((c) => [c, '"']),
  [..."\u00b0\u00ba\u02da"].map((c) => [c, " deg "]),
  [["\u2103", " deg C"], ["\u2109", " deg F"]]));
const SMALL = new Map([["\u00b2", "2"], ["\u2082", "2"], ["\u00b3", "3"]]);
const FRACTIONS = new Map([
  ["\u00bc", "1/4"], ["\u00bd", "1/2"], ["\u00be", "3/4"], ["\u2150", "1/7"], ["\u2151", "1/9"], ["\u2152", "1/10"],
  ["\u2153", "1/3"], ["\u2154", "2/3"], ["\u2155", "1/5"], ["\u2156", "2/5"], ["\u2157", "3/5"], ["\u2158", "4/5"],
  ["\u2159", "1/6"], ["\u215a", "5/6"], ["\u215b", "1/8"], ["\u215c", "3/8"], ["\u215d", "5/8"], ["\u215e", "7/8"]]);

/** The text in ASCII; what cannot be seen or has no use is refused. */
function plain(raw) {
  let result = "";
  for (let i = 0; i < raw.length; i++) {
    const c = raw[i];
    const before = result === "" ? " " : result[result.length - 1];
    if (c === "\t" || /\p{Zs}/u.test(c)) {
      result += " ";
    } else if (FRACTIONS.has(c)) {
      if (isDigit(raw[i + 1] ?? "")) {
        throw new Refused("A digit stands directly after a fraction");
      }
      result += (isDigit(before) ? " " : "") + FRACTIONS.get(c);
    } else if (SMALL.has(c)) {
      if (!isLetter(before)) {
        throw new Refused("A raised or lowered digit belongs to no unit");
      }
      result += SMALL.get(c);
    } else if (SIGNS.has(c)) {
      result += SIGNS.get(c);
    } else if (c >= " " && c < "\u007f") {
      result += c;
    } else {
      throw new Refused("A character in it has no meaning here");
    }
  }
  return result.trim();
}

/** The form in which spellings of units are compared. */
function squeeze(spelling) {
  let key = "";
  for (let i = 0; i < spelling.length; i++) {
    const c = spelling[i] >= "A" && spelling[i] <= "Z" ? spelling[i].toLowerCase() : spelling[i];
    const before = i === 0 ? " " : spelling[i - 1];
    const after = i + 1 === spelling.length ? " " : spelling[i + 1];
    if (c === '"') {
      key += "in";
    } else if (c === "'" && after === "'") {
      key += "in";
      i++;
    } else if (c === "'") {
      key += "ft";
    } else if (c === "p" && before === " " && i > 0 && spelling.slice(i, i + 4).toLowerCase() === "per ") {
      key += "/";
      i += 2;
    } else if (
      c === " " ||
      (c === "." && isLetter(before)) ||
      (c === "-" && (isLetter(before) || isDigit(before)) && isLetter(after)) ||
      (c === "^" && isLetter(before) && isDigit(after))
    ) {
      continue;
    } else {
      key += c;
    }
  }
  return key;
}

/** The reading of one number from the left of a text. */
class NumberReader {
  constructor(text, wanted) {
    this.text = text;
    this.wanted = wanted;
    this.at = 0;
  }

  peek(index) {
    return this.text[index] ?? "\0";
  }

  afterSpaces(index) {
    let result = index;
    while (this.peek(result) === " ") {
      result++;
    }
    return result;
  }

  refuse(what, wanted) {
    return new Refused(what, wanted ?? this.wanted);
  }

  signed() {
    const below = this.peek(this.at) === "-";
    if (below || this.peek(this.at) === "+") {
      this.at++;
    }
    const number = this.number();
    const next = this.peek(this.at);
    const power = this.peek(this.at + 1);
    if ((next === "e" || next === "E")
        && (isDigit(power) || ((power === "-" || power === "+") && isDigit(this.peek(this.at + 2))))) {
      throw this.refuse("A number with an exponent", "the number written out");
    }
    const stroke = this.afterSpaces(this.at);
    if (this.peek(stroke) === "-" && isDigit(this.peek(this.afterSpaces(stroke + 1)))) {
      throw this.refuse("A range, or a subtraction", "one number and one unit");
    }
    return below ? {n: -number.n, d: number.d} : number;
  }

  number() {
    const start = this.at;
    while (isDigit(this.peek(this.at)) || this.peek(this.at) === "." || this.peek(this.at) === ",") {
      this.at++;
    }
    const token = this.text.slice(start, this.at);
    if (token === "") {
      throw this.refuse(this.text === "" ? "Nothing is written" : "It does not begin with a number");
    }
    if (token.includes(",")) {
      throw this.refuse("A comma may mark thousands or decimals", "the number without a comma, with a point for decimals");
    }
    if (this.peek(this.at) === "/") {
      return this.stroke(this.whole(token), false);
    }
    const next = this.peek(this.at) === "-" ? this.at + 1 : this.afterSpaces(this.at);
    if (next > this.at && isDigit(this.peek(next))) {
      let end = next;
      while (isDigit(this.peek(end))) {
        end++;
      }
      if (this.peek(end) === "/" && isDigit(this.peek(end + 1))) {
        const whole = this.whole(token);
        const upper = this.whole(this.text.slice(next, end));
        this.at = end;
        return plus(this.stroke(upper, true), {n: whole, d: 1n});
      }
      if (this.peek(this.at) === " ") {
        throw this.refuse("More than one number", "one number and one unit");
      }
    }
    return this.decimal(token);
  }

  stroke(upper, mixed) {
    const start = ++this.at;
    while (isDigit(this.peek(this.at))) {
      this.at++;
    }
    if (start === this.at) {
      throw this.refuse("Nothing stands below the fraction stroke");
    }
    const lower = this.whole(this.text.slice(start, this.at));
    if (lower === 0n) {
      throw this.refuse("A fraction over zero");
    }
    if (upper >= lower) {
      throw mixed
        ? this.refuse("A fraction of one or more after a whole number")
        : this.refuse("It may be a mixed number that lost its space", "the whole number apart from the fraction: 5 1/2");
    }
    return fraction(upper, lower);
  }

  whole(token) {
    if (token.includes(".")) {
      throw this.refuse("A decimal and a fraction in one number");
    }
    if (token.length > MOST_DIGITS) {
      throw this.refuse("More than " + MOST_DIGITS + " digits");
    }
    return BigInt(token);
  }

  decimal(token) {
    const point = token.indexOf(".");
    if (point < 0) {
      return {n: this.whole(token), d: 1n};
    }
    if (token.indexOf(".", point + 1) >= 0) {
      throw this.refuse("More than one decimal point");
    }
    const after = token.slice(point + 1);
    if (after === "") {
      throw this.refuse("Nothing stands after the decimal point");
    }
    return fraction(this.whole(token.slice(0, point) + after), 10n ** BigInt(after.length));
  }
}

/** Whether a digit stands where no unit has one. */
function startsAnotherNumber(written) {
  for (let i = 0; i < written.length; i++) {
    if (isDigit(written[i])) {
      const before = i === 0 ? " " : written[i - 1];
      if (!isLetter(before) && !isDigit(before) && !(before === "^" && i > 1 && isLetter(written[i - 2]))) {
        return true;
      }
    }
  }
  return false;
}

/** The value in the dimension's first unit. Each unit is so many times that one, and so much more at its zero. */
const toBase = (value, unit) => plus(times(value, given(unit.times)), given(unit.more));
const fromBase = (base, unit) => over(minus(base, given(unit.more)), given(unit.times));

/** Reads a quantity of a dimension; gives its value in the dimension's first unit. */
function readQuantity(typed, dimension) {
  const wanted = "a number and a unit (" + dimension.usual + ")";
  if (typed.length > LONGEST) {
    throw new Refused("It is longer than a quantity can be", wanted);
  }
  const reader = new NumberReader(plain(typed), wanted);
  let number = reader.signed();
  const written = reader.text.slice(reader.at).trim();
  if (written === "") {
    throw reader.refuse("A unit is needed");
  }
  if (startsAnotherNumber(written)) {
    throw reader.refuse("More than one number", "one number and one unit");
  }
  let key = squeeze(written);
  if (dimension.vacuum) {
    const without = key.replace(/vac(uum)?$/, "");
    if (without !== key) {
      if (number.n < 0n) {
        throw reader.refuse("A minus sign and the word vacuum say the same thing twice", "one of the two");
      }
      number = {n: -number.n, d: number.d};
      key = without;
    }
  }
  const unit = dimension.units.find((one) => one.spellings.includes(key));
  if (unit === undefined) {
    throw reader.refuse("No unit of " + dimension.words + " is spelled \u201c" + written + "\u201d");
  }
  if (number.n < 0n && !dimension.below) {
    throw reader.refuse("Below zero, which no " + dimension.words + " can be");
  }
  const base = toBase(number, unit);
  if (dimension.least && compare(base, given(dimension.least)) < 0) {
    throw reader.refuse("Below absolute zero, which no temperature can be");
  }
  return {base, unit};
}

/** A number to four digits, for showing only. */
function shown(value) {
  return String(Number((Number(value.n) / Number(value.d)).toPrecision(4)));
}

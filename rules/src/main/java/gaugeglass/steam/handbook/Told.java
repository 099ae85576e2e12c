package gaugeglass.steam.handbook;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.QuantityFormatException;
import gaugeglass.engine.quantity.Rational;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.text.Nearest;
import gaugeglass.engine.text.Words;
import gaugeglass.steam.reckon.Cycling.Burn;
import gaugeglass.steam.reckon.Radiator;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What somebody told a reckoning, read into quantities. */
final class Told {
    private static final int MOST_BURNS = 500;

    private final Map<String, Object> values;

    private Told(Map<String, Object> values) {
        this.values = values;
    }

    /**
     * Reads {@code name=value} pairs.
     *
     * @throws Mistakes with every pair that cannot be read and every input that is wanting
     */
    static Told read(String place, List<Input> inputs, List<String> pairs) {
        List<Mistake> mistakes = new ArrayList<>();
        Map<String, String> written = new LinkedHashMap<>();
        List<String> names = inputs.stream().map(Input::name).toList();
        for (String pair : pairs) {
            int at = pair.indexOf('=');
            String name = at < 0 ? pair : pair.substring(0, at).strip();
            if (at < 0) {
                mistakes.add(mistake(place, "", "'" + pair + "' has no =", "name=value", near(name, names)));
            } else if (!names.contains(name)) {
                mistakes.add(mistake(
                        place,
                        "",
                        "'" + name + "' is not asked for here",
                        "one of " + String.join(", ", names),
                        near(name, names)));
            } else if (written.put(name, pair.substring(at + 1)) != null) {
                mistakes.add(mistake(place, name, "told twice", "one value", ""));
            }
        }
        Map<String, Object> values = new LinkedHashMap<>();
        for (Input input : inputs) {
            String text = written.getOrDefault(input.name(), input.otherwise());
            if (text.isEmpty() && !written.containsKey(input.name())) {
                if (input.need() == Input.Need.REQUIRED) {
                    mistakes.add(mistake(
                            place,
                            input.name(),
                            "not told: " + input.what(),
                            input.kind().form(),
                            ""));
                }
                continue;
            }
            try {
                values.put(input.name(), value(input.kind(), text));
            } catch (QuantityFormatException e) {
                mistakes.add(mistake(
                        place,
                        input.name(),
                        "'" + e.typed() + "': " + e.problem(),
                        e.expected(),
                        e.nearest().orElse("")));
            } catch (WordException e) {
                mistakes.add(mistake(
                        place, input.name(), e.getMessage(), input.kind().form(), e.nearest));
            } catch (IllegalArgumentException e) {
                mistakes.add(mistake(place, input.name(), e.getMessage(), "", ""));
            }
        }
        if (!mistakes.isEmpty()) {
            throw new Mistakes(mistakes);
        }
        return new Told(values);
    }

    boolean has(String name) {
        return values.containsKey(name);
    }

    Quantity quantity(String name) {
        return get(name, Quantity.class);
    }

    Optional<Quantity> perhaps(String name) {
        return has(name) ? Optional.of(quantity(name)) : Optional.empty();
    }

    Rational number(String name) {
        return get(name, Rational.class);
    }

    <E extends Enum<E>> E choice(String name, Class<E> type) {
        String word = get(name, String.class);
        for (E constant : type.getEnumConstants()) {
            if (Words.of(constant).equals(word.toLowerCase(Locale.ROOT))) {
                return constant;
            }
        }
        throw new IllegalStateException(name + " offers a word that " + type.getSimpleName() + " has not: " + word);
    }

    String word(String name) {
        return get(name, String.class);
    }

    Price price(String name) {
        return get(name, Price.class);
    }

    List<Radiator> radiators(String name) {
        return list(name).stream().map(Radiator.class::cast).toList();
    }

    List<Burn> burns(String name) {
        return list(name).stream().map(Burn.class::cast).toList();
    }

    /** An amount of money. */
    record Price(Rational amount, String currency) {}

    private List<?> list(String name) {
        return get(name, List.class);
    }

    private <T> T get(String name, Class<T> type) {
        Object value = values.get(name);
        if (value == null) {
            throw new IllegalStateException("nothing was told of " + name);
        }
        return type.cast(value);
    }

    private static Object value(Input.Kind kind, String text) {
        if (kind instanceof Input.Measure measure) {
            return Quantity.parse(text, measure.dimension());
        }
        if (kind instanceof Input.Number) {
            return Quantity.of(text.strip(), Unit.TIMES).value();
        }
        if (kind instanceof Input.Choice choice) {
            String word = text.strip().toLowerCase(Locale.ROOT).replace(' ', '-');
            if (!choice.words().contains(word)) {
                throw new WordException("no such word: '" + text + "'", near(word, choice.words()));
            }
            return word;
        }
        if (kind instanceof Input.Money) {
            String stripped = text.strip();
            int space = stripped.indexOf(' ');
            if (space < 0) {
                throw new WordException("'" + text + "' does not say which money", "");
            }
            Rational amount =
                    Quantity.of(stripped.substring(0, space), Unit.TIMES).value();
            if (amount.signum() < 0) {
                throw new WordException("'" + text + "' is below zero", "");
            }
            return new Price(amount, stripped.substring(space + 1).strip());
        }
        return kind instanceof Input.Survey ? Radiator.parse(text) : burnsOf(text);
    }

    private static List<Burn> burnsOf(String text) {
        List<Burn> burns = new ArrayList<>();
        for (String word : text.strip().split("[\\s;]+")) {
            int at = word.indexOf('-');
            if (at < 0) {
                throw new WordException("'" + word + "' has no - between on and off", "");
            }
            try {
                burns.add(new Burn(LocalTime.parse(word.substring(0, at)), LocalTime.parse(word.substring(at + 1))));
            } catch (DateTimeParseException e) {
                throw new WordException("'" + word + "' is not two times of day, hours with two digits", "");
            }
            if (burns.size() > MOST_BURNS) {
                throw new WordException("more than " + MOST_BURNS + " burns", "");
            }
        }
        return List.copyOf(burns);
    }

    private static String near(String word, List<String> known) {
        return Nearest.to(word, known).orElse("");
    }

    private static Mistake mistake(String place, String where, String what, String expected, String nearest) {
        return new Mistake(place, 0, 0, where, what, expected, nearest);
    }

    /** Something that is not written as it should be. */
    private static final class WordException extends IllegalArgumentException {
        private static final long serialVersionUID = 1L;
        private final String nearest;

        WordException(String problem, String nearest) {
            super(problem);
            this.nearest = nearest;
        }
    }
}

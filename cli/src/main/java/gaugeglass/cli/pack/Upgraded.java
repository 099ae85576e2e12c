package gaugeglass.cli.pack;

import gaugeglass.engine.history.Change;
import gaugeglass.engine.pack.Pack;
import gaugeglass.engine.pack.Upgrade;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Words for what changed in the rulebook since the version that a pack was made for. */
final class Upgraded {
    private Upgraded() {}

    /** One line, for whoever is about to judge by it; empty where the pack was made for what is there. */
    static Optional<String> line(Upgrade upgrade) {
        Pack pack = upgrade.pack();
        String begin = pack.title() + " " + pack.version() + " " + madeFor(upgrade);
        String ask = ": gaugeglass pack changes " + pack.files().name();
        return switch (upgrade.standing()) {
            case SAME -> Optional.empty();
            case EARLIER -> Optional.of(begin + "; " + ofTouched(upgrade) + ask);
            case LATER -> Optional.of(begin + ", which is the earlier one; take the newer program");
            case UNRECORDED -> Optional.of(begin + "; what changed since is not recorded" + ask);
        };
    }

    private static String madeFor(Upgrade upgrade) {
        return "was made for version " + upgrade.pack().madeFor() + " of "
                + upgrade.pack().tailors() + ", and this is " + upgrade.here();
    }

    private static String ofTouched(Upgrade upgrade) {
        return switch (upgrade.touched().size()) {
            case 0 -> "nothing that it touches changed since";
            case 1 -> "1 thing that it touches changed since";
            default -> upgrade.touched().size() + " things that it touches changed since";
        };
    }

    /** What changed of that which the pack touches, and how much else; the rest is listed on request. */
    static List<String> told(Upgrade upgrade, boolean isWhole) {
        List<String> lines = new ArrayList<>();
        String begin = "It " + madeFor(upgrade);
        switch (upgrade.standing()) {
            case SAME -> {
                if (isWhole) {
                    lines.add("It was made for this version, " + upgrade.here() + ".");
                }
            }
            case LATER ->
                lines.add(begin + ", which is the earlier one. What it leans on may be missing here, or say"
                        + " something else: take the newer program.");
            case UNRECORDED ->
                lines.add(begin + ". What changed in between is not recorded, as "
                        + upgrade.pack().madeFor()
                        + " was never released. Look at all that it changes: gaugeglass pack differs "
                        + upgrade.pack().files().name());
            case EARLIER -> {
                lines.add(begin + "; " + ofTouched(upgrade) + (upgrade.touched().isEmpty() ? "." : ":"));
                upgrade.touched().forEach(change -> lines.add("  - " + change.line()));
                if (isWhole) {
                    rest(upgrade, lines);
                } else {
                    lines.add(besides(upgrade)
                            + (upgrade.rest().isEmpty()
                                    ? ""
                                    : ": gaugeglass pack changes "
                                            + upgrade.pack().files().name()));
                }
            }
        }
        return lines;
    }

    private static String besides(Upgrade upgrade) {
        return upgrade.rest().isEmpty()
                ? "Nothing else changed"
                : "Besides, " + count(upgrade, Change.Fate.CHANGED, "changed") + ", "
                        + count(upgrade, Change.Fate.NEW, "new") + ", " + count(upgrade, Change.Fate.GONE, "gone");
    }

    private static String count(Upgrade upgrade, Change.Fate fate, String word) {
        return upgrade.rest().stream().filter(change -> change.fate() == fate).count() + " " + word;
    }

    private static void rest(Upgrade upgrade, List<String> lines) {
        lines.add(besides(upgrade) + (upgrade.rest().isEmpty() ? "." : ":"));
        for (Change.Fate fate : List.of(Change.Fate.GONE, Change.Fate.CHANGED, Change.Fate.NEW)) {
            upgrade.rest().stream()
                    .filter(change -> change.fate() == fate)
                    .forEach(change -> lines.add("  - " + change.line()));
        }
    }
}

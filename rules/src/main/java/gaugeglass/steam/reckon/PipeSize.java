package gaugeglass.steam.reckon;

import gaugeglass.engine.quantity.Dimension;
import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import java.util.List;

/**
 * A nominal size of steel pipe, schedule 40, with its diameters: {@code 2 1/2 in} is 2.875 in outside and 2.469 in inside.
 *
 * <p>Source: ASME B36.10M, from memory with high certainty; 1/2 to 12 in.
 *
 * @param nominal the size it is called by
 * @param outside outside diameter
 * @param inside inside diameter
 */
public record PipeSize(Quantity nominal, Quantity outside, Quantity inside) {
    private static final List<PipeSize> ALL = Table.read("pipes.csv").rows().stream()
            .map(row -> new PipeSize(
                    inches(row.text("size")), row.quantity("outside", Unit.INCH), row.quantity("inside", Unit.INCH)))
            .toList();
    private static final Quantity LARGEST = Quantity.of(100, Unit.INCH);

    /**
     * The pipe of a nominal size.
     *
     * @param nominal as pipe is called, 1/2 to 12 in
     * @throws IllegalArgumentException if no pipe is called so, with the sizes there are; or for another dimension
     */
    public static PipeSize of(Quantity nominal) {
        if (nominal.dimension() != Dimension.LENGTH) {
            throw new IllegalArgumentException("pipe size: expected a length, but " + nominal + " is of "
                    + nominal.dimension().words());
        }
        for (PipeSize size : ALL) {
            if (size.nominal.equals(nominal)) {
                return size;
            }
        }
        throw new IllegalArgumentException("pipe size of " + nominal + "; expected one of " + names() + " in");
    }

    /**
     * The largest size that is no larger than a measured one, so that a pipe measured between two sizes is taken for the
     * smaller.
     *
     * @param measured 1/2 in or more
     * @throws IllegalArgumentException below the smallest size, or for another dimension
     */
    public static PipeSize notAbove(Quantity measured) {
        PipeSize found = of(ALL.get(0).nominal);
        Ranges.within("pipe size", measured, found.nominal, LARGEST);
        for (PipeSize size : ALL) {
            found = size.nominal.isAtMost(measured) ? size : found;
        }
        return found;
    }

    /** The size as it is called, without its unit: {@code 2 1/2}. */
    public String name() {
        return nominal.toString().replace(" in", "");
    }

    /** Every size, smallest first. */
    public static List<PipeSize> all() {
        return ALL;
    }

    private static String names() {
        return String.join(", ", ALL.stream().map(PipeSize::name).toList());
    }

    private static Quantity inches(String size) {
        return Quantity.parse(size + " in", Dimension.LENGTH);
    }
}

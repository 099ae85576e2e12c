package gaugeglass.engine.build;

import gaugeglass.engine.book.BookReader;
import gaugeglass.engine.book.Limit;
import gaugeglass.engine.quantity.Quantity;
import java.time.Period;
import java.util.List;

/** Moves limits by their smallest step. */
public final class Limits {
    private Limits() {}

    /** The limit one step lower and one step higher. */
    public static List<Limit> moved(Limit limit) {
        Object step = limit.value() instanceof Quantity quantity
                ? Quantity.parse(limit.step(), quantity.dimension().distance())
                : BookReader.value(limit.step(), BookReader.measures(limit.value()));
        return List.of(with(limit, sum(limit.value(), step, -1)), with(limit, sum(limit.value(), step, 1)));
    }

    private static Object sum(Object value, Object step, int sign) {
        if (value instanceof Period period) {
            Period by = (Period) step;
            return sign < 0 ? period.minus(by) : period.plus(by);
        }
        if (value instanceof Integer number) {
            return number + sign * (Integer) step;
        }
        Quantity quantity = (Quantity) value;
        return sign < 0 ? quantity.minus((Quantity) step) : quantity.plus((Quantity) step);
    }

    private static Limit with(Limit limit, Object value) {
        return limit.with(value, value.toString(), limit.layer());
    }
}

package gaugeglass.steam.reckon;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import java.util.List;

/** The table of combustion efficiency by oxygen and flue gas rise. */
final class EfficiencyTable {
    private static final Table TABLE = Table.read("efficiency.csv");

    /** The rises that have a column, in F, lowest first. */
    static final List<String> RISES = TABLE.columns().subList(2, TABLE.columns().size());

    private EfficiencyTable() {}

    static int last() {
        return TABLE.rows().size() - 1;
    }

    static Quantity oxygen(int row) {
        return TABLE.rows().get(row).quantity("oxygen", Unit.PERCENT);
    }

    static Quantity cell(int row, int column) {
        return TABLE.rows().get(row).quantity(RISES.get(column), Unit.PERCENT);
    }
}

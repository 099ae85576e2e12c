package gaugeglass.steam.observed;

import gaugeglass.engine.quantity.Quantity;
import gaugeglass.engine.quantity.Unit;
import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Measured;
import gaugeglass.engine.vocabulary.Stage;
import java.util.List;

/** What the boiler's plate and certificate say of it. */
public final class BoilerPlate {
    /** In the order of a visit. */
    public static final List<Class<? extends Record>> ITEMS = List.of(
            BoilerConstruction.class,
            PlateInput.class,
            LeastInputMark.class,
            LeastInput.class,
            PlateOutputMark.class,
            PlateOutput.class,
            PlateReliefMark.class,
            PlateReliefCapacity.class,
            HeatingSurface.class,
            CertificateNeed.class,
            CertificateSeen.class,
            TwinControls.class);

    private BoilerPlate() {}

    /** What the boiler is made of and where its fire goes. */
    public enum BoilerMake {
        CAST_IRON,
        STEEL_FIRETUBE,
        STEEL_WATERTUBE
    }

    /** What the boiler is made of and where its fire goes. */
    @Item(
            id = "plate.construction",
            of = "boiler",
            stage = Stage.ARRIVAL,
            structural = true,
            carried = true,
            ask = "Is the boiler of cast-iron sections, or of steel with fire or water in its tubes?")
    public record BoilerConstruction(BoilerMake make) {}

    /** The fuel input on the plate. */
    @Item(
            id = "plate.input",
            of = "boiler",
            stage = Stage.ARRIVAL,
            carried = true,
            ask = "What input is on the plate or, where the boiler has none, on the burner's?",
            look = "Oil: gallons an hour times 140,000 Btu.",
            unreadBecause = {"neither plate legible"})
    public record PlateInput(
            @Measured(unit = Unit.BTU_PER_HOUR, from = "10000", to = "20000000")
            Quantity input) {}

    /** Whether a figure is on the plate. */
    public enum PlateMark {
        MARKED,
        NOT_MARKED
    }

    /** Whether somebody who may say so has named a least input. */
    @Item(
            id = "plate.least-mark",
            of = "boiler",
            stage = Stage.ARRIVAL,
            structural = true,
            carried = true,
            ask = "Does a plate or the maker's sheet name the least input that the burner may be set to?",
            look = "On the boiler's or the burner's plate, or in the burner's sheet beside its settings.",
            unreadBecause = {"no plate legible", "sheet not at hand"})
    public record LeastInputMark(PlateMark mark) {}

    /** The least input that the maker allows. */
    @Item(
            id = "plate.least-input",
            of = "boiler",
            stage = Stage.ARRIVAL,
            carried = true,
            ask = "What least input is named, for this burner in this boiler?",
            look =
                    "The higher of the two where boiler and burner each name one. Oil: gallons an hour times 140,000 Btu.",
            unreadBecause = {"figure not legible"})
    public record LeastInput(
            @Measured(unit = Unit.BTU_PER_HOUR, from = "5000", to = "20000000")
            Quantity input) {}

    /** Whether gross output is on the plate. */
    @Item(
            id = "plate.output-mark",
            of = "boiler",
            stage = Stage.ARRIVAL,
            structural = true,
            carried = true,
            ask = "Does the plate give the gross output?",
            look =
                    "Gross output, not the net rating in square feet or Btu/h, which leaves the pick-up out. Where the plate"
                            + " is gone nothing is marked.",
            unreadBecause = {"plate not legible"})
    public record PlateOutputMark(PlateMark mark) {}

    /** The gross output on the plate. */
    @Item(
            id = "plate.output",
            of = "boiler",
            stage = Stage.ARRIVAL,
            carried = true,
            ask = "What gross output is on the plate?",
            unreadBecause = {"plate not legible"})
    public record PlateOutput(
            @Measured(unit = Unit.BTU_PER_HOUR, from = "8000", to = "18000000")
            Quantity output) {}

    /** Whether the boiler is marked with the safety valve capacity that it needs. */
    @Item(
            id = "plate.relief-mark",
            of = "boiler",
            stage = Stage.ARRIVAL,
            structural = true,
            carried = true,
            ask = "Does the boiler's own marking give a least safety valve capacity?",
            look = "On the plate or cast into a section, in lb/h. Where the plate is gone nothing is marked.",
            unreadBecause = {"plate not legible"})
    public record PlateReliefMark(PlateMark mark) {}

    /** The least safety valve capacity that the boiler is marked with. */
    @Item(
            id = "plate.relief-capacity",
            of = "boiler",
            stage = Stage.ARRIVAL,
            carried = true,
            ask = "What least safety valve capacity is the boiler marked with, in lb/h?",
            unreadBecause = {"plate not legible"})
    public record PlateReliefCapacity(
            @Measured(unit = Unit.POUND_PER_HOUR, from = "8", to = "20000")
            Quantity least) {}

    /** The heating surface on the plate. */
    @Item(
            id = "plate.heating-surface",
            of = "boiler",
            stage = Stage.ARRIVAL,
            carried = true,
            ask = "What heating surface is on the plate of the steel boiler?",
            unreadBecause = {"plate not legible", "not on the plate"})
    public record HeatingSurface(
            @Measured(unit = Unit.SQUARE_FOOT, from = "1", to = "5000")
            Quantity area) {}

    /** Whether a certificate is called for. */
    public enum CertificateRule {
        REQUIRED,
        NOT_REQUIRED
    }

    /** Whether the jurisdiction wants an inspection certificate for this boiler. */
    @Item(
            id = "certificate.need",
            of = "boiler",
            stage = Stage.ARRIVAL,
            structural = true,
            carried = true,
            ask = "Does the jurisdiction require an inspection certificate for this boiler?",
            unreadBecause = {"office not asked"})
    public record CertificateNeed(CertificateRule need) {}

    /** How the certificate is found. */
    public enum CertificateState {
        IN_DATE,
        RUN_OUT,
        MISSING
    }

    /** Whether the inspection certificate is there and still holds. */
    @Item(
            id = "certificate.state",
            of = "boiler",
            stage = Stage.ARRIVAL,
            ask = "Is the inspection certificate there, and does it still hold today?",
            look = "It holds up to its last day, that day included.",
            unreadBecause = {"date not legible"})
    public record CertificateSeen(CertificateState state) {}

    /** How the controls of boilers on one main depend on each other. */
    public enum ControlSharing {
        SINGLE_BOILER,
        INDEPENDENT,
        SHARED
    }

    /** Whether each of several boilers keeps its own controls when another is isolated. */
    @Item(
            id = "plate.twin-controls",
            of = "boiler",
            stage = Stage.COLD,
            structural = true,
            ask = "Where boilers stand together: if another is shut off, does this one keep all its own controls?",
            look = "Follow each control's pipe: a cutoff or limit beyond the other boiler's valve is lost with it.",
            unreadBecause = {"piping not followed"})
    public record TwinControls(ControlSharing sharing) {}
}

package gaugeglass.engine.vocabulary;

import gaugeglass.engine.quantity.Unit;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The unit in which a quantity is usual, and the span inside which an answer is believed. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Measured {
    /** The usual unit; it also sets the dimension. */
    Unit unit();

    /** The least value that is believed, in the usual unit, inclusive. */
    String from();

    /** The greatest value that is believed, in the usual unit, inclusive. */
    String to();
}

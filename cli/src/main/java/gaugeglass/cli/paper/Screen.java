package gaugeglass.cli.paper;

import java.nio.charset.Charset;

/**
 * What text is printed on.
 *
 * @param width how many columns to use, from {@value #NARROWEST} to {@value #WIDEST}
 * @param charset what it can show; any other character is written out
 * @param colour whether it shows colour; what colour tells is always told in words too
 */
public record Screen(int width, Charset charset, boolean colour) {
    /** Narrower lines would break in the middle of most words. */
    public static final int NARROWEST = 40;

    /** Longer lines are harder to read, and paper is no wider. */
    public static final int WIDEST = 80;

    public Screen {
        width = Math.max(NARROWEST, Math.min(WIDEST, width));
    }
}

package gaugeglass.cli.printed;

import java.awt.geom.AffineTransform;

/**
 * How a camera was held, as a JPEG file notes it in its Exif part (CIPA DC-008, tag 0x0112): 1 upright, 3 upside down,
 * 6 and 8 on its sides, the other four mirrored.
 */
final class Orientation {
    private static final int TAG = 0x0112;
    private static final int UPRIGHT = 1;

    private Orientation() {}

    /** From 1 to 8; 1 where nothing is noted. */
    static int of(byte[] jpeg) {
        try {
            return read(jpeg);
        } catch (IndexOutOfBoundsException e) {
            return UPRIGHT;
        }
    }

    private static int read(byte[] jpeg) {
        if (number(jpeg, 0, 2, false) != 0xFFD8) {
            return UPRIGHT;
        }
        int at = 2;
        while (number(jpeg, at, 1, false) == 0xFF) {
            int marker = number(jpeg, at + 1, 1, false);
            int length = number(jpeg, at + 2, 2, false);
            boolean isExif = marker == 0xE1 && number(jpeg, at + 4, 4, false) == 0x45786966;
            if (isExif) {
                return inTiff(jpeg, at + 10);
            }
            if (marker == 0xDA || length < 2) {
                return UPRIGHT;
            }
            at += 2 + length;
        }
        return UPRIGHT;
    }

    private static int inTiff(byte[] jpeg, int start) {
        boolean little = jpeg[start] == 'I';
        int directory = start + number(jpeg, start + 4, 4, little);
        int entries = number(jpeg, directory, 2, little);
        for (int i = 0; i < entries; i++) {
            int entry = directory + 2 + 12 * i;
            if (number(jpeg, entry, 2, little) == TAG) {
                int value = number(jpeg, entry + 8, 2, little);
                return value >= 1 && value <= 8 ? value : UPRIGHT;
            }
        }
        return UPRIGHT;
    }

    private static int number(byte[] bytes, int at, int length, boolean little) {
        int number = 0;
        for (int i = 0; i < length; i++) {
            int next = bytes[little ? at + length - 1 - i : at + i] & 0xFF;
            number = number << 8 | next;
        }
        return number;
    }

    /** What turns a picture of this width and height upright. */
    static AffineTransform turn(int orientation, int width, int height) {
        return switch (orientation) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, width, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, width, height);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, height);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, height, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, height, width);
            case 8 -> new AffineTransform(0, -1, 1, 0, 0, width);
            default -> new AffineTransform();
        };
    }
}

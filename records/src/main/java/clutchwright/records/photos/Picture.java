package clutchwright.records.photos;

import clutchwright.records.checks.Problem;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import net.coobird.thumbnailator.Thumbnails;

/// A picture that was taken apart and put together again as JPEG: whatever else the file held,
/// where and with what it was taken among it, is gone.
final class Picture {

    /// Of a file as it is handed in, bytes.
    static final long LARGEST_FILE = 30L << 20;

    /// Of a picture as it is handed in: some kilobytes may claim to be gigapixels.
    static final long MOST_PIXELS = 100_000_000;

    private static final int LONGEST_SIDE = 2400;
    private static final int LONGEST_SIDE_OF_THUMBNAIL = 480;

    private final byte[] jpeg;
    private final byte[] thumbnail;
    private final int width;
    private final int height;

    private Picture(byte[] jpeg, byte[] thumbnail, int width, int height) {
        this.jpeg = jpeg;
        this.thumbnail = thumbnail;
        this.width = width;
        this.height = height;
    }

    static Result read(byte[] file) {
        if (file.length > LARGEST_FILE) {
            return new Result.NotOne(new Problem.ImageTooLarge(file.length, LARGEST_FILE));
        }
        try (var input = ImageIO.createImageInputStream(new ByteArrayInputStream(file))) {
            var readers = ImageIO.getImageReaders(input);
            if (!readers.hasNext()) {
                return new Result.NotOne(new Problem.NotAnImage(beginning(file)));
            }
            var reader = readers.next();
            try {
                reader.setInput(input, true, true);
                int width = reader.getWidth(0);
                int height = reader.getHeight(0);
                if ((long) width * height > MOST_PIXELS) {
                    return new Result.NotOne(new Problem.TooManyPixels(width, height, MOST_PIXELS));
                }
            } finally {
                reader.dispose();
            }
            return new Result.Good(redrawn(file));
        } catch (IOException | RuntimeException e) {
            // Decoders throw whatever a broken file makes them stumble over.
            return new Result.NotOne(new Problem.NotAnImage(beginning(file)));
        }
    }

    /// The same picture from the very bytes that were read; only for files of our own.
    Picture withFile(byte[] file) {
        return new Picture(file.clone(), thumbnail, width, height);
    }

    byte[] jpeg() {
        return jpeg.clone();
    }

    byte[] thumbnail() {
        return thumbnail.clone();
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    private static Picture redrawn(byte[] file) throws IOException {
        // Turns it upright by what the camera noted, which is lost afterwards.
        var upright =
                opaque(
                        Thumbnails.of(new ByteArrayInputStream(file))
                                .scale(1)
                                .useExifOrientation(true)
                                .asBufferedImage());
        var kept = within(upright, LONGEST_SIDE);
        var small = within(upright, LONGEST_SIDE_OF_THUMBNAIL);
        return new Picture(jpeg(kept, 0.88), jpeg(small, 0.82), kept.getWidth(), kept.getHeight());
    }

    private static BufferedImage within(BufferedImage image, int side) throws IOException {
        return Math.max(image.getWidth(), image.getHeight()) <= side
                ? image
                : Thumbnails.of(image).size(side, side).asBufferedImage();
    }

    /// JPEG has no transparency; what was transparent becomes white.
    private static BufferedImage opaque(BufferedImage image) {
        var drawn =
                new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
        var pen = drawn.createGraphics();
        try {
            pen.drawImage(image, 0, 0, Color.WHITE, null);
        } finally {
            pen.dispose();
        }
        return drawn;
    }

    private static byte[] jpeg(BufferedImage image, double quality) {
        var written = new ByteArrayOutputStream();
        try {
            Thumbnails.of(image)
                    .scale(1)
                    .outputQuality(quality)
                    .outputFormat("jpg")
                    .toOutputStream(written);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return written.toByteArray();
    }

    /// The first signs of what it is instead, for the message.
    private static String beginning(byte[] file) {
        var shown = new StringBuilder();
        for (int i = 0; i < Math.min(file.length, 16); i++) {
            shown.append(file[i] >= 32 && file[i] < 127 ? (char) file[i] : '.');
        }
        return shown.toString();
    }

    sealed interface Result {

        record Good(Picture picture) implements Result {}

        record NotOne(Problem problem) implements Result {}
    }
}

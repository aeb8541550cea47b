package clutchwright.records.photos;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/// Drawn pictures for tests.
public final class Pictures {

    private Pictures() {}

    public static byte[] png(int width, int height) {
        return written(width, height, BufferedImage.TYPE_INT_ARGB, "png");
    }

    static byte[] jpeg(int width, int height) {
        return written(width, height, BufferedImage.TYPE_INT_RGB, "jpg");
    }

    private static byte[] written(int width, int height, int type, String format) {
        var image = new BufferedImage(width, height, type);
        var pen = image.createGraphics();
        pen.setColor(new Color(120, 80, 40));
        pen.fillOval(0, 0, width, height);
        pen.dispose();
        var out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, format, out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}

package clutchwright.app.demo;

import clutchwright.engine.genetics.LocusId;
import java.awt.Color;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Set;
import java.util.SplittableRandom;
import javax.imageio.ImageIO;

/// A stretch of patterned skin, drawn: dark ground, light blotches, and what a few genes make of
/// it. It is an ornament, not a likeness.
final class PatternDrawing {

    private static final int WIDTH = 720;
    private static final int HEIGHT = 480;
    private static final Set<String> RECESSIVE =
            Set.of("clown", "piebald", "albino", "lavender", "desert-ghost");

    private final Truth truth;
    private final SplittableRandom random;

    private PatternDrawing(Truth truth, long seed) {
        this.truth = truth;
        this.random = new SplittableRandom(seed);
    }

    /// A PNG file.
    static byte[] of(Truth truth, long seed) {
        return new PatternDrawing(truth, seed).draw();
    }

    private byte[] draw() {
        var image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        var g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        var ground = ground();
        var blotch = blotch();
        g.setColor(ground);
        g.fillRect(0, 0, WIDTH, HEIGHT);
        g.setColor(blotch);
        var plain = shows("clown") ? 3 : 9;
        for (int i = 0; i < plain; i++) {
            g.fill(saddle(40 + i * (WIDTH / (double) plain), i % 2 == 0));
        }
        if (shows("clown") || shows("pinstripe")) {
            g.setColor(shows("clown") ? ground.darker() : blotch.brighter());
            g.fill(new RoundRectangle2D.Double(0, HEIGHT / 2.0 - 16, WIDTH, 32, 30, 30));
        }
        if (shows("piebald")) {
            g.setColor(new Color(0xF4EFE4));
            var from = 120 + random.nextInt(120);
            g.fill(new RoundRectangle2D.Double(from, 0, 330, HEIGHT, 90, 90));
        }
        scales(image);
        g.dispose();
        try (var out = new ByteArrayOutputStream()) {
            ImageIO.write(image, "png", out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot write a drawing", e);
        }
    }

    private Color ground() {
        if (shows("albino")) {
            return new Color(0xF3E7C4);
        }
        if (shows("lavender")) {
            return new Color(0xD9CBE0);
        }
        if (shows("bel")) {
            return new Color(0x6F5B3E);
        }
        if (shows("desert-ghost")) {
            return new Color(0x6A6252);
        }
        if (shows("cinnamon")) {
            return new Color(0x3A2117);
        }
        return new Color(0x33271D);
    }

    private Color blotch() {
        if (shows("albino")) {
            return new Color(0xEFC25A);
        }
        if (shows("banana")) {
            return new Color(0xE9C46A);
        }
        if (shows("pastel")) {
            return new Color(0xD9B04B);
        }
        if (shows("orange-dream")) {
            return new Color(0xCE8440);
        }
        if (shows("enchi")) {
            return new Color(0xC58B4B);
        }
        if (shows("desert-ghost")) {
            return new Color(0xC7B88F);
        }
        return new Color(0xA9814A);
    }

    /// A keyhole of light ground with a dark eye or two, as royals have on their sides.
    private Area saddle(double x, boolean fromAbove) {
        var height = 150 + random.nextInt(70);
        var width = 46 + random.nextInt(26);
        var top = fromAbove ? -20 : HEIGHT - height + 20;
        var shape =
                new Area(new RoundRectangle2D.Double(x - width / 2.0, top, width, height, 44, 60));
        var headY = fromAbove ? top + height - 40 : top - 10;
        shape.add(new Area(new Ellipse2D.Double(x - width * 0.8, headY, width * 1.6, 70)));
        var eyes = shows("leopard") ? 3 : 1 + random.nextInt(2);
        for (int i = 0; i < eyes; i++) {
            var eye = 12 + random.nextInt(12);
            var dx = (i - (eyes - 1) / 2.0) * 26;
            shape.subtract(
                    new Area(
                            new Ellipse2D.Double(
                                    x + dx - eye / 2.0, headY + 26 - eye / 2.0, eye, eye * 1.3)));
        }
        var lean = AffineTransform.getRotateInstance((random.nextDouble() - 0.5) * 0.3, x, headY);
        shape.transform(lean);
        shape.intersect(new Area(new Rectangle2D.Double(0, 0, WIDTH, HEIGHT)));
        return shape;
    }

    /// A faint net of scales over everything, and a softer light from above.
    private static void scales(BufferedImage image) {
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                var row = y / 9;
                var offset = row % 2 == 0 ? 0 : 7;
                var inScale = Math.hypot((x + offset) % 14 - 7, (y % 9 - 4.5) * 1.5) / 8.5;
                var light = (1.06 - 0.16 * inScale) * (1.08 - 0.2 * y / HEIGHT);
                image.setRGB(x, y, lit(image.getRGB(x, y), light));
            }
        }
    }

    private static int lit(int rgb, double light) {
        int r = (int) Math.clamp((rgb >> 16 & 255) * light, 0, 255);
        int g = (int) Math.clamp((rgb >> 8 & 255) * light, 0, 255);
        int b = (int) Math.clamp((rgb & 255) * light, 0, 255);
        return r << 16 | g << 8 | b;
    }

    private boolean shows(String locus) {
        var genotype = truth.loci().get(new LocusId(locus));
        return genotype != null
                && (genotype.isHomozygous() || !RECESSIVE.contains(locus))
                && genotype.alleles().stream().anyMatch(allele -> !allele.isWild());
    }
}

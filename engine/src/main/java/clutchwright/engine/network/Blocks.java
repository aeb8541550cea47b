package clutchwright.engine.network;

/// Plain loops over blocks of cells, written so that the compiler makes vector instructions of
/// them.
final class Blocks {

    private Blocks() {}

    static double sum(double[] block) {
        var a = 0.0;
        var b = 0.0;
        var c = 0.0;
        var d = 0.0;
        var i = 0;
        for (; i + 3 < block.length; i += 4) {
            a += block[i];
            b += block[i + 1];
            c += block[i + 2];
            d += block[i + 3];
        }
        for (; i < block.length; i++) {
            a += block[i];
        }
        return a + b + (c + d);
    }

    static double largest(double[] cells) {
        var largest = 0.0;
        for (var cell : cells) {
            largest = cell > largest ? cell : largest;
        }
        return largest;
    }

    static void scale(double[] cells, double factor) {
        for (var i = 0; i < cells.length; i++) {
            cells[i] *= factor;
        }
    }

    static void product(double[] to, double[] a, double[] b, int fromB) {
        for (var i = 0; i < to.length; i++) {
            to[i] = a[i] * b[fromB + i];
        }
    }

    static void multiply(double[] to, double[] b, int fromB) {
        for (var i = 0; i < to.length; i++) {
            to[i] *= b[fromB + i];
        }
    }

    static void add(double[] to, int offset, double[] a) {
        for (var i = 0; i < a.length; i++) {
            to[offset + i] += a[i];
        }
    }

    static void addProduct(double[] to, int offset, double[] a, double[] b, int fromB) {
        for (var i = 0; i < a.length; i++) {
            to[offset + i] += a[i] * b[fromB + i];
        }
    }

    /// What a division by a message leaves; where nothing was, nothing is.
    static void divide(double[] to, double[] by) {
        for (var i = 0; i < to.length; i++) {
            to[i] = by[i] == 0 ? 0 : to[i] / by[i];
        }
    }
}

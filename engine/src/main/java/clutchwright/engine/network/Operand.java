package clutchwright.engine.network;

/// A table that goes into a clique's product, or that a clique's chances are summed into, as
/// the clique's sweep walks through it.
///
/// A clique's cells are swept in blocks: the outer variables stand still while the inner ones,
/// the last of the scope, run. The own variable, first of the scope, is stepped around each
/// block.
final class Operand {

    final double[] cells;

    /// How far a step of each of the clique's variables goes.
    final int[] strides;

    final boolean hasOuter;
    final boolean hasInner;

    /// The inner variables run through the cells one by one.
    final boolean isContiguous;

    /// Where the inner variables' cells lie; empty if contiguous or absent.
    final int[] places;

    /// Where the outer variables stand now.
    int offset;

    /// For each state of the own variable a block: the cells spread out, or sums to be brought
    /// in.
    private final double[][] blocks;

    private int blocksOffset = -1;

    Operand(double[] cells, int[] strides, int[] dims, int firstInner) {
        this.cells = cells;
        this.strides = strides;
        var natural = 1;
        var contiguous = true;
        var inner = false;
        for (var j = dims.length - 1; j >= firstInner; j--) {
            contiguous &= strides[j] == natural;
            inner |= strides[j] > 0;
            natural *= dims[j];
        }
        var outer = false;
        for (var j = 1; j < firstInner; j++) {
            outer |= strides[j] > 0;
        }
        hasOuter = outer;
        hasInner = inner;
        isContiguous = contiguous && inner;
        places = inner && !contiguous ? places(dims, firstInner, natural) : new int[0];
        blocks = places.length > 0 && outer ? new double[dims[0]][natural] : new double[0][];
    }

    private int[] places(int[] dims, int firstInner, int block) {
        var places = new int[block];
        var length = 1;
        for (var j = dims.length - 1; j >= firstInner; j--) {
            for (var state = 1; state < dims[j]; state++) {
                var shift = state * strides[j];
                var to = state * length;
                for (var i = 0; i < length; i++) {
                    places[to + i] = places[i] + shift;
                }
            }
            length *= dims[j];
        }
        return places;
    }

    /// The block of cells for one state of the own variable where the outer variables stand;
    /// only for an operand whose cells must be spread.
    double[] spread(int state) {
        if (blocksOffset != offset) {
            for (var own = 0; own < blocks.length; own++) {
                var base = offset + own * strides[0];
                var block = blocks[own];
                for (var i = 0; i < block.length; i++) {
                    block[i] = cells[base + places[i]];
                }
            }
            blocksOffset = offset;
        }
        return blocks[state];
    }

    /// A block that gathers what is to be summed into the cells where the outer variables
    /// stand.
    double[] gathering(int state) {
        if (blocksOffset != offset) {
            bringIn();
            blocksOffset = offset;
        }
        return blocks[state];
    }

    /// Sums what was gathered into the cells.
    void bringIn() {
        if (blocksOffset < 0) {
            return;
        }
        for (var own = 0; own < blocks.length; own++) {
            var base = blocksOffset + own * strides[0];
            var block = blocks[own];
            for (var i = 0; i < block.length; i++) {
                cells[base + places[i]] += block[i];
                block[i] = 0;
            }
        }
    }

    /// Multiplies the cells into blocks that hold all of the clique that this operand knows
    /// of.
    void multiplyInto(double[][] product) {
        for (var own = 0; own < product.length; own++) {
            var base = own * strides[0];
            var block = product[own];
            if (isContiguous) {
                for (var i = 0; i < block.length; i++) {
                    block[i] *= cells[base + i];
                }
            } else if (hasInner) {
                for (var i = 0; i < block.length; i++) {
                    block[i] *= cells[base + places[i]];
                }
            } else {
                var factor = cells[base];
                for (var i = 0; i < block.length; i++) {
                    block[i] *= factor;
                }
            }
        }
    }

    /// Sums blocks into the cells; the counterpart of [#multiplyInto].
    void sumFrom(double[][] sums) {
        for (var own = 0; own < sums.length; own++) {
            var base = own * strides[0];
            var block = sums[own];
            if (isContiguous) {
                for (var i = 0; i < block.length; i++) {
                    cells[base + i] += block[i];
                }
            } else if (hasInner) {
                for (var i = 0; i < block.length; i++) {
                    cells[base + places[i]] += block[i];
                }
            } else {
                cells[base] += Blocks.sum(block);
            }
        }
    }
}

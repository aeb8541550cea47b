package clutchwright.engine.network;

/// Exactly, if the limits allow it.
record ExactWay(Limits limits) implements Way {

    @Override
    public Solution solve(Reduced reduced, Stop stop) {
        return solve(reduced, stop, this);
    }

    private static double widthOf(Core core) {
        var width = 0.0;
        for (var component : Component.of(core)) {
            component.first();
            width = Math.max(width, component.width());
        }
        return width;
    }

    /// @param again how what is asked of the answer later is to be solved
    Solution solve(Reduced reduced, Stop stop, Way again) {
        var core = reduced.core;
        var order = new int[core.sizes.length];
        var count = 0;
        var cells = 0.0;
        var width = 0.0;
        for (var component : Component.of(core)) {
            component.search(limits);
            if (component.cost() == Double.POSITIVE_INFINITY) {
                // Only whoever asks for nothing else is told how far too wide it is.
                return new Solution.TooWide(again.equals(this) ? widthOf(core) : component.cost());
            }
            cells += component.cost();
            width = Math.max(width, component.width());
            for (var node : component.order()) {
                order[count++] = node;
            }
        }
        if (width > Math.log((double) limits.cells()) / Math.log(2)
                || 2 * cells > (double) limits.operations()) {
            return new Solution.TooWide(width);
        }
        var tree = new CliqueTree(core, order);
        var passing = new Passing(core, tree, reduced.weights);
        if (!passing.send(stop)) {
            return new Solution.Stopped();
        }
        var logTotal = reduced.logOfGone() + passing.logTotal();
        if (logTotal == Double.NEGATIVE_INFINITY) {
            return new Solution.Impossible(new Solution.Where.Together());
        }
        var chances = new double[order.length][];
        for (var i = 0; i < order.length; i++) {
            chances[i] = passing.chances[tree.positions[i]];
        }
        var rim = reduced.answer(chances, passing.asked);
        return new Answer(again, rim, logTotal, Answer.NO_ERRORS, new Quality.Exact());
    }
}

package clutchwright.app.projects;

import clutchwright.app.parts.Markup;
import clutchwright.app.parts.Strands;
import clutchwright.engine.genetics.Sex;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/// A route as a tree in time: a column for each year in which something hatches, in it the steps,
/// and lines from what is kept to the step that it is bred in. Circles are females, squares males,
/// diamonds either: the symbols of pedigrees.
final class RouteTree {

    private static final double COLUMN = 232;
    private static final double WIDTH = 196;
    private static final double LINE = 22;
    private static final double STRANDS = 42;
    private static final double HEAD = 30;
    private static final double GAP = 26;
    private static final double PAD = 10;
    private static final int LONGEST = 24;
    private static final double SYMBOL = 5;

    private final List<Node> nodes;
    private final Map<Integer, Double> tops = new HashMap<>();
    private final List<Integer> years;
    private final Map<Integer, Place> kept = new HashMap<>();

    /// A step of the route.
    ///
    /// @param anchor where the page has its words
    record Node(String anchor, int year, Parent dam, Parent sire, List<Kept> kept) {

        Node {
            kept = List.copyOf(kept);
        }

        double height() {
            return 2 * LINE
                    + PAD
                    + kept.stream()
                            .mapToDouble(one -> LINE + (one.strands().isPresent() ? STRANDS : 0))
                            .sum();
        }
    }

    /// @param from the number of what an earlier step keeps; empty for an animal of the house
    record Parent(String name, Optional<Integer> from) {}

    record Kept(
            int number, String words, Optional<Sex> sex, boolean goal, Optional<Strands> strands) {}

    private record Place(double x, double y) {}

    /// @param nodes each after those that its parents come from
    RouteTree(List<Node> nodes) {
        this.nodes = List.copyOf(nodes);
        this.years = this.nodes.stream().map(Node::year).distinct().sorted().toList();
        place();
    }

    /// Steps of a year stand under one another, in the middle of the drawing.
    private void place() {
        var byYear = new TreeMap<Integer, List<Integer>>();
        for (var i = 0; i < nodes.size(); i++) {
            byYear.computeIfAbsent(nodes.get(i).year(), _ -> new ArrayList<>()).add(i);
        }
        var tallest = byYear.values().stream().mapToDouble(this::height).max().orElse(0);
        byYear.values()
                .forEach(
                        column -> {
                            var y = HEAD + (tallest - height(column)) / 2;
                            for (var i : column) {
                                tops.put(i, y);
                                y += nodes.get(i).height() + GAP;
                            }
                        });
    }

    private double height(List<Integer> column) {
        return column.stream().mapToDouble(i -> nodes.get(i).height()).sum()
                + GAP * (column.size() - 1);
    }

    /// Where a step stands: its column from 0, and its upper edge.
    int column(int step) {
        return years.indexOf(nodes.get(step).year());
    }

    double top(int step) {
        return Optional.ofNullable(tops.get(step)).orElseThrow();
    }

    /// @param words what it shows
    Markup draw(String words) {
        var height = 0.0;
        for (var i = 0; i < nodes.size(); i++) {
            height = Math.max(height, top(i) + nodes.get(i).height());
        }
        var svg =
                new Markup()
                        .raw(
                                "<svg class=\"route\" width=\"%.0f\" viewBox=\"0 0 %.0f %.0f\""
                                        + " role=\"group\" aria-label=\"%s\">",
                                years.size() * COLUMN - (COLUMN - WIDTH),
                                years.size() * COLUMN - (COLUMN - WIDTH),
                                height + PAD,
                                words);
        for (var i = 0; i < years.size(); i++) {
            svg.raw(
                    "<text class=\"route-year\" x=\"%.1f\" y=\"14\">%d</text>",
                    i * COLUMN, years.get(i));
        }
        for (var i = 0; i < nodes.size(); i++) {
            node(svg, i);
        }
        return svg.raw("</svg>");
    }

    private void node(Markup svg, int i) {
        var node = nodes.get(i);
        var x = column(i) * COLUMN;
        var y = top(i);
        link(svg, node.dam(), x, y + LINE / 2);
        link(svg, node.sire(), x, y + LINE * 3 / 2);
        svg.raw(
                "<a href=\"#%s\"><rect class=\"route-step\" x=\"%.1f\" y=\"%.1f\" width=\"%.1f\""
                        + " height=\"%.1f\" rx=\"2\"/>",
                node.anchor(), x + 0.5, y, WIDTH - 1, node.height());
        parent(svg, node.dam(), Optional.of(Sex.FEMALE), x, y);
        parent(svg, node.sire(), Optional.of(Sex.MALE), x, y + LINE);
        svg.raw(
                "<line class=\"route-rule\" x1=\"%.1f\" x2=\"%.1f\" y1=\"%.1f\" y2=\"%.1f\"/>",
                x + PAD, x + WIDTH - PAD, y + 2 * LINE + 3, y + 2 * LINE + 3);
        var line = y + 2 * LINE + PAD / 2;
        for (var one : node.kept()) {
            symbol(svg, one.sex(), x + PAD + SYMBOL, line + LINE / 2, one.goal());
            text(svg, one.goal() ? "route-goal" : "route-kept", x + PAD + 18, line, one.words());
            kept.put(one.number(), new Place(x + WIDTH, line + LINE / 2));
            line += LINE;
            if (one.strands().isPresent()) {
                svg.raw("<svg x=\"%.1f\" y=\"%.1f\">", x + PAD + 16, line)
                        .add(one.strands().get().small())
                        .raw("</svg>");
                line += STRANDS;
            }
        }
        svg.raw("</a>");
    }

    private static void parent(Markup svg, Parent parent, Optional<Sex> sex, double x, double y) {
        symbol(svg, sex, x + PAD + SYMBOL, y + LINE / 2 + 2, false);
        text(svg, "route-parent", x + PAD + 18, y + 2, parent.name());
    }

    private static void text(Markup svg, String style, double x, double y, String words) {
        svg.raw(
                "<text class=\"%s\" x=\"%.1f\" y=\"%.1f\">%s</text>",
                style,
                x,
                y + LINE / 2 + 4.5,
                words.length() > LONGEST ? words.substring(0, LONGEST - 1) + "…" : words);
    }

    private static void symbol(Markup svg, Optional<Sex> sex, double x, double y, boolean filled) {
        var style = filled ? "route-symbol route-filled" : "route-symbol";
        if (sex.isEmpty()) {
            svg.raw(
                    "<path class=\"%s\" d=\"M%.1f %.1fl5.5 5.5l-5.5 5.5l-5.5 -5.5z\"/>",
                    style, x, y - 5.5);
        } else if (sex.get() == Sex.FEMALE) {
            svg.raw("<circle class=\"%s\" cx=\"%.1f\" cy=\"%.1f\" r=\"5\"/>", style, x, y);
        } else {
            svg.raw(
                    "<rect class=\"%s\" x=\"%.1f\" y=\"%.1f\" width=\"10\" height=\"10\"/>",
                    style, x - SYMBOL, y - SYMBOL);
        }
    }

    private void link(Markup svg, Parent parent, double x, double y) {
        parent.from()
                .flatMap(number -> Optional.ofNullable(kept.get(number)))
                .ifPresent(
                        from ->
                                svg.raw(
                                        "<path class=\"route-link\" d=\"M%.1f %.1fC%.1f %.1f %.1f"
                                                + " %.1f %.1f %.1f\"/>",
                                        from.x(),
                                        from.y(),
                                        from.x() + (x - from.x()) / 2,
                                        from.y(),
                                        x - (x - from.x()) / 2,
                                        y,
                                        x,
                                        y));
    }
}

package clutchwright.app.season;

import clutchwright.app.parts.Markup;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.PairingWords;
import clutchwright.records.clutches.Clutch;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/// Draws the seasons of several females over one calendar, a row each.
///
/// @param from first day of the calendar
/// @param to last day
record SeasonStrip(LocalDate from, LocalDate to, LocalDate today, Formats formats) {

    private static final double WIDTH = 760;
    private static final double HEIGHT = 26;
    private static final double LINE = 17;
    private static final int AROUND_DAYS = 8;

    static SeasonStrip over(List<SeasonCourse> courses, LocalDate today, Formats formats) {
        var days = courses.stream().flatMap(SeasonCourse::days).sorted().toList();
        var from = days.isEmpty() || days.getFirst().isAfter(today) ? today : days.getFirst();
        var to = days.isEmpty() ? today.plusDays(60) : days.getLast();
        return new SeasonStrip(
                from.minusDays(AROUND_DAYS), to.plusDays(AROUND_DAYS), today, formats);
    }

    /// The names of the months.
    Markup months() {
        var svg =
                new Markup()
                        .raw(
                                "<svg class=\"season-months\" viewBox=\"0 0 %.0f 18\" aria-hidden=\"true\">",
                                WIDTH);
        for (var month = from.withDayOfMonth(1); !month.isAfter(to); month = month.plusMonths(1)) {
            var left = Math.max(0, x(month));
            if (Math.min(WIDTH, x(month.plusMonths(1))) - left > 26) {
                svg.raw(
                        "<text x=\"%.1f\" y=\"13\">%s</text>",
                        left + 3, month.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH));
            }
        }
        return svg.raw("</svg>");
    }

    Markup row(SeasonCourse course) {
        var svg =
                new Markup()
                        .raw(
                                "<svg class=\"season-row\" viewBox=\"0 0 %.0f %.0f\" role=\"img\" aria-label=\"%s\">",
                                WIDTH, HEIGHT, words(course));
        for (var month = from.withDayOfMonth(1); !month.isAfter(to); month = month.plusMonths(1)) {
            if (!month.isBefore(from)) {
                svg.raw("<path class=\"strip-line\" d=\"M%.1f 0V%.0f\"/>", x(month), HEIGHT);
            }
        }
        for (var pairing : course.pairings()) {
            pairing.putTogether()
                    .ifPresent(
                            day ->
                                    svg.raw(
                                            "<path class=\"together\" d=\"M%.1f %.1fH%.1f\"/>",
                                            x(day),
                                            LINE,
                                            Math.max(
                                                    x(day) + 2,
                                                    x(pairing.separated().orElse(endOf(course))))));
        }
        forecast(svg, course);
        for (var sign : course.signs()) {
            var x = x(sign.on());
            switch (sign.kind()) {
                case LOCK -> svg.raw("<path class=\"lock\" d=\"M%.1f %.1fv8\"/>", x, LINE - 4);
                case BUILDING ->
                        svg.raw("<path class=\"open\" d=\"M%.1f %.1fl4 7h-8z\"/>", x, LINE - 5);
                case OVULATION ->
                        svg.raw(
                                "<circle class=\"open\" cx=\"%.1f\" cy=\"%.1f\" r=\"4.5\"/>",
                                x, LINE);
                case PRE_LAY_SHED ->
                        svg.raw(
                                "<path class=\"open\" d=\"M%.1f %.1fl5 5-5 5-5-5z\"/>",
                                x, LINE - 5);
            }
        }
        for (var clutch : course.clutches()) {
            laid(svg, course, clutch);
        }
        svg.raw("<path class=\"strip-today\" d=\"M%.1f 0V%.0f\"/>", x(today), HEIGHT);
        return svg.raw("</svg>");
    }

    /// Until she laid, or today.
    private LocalDate endOf(SeasonCourse course) {
        return course.clutches().stream().map(Clutch::laid).findFirst().orElse(today);
    }

    private void forecast(Markup svg, SeasonCourse course) {
        if (course.expected().isEmpty()) {
            return;
        }
        var lays = course.expected().get();
        var laid = lays.forecast().laid();
        var chances = new ArrayList<Double>();
        var first = lays.by(0.02);
        var last = lays.by(0.98);
        for (var day = first; !day.isAfter(last); day = day.plusDays(1)) {
            var at = lays.year().number(day);
            chances.add(laid.by(at + 0.5) - laid.by(at - 0.5));
        }
        var most = chances.stream().mapToDouble(Double::doubleValue).max().orElse(1);
        for (var i = 0; i < chances.size(); i++) {
            svg.raw(
                    "<rect class=\"strip-day\" x=\"%.1f\" y=\"4\" width=\"%.2f\" height=\"18\" fill-opacity=\"%.2f\"/>",
                    x(first.plusDays(i)) - width() / 2,
                    width() + 0.05,
                    most > 0 ? chances.get(i) / most : 0);
        }
    }

    private void laid(Markup svg, SeasonCourse course, Clutch clutch) {
        svg.raw(
                "<ellipse class=\"laid\" cx=\"%.1f\" cy=\"%.1f\" rx=\"4\" ry=\"5.5\"/>",
                x(clutch.laid()), LINE);
        svg.raw(
                "<path class=\"incubating\" d=\"M%.1f %.1fH%.1f\"/>",
                x(clutch.laid()) + 4, LINE, x(clutch.laid().plusDays(SeasonCourse.HATCH_FIRST)));
        if (clutch.isComplete()) {
            for (var day : course.pipped()) {
                svg.raw("<path class=\"pipped\" d=\"M%.1f %.1fl4 8h-8z\"/>", x(day), LINE - 5);
            }
        } else {
            svg.raw(
                    "<rect class=\"hatching\" x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"10\"/>",
                    x(clutch.laid().plusDays(SeasonCourse.HATCH_FIRST)),
                    LINE - 5,
                    width() * (SeasonCourse.HATCH_LAST - SeasonCourse.HATCH_FIRST + 1));
        }
    }

    /// What a row shows, as words.
    String words(SeasonCourse course) {
        var words = new ArrayList<String>();
        course.pairings()
                .forEach(
                        pairing ->
                                pairing.putTogether()
                                        .ifPresent(
                                                day ->
                                                        words.add(
                                                                "together from "
                                                                        + formats.date(day))));
        course.signs()
                .forEach(
                        sign ->
                                words.add(
                                        PairingWords.sign(sign.kind()).toLowerCase(Locale.ROOT)
                                                + " "
                                                + formats.dayOfYear(sign.on())));
        course.expected()
                .ifPresent(
                        lays ->
                                words.add(
                                        "expected to lay between "
                                                + formats.dayOfYear(lays.by(0.05))
                                                + " and "
                                                + formats.dayOfYear(lays.by(0.95))));
        course.clutches().forEach(clutch -> words.add("laid " + formats.dayOfYear(clutch.laid())));
        course.pipped().forEach(day -> words.add("pipped " + formats.dayOfYear(day)));
        return words.isEmpty() ? "nothing yet" : String.join(", ", words);
    }

    private double x(LocalDate day) {
        return (ChronoUnit.DAYS.between(from, day) + 0.5) * width();
    }

    private double width() {
        return WIDTH / (ChronoUnit.DAYS.between(from, to) + 1);
    }
}

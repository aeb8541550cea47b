package clutchwright.app.projects;

import clutchwright.app.wording.Chances;
import clutchwright.app.wording.RouteWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/// The routes to a goal as a person reads them in the terminal.
final class RouteText {

    private RouteText() {}

    static List<String> lines(RouteDocument document, String goal, double confidence) {
        var lines = new ArrayList<String>();
        for (var number = 1; number <= document.routes().size(); number++) {
            var route = document.routes().get(number - 1);
            lines.add(
                    RouteWords.route(
                            number,
                            goal,
                            route.seasons(),
                            route.clutches(),
                            route.chance(),
                            confidence));
            route.steps().forEach(step -> lines.addAll(step(step)));
            lines.add(
                    "  by season: "
                            + route.chanceBySeason().stream()
                                    .map(by -> by.season() + ": " + Chances.percent(by.chance()))
                                    .collect(Collectors.joining(", ")));
            lines.add("");
        }
        lines.add(RouteWords.method(document.method(), document.runs(), document.runsPerSecond()));
        document.cautions().forEach(words -> lines.add("Caution: " + words));
        document.notes().stream().filter(RouteWords.RELATED_ONLY::equals).forEach(lines::add);
        lines.add(RouteWords.AGAIN);
        return lines;
    }

    private static List<String> step(RouteDocument.Step step) {
        var lines = new ArrayList<String>();
        lines.add(
                "  season %d: %s x %s, %s (%s)%s"
                        .formatted(
                                step.season(),
                                String.join(" or ", step.dams()),
                                String.join(" or ", step.sires()),
                                step.clutches() == 1 ? "1 clutch" : step.clutches() + " clutches",
                                Chances.percent(step.chance()),
                                step.inbreeding() > 0
                                        ? String.format(
                                                Locale.ROOT,
                                                "; young inbred at %.3f",
                                                step.inbreeding())
                                        : ""));
        step.keep().forEach(keep -> lines.add("    " + keep(keep)));
        return lines;
    }

    private static String keep(RouteDocument.Keep keep) {
        return "%s %s: %s%s%s, %s of the hatchlings%s"
                .formatted(
                        keep.goal() ? "goal" : "keep",
                        keep.id(),
                        keep.count() == 1 ? "a " : "up to " + keep.count() + " ",
                        keep.sex().equals("any") ? "" : keep.sex() + " ",
                        keep.visible().isEmpty() ? "Normal" : String.join(" ", keep.visible()),
                        keep.perHatchling().fraction().length() <= 9
                                ? keep.perHatchling().fraction()
                                : Chances.percent(keep.perHatchling().value()),
                        keep.carries().isEmpty()
                                ? ""
                                : "; het "
                                        + keep.carries().stream()
                                                .map(
                                                        held ->
                                                                held.allele()
                                                                        + " "
                                                                        + Chances.percent(
                                                                                held.chance()))
                                                .collect(Collectors.joining(", ")));
    }
}

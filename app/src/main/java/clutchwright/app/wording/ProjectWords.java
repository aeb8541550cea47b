package clutchwright.app.wording;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.planning.Keeping;
import clutchwright.engine.planning.RouteStep;
import clutchwright.records.projects.Project;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/// Projects and their routes, in a breeder's words.
public record ProjectWords(Formats formats) {

    public static final String NOT_SEARCHED = "Nobody has looked for routes yet.";
    public static final String TREE =
            "Route %d as a tree in time: each step stands in the year in which it can hatch, and in"
                    + " words in the list below.";
    public static final String CHANCES =
            "The chance of having reached the goal by the end of each year; the figures stand in the"
                    + " table below.";

    /// @param weighed ways to come by an animal
    /// @param routes that lead to the goal
    public static String searching(int weighed, int routes) {
        return String.format(
                java.util.Locale.ENGLISH, "%,d ways weighed, %,d lead there", weighed, routes);
    }

    /// Smaller differences, in seasons, may be chance.
    private static final double TELLING = 0.1;

    public static String holding(String project, String who, int weighed) {
        return String.format(
                java.util.Locale.ENGLISH, "%s with %s: %,d ways weighed", project, who, weighed);
    }

    public String ifOfSex(Sex sex) {
        return sex == Sex.MALE ? "if it is a male" : "if it is a female";
    }

    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    public String price(java.util.Optional<Double> price) {
        return price.map(
                        amount ->
                                "sells for %s by your list"
                                        .formatted(formats.whole(Math.round(amount))))
                .orElse("no price on your list");
    }

    /// @param sooner by so many seasons on average, for the project that gains most
    public String verdict(double sooner, String project) {
        return sooner >= TELLING
                ? "Hold back for %s: %s seasons sooner on average"
                        .formatted(project, formats.decimals(sooner, 1))
                : "No project gains from it";
    }

    /// What a project comes to without a hatchling and with it.
    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    public String gain(
            String project,
            double without,
            double with,
            java.util.Optional<Integer> yearWithout,
            java.util.Optional<Integer> yearWith,
            double sooner) {
        var year =
                yearWith.map(
                                then ->
                                        yearWithout
                                                .map(
                                                        before ->
                                                                before.equals(then)
                                                                        ? "; done by %d either way"
                                                                                .formatted(then)
                                                                        : "; done by %d in place of %d"
                                                                                .formatted(
                                                                                        then,
                                                                                        before))
                                                .orElse("; done by %d".formatted(then)))
                        .orElse("");
        return "%s: reached %s seasons %s on average; chance by the last year looked at %s without it, %s with it%s."
                .formatted(
                        project,
                        formats.decimals(Math.abs(sooner), 1),
                        sooner < 0 ? "later" : "sooner",
                        Chances.percent(without),
                        Chances.percent(with),
                        year);
    }

    /// What a route takes, as a sentence.
    ///
    /// @param year in which the chance is the one asked for, or the last looked at
    public String lead(int year, int seasons, double clutches, double chance, double asked) {
        return chance >= asked
                ? "There by %d at a chance of %s: %s, %s clutches on average."
                        .formatted(
                                year,
                                Chances.percent(chance),
                                formats.count(seasons, "season", "seasons"),
                                formats.decimals(clutches, 1))
                : "By %d, the last year looked at, the chance is %s, less than the %s asked for: %s clutches on average."
                        .formatted(
                                year,
                                Chances.percent(chance),
                                Chances.percent(asked),
                                formats.decimals(clutches, 1));
    }

    public String choice(int year, double clutches, double chance, List<Project.Purchase> buys) {
        return "%d · %s clutches · %s%s"
                .formatted(
                        year,
                        formats.decimals(clutches, 1),
                        Chances.percent(chance),
                        buys.isEmpty() ? "" : " · buys for " + sum(buys));
    }

    private String sum(List<Project.Purchase> buys) {
        return formats.whole(Math.round(buys.stream().mapToDouble(Project.Purchase::amount).sum()));
    }

    /// @return blank if nothing is to be bought
    public String buys(List<Project.Purchase> buys) {
        return buys.isEmpty()
                ? ""
                : "It needs what the house does not have: %s, %s together at the prices you wrote down."
                        .formatted(
                                formats.list(buys.stream().map(this::bought).toList()), sum(buys));
    }

    public String bought(Project.Purchase purchase) {
        return "a %s %s to buy"
                .formatted(purchase.genes(), purchase.sex() == Sex.MALE ? "male" : "female");
    }

    /// What a project may use, as sentences.
    public List<String> means(Project project) {
        var means = project.means();
        var sentences = new ArrayList<String>();
        sentences.add(
                "%s a season, %s each, of which %s hatch; males breed after %s, females after %s."
                        .formatted(
                                formats.count(means.clutches(), "clutch", "clutches"),
                                formats.count(means.eggs(), "egg", "eggs"),
                                Chances.percent(means.hatchRate()),
                                formats.count(means.maleSeasons(), "season", "seasons"),
                                formats.count(means.femaleSeasons(), "season", "seasons")));
        sentences.add(
                "Done at a chance of %s, looked at for %s."
                        .formatted(
                                Chances.percent(means.confidence()),
                                formats.count(means.seasons(), "season", "seasons")));
        sentences.add(telling(project));
        if (!project.purchases().isEmpty()) {
            sentences.add(
                    "Could be bought: "
                            + project.purchases().stream()
                                    .map(
                                            one ->
                                                    "%s %s for %s"
                                                            .formatted(
                                                                    one.sex() == Sex.MALE
                                                                            ? "1.0"
                                                                            : "0.1",
                                                                    one.genes(),
                                                                    formats.whole(
                                                                            Math.round(
                                                                                    one.amount()))))
                                    .collect(Collectors.joining("; "))
                            + ".");
        }
        return sentences;
    }

    private String telling(Project project) {
        var telling = project.telling();
        var genes = telling.tested().isBlank() ? "every gene of the goal" : telling.tested();
        return switch (telling.told()) {
            case BY_EYE -> "Hets are told by eye alone: what does not show stays a chance.";
            case TEST_CLUTCH ->
                    "What is kept is proven by a first clutch (%s), so that it breeds for the project a season later; these test clutches come on top of those counted here."
                            .formatted(genes);
            case LABORATORY ->
                    "Every hatchling is tested by a laboratory for %s%s. Ask the laboratory which genes it tests."
                            .formatted(
                                    genes,
                                    telling.price() > 0
                                            ? ", at %s a test"
                                                    .formatted(
                                                            formats.whole(
                                                                    Math.round(telling.price())))
                                            : "");
        };
    }

    /// @param chance that so many clutches bring all that is to be kept
    public String clutches(int clutches, double chance) {
        return "%s, enough at a chance of %s"
                .formatted(formats.count(clutches, "clutch", "clutches"), Chances.percent(chance));
    }

    public String count(Keeping keeping) {
        var sex =
                keeping.sex().map(one -> one == Sex.MALE ? "male" : "female").orElse("either sex");
        return keeping.count() == 1
                ? "one, " + sex
                : "up to %d, %s".formatted(keeping.count(), sex);
    }

    /// What the figures of a step rest on.
    public List<String> why(Project project, RouteStep step) {
        var means = project.means();
        var sentences = new ArrayList<String>();
        for (var keeping : step.keep()) {
            var each = keeping.perHatchling().value() * means.hatchRate();
            sentences.add(
                    "%s: %s of the hatchlings are what is kept%s: worked out exactly from what the two parents have. Of %s, each of which hatches at %s, a clutch brings at least one at %s."
                            .formatted(
                                    keeping.isGoal() ? "Goal" : "K" + keeping.number(),
                                    Chances.percent(keeping.perHatchling().value()),
                                    keeping.sex().isPresent() ? ", their sex counted in" : "",
                                    formats.count(means.eggs(), "egg", "eggs"),
                                    Chances.percent(means.hatchRate()),
                                    Chances.percent(
                                            -Math.expm1(
                                                    means.eggs()
                                                            * Math.log1p(
                                                                    -Math.min(each, 1 - 1e-12))))));
        }
        if (project.telling().told() == Project.Told.LABORATORY && project.telling().price() > 0) {
            sentences.add(
                    "Testing every hatchling of these clutches costs about %s."
                            .formatted(
                                    formats.whole(
                                            Math.round(
                                                    step.clutches()
                                                            * means.eggs()
                                                            * means.hatchRate()
                                                            * project.telling().price()))));
        }
        return sentences;
    }
}

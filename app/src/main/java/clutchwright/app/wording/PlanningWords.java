package clutchwright.app.wording;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.planning.Keeping;
import clutchwright.records.plans.PlanWord;
import java.util.Locale;
import java.util.stream.Collectors;

/// The plan of a season, in a breeder's words.
public final class PlanningWords {

    public static final String IN_THE_SEASON = "It is in the season already.";
    public static final String HINDERED = "Something speaks against it.";
    public static final String ASKED = "Asked what it would cost.";
    public static final String MADE = "in the season";
    public static final String NOTHING_THIS_SEASON =
            "Its routes begin with no pairing that could be made this season.";
    public static final String BOXES_BY_WEEK =
            "Egg boxes expected in use, week by week; the figures stand in the table below.";
    public static final String PLACES_BY_WEEK =
            "Places for hatchlings expected in use, week by week; the figures stand in the table"
                    + " below.";
    public static final String IMPOSSIBLE =
            "No set of pairings keeps all limits together. Look at what is pinned (a pinned pair that"
                    + " something speaks against has to be overruled in writing), at what projects ask"
                    + " for at least, and at the boxes and places there are.";
    public static final String NOTHING_FOUND =
            "No plan was found: it was stopped, or its time was over, before the first.";
    public static final String CHANGED =
            "Something was written down since this was worked out: its figures may be old.";
    public static final String NOT_DRAFTED =
            "The figures behind this plan were not worked out since the program was started: work it"
                    + " out anew to see them.";

    public static final String HETS_BASIS =
            "Each allele that has a price, at the chance at which a hatchling carries it.";
    public static final String TOGETHER =
            "A plan is chosen as a whole: a male who is worth more with another female goes to her, a"
                    + " kind of which enough hatch is worth less, and boxes, places and projects have"
                    + " their say. What it would cost to make this pair in any case is found by choosing"
                    + " all others anew.";

    /// Nearer to the bound than that nobody would tell them apart.
    private static final double PROVEN = 1e-6;

    private PlanningWords() {}

    public static String planName(int number) {
        return "Plan %d".formatted(number);
    }

    public static String searching(String project) {
        return "Looking for the routes of %s".formatted(project);
    }

    public static String searching(String project, int weighed, int routes) {
        return String.format(
                Locale.ENGLISH,
                "Looking for the routes of %s: %,d ways weighed, %,d lead there",
                project,
                weighed,
                routes);
    }

    public static String lookingAt(int done, int females) {
        return "Working out what each pair may bring: %d of %d females".formatted(done, females);
    }

    public static String choosing(int pairs) {
        return String.format(Locale.ENGLISH, "Choosing among %,d pairs", pairs);
    }

    public static String bound(double worth, double bound, String written) {
        var gap = bound <= worth ? 0 : (bound - worth) / Math.max(1e-9, Math.abs(bound));
        return gap <= PROVEN
                ? "Proven: no other plan within these limits is worth more."
                : "The best found: no plan within these limits is worth more than %s, %s above it."
                        .formatted(written, Chances.percent(gap));
    }

    public static String laying(String day, String chance, String eggs) {
        return "about %s, %s eggs, if she lays (%s)".formatted(day, eggs, chance);
    }

    public static String word(PlanWord.Word word, String reason) {
        var said =
                switch (word) {
                    case PINNED -> "pinned";
                    case FORBIDDEN -> "forbidden";
                    case OVERRULED -> "overruled";
                };
        return reason.isEmpty() ? said : said + ": " + reason;
    }

    public static String chosen(String pair, String worth) {
        return "%s, chosen, by itself worth %s".formatted(pair, worth);
    }

    public static String worth(String pair, String worth) {
        return "%s, by itself worth %s".formatted(pair, worth);
    }

    public static String forbidden(String pair) {
        return pair + ", forbidden";
    }

    public static String hindered(String pair) {
        return pair + ", left out: something speaks against it";
    }

    public static String range(String mean, String low, String high) {
        return "%s on average, from %s to %s in 9 of 10 seasons".formatted(mean, low, high);
    }

    public static String basis(int runs, int hatched, int finished, String share) {
        return String.format(
                Locale.ENGLISH,
                "The season was played through %,d times: who lays, how many eggs, which hatch, what"
                        + " the parents carry in truth, what each hatchling is. %s of the good eggs"
                        + " hatch: %s, and nine of ten as if that had been seen of ten more (common"
                        + " practice, no source). Whole animals sell in it, so that a kind of which more hatch than"
                        + " sell at the first price brings a little less than its mean.",
                runs,
                share,
                finished == 0
                        ? "no egg of yours is finished yet"
                        : "%,d of your %,d did".formatted(hatched, finished));
    }

    /// What a step of a project is to keep.
    public static String keep(Keeping keeping) {
        var look = RouteWords.look(keeping);
        var hets =
                keeping.carries().stream()
                        .map(
                                held ->
                                        held.allele().name()
                                                + (held.chance().isWhole()
                                                        ? ""
                                                        : " "
                                                                + Chances.percent(
                                                                        held.chance().value())))
                        .collect(Collectors.joining(", "));
        return keeping.sex()
                        .map(sex -> (sex == Sex.MALE ? "a male " : "a female ") + look)
                        .orElse("a " + look)
                + (hets.isEmpty() ? "" : " that carries " + hets);
    }

    public static String cautioned(long pairs) {
        return "%s because of a caution about %s young. Each may be overruled, by itself and in writing, on its own page. %s"
                .formatted(
                        pairs == 1 ? "One pair is left out" : pairs + " pairs are left out",
                        pairs == 1 ? "its" : "their",
                        CautionWords.ASK_A_VETERINARIAN);
    }

    public static String related(long pairs, String most) {
        return "%s closer kin than the limit of %s."
                .formatted(pairs == 1 ? "One pair is" : pairs + " pairs are", most);
    }

    public static String tooYoung(int animals) {
        return "%s far too young and not looked at."
                .formatted(animals == 1 ? "One animal is" : animals + " animals are");
    }

    public static String noStep(String project, String why) {
        return "%s has no part in this plan. %s".formatted(project, why);
    }

    /// @param loss of the plan's worth; may be next to nothing
    public static String costs(String pair, String loss, boolean none) {
        return none
                ? "%s in any case costs nothing: another plan with it is worth as much."
                        .formatted(pair)
                : "%s in any case costs %s, all else chosen anew.".formatted(pair, loss);
    }

    public static String cannot(String pair) {
        return "%s cannot be made within these limits.".formatted(pair);
    }

    /// @param clutches of hers that the mean number of eggs rests on
    public static String looksBasis(
            String hatchlings,
            String eggs,
            int clutches,
            String lays,
            String hatches,
            String dying) {
        return "%s hatchlings expected: %s good eggs (%s), laid at %s, of which %s hatch%s. Each is counted at the price of the first of its kind."
                .formatted(
                        hatchlings,
                        eggs,
                        switch (clutches) {
                            case 0 -> "a usual clutch, none of hers is on record";
                            case 1 -> "by her one clutch";
                            default -> "her mean over %d clutches".formatted(clutches);
                        },
                        lays,
                        hatches,
                        dying.equals("0 %")
                                ? ""
                                : "; %s do not live by their genes".formatted(dying));
    }

    public static String stepOf(String projects) {
        return "A step of %s, at the worth you gave such a clutch, if she lays."
                .formatted(projects);
    }

    public static String questions(String bits) {
        return "A usual clutch is expected to tell %s of a question of what the two carry, where 1 is one that stood at even chances and is settled."
                .formatted(bits);
    }

    public static String place(String sire, int place, int of, String dam) {
        return place == 1
                ? "%s is worth most with %s by himself, of %d males that may go to her."
                        .formatted(sire, dam, of)
                : "By himself %s is number %d of the %d males that may go to %s."
                        .formatted(sire, place, of, dam);
    }

    public static String used(String sire, long used, int most, String females) {
        return used >= most
                ? "%s has %s in this plan, which is as many as your rules give a male."
                        .formatted(sire, females)
                : "%s has %s in this plan; your rules give a male %d."
                        .formatted(sire, used == 0 ? "no female" : females, most);
    }

    public static String hasAnother(String dam, String sire, String worth) {
        return "In this plan %s goes to %s, a pair by itself worth %s.".formatted(dam, sire, worth);
    }

    public static String tooClose(String kinship, String most) {
        return "Their young would be inbred by %s; your rules allow %s.".formatted(kinship, most);
    }
}

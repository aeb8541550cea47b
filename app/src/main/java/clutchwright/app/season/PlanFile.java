package clutchwright.app.season;

import clutchwright.engine.planning.PlanLimits;
import clutchwright.engine.planning.PriceStep;
import clutchwright.engine.planning.ProposedPairing;
import clutchwright.engine.planning.SeasonPlan;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.SequencedMap;
import java.util.SequencedSet;

/// A season's pairings to choose from, as a file has them; or everything that is wrong with it.
///
/// What the fields mean stands in `docs/plan-file.md`.
sealed interface PlanFile {

    record Understood(SeasonPlan plan) implements PlanFile {}

    /// @param faults as sentences that name the place and what was expected
    record Refused(List<String> faults) implements PlanFile {

        public Refused {
            faults = List.copyOf(faults);
        }
    }

    static PlanFile read(String text) {
        return new Reading(JsonFields.of(text)).read();
    }

    /// One reading of a file, field by field.
    final class Reading {

        private static final double MOST = 1e9;
        private static final int MOST_CLUTCHES = 10_000;

        private final JsonFields fields;
        private final SequencedMap<String, ProposedPairing> pairs = new LinkedHashMap<>();

        private Reading(JsonFields fields) {
            this.fields = fields;
        }

        private PlanFile read() {
            var root = fields.root();
            fields.only(
                    root,
                    "",
                    "limits",
                    "males",
                    "prices",
                    "projects",
                    "pairings",
                    "pinned",
                    "forbidden");
            var forbidden = named("/forbidden");
            for (var at : fields.list(root, "/pairings")) {
                pairing(at, forbidden);
            }
            if (!fields.has(root, "/pairings")) {
                fields.fault("/pairings", "a list of the pairs that may be made");
            }
            var prices = prices();
            var limits = limits();
            var pinned = pinned();
            return fields.isSound()
                    ? new Understood(
                            new SeasonPlan(List.copyOf(pairs.values()), prices, limits, pinned))
                    : new Refused(fields.faults());
        }

        private void pairing(String at, SequencedSet<String> forbidden) {
            if (!fields.object(fields.root(), at)) {
                return;
            }
            fields.only(
                    fields.root(),
                    at,
                    "dam",
                    "sire",
                    "worth",
                    "hatchlings",
                    "kinship",
                    "boxes",
                    "places",
                    "projects",
                    "hindrance",
                    "overruled");
            var dam = fields.text(at + "/dam", true);
            var sire = fields.text(at + "/sire", true);
            var worth = fields.number(fields.root(), at + "/worth", -MOST, MOST).orElse(0);
            var kinship = fields.number(fields.root(), at + "/kinship", 0, 1).orElse(0);
            var hatchlings = fields.numbers(at + "/hatchlings", 0, MOST);
            var boxes = fields.numbers(at + "/boxes", 0, MOST);
            var places = fields.numbers(at + "/places", 0, MOST);
            var projects = new LinkedHashSet<String>();
            for (var project : fields.list(fields.root(), at + "/projects")) {
                projects.add(fields.text(project, true));
            }
            var hindrance = fields.text(at + "/hindrance", false);
            var overruled = fields.text(at + "/overruled", false);
            var name = dam + " x " + sire;
            if (pairs.containsKey(name)) {
                fields.fault(at, "each pair once; " + name + " stands twice");
            }
            if (fields.isSound() && !forbidden.contains(name)) {
                pairs.put(
                        name,
                        new ProposedPairing(
                                dam,
                                sire,
                                worth,
                                hatchlings,
                                kinship,
                                boxes,
                                places,
                                projects,
                                hindrance,
                                overruled));
            }
        }

        private SequencedMap<String, List<PriceStep>> prices() {
            var prices = new LinkedHashMap<String, List<PriceStep>>();
            for (var at : fields.list(fields.root(), "/prices")) {
                fields.only(fields.root(), at, "kind", "steps");
                var kind = fields.text(at + "/kind", true);
                var steps = new ArrayList<PriceStep>();
                var before = MOST;
                for (var step : fields.list(fields.root(), at + "/steps")) {
                    fields.only(fields.root(), step, "hatchlings", "price");
                    var many =
                            fields.required(
                                    fields.root(), step + "/hatchlings", Double.MIN_VALUE, MOST);
                    var price = fields.required(fields.root(), step + "/price", 0, MOST);
                    if (price > before) {
                        fields.fault(
                                step + "/price", "no more than the price before it, " + before);
                    }
                    before = price;
                    if (fields.isSound()) {
                        steps.add(new PriceStep(many, price));
                    }
                }
                prices.put(kind, steps);
            }
            return prices;
        }

        private PlanLimits limits() {
            var root = fields.root();
            fields.object(root, "/limits");
            fields.only(root, "/limits", "clutches", "kinship", "boxes", "places");
            var clutches = fields.number(root, "/limits/clutches", 0, MOST_CLUTCHES);
            var kinship = fields.number(root, "/limits/kinship", 0, 1).orElse(1);
            var uses = new LinkedHashMap<String, Integer>();
            for (var at : fields.list(root, "/males")) {
                fields.only(root, at, "tag", "uses");
                var tag = fields.text(at + "/tag", true);
                uses.put(tag, (int) fields.required(root, at + "/uses", 0, MOST_CLUTCHES));
            }
            var projects = new LinkedHashMap<String, PlanLimits.Share>();
            for (var at : fields.list(root, "/projects")) {
                fields.only(root, at, "name", "least", "most");
                var name = fields.text(at + "/name", true);
                var least = (int) fields.number(root, at + "/least", 0, MOST_CLUTCHES).orElse(0);
                var most =
                        (int)
                                fields.number(root, at + "/most", 0, MOST_CLUTCHES)
                                        .orElse(MOST_CLUTCHES);
                if (most < least) {
                    fields.fault(at + "/most", "no less than least, " + least);
                } else {
                    projects.put(name, new PlanLimits.Share(least, most));
                }
            }
            return new PlanLimits(
                    clutches.isPresent()
                            ? OptionalInt.of((int) clutches.getAsDouble())
                            : OptionalInt.empty(),
                    kinship,
                    uses,
                    fields.numbers("/limits/boxes", 0, MOST),
                    fields.numbers("/limits/places", 0, MOST),
                    projects);
        }

        private List<ProposedPairing> pinned() {
            var pinned = new ArrayList<ProposedPairing>();
            for (var name : named("/pinned")) {
                var pair = pairs.get(name);
                if (pair != null) {
                    pinned.add(pair);
                } else if (fields.isSound()) {
                    fields.fault(
                            "/pinned",
                            "pairs of the list that are not forbidden; " + name + " is none");
                }
            }
            return pinned;
        }

        private SequencedSet<String> named(String list) {
            var names = new LinkedHashSet<String>();
            for (var at : fields.list(fields.root(), list)) {
                fields.only(fields.root(), at, "dam", "sire");
                names.add(fields.text(at + "/dam", true) + " x " + fields.text(at + "/sire", true));
            }
            return names;
        }
    }
}

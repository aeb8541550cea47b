package clutchwright.engine.genetics;

import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// Works out what the hatchlings of a group may hold unseen. One for each list of groups: the
/// groups of a list have most of their looks in common.
final class GroupDetail {

    private final List<ActiveLocus> loci;
    private final List<Block> blocks;
    private final List<Scene> scenes;
    private final SexDetermination determination;
    private final Fraction alive;
    private final IdentityHashMap<Look, LookDetail> known = new IdentityHashMap<>();
    private final IdentityHashMap<Looks, Map<List<Integer>, Look>> indexes =
            new IdentityHashMap<>();

    GroupDetail(
            List<ActiveLocus> loci,
            List<Block> blocks,
            List<Scene> scenes,
            SexDetermination determination,
            Fraction alive) {
        this.loci = loci;
        this.blocks = blocks;
        this.scenes = scenes;
        this.determination = determination;
        this.alive = alive;
    }

    /// Empty if the pairing cannot show just this.
    ///
    /// @param shown by place, the number of the form that shows or [ActiveLocus#NOTHING]
    Optional<Outcome> of(List<Integer> shown) {
        var details = new ArrayList<List<LookDetail>>();
        var weights = new ArrayList<Fraction>();
        for (var scene : scenes) {
            var looks = looksOf(scene, shown);
            if (looks.isPresent()) {
                details.add(detailsOf(scene, looks.get()));
                weights.add(
                        looks.get().stream()
                                .map(Look::chance)
                                .reduce(Fraction.WHOLE, Fraction::times));
            }
        }
        return details.isEmpty() ? Optional.empty() : Optional.of(outcome(shown, details, weights));
    }

    private Optional<List<Look>> looksOf(Scene scene, List<Integer> shown) {
        var found = new ArrayList<Look>(blocks.size());
        for (var looks : scene.looks()) {
            var key = looks.loci().stream().map(locus -> shown.get(locus.place)).toList();
            var look = indexOf(looks).get(key);
            if (look == null) {
                return Optional.empty();
            }
            found.add(look);
        }
        return Optional.of(found);
    }

    private Map<List<Integer>, Look> indexOf(Looks looks) {
        return indexes.computeIfAbsent(
                looks,
                all -> {
                    var index = new HashMap<List<Integer>, Look>();
                    all.all().forEach(look -> index.put(look.shown(), look));
                    return index;
                });
    }

    private List<LookDetail> detailsOf(Scene scene, List<Look> looks) {
        var details = new ArrayList<LookDetail>(looks.size());
        for (var b = 0; b < looks.size(); b++) {
            var block = blocks.get(b);
            details.add(
                    known.computeIfAbsent(
                            looks.get(b),
                            look -> LookDetail.of(block, scene.masking(), look, determination)));
        }
        return details;
    }

    private Outcome outcome(
            List<Integer> shown, List<List<LookDetail>> details, List<Fraction> weights) {
        var atLoci = new ArrayList<Outcome.AtLocus>(loci.size());
        var carries = new ArrayList<Outcome.Held>();
        var homozygous = new ArrayList<Outcome.Held>();
        for (var locus : loci) {
            var found = details.stream().map(scene -> detailAt(locus, scene)).toList();
            var detail =
                    found.size() == 1
                            ? found.getFirst()
                            : LocusDetail.mixed(locus, shown.get(locus.place), found, weights);
            atLoci.add(detail.at());
            carries.addAll(detail.carries());
            homozygous.addAll(detail.homozygous());
        }
        var shows = new ArrayList<Phenotype>();
        for (var locus : loci) {
            if (shown.get(locus.place) != ActiveLocus.NOTHING) {
                shows.add(locus.forms.get(shown.get(locus.place)));
            }
        }
        var chance = weights.stream().reduce(Fraction.NONE, Fraction::plus).dividedBy(alive);
        return new Outcome(shows, chance, sexes(details, weights), atLoci, carries, homozygous);
    }

    private LocusDetail detailAt(ActiveLocus locus, List<LookDetail> scene) {
        for (var b = 0; b < blocks.size(); b++) {
            var at = blocks.get(b).loci.indexOf(locus);
            if (at >= 0) {
                return scene.get(b).loci().get(at);
            }
        }
        throw new IllegalStateException("no block has locus " + locus.id);
    }

    private static Map<Sex, Fraction> sexes(
            List<List<LookDetail>> details, List<Fraction> weights) {
        var sum = weights.stream().reduce(Fraction.NONE, Fraction::plus);
        var sexes = new EnumMap<Sex, Fraction>(Sex.class);
        for (var sex : Sex.values()) {
            var chance = Fraction.NONE;
            for (var i = 0; i < details.size(); i++) {
                var ofScene =
                        details.get(i).stream()
                                .map(LookDetail::sexes)
                                .filter(told -> !told.isEmpty())
                                .findFirst()
                                .map(told -> told.getOrDefault(sex, Fraction.NONE))
                                .orElse(Fraction.HALF);
                chance = chance.plus(ofScene.times(weights.get(i)).dividedBy(sum));
            }
            sexes.put(sex, chance);
        }
        return sexes;
    }
}

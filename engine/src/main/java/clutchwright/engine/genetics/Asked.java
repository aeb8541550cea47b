package clutchwright.engine.genetics;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/// What is asked to be seen, locus by locus.
///
/// @param shown by place: the number of the form that must show, [ActiveLocus#NOTHING] where
///     nothing may, [#FREE] where all is well
record Asked(List<Integer> shown) {

    static final int FREE = -2;

    /// Exactly what a group shows.
    static Asked exactly(List<Integer> shown) {
        return new Asked(shown);
    }

    /// Empty if this pairing cannot show it.
    ///
    /// @throws IllegalArgumentException if the model does not know a locus or a form
    static Optional<Asked> of(Wanted wanted, GeneticModel model, List<ActiveLocus> loci) {
        var shown = new Integer[loci.size()];
        Arrays.fill(shown, FREE);
        for (var id : wanted.notShowing()) {
            model.theLocus(id);
            loci.stream()
                    .filter(locus -> locus.id.equals(id))
                    .forEach(locus -> shown[locus.place] = ActiveLocus.NOTHING);
        }
        return require(wanted.showing(), model, loci, shown)
                ? Optional.of(new Asked(List.of(shown)))
                : Optional.empty();
    }

    /// These forms and nothing else. Empty if this pairing cannot show it.
    ///
    /// @throws IllegalArgumentException if the model does not know a locus or a form
    static Optional<Asked> exactly(
            Set<Phenotype> shows, GeneticModel model, List<ActiveLocus> loci) {
        var shown = new Integer[loci.size()];
        Arrays.fill(shown, FREE);
        if (!require(shows, model, loci, shown)) {
            return Optional.empty();
        }
        for (var place = 0; place < shown.length; place++) {
            if (shown[place] == FREE) {
                shown[place] = ActiveLocus.NOTHING;
            }
        }
        return Optional.of(new Asked(List.of(shown)));
    }

    private static boolean require(
            Set<Phenotype> shows, GeneticModel model, List<ActiveLocus> loci, Integer[] shown) {
        var possible = true;
        for (var phenotype : shows) {
            if (!phenotype.visible()
                    || !model.theLocus(phenotype.locus()).phenotypes().contains(phenotype)) {
                throw new IllegalArgumentException(
                        "not a visible form of " + phenotype.locus() + ": " + phenotype);
            }
            var found =
                    loci.stream().filter(locus -> locus.id.equals(phenotype.locus())).findFirst();
            var form = found.map(locus -> locus.forms.indexOf(phenotype)).orElse(-1);
            if (found.isEmpty() || form < 0 || shown[found.get().place] != FREE) {
                possible = false;
            } else {
                shown[found.get().place] = form;
            }
        }
        return possible;
    }

    boolean isAnything() {
        return shown.stream().allMatch(asked -> asked == FREE);
    }

    /// What is asked of these loci.
    List<Integer> at(List<ActiveLocus> loci) {
        if (loci.size() == 1) {
            return List.of(shown.get(loci.getFirst().place));
        }
        return loci.stream().map(locus -> shown.get(locus.place)).toList();
    }

    boolean admits(List<ActiveLocus> loci, List<Integer> seen) {
        for (var i = 0; i < seen.size(); i++) {
            var asked = shown.get(loci.get(i).place);
            if (asked != FREE && !asked.equals(seen.get(i))) {
                return false;
            }
        }
        return true;
    }
}

package clutchwright.app.catalogue;

import clutchwright.app.wording.CautionWords;
import clutchwright.app.wording.GeneWords;
import clutchwright.engine.catalogue.LocusEntry;
import clutchwright.engine.catalogue.Trait;
import clutchwright.engine.genetics.Caution;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Standing;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/// One locus as the guide lists it.
///
/// @param alleles their names, unless they only repeat the title
/// @param facts mode, standing and welfare, in words
/// @param care what welfare cautions are about; empty where there are none
/// @param own `your own`, `changed by you`, or empty
/// @param hit the synonym or the form by which it was found; empty where that is plain to see
/// @param animals of how many animals it is said or seen
public record GuideEntry(
        String path,
        String title,
        String alleles,
        String facts,
        String care,
        String own,
        String hit,
        int animals) {

    static GuideEntry of(Guide guide, LocusEntry entry, Map<LocusId, Integer> animals) {
        var search = guide.search();
        return new GuideEntry(
                guide.path(entry.id()),
                entry.title(),
                alleles(entry),
                GeneWords.capital(modes(entry) + ", " + CautionWords.standing(standing(entry))),
                care(guide.cautionsOf(entry.id())),
                own(guide, entry),
                search.meetsHead(entry) ? "" : search.findBelow(entry).orElse(""),
                animals.getOrDefault(entry.id(), 0));
    }

    private static String alleles(LocusEntry entry) {
        var names = entry.traits().stream().map(Trait::name).toList();
        return names.equals(List.of(entry.title())) ? "" : GeneWords.names(names);
    }

    /// Of a single allele its own, where that is the weaker; of a series that it is one.
    private static Standing standing(LocusEntry entry) {
        var own = entry.traits().getFirst().standing();
        return entry.traits().size() == 1 && own.compareTo(entry.standing()) > 0
                ? own
                : entry.standing();
    }

    private static String modes(LocusEntry entry) {
        return entry.traits().stream()
                .map(Trait::mode)
                .distinct()
                .sorted()
                .map(GeneWords::mode)
                .collect(Collectors.joining(" or "));
    }

    private static String care(List<Caution> cautions) {
        return cautions.stream()
                .map(caution -> CautionWords.concern(caution.concern()).toLowerCase(Locale.ROOT))
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private static String own(Guide guide, LocusEntry entry) {
        if (!entry.ownEntry()) {
            return "";
        }
        return guide.isShipped(entry.id()) ? "changed by you" : "your own";
    }
}

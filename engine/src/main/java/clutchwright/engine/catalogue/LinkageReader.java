package clutchwright.engine.catalogue;

import clutchwright.engine.genetics.LinkageMap;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.Set;

/// Reads `linkage` lines: loci in their order on a chromosome with a fraction between neighbours.
final class LinkageReader {

    private static final String EXPECTED = "locus fraction locus, such as locus-a 1/10 locus-b";

    private final SequencedMap<LocusId, LocusEntry> entries;
    private final LocusLines ofText;
    private final Faults faults;
    private final Set<LocusId> linked = new HashSet<>();

    /// @param ofText loci that the text itself has, whether or not they could be read
    LinkageReader(SequencedMap<LocusId, LocusEntry> entries, LocusLines ofText, Faults faults) {
        this.entries = entries;
        this.ofText = ofText;
        this.faults = faults;
    }

    /// A group that shares a locus with one of the base takes its place.
    LinkageMap readOver(LinkageMap base, List<TextLine> lines) {
        var groups = new ArrayList<LinkageMap.Group>();
        for (var line : lines) {
            read(line).ifPresent(groups::add);
        }
        for (var group : base.groups()) {
            if (group.loci().stream().noneMatch(linked::contains)) {
                group.loci().stream().filter(this::isSexLinked).forEach(this::reportSexLinked);
                groups.add(group);
            }
        }
        return new LinkageMap(groups);
    }

    private Optional<LinkageMap.Group> read(TextLine line) {
        int before = faults.count();
        var words = List.of(line.value().split("\\s+"));
        var loci = new ArrayList<LocusId>();
        var gaps = new ArrayList<Fraction>();
        var block = new Block(line, faults, List.of(), List.of());
        for (int i = 0; i < words.size(); i++) {
            if (i % 2 == 0) {
                locus(line, words.get(i)).ifPresent(loci::add);
            } else {
                block.fraction(line, words.get(i), Fraction.HALF).ifPresent(gaps::add);
            }
        }
        if (words.size() < 3 || words.size() % 2 == 0) {
            faults.add(line, "'" + line.value() + "'", EXPECTED);
        }
        return faults.count() > before
                ? Optional.empty()
                : Optional.of(new LinkageMap.Group(loci, gaps));
    }

    private Optional<LocusId> locus(TextLine line, String written) {
        var known = new HashSet<>(entries.keySet());
        known.addAll(ofText.ids());
        if (!LocusId.isWellFormed(written) || !known.contains(new LocusId(written))) {
            faults.unknown(
                    line, "locus", written, known.stream().map(LocusId::value).sorted().toList());
            return Optional.empty();
        }
        var id = new LocusId(written);
        if (isSexLinked(id)) {
            faults.add(line, "the sex-linked locus '" + id + "'", "autosomal loci only");
        } else if (!linked.add(id)) {
            faults.add(line, "locus '" + id + "' a second time", "each locus in one group, once");
        }
        return Optional.of(id);
    }

    private void reportSexLinked(LocusId id) {
        var inherits = ofText.theLine(id).all("inherits").getFirst();
        faults.add(
                inherits,
                "the linked locus '" + id + "' made sex-linked",
                "autosomal, or a linkage line that leaves it out");
    }

    private boolean isSexLinked(LocusId id) {
        var entry = entries.get(id);
        return entry != null && entry.map().locus().isSexLinked();
    }
}

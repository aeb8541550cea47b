package clutchwright.engine.catalogue;

import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.LinkageMap;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.SexDetermination;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/// Reads a whole species file, or a keeper's entries over a species.
final class SpeciesReader {

    private static final List<String> HEAD =
            List.of("species", "common", "latin", "sexes", "clutch", "female", "male", "linkage");
    private static final List<String> ENTRIES =
            List.of("locus", "interaction", "caution", "combination", "remark");

    /// No snake lays more; a larger number is a slip.
    private static final int LARGEST_CLUTCH = 200;

    private static final Pattern MINIMUM =
            Pattern.compile("([1-9][0-9]{0,5}) g; *([1-9][0-9]{0,2}) months?");

    private SpeciesReader() {}

    static CatalogueText.Result read(String file, String text) {
        var faults = new Faults(file);
        var lines = new TextLine(1, "file", "", IndentedText.read(text, faults));
        var block = new Block(lines, faults, HEAD, ENTRIES);
        var empty = head(block, faults);
        return result(
                faults, new EntriesReader(empty, LocusReader.Origin.SHIPPED, faults).read(lines));
    }

    static CatalogueText.Result readOver(Species base, String file, String overlay) {
        var faults = new Faults(file);
        var lines = new TextLine(1, "file", "", IndentedText.read(overlay, faults));
        new Block(lines, faults, List.of("linkage"), ENTRIES);
        return result(
                faults, new EntriesReader(base, LocusReader.Origin.KEEPER, faults).read(lines));
    }

    private static CatalogueText.Result result(Faults faults, Species species) {
        return faults.count() == 0
                ? new CatalogueText.Result.Loaded(species)
                : new CatalogueText.Result.Faulty(faults.inOrder());
    }

    /// The species without its loci; where its head is faulty, something stands in for it so that
    /// the rest can be looked through.
    private static Species head(Block block, Faults faults) {
        var id = block.findRequired("species", "its short name, such as python-regius");
        id.filter(at -> !LocusId.isWellFormed(at.value()))
                .ifPresent(
                        at ->
                                faults.add(
                                        at,
                                        "'" + at.value() + "'",
                                        "lower-case letters, digits and hyphens"));
        var common = block.findRequired("common", "what keepers call the species");
        var latin = block.findRequired("latin", "its scientific name");
        var sexes =
                block.findRequired("sexes", "XY or ZW")
                        .flatMap(
                                at ->
                                        block.member(
                                                at,
                                                "sexes",
                                                List.of(SexDetermination.values()),
                                                at.value()))
                        .orElse(SexDetermination.XY);
        var clutch =
                block.findRequired("clutch", "the eggs of a usual clutch")
                        .flatMap(at -> clutch(at, faults))
                        .orElse(1);
        return new Species(
                value(id),
                value(common),
                value(latin),
                clutch,
                minimum(block, "female", faults),
                minimum(block, "male", faults),
                new GeneticModel(
                        sexes, new LinkedHashMap<>(), LinkageMap.NONE, List.of(), List.of()),
                List.of(),
                List.of(),
                List.of());
    }

    private static String value(Optional<TextLine> line) {
        return line.map(TextLine::value).orElse("");
    }

    /// `1500 g; 27 months`.
    private static Optional<BreedingMinimum> minimum(Block block, String sex, Faults faults) {
        return block.find(sex)
                .flatMap(
                        at -> {
                            var parts = MINIMUM.matcher(at.value());
                            if (parts.matches()) {
                                return Optional.of(
                                        new BreedingMinimum(
                                                Integer.parseInt(parts.group(1)),
                                                Integer.parseInt(parts.group(2))));
                            }
                            faults.add(
                                    at,
                                    "'" + at.value() + "'",
                                    "a weight and an age such as '1500 g; 27 months'");
                            return Optional.empty();
                        });
    }

    private static Optional<Integer> clutch(TextLine at, Faults faults) {
        var eggs =
                Stream.of(at.value())
                        .filter(written -> written.matches("[0-9]{1,4}"))
                        .map(Integer::valueOf)
                        .filter(number -> number >= 1 && number <= LARGEST_CLUTCH)
                        .findFirst();
        if (eggs.isEmpty()) {
            faults.add(at, "'" + at.value() + "'", "a whole number from 1 to " + LARGEST_CLUTCH);
        }
        return eggs;
    }
}

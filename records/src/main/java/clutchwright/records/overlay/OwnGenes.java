package clutchwright.records.overlay;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.catalogue.CatalogueText;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/// A catalogue with the keeper's own entries laid over it.
///
/// @param unread entries that the catalogue cannot take, such as one whose name a later version of
///     the program gave to something else; they are kept, and left out
public record OwnGenes(Catalogue catalogue, List<Unread> unread) {

    /// What an entry's text is called where its faults are listed.
    public static final String FILE = "own genes";

    public OwnGenes {
        unread = List.copyOf(unread);
    }

    /// @param faults at least one
    public record Unread(OverlayEntry entry, List<CatalogueText.Fault> faults) {

        public Unread {
            faults = List.copyOf(faults);
        }
    }

    /// @param shipped as it comes with the program
    public static OwnGenes over(Catalogue shipped, List<OverlayEntry> entries) {
        if (entries.isEmpty()) {
            return new OwnGenes(shipped, List.of());
        }
        return switch (read(shipped, text(entries))) {
            case CatalogueText.Result.Loaded(var species) ->
                    new OwnGenes(shipped.with(species), List.of());
            case CatalogueText.Result.Faulty _ -> oneByOne(shipped, entries);
        };
    }

    /// All entries in the format of a species file.
    public static String text(List<OverlayEntry> entries) {
        return entries.stream()
                .map(entry -> entry.text().stripTrailing() + "\n")
                .collect(Collectors.joining("\n"));
    }

    private static OwnGenes oneByOne(Catalogue shipped, List<OverlayEntry> entries) {
        var catalogue = shipped;
        var unread = new ArrayList<Unread>();
        for (var entry : entries) {
            switch (read(catalogue, entry.text())) {
                case CatalogueText.Result.Loaded(var species) ->
                        catalogue = catalogue.with(species);
                case CatalogueText.Result.Faulty(var faults) ->
                        unread.add(new Unread(entry, faults));
            }
        }
        return new OwnGenes(catalogue, unread);
    }

    private static CatalogueText.Result read(Catalogue catalogue, String text) {
        return CatalogueText.readOver(catalogue.species(), FILE, text);
    }
}

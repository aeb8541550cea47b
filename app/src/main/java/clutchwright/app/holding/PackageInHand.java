package clutchwright.app.holding;

import clutchwright.app.wording.Formats;
import clutchwright.app.wording.ImportWords;
import clutchwright.app.wording.Preferences;
import clutchwright.app.wording.ProblemWords;
import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.notation.GeneLine;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.SpeciesRecords;
import clutchwright.records.exchange.Choices;
import clutchwright.records.exchange.PackageCollection;
import clutchwright.records.exchange.Problem;
import clutchwright.records.exchange.SpeciesLines;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/// The files that a command was given, read as a collection without a store.
///
/// @param species by its short name, in the order of the first animal of each
public record PackageInHand(PackageCollection collection, Map<String, SpeciesRecords> species) {

    /// Reads a folder, a .zip or a table; says every problem and what is worth knowing.
    ///
    /// @param species of rows that do not say theirs, as it was written
    /// @param say a line for the person at the keyboard
    /// @return empty if it cannot be read; why was said
    public static Optional<PackageInHand> read(Path path, String species, Consumer<String> say) {
        var shipped = Catalogue.shippedSpecies();
        var id = species.toLowerCase(Locale.ROOT);
        if (!shipped.contains(id)) {
            say.accept(
                    "--species: no catalogue of “%s”; there are %s."
                            .formatted(species, String.join(", ", shipped)));
            return Optional.empty();
        }
        if (!Files.exists(path)) {
            say.accept("There is no file or folder “%s”.".formatted(path));
            return Optional.empty();
        }
        var lines =
                new SpeciesLines(
                        shipped.stream().map(Catalogue::shipped).map(GeneLine::of).toList());
        var name = Optional.ofNullable(path.getFileName()).orElse(path).toString();
        var today = LocalDate.now(ZoneId.systemDefault());
        return switch (PackageCollection.read(path, Choices.usual(id), lines, today)) {
            case PackageCollection.Result.Refused(var table, var problems) -> {
                say(problems, table, say);
                yield Optional.empty();
            }
            case PackageCollection.Result.Sound(var collection) -> {
                say(collection.notes(), name, say);
                yield Optional.of(of(collection));
            }
        };
    }

    private static PackageInHand of(PackageCollection collection) {
        return new PackageInHand(
                collection,
                SpeciesRecords.of(
                        collection.animals().values(),
                        collection.statements(),
                        id -> collection.lines().find(id).orElseThrow()));
    }

    /// The tag of an animal of the collection.
    public String tag(AnimalId animal) {
        return collection.theAnimal(animal).tag().value();
    }

    private static void say(List<Problem> problems, String table, Consumer<String> say) {
        var formats = new Formats(Preferences.FIRST);
        var words = new ImportWords(new ProblemWords(AnimalId::toString, formats), formats);
        for (var problem : problems) {
            say.accept(
                    "%s%s%s: %s"
                            .formatted(
                                    problem.stops() ? "" : "note: ",
                                    place(problem.where(), table),
                                    words.of(problem.where()),
                                    words.of(problem.finding())));
        }
    }

    /// The table, where the place does not name another file itself.
    private static String place(Problem.Where where, String table) {
        return switch (where) {
            case Problem.Where.OtherFile _ -> "";
            case Problem.Where.Cell _,
                    Problem.Where.WholeRow _,
                    Problem.Where.WholeColumn _,
                    Problem.Where.WholeFile _ ->
                    table + ", ";
        };
    }
}

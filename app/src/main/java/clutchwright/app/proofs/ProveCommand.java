package clutchwright.app.proofs;

import clutchwright.app.cli.Exit;
import clutchwright.app.cli.Terminal;
import clutchwright.app.holding.PackageInHand;
import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.catalogue.Meaning;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.engine.proof.CarrierTest;
import clutchwright.engine.proof.TestMating;
import clutchwright.records.SpeciesRecords;
import clutchwright.records.animals.Animal;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/// Prints whether an animal of some files carries an allele, why, and what would settle it.
@Command(
        name = "prove",
        description =
                "Say how likely an animal carries a gene, what its clutches say, and which mate"
                        + " settles it.",
        footer = {"", "Example: clutchwright prove animals.csv --animal F7 --allele Clown"})
public final class ProveCommand implements Callable<Integer> {

    private static final int MOST_EGGS = 1000;

    private final Terminal terminal;

    @Parameters(paramLabel = "PACKAGE", description = "A folder, a .zip or a table of animals.")
    private Path file = Path.of("");

    @Option(
            names = "--animal",
            required = true,
            paramLabel = "TAG",
            description = "Whose genes are in question.")
    private String tag = "";

    @Option(
            names = "--allele",
            required = true,
            paramLabel = "NAME",
            description = "The gene, as breeders call it.")
    private String gene = "";

    @Option(
            names = "--background",
            paramLabel = "F",
            description =
                    "How frequent each gene is among animals without recorded parents of which"
                            + " nothing is stated; default ${DEFAULT-VALUE}.")
    private double background = Assumptions.STANDARD.background();

    @Option(
            names = "--misread",
            paramLabel = "E",
            description = "How often what was seen is not what is there; default ${DEFAULT-VALUE}.")
    private double misread = Assumptions.STANDARD.misread();

    @Option(
            names = "--acquired",
            paramLabel = "A",
            description =
                    "How far an animal without recorded parents is taken to be in the collection"
                            + " because of what it shows, and so not misread; default"
                            + " ${DEFAULT-VALUE}.")
    private double acquired = Assumptions.STANDARD.acquiredForLook();

    @Option(
            names = "--eggs",
            paramLabel = "N",
            description = "Hatchlings of a test clutch; default ${DEFAULT-VALUE}.")
    private int eggs = TestMating.USUAL_CLUTCH;

    @Option(
            names = "--species",
            paramLabel = "ID",
            description = "Of rows that do not say theirs; default ${DEFAULT-VALUE}.")
    private String species = "python-regius";

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    public ProveCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        if (!argumentsMakeSense()) {
            return Exit.BAD_INPUT.status();
        }
        var proved = PackageInHand.read(file, species, terminal::say).flatMap(this::prove);
        proved.ifPresent(this::print);
        return (proved.isPresent() ? Exit.DONE : Exit.BAD_INPUT).status();
    }

    private boolean argumentsMakeSense() {
        // Both are looked at before either is refused, so that all faults are named at once.
        var background = isChance("--background", this.background);
        var misread = isChance("--misread", this.misread);
        var acquired = isChance("--acquired", this.acquired);
        if (eggs < 1 || eggs > MOST_EGGS) {
            terminal.say("--eggs: write a number from 1 to %d, not %d.".formatted(MOST_EGGS, eggs));
            return false;
        }
        return background && misread && acquired;
    }

    private boolean isChance(String option, double value) {
        // Written so that NaN fails.
        var fits = value >= 0 && value <= 1;
        if (!fits) {
            terminal.say("%s: write a number from 0 to 1, not %s.".formatted(option, value));
        }
        return fits;
    }

    private Optional<Proved> prove(PackageInHand read) {
        var animal = read.collection().find(tag);
        if (animal.isEmpty()) {
            terminal.say(
                    "--animal: no animal has the tag “%s”.%s"
                            .formatted(tag, perhaps(read.collection().tagsNear(tag))));
            return Optional.empty();
        }
        var records = read.species().get(animal.get().species());
        if (records == null) {
            throw new IllegalStateException("no records of " + animal.get().species());
        }
        return allele(records.catalogue())
                .filter(allele -> leavesRoom(records, allele))
                .flatMap(allele -> prove(read, records, animal.get(), allele));
    }

    private Optional<Proved> prove(
            PackageInHand read, SpeciesRecords records, Animal animal, Allele allele) {
        var inference =
                PedigreeInference.of(
                        records.records(),
                        new Assumptions(background, misread).withAcquiredForLook(acquired),
                        List.of(allele.locus()));
        var test = CarrierTest.of(inference, animal.id(), allele);
        if (test.isEmpty()) {
            terminal.say(
                    "What is recorded of %s cannot all be true, so no chance follows; `clutchwright"
                                    .formatted(allele.locus())
                            + " infer` names the animals.");
            return Optional.empty();
        }
        var mates =
                read.collection().animals().values().stream()
                        .filter(mate -> mate.species().equals(animal.species()))
                        .filter(mate -> Mates.AT_HAND.contains(mate.status()))
                        .map(Animal::id)
                        .filter(id -> !id.equals(animal.id()))
                        .toList();
        return Optional.of(Proved.of(read::tag, inference, test.get(), mates, eggs));
    }

    /// The allele that the name means; why there is none is said.
    private Optional<Allele> allele(Catalogue catalogue) {
        var meaning = catalogue.find(gene);
        if (meaning.isEmpty()) {
            terminal.say(
                    "--allele: no gene is called “%s”.%s"
                            .formatted(gene, perhaps(catalogue.nearest(gene, 3))));
            return Optional.empty();
        }
        return switch (meaning.get()) {
            case Meaning.OfAllele(_, var allele) -> Optional.of(allele);
            case Meaning.OneOf(var name, var choices) -> {
                terminal.say(
                        "--allele: “%s” may be %s. Write which."
                                .formatted(
                                        name,
                                        choices.stream()
                                                .map(Meaning::name)
                                                .collect(Collectors.joining(" or "))));
                yield Optional.empty();
            }
            case Meaning.OfForm _, Meaning.OfCombination _, Meaning.OfRemark _ -> {
                terminal.say(
                        "--allele: “%s” is not one gene. Write the name of a single one."
                                .formatted(gene));
                yield Optional.empty();
            }
        };
    }

    private boolean leavesRoom(SpeciesRecords records, Allele allele) {
        var alleles = records.catalogue().model().theLocus(allele.locus()).locus().alleles().size();
        var fits = (alleles - 1) * background <= 1;
        if (!fits) {
            terminal.say(
                    "--background: %s for each of the %d genes of %s is more than 1 together; write %.4f at most."
                            .formatted(
                                    background, alleles - 1, allele.locus(), 1.0 / (alleles - 1)));
        }
        return fits;
    }

    private static String perhaps(List<String> near) {
        return near.isEmpty() ? "" : " Perhaps %s.".formatted(String.join(" or ", near));
    }

    private void print(Proved proved) {
        if (json) {
            terminal.json(proved);
        } else {
            ProvedText.lines(proved).forEach(terminal::print);
        }
    }
}

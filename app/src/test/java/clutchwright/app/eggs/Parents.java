package clutchwright.app.eggs;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.notation.GeneLine;
import clutchwright.engine.notation.Genes;
import clutchwright.engine.notation.Reading;
import clutchwright.engine.probability.Distribution;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Set;

/// Parents and looks of royal pythons, from gene lines.
final class Parents {

    static final GeneLine LINES = GeneLine.of(Catalogue.shipped("python-regius"));

    private Parents() {}

    static Expected pair(String dam, String sire) {
        return inDoubt(dam, sire);
    }

    /// Each of the sires alike likely.
    static Expected inDoubt(String dam, String... sires) {
        return Expected.of(
                LINES.catalogue().model(),
                parent(dam, Sex.FEMALE),
                Distribution.uniform(
                        Arrays.stream(sires).map(line -> parent(line, Sex.MALE)).toList()));
    }

    static Set<Phenotype> look(String line) {
        var shows = new LinkedHashSet<Phenotype>();
        for (var statement : genes(line).statements()) {
            if (statement instanceof Genes.Statement.Shows shown) {
                shows.add(
                        LINES.catalogue()
                                .model()
                                .theLocus(shown.locus())
                                .phenotypeOf(shown.pairs().getFirst()));
            }
        }
        return shows;
    }

    static Genes genes(String line) {
        return switch (LINES.read(line)) {
            case Reading.Understood(var genes, _, _) -> genes;
            case Reading.Unclear(var faults, _) -> throw new IllegalArgumentException(faults + "");
        };
    }

    private static ParentGenotype parent(String line, Sex sex) {
        return LINES.asParent(genes(line), sex).parent();
    }
}

package clutchwright.records.exchange;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.catalogue.CatalogueText;
import clutchwright.engine.notation.GeneLine;
import clutchwright.records.exchange.Problem.Where;
import clutchwright.records.exchange.sheets.Sheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;

/// The keeper's own genes that a package brings along in `genes.csv`.
final class PackageGenes {

    static final String FILE = "genes.csv";

    private PackageGenes() {}

    /// The species with the package's own genes over them.
    ///
    /// @param problems where what is wrong is put
    static SpeciesLines over(SpeciesLines lines, Sheet sheet, List<Problem> problems) {
        var texts = new LinkedHashMap<String, StringBuilder>();
        for (var row : RowByHeading.all(sheet)) {
            texts.computeIfAbsent(row.get("species"), _ -> new StringBuilder())
                    .append(row.get("text"))
                    .append('\n');
        }
        var all = new ArrayList<GeneLine>();
        for (var line : lines.all()) {
            var species = line.catalogue().species();
            var text = texts.get(species.id());
            if (text == null) {
                all.add(line);
                continue;
            }
            switch (CatalogueText.readOver(species, FILE, text.toString())) {
                case CatalogueText.Result.Loaded(var extended) ->
                        all.add(GeneLine.of(Catalogue.of(extended)));
                case CatalogueText.Result.Faulty(var faults) -> {
                    all.add(line);
                    faults.forEach(
                            fault ->
                                    problems.add(
                                            new Problem(
                                                    new Where.OtherFile(FILE, 1),
                                                    new Finding.OwnGenesFaulty(fault))));
                }
            }
        }
        return new SpeciesLines(all);
    }
}

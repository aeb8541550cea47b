package clutchwright.records.statements;

import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Findings;
import clutchwright.records.checks.Problem;
import clutchwright.records.statements.Statement.Claim;
import clutchwright.records.statements.Statement.Sighting;
import clutchwright.records.store.Row;
import clutchwright.records.store.Transaction;
import clutchwright.records.store.Values;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.Set;
import java.util.stream.Collectors;

/// What was said and what was seen of animals' genes, in time.
public final class Statements {

    /// Newest first; what has no date counts as older than what has one.
    private static final String NEWEST_FIRST = " order by coalesce(made_on, '') desc, id desc";

    private final Transaction tx;

    public Statements(Transaction tx) {
        this.tx = tx;
    }

    /// Writes down what somebody states of an animal.
    public Edit<Claim> claim(AnimalId animal, GeneText genes, Witness witness) {
        return problems(animal, genes, witness)
                .<Claim>refusal()
                .orElseGet(
                        () -> {
                            long id =
                                    tx.insert(
                                            "statement",
                                            values("CLAIM", animal, genes, witness, false));
                            return new Edit.Saved<>(
                                    new Claim(new StatementId(id), 1, animal, genes, witness));
                        });
    }

    /// Writes down what somebody saw of an animal.
    public Edit<Sighting> see(AnimalId animal, GeneText genes, Witness witness, boolean doubted) {
        return problems(animal, genes, witness)
                .<Sighting>refusal()
                .orElseGet(
                        () -> {
                            long id =
                                    tx.insert(
                                            "statement",
                                            values("SIGHTING", animal, genes, witness, doubted));
                            return new Edit.Saved<>(
                                    new Sighting(
                                            new StatementId(id),
                                            1,
                                            animal,
                                            genes,
                                            witness,
                                            doubted));
                        });
    }

    /// Changes a statement, if it still is of the version that was edited.
    public Edit<Statement> update(Statement changed) {
        var current = find(changed.id());
        if (current.isEmpty()) {
            return Edit.refused(new Problem.Missing(Field.GENE_LINE, changed.id().value()));
        }
        var values =
                switch (changed) {
                    case Claim(_, _, var animal, var genes, var witness) ->
                            values("CLAIM", animal, genes, witness, false);
                    case Sighting(_, _, var animal, var genes, var witness, var doubted) ->
                            values("SIGHTING", animal, genes, witness, doubted);
                };
        return problems(changed.animal(), changed.genes(), changed.witness())
                .<Statement>refusal()
                .orElseGet(
                        () ->
                                tx.update(
                                                "statement",
                                                changed.id().value(),
                                                changed.version(),
                                                values)
                                        ? new Edit.Saved<>(find(changed.id()).orElseThrow())
                                        : new Edit.Stale<>(current.get()));
    }

    /// @return the statement that was removed
    public Edit<Statement> remove(StatementId id, long version) {
        var current = find(id);
        if (current.isEmpty()) {
            return Edit.refused(new Problem.Missing(Field.GENE_LINE, id.value()));
        }
        if (current.get().version() != version) {
            return new Edit.Stale<>(current.get());
        }
        tx.delete("statement", id.value());
        return new Edit.Saved<>(current.get());
    }

    public Optional<Statement> find(StatementId id) {
        return tx.first(Statements::read, "select * from statement where id = ?", id.value());
    }

    /// Newest first.
    public List<Statement> of(AnimalId animal) {
        return tx.list(
                Statements::read,
                "select * from statement where animal = ?" + NEWEST_FIRST,
                animal.value());
    }

    /// The last of each kind.
    public Latest latest(AnimalId animal) {
        return Latest.among(of(animal));
    }

    /// The last of each kind for several animals; those of whom nothing is said are left out.
    public Map<AnimalId, Latest> latest(Collection<AnimalId> animals) {
        var found = new HashMap<AnimalId, Latest>();
        of(animals).forEach((animal, all) -> found.put(animal, Latest.among(all)));
        return found;
    }

    /// All that was said and seen, animal by animal, newest first.
    public SequencedMap<AnimalId, List<Statement>> all() {
        return byAnimal(
                tx.list(
                        Statements::read,
                        "select * from statement order by animal, coalesce(made_on, '') desc,"
                                + " id desc"));
    }

    /// The animals of which any statement ever mentioned that locus.
    public List<AnimalId> animalsMentioning(String species, LocusId locus) {
        return tx.list(
                row -> new AnimalId(row.number("animal")),
                "select distinct animal from animal_gene where species = ? and locus = ?"
                        + " order by animal",
                species,
                locus.value());
    }

    /// Of how many animals the latest statements mention each locus; loci of none are left out.
    public Map<LocusId, Integer> animalsByLocus(String species) {
        var counts = new HashMap<LocusId, Integer>();
        tx.list(
                        row -> Map.entry(new LocusId(row.text("locus")), row.number("animals")),
                        "select locus, count(distinct animal) as animals from animal_gene"
                                + " where species = ? and latest = 1 group by locus",
                        species)
                .forEach(found -> counts.put(found.getKey(), Math.toIntExact(found.getValue())));
        return counts;
    }

    /// Of how many animals the latest statements say that they show an allele of the locus, or
    /// have it unseen; alleles of none are left out.
    public Map<String, AlleleCount> animalsByAllele(String species, LocusId locus) {
        var counts = new HashMap<String, AlleleCount>();
        tx.list(
                        row ->
                                Map.entry(
                                        row.text("allele"),
                                        new AlleleCount(
                                                Math.toIntExact(row.number("showing")),
                                                Math.toIntExact(row.number("animals")))),
                        "select allele, count(distinct animal) as animals,"
                                + " count(distinct case when shown = 1 then animal end) as showing"
                                + " from animal_gene where species = ? and locus = ?"
                                + " and latest = 1 group by allele",
                        species,
                        locus.value())
                .forEach(found -> counts.put(found.getKey(), found.getValue()));
        return counts;
    }

    /// Every gene line on record that the species' catalogue must be able to read, with an animal
    /// that it was written of.
    public SequencedMap<String, AnimalId> linesOf(String species) {
        var lines = new LinkedHashMap<String, AnimalId>();
        tx.list(
                        row -> Map.entry(row.text("line"), new AnimalId(row.number("animal"))),
                        "select case when canonical = '' then written else canonical end as line,"
                                + " min(animal) as animal from statement where species = ?"
                                + " group by case when canonical = '' then written else canonical"
                                + " end order by 2",
                        species)
                .forEach(found -> lines.put(found.getKey(), found.getValue()));
        return lines;
    }

    /// @param showing animals of which it is said that they show it
    /// @param all those, and those of which it is said that they have it unseen
    public record AlleleCount(int showing, int all) {}

    private SequencedMap<AnimalId, List<Statement>> of(Collection<AnimalId> animals) {
        if (animals.isEmpty()) {
            return new LinkedHashMap<>();
        }
        var wanted = Set.copyOf(animals);
        if (wanted.size() > 500) {
            var found = all();
            found.keySet().retainAll(wanted);
            return found;
        }
        return byAnimal(
                tx.list(
                        Statements::read,
                        "select * from statement where animal in ("
                                + "?, ".repeat(wanted.size() - 1)
                                + "?)"
                                + NEWEST_FIRST,
                        wanted.stream().map(AnimalId::value).toArray()));
    }

    private static SequencedMap<AnimalId, List<Statement>> byAnimal(List<Statement> statements) {
        return statements.stream()
                .collect(
                        Collectors.groupingBy(
                                Statement::animal, LinkedHashMap::new, Collectors.toList()));
    }

    private Findings problems(AnimalId animal, GeneText genes, Witness witness) {
        var findings = new Findings(tx.today());
        findings.notBlank(Field.GENE_LINE, genes.written());
        findings.notBlank(Field.SPECIES, genes.species());
        findings.addIf(
                genes.written().length() > 500,
                new Problem.TooLong(Field.GENE_LINE, genes.written().length(), 500));
        witness.on().ifPresent(day -> findings.notInTheFuture(Field.SAID_OR_SEEN_ON, day));
        return findings.addIf(
                tx.row("animal", animal.value()).isEmpty(),
                new Problem.Missing(Field.TAG, animal.value()));
    }

    private static Values values(
            String kind, AnimalId animal, GeneText genes, Witness witness, boolean doubted) {
        return Values.of()
                .set("kind", kind)
                .set("animal", animal.value())
                .set("written", genes.written())
                .set("canonical", genes.canonical())
                .set("species", genes.species())
                .set("genes", GeneLines.write(genes.mentions()))
                .setIfAny("made_on", witness.on())
                .set("made_by", witness.by())
                .set("source", witness.source())
                .set("doubted", doubted);
    }

    private static Statement read(Row row) {
        var id = new StatementId(row.number("id"));
        var animal = new AnimalId(row.number("animal"));
        var genes =
                new GeneText(
                        row.text("written"),
                        row.text("canonical"),
                        row.text("species"),
                        GeneLines.read(row.text("genes")));
        var witness = new Witness(row.findDay("made_on"), row.text("made_by"), row.text("source"));
        return row.text("kind").equals("CLAIM")
                ? new Claim(id, row.number("version"), animal, genes, witness)
                : new Sighting(
                        id, row.number("version"), animal, genes, witness, row.truth("doubted"));
    }
}

package clutchwright.engine.casebook;

import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.CollectionRecords;
import clutchwright.engine.inference.LocusChances;
import clutchwright.engine.inference.OwnRecords;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Member;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Pedigree;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/// A small language for writing down related animals and what is said and seen of them, in
/// tests.
public final class TestPedigree {

    private final GeneticModel model;
    private final Map<String, Integer> numbers = new LinkedHashMap<>();
    private final List<Member> members = new ArrayList<>();
    private final Map<AnimalId, OwnRecords> records = new HashMap<>();

    public TestPedigree(GeneticModel model) {
        this.model = model;
    }

    public TestPedigree founder(String tag) {
        return member(tag, Optional.empty(), new Parentage.Founder());
    }

    public TestPedigree founder(String tag, Sex sex) {
        return member(tag, Optional.of(sex), new Parentage.Founder());
    }

    public TestPedigree young(String tag, String dam, String sire) {
        return member(tag, Optional.empty(), both(dam, sire));
    }

    public TestPedigree young(String tag, Sex sex, String dam, String sire) {
        return member(tag, Optional.of(sex), both(dam, sire));
    }

    public TestPedigree young(String tag, LocalDate hatched, String dam, String sire) {
        return member(
                tag, Optional.empty(), Optional.of(Member.Span.day(hatched)), both(dam, sire));
    }

    /// Young of one of several males, each with the same chance; those that share the key share
    /// him.
    public TestPedigree youngOfEither(String tag, String key, String dam, String... sires) {
        var candidates = new ArrayList<AnimalId>();
        for (var sire : sires) {
            candidates.add(id(sire));
        }
        var question = new Parentage.SireQuestion(key, Distribution.uniform(candidates));
        return member(
                tag,
                Optional.empty(),
                new Parentage.Biparental(
                        new Parentage.Dam.Known(id(dam)), new Parentage.Sire.InDoubt(question)));
    }

    public TestPedigree member(String tag, Optional<Sex> sex, Parentage parentage) {
        return member(tag, sex, Optional.empty(), parentage);
    }

    private TestPedigree member(
            String tag, Optional<Sex> sex, Optional<Member.Span> hatched, Parentage parentage) {
        numbers.put(tag, numbers.size());
        members.add(new Member(id(tag), sex, hatched, parentage));
        return this;
    }

    /// Stated to be such for certain, `"clown", "Clown/+"`: sets a founder's prior.
    public TestPedigree said(String tag, String locus, String genotype) {
        return said(tag, locus, Distribution.certain(TestGenes.genotype(locus, genotype)));
    }

    /// Stated to be a het at a chance, else wild type.
    public TestPedigree het(String tag, String locus, String allele, Fraction chance) {
        return chance.isWhole()
                ? said(tag, locus, allele + "/+")
                : said(
                        tag,
                        locus,
                        TestGenes.chances(
                                locus, allele + "/+", chance, "+/+", chance.complement()));
    }

    public TestPedigree said(String tag, String locus, Distribution<Genotype> genotypes) {
        var own = own(tag);
        var claims = new LinkedHashMap<>(own.claims());
        claims.put(new LocusId(locus), new OwnRecords.Claim(genotypes, false));
        records.put(id(tag), new OwnRecords(claims, own.seen(), own.tests()));
        return this;
    }

    /// A keeper looked and saw these forms, `"clown", "Clown"`; nothing else was to be seen.
    public TestPedigree saw(String tag, String... looks) {
        var own = own(tag);
        var seen = new LinkedHashMap<LocusId, Set<Phenotype>>();
        for (var i = 0; i < looks.length; i += 2) {
            seen.put(new LocusId(looks[i]), Set.of(TestGenes.form(looks[i], looks[i + 1])));
        }
        records.put(
                id(tag),
                new OwnRecords(own.claims(), Optional.of(new OwnRecords.Seen(seen)), own.tests()));
        return this;
    }

    public TestPedigree sawNormal(String... tags) {
        for (var tag : tags) {
            saw(tag);
        }
        return this;
    }

    public TestPedigree tested(String tag, OwnRecords.AlleleTest test) {
        var own = own(tag);
        var tests = new ArrayList<>(own.tests());
        tests.add(test);
        records.put(id(tag), new OwnRecords(own.claims(), own.seen(), tests));
        return this;
    }

    public AnimalId id(String tag) {
        return new AnimalId(
                Objects.requireNonNull(numbers.get(tag), () -> "no animal called " + tag));
    }

    public CollectionRecords records() {
        if (Pedigree.of(members) instanceof Pedigree.Result.Sound(var pedigree)) {
            return new CollectionRecords(model, pedigree, records);
        }
        throw new IllegalStateException("not a sound pedigree: " + Pedigree.of(members));
    }

    public PedigreeInference infer(Assumptions assumptions) {
        return PedigreeInference.of(records(), assumptions);
    }

    public LocusChances infer(String locus, Assumptions assumptions) {
        return infer(assumptions).chancesAt(new LocusId(locus)).orElseThrow();
    }

    /// The chance of a genotype, `chance(chances, "Cy", "Clown/+")`.
    public double chance(LocusChances chances, String tag, String genotype) {
        return chances.of(id(tag))
                .getOrDefault(TestGenes.genotype(chances.locus().value(), genotype), 0.0);
    }

    private OwnRecords own(String tag) {
        return records.getOrDefault(id(tag), OwnRecords.NONE);
    }

    private Parentage both(String dam, String sire) {
        return Parentage.of(
                dam.isEmpty() ? new Parentage.Dam.Unknown() : new Parentage.Dam.Known(id(dam)),
                sire.isEmpty() ? new Parentage.Sire.Unknown() : new Parentage.Sire.Known(id(sire)));
    }
}

package clutchwright.engine.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.CollectionRecords;
import clutchwright.engine.inference.LocusAnswer;
import clutchwright.engine.inference.LocusChances;
import clutchwright.engine.inference.Method;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Member;
import clutchwright.engine.pedigree.Parentage;
import java.util.HashSet;
import java.util.List;
import java.util.Map;

/// One collection, inferred and enumerated: every figure of the one against the other's.
final class InferenceAgreement {

    /// The enumeration adds up at most some 10^5 products of at most 64 factors, each rounded to
    /// 2^-53: 2 x 10^-11 of the sum at the worst. The inference leaves out chances below 10^-12,
    /// of at most 77 genotypes: less than 8 x 10^-11 of the others' sum.
    static final double TOLERANCE = 1e-10;

    private final PedigreeInference inference;
    private final PedigreeEnumeration enumeration;
    private final CollectionRecords records;
    private final List<AnimalId> pair;

    InferenceAgreement(CollectionRecords records, Assumptions assumptions) {
        this.records = records;
        inference = PedigreeInference.of(records, assumptions);
        var animals = records.pedigree().members().stream().map(Member::id).toList();
        pair = List.of(animals.getFirst(), animals.getLast());
        enumeration =
                new PedigreeEnumeration(
                        records,
                        assumptions,
                        List.copyOf(inference.loci()),
                        pair.toArray(AnimalId[]::new));
    }

    void check() {
        var contradicted = new HashSet<>();
        for (var answer : inference.answers()) {
            switch (answer) {
                case LocusAnswer.Settled(var chances) -> check(chances);
                case LocusAnswer.Contradicted(var locus) -> contradicted.add(locus);
                case LocusAnswer.Stopped stopped -> throw new AssertionError(stopped);
            }
        }
        assertThat(contradicted).isEqualTo(enumeration.contradicted());
        checkSires();
    }

    private void check(LocusChances chances) {
        var locus = chances.locus();
        assertThat(chances.method()).isEqualTo(new Method.Exact());
        assertThat(chances.logLikelihood())
                .as("log likelihood at %s", locus)
                .isEqualTo(enumeration.logLikelihood(locus), within(TOLERANCE));
        for (var member : records.pedigree().members()) {
            agree(
                    chances.of(member.id()),
                    enumeration.of(locus, member.id()),
                    locus + " of " + member.id());
        }
        if (!pair.getFirst().equals(pair.getLast())) {
            agree(chances.together(pair), enumeration.together(locus), locus + " of " + pair);
        }
    }

    private void checkSires() {
        var found = inference.sireChances();
        enumeration
                .answers()
                .forEach(
                        (question, chances) -> {
                            if (found.containsKey(question)) {
                                var males = List.copyOf(found.get(question).values());
                                for (var i = 0; i < chances.size(); i++) {
                                    assertThat(males.get(i))
                                            .as(question)
                                            .isEqualTo(chances.get(i), within(TOLERANCE));
                                }
                            }
                        });
        for (var member : records.pedigree().members()) {
            assertThat(inference.chanceOfNoSire(member.id()))
                    .as("no sire of %s", member.id())
                    .isEqualTo(noSire(member), within(TOLERANCE));
        }
    }

    private double noSire(Member member) {
        return switch (member.parentage()) {
            case Parentage.Parthenogenetic _ -> 1;
            case Parentage.Biparental(_, Parentage.Sire.Unknown()) ->
                    enumeration
                            .answers()
                            .getOrDefault(PedigreeEnumeration.clutchOf(member), List.of(0.0))
                            .getLast();
            case Parentage _ -> 0;
        };
    }

    private static <T> void agree(Map<T, Double> found, Map<T, Double> expected, String what) {
        var all = new HashSet<>(found.keySet());
        all.addAll(expected.keySet());
        for (var one : all) {
            assertThat(found.getOrDefault(one, 0.0))
                    .as("%s: %s; %s and %s", what, one, found, expected)
                    .isEqualTo(expected.getOrDefault(one, 0.0), within(TOLERANCE));
        }
    }
}

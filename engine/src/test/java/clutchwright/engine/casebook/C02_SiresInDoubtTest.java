package clutchwright.engine.casebook;

import static clutchwright.engine.genetics.Sex.FEMALE;
import static clutchwright.engine.genetics.Sex.MALE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.LocusAnswer;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.engine.probability.Fraction;
import org.junit.jupiter.api.Test;

/// Two males were with her, and every gene has a say in who it was.
class C02_SiresInDoubtTest {

    private static final Assumptions NO_DOUBT = new Assumptions(0, 0);

    @Test
    void genes_that_each_leave_it_open_settle_it_together() {
        // Bo is het Clown and het Pied, Carl the one or the other: of a double visual, only Bo.
        var family =
                either().said("Bo", "clown", "Clown/+")
                        .said("Bo", "pied", "Pied/+")
                        .het("Carl", "clown", "Clown", Fraction.HALF)
                        .het("Carl", "pied", "Pied", Fraction.HALF)
                        .saw("H1", "clown", "Clown", "pied", "Pied");

        var inference = family.infer(NO_DOUBT);

        // 1/16 by Bo, 1/4 of that by Carl.
        assertThat(sire(family, inference, "Bo")).isEqualTo(4.0 / 5, within(1e-12));
        // Carl carries if he was the sire, else as before: 1/5 + 4/5 1/2.
        var clown = inference.chancesAt(new LocusId("clown")).orElseThrow();
        assertThat(family.chance(clown, "Carl", "Clown/+")).isEqualTo(3.0 / 5, within(1e-12));
    }

    @Test
    void a_gene_that_says_nothing_of_the_male_learns_of_him_from_the_others() {
        // Carl cannot give Clown; so Bo it was, whose young are then surely het Pied.
        var family =
                either().said("Bo", "clown", "Clown/+")
                        .said("Bo", "pied", "Pied/Pied")
                        .said("Carl", "clown", "+/+")
                        .said("Carl", "pied", "+/+")
                        .said("Ada", "pied", "+/+")
                        .saw("H1", "clown", "Clown");

        var pied = family.infer(NO_DOUBT).chancesAt(new LocusId("pied")).orElseThrow();

        assertThat(family.chance(pied, "H1", "Pied/+")).isEqualTo(1.0, within(1e-12));
    }

    @Test
    void one_clutch_by_either_has_one_sire_and_two_clutches_may_have_two() {
        for (var together : new boolean[] {true, false}) {
            var family =
                    either().said("Bo", "clown", "Clown/Clown")
                            .said("Carl", "clown", "+/+")
                            .youngOfEither("H2", together ? "clutch" : "other", "Ada", "Bo", "Carl")
                            .saw("H1", "clown", "Clown")
                            .sawNormal("H2");

            var chances = family.infer("clown", NO_DOUBT);

            // Bo fathered H1. H2 is plain: het if by Bo; if it may be by Carl, 1/2 of Bo's young
            // and all of Carl's are plain, and half of Carl's are het too.
            assertThat(family.chance(chances, "H2", "Clown/+"))
                    .isEqualTo(together ? 1.0 : (0.5 + 0.5) / (0.5 + 1), within(1e-12));
        }
    }

    @Test
    void genes_that_each_exclude_another_male_contradict_each_other() {
        // Clown says Bo, Pied says Carl; Axanthic, which both could have given, is none of it.
        var family =
                either().said("Bo", "clown", "Clown/+")
                        .said("Carl", "clown", "+/+")
                        .said("Bo", "pied", "+/+")
                        .said("Carl", "pied", "Pied/+")
                        .het("Ada", "axanthic", "Axanthic", Fraction.WHOLE)
                        .het("Bo", "axanthic", "Axanthic", Fraction.WHOLE)
                        .said("Carl", "axanthic", "Axanthic/Axanthic")
                        .saw("H1", "clown", "Clown", "pied", "Pied")
                        .youngOfEither("H2", "clutch", "Ada", "Bo", "Carl")
                        .saw("H2", "axanthic", "Axanthic");

        var inference = family.infer(NO_DOUBT);

        assertThat(inference.at(new LocusId("clown"))).isInstanceOf(LocusAnswer.Contradicted.class);
        assertThat(inference.at(new LocusId("pied"))).isInstanceOf(LocusAnswer.Contradicted.class);
        // The genes in conflict are left out; what is left says 1/4 3/4 by Bo, 1/2 1/2 by Carl.
        assertThat(inference.at(new LocusId("axanthic"))).isInstanceOf(LocusAnswer.Settled.class);
        assertThat(sire(family, inference, "Bo"))
                .isEqualTo((3.0 / 16) / (3.0 / 16 + 1.0 / 4), within(1e-12));
    }

    @Test
    void a_gene_asked_for_later_has_its_own_likelihood() {
        var family =
                either().said("Bo", "clown", "Clown/Clown")
                        .said("Carl", "clown", "+/+")
                        .saw("H1", "clown", "Clown");

        var axanthic =
                family.infer(new Assumptions(0.1, 0))
                        .chancesAt(new LocusId("axanthic"))
                        .orElseThrow();

        // One plain hatchling of strangers: all but 1/10 1/10.
        assertThat(axanthic.logLikelihood()).isEqualTo(Math.log(0.99), within(1e-12));
    }

    private static TestPedigree either() {
        return new TestPedigree(
                        new TestGenes()
                                .recessive("clown", "Clown")
                                .recessive("pied", "Pied")
                                .recessive("axanthic", "Axanthic")
                                .model())
                .founder("Ada", FEMALE)
                .founder("Bo", MALE)
                .founder("Carl", MALE)
                .het("Ada", "clown", "Clown", Fraction.WHOLE)
                .het("Ada", "pied", "Pied", Fraction.WHOLE)
                .youngOfEither("H1", "clutch", "Ada", "Bo", "Carl");
    }

    private static double sire(TestPedigree family, PedigreeInference inference, String male) {
        var chances = inference.sireChances().get("clutch");
        return chances == null ? 0 : chances.getOrDefault(family.id(male), 0.0);
    }
}

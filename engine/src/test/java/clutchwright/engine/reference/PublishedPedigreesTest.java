package clutchwright.engine.reference;

import static clutchwright.engine.reference.RelationshipTables.assertInbreeding;
import static clutchwright.engine.reference.RelationshipTables.assertInverse;
import static clutchwright.engine.reference.RelationshipTables.assertKinship;
import static clutchwright.engine.reference.RelationshipTables.assertRelationships;
import static clutchwright.engine.reference.RelationshipTables.number;
import static clutchwright.engine.reference.RelationshipTables.words;
import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.genetics.SexDetermination;
import clutchwright.engine.pedigree.Inbreeding;
import clutchwright.engine.pedigree.Kindred;
import clutchwright.engine.pedigree.KinshipAssumptions;
import clutchwright.engine.pedigree.SexChromosomeKinship;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/// Pedigrees that were printed with their coefficients, or whose coefficients follow by hand.
class PublishedPedigreesTest {

    private static final String SHORTHORNS =
            """
            Champion LordRaglan CzarDam CarmineDam DuchessDam MistletoeDam
            DuchessGloster(LordRaglan,DuchessDam) Mistletoe(LordRaglan,MistletoeDam)
            Czar(LordRaglan,CzarDam) Carmine(Czar,CarmineDam)
            GrandDuke(Champion,DuchessGloster) Mimulus(Champion,Mistletoe)
            RoyalDuke(GrandDuke,Mimulus) PrincessRoyal(Champion,Carmine)
            RoanGauntlet(RoyalDuke,PrincessRoyal)
            """;

    @Test
    @Reference(
            kind = Reference.Kind.PUBLISHED,
            source =
                    "S. Wright (1922), Coefficients of inbreeding and relationship, American"
                            + " Naturalist 56:330-338, as Example 1 in chapter 7 of M. Lynch and"
                            + " B. Walsh (1998), Genetics and Analysis of Quantitative Traits",
            locator =
                    "two paths of four and two of seven individuals, through Champion of England"
                            + " and Lord Raglan; the links between them rebuilt from those counts")
    void roan_gauntlet_is_inbred_nine_in_sixty_four() {
        var bulls = Kindred.sireFirst(SHORTHORNS);

        assertInbreeding(bulls, "RoanGauntlet 9/64, RoyalDuke 5/32");
        assertKinship(bulls, "RoyalDuke-PrincessRoyal 9/64, Champion-RoanGauntlet 1/4");
        var through =
                bulls.kinship().commonAncestors(bulls.id("RoyalDuke"), bulls.id("PrincessRoyal"));
        assertThat(through)
                .extracting(found -> found.animal())
                .containsExactly(bulls.id("Champion"), bulls.id("LordRaglan"));
        assertThat(through).extracting(found -> found.share()).containsExactly(1 / 8.0, 1 / 64.0);
    }

    @Test
    @Reference(
            kind = Reference.Kind.PUBLISHED,
            source =
                    "M. Lynch and B. Walsh (1998), Genetics and Analysis of Quantitative Traits,"
                            + " chapter 7, Example 1",
            locator = "X-chromosomal kinship of Royal Duke and Princess Royal, 1/4")
    void royal_duke_and_princess_royal_are_closer_at_the_x() {
        var males = "Champion LordRaglan Czar GrandDuke RoyalDuke RoanGauntlet";
        var marked = SHORTHORNS;
        for (var male : words(males)) {
            marked = marked.replaceAll("(?m)(^|\\s)" + male + "(?=[\\s(])", "$1" + male + "*");
        }
        var bulls = Kindred.sireFirst(marked);
        var x =
                SexChromosomeKinship.of(
                        bulls.pedigree(), SexDetermination.XY, KinshipAssumptions.STANDARD);

        assertThat(x.between(bulls.id("RoyalDuke"), bulls.id("PrincessRoyal"))).contains(1.0 / 4);
    }

    @Test
    @Reference(
            kind = Reference.Kind.PUBLISHED,
            source = "S. Wright (1922), American Naturalist 56:330-338",
            locator = "the three nearest generations of Comet (115); .1875 and .46875")
    void favourite_and_comet_are_inbred_as_wright_found_them() {
        var bulls =
                Kindred.sireFirst(
                        """
                        Foljambe FavoriteCow DaltonDuke
                        YoungStrawberry(DaltonDuke,FavoriteCow)
                        Bolingbroke(Foljambe,YoungStrawberry) Phoenix(Foljambe,FavoriteCow)
                        Favourite(Bolingbroke,Phoenix) YoungPhoenix(Favourite,Phoenix)
                        Comet(Favourite,YoungPhoenix)
                        """);

        assertInbreeding(bulls, "Favourite 3/16, YoungPhoenix 11/32, Comet 15/32");
    }

    @Test
    @Reference(
            kind = Reference.Kind.PUBLISHED,
            source =
                    "D.S. Falconer and T.F.C. Mackay (1996), Introduction to Quantitative"
                            + " Genetics, 4th edition",
            locator = "pedigree of page 84; coefficients worked out by the tabular rule")
    void falconers_eighteen_animals() {
        var animals =
                Kindred.sireFirst(
                        "A B C G H I O D(A,B) E(A,B) F(C,B) J(E,F) K(G,F) L(H,D) M(I,J) N(K,J)"
                                + " P(L,M) Q(N,O) X(P,Q)");

        assertInbreeding(animals, "J 1/8, N 5/32, P 3/64, X 31/512, Q 0, M 0");
        assertKinship(animals, "D-J 3/16, E-F 1/8, K-J 5/32, L-M 3/64, P-Q 31/512, M-N 23/128");
    }

    @Test
    @Reference(
            kind = Reference.Kind.PUBLISHED,
            source = "R.A. Mrode, Linear Models for the Prediction of Animal Breeding Values",
            locator = "table 2.1 and section 2.3 to 2.4 (3rd edition, pages 23-28): A, F, inverse")
    void mrodes_six_calves() {
        var calves = Kindred.sireFirst("1 2 3(1,2) 4(1,-) 5(4,3) 6(5,2)");

        assertRelationships(
                calves,
                "1 2 3 4 5 6",
                """
                1   0   1/2  1/2  1/2   1/4
                0   1   1/2  0    1/4   5/8
                1/2 1/2 1    1/4  5/8   9/16
                1/2 0   1/4  1    5/8   5/16
                1/2 1/4 5/8  5/8  9/8   11/16
                1/4 5/8 9/16 5/16 11/16 9/8
                """);
        assertInverse(
                calves,
                "1 2 3 4 5 6",
                """
                11/6 1/2    -1  -2/3 0      0
                1/2  61/30  -1  0    8/15   -16/15
                -1   -1     5/2 1/2  -1     0
                -2/3 0      1/2 11/6 -1     0
                0    8/15   -1  -1   38/15  -16/15
                0    -16/15 0   0    -16/15 32/15
                """);
    }

    @Test
    @Reference(
            kind = Reference.Kind.PUBLISHED,
            source = "R.A. Mrode, Linear Models for the Prediction of Animal Breeding Values",
            locator =
                    "examples 3.1 and 4.1 (3rd edition): pedigrees and, on page 64, an inverse;"
                            + " animal 8 of example 4.1 is inbred though neither parent is")
    void mrodes_eight_animals_twice() {
        assertInverse(
                Kindred.sireFirst("1 2 3 4(1,-) 5(3,2) 6(1,2) 7(4,5) 8(3,6)"),
                "1 2 3 4 5 6 7 8",
                """
                11/6 1/2 0   -2/3 0   -1  0  0
                1/2  2   1/2 0    -1  -1  0  0
                0    1/2 2   0    -1  1/2 0  -1
                -2/3 0   0   11/6 1/2 0   -1 0
                0    -1  -1  1/2  5/2 0   -1 0
                -1   -1  1/2 0    0   5/2 0  -1
                0    0   0   -1   -1  0   2  0
                0    0   -1  0    0   -1  0  2
                """);
        var second = Kindred.sireFirst("1 2 3 4(1,2) 5(3,-) 6(1,5) 7(3,4) 8(1,7)");
        assertInverse(
                second,
                "1 2 3 4 5 6 7 8",
                """
                5/2 1/2 0    -1  1/2  -1 1/2 -1
                1/2 3/2 0    -1  0    0  0   0
                0   0   11/6 1/2 -2/3 0  -1  0
                -1  -1  1/2  5/2 0    0  -1  0
                1/2 0   -2/3 0   11/6 -1 0   0
                -1  0   0    0   -1   2  0   0
                1/2 0   -1   -1  0    0  5/2 -1
                -1  0   0    0   0    0  -1  2
                """);
        assertInbreeding(second, "7 0, 8 1/8");
    }

    @Test
    @Reference(
            kind = Reference.Kind.PUBLISHED,
            source =
                    "T.H.E. Meuwissen and Z. Luo (1992), Computing inbreeding coefficients in"
                            + " large populations, Genetics Selection Evolution 24:305-313, as"
                            + " worked by L.R. Schaeffer (1999)",
            locator =
                    "animal G of F and B: its own part 15/32, that of F 1/2; the six animals"
                            + " before it from memory")
    void the_step_of_meuwissen_and_luo() {
        var animals = Kindred.sireFirst("A B C D(A,B) E(A,C) F(E,D) G(F,B)");

        assertInbreeding(animals, "F 1/8, G 1/8");
        assertRelationships(
                animals,
                "A B C D E F G",
                """
                1   0   0   1/2  1/2  1/2   1/4
                0   1   0   1/2  0    1/4   5/8
                0   0   1   0    1/2  1/4   1/8
                1/2 1/2 0   1    1/4  5/8   9/16
                1/2 0   1/2 1/4  1    5/8   5/16
                1/2 1/4 1/4 5/8  5/8  9/8   11/16
                1/4 5/8 1/8 9/16 5/16 11/16 9/8
                """);
        assertThat(
                        Inbreeding.ofNumbered(
                                new int[] {-1, -1, -1, 1, 2, 3, 1},
                                new int[] {-1, -1, -1, 0, 0, 4, 5}))
                .containsExactly(0, 0, 0, 0, 0, 1 / 8.0, 1 / 8.0);
    }

    @Test
    @Reference(
            kind = Reference.Kind.PUBLISHED,
            source = "N.R. Wray (1990), Biometrics 46:177-186",
            locator = "the pedigree of eight; coefficients worked out by the tabular rule")
    void wrays_eight_animals() {
        var animals = Kindred.sireFirst("1 2 3(2,1) 4(2,1) 5(3,4) 6(2,4) 7(5,6) 8(5,7)");

        assertInbreeding(animals, "4 0, 5 1/4, 6 1/4, 7 5/16, 8 15/32");
        assertRelationships(
                animals,
                "1 2 3 4 5 6 7 8",
                """
                1    0    1/2   1/2 1/2   1/4   3/8   7/16
                0    1    1/2   1/2 1/2   3/4   5/8   9/16
                1/2  1/2  1     1/2 3/4   1/2   5/8   11/16
                1/2  1/2  1/2   1   3/4   3/4   3/4   3/4
                1/2  1/2  3/4   3/4 5/4   5/8   15/16 35/32
                1/4  3/4  1/2   3/4 5/8   5/4   15/16 25/32
                3/8  5/8  5/8   3/4 15/16 15/16 21/16 9/8
                7/16 9/16 11/16 3/4 35/32 25/32 9/8   47/32
                """);
    }

    @Test
    @Reference(
            kind = Reference.Kind.PUBLISHED,
            source = "R.A. Mrode, Linear Models for the Prediction of Animal Breeding Values",
            locator = "example 9.1, twelve pigs; coefficients worked out by the tabular rule")
    void mrodes_pigs() {
        var pigs = Kindred.sireFirst("5(1,2) 6(3,4) 7(6,5) 8(-,5) 9(3,8) 10(3,8) 11(6,8) 12(6,8)");

        assertKinship(
                pigs, "7-8 1/8, 9-10 1/4, 9-11 3/16, 11-12 1/4, 7-11 3/16, 7-9 1/8, 12-12 1/2");
    }

    @Test
    @Reference(
            kind = Reference.Kind.PUBLISHED,
            source =
                    "R.L. Fernando and M. Grossman (1990), Genetic evaluation with autosomal and"
                            + " X-chromosomal inheritance, Theoretical and Applied Genetics"
                            + " 80:75-80",
            locator = "the pedigree of table 1; coefficients worked out by the tabular rule")
    void fernando_and_grossmans_eight_at_the_x_and_elsewhere() {
        var animals = Kindred.sireFirst("1* 2 3*(1,-) 4(1,2) 5*(3,4) 6(1,4) 7*(5,6) 8(5,6)");

        assertInbreeding(animals, "5 1/8, 6 1/4, 7 9/32, 8 9/32");
        assertRelationships(
                animals,
                "1 2 3 4 5 6 7 8",
                """
                1   0   1/2 1/2   1/2   3/4   5/8   5/8
                0   1   0   1/2   1/4   1/4   1/4   1/4
                1/2 0   1   1/4   5/8   3/8   1/2   1/2
                1/2 1/2 1/4 1     5/8   3/4   11/16 11/16
                1/2 1/4 5/8 5/8   9/8   9/16  27/32 27/32
                3/4 1/4 3/8 3/4   9/16  5/4   29/32 29/32
                5/8 1/4 1/2 11/16 27/32 29/32 41/32 7/8
                5/8 1/4 1/2 11/16 27/32 29/32 7/8   41/32
                """);
        var x =
                SexChromosomeKinship.of(
                        animals.pedigree(), SexDetermination.XY, KinshipAssumptions.STANDARD);
        var rows =
                """
                1   0    0 1/2 1/2 3/4 3/4 5/8
                0   1/2  0 1/4 1/4 1/8 1/8 3/16
                0   0    1 0   0   0   0   0
                1/2 1/4  0 1/2 1/2 1/2 1/2 1/2
                1/2 1/4  0 1/2 1   1/2 1/2 3/4
                3/4 1/8  0 1/2 1/2 3/4 3/4 5/8
                3/4 1/8  0 1/2 1/2 3/4 1   5/8
                5/8 3/16 0 1/2 3/4 5/8 5/8 3/4
                """
                        .lines()
                        .map(RelationshipTables::words)
                        .toList();
        for (int i = 1; i <= 8; i++) {
            for (int j = 1; j <= 8; j++) {
                assertThat(x.between(animals.id("" + i), animals.id("" + j)))
                        .as("X kinship of %d and %d", i, j)
                        .contains(number(rows.get(i - 1).get(j - 1)));
            }
        }
    }

    @Test
    @Reference(
            kind = Reference.Kind.DERIVED,
            source =
                    "C.R. Henderson (1976), A simple method for computing the inverse of a"
                            + " numerator relationship matrix, Biometrics 32:69-83",
            locator =
                    "his rules on a line of back-crosses: s and d, their young a and b, c of a and"
                            + " b, e of a and c, f of c and e")
    void hendersons_rules_invert_what_the_engine_says() {
        var line = Kindred.sireFirst("s d a(s,d) b(s,d) c(a,b) e(a,c) f(c,e)");

        assertInbreeding(line, "c 1/4, e 3/8, f 1/2");
        assertInverse(
                line,
                "s d a b c e f",
                """
                2  1  -1    -1  0      0      0
                1  2  -1    -1  0      0      0
                -1 -1 43/14 1/2 -3/7   -8/7   0
                -1 -1 1/2   5/2 -1     0      0
                0  0  -3/7  -1  254/77 -32/77 -16/11
                0  0  -8/7  0   -32/77 232/77 -16/11
                0  0  0     0   -16/11 -16/11 32/11
                """);
    }

    @Test
    @Reference(
            kind = Reference.Kind.DERIVED,
            source =
                    "J.D. Ballou and R.C. Lacy (1995), Identifying genetically important"
                            + " individuals for management of genetic variation in pedigreed"
                            + " populations",
            locator = "their measures of the living c, e and f of that line, worked out by hand")
    void mean_kinship_and_gene_diversity_of_a_group() {
        var line = Kindred.sireFirst("s d a(s,d) b(s,d) c(a,b) e(a,c) f(c,e)");
        var rounding = Offset.offset(1e-15);

        var group = line.kinship().amongst(List.of(line.id("c"), line.id("e"), line.id("f")));

        assertThat(group.of(line.id("c"))).isEqualTo(9 / 16.0, rounding);
        assertThat(group.of(line.id("e"))).isEqualTo(19 / 32.0, rounding);
        assertThat(group.of(line.id("f"))).isEqualTo(61 / 96.0, rounding);
        assertThat(group.ofGroup()).isEqualTo(43 / 72.0, rounding);
        assertThat(group.geneDiversity()).isEqualTo(29 / 72.0, rounding);
        assertThat(group.founderGenomeEquivalents()).isEqualTo(36 / 43.0, rounding);
        var shares = line.kinship().founderShares(line.id("f")).founders();
        assertThat(shares).containsEntry(line.id("s"), 0.5).containsEntry(line.id("d"), 0.5);
    }

    @Test
    @Reference(
            kind = Reference.Kind.PUBLISHED,
            source = "S. Wright (1922), American Naturalist 56:330-338",
            locator = "coefficients of the usual matings of unrelated stock")
    void usual_matings() {
        var some =
                Kindred.of(
                        """
                        A; B; C; D; E; G; H
                        S = A x B; T = A x B; U = C x B; V = C x D; W = C x D
                        GrandYoung = S x E; Niece = T x E; HalfNiece = U x G
                        CousinOne = S x E; CousinTwo = T x G
                        DoubleOne = S x V; DoubleTwo = T x W
                        HalfCousin = U x H; SecondOne = CousinOne x H; SecondTwo = CousinTwo x D
                        ThreeQuarterOne = S x E; ThreeQuarterTwo = T x E
                        """);

        assertKinship(
                some,
                "A-S 1/4, S-T 1/4, S-U 1/8, ThreeQuarterOne-ThreeQuarterTwo 3/16,"
                        + " A-GrandYoung 1/8, S-Niece 1/8, S-HalfNiece 1/16,"
                        + " DoubleOne-DoubleTwo 1/8, CousinOne-CousinTwo 1/16,"
                        + " CousinOne-HalfCousin 1/32, CousinOne-SecondTwo 1/32,"
                        + " SecondOne-SecondTwo 1/64");
    }

    @Test
    @Reference(
            kind = Reference.Kind.FROM_MEMORY,
            source =
                    "S. Wright (1921), Systems of mating; D.S. Falconer and T.F.C. Mackay (1996),"
                            + " table 5.1",
            locator =
                    "ten generations of selfing, of full siblings and of back-crosses to one parent")
    void repeated_systems_of_mating() {
        var before = IntStream.range(0, 24).map(i -> i - 1).toArray();
        assertCourse(
                "1/2 3/4 7/8 15/16 31/32 63/64 127/128 255/256 511/512 1023/1024",
                Inbreeding.ofNumbered(before, before),
                1,
                1);
        assertCourse(
                "1/4 3/8 1/2 19/32 43/64 47/64 201/256 423/512 55/64 1815/2048",
                Inbreeding.ofNumbered(parents(i -> i / 2 * 2 - 2), parents(i -> i / 2 * 2 - 1)),
                4,
                2);
        assertCourse(
                "1/4 3/8 7/16 15/32 31/64 63/128 127/256 255/512 511/1024 1023/2048",
                Inbreeding.ofNumbered(parents(_ -> 0), parents(i -> i - 1)),
                3,
                1);
    }

    /// Of animals that descend as they say, but for the first two.
    private static int[] parents(IntUnaryOperator parent) {
        return IntStream.range(0, 24).map(i -> i < 2 ? -1 : parent.applyAsInt(i)).toArray();
    }

    private static void assertCourse(String values, double[] inbreeding, int first, int step) {
        var expected = words(values);
        for (int i = 0; i < expected.size(); i++) {
            assertThat(inbreeding[first + i * step])
                    .as("generation %d", i + 1)
                    .isEqualTo(number(expected.get(i)));
        }
    }
}

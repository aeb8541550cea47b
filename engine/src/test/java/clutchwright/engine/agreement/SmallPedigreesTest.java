package clutchwright.engine.agreement;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.casebook.TestGenes;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.CollectionRecords;
import clutchwright.engine.inference.OwnRecords;
import clutchwright.engine.inference.OwnRecords.Seen;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Member;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Pedigree;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/// Every pedigree of up to four animals at one recessive locus, each animal visual, plain or not
/// looked at.
class SmallPedigreesTest {

    private static final LocusId CLOWN = new LocusId("clown");
    private static final GeneticModel MODEL = new TestGenes().recessive("clown", "Clown").model();

    @Test
    void agree_with_enumeration_whatever_was_seen() {
        // 1, 3, 17 and 155 pedigrees of one to four animals, each parent before its young.
        assertThat(agreeing(4, new Assumptions(0.1, 0.02)))
                .isEqualTo(3 + 3 * 9 + 17 * 27 + 155 * 81);
    }

    @Test
    void agree_where_nothing_is_misread_and_some_records_cannot_be_true() {
        assertThat(agreeing(3, new Assumptions(0.1, 0))).isEqualTo(3 + 3 * 9 + 17 * 27);
    }

    private static int agreeing(int most, Assumptions assumptions) {
        var count = 0;
        for (var size = 1; size <= most; size++) {
            for (var pedigree : pedigrees(size)) {
                for (var sightings = 0; sightings < Math.pow(3, size); sightings++) {
                    try {
                        new InferenceAgreement(records(pedigree, sightings), assumptions).check();
                    } catch (AssertionError | RuntimeException e) {
                        var seen = Integer.toString(sightings, 3);
                        throw new AssertionError(pedigree.members() + " seen " + seen, e);
                    }
                    count++;
                }
            }
        }
        return count;
    }

    /// Each later animal is a founder or has a dam, a sire or both among the earlier.
    private static List<Pedigree> pedigrees(int size) {
        List<List<Member>> all = List.of(List.of());
        for (var i = 0; i < size; i++) {
            var longer = new ArrayList<List<Member>>();
            for (var some : all) {
                for (var dam = -1; dam < i; dam++) {
                    for (var sire = -1; sire < i; sire++) {
                        var members = new ArrayList<>(some);
                        members.add(member(i, dam, sire));
                        longer.add(members);
                    }
                }
            }
            all = longer;
        }
        return all.stream()
                .map(Pedigree::of)
                .filter(Pedigree.Result.Sound.class::isInstance)
                .map(sound -> ((Pedigree.Result.Sound) sound).pedigree())
                .filter(SmallPedigreesTest::hasOneRoleEach)
                .toList();
    }

    private static boolean hasOneRoleEach(Pedigree pedigree) {
        var dams = pedigree.members().stream().flatMap(one -> one.parentage().dams().stream());
        var sires =
                pedigree.members().stream()
                        .flatMap(one -> one.parentage().sires().stream())
                        .toList();
        return dams.noneMatch(sires::contains);
    }

    private static Member member(int i, int dam, int sire) {
        return new Member(
                new AnimalId(i),
                Optional.empty(),
                Optional.empty(),
                Parentage.of(
                        dam < 0
                                ? new Parentage.Dam.Unknown()
                                : new Parentage.Dam.Known(new AnimalId(dam)),
                        sire < 0
                                ? new Parentage.Sire.Unknown()
                                : new Parentage.Sire.Known(new AnimalId(sire))));
    }

    private static CollectionRecords records(Pedigree pedigree, int sightings) {
        var own = new HashMap<AnimalId, OwnRecords>();
        var left = sightings;
        for (var member : pedigree.members()) {
            if (left % 3 > 0) {
                var look =
                        left % 3 == 1
                                ? Phenotype.normalOf(CLOWN)
                                : new Phenotype(CLOWN, "Clown", true);
                var looks = new LinkedHashMap<LocusId, Set<Phenotype>>();
                looks.put(CLOWN, Set.of(look));
                own.put(
                        member.id(),
                        new OwnRecords(new LinkedHashMap<>(), Optional.of(new Seen(looks))));
            }
            left /= 3;
        }
        return new CollectionRecords(MODEL, pedigree, own);
    }
}

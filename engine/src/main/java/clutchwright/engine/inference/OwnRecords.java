package clutchwright.engine.inference;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.probability.Distribution;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.Set;

/// What was said, seen and tested of one animal itself.
///
/// @param claims what a seller or breeder states, a claim a locus
/// @param seen what a keeper saw, if anybody looked
/// @param tests for single alleles
public record OwnRecords(
        SequencedMap<LocusId, Claim> claims, Optional<Seen> seen, List<AlleleTest> tests) {

    public static final OwnRecords NONE = new OwnRecords(new LinkedHashMap<>(), Optional.empty());

    public OwnRecords {
        claims = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(claims));
        tests = List.copyOf(tests);
    }

    public OwnRecords(SequencedMap<LocusId, Claim> claims, Optional<Seen> seen) {
        this(claims, seen, List.of());
    }

    /// The same with that stated at a locus.
    public OwnRecords withClaim(LocusId locus, Claim claim) {
        var more = new LinkedHashMap<>(claims);
        more.put(locus, claim);
        return new OwnRecords(more, seen, tests);
    }

    /// The same with one more test.
    public OwnRecords withTest(AlleleTest test) {
        var more = new ArrayList<>(tests);
        more.add(test);
        return new OwnRecords(claims, seen, more);
    }

    /// The same without what was stated at the locus.
    public OwnRecords withoutClaim(LocusId locus) {
        var fewer = new LinkedHashMap<>(claims);
        fewer.remove(locus);
        return new OwnRecords(fewer, seen, tests);
    }

    /// The same as if nobody could have read the locus.
    public OwnRecords withoutSight(LocusId locus) {
        return new OwnRecords(claims, seen.map(looked -> looked.blindTo(locus)), tests);
    }

    /// The same without the tests for alleles of the locus.
    public OwnRecords withoutTests(LocusId locus) {
        return new OwnRecords(
                claims,
                seen,
                tests.stream().filter(test -> !test.allele().locus().equals(locus)).toList());
    }

    /// The same as if nothing were known at the locus.
    public OwnRecords without(LocusId locus) {
        return withoutClaim(locus).withoutSight(locus).withoutTests(locus);
    }

    /// The same with that look at a locus instead of what was seen there.
    public OwnRecords withLook(LocusId locus, Set<Phenotype> look) {
        var looked = seen.orElseGet(() -> new Seen(new LinkedHashMap<>()));
        var looks = new LinkedHashMap<>(looked.looks());
        looks.put(locus, look);
        return new OwnRecords(claims, Optional.of(new Seen(looks, looked.unread())), tests);
    }

    /// @param genotypes what the animal is said to be, each with its chance
    /// @param shows whether that is said of what one sees, and not of what it carries unseen
    public record Claim(Distribution<Genotype> genotypes, boolean shows) {}

    /// A keeper looked: at a locus that is not named nothing was to be seen, unless it was
    /// hidden.
    ///
    /// @param looks at each named locus the looks it may have been; several where in doubt
    /// @param unread loci of which the sighting says nothing
    public record Seen(SequencedMap<LocusId, Set<Phenotype>> looks, Set<LocusId> unread) {

        public Seen {
            var copy = new LinkedHashMap<LocusId, Set<Phenotype>>();
            looks.forEach(
                    (locus, look) -> {
                        if (look.isEmpty()) {
                            throw new IllegalArgumentException("no look is possible at " + locus);
                        }
                        copy.put(locus, Set.copyOf(look));
                    });
            looks = Collections.unmodifiableSequencedMap(copy);
            unread = Set.copyOf(unread);
        }

        public Seen(SequencedMap<LocusId, Set<Phenotype>> looks) {
            this(looks, Set.of());
        }

        private Seen blindTo(LocusId locus) {
            var fewer = new LinkedHashMap<>(looks);
            fewer.remove(locus);
            var blind = new LinkedHashSet<>(unread);
            blind.add(locus);
            return new Seen(fewer, blind);
        }
    }

    /// A laboratory's answer to whether an animal has the allele.
    ///
    /// @param sensitivity chance of `found` if it has it
    /// @param specificity chance of not `found` if it has not
    public record AlleleTest(Allele allele, boolean found, double sensitivity, double specificity) {

        public AlleleTest {
            if (!(sensitivity >= 0 && sensitivity <= 1 && specificity >= 0 && specificity <= 1)) {
                throw new IllegalArgumentException(
                        "sensitivity %s and specificity %s are not both between 0 and 1"
                                .formatted(sensitivity, specificity));
            }
        }

        double likelihood(Genotype genotype) {
            var foundIf = genotype.carries(allele) ? sensitivity : 1 - specificity;
            return found ? foundIf : 1 - foundIf;
        }
    }
}

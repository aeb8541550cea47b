package clutchwright.app.season;

import clutchwright.app.wording.Chances;
import clutchwright.app.wording.Formats;
import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.ParentPair;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Wanted;
import clutchwright.engine.probability.Distribution;
import clutchwright.records.Knowledge;
import java.math.BigInteger;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.SequencedMap;
import java.util.Set;
import java.util.stream.Stream;

/// What one dam and one sire give, with everything that is to be said before and beside it.
///
/// @param hets of which every hatchling has a copy, in words; empty where there are none
/// @param together where the two are not independent of each other, in words; empty where they are
/// @param dying the share that does not live, in words; empty where all may live
/// @param losses why they die
/// @param kinds listed; empty where sires are compared
/// @param kindCount how many can be told apart, in words
/// @param more whether there are more kinds than are listed
/// @param targets the forms in play, each with its odds, in the order given
/// @param wanted odds of what was ticked
/// @param related how closely the two are related
/// @param planning what can be done with this pair
/// @param alone the address of this pair's own prediction
public record Prospect(
        ParentCard dam,
        ParentCard sire,
        List<CautionCard> cautions,
        String hets,
        String together,
        String dying,
        Losses losses,
        List<KindRow> kinds,
        String kindCount,
        boolean more,
        List<Target> targets,
        Odds wanted,
        Related related,
        Planning planning,
        String alone) {

    public Prospect {
        cautions = List.copyOf(cautions);
        kinds = List.copyOf(kinds);
        targets = List.copyOf(targets);
    }

    /// A visible form and its odds.
    public record Target(String name, Odds odds) {}

    /// @param limit how many kinds to list; 0 for none
    static Prospect of(
            Question question,
            Pair couple,
            int limit,
            Related related,
            Planning planning,
            String alone) {
        var dam = couple.dam();
        var sire = couple.sire();
        var model = question.catalogue().model();
        var sought = question.sought();
        var together = couple.together();
        var cross = Cross.of(model, dam.genotype(), sire.genotype(), together);
        var stake = new AtStake(model, dam.genotype(), sire.genotype());
        var kinds = limit == 0 ? List.<KindRow>of() : kinds(cross, question, limit);
        return new Prospect(
                dam,
                sire,
                cross.cautions().stream()
                        .map(caution -> CautionCard.of(caution, stake, question.formats()))
                        .toList(),
                question.formats().list(stake.certainHets().stream().map(Allele::name).toList()),
                together(question.formats(), together),
                cross.dying().isNone()
                        ? ""
                        : "%s (%s)"
                                .formatted(
                                        Chances.fraction(cross.dying()),
                                        Chances.percent(cross.dying().value())),
                Losses.of(question.catalogue(), stake),
                kinds,
                count(cross.outcomeCount(), kinds.size(), limit, sought),
                sought.isAnything()
                        ? cross.outcomeCount().compareTo(BigInteger.valueOf(kinds.size())) > 0
                        : kinds.size() == limit,
                question.forms().stream()
                        .map(form -> target(cross, form, question.eggs()))
                        .toList(),
                odds(cross, sought.wanted(), question.eggs()),
                related,
                planning,
                alone);
    }

    /// Of two animals on record, what the one carries may say something of the other.
    ///
    /// @param together the genotypes of both, where that is so
    record Pair(
            ParentCard dam,
            ParentCard sire,
            SequencedMap<LocusId, Distribution<ParentPair>> together) {

        static Pair of(Knowledge knowledge, ParentCard dam, ParentCard sire) {
            return new Pair(
                    dam,
                    sire,
                    dam.animal()
                            .flatMap(
                                    her ->
                                            sire.animal()
                                                    .map(
                                                            him ->
                                                                    knowledge.together(
                                                                            her.id(), him.id())))
                            .orElseGet(LinkedHashMap::new));
        }
    }

    /// The genes that the two may have at the loci where they are judged together.
    private static String together(
            Formats formats, SequencedMap<LocusId, Distribution<ParentPair>> together) {
        return formats.list(
                together.values().stream()
                        .flatMap(pairs -> pairs.outcomes().stream())
                        .flatMap(pair -> Stream.of(pair.dam(), pair.sire()))
                        .flatMap(genotype -> genotype.alleles().stream())
                        .filter(allele -> !allele.isWild())
                        .map(Allele::name)
                        .distinct()
                        .toList());
    }

    /// What is asked of every pair on the page.
    ///
    /// @param forms those in play, in naming order
    record Question(
            Catalogue catalogue, Sought sought, List<Phenotype> forms, int eggs, Formats formats) {

        Question {
            forms = List.copyOf(forms);
        }
    }

    private static List<KindRow> kinds(Cross cross, Question question, int limit) {
        var species = question.catalogue().species();
        return cross.likeliest(limit, question.sought().wanted()).stream()
                .map(outcome -> KindRow.of(outcome, cross, species, question.eggs()))
                .toList();
    }

    private static Target target(Cross cross, Phenotype form, int eggs) {
        return new Target(form.name(), odds(cross, new Wanted(Set.of(form), Set.of()), eggs));
    }

    private static Odds odds(Cross cross, Wanted wanted, int eggs) {
        return new Odds(cross.chanceOf(wanted), cross.atLeastOne(wanted, eggs));
    }

    private static String count(BigInteger all, int listed, int limit, Sought sought) {
        var kinds =
                String.format(Locale.ENGLISH, "%,d", all)
                        + (all.equals(BigInteger.ONE) ? " kind" : " kinds")
                        + " can be told apart";
        if (limit == 0) {
            return kinds + ".";
        }
        if (!sought.isAnything()) {
            return kinds
                    + (listed == limit
                            ? "; the %,d likeliest that fit are shown.".formatted(listed)
                            : listed == 1
                                    ? "; 1 of them fits."
                                    : "; %,d of them fit.".formatted(listed));
        }
        return all.compareTo(BigInteger.valueOf(listed)) > 0
                ? kinds + "; the %,d likeliest are shown.".formatted(listed)
                : kinds + ".";
    }
}

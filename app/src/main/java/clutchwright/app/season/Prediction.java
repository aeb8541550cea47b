package clutchwright.app.season;

import clutchwright.engine.genetics.Caution;
import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.Outcome;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.probability.Fraction;
import java.math.BigInteger;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SequencedMap;

/// What a pairing gives, as other programs read it: the document that `predict --json` prints.
///
/// Fields may be added; none is renamed or removed.
///
/// @param outcomes by falling chance, then name
/// @param outcomeCount how many groups can be told apart, listed or not
/// @param dying share of the embryos that do not live because of their genotype
record Prediction(
        List<Group> outcomes,
        BigInteger outcomeCount,
        int listed,
        Chance dying,
        List<Care> cautions) {

    Prediction {
        outcomes = List.copyOf(outcomes);
        cautions = List.copyOf(cautions);
    }

    static Prediction of(Cross cross, int eggs, int limit) {
        var groups =
                cross.likeliest(limit).stream()
                        .map(outcome -> Group.of(outcome, cross.atLeastOne(outcome, eggs)))
                        .toList();
        return new Prediction(
                groups,
                cross.outcomeCount(),
                groups.size(),
                Chance.of(cross.dying()),
                cross.cautions().stream().map(Care::of).toList());
    }

    /// Hatchlings that look alike.
    ///
    /// @param visible sorted by code point; empty where nothing shows
    /// @param atLeastOne chance of at least one in the clutch
    /// @param sexes chance of each sex within the group
    /// @param twoCopies alleles that show and of which there may be an unseen second copy
    record Group(
            String name,
            List<String> visible,
            Chance chance,
            List<Unseen> carries,
            double atLeastOne,
            SequencedMap<String, Chance> sexes,
            List<Unseen> twoCopies) {

        Group {
            visible = List.copyOf(visible);
            carries = List.copyOf(carries);
            sexes = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(sexes));
            twoCopies = List.copyOf(twoCopies);
        }

        private static Group of(Outcome outcome, Fraction atLeastOne) {
            return new Group(
                    outcome.name(),
                    outcome.shows().stream().map(Phenotype::name).sorted().toList(),
                    Chance.of(outcome.chance()),
                    outcome.carries().stream().map(Unseen::of).toList(),
                    atLeastOne.value(),
                    sexes(outcome.sexes()),
                    outcome.homozygous().stream().map(Unseen::of).toList());
        }

        private static SequencedMap<String, Chance> sexes(Map<Sex, Fraction> chances) {
            var sexes = new LinkedHashMap<String, Chance>();
            chances.forEach(
                    (sex, chance) ->
                            sexes.put(sex.name().toLowerCase(Locale.ROOT), Chance.of(chance)));
            return sexes;
        }
    }

    record Chance(String fraction, double value) {

        private static Chance of(Fraction chance) {
            return new Chance(chance.toString(), chance.value());
        }
    }

    record Unseen(String allele, Chance chance) {

        private static Unseen of(Outcome.Held held) {
            return new Unseen(held.allele().name(), Chance.of(held.chance()));
        }
    }

    /// @param alleles what an animal must have for the caution to concern it, with its copies
    record Care(
            String concern, List<String> alleles, String standing, String words, String source) {

        Care {
            alleles = List.copyOf(alleles);
        }

        private static Care of(Caution caution) {
            return new Care(
                    word(caution.concern()),
                    caution.parts().stream()
                            .map(part -> part.copies() + " x " + part.allele().name())
                            .toList(),
                    word(caution.standing()),
                    caution.words(),
                    caution.source());
        }

        private static String word(Enum<?> member) {
            return member.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }
}

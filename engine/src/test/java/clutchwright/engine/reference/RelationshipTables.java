package clutchwright.engine.reference;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.pedigree.Kindred;
import clutchwright.engine.probability.Fraction;
import java.util.Arrays;
import java.util.List;
import org.assertj.core.data.Offset;

/// Printed tables of relationships, compared with what the engine says.
final class RelationshipTables {

    /// All values printed are halves of halves of 1: doubles hold them exactly, sums of a few too.
    private static final Offset<Double> ROUNDING = Offset.offset(1e-15);

    private RelationshipTables() {}

    /// @param table a row an animal, relationships (twice the kinship) as fractions
    static void assertRelationships(Kindred kindred, String names, String table) {
        var kinship = kindred.kinship();
        var order = words(names);
        var rows = table.strip().lines().map(RelationshipTables::words).toList();
        assertThat(rows).hasSameSizeAs(order);
        for (int i = 0; i < order.size(); i++) {
            for (int j = 0; j < order.size(); j++) {
                assertThat(2 * kinship.between(kindred.id(order.get(i)), kindred.id(order.get(j))))
                        .as("A of %s and %s", order.get(i), order.get(j))
                        .isEqualTo(number(rows.get(i).get(j)), ROUNDING);
            }
        }
    }

    /// @param values `X 31/512, ...`
    static void assertInbreeding(Kindred kindred, String values) {
        for (var value : values.split(",\\s*")) {
            var parts = words(value);
            assertThat(kindred.kinship().inbreeding(kindred.id(parts.getFirst())))
                    .as("F of %s", parts.getFirst())
                    .isEqualTo(number(parts.getLast()), ROUNDING);
        }
    }

    /// @param values `D-J 3/16, ...`
    static void assertKinship(Kindred kindred, String values) {
        for (var value : values.split(",\\s*")) {
            var parts = words(value);
            var pair = parts.getFirst().split("-");
            assertThat(kindred.kinship().between(kindred.id(pair[0]), kindred.id(pair[1])))
                    .as("kinship %s", parts.getFirst())
                    .isEqualTo(number(parts.getLast()), ROUNDING);
        }
    }

    /// The printed inverse, multiplied with what the engine says, is the identity.
    static void assertInverse(Kindred kindred, String names, String inverse) {
        var order = words(names);
        var rows = inverse.strip().lines().map(RelationshipTables::words).toList();
        var kinship = kindred.kinship();
        for (int i = 0; i < order.size(); i++) {
            for (int j = 0; j < order.size(); j++) {
                double sum = 0;
                for (int k = 0; k < order.size(); k++) {
                    sum +=
                            2
                                    * kinship.between(
                                            kindred.id(order.get(i)), kindred.id(order.get(k)))
                                    * number(rows.get(k).get(j));
                }
                // A dozen products of numbers up to a dozen.
                assertThat(sum)
                        .as("row %s, column %s", order.get(i), order.get(j))
                        .isEqualTo(i == j ? 1 : 0, Offset.offset(1e-12));
            }
        }
    }

    static double number(String text) {
        return text.startsWith("-")
                ? -Fraction.parse(text.substring(1)).value()
                : Fraction.parse(text).value();
    }

    static List<String> words(String line) {
        return Arrays.asList(line.strip().split("[\\s|]+"));
    }
}

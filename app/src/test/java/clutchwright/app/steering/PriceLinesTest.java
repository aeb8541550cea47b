package clutchwright.app.steering;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.notation.GeneLine;
import clutchwright.engine.planning.PriceStep;
import clutchwright.records.plans.Price;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PriceLinesTest {

    private static final String ROYAL = "python-regius";
    private static final PriceLines LINES =
            new PriceLines(GeneLine.of(Catalogue.shipped(ROYAL)), ROYAL);

    @Test
    void a_list_is_read_as_the_engine_takes_it_and_written_back_as_it_was() {
        var text =
                """
                Clown: 300
                0.1 Clown: 400.5; 6 a year, then 250
                Normal: 0
                het Clown: 60""";

        var prices = understood(text);

        assertThat(PriceLines.write(prices)).isEqualTo(text);
        assertThat(prices.get(1).sex()).contains(Sex.FEMALE);
        assertThat(prices.get(1).later()).contains(new Price.Later(6, 250));
        var list = LINES.list(prices);
        assertThat(list.prices()).hasSize(3);
        assertThat(list.prices().get(1).steps().getFirst()).isEqualTo(new PriceStep(6, 400.5));
        assertThat(list.prices().get(2).look().shows()).isEmpty();
        assertThat(list.hets().values()).containsExactly(60.0);
    }

    @Test
    void names_of_the_trade_are_one_price_whatever_their_order_and_case() {
        var faulty = LINES.read("Pastel Clown: 450\nclown PASTEL: 300");

        assertThat(faulty).isInstanceOf(PriceLines.Read.Faulty.class);
        assertThat(((PriceLines.Read.Faulty) faulty).faults())
                .singleElement()
                .asString()
                .startsWith("Line 2:");
    }

    @Test
    void each_line_that_cannot_be_a_price_is_named() {
        var faulty =
                LINES.read(
                        """
                        Clown = 300
                        50% het Clown: 30
                        Zzyzx: 10
                        Pastel: -4
                        Pastel: 10; 0 a year, then 5""");

        assertThat(((PriceLines.Read.Faulty) faulty).faults())
                .hasSize(5)
                .allMatch(fault -> fault.matches("(?s)Line [1-5]: .+"));
    }

    @Test
    void a_price_of_genes_that_the_catalogue_lost_is_left_out() {
        var lost = new Price(ROYAL, "Zzyzx", Optional.empty(), 10, Optional.empty());

        assertThat(LINES.list(java.util.List.of(lost)).prices()).isEmpty();
    }

    private static java.util.List<Price> understood(String text) {
        var read = LINES.read(text);
        assertThat(read).isInstanceOf(PriceLines.Read.Understood.class);
        return ((PriceLines.Read.Understood) read).prices();
    }
}

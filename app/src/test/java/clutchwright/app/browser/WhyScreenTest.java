package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import clutchwright.app.holding.Holding;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/// Why an animal is thought to carry a gene, from its page.
class WhyScreenTest extends Browsing {

    @Test
    void what_moves_a_chance_is_listed_by_weight() {
        var stock = stock();
        var dam = stock.female("WHY-1", "66% het Clown");
        var sire = stock.male("WHY-2", "Clown");
        for (var n = 1; n <= 3; n++) {
            var young = stock.young("WHY-H" + n, dam, sire, LocalDate.of(2024, 6, 20));
            stock.seen(young.id(), "Normal", LocalDate.of(2024, 6, 21));
        }
        open("/collection/" + dam.id());
        page().getByText("Every record that moves these chances, by weight").click();

        assertThat(page().locator("h1")).hasText("Why Clown");
        assertThat(page().locator("table.stack tbody")).containsText("WHY-2");
        assertThat(page().locator("table.stack tbody > tr").first())
                .containsText("It is stated to carry Clown: 66.7 %.");
        assertThat(page().locator("table.stack tbody")).containsText("hatchlings");
        inspect("why");

        page().getByText("why.json").click();
        assertThat(page().locator("body")).containsText("\"allele\" : \"Clown\"");
    }

    @Test
    void an_animal_of_which_nothing_is_said_is_told_what_to_do() {
        var animal = stock().add("WHY-9", of -> of);
        open("/collection/" + animal.id() + "/why");

        assertThat(page().locator("main")).containsText("Write down what it shows");
        inspect("why-nothing");
    }

    private Stock stock() {
        return new Stock(bean(Holding.class));
    }
}

package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.records.checks.Questions;
import clutchwright.records.husbandry.Happening;
import clutchwright.records.pairings.Pairing;
import clutchwright.records.pairings.Pairings;
import clutchwright.records.pairings.SignSeen;
import clutchwright.records.places.Places;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.List;
import org.junit.jupiter.api.Test;

/// The other short forms without a signal: sheds and notes, signs of a pairing, a whole rack.
class WaitingFormsTest extends Waiting {

    @Test
    void sheds_and_notes_of_an_animal() {
        var animal = stock().female("WAIT-S1", "Pastel");
        use(Device.PHONE);
        open("/collection/" + animal.id());
        cut(true);
        button("In pieces").click();
        waits(1);
        page().getByLabel("What you noticed").fill("stuck shed at the tail");
        button("Keep the note").click();
        waits(2);
        cut(false);
        assertThat(strip().getByRole(AriaRole.STATUS))
                .hasText("Sent: WAIT-S1 shed in pieces; WAIT-S1 noted: stuck shed at the tail.");
        assertThat(of(animal.id()))
                .extracting(Object::getClass)
                .containsExactlyInAnyOrder(Happening.Shed.class, Happening.HealthNote.class);
    }

    @Test
    void signs_of_a_pairing() {
        var pairing = pairing();
        use(Device.PHONE);
        open("/season?season=" + pairing.season());
        cut(true);
        var card = page().locator("#pairing-" + pairing.id().value());
        card.getByText("Lock seen").click();
        waits(1);
        assertThat(card).containsText("waiting to be sent: WAIT-F2 × WAIT-M2: Lock seen");
        inspect("waiting-season");
        cut(false);
        assertThat(strip().getByRole(AriaRole.STATUS))
                .hasText("Sent: WAIT-F2 × WAIT-M2: Lock seen.");
        List<SignSeen> signs =
                holding().database().read(tx -> new Pairings(tx).signs(pairing.id()));
        assertThat(signs)
                .singleElement()
                .satisfies(
                        sign -> {
                            assertThat(sign.kind()).isEqualTo(SignSeen.Kind.LOCK);
                            assertThat(sign.on()).isEqualTo(holding().today());
                        });
    }

    @Test
    void a_whole_rack_is_fed_all_of_it_or_none() {
        var stock = stock();
        var first = stock.female("WAIT-R1", "Pastel");
        var second = stock.female("WAIT-R2", "Pastel");
        stock.put(first, "Cellar", "R9", "1");
        stock.put(second, "Cellar", "R9", "2");
        var rack =
                Written.to(
                                holding(),
                                "Looked",
                                tx -> new Places(tx).theTub("Cellar", "R9", "1").rack().value())
                        .result();
        use(Device.PHONE);
        open("/today/racks/" + rack);
        page().getByRole(AriaRole.CHECKBOX, new Page.GetByRoleOptions().setName("WAIT-R2"))
                .uncheck();
        cut(true);
        button("Fed").click();
        waits(1);
        assertThat(button("Fed")).isDisabled();
        strip().locator("summary").click();
        assertThat(strip().locator("li")).containsText("rack R9 fed: 1 of 2 ticked");
        cut(false);
        assertThat(strip().getByRole(AriaRole.STATUS)).containsText("Sent: Cellar, rack R9 fed");
        assertThat(of(first.id())).hasSize(1);
        assertThat(of(second.id())).isEmpty();
    }

    private Pairing pairing() {
        var dam = stock().female("WAIT-F2", "Pastel").id();
        var sire = stock().male("WAIT-M2", "Clown").id();
        return Written.to(
                        holding(),
                        "Planned",
                        tx ->
                                new Pairings(tx)
                                        .plan(
                                                holding().today().getYear(),
                                                dam,
                                                sire,
                                                "",
                                                Questions.ASK)
                                        .theSaved())
                .result();
    }

    private Holding holding() {
        return bean(Holding.class);
    }
}

package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import clutchwright.app.holding.Holding;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.records.animals.Hatched;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.time.LocalDate;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;

/// An animal is added, changed and taken off the record by its form.
class AnimalFormTest extends Browsing {

    @Test
    void an_animal_is_added_with_all_that_is_known_of_it() {
        var stock = stock();
        stock.female("ADD-DAM", "Pastel het Clown");
        stock.male("ADD-S1", "Clown");
        stock.male("ADD-S2", "Piebald");
        open("/collection/new");
        inspect("collection-form-new");
        fill("tag", "ADD-1");
        fill("name", "Newcomer");
        page().getByLabel("Female").check();
        fill("hatched", "2024-08-09");
        fill("shows", "pastel");
        fill("stated", "pastel het clown");
        fill("statedBy", "A. Breeder");
        fill("dam", "add-dam");
        fill("sire", "ADD-S1");
        page().getByText("The sire is in doubt, or there was none").click();
        fill("sire2", "ADD-S2");
        fill("weight", "70");
        fill("weight2", "30");
        fill("room", "New room");
        fill("rack", "R");
        fill("tub", "9");
        press("Add it");

        assertThat(page().locator("h1")).hasText("Newcomer");
        assertThat(page().locator(".flash")).containsText("ADD-1 added.");
        assertThat(page().locator(".over").first()).containsText("New room / R / 9");
        assertThat(page().locator(".facts")).containsText("Sire, one of");
        var added = stock.find("ADD-1").orElseThrow();
        Assertions.assertThat(added.sex()).contains(Sex.FEMALE);
        Assertions.assertThat(added.parentage()).isInstanceOf(Parentage.Biparental.class);
        Assertions.assertThat(added.parentage().sires()).hasSize(2);
        // Half of ADD-DAM's gametes carry Clown; the sire's do in 7 of 10 cases. She does not show
        // it: of the ways that are left, 1 - 1/2 * 7/10, she carries it in 1/2 (Mendel's first
        // law). That is 10/13; one look in two hundred is taken to be misread, and it is
        // 0.4975 / 0.6485 = 76.7 %.
        assertThat(page().locator(".why")).containsText("77 %");
    }

    @Test
    void every_fault_stands_at_its_field_and_nothing_that_was_typed_is_lost() {
        var stock = stock();
        stock.male("BAD-M", "Clown");
        stock.female("BAD-F", "Clown");
        stock.add("BAD-YOUNG", of -> of.withSex(Sex.FEMALE).withHatched(new Hatched.InYear(2025)));
        open("/collection/new");
        fill("hatched", "the ninth of August");
        fill("shows", "Pastelomatic");
        fill("dam", "BAD-NOBODY");
        fill("rack", "R");
        fill("notes", "Typed with care.");
        press("Add it");
        hasFault("tag", "Write the tag");
        hasFault("hatched", "or only the year");
        hasFault("shows", "Pastelomatic");
        hasFault("dam", "There is no animal with the tag BAD-NOBODY");
        hasFault("room", "Write the room as well");
        assertThat(page().locator("#notes")).hasValue("Typed with care.");
        inspect("collection-form-faulty");

        fill("tag", "bad-m");
        fill("hatched", "2999");
        fill("shows", "");
        fill("dam", "BAD-M");
        fill("sire", "BAD-F");
        fill("rack", "");
        press("Add it");
        // The tag of another animal, whatever the case of its letters.
        hasFault("tag", "already");
        hasFault("hatched", "still to come");
        hasFault("dam", "BAD-M is a male");
        hasFault("sire", "BAD-F is a female");

        fill("tag", "BAD-1");
        fill("hatched", "2020");
        fill("dam", "BAD-YOUNG");
        fill("sire", "");
        press("Add it");
        hasFault("dam", "It would have hatched (2020) before its dam BAD-YOUNG did (2025).");
        Assertions.assertThat(stock.find("BAD-1")).isEmpty();
    }

    @Test
    void an_animal_cannot_become_its_own_ancestor() {
        var stock = stock();
        var dam = stock.add("OWN-1", of -> of.withSex(Sex.FEMALE));
        var daughter =
                stock.add(
                        "OWN-2",
                        of ->
                                of.withSex(Sex.FEMALE)
                                        .withParentage(
                                                Parentage.of(
                                                        new Parentage.Dam.Known(dam.id()),
                                                        new Parentage.Sire.Unknown())));
        open("/collection/" + dam.id() + "/edit");
        fill("dam", "OWN-2");
        press("Save");

        assertThat(page().locator(".faults")).containsText("its own ancestor");
        assertThat(page().locator(".faults")).containsText("OWN-2");
        Assertions.assertThat(stock.now(dam).parentage().dams()).isEmpty();
        Assertions.assertThat(stock.now(daughter).parentage().dams()).containsExactly(dam.id());
    }

    @Test
    void a_parent_that_was_not_sexed_is_asked_about_once() {
        var stock = stock();
        stock.add("ASK-1", of -> of);
        open("/collection/new");
        fill("tag", "ASK-2");
        fill("dam", "ASK-1");
        press("Add it");
        hasFault("dam", "The sex of ASK-1 is not on record.");
        page().getByLabel("Yes: write it down all the same").check();
        press("Add it");

        assertThat(page().locator("h1")).hasText("ASK-2");
    }

    @Test
    void two_people_who_edit_one_animal_lose_nothing() {
        var stock = stock();
        var animal = stock.add("TWO-1", of -> of.withName("First").withNotes("As it was."));
        open("/collection/" + animal.id() + "/edit");
        var other = page().context().newPage();
        other.navigate(address("/collection/" + animal.id() + "/edit"));
        other.locator("#name").fill("Theirs");
        other.getByRole(AriaRole.BUTTON, exactly("Save")).click();
        assertThat(other.locator("h1")).hasText("Theirs");

        fill("name", "Mine");
        fill("notes", "A long note of mine.");
        press("Save");
        assertThat(page().locator(".clash")).containsText("Somebody else saved this animal");
        assertThat(page().locator(".clash")).containsText("Theirs");
        assertThat(page().locator("#notes")).hasValue("A long note of mine.");
        Assertions.assertThat(stock.now(animal).name()).isEqualTo("Theirs");
        inspect("collection-conflict");

        press("Save");
        assertThat(page().locator("h1")).hasText("Mine");
        assertThat(page().locator(".notes")).hasText("A long note of mine.");
    }

    @Test
    void an_animal_goes_off_the_record_only_while_nothing_refers_to_it() {
        var stock = stock();
        var dam = stock.female("GO-1", "Clown");
        var sire = stock.male("GO-2", "Clown");
        var young = stock.young("GO-3", dam, sire, LocalDate.of(2024, 7, 1));
        open("/collection/" + dam.id() + "/edit");
        press("Take it off the record");
        assertThat(page().locator("#remove-fault")).containsText("Still needed by its young");

        open("/collection/" + young.id() + "/edit");
        press("Take it off the record");
        assertThat(page().locator(".flash")).containsText("GO-3 is off the record.");
        Assertions.assertThat(stock.find("GO-3")).isEmpty();

        press("Undo");
        assertThat(page().locator(".flash")).isVisible();
        Assertions.assertThat(stock.find("GO-3")).isPresent();
    }

    @Test
    void tags_are_completed_while_they_are_typed() {
        var stock = stock();
        stock.female("TAGS-1", "Clown");
        stock.male("TAGS-2", "Clown");
        open("/collection/new");
        page().locator("#dam").pressSequentially("tags");

        assertThat(page().locator("#dam-tags option")).hasCount(1);
        assertThat(page().locator("#dam-tags option")).hasAttribute("value", "TAGS-1");
    }

    @Test
    void places_are_added_renamed_and_only_taken_away_while_empty() {
        var stock = stock();
        var animal = stock.add("PLC-1", of -> of);
        stock.put(animal, "Places room", "Big rack", "1");
        open("/collection/places");
        page().getByRole(AriaRole.LINK, exactly("Places room")).click();
        page().getByLabel("Add tubs to Big rack").fill("1-3");
        press("Add", 0);
        assertThat(page().locator(".fault").first()).containsText("There is a 1 already.");
        page().getByLabel("Add tubs to Big rack").fill("2-4");
        press("Add", 0);
        assertThat(page().locator(".tubs li")).hasCount(4);
        assertThat(page().locator(".rack")).containsText("1 of 4 tubs in use");
        inspect("collection-places");

        page().locator(".tubs summary").first().click();
        press("Remove the tub 1");
        assertThat(page().locator(".fault").first()).containsText("Still needed by 1 animal");
        page().locator(".tubs input[aria-label='Name of the tub 1']").fill("One");
        press("Rename", 0);
        assertThat(page().locator(".tubs")).containsText("One");
    }

    private void fill(String field, String text) {
        page().locator("#" + field).fill(text);
    }

    private void hasFault(String field, String words) {
        assertThat(page().locator("#" + field + "-fault")).containsText(words);
    }

    private Stock stock() {
        return new Stock(bean(Holding.class));
    }

    private static Page.GetByRoleOptions exactly(String name) {
        return new Page.GetByRoleOptions().setName(name).setExact(true);
    }

    private void press(String button) {
        page().getByRole(AriaRole.BUTTON, exactly(button)).click();
    }

    private void press(String button, int which) {
        page().getByRole(AriaRole.BUTTON, exactly(button)).nth(which).click();
    }
}

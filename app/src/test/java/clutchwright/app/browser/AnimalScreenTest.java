package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import clutchwright.app.holding.Holding;
import clutchwright.engine.genetics.Sex;
import clutchwright.records.animals.Line;
import clutchwright.records.animals.Origin;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/// The page of one animal, as a keeper uses it.
class AnimalScreenTest extends Browsing {

    @Test
    void everything_of_one_animal_is_on_its_page_with_its_reasons() {
        var stock = stock();
        var granddam = stock.female("ANI-0", "Spider het Clown");
        var grandsire = stock.male("ANI-1", "Pastel Clown");
        var dam =
                stock.add(
                        "ANI-2",
                        of ->
                                of.withSex(Sex.FEMALE)
                                        .withName("Ada")
                                        .withHatched(
                                                new clutchwright.records.animals.Hatched.OnDay(
                                                        LocalDate.of(2021, 7, 4)))
                                        .withParentage(
                                                clutchwright.engine.pedigree.Parentage.of(
                                                        new clutchwright.engine.pedigree.Parentage
                                                                .Dam.Known(granddam.id()),
                                                        new clutchwright.engine.pedigree.Parentage
                                                                .Sire.Known(grandsire.id())))
                                        .withOrigin(
                                                new Origin(
                                                        Origin.How.BOUGHT,
                                                        "a show",
                                                        Optional.of(LocalDate.of(2022, 3, 5))))
                                        .withLine(new Line("North line", "A. Breeder"))
                                        .withNotes("Shy. Eats in the evening."));
        stock.seen(dam.id(), "Pastel Spider", LocalDate.of(2021, 8, 1));
        stock.said(dam.id(), "66% het Clown");
        stock.put(dam, "South room", "Rack 1", "3");
        var sire = stock.male("ANI-3", "het Clown het Piebald");
        stock.clutch(dam, sire, LocalDate.of(2025, 4, 20), 6, 1);
        stock.young("ANI-4", dam, sire, LocalDate.of(2024, 6, 20));
        open("/collection/" + dam.id());

        assertThat(page().locator("h1")).hasText("Ada");
        assertThat(page().locator(".head .genes").first()).containsText("Pastel Spider");
        // Clown visual x het: every young carries Clown, by Mendel's first law.
        assertThat(page().locator(".why")).containsText("Clown");
        assertThat(page().locator(".why")).containsText("Mendel");
        assertThat(page().locator(".due").first()).containsText("Said to be 66% het Clown");
        // Spider's wobble: J. A. Rose and W. Williams, common practice to caution.
        assertThat(page().locator(".care").first()).containsText("veterinarian");
        assertThat(page().getByRole(AriaRole.LINK, exactly("Pair…")))
                .hasAttribute("href", "/season/predict?dam=" + dam.id());

        weigh("1420");
        weigh("1515");
        page().locator("#prey").fill("Rat, weaner");
        tap(page().getByRole(AriaRole.BUTTON, exactly("Taken")));
        tap(page().getByRole(AriaRole.BUTTON, exactly("Refused")));
        tap(page().getByRole(AriaRole.BUTTON, exactly("In pieces")));
        page().locator("#note").fill("Some wheezing.");
        tap(page().getByRole(AriaRole.BUTTON, exactly("Keep the note")));
        assertThat(page().locator(".course")).isVisible();
        assertThat(page().locator(".facts")).containsText("1,515 g, today");
        assertThat(page().locator("section:has(#meals)")).containsText("Rat, weaner, refused");

        page().locator("#photo").setInputFiles(new FilePayload("a.png", "image/png", picture()));
        page().getByLabel("Caption of the new photo").fill("In spring");
        press("Add it");
        assertThat(page().locator(".album img")).hasCount(1);
        page().locator("#ink").selectOption("Clown");
        assertThat(page().locator("#pedigree .pedigree-ink").first()).isVisible();
        assertThat(page().locator(".kin")).containsText("Not inbred, as far as is on record.");
        assertThat(page().locator(".kin")).containsText("Mean kinship");
        page().getByText("From which founders its genes are").click();
        // Half of each parent.
        assertThat(page().locator(".kin tr:has-text('ANI-0')")).containsText("1/2, that is 50 %");
        assertThat(page().locator(".kin tr:has-text('ANI-1')")).containsText("1/2, that is 50 %");
        inspect("collection-animal");
    }

    @Test
    void a_file_that_is_no_photo_is_refused_beside_its_field() {
        var animal = stock().add("PHO-1", of -> of);
        open("/collection/" + animal.id());
        page().locator("#photo")
                .setInputFiles(
                        new FilePayload(
                                "a.jpg",
                                "image/jpeg",
                                "not a photo at all"
                                        .getBytes(java.nio.charset.StandardCharsets.UTF_8)));
        press("Add it");

        assertThat(page().locator("#photo-fault")).containsText("not a photo");
        assertThat(page().locator(".album img")).hasCount(0);
    }

    @Test
    void a_day_still_to_come_is_refused_and_what_was_typed_is_kept() {
        var animal = stock().add("FUT-1", of -> of);
        open("/collection/" + animal.id());
        page().locator("#weight").fill("900");
        page().locator("#weighedOn").fill(bean(Holding.class).today().plusYears(1).toString());
        tap(page().getByRole(AriaRole.BUTTON, exactly("Weigh")));

        assertThat(page().locator("#weighedOn-fault")).containsText("still to come");
        assertThat(page().locator("#weight")).hasValue("900");
        assertThat(page().getByText("Not weighed yet.")).isVisible();
        inspect("collection-animal-faulty");
    }

    @Test
    void what_was_seen_is_written_down_corrected_and_removed() {
        var animal = stock().add("SEE-1", of -> of);
        open("/collection/" + animal.id());
        page().getByText("Write down what was seen or said").click();
        page().locator("#line").fill("Pastelomatic");
        press("Write it down");
        assertThat(page().locator("#line-fault")).containsText("Pastelomatic");

        page().locator("#line").fill("pastel");
        press("Save");
        assertThat(page().locator(".head .genes").first()).hasText("Pastel");
        page().getByRole(AriaRole.LINK, exactly("Correct")).click();
        page().locator("#line").fill("Super Pastel");
        assertThat(page().locator("#line-reading")).containsText("Super Pastel");
        inspect("collection-statement");
        press("Save");
        assertThat(page().locator(".head .genes").first()).hasText("Super Pastel");
        page().getByRole(AriaRole.LINK, exactly("Correct")).click();
        press("Remove it from the record");
        assertThat(page().locator(".head .genes").first()).hasText("Normal");
    }

    private void weigh(String grams) {
        page().locator("#weight").fill(grams);
        tap(page().getByRole(AriaRole.BUTTON, exactly("Weigh")));
        assertThat(page().locator(".flash")).containsText("weighed.");
    }

    private static byte[] picture() {
        var image = new BufferedImage(900, 600, BufferedImage.TYPE_INT_RGB);
        var brush = image.createGraphics();
        brush.setPaint(
                new GradientPaint(0, 0, new Color(92, 70, 38), 900, 600, new Color(214, 178, 96)));
        brush.fillRect(0, 0, 900, 600);
        brush.setColor(new Color(40, 28, 16));
        for (int i = 0; i < 9; i++) {
            brush.fillOval(40 + i * 95, 120 + i % 3 * 110, 70, 120);
        }
        brush.dispose();
        var file = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", file);
        } catch (IOException e) {
            throw new IllegalStateException("in memory nothing can fail", e);
        }
        return file.toByteArray();
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
}

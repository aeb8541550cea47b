package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.Preferences;
import clutchwright.engine.genetics.Sex;
import clutchwright.records.animals.Animal;
import clutchwright.records.clutches.Boxes;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.Clutches;
import clutchwright.records.clutches.Egg;
import clutchwright.records.clutches.Eggs;
import clutchwright.records.places.Places;
import clutchwright.records.places.TubId;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.awt.image.BufferedImage;
import java.net.URI;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/// From the rack to the printer, and from the label on the tub back to the page.
class LabelsScreenTest extends Browsing {

    private static final double DOTS_PER_MILLIMETRE = 300 / 25.4;

    private Stock stock;

    @BeforeEach
    void a_phone_could_open_the_address() {
        stock = new Stock(bean(Holding.class));
        open("/settings/labels");
        page().getByLabel("Another one").check();
        page().getByLabel("The other one").fill("http://192.168.178.20:8420");
        page().getByLabel(Pattern.compile("^A4, 24 labels")).check();
        press("Save");
        assertThat(page().locator(".flash")).containsText("Saved. A4, 24 labels of 70 × 37 mm");
    }

    @Test
    void a_rack_is_printed_and_a_label_scanned_and_its_animal_weighed() throws Exception {
        var zofie = animal("LB-1", "Žofie 🐍", "Labels room", "L1", "10");
        var second = animal("LB-2", "", "Labels room", "L1", "2");

        open("/collection");
        link("Places").click();
        page().locator("#main").getByRole(AriaRole.LINK, named("Labels room")).click();
        page().locator("#main").getByRole(AriaRole.LINK, named("animals of rack L1")).click();

        assertThat(page().getByRole(AriaRole.STATUS)).hasText("2 labels on 1 sheet.");
        assertThat(page().locator(".care")).containsText("has no 🐍");
        assertThat(page().locator("#main")).containsText("http://192.168.178.20:8420");
        inspect("labels");

        // The tub of the smaller number comes first.
        var codes = scanned(downloaded());
        assertThat(codes)
                .containsExactly(
                        "http://192.168.178.20:8420/a/" + second.id(),
                        "http://192.168.178.20:8420/a/" + zofie.id());

        use(Device.PHONE);
        open(path(codes, zofie));
        assertThat(page().locator("h1")).hasText("Žofie 🐍");
        // Without a scroll: the field is on the phone's first screen.
        assertThat(page().getByLabel("Weight", exactly())).isInViewport();
        page().getByLabel("Weight", exactly()).fill("1712");
        press("Weigh");
        assertThat(page().locator(".flash")).containsText("LB-1 weighed.");
        assertThat(page().locator(".facts")).containsText("1,712 g, today");
    }

    @Test
    void a_label_on_a_tub_opens_whoever_lives_there() {
        var one = animal("LB-11", "", "Tub room", "L2", "1");
        animal("LB-12", "", "Tub room", "L2", "2");
        animal("LB-13", "Sister", "Tub room", "L2", "2");
        animal("LB-14", "", "Tub room", "L2", "3");
        var empty = tub("Tub room", "L2", "4");

        open("/t/" + tub("Tub room", "L2", "1").value());
        assertThat(page()).hasURL(address("/collection/" + one.id() + "#now"));

        use(Device.PHONE);
        open("/t/" + tub("Tub room", "L2", "2").value());
        assertThat(page().locator("h1")).hasText("Tub 2");
        inspect("scanned");
        page().locator("#main").getByRole(AriaRole.LINK, named("LB-13 Sister")).click();
        assertThat(page().locator("h1")).hasText("Sister");

        open("/t/" + empty.value());
        assertThat(page().locator("#main")).containsText("Nobody lives in this tub.");
        open("/t/999999999");
        assertThat(page().locator("#main")).containsText("not on record any more");
    }

    @Test
    void the_tubs_of_a_rack_have_labels_of_their_own() throws Exception {
        animal("LB-21", "", "Plain room", "L3", "1");
        var first = tub("Plain room", "L3", "1");
        var empty = tub("Plain room", "L3", "2");
        open("/collection/places?room=" + room("Plain room"));
        page().locator("#main").getByRole(AriaRole.LINK, named("tubs of rack L3")).click();
        assertThat(page().getByRole(AriaRole.STATUS)).hasText("2 labels on 1 sheet.");
        assertThat(scanned(downloaded()))
                .containsExactly(
                        "http://192.168.178.20:8420/t/" + first.value(),
                        "http://192.168.178.20:8420/t/" + empty.value());
    }

    @Test
    void a_box_opens_where_its_eggs_are_candled_and_later_named() throws Exception {
        var today = bean(Holding.class).today();
        var young = boxed("LB-31", "BX1", today.minusDays(12));
        var old = boxed("LB-32", "BX2", today.minusDays(56));

        open("/eggs/" + young.id().value());
        page().locator("#main").getByRole(AriaRole.LINK, named("Box labels")).click();
        assertThat(page().getByRole(AriaRole.STATUS)).hasText("1 label on 1 sheet.");
        var pdf = downloaded();
        // Laid twelve days ago, it pips 57 days after laying at 31.7 °C.
        var formats = new Formats(Preferences.FIRST);
        assertThat(text(pdf))
                .contains(young.number().toString(), "Box BX1", "4 eggs of LB-31")
                .contains("laid " + formats.date(young.laid()))
                .contains("pips about " + formats.dayOfYear(young.laid().plusDays(57)));
        var codes = scanned(pdf);
        assertThat(codes).hasSize(1);
        assertThat(codes.getFirst()).startsWith("http://192.168.178.20:8420/b/");

        use(Device.PHONE);
        open(URI.create(codes.getFirst()).getPath());
        assertThat(page()).hasURL(address("/eggs/" + young.id().value() + "/candle"));
        open("/b/" + box(old));
        assertThat(page()).hasURL(address("/eggs/" + old.id().value() + "/hatch"));
    }

    @Test
    void what_the_list_is_filtered_to_is_printed() throws Exception {
        animal("LBFILTER-1", "", "Filter room", "L4", "1");
        animal("LBFILTER-2", "", "Filter room", "L4", "2");
        animal("LBOTHER-3", "", "Filter room", "L4", "3");
        open("/collection?find=lbfilter");
        page().locator("#main").getByRole(AriaRole.LINK, named("Labels for these")).click();
        assertThat(page().getByRole(AriaRole.STATUS)).hasText("2 labels on 1 sheet.");
        // A sheet of which only the last label is left.
        page().getByLabel("First free label").fill("24");
        press("Look again");
        assertThat(page().getByRole(AriaRole.STATUS)).hasText("2 labels on 2 sheets.");
        open("/labels?of=filter%3Ffind%3Dlbfilter&first=25");
        assertThat(page().locator("#first-fault"))
                .hasText("Write a whole number from 1 to 24, not “25”.");
    }

    @Test
    void one_animal_is_printed_from_its_page_without_a_script() {
        var animal = animal("LB-41", "Solo", "Solo room", "L5", "1");
        useWithoutScript();
        open("/collection/" + animal.id());
        page().locator("#main").getByRole(AriaRole.LINK, named("Label").setExact(true)).click();
        assertThat(page().getByRole(AriaRole.STATUS)).hasText("1 label on 1 sheet.");
        assertThat(page().getByLabel("Labels for")).hasValue("animal-" + animal.id());
    }

    @Test
    void a_sheet_that_does_not_fit_its_page_is_refused_and_keeps_what_was_typed() {
        open("/settings/labels");
        page().getByLabel("My own sheet, by the numbers below").check();
        page().getByLabel("Columns", exactly()).fill("4");
        press("Save");
        assertThat(page().locator("#columns-fault"))
                .containsText("70 mm wider than the page of 210 mm");
        assertThat(page().getByLabel("Columns", exactly())).hasValue("4");
        inspect("label-settings-refused");

        page().getByLabel("Columns", exactly()).fill("2");
        press("Save");
        assertThat(page().locator(".flash"))
                .containsText("Your own sheet, 16 labels of 70 × 37 mm (2 × 8)");
        inspect("label-settings");
    }

    @Test
    void an_address_that_means_the_phone_itself_is_warned_of() {
        open("/settings/labels");
        page().getByLabel("The other one").fill("http://localhost:8420");
        press("Save");
        assertThat(page().locator(".care")).containsText("a phone would look for Clutchwright");
        assertThat(page().locator("#main")).containsText("serve --listen 0.0.0.0");
        animal("LB-51", "", "Warned room", "L6", "1");
        open("/labels?of=room-" + room("Warned room"));
        assertThat(page().locator(".care")).containsText("A phone cannot open that");
    }

    private byte[] downloaded() throws Exception {
        var download = page().waitForDownload(() -> press("Download the PDF"));
        assertThat(download.suggestedFilename()).isEqualTo("labels.pdf");
        return Files.readAllBytes(download.path());
    }

    private static String text(byte[] pdf) throws Exception {
        try (var document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    /// What a phone reads that is held over each label of the first sheet.
    private static List<String> scanned(byte[] pdf) throws Exception {
        try (var document = Loader.loadPDF(pdf)) {
            var page = new PDFRenderer(document).renderImageWithDPI(0, 300, ImageType.GRAY);
            var found = new ArrayList<String>();
            for (int label = 0; label < 24; label++) {
                int left = (int) (label % 3 * 70 * DOTS_PER_MILLIMETRE);
                int top = (int) ((0.5 + label / 3 * 37) * DOTS_PER_MILLIMETRE);
                scanned(
                                page.getSubimage(
                                        left,
                                        top,
                                        (int) (69.5 * DOTS_PER_MILLIMETRE),
                                        (int) (36.5 * DOTS_PER_MILLIMETRE)))
                        .ifPresent(found::add);
            }
            return found;
        }
    }

    private static Optional<String> scanned(BufferedImage image) {
        int width = image.getWidth();
        int height = image.getHeight();
        var source =
                new RGBLuminanceSource(
                        width, height, image.getRGB(0, 0, width, height, null, 0, width));
        try {
            var codes =
                    new QRCodeMultiReader()
                            .decodeMultiple(new BinaryBitmap(new HybridBinarizer(source)));
            return Optional.of(codes[0].getText());
        } catch (NotFoundException e) {
            return Optional.empty();
        }
    }

    private static String path(List<String> codes, Animal animal) {
        return codes.stream()
                .map(code -> URI.create(code).getPath())
                .filter(path -> path.endsWith("/" + animal.id()))
                .findFirst()
                .orElseThrow();
    }

    private Animal animal(String tag, String name, String room, String rack, String tub) {
        var animal = stock.add(tag, of -> of.withSex(Sex.FEMALE).withName(name));
        stock.said(animal.id(), "Pastel het Clown");
        stock.put(animal, room, rack, tub);
        return animal;
    }

    private Clutch boxed(String dam, String box, LocalDate laid) {
        var clutch =
                stock.clutch(
                        stock.female(dam, "Normal"), stock.male(dam + "m", "Normal"), laid, 4, 0);
        Written.to(
                bean(Holding.class),
                "boxed",
                tx -> {
                    var into = new Boxes(tx).labelled(box).id();
                    return new Eggs(tx)
                            .putInto(into, clutch.eggs().stream().map(Egg::id).toList())
                            .theSaved();
                });
        return clutch;
    }

    private long box(Clutch clutch) {
        return bean(Holding.class)
                .database()
                .read(
                        tx ->
                                new Clutches(tx)
                                        .theClutch(clutch.id())
                                        .eggs()
                                        .getFirst()
                                        .box()
                                        .orElseThrow()
                                        .value());
    }

    private TubId tub(String room, String rack, String tub) {
        return Written.to(
                        bean(Holding.class),
                        "Looked for a tub",
                        tx -> new Places(tx).theTub(room, rack, tub).id())
                .result();
    }

    private long room(String name) {
        return bean(Holding.class)
                .database()
                .read(
                        tx ->
                                new Places(tx)
                                        .rooms().stream()
                                                .filter(room -> room.name().equals(name))
                                                .findFirst()
                                                .orElseThrow()
                                                .id()
                                                .value());
    }

    private void press(String button) {
        page().getByRole(
                        AriaRole.BUTTON, new Page.GetByRoleOptions().setName(button).setExact(true))
                .click();
    }

    private Locator link(String name) {
        return page().locator("#main").getByRole(AriaRole.LINK, named(name)).first();
    }

    private static Locator.GetByRoleOptions named(String name) {
        return new Locator.GetByRoleOptions().setName(name);
    }

    private static Page.GetByLabelOptions exactly() {
        return new Page.GetByLabelOptions().setExact(true);
    }
}

package clutchwright.app.eggs;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.ProblemWords;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Problem;
import clutchwright.records.clutches.Egg;
import clutchwright.records.clutches.Eggs;
import clutchwright.records.photos.EggPhoto;
import clutchwright.records.photos.EggPhotos;
import clutchwright.records.photos.PhotoId;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.springframework.core.io.FileSystemResource;
import org.springframework.core.io.Resource;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;

/// One egg: its looks, its weight, how it lies, photos of it.
@Controller
public class EggPage {

    private static final String EGG = "/eggs/{id:[0-9]{1,18}}/egg/{number:[0-9]{1,4}}";
    private static final String PHOTOS = EGG + "/photos";
    private static final String PHOTO = PHOTOS + "/{photo:[0-9]{1,18}}";
    private static final String NONE = "This clutch has no such egg.";

    /// A photo is read into memory.
    private static final long MOST_BYTES = 40L << 20;

    private final Holding holding;
    private final Preferring preferring;

    EggPage(Holding holding, Preferring preferring) {
        this.holding = holding;
        this.preferring = preferring;
    }

    @GetMapping(EGG)
    public Reply show(@PathVariable long id, @PathVariable int number) {
        return with(id, number, found -> Reply.show(found.view(holding, form(found))));
    }

    @PostMapping(EGG + "/weighed")
    public Reply weigh(@PathVariable long id, @PathVariable int number, Form form) {
        var fields = new Fields(form);
        var weight = fields.number("weight", 0.01, 1_000);
        var on = fields.date("on");
        return with(
                id,
                number,
                found ->
                        switch (fields.into(() -> new Weighed(weight.value(), on.value()))) {
                            case Entry.Faulty<Weighed>(var faulty) -> found.faulty(holding, faulty);
                            case Entry.Understood<Weighed>(var read) -> weigh(found, read, form);
                        });
    }

    private Reply weigh(Found found, Weighed read, Form form) {
        return write(
                found,
                "weighed " + found.inWords(),
                form,
                "Egg %d is weighed.".formatted(found.egg().number()),
                eggs -> eggs.weigh(found.egg().id(), read.on(), formats().gramsOf(read.typed())));
    }

    @PostMapping(EGG + "/lies")
    public Reply lies(@PathVariable long id, @PathVariable int number, Form form) {
        var fields = new Fields(form);
        var version = fields.whole("version", 1, Integer.MAX_VALUE);
        return with(
                id,
                number,
                found ->
                        switch (fields.into(version::value)) {
                            case Entry.Faulty<Integer>(var faulty) -> found.faulty(holding, faulty);
                            case Entry.Understood<Integer>(var seen) ->
                                    write(
                                            found,
                                            "how %s lies".formatted(found.inWords()),
                                            form,
                                            "That is on record.",
                                            eggs ->
                                                    eggs.lies(
                                                            found.egg().id(),
                                                            seen,
                                                            form.text("lies")));
                        });
    }

    private Reply write(
            Found found, String what, Form form, String said, Function<Eggs, Edit<Egg>> deed) {
        var written = Written.to(holding, what, tx -> deed.apply(new Eggs(tx)));
        return switch (written.result()) {
            case Edit.Saved<Egg> _ -> written.going(found.path(), said);
            case Edit.Stale<Egg> _ ->
                    Reply.conflict("Somebody else has written of this egg in the meantime.");
            case Edit.Refused<Egg>(var problems) ->
                    found.faulty(holding, withFaults(form, problems));
        };
    }

    @PostMapping(PHOTOS)
    public Reply add(
            @PathVariable long id,
            @PathVariable int number,
            @RequestParam("photo") MultipartFile file,
            Form form)
            throws IOException {
        if (file.isEmpty() || file.getSize() > MOST_BYTES) {
            var why =
                    file.isEmpty()
                            ? "Choose a photo to add."
                            : "The photo is larger than 40 MB: choose a smaller one.";
            return with(id, number, found -> found.faulty(holding, form.withFault("photo", why)));
        }
        var bytes = file.getBytes();
        return with(id, number, found -> add(found, bytes, form));
    }

    private Reply add(Found found, byte[] bytes, Form form) {
        var written =
                Written.to(
                        holding,
                        "photo of " + found.inWords(),
                        tx -> new EggPhotos(tx).add(found.egg().id(), bytes, form.text("caption")));
        return switch (written.result()) {
            case Edit.Saved<EggPhoto> _ -> written.going(found.path(), "Photo added.");
            case Edit.Stale<EggPhoto> _ -> Reply.conflict("The photo was changed.");
            case Edit.Refused<EggPhoto>(var problems) ->
                    found.faulty(holding, withFaults(form, problems));
        };
    }

    @PostMapping(PHOTO + "/remove")
    public Reply remove(@PathVariable long id, @PathVariable int number, @PathVariable long photo) {
        return with(
                id,
                number,
                found -> {
                    var written =
                            Written.to(
                                    holding,
                                    "took a photo off " + found.inWords(),
                                    tx -> {
                                        var photos = new EggPhotos(tx);
                                        return photos.find(new PhotoId(photo))
                                                .filter(it -> it.egg().equals(found.egg().id()))
                                                .flatMap(
                                                        it ->
                                                                photos.remove(it.id(), it.version())
                                                                        .saved())
                                                .isPresent();
                                    });
                    return written.going(
                            found.path(),
                            written.result()
                                    ? "Photo removed."
                                    : "That photo was not on record any more.");
                });
    }

    @GetMapping(PHOTO)
    public ResponseEntity<Resource> full(
            @PathVariable long id, @PathVariable int number, @PathVariable long photo) {
        return picture(id, number, photo, EggPhotos::file);
    }

    @GetMapping(PHOTO + "/small")
    public ResponseEntity<Resource> small(
            @PathVariable long id, @PathVariable int number, @PathVariable long photo) {
        return picture(id, number, photo, EggPhotos::thumbnail);
    }

    private ResponseEntity<Resource> picture(
            long id, int number, long photo, BiFunction<EggPhotos, EggPhoto, Path> which) {
        Optional<Path> file =
                find(id, number)
                        .flatMap(
                                found ->
                                        holding.database()
                                                .read(
                                                        tx -> {
                                                            var photos = new EggPhotos(tx);
                                                            return photos.find(new PhotoId(photo))
                                                                    .filter(
                                                                            it ->
                                                                                    it.egg()
                                                                                            .equals(
                                                                                                    found.egg()
                                                                                                            .id()))
                                                                    .map(
                                                                            it ->
                                                                                    which.apply(
                                                                                            photos,
                                                                                            it));
                                                        }));
        return file.filter(Files::isReadable)
                .map(
                        path ->
                                ResponseEntity.ok()
                                        .contentType(MediaType.IMAGE_JPEG)
                                        .cacheControl(
                                                CacheControl.maxAge(Duration.ofDays(365))
                                                        .cachePrivate())
                                        .<Resource>body(new FileSystemResource(path)))
                .orElseGet(() -> ResponseEntity.notFound().build());
    }

    private Form form(Found found) {
        var values = new LinkedHashMap<String, List<String>>();
        values.put("on", List.of(holding.today().toString()));
        values.put("lies", List.of(found.egg().lies()));
        return new Form(values, new LinkedHashMap<>());
    }

    private Reply with(long id, int number, Function<Found, Reply> deed) {
        return find(id, number).map(deed).orElseGet(() -> Reply.missing(NONE));
    }

    private Optional<Found> find(long id, int number) {
        return ClutchReading.find(holding, id)
                .flatMap(
                        clutch ->
                                clutch.lines(holding).stream()
                                        .filter(line -> line.egg().number() == number)
                                        .findFirst()
                                        .map(line -> new Found(clutch, line)));
    }

    private Form withFaults(Form form, List<Problem> problems) {
        var words = new ProblemWords(animal -> Tags.of(holding, animal), formats());
        var faulty = form;
        for (var problem : problems) {
            faulty = faulty.withFault(place(ProblemWords.fieldOf(problem)), words.of(problem));
        }
        return faulty;
    }

    private static String place(Field field) {
        return field == Field.PHOTO ? "photo" : "on";
    }

    private Formats formats() {
        return new Formats(preferring.preferences());
    }

    /// @param typed in the keeper's unit
    private record Weighed(double typed, LocalDate on) {}

    private record Found(ClutchReading clutch, EggLine line) {

        Egg egg() {
            return line.egg();
        }

        String inWords() {
            return "egg %d of %s".formatted(egg().number(), clutch.clutch().number());
        }

        String path() {
            return "/eggs/%d/egg/%d".formatted(clutch.clutch().id().value(), egg().number());
        }

        Reply faulty(Holding holding, Form form) {
            return Reply.faulty(view(holding, form));
        }

        EggView view(Holding holding, Form form) {
            return new EggView(
                    clutch.clutch(),
                    Couple.of(holding, clutch.clutch().parentage()),
                    line,
                    clutch.incubation(holding),
                    holding.database().read(tx -> new EggPhotos(tx).of(egg().id())),
                    form);
        }
    }
}

package clutchwright.app.collection;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.animals.Animals;
import clutchwright.records.checks.Edit;
import clutchwright.records.photos.Photo;
import clutchwright.records.photos.PhotoId;
import clutchwright.records.photos.Photos;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.function.BiFunction;
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

/// Photos of an animal: shown, added, captioned, taken off.
@Controller
public class PhotoPage {

    private static final String PHOTOS = "/collection/{id:[0-9]{1,18}}/photos";
    private static final String PHOTO = PHOTOS + "/{photo:[0-9]{1,18}}";

    /// A photo is read into memory.
    private static final long MOST_BYTES = 40L << 20;

    private final Holding holding;
    private final Problems problems;
    private final AnimalSheet sheet;

    PhotoPage(Holding holding, Preferring preferring) {
        this.holding = holding;
        this.problems = new Problems(holding, preferring);
        this.sheet = new AnimalSheet(holding, preferring);
    }

    @GetMapping(PHOTO)
    public ResponseEntity<Resource> full(@PathVariable long id, @PathVariable long photo) {
        return picture(id, photo, Photos::file);
    }

    @GetMapping(PHOTO + "/small")
    public ResponseEntity<Resource> small(@PathVariable long id, @PathVariable long photo) {
        return picture(id, photo, Photos::thumbnail);
    }

    @PostMapping(PHOTOS)
    public Reply add(@PathVariable long id, @RequestParam("photo") MultipartFile file, Form form)
            throws IOException {
        var animal = new AnimalId(id);
        if (file.isEmpty()) {
            return again(animal, form.withFault("photo", "Choose a photo to add."));
        }
        if (file.getSize() > MOST_BYTES) {
            return again(
                    animal,
                    form.withFault(
                            "photo", "The photo is larger than 40 MB: choose a smaller one."));
        }
        var bytes = file.getBytes();
        var written =
                Written.to(
                        holding,
                        "Added a photo of " + tag(animal),
                        tx -> new Photos(tx).add(animal, bytes, form.text("caption")));
        return switch (written.result()) {
            case Edit.Saved<Photo> _ -> written.going("/collection/" + id, "Photo added.");
            case Edit.Stale<Photo> _ -> Reply.conflict("The photo was changed.");
            case Edit.Refused<Photo>(var refused) ->
                    again(animal, problems.beside(form, refused, _ -> "photo"));
        };
    }

    @PostMapping(PHOTO + "/caption")
    public Reply caption(@PathVariable long id, @PathVariable long photo, Form form) {
        return change(
                id,
                photo,
                "Captioned a photo of ",
                "Caption saved.",
                (photos, found) ->
                        photos.update(
                                new Photo(
                                        found.id(),
                                        found.version(),
                                        found.animal(),
                                        found.digest(),
                                        found.added(),
                                        found.width(),
                                        found.height(),
                                        form.text("caption"))));
    }

    @PostMapping(PHOTO + "/remove")
    public Reply remove(@PathVariable long id, @PathVariable long photo) {
        return change(
                id,
                photo,
                "Took a photo off ",
                "Photo removed.",
                (photos, found) -> photos.remove(found.id(), found.version()));
    }

    private Reply change(
            long id,
            long photo,
            String what,
            String said,
            BiFunction<Photos, Photo, Edit<Photo>> change) {
        var written =
                Written.to(
                        holding,
                        what + tag(new AnimalId(id)),
                        tx -> {
                            var photos = new Photos(tx);
                            return photos.find(new PhotoId(photo))
                                    .filter(found -> found.animal().value() == id)
                                    .flatMap(found -> change.apply(photos, found).saved())
                                    .isPresent();
                        });
        return written.going(
                "/collection/" + id,
                written.result() ? said : "That photo was not on record any more.");
    }

    private ResponseEntity<Resource> picture(
            long id, long photo, BiFunction<Photos, Photo, Path> which) {
        Optional<Path> file =
                holding.database()
                        .read(
                                tx -> {
                                    var photos = new Photos(tx);
                                    return photos.find(new PhotoId(photo))
                                            .filter(found -> found.animal().value() == id)
                                            .map(found -> which.apply(photos, found));
                                });
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

    private Reply again(AnimalId animal, Form faulty) {
        return sheet.view(animal, faulty, "")
                .<Reply>map(Reply::faulty)
                .orElseGet(() -> Reply.missing(AnimalPage.MISSING));
    }

    private String tag(AnimalId animal) {
        return holding.database()
                .read(tx -> new Animals(tx).find(animal))
                .map(found -> found.tag().value())
                .orElse("an animal");
    }
}

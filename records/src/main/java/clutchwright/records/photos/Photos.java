package clutchwright.records.photos;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Problem;
import clutchwright.records.store.Row;
import clutchwright.records.store.Transaction;
import clutchwright.records.store.Values;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// Photos of animals: the files in the folder `photos` beside the records, what they are of in the
/// records.
public final class Photos {

    public static final String FOLDER = "photos";

    private final Transaction tx;
    private final PictureFiles files;

    public Photos(Transaction tx) {
        this.tx = tx;
        this.files = new PictureFiles(tx.folder().resolve(FOLDER));
    }

    /// Keeps a photo, redrawn: nothing of the file but the picture is kept.
    ///
    /// @param file JPEG, PNG, GIF or BMP as it was handed in
    public Edit<Photo> add(AnimalId animal, byte[] file, String caption) {
        if (tx.row("animal", animal.value()).isEmpty()) {
            return Edit.refused(new Problem.Missing(Field.TAG, animal.value()));
        }
        return switch (Picture.read(file)) {
            case Picture.Result.NotOne(var problem) -> Edit.refused(problem);
            case Picture.Result.Good(var picture) -> keep(animal, picture, caption, tx.today());
        };
    }

    /// Keeps a photo that came out of a collection of ours, its file as it is.
    ///
    /// @param file as [Photos#file(Photo)] has it; any other is refused unless it is a picture
    public Edit<Photo> restore(AnimalId animal, byte[] file, LocalDate added, String caption) {
        return switch (Picture.read(file)) {
            case Picture.Result.NotOne(var problem) -> Edit.refused(problem);
            case Picture.Result.Good(var picture) ->
                    keep(animal, picture.withFile(file), caption, added);
        };
    }

    /// Changes the caption, if the photo still is of the version that was edited.
    public Edit<Photo> update(Photo changed) {
        var current = find(changed.id());
        if (current.isEmpty()) {
            return Edit.refused(new Problem.Missing(Field.PHOTO, changed.id().value()));
        }
        return tx.update(
                        "photo",
                        changed.id().value(),
                        changed.version(),
                        Values.of().set("caption", changed.caption().strip()))
                ? new Edit.Saved<>(find(changed.id()).orElseThrow())
                : new Edit.Stale<>(current.get());
    }

    /// Takes a photo off an animal. Its file stays, so that this can be undone.
    ///
    /// @return the photo that was removed
    public Edit<Photo> remove(PhotoId id, long version) {
        var current = find(id);
        if (current.isEmpty()) {
            return Edit.refused(new Problem.Missing(Field.PHOTO, id.value()));
        }
        if (current.get().version() != version) {
            return new Edit.Stale<>(current.get());
        }
        tx.delete("photo", id.value());
        return new Edit.Saved<>(current.get());
    }

    public Optional<Photo> find(PhotoId id) {
        return tx.first(Photos::read, "select * from photo where id = ?", id.value());
    }

    /// The newest first.
    public List<Photo> of(AnimalId animal) {
        return tx.list(
                Photos::read,
                "select * from photo where animal = ? order by added_on desc, id desc",
                animal.value());
    }

    /// The newest photo of every animal that has one.
    public Map<AnimalId, Photo> newest() {
        var found = new HashMap<AnimalId, Photo>();
        tx.list(Photos::read, "select * from photo order by added_on, id")
                .forEach(photo -> found.put(photo.animal(), photo));
        return found;
    }

    /// The picture, JPEG.
    public Path file(Photo photo) {
        return files.full(photo.digest());
    }

    /// The picture small, JPEG, no side longer than 480 pixels.
    public Path thumbnail(Photo photo) {
        return files.small(photo.digest());
    }

    private Edit<Photo> keep(AnimalId animal, Picture picture, String caption, LocalDate added) {
        var digest = PictureFiles.digest(picture);
        var same =
                tx.first(
                        Photos::read,
                        "select * from photo where animal = ? and digest = ?",
                        animal.value(),
                        digest);
        if (same.isPresent()) {
            return new Edit.Saved<>(same.get());
        }
        files.keep(digest, picture);
        long id =
                tx.insert(
                        "photo",
                        Values.of()
                                .set("animal", animal.value())
                                .set("digest", digest)
                                .set("added_on", added)
                                .set("width", picture.width())
                                .set("height", picture.height())
                                .set("caption", caption.strip()));
        return new Edit.Saved<>(find(new PhotoId(id)).orElseThrow());
    }

    private static Photo read(Row row) {
        return new Photo(
                new PhotoId(row.number("id")),
                row.number("version"),
                new AnimalId(row.number("animal")),
                row.text("digest"),
                row.day("added_on"),
                Math.toIntExact(row.number("width")),
                Math.toIntExact(row.number("height")),
                row.text("caption"));
    }
}

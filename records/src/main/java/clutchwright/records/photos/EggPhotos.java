package clutchwright.records.photos;

import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Problem;
import clutchwright.records.clutches.EggId;
import clutchwright.records.store.Row;
import clutchwright.records.store.Transaction;
import clutchwright.records.store.Values;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/// Photos of eggs, kept as those of animals are.
public final class EggPhotos {

    private final Transaction tx;
    private final PictureFiles files;

    public EggPhotos(Transaction tx) {
        this.tx = tx;
        this.files = new PictureFiles(tx.folder().resolve(Photos.FOLDER));
    }

    /// Keeps a photo, redrawn: nothing of the file but the picture is kept.
    ///
    /// @param file JPEG, PNG, GIF or BMP as it was handed in
    public Edit<EggPhoto> add(EggId egg, byte[] file, String caption) {
        return switch (Picture.read(file)) {
            case Picture.Result.NotOne(var problem) -> Edit.refused(problem);
            case Picture.Result.Good(var picture) -> keep(egg, picture, caption, tx.today());
        };
    }

    /// Keeps a photo that came out of a collection of ours, its file as it is.
    ///
    /// @param file as [EggPhotos#file] has it; any other is refused unless it is a picture
    public Edit<EggPhoto> restore(EggId egg, byte[] file, LocalDate added, String caption) {
        return switch (Picture.read(file)) {
            case Picture.Result.NotOne(var problem) -> Edit.refused(problem);
            case Picture.Result.Good(var picture) ->
                    keep(egg, picture.withFile(file), caption, added);
        };
    }

    /// Takes a photo off an egg. Its file stays, so that this can be undone.
    ///
    /// @return the photo that was removed
    public Edit<EggPhoto> remove(PhotoId id, long version) {
        var current = find(id);
        if (current.isEmpty()) {
            return Edit.refused(new Problem.Missing(Field.PHOTO, id.value()));
        }
        if (current.get().version() != version) {
            return new Edit.Stale<>(current.get());
        }
        tx.delete("egg_photo", id.value());
        return new Edit.Saved<>(current.get());
    }

    public Optional<EggPhoto> find(PhotoId id) {
        return tx.first(EggPhotos::read, "select * from egg_photo where id = ?", id.value());
    }

    /// The oldest first, as an egg is followed.
    public List<EggPhoto> of(EggId egg) {
        return tx.list(
                EggPhotos::read,
                "select * from egg_photo where egg = ? order by added_on, id",
                egg.value());
    }

    /// Of all eggs, the oldest first.
    public List<EggPhoto> all() {
        return tx.list(EggPhotos::read, "select * from egg_photo order by added_on, id");
    }

    /// The picture, JPEG.
    public Path file(EggPhoto photo) {
        return files.full(photo.digest());
    }

    /// The picture small, JPEG, no side longer than 480 pixels.
    public Path thumbnail(EggPhoto photo) {
        return files.small(photo.digest());
    }

    private Edit<EggPhoto> keep(EggId egg, Picture picture, String caption, LocalDate added) {
        if (tx.row("egg", egg.value()).isEmpty()) {
            return Edit.refused(new Problem.Missing(Field.EGGS, egg.value()));
        }
        var digest = PictureFiles.digest(picture);
        var same =
                tx.first(
                        EggPhotos::read,
                        "select * from egg_photo where egg = ? and digest = ?",
                        egg.value(),
                        digest);
        if (same.isPresent()) {
            return new Edit.Saved<>(same.get());
        }
        files.keep(digest, picture);
        long id =
                tx.insert(
                        "egg_photo",
                        Values.of()
                                .set("egg", egg.value())
                                .set("digest", digest)
                                .set("added_on", added)
                                .set("width", picture.width())
                                .set("height", picture.height())
                                .set("caption", caption.strip()));
        return new Edit.Saved<>(find(new PhotoId(id)).orElseThrow());
    }

    private static EggPhoto read(Row row) {
        return new EggPhoto(
                new PhotoId(row.number("id")),
                row.number("version"),
                new EggId(row.number("egg")),
                row.text("digest"),
                row.day("added_on"),
                Math.toIntExact(row.number("width")),
                Math.toIntExact(row.number("height")),
                row.text("caption"));
    }
}

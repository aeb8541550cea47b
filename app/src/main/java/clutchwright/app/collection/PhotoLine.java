package clutchwright.app.collection;

import clutchwright.app.wording.Formats;
import clutchwright.records.photos.Photo;

/// A photo of the animal.
public record PhotoLine(
        long id,
        long version,
        String small,
        String full,
        String caption,
        String added,
        String alt) {

    static PhotoLine of(Photo photo, String tag, Formats formats) {
        var path = "/collection/" + photo.animal() + "/photos/" + photo.id().value();
        return new PhotoLine(
                photo.id().value(),
                photo.version(),
                path + "/small",
                path,
                photo.caption(),
                formats.date(photo.added()),
                photo.caption().isEmpty() ? "Photo of " + tag : photo.caption());
    }
}

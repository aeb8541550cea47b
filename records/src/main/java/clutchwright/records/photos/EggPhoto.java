package clutchwright.records.photos;

import clutchwright.records.clutches.EggId;
import java.time.LocalDate;

/// A photo of an egg, before the light or in its box.
///
/// @param digest SHA-256 of the file kept, 64 hexadecimal digits
/// @param width  in pixels
/// @param height in pixels
public record EggPhoto(
        PhotoId id,
        long version,
        EggId egg,
        String digest,
        LocalDate added,
        int width,
        int height,
        String caption) {}

package clutchwright.records.photos;

import clutchwright.engine.pedigree.AnimalId;
import java.time.LocalDate;

/// A photo of an animal. What it shows lies in a file named by its digest.
///
/// @param digest SHA-256 of the file kept, 64 hexadecimal digits
/// @param width  in pixels
/// @param height in pixels
public record Photo(
        PhotoId id,
        long version,
        AnimalId animal,
        String digest,
        LocalDate added,
        int width,
        int height,
        String caption) {}

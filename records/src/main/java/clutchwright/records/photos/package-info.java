/// Pictures of animals, kept as files. The front door is [clutchwright.records.photos.Photos].
@NullMarked
package clutchwright.records.photos;

import org.jspecify.annotations.NullMarked;

package clutchwright.records.photos;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.records.Notebook;
import clutchwright.records.animals.Animal;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Problem;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PhotosTest {

    @TempDir Path folder;
    private Notebook notebook;
    private Animal animal;

    @BeforeEach
    void open() {
        notebook = new Notebook(folder);
        animal = notebook.female("A1");
    }

    @AfterEach
    void close() {
        notebook.close();
    }

    @Test
    void a_photo_is_kept_as_jpeg_with_a_small_one_beside() throws IOException {
        var photo = add(Pictures.png(1200, 900)).theSaved();

        Path file = notebook.read(tx -> new Photos(tx).file(photo));
        Path small = notebook.read(tx -> new Photos(tx).thumbnail(photo));
        assertThat(ImageIO.read(file.toFile()).getWidth()).isEqualTo(1200);
        assertThat(ImageIO.read(small.toFile()).getWidth()).isEqualTo(480);
        assertThat(Files.readAllBytes(file)).startsWith(0xFF, 0xD8, 0xFF);
        assertThat(notebook.list(tx -> new Photos(tx).of(animal.id()))).containsExactly(photo);
    }

    @Test
    void a_very_large_photo_is_made_smaller() {
        var photo = add(Pictures.jpeg(4800, 1200)).theSaved();

        assertThat(photo.width()).isEqualTo(2400);
        assertThat(photo.height()).isEqualTo(600);
    }

    @Test
    void what_the_camera_noted_is_gone_but_the_picture_stands_upright() throws IOException {
        var withNotes = turned(Pictures.jpeg(300, 200), "51.4778 N 0.0015 W");
        assertThat(new String(withNotes, StandardCharsets.ISO_8859_1)).contains("51.4778");

        var photo = add(withNotes).theSaved();

        Path file = notebook.read(tx -> new Photos(tx).file(photo));
        var kept = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
        assertThat(kept).doesNotContain("Exif").doesNotContain("51.4778");
        assertThat(List.of(photo.width(), photo.height())).containsExactly(200, 300);
    }

    @Test
    void the_same_photo_twice_is_one() {
        var first = add(Pictures.png(40, 30)).theSaved();

        assertThat(add(Pictures.png(40, 30))).isEqualTo(new Edit.Saved<>(first));
    }

    @Test
    void what_is_no_picture_is_refused_and_nothing_is_kept() {
        assertNotAnImage("<html><script>alert(1)</script>".getBytes(StandardCharsets.UTF_8));
        assertNotAnImage(new byte[0]);
        var cut = Pictures.png(400, 300);
        assertNotAnImage(Arrays.copyOf(cut, cut.length / 3));
        assertNotAnImage("GIF89a".getBytes(StandardCharsets.UTF_8));

        assertThat(folder.resolve(Photos.FOLDER)).doesNotExist();
    }

    @Test
    void a_small_file_that_claims_a_gigantic_picture_is_refused_unread() {
        var refused = add(claiming(60_000, 60_000));

        assertThat(refused)
                .isEqualTo(
                        new Edit.Refused<>(
                                List.of(
                                        new Problem.TooManyPixels(
                                                60_000, 60_000, Picture.MOST_PIXELS))));
    }

    @Test
    void a_gigantic_file_is_refused_unread() {
        var large = new byte[Math.toIntExact(Picture.LARGEST_FILE) + 1];

        assertThat(add(large))
                .isEqualTo(
                        new Edit.Refused<>(
                                List.of(
                                        new Problem.ImageTooLarge(
                                                large.length, Picture.LARGEST_FILE))));
    }

    private void assertNotAnImage(byte[] file) {
        var refused = add(file);
        assertThat(refused).isInstanceOf(Edit.Refused.class);
        assertThat(((Edit.Refused<Photo>) refused).problems())
                .singleElement()
                .isInstanceOf(Problem.NotAnImage.class);
    }

    private Edit<Photo> add(byte[] file) {
        return notebook.write(tx -> new Photos(tx).add(animal.id(), file, ""));
    }

    /// Puts an EXIF block behind the first marker that says: turn a quarter to the right.
    private static byte[] turned(byte[] jpeg, String note) {
        var text = (note + "\0").getBytes(StandardCharsets.US_ASCII);
        var tiff = ByteBuffer.allocate(38 + text.length);
        tiff.put("MM".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(8);
        tiff.putShort((short) 2);
        tiff.putShort((short) 0x010E).putShort((short) 2).putInt(text.length).putInt(38);
        tiff.putShort((short) 0x0112).putShort((short) 3).putInt(1);
        tiff.putShort((short) 6).putShort((short) 0).putInt(0).put(text);
        var out = new ByteArrayOutputStream();
        try {
            out.write(jpeg, 0, 2);
            out.write(0xFF);
            out.write(0xE1);
            int length = 2 + 6 + tiff.capacity();
            out.write(length >> 8);
            out.write(length);
            out.write("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
            out.write(tiff.array());
            out.write(jpeg, 2, jpeg.length - 2);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    /// A PNG whose header promises that size, and that has nothing else.
    private static byte[] claiming(int width, int height) {
        var header =
                ByteBuffer.allocate(17)
                        .put("IHDR".getBytes(StandardCharsets.US_ASCII))
                        .putInt(width)
                        .putInt(height)
                        .put(new byte[] {8, 2, 0, 0, 0})
                        .array();
        var check = new CRC32();
        check.update(header);
        return ByteBuffer.allocate(8 + 4 + 17 + 4)
                .put(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'})
                .putInt(13)
                .put(header)
                .putInt((int) check.getValue())
                .array();
    }
}

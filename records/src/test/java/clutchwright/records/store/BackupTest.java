package clutchwright.records.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clutchwright.records.Notebook;
import clutchwright.records.Snapshot;
import clutchwright.records.photos.Photos;
import clutchwright.records.photos.Pictures;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BackupTest {

    @TempDir Path folder;

    @Test
    void a_backup_unpacked_elsewhere_is_the_same_collection_with_its_photos() throws IOException {
        var zip = folder.resolve("out/backup.zip");
        try (var notebook = new Notebook(folder.resolve("here"))) {
            var animal = notebook.female("A1");
            var photo =
                    notebook.write(
                            tx ->
                                    new Photos(tx)
                                            .add(animal.id(), Pictures.png(40, 30), "")
                                            .theSaved());
            Backup.write(notebook.database(), zip);
            notebook.female("A2");
            Backup.restore(zip, folder.resolve("there"));

            try (var other = new Notebook(folder.resolve("there"))) {
                Snapshot restored = other.read(Snapshot::of);
                assertThat(restored.animals().values()).containsExactly(animal);
                Path file = other.read(tx -> new Photos(tx).file(photo));
                Path original = notebook.read(tx -> new Photos(tx).file(photo));
                assertThat(file).isNotEqualTo(original).hasSameBinaryContentAs(original);
            }
        }
    }

    @Test
    void restoring_keeps_what_was_there_beside() throws IOException {
        var zip = folder.resolve("backup.zip");
        var house = folder.resolve("house");
        try (var notebook = new Notebook(house)) {
            notebook.female("A1");
            Backup.write(notebook.database(), zip);
            notebook.female("A2");
        }

        Backup.restore(zip, house);

        try (var notebook = new Notebook(house)) {
            Snapshot restored = notebook.read(Snapshot::of);
            assertThat(restored.animals()).hasSize(1);
        }
        assertThat(house.resolve(Database.FILE + ".before-restore")).exists();
    }

    @Test
    void what_is_no_backup_leaves_the_records_alone() throws IOException {
        var house = folder.resolve("house");
        try (var notebook = new Notebook(house)) {
            notebook.female("A1");
        }
        var notZip = Files.writeString(folder.resolve("notes.zip"), "not a zip");
        var broken = zip("broken.zip", Database.FILE, "not a database".repeat(500));
        var other = zip("other.zip", "holiday.txt", "sun");

        for (var file : java.util.List.of(notZip, broken, other)) {
            assertThatThrownBy(() -> Backup.restore(file, house)).isInstanceOf(StoreFailure.class);
        }

        try (var notebook = new Notebook(house)) {
            Snapshot kept = notebook.read(Snapshot::of);
            assertThat(kept.animals()).hasSize(1);
        }
        try (var files = Files.list(house)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .noneMatch(name -> name.startsWith("restore"));
        }
    }

    private Path zip(String name, String entry, String content) throws IOException {
        var zip = folder.resolve(name);
        try (var out = new ZipOutputStream(Files.newOutputStream(zip))) {
            out.putNextEntry(new ZipEntry(entry));
            out.write(content.getBytes(java.nio.charset.StandardCharsets.UTF_8));
            out.closeEntry();
        }
        return zip;
    }
}

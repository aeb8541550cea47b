package clutchwright.app.settings;

import clutchwright.app.holding.Holding;
import clutchwright.records.exchange.OpenPackage;
import clutchwright.records.store.Backup;
import java.io.FilterInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.function.Consumer;
import org.springframework.core.io.InputStreamResource;
import org.springframework.core.io.Resource;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/// Hands the whole collection out: as open files, or as a backup.
@Controller
public class YourDataPage {

    private final Holding holding;

    YourDataPage(Holding holding) {
        this.holding = holding;
    }

    @GetMapping("/settings/export")
    public ResponseEntity<Resource> export() throws IOException {
        return download(
                "collection", path -> holding.database().read(tx -> OpenPackage.write(tx, path)));
    }

    @GetMapping("/settings/backup")
    public ResponseEntity<Resource> backup() throws IOException {
        return download("backup", path -> Backup.write(holding.database(), path));
    }

    private ResponseEntity<Resource> download(String what, Consumer<Path> write)
            throws IOException {
        var folder = Files.createTempDirectory("clutchwright-" + what);
        var file = folder.resolve(what + ".zip");
        write.accept(file);
        var length = Files.size(file);
        var name = "clutchwright-%s-%s.zip".formatted(what, holding.today());
        return ResponseEntity.ok()
                .contentType(MediaType.valueOf("application/zip"))
                .contentLength(length)
                .cacheControl(CacheControl.noStore())
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment().filename(name).build().toString())
                .body(new InputStreamResource(() -> new Passing(folder, file)));
    }

    /// A file that is gone once it was read.
    private static final class Passing extends FilterInputStream {

        private final Path folder;

        private Passing(Path folder, Path file) throws IOException {
            super(Files.newInputStream(file, StandardOpenOption.DELETE_ON_CLOSE));
            this.folder = folder;
        }

        @Override
        public void close() throws IOException {
            super.close();
            Files.deleteIfExists(folder);
        }
    }
}

package clutchwright.app.web;

import java.util.Optional;
import org.springframework.http.HttpStatus;

/// What a page answers a request with.
public sealed interface Reply {

    /// A view, drawn by its template.
    record Show(HttpStatus status, View view) implements Reply {}

    /// Another page to fetch; after a form was posted, so that reloading does not post again.
    ///
    /// @param path of this site, beginning with `/`
    record Go(String path, Optional<Flash> flash) implements Reply {

        public Go {
            if (!path.startsWith("/") || path.startsWith("//")) {
                throw new IllegalArgumentException("not a path of this site: " + path);
            }
        }

        /// With a sentence about what was done.
        public Go saying(String text) {
            return new Go(path, Optional.of(new Flash(text)));
        }

        /// With a sentence and a button, such as `Undo`, that posts to a path.
        public Go saying(String text, String label, String post) {
            return new Go(
                    path, Optional.of(new Flash(text, Optional.of(new Flash.Offer(label, post)))));
        }
    }

    static Show show(View view) {
        return new Show(HttpStatus.OK, view);
    }

    /// The form again, with what was typed and what is wrong with it.
    static Show faulty(View view) {
        return new Show(HttpStatus.UNPROCESSABLE_CONTENT, view);
    }

    static Go go(String path) {
        return new Go(path, Optional.empty());
    }

    /// @param what was not found, as a sentence: `There is no animal with the tag D-30.`
    static Show missing(String what) {
        return new Show(HttpStatus.NOT_FOUND, Notice.missing(what));
    }

    /// Somebody else changed the same thing in the meantime; nothing was saved.
    static Show conflict(String what) {
        return new Show(HttpStatus.CONFLICT, Notice.conflict(what));
    }

    /// The same, with a page that shows both versions and keeps what was typed.
    static Show conflictWith(View view) {
        return new Show(HttpStatus.CONFLICT, view);
    }
}

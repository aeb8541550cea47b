package clutchwright.app.web;

import java.time.LocalDate;
import java.util.Optional;

/// Sees to it that what a phone sends twice, because it got no answer, is written once.
public interface Entering {

    /// The field of a form that carries the key of an entry.
    String FIELD = "entryKey";

    /// A mark of this collection and of no other.
    String house();

    /// The day on which a page is drawn.
    LocalDate today();

    /// What was answered when something was written under that key; empty where nothing was, or
    /// where the text is no key.
    Optional<Reply.Go> answered(String key);

    /// Remembers what was answered.
    void answer(String key, Reply.Go reply);
}

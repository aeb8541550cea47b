package clutchwright.engine.reference;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/// A check against the world outside; `docs/references.md` lists them all.
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.METHOD, ElementType.TYPE})
public @interface Reference {

    Kind kind();

    /// Citation, or the program with version.
    String source();

    /// Where in the source: page, table, section; or how the value was got from it.
    String locator();

    /// What the expected value rests on.
    enum Kind {
        /// Printed in the source, and seen there.
        PUBLISHED,
        /// Printed in the source, but known to us from memory only.
        FROM_MEMORY,
        /// Worked out by hand from the stated rule.
        DERIVED,
        /// What another program gave.
        PROGRAM,
        /// A trade fact: common practice, no source.
        COMMON_PRACTICE
    }
}
